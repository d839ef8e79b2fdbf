// Looking a unit up by its word.
#include "libsplice/units/unit.h"

#include "libsplice/base/text.h"

#include <algorithm>
#include <string>
#include <vector>

namespace libsplice {

const Unit* find_unit(std::span<const Unit> units, std::string_view word) {
    const auto found = std::ranges::find(units, word, &Unit::word);
    return found == units.end() ? nullptr : &*found;
}

std::vector<std::string_view> words_of(std::span<const Unit> units) {
    std::vector<std::string_view> words;
    for (const Unit& unit : units) {
        words.push_back(unit.word);
    }
    return words;
}

std::string listed_units(std::span<const Unit> units) {
    return listed(words_of(units));
}

std::optional<LengthUnit> read_length_unit(std::string_view text) {
    const Unit* unit = find_unit(length_units, text);
    return unit == nullptr ? std::nullopt
                           : std::optional(static_cast<LengthUnit>(unit - length_units.data()));
}

} // namespace libsplice
