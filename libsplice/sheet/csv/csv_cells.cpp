// Cells of CSV: quoted where they must be, and never a formula.
#include "libsplice/sheet/csv/csv_cells.h"

#include <algorithm>
#include <array>
#include <charconv>

namespace libsplice {

namespace {

constexpr Nanometres ten_thousandth_of_inch = 2540;

/// Inches with four places, to the nearest.
void append_inches(std::string& row, Nanometres length) {
    if (length < 0) {
        row += '-';
        length = -length;
    }
    const std::int64_t count = (length + ten_thousandth_of_inch / 2) / ten_thousandth_of_inch;
    append_number_cell(row, count / 10'000);
    row += '.';
    for (std::int64_t place = 1'000; place != 0; place /= 10) {
        row += static_cast<char>('0' + count / place % 10);
    }
}

constexpr auto quoted_characters = [] {
    std::array<bool, 256> quoted{};
    for (const char c : {',', '"', '\n', '\r'}) {
        quoted.at(static_cast<unsigned char>(c)) = true;
    }
    return quoted;
}();

bool needs_quotes(char c) {
    return quoted_characters[static_cast<unsigned char>(c)];
}

template <class Number>
void append_number(std::string& row, Number value) {
    std::array<char, 32> digits; // the longest double is shorter
    const auto end = std::to_chars(digits.data(), digits.data() + digits.size(), value).ptr;
    row.append(digits.data(), end);
}

} // namespace

void append_text_cell(std::string& row, std::string_view text) {
    constexpr std::string_view starts_formula = "=+-@";
    const bool quoted = std::ranges::any_of(text, needs_quotes);
    if (quoted) {
        row += '"';
    }
    if (!text.empty() && starts_formula.find(text.front()) != std::string_view::npos) {
        row += '\'';
    }
    if (!quoted) {
        row += text;
        return;
    }
    for (const char c : text) {
        if (c == '"') {
            row += '"';
        }
        row += c;
    }
    row += '"';
}

void append_length_cell(std::string& row, Nanometres length, UnitSystem units) {
    if (units == UnitSystem::metric) {
        append_metres(row, length);
    } else {
        append_inches(row, length);
    }
}

void append_number_cell(std::string& row, double value) {
    append_number(row, value);
}

void append_number_cell(std::string& row, std::int64_t value) {
    append_number(row, value);
}

} // namespace libsplice
