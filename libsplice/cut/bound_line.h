// All of a line but its name, its count and its length: worked out once, used for every like line.
#pragma once

#include "libsplice/allowance/book.h"
#include "libsplice/cut/sentence.h"
#include "libsplice/cut/settings.h"
#include "libsplice/job/line.h"
#include "libsplice/units/tension.h"

#include <array>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace libsplice {

/// How close the finished length has to be.
enum class Fit : std::uint8_t {
    exact,       ///< two made ends, a tolerance each way
    trim_aboard, ///< one end is cut to fit aboard
    at_least,    ///< a running line, never short
};
[[nodiscard]] std::span<const std::string_view> fit_names();

/// How close the line has to be, and what rope it gets so that it is not short.
struct FitAndSpare {
    Fit fit = Fit::at_least;
    std::optional<Nanometres> tolerance; ///< each way; only of an exact line
    Nanometres step = 0;                 ///< the cut length is rounded up to it
    Nanometres extra = 0;                ///< rope to be cut aboard
    Nanometres wear = 0;                 ///< rope for re-makes
    std::optional<Nanometres> spare;     ///< as the shop states it, in place of the risk's
    double spare_quantile = 0.0;         ///< standard deviations that the spare covers
    LineEnd kept_at{};                   ///< the end that extra and wear lie at
};

/// One end of a line as the job asks for it.
struct BoundEnd {
    const Kind* kind = nullptr;
    const End* allowance = nullptr;
    std::string fitting;                      ///< its name; empty: none
    std::optional<Nanometres> fitting_length; ///< bearing point to working point
    Nanometres pin_centre = 0; ///< bearing point beyond the pin's centre, if so measured
    bool captive = false;      ///< the fitting is closed and sits in the end before it is drawn up
    bool aboard = false;       ///< made aboard, when the line is in its place
};

/// Both ends of a line and the order in which they are made.
struct BoundEnds {
    std::array<BoundEnd, 2> ends;
    LineEnd first_end = LineEnd::a;
    /// The end whose kind accounts for both ends (a join, an item made whole); none on an open
    /// line. The other end then has the same allowance, of which only the marks are its own.
    std::optional<LineEnd> closing;

    [[nodiscard]] const BoundEnd& at(LineEnd which) const {
        return ends[static_cast<std::size_t>(which)];
    }
    /// Whether the end brings rows, steps and cautions of its own.
    [[nodiscard]] bool counts(LineEnd which) const { return !closing || *closing == which; }
    [[nodiscard]] LineEnd last_end() const { return other(first_end); }
    [[nodiscard]] const BoundEnd& first() const { return at(first_end); }
    [[nodiscard]] const BoundEnd& last() const { return at(last_end()); }
};

/// A share of the loaded length, with its spread and source.
struct LengthShare {
    double share = 0.0;
    double sd = 0.0;
    SpreadOrigin origin = SpreadOrigin::none;
    CitationId source{};
};

/// The error limit of a tape: a fixed part and a part in proportion, taken as rectangular.
struct Tape {
    Length fixed;
    double share = 0.0;
    CitationId source{};
};

/// What the tables say of elastic that is pulled out over its relaxed length; each may be null. The
/// book owns them.
struct ElasticRange {
    const Figure* from = nullptr;  ///< below it the line hangs slack
    const Figure* up_to = nullptr; ///< a caution above
    const Figure* limit = nullptr; ///< the custom is to stop there
    const Figure* loss = nullptr;  ///< of its pull, in its first weeks
};

/// A pull and how much longer than without load the line's rope is at it.
struct StrainAtPull {
    Tension tension;
    std::optional<Force> pull; ///< in newtons, where the breaking strength is known
    double strain = 0.0;
};

/// The states that the line is in: as asked for, at the reference tension, and on the bench.
struct States {
    Tension tension;               ///< of the state that the length was asked in
    bool tension_left_out = false; ///< the job gave one, but its length is that of an eased route
    bool prestretched = false;
    MarkingTension::Basis marking_basis{};
    Force marking_tension; ///< 0: relaxed and straight, or slack

    double working_strain = 0.0; ///< at the line's tension
    double marking_strain = 0.0; ///< at the marking tension
    CitationId strain_source{};
    double strain_spread = 0.0; ///< standard deviation of both strains, as a share of them
    SpreadOrigin strain_origin = SpreadOrigin::none;

    std::optional<RopeStretch> stretch;       ///< of its rope, where a source gives one
    std::optional<ElasticRange> elastic;      ///< where elastic is pulled out in its shortest state
    std::optional<LengthShare> slack;         ///< where the rope is marked slack
    std::optional<LengthShare> first_stretch; ///< absent: prestretched, or no source gives one
    bool wash = false;                        ///< the line will be washed after it is made
    std::optional<LengthShare> shrinkage;     ///< where it will be washed and a source gives it
    std::optional<LengthShare> milk_out; ///< where one end leaves slack cover to milk to the other
    Nanometres least_milk_out = 0;
    Tape tape;
};

/// What the line's rope does at other pulls than the one that its length was asked at.
struct PullsOfLine {
    double asked = 0.0;               ///< strain at the line's own tension
    double reference = 0.0;           ///< strain at the reference tension
    std::vector<StrainAtPull> pulls;  ///< in order of strain; empty where nothing is known
    std::optional<StrainAtPull> load; ///< its load, else its tension; none where it has neither
    std::string load_not_known;       ///< why the stretch at that pull is not known; else empty
};

/// A sleeve put on over the line; a piece of rope of its own.
struct Sleeve {
    Length finished; ///< along the line
    Length from;     ///< its start, from the bearing point of end a
    Length cut;      ///< what to cut for it, before it is opened over the line
    Length sd;
    CitationId source{};
};

