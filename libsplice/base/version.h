// The library's version.
#pragma once

#include <string_view>

namespace libsplice {

/// `major.minor.patch`.
[[nodiscard]] std::string_view version();

} // namespace libsplice
