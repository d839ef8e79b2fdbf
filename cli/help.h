// Help, made from the declarations of verbs and options.
#pragma once

#include "libsplice/allowance/kind.h"

#include "cli/options.h"
#include "cli/verb.h"

#include <cstddef>
#include <string>

namespace libsplice::cli {

/// Characters to a line of help and of lists.
inline constexpr std::size_t help_width = 80;

/// An option's meaning with the words it takes, of that verb or (empty) of any, and what holds
/// without it.
[[nodiscard]] std::string meaning_of(const OptionDeclaration& option, std::string_view verb);
/// A field's meaning with its limits or words and what holds without it.
[[nodiscard]] std::string meaning_of(const FieldDeclaration& field);
/// What a kind is, what its lengths are measured to and in which rope it is made.
[[nodiscard]] std::string about_kind(const KindDeclaration& kind);
/// What the command is for, in a line.
[[nodiscard]] std::string_view about_the_command();
/// The variables of the environment that the command looks at.
[[nodiscard]] std::span<const Word> environment_variables();
[[nodiscard]] std::string help_for_all();
[[nodiscard]] std::string help_for(const Verb& verb);

} // namespace libsplice::cli
