// The command `splice`: help and versions, or the command that is named.
#include "libsplice/base/text.h"
#include "libsplice/base/version.h"
#include "libsplice/catalogue/catalogue.h"

#include "cli/declared/command.h"
#include "cli/declared/command_line.h"
#include "cli/declared/complete.h"
#include "cli/declared/help.h"
#include "cli/declared/options.h"
#include "cli/interrupt.h"
#include "cli/messages.h"
#include "cli/settings/settings.h"
#include "cli/tables.h"
#include "cli/write_out.h"

#include <algorithm>
#include <csignal>
#include <filesystem>
#include <optional>
#include <system_error>

namespace {

using namespace libsplice;
using namespace libsplice::cli;

Exit unknown_command(const std::string& given) {
    std::vector<std::string_view> names;
    for (const Command& command : commands()) {
        names.push_back(command.name);
    }
    return wrong_command("there is no command " + in_quotes(given) + did_you_mean(given, names) +
                         "; splice --help lists them");
}

/// Adds the output itself if it is a table that is there, in one of the folders in use or below it.
void add_tables_above(const std::string& output, const CommandLine& command,
                      std::vector<std::string>& inputs) {
    std::error_code error;
    const auto real = std::filesystem::canonical(output, error);
    if (error || real.extension() != ".toml") {
        return;
    }
    for (const std::string& folder : table_folders(command)) {
        for (auto above = real.parent_path(); above != above.root_path();
             above = above.parent_path()) {
            if (std::filesystem::equivalent(above, folder, error)) {
                inputs.push_back(output);
                return;
            }
        }
    }
}

/// The file that is read and would be written over: the output by another of its names.
std::optional<std::string> read_and_written(const CommandLine& command) {
    if (!command.has("output")) {
        return std::nullopt;
    }
    std::vector<std::string> inputs = command.words;
    for (const auto* option : {"stock", "plug-in"}) {
        const auto values = command.values(option);
        inputs.insert(inputs.end(), values.begin(), values.end());
    }
    const std::string output = command.value("output", "-");
    if (takes(command.command, *find_option("tables"))) {
        add_tables_above(output, command, inputs);
    }
    for (const std::string& input : inputs) {
        std::error_code error;
        if (input != "-" && std::filesystem::equivalent(input, output, error)) {
            return input;
        }
    }
    return std::nullopt;
}

Exit print_version(const CommandLine& command) {
    FaultSink ignored(0);
    const auto tables = Catalogue::load(table_folders(command), ignored);
    return print("splice " + std::string(version()) + "\ntables " +
                 (tables ? tables->version() : "not found") + "\nlicence not settled yet\n");
}

/// `splice help`, `splice help COMMAND`.
Exit print_help(const std::string& name) {
    if (name.empty()) {
        return print(help_for_all());
    }
    const Command* command = find_command(name);
    return command == nullptr ? unknown_command(name) : print(help_for(*command));
}

std::optional<Exit> heed_messages(const CommandLine& command) {
    const std::string when = command.value("color", "auto");
    const auto words = find_option("color")->choices(command.command);
    const auto known = std::ranges::find(words, when);
    if (known == words.end()) {
        return wrong_option(command, wrong_choice("color", when, command.command).error());
    }
    set_messages(static_cast<Colour>(known - words.begin()), command.has("quiet"));
    return std::nullopt;
}

/// Runs a command whose options are known to be its own.
Exit run_command(const Command& declared, CommandLine command) {
    FaultSink faults = printing_sink();
    add_settings(read_settings(command, faults), command);
    if (!faults.empty()) {
        say_rest(faults);
        return Exit::unusable_file;
    }
    if (const auto wrong = heed_messages(command)) {
        return *wrong;
    }
    if (const auto file = read_and_written(command)) {
        return wrong_command("--output is a file that is read, " + *file +
                             "; nothing was written: give it another name");
    }
    return declared.run(command);
}

Exit run(const CommandLine& command) {
    if (command.has("version")) {
        return print_version(command);
    }
    if (command.command == help_word) {
        return print_help(command.words.empty() ? "" : command.words.front());
    }
    if (command.command.empty()) {
        return print(command.has("help") ? help_for_all() : short_help());
    }
    const Command* declared = find_command(command.command);
    if (declared == nullptr) {
        return unknown_command(command.command);
    }
    if (command.has("help")) {
        return print_help(command.command);
    }
    for (const auto& [name, values] : command.options) {
        if (!takes(declared->name, *find_option(name))) {
            return wrong_command("--" + name + " does not go with " + command.command +
                                 "; see splice " + command.command + " --help");
        }
    }
    return run_command(*declared, command);
}

} // namespace

int main(int argument_count, char** arguments) {
    static_cast<void>(std::signal(SIGPIPE, SIG_IGN));
    const std::vector<std::string> words(arguments + std::min(argument_count, 1),
                                         arguments + argument_count);
    leave_no_trace_when_interrupted();
    if (!words.empty() && words.front() == complete_word) {
        return static_cast<int>(print(to_text(complete(std::span(words).subspan(1)))));
    }
    const auto command = parse_command_line(words);
    return static_cast<int>(command ? run(*command) : wrong_command(command.error().text));
}
