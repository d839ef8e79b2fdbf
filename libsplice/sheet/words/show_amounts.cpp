// Pulls, shares and tensions in the words of the bench.
#include "libsplice/sheet/words/show_amounts.h"

namespace libsplice {

std::string show_pull(Force force, UnitSystem units) {
    return units == UnitSystem::metric ? show_number(force.si() / newtons_per_kgf, 1) + " kg"
                                       : show_number(force.si() / newtons_per_lbf, 0) + " lb";
}

std::string show_share(double share) {
    return show_number(share * 100.0, 2) + " %";
}

std::string show_tension(const Tension& tension, UnitSystem units) {
    switch (tension.basis) {
    case Tension::Basis::force:
        return show_force(Force(tension.value), units);
    case Tension::Basis::share:
        return show_share(tension.value) + " of breaking strength";
    case Tension::Basis::reference:
        break;
    }
    return "the reference tension";
}

} // namespace libsplice
