// From text to quantities. Nothing is allocated unless something is wrong.
#include "libsplice/units/read.h"

#include "libsplice/base/text.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>
#include <string>
#include <utility>

namespace libsplice {

namespace {

/// The whole nanometres of a longer length would not all fit a `double`.
constexpr double longest_metres = 9'000'000.0;

constexpr std::string_view start_with_number = "start with a number in the digits 0 to 9";
constexpr std::string_view number_too_large = "the number is too large or too small to work with";

bool is_digit(char c) {
    return c >= '0' && c <= '9';
}

Unexpected not_a(Code code, std::string_view what, std::string_view text, std::string_view hint) {
    std::string sentence = text.empty() ? "an empty text" : in_quotes(text);
    sentence += " is not a ";
    sentence += what;
    sentence += ": ";
    sentence += hint;
    return Unexpected(Fault{code, std::move(sentence)});
}

/// A number without its sign, as written.
struct Number {
    double value = 0.0;
    bool fraction = false; ///< has a stroke: `3/8`, `1 1/2`
    bool digits = false;   ///< nothing but digits
};

/// Walks along a text. The first thing that goes wrong leaves a hint.
class Scanner {
  public:
    explicit Scanner(std::string_view text) : rest_(trimmed(text)) {}

    [[nodiscard]] bool at_end() const { return rest_.empty(); }
    [[nodiscard]] std::string_view rest() const { return rest_; }
    [[nodiscard]] std::string_view hint() const { return hint_; }

    /// Leaves the first hint that is given.
    std::nullopt_t refuse(std::string_view hint) {
        if (hint_.empty()) {
            hint_ = hint;
        }
        return std::nullopt;
    }

    void skip_blanks() {
        rest_.remove_prefix(std::min(rest_.find_first_not_of(" \t"), rest_.size()));
    }

    /// True for a minus; a plus is passed over.
    bool take_sign() {
        const bool minus = rest_.starts_with('-');
        if (minus || rest_.starts_with('+')) {
            rest_.remove_prefix(1);
        }
        return minus;
    }

    /// The word up to the next blank or digit.
    std::string_view take_word() {
        const auto end = std::min(rest_.find_first_of(" \t0123456789"), rest_.size());
        const auto word = rest_.substr(0, end);
        rest_.remove_prefix(end);
        return word;
    }

    /// A decimal number without a sign: digits, a point, an exponent.
    std::optional<Number> take_decimal() {
        if (rest_.empty() || !(is_digit(rest_[0]) || rest_[0] == '.')) {
            return refuse(start_with_number);
        }
        Number number;
        const char* const first = rest_.data();
        const auto [end, error] = std::from_chars(first, first + rest_.size(), number.value);
        if (error == std::errc::result_out_of_range) {
            return refuse(number_too_large);
        }
        if (error != std::errc()) {
            return refuse(start_with_number);
        }
        const auto length = static_cast<std::size_t>(end - first);
        number.digits = rest_.find_first_not_of("0123456789") >= length;
        rest_.remove_prefix(length);
        if (rest_.starts_with(',')) {
            return refuse("write a point for the decimals, and no commas");
        }
        return number;
    }

    /// A decimal number, a fraction, or a whole number and a fraction.
    std::optional<Number> take_number() {
        auto number = take_decimal();
        if (!number || !number->digits) {
            return number;
        }
        if (rest_.starts_with('/')) {
            return take_denominator(number->value);
        }
        if (!fraction_follows()) {
            return number;
        }
        skip_blanks();
        const auto numerator = take_decimal();
        const auto part = numerator ? take_denominator(numerator->value) : std::nullopt;
        if (!part) {
            return std::nullopt;
        }
        return Number{number->value + part->value, true, false};
    }

  private:
    /// Whether blanks, digits and a stroke come next.
    [[nodiscard]] bool fraction_follows() const {
        const auto start = rest_.find_first_not_of(" \t");
        if (start == 0 || start == std::string_view::npos || !is_digit(rest_[start])) {
            return false;
        }
        const auto stroke = rest_.find_first_not_of("0123456789", start);
        return stroke != std::string_view::npos && rest_[stroke] == '/';
    }

    /// The stroke and what stands under it.
    std::optional<Number> take_denominator(double numerator) {
        rest_.remove_prefix(1);
        constexpr std::string_view whole_numbers =
            "a fraction has whole numbers above and under its stroke";
        if (rest_.empty() || !is_digit(rest_[0])) {
            return refuse(whole_numbers);
        }
        const auto denominator = take_decimal();
        if (!denominator || !denominator->digits) {
            return refuse(whole_numbers);
        }
        if (!(denominator->value > 0.0)) {
            return refuse("a fraction cannot have 0 under its stroke");
        }
        return Number{numerator / denominator->value, true, false};
    }

