// Replaces each {name} of a text by the figure of that name.
#include "libsplice/sheet/words/fill_text.h"

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
    const auto& values = filling.allowance.values;
    const auto value = std::ranges::find_if(values, [&](const Value& each) {
        return without_unit(filling.names.of(each.name)) == name;
    });
    into +=
        value == values.end() ? "(no figure)" : show_value(*value, filling.names, filling.units);
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
    while (true) {
        const std::size_t open = text.find('{');
        const std::size_t close = text.find('}', open);
        if (close == std::string_view::npos) { // no further figure
            into += text;
            return;
        }
        into += text.substr(0, open);
        const std::string_view name = text.substr(open + 1, close - open - 1);
        if (name.starts_with('@')) {
            append_mark(into, name.substr(1), filling);
        } else {
            append_value(into, name, filling);
        }
        text.remove_prefix(close + 1);
    }
}

} // namespace libsplice
