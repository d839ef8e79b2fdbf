// What one end needs: rope, marks, steps and cautions.
#pragma once

#include "libsplice/allowance/action.h"
#include "libsplice/allowance/facts.h"
#include "libsplice/allowance/names.h"
#include "libsplice/allowance/working.h"
#include "libsplice/base/short_list.h"
#include "libsplice/catalogue/citation.h"
#include "libsplice/catalogue/figure.h"
#include "libsplice/units/quantity.h"

#include <optional>
#include <span>
#include <string_view>

namespace libsplice {

/// One signed length of a ledger.
struct Row {
    Item item{};
    Group group = Group::own;
    SpreadOrigin origin = SpreadOrigin::none; ///< where the spread comes from
    CitationId source{};
    Nanometres length = 0;
    double sd = 0.0;      ///< standard deviation in metres, 0 or more
    Working working = {}; ///< how the length was worked out
};

/// A place to mark, measured from the end's own tail end.
struct Mark {
    MarkName name{};
    Nanometres from_tail_end = 0;
    /// In a finished end: its place among the end's own marks, from 1 in the order of the tape.
    /// Places at which pairs of strands are dropped one after the other share a number.
    std::size_t number = 0;
};

/// One of the end's figures, in the unit that the name carries.
struct Value {
    ValueName name{};
    double value = 0.0;
};

/// Something to be careful of. The text may hold `{value}` and `{@mark}` as steps do.
struct Caution {
    enum class Weight : unsigned char {
        advice,             ///< the piece is cut
        refused_for_person, ///< on a line that carries a person, the line is refused
        person_only         ///< likewise, and on other lines it is not said
    };
    std::string_view text;
    CitationId rule{};
    Weight weight = Weight::advice;
};

/// How a span of rope lies, so that a sheet can draw the end without knowing the kind.
struct Span {
    enum class Form : unsigned char {
        straight, ///< laid alongside
        loop,     ///< round an eye
        buried,
        tapered,
        knot,    ///< counted in the crossings of its plainest picture
        whipped, ///< bound round
        covered, ///< under a cover or in a fitting
        turns,   ///< full turns round a spar, a pin or another part
        half_hitches,
        crossed, ///< over or through another part
        tucked,  ///< under other parts, or between strands
        nipped,  ///< held in small turns of the standing part
        doubled, ///< a knot tied in doubled rope, counted in the crossings of the knot
        stitched,
        seized,
        clipped,
        pressed, ///< in a sleeve or shank that is swaged on
        crimped,
        sealed, ///< melted
        core,   ///< the core without its cover
        ball    ///< inside a ball or bead
    };
    static constexpr std::size_t forms = static_cast<std::size_t>(Form::ball) + 1;
    Form form{};
    Nanometres from = 0; ///< from the tail end
    Nanometres to = 0;
    Nanometres width = 0;  ///< diameter of what is seen there
    double count = 0.0;    ///< of turns, tucks, hitches, clips or crossings; 0: not counted
    Nanometres around = 0; ///< diameter of what it goes round; 0: nothing, or not known
};

/// A pair of strands dropped from a buried tail.
struct Thinning {
    MarkName mark{};
    Nanometres from_tail_end = 0;
    int strands_left = 0;   ///< from here to the next mark, or to the tail's end
    double section = 0.0;   ///< what is left, as a share of the tail's whole section
    Nanometres outside = 0; ///< diameter of the rope over what is left
    Nanometres step = 0;    ///< by how much that is less than before
};

/// An end's steps, of a list that lives as long as the program.
using Steps = std::span<const Step>;

/// The share of the rope's strength that an end retains.
struct Retained {
    double share = 0.0;
    CitationId source{};
};

/// What an end needs beyond its bearing point, and what it knows of itself. Values only: texts are
/// made when something is printed.
struct End {
    ShortList<Row, 16> rows;
    ShortList<Mark, 24> marks; ///< ascending in a finished end
    Steps steps;
    ShortList<Caution, 16> cautions;
    ShortList<Span, 8> shape;
    ShortList<Thinning, 11> taper; ///< of a buried tail whose strands are known, from the throat on
    std::optional<Retained> retained;      ///< by the end itself, where a source gives it
    std::optional<Retained> bend_retained; ///< by the bend over its pin, where a source gives it

    std::optional<EyeFacts> eye;
    std::optional<BuryFacts> bury;
    std::optional<GripFacts> grip;
    std::optional<CoverFacts> cover;
    std::optional<StitchFacts> stitching;
    std::optional<KnotFacts> knot;
    std::optional<TurnFacts> turns;
    ShortList<Value, 48> others; ///< figures of one kind alone, and those of plug-ins
    std::optional<Length> pin;   ///< diameter of what the bearing point lies on, where it has one

    Nanometres standing_mark =
        0; ///< from the tail end to where the standing part begins: the far throat, the knot's face
    Nanometres bury_reach = 0; ///< host beyond the standing mark that lies over a bury; 0: none
    Nanometres fid_reach = 0;  ///< how far beyond the standing mark the fid comes out; 0: none
    bool made = true;          ///< false for an end that is only cut, sealed or whipped
    int laid = 1; ///< parts that lie over the finished length: 4 in a shackle of doubled rope
    bool milks_cover = false; ///< splicing leaves slack cover that is milked out at the other end

    void add(const Row& row) { rows.push_back(row); }
    void add(Mark mark) { marks.push_back(mark); }
    void add(Value value) { others.push_back(value); }
    void add(Caution caution) { cautions.push_back(caution); }
    void add(Span span) { shape.push_back(span); }
    void add(Thinning thinning) { taper.push_back(thinning); }

    /// Rope beyond the bearing point: the exact sum of the rows.
    [[nodiscard]] Nanometres total() const;
    /// Brings the marks into the order of the tape and numbers them. The book does it once for
    /// every end that a kind has worked out.
    void finish();
};

} // namespace libsplice
