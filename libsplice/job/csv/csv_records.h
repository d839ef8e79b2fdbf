// A CSV file as a stream of records, each cell with its place.
#pragma once

#include "libsplice/base/input.h"
#include "libsplice/base/result.h"
#include "libsplice/job/line.h"

#include <cstddef>
#include <cstdint>
#include <memory>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace libsplice {

/// Reads records one at a time in constant memory. Cells are separated by commas, semicolons or
/// tabs, as the first line shows; a quoted cell may hold these, line ends and doubled quotes. A
/// line ends at LF, CRLF or a lone CR; the last one needs no end. A byte-order mark and records
/// without text in any cell are passed over.
class CsvRecords : public CellPlaces {
  public:
    /// `input` outlives the reader.
    explicit CsvRecords(Input& input);
    ~CsvRecords() override;

    /// Goes on to the next record; false at the end. Code::foreign_file for a file that is no CSV:
    /// nothing is read. Code::bad_quotes, placed at the cell's start,
    /// where quotes do not pair or text follows a closing quote: nothing can be read beyond.
    /// Code::file_unreadable.
    [[nodiscard]] Result<bool> next();

    /// Number of cells of the record; `most_cells` + 1 stands for any number over `most_cells`.
    [[nodiscard]] std::size_t size() const { return cells_.size(); }
    /// Text without blanks at either end; empty past the record's last cell. It lives until next().
    [[nodiscard]] std::string_view cell(std::size_t index) const {
        return index < cells_.size()
                   ? std::string_view(text_.data() + cells_[index].begin, cells_[index].size)
                   : std::string_view();
    }
    /// Whether a comma in a number is its decimal one, because it does not separate cells.
    [[nodiscard]] bool comma_is_decimal() const { return separator_ != ','; }
    /// What is wrong with the texts of the record's cells: Code::cell_too_long, Code::not_utf8.
    /// Such a cell reads as empty.
    [[nodiscard]] std::span<const Fault> faults() const { return faults_; }

    /// Beyond a cell that is too long nothing is remembered: its place stands for the rest.
    [[nodiscard]] Place place_of(std::uint32_t index) const override;

  private:
    struct Parser;
    struct Extent {
        std::uint32_t begin;
        std::uint32_t size;
    };

    Result<bool> read_record();
    Result<bool> fill();
    std::optional<Fault> start();
    Result<bool> refill();
    std::string_view take_piece();
    std::optional<Fault> feed(std::string_view piece);
    void bound_memory();
    void end_cell(std::string_view text);
    void check_cells();

    Input& input_;
    std::unique_ptr<Parser> parser_;
    std::vector<char> chunk_;
    std::string_view unread_; ///< the part of the chunk that has not been parsed
    bool input_ended_ = false;
    bool started_ = false;
    char separator_ = ',';
    std::uint32_t line_ = 1; ///< physical line of the next piece

    bool record_ended_ = false;
    std::string text_; ///< the cells of the record, one after the other
    std::vector<Extent> cells_;
    std::size_t cell_count_ = 0;          ///< of all, also those that are not kept
    std::optional<std::size_t> too_long_; ///< the first cell that is too long
    bool forgotten_ = false;              ///< the open cell has been given up
    std::vector<Fault> faults_;

    std::string raw_; ///< the bytes of the record, from which places are worked out
    std::uint32_t first_line_ = 1;
    std::size_t cell_began_ = 0; ///< in raw_, no later than where the open cell starts
};

} // namespace libsplice
