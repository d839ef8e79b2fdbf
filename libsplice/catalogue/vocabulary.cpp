// Finds constructions and fibres by their names.
#include "libsplice/catalogue/vocabulary.h"

#include <algorithm>

namespace libsplice {

std::optional<Construction> read_construction(std::string_view name) {
    const auto found = std::ranges::find(construction_table, name, &RopeWord<Construction>::name);
    return found == construction_table.end() ? std::nullopt : std::optional(found->id);
}

std::optional<Fibre> read_fibre(std::string_view name) {
    const auto found = std::ranges::find(fibre_table, name, &RopeWord<Fibre>::name);
    return found == fibre_table.end() ? std::nullopt : std::optional(found->id);
}

} // namespace libsplice
