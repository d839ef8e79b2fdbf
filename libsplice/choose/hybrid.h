// A line that is bare where it is loaded and covered where it is held.
#pragma once

#include "libsplice/allowance/book.h"
#include "libsplice/choose/needs.h"

#include <optional>
#include <string>
#include <vector>

namespace libsplice {

/// The line in covered rope whose cover is taken off from end a to short of the cleat, and whose
/// end a is a stripped eye. It owns what it adds; the line's own texts outlive it.
class HybridLine {
  public:
    /// Nothing: no cleat holds the line or its place is not known, it is stripped already, end a is
    /// no eye or loop that could be a stripped eye, or such rope has no figure for the cover that
    /// has to lie beyond a cleat.
    [[nodiscard]] static std::optional<HybridLine> of(const PlacedLine& placed, const Needs& needs,
                                                      const Rules& rules, const Rope& rope);

    /// The line as the cutter reads it; it lives as long as this.
    [[nodiscard]] JobLine line() const;
    /// `end_a = stripped-eye, strip = 7.6 m`.
    [[nodiscard]] std::string in_words() const;

  private:
    explicit HybridLine(const JobLine& line) : line_(line) {}

    JobLine line_;
    std::vector<EndFieldCell> fields_;
    std::string strip_;
};

} // namespace libsplice
