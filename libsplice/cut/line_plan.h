// All of a line but its name, its count and its length: worked out once, used for every like line.
#pragma once

#include "libsplice/allowance/book.h"
#include "libsplice/cut/settings.h"
#include "libsplice/job/line.h"

#include <array>
#include <optional>
#include <string>
#include <string_view>

namespace libsplice {

/// How close the finished length has to be.
enum class Fit : std::uint8_t {
    exact, ///< two made ends, a tolerance each way
    trim,  ///< one end is cut to fit aboard
    least, ///< a running line, never short
};
[[nodiscard]] std::span<const std::string_view> fit_names();

/// One end of a line as the job asks for it.
struct EndPlan {
    const Kind* kind = nullptr;
    const Allowance* allowance = nullptr;
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

/// What a line depends on. The rope and the allowances are owned by the LineBinder that made the
/// plan.
struct LinePlan {
    const Rope* rope = nullptr;
    std::array<EndPlan, 2> ends;
    End made_first = End::a;
    Fit fit = Fit::least;
    std::optional<Nanometres> tolerance;
    bool bedded = false;
    bool person = false;
    std::optional<Force> load;
    Tension tension; ///< of the state that the length was asked in
    MarkingPull::Basis marking_basis{};
    Force marking_pull; ///< 0: relaxed and straight, or slack
    Nanometres step = 0;
    Nanometres extra = 0;
    Nanometres wear = 0;
    std::optional<Nanometres> spare; ///< as the shop states it, in place of the risk's
    double spare_quantile = 0.0;     ///< standard deviations that the spare covers

    double working_strain = 0.0; ///< at the line's tension
    double marking_strain = 0.0; ///< at the marking pull
    CitationId strain_source{};
    std::optional<LengthShare> slack;    ///< where the rope is marked slack
    std::optional<LengthShare> bedding;  ///< absent: bedded, or no source gives one
    std::optional<LengthShare> milk_out; ///< where one end leaves slack cover to milk to the other
    Nanometres least_milk_out = 0;
    Tape tape;

    [[nodiscard]] const EndPlan& end(End which) const {
        return ends[static_cast<std::size_t>(which)];
    }
    [[nodiscard]] const EndPlan& first() const { return end(made_first); }
    [[nodiscard]] const EndPlan& last() const { return end(other(made_first)); }
};

} // namespace libsplice
