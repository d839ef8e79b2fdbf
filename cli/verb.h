// A verb of the command: its help and what it does.
#pragma once

#include "cli/command_line.h"

#include <span>
#include <string_view>

namespace libsplice::cli {

/// Exit statuses, as the documentation promises them. Of several, 2 comes before 3 before 1.
enum class Exit : int { done = 0, refused = 1, wrong_command = 2, unusable_file = 3 };

/// Says what is wrong with the command line.
Exit wrong_command(std::string_view text);

struct Verb {
    std::string_view name;
    std::string_view summary;  ///< one line
    std::string_view synopsis; ///< the words after the verb
    std::string_view about;    ///< a paragraph or two for --help
    std::string_view example;  ///< a command that works from the project's folder
    Exit (*run)(const CommandLine&);
};

/// All verbs, in the order in which help lists them.
[[nodiscard]] std::span<const Verb> verbs();
[[nodiscard]] const Verb* find_verb(std::string_view name);

Exit run_cut(const CommandLine& line);
Exit run_end(const CommandLine& line);
Exit run_list(const CommandLine& line);
Exit run_check(const CommandLine& line);
Exit run_show(const CommandLine& line);
Exit run_new(const CommandLine& line);
Exit run_tighten(const CommandLine& line);
Exit run_learn(const CommandLine& line);

} // namespace libsplice::cli