/// The finished length of a line that is given as a route.
struct RouteLength {
    Nanometres unloaded = 0;            ///< of that, rope that carries no load: the hand's tail
    Length straight;                    ///< in straight parts
    Length wrapped;                     ///< round sheaves, pins and rails
    std::size_t turns = 0;              ///< how many of those there are
    std::optional<Length> tail_eased;   ///< of a purchase
    std::optional<Length> tail_hauled;  ///< of a purchase whose hauled state is given
    std::optional<Length> least_sheave; ///< the smallest that the line turns on
    bool eased = false;                 ///< the longest state, which carries no load
    bool rove = false;                  ///< led through what the route names, not only measured

    /// The whole way.
    [[nodiscard]] Nanometres length() const { return to_nanometres(straight + wrapped); }
};

/// Where the cover of a stripped line ends, hoisted or lowered. Distances run along the line
/// towards end b; one that is negative lies on the other side.
struct CoverPlace {
    std::optional<Length> past_sheave; ///< from the sheave to where the cover ends
    std::optional<Length> at_cleat;    ///< from where the cover ends to the cleat
};

/// Where the line runs and what is done along it.
struct AlongLine {
    std::optional<Length> headroom; ///< bearing point of end a to the sheave, hoisted
    std::optional<Length> travel;   ///< hoisted to lowered; of elastic: how much longer it gets
    std::optional<Length> cleat;    ///< bearing point of end a to the cleat, hoisted
    std::optional<Length> smallest_hole; ///< the smallest hole or sheave that it goes through
    bool reversible = false;             ///< it will be turned end for end
    std::optional<Sourced<Length>> advised_sheave; ///< the least that its rope should turn on
    std::optional<Sourced<Length>> cover_at_cleat; ///< cover that has to lie beyond the cleat
    std::optional<Sleeve> sleeve;
    std::optional<CoverPlace> cover_hoisted; ///< of a stripped line whose sheave or cleat is known
    std::optional<CoverPlace> cover_lowered; ///< the same after its travel
};

/// Where a line is weakest.
enum class WeakPlace : std::uint8_t { end, pin, sheave };

/// How a load was worked out of what the job says of a sail, a block, a tackle or a boat.
struct LoadWorking {
    Working working;
    CitationId source{};
};

/// What the line holds, and what is asked of it.
struct Strength {
    std::optional<Force> load;               ///< the greatest in use
    std::optional<LoadWorking> load_working; ///< nothing: the job states it as a force
    std::optional<Retained> retained; ///< the least that a source gives of its ends and bends
    WeakPlace place{};                ///< what retains so little
    std::optional<LineEnd> weaker;    ///< the end there; none for a sheave
    /// Breaking strength over the stated load, less what is known to be lost; an upper bound where
    /// something is not counted.
    std::optional<double> design_factor;
    std::optional<double> share;                  ///< of what it holds that the load is
    std::optional<Sourced<double>> working_share; ///< the most that a source gives for such rope
    std::vector<std::string> not_counted;         ///< what may weaken it and no source says how
};

/// One thing to do to the line, in the order in which it can be done.
struct PieceStep {
    std::optional<LineEnd> end; ///< none: the line as a whole
    Action action = Action::plain;
    Part part = Part::rope;
    ShortList<std::uint8_t, most_piece_marks> at; ///< numbers of marks of its end
    std::string_view text;                        ///< `{named}` in it stands for the next member
    std::string_view named = {};
    TextAmounts amounts = {}; ///< `{1}` stands for the first of them
};

/// The steps of a line, and the places in them of those that its length or its texts complete.
struct OrderOfWork {
    std::vector<PieceStep> steps;
    std::optional<std::size_t> check;
    std::optional<std::size_t> fit_first;
    std::array<std::optional<std::size_t>, 2> trim;    ///< of each end
    std::array<std::optional<std::size_t>, 2> cut_raw; ///< the raw cut of each plain end
    std::array<std::optional<std::size_t>, 2> aboard;  ///< the last cut of each plain end, aboard
};

/// How often a made end can be made again out of the rope for wear.
struct Remakes {
    LineEnd end{};
    Nanometres takes = 0; ///< rope that one re-make of that end takes
    Nanometres count = 0;
};

/// What a published rule asks of rope that carries a person: a strength, or a strength over load.
struct PersonRule {
    std::string_view name;
    std::optional<Force> strength;
    std::optional<double> factor;
    CitationId source{};
};

/// A line that carries a person, and what rules ask of such rope.
struct PersonVerdict {
    bool carries = false;
    std::vector<PersonRule> rules;
};

/// What a line depends on besides its length, finished: nothing after it looks anything up. The
/// rope and the ends are owned by the LineBinder that made it.
struct BoundLine {
    const Rope* rope = nullptr;
    const Citations* citations = nullptr; ///< to name the rule that a refusal rests on
    const Names* names = nullptr;         ///< of the rows, marks and values of its ends
    FitAndSpare fit;
    BoundEnds ends;
    std::optional<RouteLength> route; ///< none: the job gives the length
    States states;
    PullsOfLine pulls;
    AlongLine along;
    Strength strength;
    PersonVerdict person;
    OrderOfWork work;
    std::vector<Remakes> remakes;       ///< of each made end; empty where there is no rope for wear
    std::vector<PieceCaution> cautions; ///< those that do not depend on its length

    [[nodiscard]] const BoundEnd& end(LineEnd which) const { return ends.at(which); }
    [[nodiscard]] bool counts(LineEnd which) const { return ends.counts(which); }
    [[nodiscard]] const BoundEnd& first() const { return ends.first(); }
    [[nodiscard]] const BoundEnd& last() const { return ends.last(); }
};

} // namespace libsplice
