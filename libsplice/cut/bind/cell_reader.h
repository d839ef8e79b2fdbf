// The cells of a line, read one by one; every fault is kept, none stops the next.
#pragma once

#include "libsplice/base/fault.h"
#include "libsplice/job/line.h"
#include "libsplice/units/quantity.h"
#include "libsplice/units/tension.h"

#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace libsplice {

/// A fault of a line and the column that it is about.
struct LineFault {
    Fault fault;
    Column column{};
};

/// Reads values out of a line's cells. A blank cell gives nothing and is no fault.
class CellReader {
  public:
    /// Both outlive the reader.
    CellReader(const JobLine& job, std::vector<Fault>& faults) : job_(job), faults_(faults) {}

    [[nodiscard]] const JobLine& job() const { return job_; }
    [[nodiscard]] std::string_view text(Column column) const { return job_.text(column); }
    /// A length from `lowest` to 100 km. Code::not_a_length, Code::value_out_of_range.
    [[nodiscard]] std::optional<Nanometres> length(Column column, Nanometres lowest);
    /// Code::not_a_choice names the words.
    [[nodiscard]] std::optional<std::size_t> choice(Column column,
                                                    std::span<const std::string_view> words);
    [[nodiscard]] bool yes(Column column);
    [[nodiscard]] std::optional<Tension> tension(Column column);
    /// A share, written `30 %` or `0.3`, 0 or more. Code::not_a_number, Code::value_out_of_range.
    [[nodiscard]] std::optional<double> share(Column column);
    /// 1 to 1,000,000.
    [[nodiscard]] std::int64_t quantity();

    /// Adds a fault of a column's value, with the column's name in front, its place and field.
    void add(Fault fault, Column column);
    /// Adds a fault of the whole line at the column that it is about, its sentence as it is.
    void add(LineFault fault);
    /// Adds a fault at a cell, filling in its place and `field`.
    void add(Fault fault, const Cell& cell, std::string field);
    /// Adds a fault that has its place already.
    void add_placed(Fault fault) { faults_.push_back(std::move(fault)); }

    /// How many faults the line has so far.
    [[nodiscard]] std::size_t fault_count() const { return faults_.size(); }

  private:
    const JobLine& job_;
    std::vector<Fault>& faults_;
};

} // namespace libsplice
