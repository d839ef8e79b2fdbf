// A CSV file whose columns are all known by name beforehand.
#pragma once

#include "libsplice/job/cell_sort.h"
#include "libsplice/job/csv/csv_records.h"

#include <deque>
#include <optional>
#include <span>
#include <string_view>
#include <vector>

namespace libsplice {

/// Reads such a file a record at a time. Every fault is added, with its place.
class NamedColumns {
  public:
    /// `what` names the file in messages, as in `a points file`; `input` and `faults` outlive the
    /// reader, and so do the names. `field` is the job's field that faults belong to, if there is
    /// one.
    NamedColumns(Input& input, std::string_view what, std::span<const FileColumn> columns,
                 std::vector<Fault>& faults, std::string_view field = {});
    /// Of a file whose columns all hold lengths, or words.
    NamedColumns(Input& input, std::string_view what, std::span<const std::string_view> names,
                 std::vector<Fault>& faults, std::string_view field = {});

    /// Reads the heading, whose columns may stand in any order, in any case, and give a unit, as in
    /// `used [mm]`. False, with Code::no_heading, unknown_column, duplicate_column or a fault of
    /// the file, where nothing can be read by it.
    [[nodiscard]] bool read_heading();
    /// Goes on to the next record; false at the end, or where nothing can be read beyond.
    /// Code::too_many_cells where it has text beyond the heading.
    [[nodiscard]] bool next();

    /// Whether the file has a heading at all.
    [[nodiscard]] bool has_heading() const { return width_ > 0; }
    [[nodiscard]] bool has(std::size_t column) const { return found_[column].has_value(); }
    /// The cell's text in its one form (see settled()); empty where there is no such column.
    [[nodiscard]] std::string_view cell(std::size_t column) const { return texts_[column]; }
    [[nodiscard]] std::optional<LengthUnit> unit(std::size_t column) const;
    /// Where the column's cell stands; the record's first one where there is no such column.
    [[nodiscard]] Place place_of(std::size_t column) const;
    [[nodiscard]] Place place_of_record() const { return records_.place_of(0); }
    void add(Fault fault, std::size_t column);

  private:
    struct Found {
        std::uint32_t index = 0;
        HeadingUnit unit;
    };
    [[nodiscard]] bool next_record();
    void take_heading(std::uint32_t index);
    void add_at(Fault fault, Place at);

    CsvRecords records_;
    std::string file_;
    std::string_view what_;
    std::vector<std::string_view> names_;
    std::vector<CellSort> sorts_;
    std::vector<Fault>& faults_;
    std::string_view field_;
    std::vector<std::optional<Found>> found_;
    std::vector<std::string_view> texts_; ///< of the record, by column
    std::deque<std::string> made_texts_;
    std::size_t width_ = 0;
};

} // namespace libsplice
