// Replaces each {name} of a text by the figure of that name.
#include "libsplice/sheet/words/fill_text.h"

#include "libsplice/allowance/values.h"

#include <algorithm>

namespace libsplice {

namespace {

constexpr std::string_view length_ending = "_m";
constexpr std::string_view angle_ending = "_deg";

/// The name without the unit that it ends in.
std::string_view without_unit(std::string_view name) {
    for (const auto ending : {length_ending, angle_ending}) {
        if (name.ends_with(ending)) {
            name.remove_suffix(ending.size());
            break;
        }
    }
    return name;
}

void append_mark(std::string& into, std::string_view name, const TemplateContext& filling) {
    const auto& marks = filling.allowance.marks;
    const auto mark = std::ranges::find_if(
        marks, [&](const Mark& each) { return filling.names.of(each.name) == name; });
    into += mark == marks.end() ? "(no figure)"
                                : show_length(filling.over + mark->from_tail_end, filling.units);
}

void append_value(std::string& into, std::string_view name, const TemplateContext& filling) {
    const auto values = values_of(filling.allowance);
    const auto value = std::ranges::find_if(values, [&](const Value& each) {
        return without_unit(filling.names.of(each.name)) == name;
    });
    into +=
        value == values.end() ? "(no figure)" : show_value(*value, filling.names, filling.units);
}

/// Appends a text, and what `append_figure` makes of each name in its braces.
template <class AppendFigure>
void append_with(std::string& into, std::string_view text, const AppendFigure& append_figure) {
    while (true) {
        const std::size_t open = text.find('{');
        const std::size_t close = text.find('}', open);
        if (close == std::string_view::npos) { // no further figure
            into += text;
            return;
        }
        into += text.substr(0, open);
        append_figure(text.substr(open + 1, close - open - 1));
        text.remove_prefix(close + 1);
    }
}

std::string show_amount(const TextAmount& amount, UnitSystem units) {
    switch (amount.sort) {
    case TextAmount::Sort::length:
        return show_length(Length(amount.value), units);
    case TextAmount::Sort::force:
        return show_force(Force(amount.value), units);
    case TextAmount::Sort::share:
        break;
    }
    return show_number(amount.value * 100.0, 1) + " %";
}

/// Whether the name is `named` or the number of an amount, which then has been appended.
bool append_amount(std::string& into, std::string_view name, const TextAmounts& amounts,
                   UnitSystem units, std::string_view named) {
    if (name == "named") {
        into += named;
        return true;
    }
    const auto index = static_cast<std::size_t>(name.empty() ? -1 : name.front() - '1');
    if (name.size() != 1 || index >= amounts.size()) {
        return false;
    }
    into += show_amount(amounts[index], units);
    return true;
}

} // namespace

std::string show_value(const Value& value, const Names& names, UnitSystem units) {
    const std::string_view name = names.of(value.name);
    // Diameters: whole millimetres are too coarse.
    if (value.name == ValueName::over_bury_m || value.name == ValueName::end_step_m) {
        return show_fine(Length(value.value), units);
    }
    if (name.ends_with(length_ending)) {
        return show_length(Length(value.value), units);
    }
    if (name.ends_with(angle_ending)) {
        return show_number(value.value, 0) + " degrees";
    }
    return show_number(value.value, 2);
}

std::string show_name(std::string_view name) {
    std::string words(without_unit(name));
    std::ranges::replace(words, '_', ' ');
    return words;
}

void append_filled(std::string& into, std::string_view text, const TemplateContext& filling) {
    append_with(into, text, [&](std::string_view name) {
        if (name.starts_with('@')) {
            append_mark(into, name.substr(1), filling);
        } else if (!append_amount(into, name, filling.amounts, filling.units, filling.named)) {
            append_value(into, name, filling);
        }
    });
}

void append_amounts(std::string& into, std::string_view text, const TextAmounts& amounts,
                    UnitSystem units, std::string_view named) {
    append_with(into, text,
                [&](std::string_view name) { append_amount(into, name, amounts, units, named); });
}

} // namespace libsplice
