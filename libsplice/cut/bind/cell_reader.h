// The fixed columns of a line, read one by one; every fault is kept, none stops the next.
#pragma once

#include "libsplice/base/fault.h"
#include "libsplice/job/line.h"
#include "libsplice/units/quantity.h"

#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace libsplice {

/// Reads values out of a line's cells. A blank cell gives nothing and is no fault.
class LineFields {
  public:
    LineFields(const JobLine& line, std::vector<Fault>& faults) : line_(line), faults_(faults) {}

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

    /// Adds a fault at a cell, filling in place and field.
    void add(Fault fault, const Cell& cell, std::string field);
    void add(Fault fault, Column column);

  private:
    const JobLine& line_;
    std::vector<Fault>& faults_;
};

} // namespace libsplice
