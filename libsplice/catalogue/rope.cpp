// Ropes described in place of being named.
#include "libsplice/catalogue/rope.h"

#include "libsplice/base/text.h"

#include <utility>

namespace libsplice {

namespace {

Unexpected not_understood(std::string what) {
    return Unexpected(Fault{Code::rope_not_understood, std::move(what)});
}

/// Takes the first word off `text`.
std::string_view take_word(std::string_view& text) {
    text = trimmed(text);
    const std::string_view word = text.substr(0, text.find_first_of(" \t"));
    text = trimmed(text.substr(word.size()));
    return word;
}

} // namespace

bool describes_rope(std::string_view text) {
    return read_construction(take_word(text)).has_value();
}

Result<WrittenLength> read_rope_diameter(std::string_view text) {
    constexpr Nanometres smallest = 500'000;
    constexpr Nanometres largest = 200'000'000;
    const auto diameter = read_length(text);
    if (!diameter) {
        return not_understood(in_quotes(text) + " is no diameter: " + diameter.error().text);
    }
    const Nanometres size = to_nanometres(diameter->length);
    if (size < smallest || size > largest) {
        return not_understood("a rope is from 0.5 mm to 200 mm thick, not " + std::string(text));
    }
    return *diameter;
}

Result<RopeDescription> read_rope_description(std::string_view text) {
    std::string_view rest = text;
    const std::string_view construction_word = take_word(rest);
    const auto construction = read_construction(construction_word);
    if (!construction) {
        return not_understood(in_quotes(construction_word) + " is no construction; it is one of " +
                              listed(construction_names()) +
                              did_you_mean(construction_word, construction_names()));
    }
    const std::string_view fibre_word = take_word(rest);
    const auto fibre = read_fibre(fibre_word);
    if (!fibre) {
        return not_understood(
            (fibre_word.empty() ? "the fibre is missing" : in_quotes(fibre_word) + " is no fibre") +
            " in " + in_quotes(trimmed(text)) + "; it is one of " + listed(fibre_names()) +
            did_you_mean(fibre_word, fibre_names()));
    }
    if (rest.empty()) {
        return not_understood(
            "the diameter is missing in " + in_quotes(trimmed(text)) + "; write e.g. " +
            in_quotes(std::string(construction_word) + ' ' + std::string(fibre_word) + " 6 mm"));
    }
    const auto diameter = read_rope_diameter(rest);
    if (!diameter) {
        return Unexpected(diameter.error());
    }
    return RopeDescription{*construction, *fibre, *diameter};
}

} // namespace libsplice
