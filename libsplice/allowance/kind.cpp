// What a declaration of a kind says of its fields and constructions.
#include "libsplice/allowance/kind.h"

namespace libsplice {

std::string_view name_of(Dimension dimension) {
    constexpr std::array<std::string_view, 4> names{"length", "count", "ratio", "choice"};
    return names[static_cast<std::size_t>(dimension)];
}

} // namespace libsplice
