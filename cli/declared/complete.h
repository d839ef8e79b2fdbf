// What may stand where the cursor is: the one answer that the completions of all shells ask for.
#pragma once

#include "cli/list/listings.h"

#include <span>
#include <string>
#include <vector>

namespace libsplice::cli {

/// Whether names of files may stand there too.
enum class Paths { none, files, folders };

struct Completion {
    std::vector<Entry> words; ///< each begins with the word being typed; `=` at its end: go on
    Paths paths = Paths::none;
};

/// Asks for a completion, in place of a command: `splice complete end buried-eye ey`. It is for
/// shells, and no command.
inline constexpr std::string_view complete_word = "complete";
/// Asks for help, in place of a command: `splice help cut`.
inline constexpr std::string_view help_word = "help";

/// What may take the place of the last of `words`, which is being typed; the others stand before it
/// after the program's name. Everything comes from the declarations of commands, options and
/// listings, and from the book that the words' --tables and --plug-in make; nothing is written.
[[nodiscard]] Completion complete(std::span<const std::string> words);

/// As text: a line for each word, `word<TAB>meaning`, and before them `<TAB>files` or
/// `<TAB>folders` where such may stand there.
[[nodiscard]] std::string to_text(const Completion& completion);

} // namespace libsplice::cli
