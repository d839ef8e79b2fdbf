// Every option of the command, declared once: parsing, settings, help, man pages and completion
// read this table.
#pragma once

#include "libsplice/base/result.h"

#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace libsplice::cli {

/// An option and the commands that take it.
struct OptionDeclaration {
    std::string_view name;     ///< without the dashes
    char letter = '\0';        ///< its short form, `-o`; 0: none
    std::string_view argument; ///< placeholder of its value; empty: a switch
    std::string_view meaning;
    std::string_view otherwise; ///< what holds without it, in words; empty: nothing to say
    std::string_view commands;  ///< names between blanks; `*`: every command; `takes` says more
    bool repeatable = false;
    bool setting = false; ///< whether it may be set in a file of settings
    /// The words that may be its value, of that command or (empty) of any. Of an option without
    /// them, the placeholder says what may stand there: `FILE`, `DIR`, `ROPE`, or something else
    /// that cannot be listed.
    std::vector<std::string_view> (*choices)(std::string_view command) = nullptr;
};

/// All options, those that matter most first.
[[nodiscard]] std::span<const OptionDeclaration> option_declarations();
/// The declaration of that name, or null.
[[nodiscard]] const OptionDeclaration* find_option(std::string_view name);
/// `-o, --output FILE`.
[[nodiscard]] std::string spelled(const OptionDeclaration& option);
/// The fault of an option with a wrong value: `--step "x": why`.
[[nodiscard]] Unexpected wrong_value(std::string_view option, std::string_view value,
                                     std::string_view why);
/// The same of an option that takes one of a few words: names them, and the nearest.
[[nodiscard]] Unexpected wrong_choice(std::string_view option, std::string_view value,
                                      std::string_view command);
[[nodiscard]] bool takes(std::string_view command, const OptionDeclaration& option);

} // namespace libsplice::cli
