// All of a line but its name, its count and its length: worked out once, used for every like line.
#pragma once

#include "libsplice/allowance/book.h"
#include "libsplice/cut/settings.h"
#include "libsplice/job/line.h"

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

/// One end of a line as the job asks for it.
struct EndPlan {
    const Kind* kind = nullptr;
    const End* allowance = nullptr;
    std::string fitting;                      ///< its name; empty: none
    std::optional<Nanometres> fitting_length; ///< bearing point to working point
    Nanometres pin_centre = 0; ///< bearing point beyond the pin's centre, if so measured
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
    const Figure* limit = nullptr; ///< refused above
    const Figure* loss = nullptr;  ///< of its pull, in its first weeks
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
    bool tension_left_out = false;      ///< the job gave one, which does not belong to that state

    /// The whole way.
    [[nodiscard]] Nanometres length() const { return to_nanometres(straight + wrapped); }
};

/// What a line depends on. The rope and the allowances are owned by the LineBinder that made the
/// plan.
struct LinePlan {
    const Rope* rope = nullptr;
    const Citations* citations = nullptr; ///< to name the rule that a refusal rests on
    const Names* names = nullptr;         ///< of the rows, marks and values of its ends
    std::array<EndPlan, 2> ends;
    LineEnd first_end = LineEnd::a;
    /// The end whose kind accounts for both ends (a join, an item made whole); none on an open
    /// line. The other end then has the same allowance, of which only the marks are its own.
    std::optional<LineEnd> closing;
    Fit fit = Fit::at_least;
    std::optional<Nanometres> tolerance;
    std::optional<RouteLength> route; ///< none: the job gives the length
    bool prestretched = false;
    bool person = false;
    std::optional<Force> load;
    Tension tension; ///< of the state that the length was asked in
    MarkingTension::Basis marking_basis{};
    Force marking_tension;          ///< 0: relaxed and straight, or slack
    std::optional<Length> headroom; ///< bearing point of end a to the sheave, hoisted
    std::optional<Length> travel; ///< from hoisted to lowered; of elastic: how much longer it gets
    std::optional<Length> cleat;  ///< bearing point of end a to the cleat, hoisted
    std::optional<Length> smallest_hole; ///< the smallest hole or sheave that the line goes through
    Nanometres pair_tolerance = 0;       ///< how far the lines of a pair may differ
    std::optional<Sourced<Length>> advised_sheave; ///< the least that its rope should turn on
    std::optional<Sourced<Length>> cover_at_cleat; ///< cover that has to lie beyond the cleat
    std::optional<Sleeve> sleeve;
    std::vector<const Rule*> person_rules; ///< what is asked of rope that carries a person
    Nanometres step = 0;
    Nanometres extra = 0;
    Nanometres wear = 0;
    std::optional<Nanometres> spare; ///< as the shop states it, in place of the risk's
    double spare_quantile = 0.0;     ///< standard deviations that the spare covers

    double working_strain = 0.0; ///< at the line's tension
    double marking_strain = 0.0; ///< at the marking tension
    CitationId strain_source{};
    double strain_spread = 0.0; ///< standard deviation of both strains, as a share of them
    SpreadOrigin strain_origin = SpreadOrigin::none;
    std::optional<RopeStretch> stretch;       ///< of its rope, where a source gives one
    std::optional<ElasticRange> elastic;      ///< where elastic is pulled out in its shortest state
    std::optional<LengthShare> slack;         ///< where the rope is marked slack
    std::optional<LengthShare> first_stretch; ///< absent: prestretched, or no source gives one
    std::optional<LengthShare> shrinkage; ///< where the line will be washed and a source gives it
    bool wash = false;                    ///< the line will be washed after it is made
    bool reversible = false;              ///< it will be turned end for end
    std::optional<LengthShare> milk_out;  ///< where one end leaves slack cover to milk to the other
    Nanometres least_milk_out = 0;
    Tape tape;

    [[nodiscard]] const EndPlan& end(LineEnd which) const {
        return ends[static_cast<std::size_t>(which)];
    }
    /// Whether the end brings rows, steps and cautions of its own.
    [[nodiscard]] bool counts(LineEnd which) const { return !closing || *closing == which; }
    [[nodiscard]] const EndPlan& first() const { return end(first_end); }
    [[nodiscard]] const EndPlan& last() const { return end(other(first_end)); }
};

} // namespace libsplice
