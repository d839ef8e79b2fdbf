// Lengths in a column whose head names the unit once.
#include "libsplice/sheet/words/column_length.h"

#include <numeric>

namespace libsplice {

namespace {

constexpr Nanometres millimetre = 1'000'000;
constexpr Nanometres sixteenth = 1'587'500;

/// The nearest whole number of `unit`s; halves away from 0.
Nanometres nearest_count(Nanometres length, Nanometres unit) {
    return length < 0 ? -((-length + unit / 2) / unit) : (length + unit / 2) / unit;
}

std::string inches(Nanometres length) {
    const Nanometres count = nearest_count(length, sixteenth);
    const Nanometres whole = count / 16;
    const Nanometres rest = count < 0 ? -(count % 16) : count % 16;
    std::string text = whole == 0 && count < 0 ? "-" : "";
    if (rest == 0) {
        return text + std::to_string(whole);
    }
    const Nanometres common = std::gcd(rest, Nanometres{16});
    return text + (whole == 0 ? "" : std::to_string(whole) + ' ') + std::to_string(rest / common) +
           '/' + std::to_string(16 / common);
}

} // namespace

std::string tape_cell(Nanometres length, UnitSystem units) {
    return units == UnitSystem::metric ? std::to_string(nearest_count(length, millimetre))
                                       : inches(length);
}

Nanometres on_tape(Nanometres length, UnitSystem units) {
    const Nanometres step = units == UnitSystem::metric ? millimetre : sixteenth;
    return nearest_count(length, step) * step;
}

std::string_view tape_unit(UnitSystem units) {
    return units == UnitSystem::metric ? "mm" : "in";
}

std::string metre_cell(Nanometres length, UnitSystem units) {
    if (units == UnitSystem::imperial) {
        return show_length(length, units);
    }
    const Nanometres count = nearest_count(length, millimetre);
    const Nanometres size = count < 0 ? -count : count;
    std::string thousandths = std::to_string(size % 1000);
    thousandths.insert(0, 3 - thousandths.size(), '0');
    return (count < 0 ? "-" : "") + std::to_string(size / 1000) + '.' + thousandths;
}

std::string_view metre_unit(UnitSystem units) {
    return units == UnitSystem::metric ? "m" : "";
}

} // namespace libsplice
