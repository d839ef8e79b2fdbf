// Lines of a pair must match: the two legs of a bridle, port and starboard.
#pragma once

#include "libsplice/base/fault.h"
#include "libsplice/cut/piece.h"

#include <optional>
#include <string>
#include <unordered_map>

namespace libsplice {

/// Remembers the first line of every pair of a boat and holds the others against it.
class PairBook {
  public:
    /// Code::pair_unlike where a line of a pair differs from the first in rope, lot, or in finished
    /// length by more than the tables allow a pair (`pair_tolerance`). A line without a pair is no
    /// pair.
    [[nodiscard]] std::optional<Fault> check(const Piece& piece);

  private:
    struct First {
        std::string line;
        std::string rope;
        std::string lot;
        Nanometres finished = 0;
    };
    std::unordered_map<std::string, First> firsts_;
};

} // namespace libsplice
