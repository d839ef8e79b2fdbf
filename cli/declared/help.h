// Help, made from the declarations of commands and options.
#pragma once

#include "libsplice/allowance/kind.h"

#include "cli/declared/command.h"
#include "cli/declared/options.h"

#include <cstddef>
#include <string>

namespace libsplice::cli {

/// Characters to a line of help and of lists.
inline constexpr std::size_t help_width = 80;

/// An option's meaning with the words that it takes, of that command or (empty) of any, and what
/// holds without it.
[[nodiscard]] std::string meaning_of(const OptionDeclaration& option, std::string_view command);
/// A field's meaning with its limits or words and what holds without it.
[[nodiscard]] std::string meaning_of(const FieldDeclaration& field);
/// What a kind is, what its lengths are measured to and in which rope it is made.
[[nodiscard]] std::string about_kind(const KindDeclaration& kind);
/// What the command is for, in a line.
[[nodiscard]] std::string_view about_the_command();
/// The variables of the environment that the command looks at.
[[nodiscard]] std::span<const Word> environment_variables();
/// The files of a user's own that the command looks for.
[[nodiscard]] std::span<const Word> files_of_the_user();
/// What `splice` says if nothing is asked of it: where to begin.
[[nodiscard]] std::string short_help();
[[nodiscard]] std::string help_for_all();
[[nodiscard]] std::string help_for(const Command& command);

} // namespace libsplice::cli
