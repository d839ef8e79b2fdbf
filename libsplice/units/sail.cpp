// From text to areas, winds, masses and angles: a number, then one of a few units.
#include "libsplice/units/sail.h"

#include "libsplice/base/text.h"
#include "libsplice/units/read.h"

#include <algorithm>
#include <array>
#include <numbers>
#include <optional>
#include <span>
#include <string>

namespace libsplice {

namespace {

struct UnitFactor {
    std::string_view unit; ///< empty: a bare number
    double si = 1.0;
};

constexpr double square_foot = metres_per_inch * 12 * metres_per_inch * 12;
constexpr double kilograms_per_pound = 0.45359237;

constexpr std::array areas{UnitFactor{"m2", 1.0}, UnitFactor{"m²", 1.0},
                           UnitFactor{"ft2", square_foot}, UnitFactor{"ft²", square_foot}};
constexpr std::array speeds{UnitFactor{"kn", metres_per_second_per_knot}, UnitFactor{"m/s", 1.0}};
constexpr std::array masses{UnitFactor{"kg", 1.0}, UnitFactor{"lb", kilograms_per_pound}};
constexpr std::array angles{UnitFactor{"", degrees(1.0).si()}, UnitFactor{"deg", degrees(1.0).si()},
                            UnitFactor{"°", degrees(1.0).si()}};

/// The number at the start of `text` times the factor of the unit behind it.
std::optional<double> number_in(std::string_view text, std::span<const UnitFactor> units) {
    text = trimmed(text);
    const auto end = std::min(text.find_first_not_of("0123456789.+-"), text.size());
    const auto unit = trimmed(text.substr(end));
    const auto number = read_number(text.substr(0, end));
    for (const UnitFactor& known : units) {
        if (number && unit == known.unit) {
            return *number * known.si;
        }
    }
    return std::nullopt;
}

Unexpected refused(std::string_view text, std::string_view hint) {
    return Unexpected(
        Fault{Code::not_a_number, in_quotes(text) + " cannot be read: " + std::string(hint)});
}

} // namespace

Result<Area> read_area(std::string_view text) {
    const auto area = number_in(text, areas);
    if (!area || !(*area > 0.0)) {
        return refused(text, "write an area such as 18 m2 or 190 ft2");
    }
    return Area(*area);
}

Result<Speed> read_speed(std::string_view text) {
    const auto speed = number_in(text, speeds);
    if (!speed || *speed < 0.0) {
        return refused(text, "write the apparent wind with its unit, such as 20 kn or 10 m/s");
    }
    return Speed(*speed);
}

Result<Mass> read_mass(std::string_view text) {
    const auto mass = number_in(text, masses);
    if (!mass || !(*mass > 0.0)) {
        return refused(text, "write a mass such as 107 kg or 236 lb");
    }
    return Mass(*mass);
}

Result<Angle> read_degrees(std::string_view text) {
    const auto angle = number_in(text, angles);
    if (!angle || *angle < 0.0 || *angle > std::numbers::pi) {
        return refused(text, "write an angle from 0 to 180 degrees, such as 90");
    }
    return Angle(*angle);
}

} // namespace libsplice
