// A record of words, each with its own source: what a table says of a place, a fibre or a cleat.
#pragma once

#include "libsplice/base/place.h"
#include "libsplice/catalogue/citation.h"

#include <string>
#include <string_view>
#include <vector>

namespace libsplice {

/// A word or a number, as it is written.
struct CitedCell {
    std::string key;
    std::string text;
    Citation source;
};

/// A record of `tables/places.toml`. What its words mean is for those who use it.
struct CitedRecord {
    std::string key;  ///< its sort and its id, by which a later folder replaces it
    std::string sort; ///< the name of its table: `place`, `fibre`, ...
    std::string id;
    std::vector<std::string> words; ///< other names of it, in small letters
    std::vector<CitedCell> cells;
    Place at;

    /// The cell of that key; null: it has none.
    [[nodiscard]] const CitedCell* find(std::string_view cell_key) const {
        for (const CitedCell& cell : cells) {
            if (cell.key == cell_key) {
                return &cell;
            }
        }
        return nullptr;
    }
};

} // namespace libsplice
