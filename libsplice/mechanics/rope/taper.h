// A tail thinned by dropping its strands in pairs: where, what is left, and how big the steps are.
#pragma once

#include "libsplice/base/short_list.h"
#include "libsplice/mechanics/rope/braid.h"
#include "libsplice/units/quantity.h"

#include <cstddef>

namespace libsplice {

/// The most strands of a braid whose taper is set out.
inline constexpr int most_strands = 24;
/// The most pairs that can be dropped: one is left.
inline constexpr std::size_t most_pairs = most_strands / 2 - 1;

/// One pair dropped: one strand of each hand.
struct PairDrop {
    Length from_end;      ///< of the tail
    int strands_left = 0; ///< from here to the next drop
    double section = 1.0; ///< what is left, as a share of the whole
    Length outside;       ///< diameter of the host over what is left
    Length step;          ///< by how much that is less than before the drop
};

/// Where the pairs of a tail are dropped, from the taper's start to the tail's end.
struct TaperSchedule {
    int strands = 0;
    ShortList<PairDrop, most_pairs> drops; ///< nearest the throat first
    Length spacing;                        ///< from mark to mark
    double end_section = 1.0;              ///< what is left where the tail ends
    Length end_step;                       ///< in the host's diameter, where the tail ends

    /// Whether more than one pair ends at the tail's end.
    [[nodiscard]] bool ends_in_more_than_a_pair() const;
};

/// `pairs` of an even number of `strands` (4 to most_strands) dropped over `taper`, at marks
/// taper/(pairs + 1) apart, the first of them that far past the taper's start. At least one pair is
/// left. The host is as thick as the tail, `diameter`; over a section a it is rope sqrt(1 + packing
/// a) thick.
[[nodiscard]] TaperSchedule taper_schedule(int strands, int pairs, Length taper, Length diameter,
                                           double packing = 1.0);

/// A tail of length `tail` as the schedule thins it: in full section up to its first drop, then as
/// many steps as pairs are dropped. The taper is at most the tail.
[[nodiscard]] BuriedTail stepped_tail(Length tail, const TaperSchedule& schedule);
static_assert(most_pairs + 1 == most_buried_parts);

} // namespace libsplice
