// The commands of the program: what each is called, takes and says of itself, and what it runs.
#pragma once

#include "libsplice/sheet/writer.h"

#include "cli/declared/command_line.h"

#include <span>
#include <string_view>
#include <vector>

namespace libsplice::cli {

/// Exit statuses, as the documentation promises them. Of several, 2 comes before 3 before 1.
enum class Exit : int {
    done = 0,
    refused = 1,
    wrong_command = 2,
    unusable_file = 3,
    interrupted = 130,
};

/// Says what is wrong with the command line.
Exit wrong_command(std::string_view text);
/// Says what is wrong with the value of an option, which `fault.field` names; if a file of settings
/// gave it, the fault is the file's.
Exit wrong_option(const CommandLine& command, const Fault& fault);
/// Says what is wrong with a file.
Exit unusable_file(const Fault& fault);

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
    /// `|` between blanks separates one form from the next.
    std::string_view synopsis;
    std::string_view about;   ///< a paragraph or two for --help
    std::string_view example; ///< a command line, or two with a pipe
    Exit (*run)(const CommandLine&);
    /// What --format may be; empty: the command writes in one way only and has no --format.
    std::span<const Format> formats = {};
    /// The words that may stand first after the command, where they are fixed; the synopsis begins
    /// with a placeholder for them.
    std::vector<Word> (*words)() = nullptr;
};

/// All commands, in the order in which help lists them.
[[nodiscard]] std::span<const Command> commands();
[[nodiscard]] const Command* find_command(std::string_view name);

/// The knots that tighten knows by name.
[[nodiscard]] std::vector<Word> knot_words();

Exit run_choose(const CommandLine& command);
Exit run_cut(const CommandLine& command);
Exit run_chart(const CommandLine& command);
Exit run_labels(const CommandLine& command);
Exit run_end(const CommandLine& command);
Exit run_list(const CommandLine& command);
Exit run_check(const CommandLine& command);
Exit run_show(const CommandLine& command);
Exit run_stretch(const CommandLine& command);
Exit run_new(const CommandLine& command);
Exit run_tighten(const CommandLine& command);
Exit run_learn(const CommandLine& command);
Exit run_reel(const CommandLine& command);

} // namespace libsplice::cli
