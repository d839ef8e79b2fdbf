// What a declaration of a kind says of its fields and constructions.
#include "libsplice/allowance/kind.h"

#include <algorithm>

namespace libsplice {

std::string_view name_of(Dimension dimension) {
    constexpr std::array<std::string_view, 4> names{"length", "count", "ratio", "choice"};
    return names[static_cast<std::size_t>(dimension)];
}

bool KindDeclaration::is_named_by(std::string_view word) const {
    return word == name || (!word.empty() && std::ranges::count(families, word) != 0);
}

} // namespace libsplice
