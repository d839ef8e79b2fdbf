// Every option of the command, declared once: parsing, help, man pages and completion read this
// table.
#pragma once

#include "libsplice/base/result.h"

#include <span>
#include <string_view>

namespace libsplice::cli {

/// An option and the commands that take it.
struct OptionDeclaration {
    std::string_view name;     ///< without the dashes
    std::string_view argument; ///< placeholder of its value; empty: a switch
    std::string_view meaning;
    std::string_view default_text; ///< empty: none
    std::string_view commands;     ///< names between blanks; `*`: every command
    bool repeatable = false;
    /// The words that may be its value. Of an option without them, the placeholder says what may
    /// stand there: `FILE`, `DIR`, `ROPE`, or something else that cannot be listed.
    std::span<const std::string_view> (*choices)(std::string_view command) = nullptr;
};

[[nodiscard]] std::span<const OptionDeclaration> option_declarations();
/// The declaration of that name, or null.
[[nodiscard]] const OptionDeclaration* find_option(std::string_view name);
/// The fault of an option with a wrong value: `--step "x": why`.
[[nodiscard]] Unexpected wrong_value(std::string_view option, std::string_view value,
                                     std::string_view why);
[[nodiscard]] bool takes(std::string_view command, const OptionDeclaration& option);

} // namespace libsplice::cli
