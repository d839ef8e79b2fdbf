// From quantities to text. Rounding is done on whole nanometres, so that it carries by itself.
#include "libsplice/units/show.h"

#include <gsl/assert>

#include <array>
#include <charconv>
#include <cmath>
#include <numeric>

namespace libsplice {

namespace {

constexpr Nanometres millimetre = 1'000'000;
constexpr Nanometres tenth_of_millimetre = 100'000;
constexpr Nanometres sixteenth_of_inch = 1'587'500;
constexpr Nanometres thousandth_of_inch = 25'400;

/// How many whole `step`s a length has, to the nearest, without its sign.
struct Steps {
    bool negative;
    std::uint64_t count;
};

Steps nearest_steps(Length length, Nanometres step) {
    const Nanometres total = to_nanometres(length);
    const auto size = static_cast<std::uint64_t>(total < 0 ? -total : total);
    const auto unit = static_cast<std::uint64_t>(step);
    const std::uint64_t count = (size + unit / 2) / unit;
    return {total < 0 && count != 0, count};
}

/// `count` as a decimal number with `places` places.
std::string with_places(std::uint64_t count, std::size_t places) {
    std::string digits = std::to_string(count);
    if (digits.size() <= places) {
        digits.insert(0, places + 1 - digits.size(), '0');
    }
    if (places != 0) {
        digits.insert(digits.size() - places, 1, '.');
    }
    return digits;
}

/// Zeros that say nothing at the end of a decimal number, and a point that would stand last.
void drop_trailing_zeros(std::string& number) {
    if (number.find('.') == std::string::npos) {
        return;
    }
    number.resize(number.find_last_not_of('0') + 1);
    if (number.ends_with('.')) {
        number.pop_back();
    }
}

std::string metric(std::uint64_t millimetres) {
    constexpr std::uint64_t per_metre = 1000;
    return millimetres < per_metre ? std::to_string(millimetres) + " mm"
                                   : with_places(millimetres, 3) + " m";
}

/// `7/16`, `3 7/16`, `3`: a whole number and the sixteenths over it, in lowest terms.
std::string with_sixteenths(std::uint64_t whole, std::uint64_t sixteenths, bool show_zero) {
    std::string text = whole != 0 || sixteenths == 0 || show_zero ? std::to_string(whole) : "";
    if (sixteenths != 0) {
        const std::uint64_t common = std::gcd(sixteenths, std::uint64_t{16});
        text += text.empty() ? "" : " ";
        text += std::to_string(sixteenths / common) + '/' + std::to_string(16 / common);
    }
    return text;
}

std::string imperial(std::uint64_t sixteenths) {
    const std::uint64_t inches = sixteenths / 16;
    const std::uint64_t feet = inches / 12;
    if (feet == 0) {
        return with_sixteenths(inches, sixteenths % 16, false) + " in";
    }
    return std::to_string(feet) + " ft " + with_sixteenths(inches % 12, sixteenths % 16, true) +
           " in";
}

} // namespace

std::string show_length(Length length, UnitSystem units) {
    const bool in_metric = units == UnitSystem::metric;
    const Steps steps = nearest_steps(length, in_metric ? millimetre : sixteenth_of_inch);
    return (steps.negative ? "-" : "") + (in_metric ? metric(steps.count) : imperial(steps.count));
}

std::string show_length(Nanometres length, UnitSystem units) {
    return show_length(from_nanometres(length), units);
}

std::string show_fine(Length length, UnitSystem units) {
    const bool in_metric = units == UnitSystem::metric;
    const Steps steps = nearest_steps(length, in_metric ? tenth_of_millimetre : thousandth_of_inch);
    return (steps.negative ? "-" : "") + with_places(steps.count, in_metric ? 1 : 3) +
           (in_metric ? " mm" : " in");
}

std::string show_force(Force force, UnitSystem units) {
    if (units == UnitSystem::imperial) {
        return show_number(force.si() / newtons_per_lbf, 0) + " lbf";
    }
    return show_number(force.si(), 0) + " N (" + show_number(force.si() / newtons_per_kgf, 1) +
           " kgf)";
}

void append_metres(std::string& text, Nanometres count) {
    if (count < 0) {
        text += '-';
    }
    constexpr auto per_metre = static_cast<std::uint64_t>(nanometres_per_metre);
    const auto bits = static_cast<std::uint64_t>(count);
    const std::uint64_t size = count < 0 ? 0 - bits : bits;
    std::array<char, 21> whole; // the largest count is shorter
    text.append(whole.data(),
                std::to_chars(whole.data(), whole.data() + whole.size(), size / per_metre).ptr);
    std::uint64_t rest = size % per_metre;
    if (rest == 0) {
        return;
    }
    text += '.';
    for (std::uint64_t place = per_metre / 10; rest != 0; place /= 10) {
        text += static_cast<char>('0' + rest / place);
        rest %= place;
    }
}

std::string show_number(double value, int places) {
    Expects(std::isfinite(value));
    Expects(places >= 0 && places <= 17);
    std::array<char, 350> digits; // the largest double has 309 digits before the point
    const auto [end, error] = std::to_chars(digits.data(), digits.data() + digits.size(), value,
                                            std::chars_format::fixed, places);
    Ensures(error == std::errc());
    std::string number(digits.data(), end);
    drop_trailing_zeros(number);
    return number == "-0" ? "0" : number;
}

} // namespace libsplice
