// A text as a QR code.
#pragma once

#include <string>
#include <string_view>

namespace libsplice {

/// An SVG element, 1 unit to a module, with the quiet zone that readers need. Empty where the text
/// is too long for a code that a label has room for.
[[nodiscard]] std::string qr_code(std::string_view text);

} // namespace libsplice
