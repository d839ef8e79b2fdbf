// A tail thinned in pairs of strands: which are dropped where, and how the tail ends.
#pragma once

#include "libsplice/allowance/kind.h"
#include "libsplice/mechanics/rope/taper.h"

#include <optional>

namespace libsplice {

namespace field {
inline constexpr FieldDeclaration pairs{
    "pairs",
    "pairs of strands dropped along the taper, one strand of each hand; 0 is a blunt end",
    Dimension::count,
    0.0,
    static_cast<double>(most_pairs),
    "all but one of the tail's pairs, where its strands are known"};
inline constexpr FieldDeclaration strands{
    "strands",
    "strands of the core's braid, an even number; sets out the taper pair by pair",
    Dimension::count,
    4.0,
    static_cast<double>(most_strands),
    "not known: the taper is not set out in pairs"};
} // namespace field

/// Which of a kind's fields say how a tail is thinned.
struct TaperFields {
    std::optional<std::size_t> taper;
    std::optional<std::size_t> pairs;
    std::optional<std::size_t> strands; ///< of a core; a hollow braid's are the tables'
};

/// How a tail is thinned.
struct TaperPart {
    Length length;
    std::optional<TaperSchedule> schedule; ///< where the strands are known
    TaperFacts facts;
};

/// Works out the taper of a tail that goes into braid of diameter `diameter` from its length.
/// Code::field_out_of_range for an odd number of strands, more pairs than can be dropped, or pairs
/// without a taper; Code::field_missing for pairs of a core whose strands are not given.
[[nodiscard]] Result<TaperPart> read_taper(const Request& request, TaperFields fields,
                                           Length length, Length diameter);

/// The marks of the taper's start and of each pair, the schedule, and a caution where more than a
/// pair of strands ends at once.
void lay_taper(End& end, const TaperPart& taper, const Request& request, Nanometres tail_end);

} // namespace libsplice
