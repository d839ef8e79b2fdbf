// From a few measured pieces to a constant of the shop's own, and how far the next piece may
// differ.
#pragma once

#include "libsplice/allowance/book.h"
#include "libsplice/mechanics/chance/spread.h"

#include <optional>
#include <span>

namespace libsplice {

/// What a kind of end is learnt by.
enum class Learnable : std::uint8_t {
    knot,         ///< rope in a stopper knot
    beyond_loop,  ///< rope in a loop knot besides the loop's legs
    beyond_turns, ///< rope in a hitch besides its turns
    take_up,      ///< host rope that shortens over a buried tail
};

/// What the pieces of one kind in one rope say. Lengths in the rope's counting diameters.
struct Learnt {
    Learnable what = Learnable::knot;
    Sample sample;
    std::optional<double> limit; ///< what the next piece stays under but for the risk; two or more
    double spread = 0.0;         ///< standard deviation to reckon with
    bool own_spread = false;     ///< `spread` is of the pieces; otherwise that of the tables
    double tables = 0.0;         ///< what the tables said before
    double tables_spread = 0.0;
    std::optional<std::size_t> outlier; ///< the piece that Grubbs' test at 5 % sets apart
    double constant = 0.0;              ///< K of the braid for a take-up, else the mean
    double constant_spread = 0.0;       ///< 0 where the tables' spread stays as it is
};

/// Fits the constant of a kind in a rope to what pieces used, in counting diameters, one or more.
/// One piece, or pieces that are all alike, keep the tables' spread. Of more, `spread` is such that
/// a spare for `risk` on this row alone reaches the one-sided prediction limit. A piece set apart
/// is kept: whoever made it must say whether it was a slip. Code::nothing_to_learn, and what the
/// book has to say against this kind in this rope.
[[nodiscard]] Result<Learnt> learn(const Book& book, const Kind& kind, const Rope& rope,
                                   std::span<const double> used, double risk);

} // namespace libsplice
