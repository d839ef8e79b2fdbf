// The words of the command line, sorted into command, options and the rest.
#pragma once

#include "libsplice/base/result.h"

#include <map>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace libsplice::cli {

struct OptionDeclaration;

/// What was asked for.
struct CommandLine {
    std::string command;            ///< empty if only options were given
    std::vector<std::string> words; ///< everything else that is no option, in order
    std::map<std::string, std::vector<std::string>, std::less<>> options;
    /// Where an option was set, if not on the command line: its place in a file of settings.
    std::map<std::string, Place, std::less<>> set_in = {};

    [[nodiscard]] bool has(std::string_view option) const { return options.contains(option); }
    /// The option's value, or `otherwise`.
    [[nodiscard]] std::string value(std::string_view option, std::string_view otherwise) const;
    [[nodiscard]] std::vector<std::string> values(std::string_view option) const;
};

/// A command line as far as it has been typed.
struct Typed {
    CommandLine line = {};
    const OptionDeclaration* pending = nullptr; ///< the option whose value is to follow
    bool options_ended = false;                 ///< by `--`
    std::optional<Fault> fault = {};            ///< what is wrong
};

/// Sorts words that may be half a command line; of a wrong one the fault may be all there is. Long
/// options may be shortened as far as they are clear among those that the command takes; `-qf json`
/// is `-q -f json`.
[[nodiscard]] Typed sort_words(std::span<const std::string> words);

/// Sorts the arguments after the program's name. The fault says what is wrong with them; its code
/// is of no interest, since the exit status is 2 whatever it is.
[[nodiscard]] Result<CommandLine> parse_command_line(std::span<const std::string> arguments);

} // namespace libsplice::cli
