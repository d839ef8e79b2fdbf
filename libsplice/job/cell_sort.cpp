// Brings cells into one form, and reads the units of headings.
#include "libsplice/job/cell_sort.h"

#include "libsplice/base/text.h"
#include "libsplice/units/read.h"

#include <algorithm>
#include <span>

namespace libsplice {

namespace {

bool is_digit(char c) {
    return c >= '0' && c <= '9';
}

bool is_plain_word(std::string_view text) {
    return std::ranges::none_of(
        text, [](char c) { return (c >= 'A' && c <= 'Z') || c == ' ' || c == '_' || c == '\t'; });
}

/// In small letters, with hyphens between words: `Trim aboard` is `trim-aboard`.
std::string joined_word(std::string_view text) {
    std::string word = in_small_letters(text);
    std::ranges::replace(word, ' ', '-');
    std::ranges::replace(word, '_', '-');
    std::ranges::replace(word, '\t', '-');
    return word;
}

std::string_view yes_or_no(std::string_view text) {
    const std::string word = in_small_letters(text);
    if (word == "yes" || word == "true") {
        return "yes";
    }
    return word == "no" || word == "false" ? "no" : text;
}

bool has_decimal_comma(std::string_view text) {
    for (std::size_t i = 1; i + 1 < text.size(); ++i) {
        if (text[i] == ',' && is_digit(text[i - 1]) && is_digit(text[i + 1])) {
            return true;
        }
    }
    return false;
}

std::string with_decimal_points(std::string_view text) {
    std::string points(text);
    for (std::size_t i = 1; i + 1 < points.size(); ++i) {
        if (points[i] == ',' && is_digit(points[i - 1]) && is_digit(points[i + 1])) {
            points[i] = '.';
        }
    }
    return points;
}

std::span<const Unit> units_of(CellSort sort) {
    switch (sort) {
    case CellSort::length:
        return length_units;
    case CellSort::force:
        return force_units;
    case CellSort::mass:
        return mass_units;
    default:
        return {};
    }
}

/// Without blanks, so that `kg/100 m` is the unit `kg/100m`.
std::string without_blanks(std::string_view text) {
    std::string word(text);
    std::erase(word, ' ');
    return word;
}

/// A price may name its money; what it is the price of counts.
std::optional<HeadingUnit> price_unit(std::string_view text) {
    const std::string unit = in_small_letters(without_blanks(text));
    const std::size_t slash = unit.find('/');
    const std::string of = slash == std::string::npos ? "m" : unit.substr(slash + 1);
    if (of == "reel") {
        return HeadingUnit{{}, "/reel"};
    }
    return of == "m" ? std::optional(HeadingUnit{}) : std::nullopt;
}

} // namespace

std::optional<HeadingUnit> read_heading_unit(std::string_view text, CellSort sort) {
    if (sort == CellSort::price) {
        return price_unit(text);
    }
    if (sort == CellSort::force && text == "%") {
        return HeadingUnit{{}, "%"};
    }
    const std::string word = in_small_letters(without_blanks(text));
    const auto units = units_of(sort);
    const auto found = std::ranges::find_if(
        units, [&](const Unit& unit) { return in_small_letters(unit.word) == word; });
    if (found == units.end()) {
        return std::nullopt;
    }
    return sort == CellSort::length ? HeadingUnit{read_length_unit(found->word), {}}
                                    : HeadingUnit{{}, found->word};
}

std::string units_for(CellSort sort) {
    return listed_units(units_of(sort));
}

std::string_view settled(std::string_view text, const CellForm& form,
                         std::deque<std::string>& made) {
    if (text.empty() || form.sort == CellSort::text) {
        return text;
    }
    if (form.sort == CellSort::yes_no) {
        return yes_or_no(text);
    }
    if (form.sort == CellSort::choice || form.sort == CellSort::end) {
        return is_plain_word(text) ? text : std::string_view(made.emplace_back(joined_word(text)));
    }
    if (form.comma_is_decimal && holds_numbers(form.sort) && has_decimal_comma(text)) {
        text = made.emplace_back(with_decimal_points(text));
    }
    if (!form.unit_words.empty() && read_number(text)) {
        text = made.emplace_back(std::string(text) + (form.unit_words.starts_with('/') ? "" : " ") +
                                 std::string(form.unit_words));
    }
    return text;
}

} // namespace libsplice