    std::string_view rest_;
    std::string_view hint_;
};

double in_metres(double value, LengthUnit unit) {
    // A power of ten divides, so that 600 mm is 0.6 m to the last digit.
    switch (unit) {
    case LengthUnit::mm:
        return value / 1000.0;
    case LengthUnit::cm:
        return value / 100.0;
    default:
        return value * length_units.at(static_cast<std::size_t>(unit)).si;
    }
}

bool is_imperial(LengthUnit unit) {
    return unit == LengthUnit::in || unit == LengthUnit::ft;
}

/// The unit that comes next, or `bare` where nothing comes.
std::optional<LengthUnit> take_unit(Scanner& scanner, std::optional<LengthUnit> bare) {
    scanner.skip_blanks();
    if (scanner.at_end()) {
        return bare ? bare : scanner.refuse("give a unit: mm, cm, m, in or ft");
    }
    const auto unit = read_length_unit(scanner.take_word());
    return unit ? unit : scanner.refuse("the units are mm, cm, m, in and ft");
}

/// The inches after a number of feet; 0 where nothing comes.
std::optional<double> take_inches(Scanner& scanner) {
    scanner.skip_blanks();
    if (scanner.at_end()) {
        return 0.0;
    }
    const auto inches = scanner.take_number();
    if (!inches) {
        return std::nullopt;
    }
    if (take_unit(scanner, std::nullopt) != LengthUnit::in) {
        return scanner.refuse("only inches can follow feet");
    }
    if (inches->value >= 12.0) {
        return scanner.refuse("inches after feet are less than 12");
    }
    return inches->value;
}

std::optional<WrittenLength> take_length(Scanner& scanner, std::optional<LengthUnit> bare) {
    const bool minus = scanner.take_sign();
    const auto number = scanner.take_number();
    const auto unit = number ? take_unit(scanner, bare) : std::nullopt;
    if (!unit) {
        return std::nullopt;
    }
    if (number->fraction && !is_imperial(*unit)) {
        return scanner.refuse("fractions go with in and ft only; write decimals");
    }
    double metres = in_metres(number->value, *unit);
    scanner.skip_blanks();
    if (unit == LengthUnit::ft && !scanner.at_end()) {
        if (!number->digits) {
            return scanner.refuse("feet with inches after them are a whole number");
        }
        const auto inches = take_inches(scanner);
        if (!inches) {
            return std::nullopt;
        }
        metres = in_metres(number->value * 12.0 + *inches, LengthUnit::in);
    }
    scanner.skip_blanks();
    if (!scanner.at_end()) {
        return scanner.refuse("something is left over after the unit");
    }
    if (!(metres <= longest_metres)) {
        return scanner.refuse("a length is 9,000 km at the most");
    }
    return WrittenLength{Length(minus ? -metres : metres), is_imperial(*unit)};
}

std::optional<Tension> take_tension(Scanner& scanner) {
    if (scanner.take_sign()) {
        return scanner.refuse("a pull cannot be negative");
    }
    const auto number = scanner.take_decimal();
    if (!number) {
        return std::nullopt;
    }
    scanner.skip_blanks();
    if (scanner.rest() == "%") {
        if (number->value > 100.0) {
            return scanner.refuse("a share of the breaking strength is 100 % at the most");
        }
        return Tension{Tension::Basis::share, number->value / 100.0};
    }
    const Unit* unit = find_unit(force_units, scanner.rest());
    if (unit == nullptr) {
        return scanner.refuse("give one unit: N, kN, kgf, lbf or %");
    }
    const double force = number->value * unit->si;
    if (!std::isfinite(force)) {
        return scanner.refuse(number_too_large);
    }
    return Tension{Tension::Basis::force, force};
}

} // namespace

Result<WrittenLength> read_length(std::string_view text, std::optional<LengthUnit> bare) {
    Scanner scanner(text);
    if (const auto length = take_length(scanner, bare)) {
        return *length;
    }
    return not_a(Code::not_a_length, "length", text, scanner.hint());
}

Result<Tension> read_tension(std::string_view text) {
    Scanner scanner(text);
    if (const auto tension = take_tension(scanner)) {
        return *tension;
    }
    return not_a(Code::not_a_tension, "tension", text, scanner.hint());
}

Result<double> read_number(std::string_view text) {
    Scanner scanner(text);
    const bool minus = scanner.take_sign();
    const auto number = scanner.take_decimal();
    if (number && scanner.at_end()) {
        return minus ? -number->value : number->value;
    }
    scanner.refuse("something is left over after the number");
    return not_a(Code::not_a_number, "number", text, scanner.hint());
}

Result<double> read_mixed_number(std::string_view text) {
    Scanner scanner(text);
    const bool minus = scanner.take_sign();
    const auto number = scanner.take_number();
    if (number && scanner.at_end()) {
        return minus ? -number->value : number->value;
    }
    scanner.refuse("something is left over after the number");
    return not_a(Code::not_a_number, "number", text, scanner.hint());
}

Result<double> read_share(std::string_view text, BareShare bare) {
    const std::string_view number_text = trimmed(text);
    const bool percent = number_text.ends_with('%');
    auto number = read_number(number_text.substr(0, number_text.size() - (percent ? 1 : 0)));
    if (number && (percent || bare == BareShare::percent)) {
        return *number / 100.0;
    }
    return number;
}

Result<double> read_quantity(std::string_view text, std::span<const Unit> units,
                             std::string_view what) {
    Scanner scanner(text);
    const auto number = scanner.take_sign() ? std::nullopt : scanner.take_decimal();
    scanner.skip_blanks();
    const Unit* unit = number ? find_unit(units, scanner.rest()) : nullptr;
    if (unit != nullptr) {
        const double value = number->value * unit->si;
        if (value > 0.0 && std::isfinite(value)) {
            return value;
        }
        scanner.refuse("it must be over 0");
    }
    scanner.refuse(number ? std::string_view("give a unit")
                          : std::string_view("it must be over 0"));
    Fault fault = not_a(Code::not_a_number, what, text, scanner.hint()).error();
    fault.text += "; the units are " + listed_units(units);
    return Unexpected(std::move(fault));
}

Result<std::int64_t> read_count(std::string_view text, std::int64_t lowest, std::int64_t highest) {
    const std::string_view digits = trimmed(text);
    std::int64_t count = 0;
    const char* const end = digits.data() + digits.size();
    const auto [stop, error] = std::from_chars(digits.data(), end, count);
    if (error == std::errc() && stop == end && count >= lowest && count <= highest) {
        return count;
    }
    return not_a(Code::not_a_number, "number that fits here", text,
                 "give a whole number from " + std::to_string(lowest) + " to " +
                     std::to_string(highest));
}

} // namespace libsplice
