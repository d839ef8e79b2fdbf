// A tail led inside the rope: its length, taper, take-up and settling, as the buried eyes need
// them.
#pragma once

#include "libsplice/allowance/parts/parts.h"
#include "libsplice/allowance/parts/taper_part.h"
#include "libsplice/mechanics/rope/braid.h"

#include <array>
#include <span>

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
inline constexpr std::array<std::string_view, 2> settled_choices{"no", "yes"};
inline constexpr FieldDeclaration settled{
    .name = "settled",
    .meaning = "whether the bench loads the end before it measures, so that nothing settles later",
    .dimension = Dimension::choice,
    .default_text = "no",
    .choices = settled_choices};
} // namespace field

/// Which of a kind's fields describe the bury. A tail that runs right through and slides has
/// neither taper, nor an exit beyond its own, nor settling.
struct BuryFields {
    std::size_t tail;
    std::optional<std::size_t> taper;
    std::optional<std::size_t> exit;
    std::optional<std::size_t> settled;
    std::optional<std::size_t> pairs = std::nullopt;
    std::optional<std::size_t> strands = std::nullopt; ///< where a core's tail is led inside
    std::string_view tail_name = "tail";               ///< what faults call the first
};

/// What a tail is led into, and how it is seen there.
struct Host {
    Length diameter; ///< of the whole rope, or of its core
    Length counted;  ///< diameter that the rule's tail, taper, exit and fid are counted in
    Length over;     ///< diameter of what is seen over the bury
    Span::Form seen = Span::Form::buried; ///< how the tail is drawn: `core` where it has no cover
};
/// The host itself counts, and is what is seen.
[[nodiscard]] Host host_of(Length diameter);

/// A bury worked out for a host of one diameter.
struct BuryPart {
    Host host;
    BuryFacts facts;
    SourcedLength tail;
    TaperPart taper;
    bool ends_inside = true; ///< false for a tail that runs through and comes out again
    SourcedLength take_up;   ///< host used beyond the tail's own length when the bench measures it
    SourcedLength settling;  ///< what draws out after that, as a negative length
};

/// Works the bury out. Code::below_published_minimum, Code::taper_longer_than_tail,
/// Code::figure_missing, the faults of read_taper(), Code::field_out_of_range where the fid would
/// come out before the tail's end.
[[nodiscard]] Result<BuryPart> read_bury(const Request& request, BuryFields fields,
                                         const Host& host);

/// Rows tail, take-up as spliced and settling.
void add_bury_rows(End& end, const BuryPart& bury);

/// Where a tail lies on its end.
struct BuryPlace {
    Nanometres tail_end = 0; ///< from where the marks start
    Nanometres throat = 0;   ///< where the host is entered; bury and fid reach on from there
};
/// Facts, marks, spans of the shape, and cautions about a short tail.
void lay_bury(End& end, const BuryPart& bury, const Request& request, BuryPlace place);
/// All of that but the marks beyond the throat, of a kind that has its own there.
void lay_tail(End& end, const BuryPart& bury, const Request& request, Nanometres tail_end);

/// Whether the job says that the end is loaded before it is measured.
[[nodiscard]] bool is_settled(const Request& request, std::optional<std::size_t> field);

/// K of the braid that a tail is led into. What the shop measured for the kind, or the rope's own,
/// is K once it was loaded; its K as spliced is the tables', but at least its own.
struct BraidConstants {
    Figure spliced; ///< before its first load
    Figure settled; ///< once it was loaded
};
/// Code::figure_missing.
[[nodiscard]] Result<BraidConstants> read_braid_constants(const Request& request);

/// Host used beyond the tail's own length, for one K; its spread is what that of K does.
/// `too_thick` where the tail does not go in.
[[nodiscard]] Result<SourcedLength> take_up_of(const BuriedTail& tail, const Figure& constant,
                                               Fault too_thick);

} // namespace libsplice
