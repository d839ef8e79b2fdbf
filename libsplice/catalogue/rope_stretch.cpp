// What a rope stretches at a pull, by its own curve or that of its sort.
#include "libsplice/catalogue/rope_stretch.h"

#include "libsplice/catalogue/rope.h"
#include "libsplice/catalogue/rule.h"
#include "libsplice/units/show.h"

namespace libsplice {

namespace {

/// The reference tension as a share of a breaking strength that is not known: D^2/8 kgf is from 0.2
/// to 1.2 % of those that print gives for fibre rope (0.50 to 0.10 kN/mm2 of D^2), and what a rope
/// stretches between the two is lost in the spread of its curve.
constexpr double usual_reference_share = 0.005;

/// The pull in the curve's own loads.
std::optional<double> load_of(const RopeStretch& stretch, const Tension& tension,
                              const Rope& rope) {
    if (!stretch.by_force && tension.basis == Tension::Basis::share) {
        return tension.value;
    }
    const auto pull = pull_of(tension, rope);
    if (!pull || stretch.by_force) {
        return pull ? std::optional(pull->si()) : std::nullopt;
    }
    if (!rope.breaking && tension.basis == Tension::Basis::reference) {
        return *pull > Force() ? usual_reference_share : 0.0;
    }
    return rope.breaking ? std::optional(*pull / rope.breaking->value) : std::nullopt;
}

std::string described(const Rope& rope) {
    return std::string(name_of(rope.construction)) + ' ' + std::string(name_of(rope.fibre));
}

} // namespace

std::string RopeStretch::last_load() const {
    const double load = curve.points().back().load;
    return by_force ? show_number(load, 1) + " N" : show_number(load * 100.0, 2) + " %";
}

std::optional<RopeStretch> stretch_of(const Rope& rope, const Rules& rules) {
    const RopeStretch* general = rules.find_stretch();
    std::optional<RopeStretch> stretch = rope.stretch;
    if (!stretch && general != nullptr) {
        stretch = *general;
    }
    const Figure* spread = rules.find(FigureId::stretch_spread);
    if (stretch && stretch->origin == SpreadOrigin::none && spread != nullptr) {
        stretch->spread = spread->number();
        stretch->origin = SpreadOrigin::stated_guess;
    }
    return stretch;
}

std::optional<Force> pull_of(const Tension& tension, const Rope& rope) {
    switch (tension.basis) {
    case Tension::Basis::force:
        return Force(tension.value);
    case Tension::Basis::share:
        return rope.breaking ? std::optional(rope.breaking->value * tension.value) : std::nullopt;
    case Tension::Basis::reference:
        break;
    }
    return measured_relaxed(rope.construction) ? Force() : reference_tension(rope.diameter);
}

Result<double> strain_at(const RopeStretch& stretch, const Tension& tension, const Rope& rope) {
    const auto load = load_of(stretch, tension, rope);
    if (!load) {
        return Unexpected(
            Fault{Code::strength_missing,
                  "the breaking strength of this " + described(rope) +
                      " is not known, and its stretch is counted in it; give it as rope_breaking, "
                      "from the reel, or give the tension in per cent of it"});
    }
    if (!stretch.curve.reaches(*load)) {
        return Unexpected(
            Fault{Code::beyond_stretch,
                  "the stretch of this " + described(rope) + " is printed up to " +
                      stretch.last_load() + (stretch.by_force ? "" : " of breaking strength") +
                      ", and nothing is guessed beyond; ask for its length at a lower pull"});
    }
    return stretch.curve.at(*load);
}

std::optional<bool> is_covered(const RopeStretch& stretch, const Tension& tension,
                               const Rope& rope) {
    const auto load = load_of(stretch, tension, rope);
    return load ? std::optional(stretch.curve.covers(*load)) : std::nullopt;
}

} // namespace libsplice
