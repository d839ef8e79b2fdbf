// Asks each kind for its constructions; a kind that is not known allows all, and is refused later.
#include "libsplice/choose/ends_allow.h"

#include <algorithm>
#include <string_view>

namespace libsplice {

namespace {

bool is_wire_or_elastic(Construction construction) {
    return construction == Construction::wire || construction == Construction::shock_cord;
}

bool is_made_in(const Book& book, std::string_view kind, Construction construction) {
    if (kind.empty()) {
        return true;
    }
    const auto found = book.kind(kind, construction);
    return !found || (*found)->declaration.constructions.allows(construction);
}

} // namespace

bool are_interchangeable(Construction one, Construction other) {
    return one == other || (!is_wire_or_elastic(one) && !is_wire_or_elastic(other));
}

EndsAllow::EndsAllow(const Book& book, const CellReader& cells) {
    const bool elastic = !cells.text(Column::stretch).empty();
    for (std::size_t c = 0; c < construction_count; ++c) {
        const auto construction = static_cast<Construction>(c);
        allowed_.at(c) = (!elastic || construction == Construction::shock_cord) &&
                         is_made_in(book, cells.text(Column::end_a), construction) &&
                         is_made_in(book, cells.text(Column::end_b), construction);
    }
}

bool EndsAllow::may_be(Construction construction) const {
    if (!is_wire_or_elastic(construction)) {
        return true;
    }
    for (std::size_t c = 0; c < construction_count; ++c) {
        if (allowed_.at(c) && !is_wire_or_elastic(static_cast<Construction>(c))) {
            return false;
        }
    }
    return true;
}

} // namespace libsplice
