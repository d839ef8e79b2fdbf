// Reads a published value, and takes half of its last digit as its tolerance unless another is
// stated.
#include "cli/check/printed_value.h"

#include "libsplice/base/text.h"
#include "libsplice/units/read.h"
#include "libsplice/units/show.h"

#include <algorithm>
#include <cmath>

namespace libsplice::cli {

namespace {

constexpr std::string_view digits = "0123456789";

/// The unit that ends the text: `mm` of `360 mm`; empty for a plain number.
std::string_view unit_of(std::string_view text) {
    const auto last_digit = text.find_last_of(digits);
    return last_digit == std::string_view::npos ? text : trimmed(text.substr(last_digit + 1));
}

/// Without the unit `unit`, or a fault where the text does not end in it.
Result<double> read_number_before(std::string_view text, std::string_view unit) {
    if (unit_of(text) != unit) {
        return Unexpected(Fault{Code::not_a_number, '"' + std::string(text) +
                                                        "\" must be a number and \"" +
                                                        std::string(unit) + '"'});
    }
    return read_number(trimmed(text.substr(0, text.size() - unit.size())));
}

/// The value of a text in SI units, degrees, or a share of one.
Result<double> read_value(std::string_view text, Measure measure) {
    switch (measure) {
    case Measure::length: {
        const auto length = read_length(text);
        return length ? Result<double>(length->length.si()) : Unexpected(length.error());
    }
    case Measure::force: {
        const auto tension = read_tension(text);
        if (tension && tension->basis != Tension::Basis::force) {
            return Unexpected(Fault{Code::not_a_tension,
                                    '"' + std::string(text) + "\" must be a force, e.g. 25.2 kN"});
        }
        return tension ? Result<double>(tension->value) : Unexpected(tension.error());
    }
    case Measure::share: {
        const auto percent = read_number_before(text, "%");
        return percent ? Result<double>(*percent / 100.0) : percent;
    }
    case Measure::degrees:
        return read_number_before(text, "deg");
    case Measure::number:
        break;
    }
    return read_number(text);
}

/// Half of the last digit of the text's last number: 0.05 of `10.5 in`, a sixteenth of `3 3/8 in`.
double half_last_digit(std::string_view text) {
    const auto end = text.find_last_of(digits);
    const auto before = text.find_last_not_of(digits, end);
    const auto start = before == std::string_view::npos ? 0 : before + 1;
    const auto number = text.substr(start, end + 1 - start);
    if (before != std::string_view::npos && text[before] == '.') {
        return 0.5 * std::pow(10.0, -static_cast<double>(number.size()));
    }
    if (before != std::string_view::npos && text[before] == '/') {
        return 0.5 / read_number(number).value();
    }
    return 0.5;
}

/// One of the text's last unit, as a value.
Result<double> one_of_last_unit(std::string_view text, Measure measure) {
    return read_value("1 " + std::string(unit_of(text)), measure);
}

} // namespace

Result<PrintedValue> read_printed_value(std::string_view text, Measure measure) {
    const auto value = read_value(text, measure);
    if (!value) {
        return Unexpected(value.error());
    }
    const auto unit = one_of_last_unit(text, measure);
    if (!unit) {
        return Unexpected(unit.error());
    }
    return PrintedValue{*value, half_last_digit(text) * *unit};
}

Result<double> read_tolerance(std::string_view text, Measure measure, const PrintedValue& printed) {
    const bool relative = unit_of(text) == "%";
    auto tolerance = read_value(text, relative ? Measure::share : measure);
    if (!tolerance) {
        return tolerance;
    }
    if (*tolerance < 0.0) {
        return Unexpected(
            Fault{Code::value_out_of_range, "a tolerance cannot be less than nothing"});
    }
    return relative ? *tolerance * std::abs(printed.value) : *tolerance;
}

std::string show_answer(double value, Measure measure) {
    constexpr int places = 6;
    switch (measure) {
    case Measure::length:
        return show_number(value * 1000.0, places) + " mm";
    case Measure::force:
        return show_number(value, places) + " N";
    case Measure::degrees:
        return show_number(value, places) + " deg";
    case Measure::share:
        return show_number(value * 100.0, places) + " %";
    case Measure::number:
        break;
    }
    return show_number(value, places);
}

} // namespace libsplice::cli
