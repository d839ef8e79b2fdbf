// What the page of errors says of each code: cause, and what to do.
#pragma once

#include "libsplice/base/fault.h"

#include <optional>
#include <string>
#include <string_view>

namespace libsplice::cli {

/// A row of docs/errors.md in plain text.
struct ErrorHelp {
    std::string cause;
    std::string remedy;
};

/// The row of the code; nothing only if the page lacks it, which a test of the pages refuses.
[[nodiscard]] std::optional<ErrorHelp> help_on(Code code);

/// The page docs/errors.md, whole.
[[nodiscard]] std::string_view text_of_error_page();

} // namespace libsplice::cli
