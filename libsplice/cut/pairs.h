// Lines of a pair must match: the two legs of a bridle, port and starboard.
#pragma once

#include "libsplice/cut/bind/cell_reader.h"
#include "libsplice/cut/piece.h"

#include <optional>
#include <string>
#include <unordered_map>

namespace libsplice {

/// Remembers the first line of every pair of a boat and compares the others with it.
class PairBook {
  public:
    /// The book outlives this; its tables say how far the lines of a pair may differ.
    explicit PairBook(const Book& book) : book_(book) {}

    /// Code::pair_unlike where a line of a pair differs from the first in rope, lot, or in finished
    /// length by more than the tables allow a pair (`pair_tolerance`). A line without a pair is no
    /// pair.
    [[nodiscard]] std::optional<LineFault> check(const Piece& piece);

    /// The chance that two lines made like this one differ by more than the tables allow a pair;
    /// nothing for a line without a pair.
    [[nodiscard]] std::optional<double> chance_apart(const Piece& piece) const;

  private:
    struct First {
        std::string line;
        std::string rope;
        std::string lot;
        Nanometres finished = 0;
    };
    /// How far the lines of a pair in this rope may differ.
    [[nodiscard]] Nanometres tolerance_of(const Rope& rope) const;

    const Book& book_;
    std::unordered_map<std::string, First> firsts_;
};

} // namespace libsplice
