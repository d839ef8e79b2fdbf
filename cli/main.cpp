// The command `splice`.
#include "libsplice/base/text.h"
#include "libsplice/base/version.h"

#include "cli/declared/command.h"
#include "cli/declared/command_line.h"
#include "cli/declared/complete.h"
#include "cli/declared/help.h"
#include "cli/declared/options.h"
#include "cli/interrupt.h"
#include "cli/messages.h"

#include <csignal>
#include <cstdio>
#include <filesystem>
#include <optional>
#include <system_error>

namespace {

using namespace libsplice;
using namespace libsplice::cli;

Exit print(const std::string& text) {
    static_cast<void>(std::fputs(text.c_str(), stdout));
    return Exit::done;
}

Exit wrong(std::string_view text) {
    say(text);
    return Exit::wrong_command;
}

Exit unknown_command(const std::string& given) {
    std::vector<std::string_view> names;
    for (const Command& command : commands()) {
        names.push_back(command.name);
    }
    return wrong("there is no command \"" + given + "\"" + did_you_mean(given, names) +
                 "; splice --help lists them");
}

/// The file that is read and would be written over: the output by another of its names.
std::optional<std::string> read_and_written(const CommandLine& line) {
    if (!line.has("output")) {
        return std::nullopt;
    }
    std::vector<std::string> inputs = line.words;
    const auto stock = line.values("stock");
    inputs.insert(inputs.end(), stock.begin(), stock.end());
    const std::string output = line.value("output", "-");
    for (const std::string& input : inputs) {
        std::error_code error;
        if (input != "-" && std::filesystem::equivalent(input, output, error)) {
            return input;
        }
    }
    return std::nullopt;
}

Exit run(const CommandLine& line) {
    if (line.has("version")) {
        return print("splice " + std::string(version()) + '\n');
    }
    if (line.command.empty()) {
        return line.has("help") ? print(help_for_all())
                                : wrong("no command given; see splice --help");
    }
    const Command* command = find_command(line.command);
    if (command == nullptr) {
        return unknown_command(line.command);
    }
    if (line.has("help")) {
        return print(help_for(*command));
    }
    for (const auto& [name, values] : line.options) {
        if (!takes(command->name, *find_option(name))) {
            return wrong("--" + name + " does not go with " + std::string(command->name) +
                         "; see splice " + std::string(command->name) + " --help");
        }
    }
    if (const auto file = read_and_written(line)) {
        return wrong("--output is a file that is read, " + *file +
                     "; nothing was written: give it another name");
    }
    return command->run(line);
}

} // namespace

int main(int argument_count, char** arguments) {
    static_cast<void>(std::signal(SIGPIPE, SIG_IGN));
    const std::vector<std::string> words(arguments + 1, arguments + argument_count);
    leave_no_trace_when_interrupted();
    if (!words.empty() && words.front() == complete_word) {
        return static_cast<int>(print(to_text(complete(std::span(words).subspan(1)))));
    }
    const auto line = parse_command_line(words);
    const Exit exit = line ? run(*line) : wrong(line.error().text);
    return static_cast<int>(exit);
}
