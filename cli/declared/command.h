// A command of the command: its help and what it does.
#pragma once

#include "cli/declared/command_line.h"

#include <span>
#include <string_view>
#include <vector>

namespace libsplice::cli {

/// Exit statuses, as the documentation promises them. Of several, 2 comes before 3 before 1.
enum class Exit : int { done = 0, refused = 1, wrong_command = 2, unusable_file = 3 };

/// Says what is wrong with the command line.
Exit wrong_command(std::string_view text);

/// What an exit status means, for help and man pages.
struct ExitMeaning {
    Exit exit;
    std::string_view meaning;
};
[[nodiscard]] std::span<const ExitMeaning> exit_meanings();

/// A word that means something by itself.
struct Word {
    std::string_view name;
    std::string_view meaning;
};

struct Command {
    std::string_view name;
    std::string_view summary; ///< one line
    /// The words after the command; help, man pages and completion read it. `KIND`, `ROPE`, `JOB`,
    /// `FILE`, `DIR`, `FIELD=VALUE`, and `NAME` (an entry of the list before it) say what
    /// may stand there; other capitals, that anything may; small letters stand for themselves.
    /// `|` between blanks parts one form from the next.
    std::string_view synopsis;
    std::string_view about;   ///< a paragraph or two for --help
    std::string_view example; ///< a command that works from the project's folder
    Exit (*run)(const CommandLine&);
    /// The words that may stand first after the command, where they are fixed; the synopsis begins
    /// with a placeholder for them.
    std::vector<Word> (*words)() = nullptr;
};

/// All commands, in the order in which help lists them.
[[nodiscard]] std::span<const Command> commands();
[[nodiscard]] const Command* find_command(std::string_view name);

/// The knots that tighten knows by name.
[[nodiscard]] std::vector<Word> knot_words();

Exit run_cut(const CommandLine& line);
Exit run_chart(const CommandLine& line);
Exit run_labels(const CommandLine& line);
Exit run_end(const CommandLine& line);
Exit run_list(const CommandLine& line);
Exit run_check(const CommandLine& line);
Exit run_show(const CommandLine& line);
Exit run_new(const CommandLine& line);
Exit run_tighten(const CommandLine& line);
Exit run_learn(const CommandLine& line);
Exit run_reel(const CommandLine& line);

} // namespace libsplice::cli
