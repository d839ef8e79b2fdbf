// The words of the command line, sorted into command, options and the rest.
#pragma once

#include "libsplice/base/result.h"

#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace libsplice::cli {

/// What was asked for.
struct CommandLine {
    std::string command;            ///< empty where only --help or --version was asked
    std::vector<std::string> words; ///< everything else that is no option, in order
    std::map<std::string, std::vector<std::string>, std::less<>> options;

    [[nodiscard]] bool has(std::string_view option) const { return options.contains(option); }
    /// The option's value, or `otherwise`.
    [[nodiscard]] std::string value(std::string_view option, std::string_view otherwise) const;
    [[nodiscard]] std::vector<std::string> values(std::string_view option) const;
};

/// Parses the arguments after the program's name. The fault says what is wrong with them; its code
/// is of no interest, since the exit status is 2 whatever it is.
[[nodiscard]] Result<CommandLine> parse_command_line(const std::vector<std::string>& arguments);

} // namespace libsplice::cli
