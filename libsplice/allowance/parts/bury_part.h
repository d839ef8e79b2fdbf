// A tail led inside the rope: its length, taper, take-up and setting, as the buried eyes need them.
#pragma once

#include "libsplice/allowance/kind.h"
#include "libsplice/allowance/parts/parts.h"
#include "libsplice/allowance/parts/taper_part.h"
#include "libsplice/mechanics/rope/braid.h"

#include <array>

namespace libsplice {

/// The fields that describe a bury, for the declarations of kinds.
namespace field {
inline constexpr FieldDeclaration tail{"tail",
                                       "the whole end beyond the throat, all of it led inside",
                                       Dimension::length,
                                       0.001,
                                       20.0,
                                       "the rule's tail",
                                       false,
                                       {},
                                       "bury"};
inline constexpr FieldDeclaration taper{
    "taper", "the part of the tail that is thinned out",   Dimension::length, 0.0,
    20.0,    "the rule's taper, in proportion to the tail"};
inline constexpr FieldDeclaration exit{
    "exit",
    "from the throat to where the fid comes out; no rope is lost by it",
    Dimension::length,
    0.001,
    40.0,
    "the rule's exit, in proportion to the tail"};
inline constexpr FieldDeclaration setting{
    "setting",
    "share of the bury that draws out at first load; 0 if it is loaded before measuring",
    Dimension::ratio,
    0.0,
    0.1,
    "the table's share for the fibre"};
} // namespace field

/// Which of a kind's fields describe the bury. A tail that runs right through and slides has
/// neither taper, nor an exit beyond its own, nor setting.
struct BuryFields {
    std::size_t tail;
    std::optional<std::size_t> taper;
    std::optional<std::size_t> exit;
    std::optional<std::size_t> setting;
    std::optional<std::size_t> pairs = std::nullopt;
    std::optional<std::size_t> strands = std::nullopt; ///< where a core's tail is led inside
};

/// A bury worked out for rope (or core) of one diameter.
struct BuryPart {
    Length rope;
    SourcedLength tail;
    TaperPart taper;
    bool ends_inside = true;     ///< false for a tail that runs through and comes out again
    double braid_constant = 0.0; ///< K of the braid over the tail
    SourcedLength take_up;       ///< host used beyond the tail's own length, at the marking tension
    SourcedLength setting;       ///< what draws out at first load, as a negative length
    Length exit;
    Length minimum; ///< the published minimum of the tail; 0 where none is printed
    Length counted; ///< diameter that the rule's tail, taper, exit and fid are counted in
    Length outside; ///< diameter of what is seen over the bury
    Span::Form seen = Span::Form::buried; ///< how the tail is drawn: `core` where it has no cover
};

/// Works the bury out in `rope`, the host itself: the whole rope, or its core. Sheets for covered
/// rope count tails in diameters of the whole rope: `counted`; `rope` where it is not given.
/// Code::below_published_minimum, Code::taper_longer_than_tail, Code::figure_missing, the faults of
/// read_taper(),
/// Code::field_out_of_range where the fid would come out before the tail's end.
[[nodiscard]] Result<BuryPart> read_bury(const Request& request, BuryFields fields, Length rope,
                                         std::optional<Length> counted = std::nullopt);

/// The tail as it lies inside the host: in full section, then thinned.
[[nodiscard]] std::array<BuriedPart, 2> tail_inside(const BuryPart& bury);

/// Rows tail, take-up and setting.
void add_bury_rows(End& allowance, const BuryPart& bury);
/// The taper's marks, which lie before the throat: call it before the eye's marks.
void add_taper_marks(End& allowance, const BuryPart& bury, Nanometres tail_end);
/// Marks of the standing part beyond the far throat, and how far bury and fid reach: after the
/// eye's marks.
void add_bury_marks(End& allowance, const BuryPart& bury);
/// Values, spans of the shape, and cautions about a short tail.
void add_bury_facts(End& allowance, const BuryPart& bury, const Request& request,
                    Nanometres tail_end);

} // namespace libsplice
