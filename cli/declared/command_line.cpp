// Words become a command, its options and the rest, as Boost.Program_options reads them.
#include "cli/declared/command_line.h"

#include "libsplice/base/text.h"

#include "cli/declared/command.h"
#include "cli/declared/options.h"

#include <boost/program_options.hpp>

#include <algorithm>

namespace libsplice::cli {

namespace {

namespace po = boost::program_options;

/// A fault of the command line has no code of its own: it never reaches a file or a host.
Fault wrong(std::string text) {
    return {Code::not_a_choice, std::move(text)};
}

Fault unknown(const std::string& given) {
    std::vector<std::string> dashed;
    for (const OptionDeclaration& option : option_declarations()) {
        dashed.push_back("--" + std::string(option.name));
    }
    const std::vector<std::string_view> names(dashed.begin(), dashed.end());
    return wrong("unknown option " + in_quotes(given) + did_you_mean(given, names));
}

Fault ambiguous(const po::ambiguous_option& error) {
    std::string text;
    for (const std::string& name : error.alternatives()) {
        text += (text.empty() ? "--" : ", --") + name;
    }
    return wrong(error.get_option_name() + " may be " + text + "; write more of it");
}

/// Of all options, or of those that a command takes.
po::options_description described_options(std::string_view command) {
    po::options_description described;
    for (const OptionDeclaration& option : option_declarations()) {
        const std::string name(option.name);
        const std::string names = option.letter == '\0' ? name : name + ',' + option.letter;
        if (!command.empty() && !takes(command, option)) {
            continue;
        }
        if (option.argument.empty()) {
            described.add_options()(names.c_str(), "");
        } else {
            described.add_options()(names.c_str(), po::value<std::string>(), "");
        }
    }
    return described;
}

/// Sorts what was read of the words and of `--` behind them, which shows what a next word would
/// be: it is the value of the last option, or, if the options have been ended before, a word.
Typed sorted(std::vector<po::option> read) {
    Typed typed;
    if (!read.empty() && read.back().original_tokens.back() == "--") {
        typed.pending = find_option(read.back().string_key);
        typed.options_ended = typed.pending == nullptr;
        read.pop_back();
    }
    for (const po::option& option : read) {
        const OptionDeclaration* declared = find_option(option.string_key);
        if (declared == nullptr && typed.line.command.empty()) {
            typed.line.command = option.value.front();
        } else if (declared == nullptr) {
            typed.line.words.push_back(option.value.front());
        } else {
            auto& values = typed.line.options[option.string_key];
            values.insert(values.end(), option.value.begin(), option.value.end());
            if (values.size() > 1 && !declared->repeatable) {
                typed.fault = wrong("--" + option.string_key + " is given twice");
            }
        }
    }
    return typed;
}

/// Reads the words with the options of one command; an option that is none of them may be another
/// command's, which the command then refuses by its name.
Typed read_words(const std::vector<std::string>& words, std::string_view command) {
    try {
        const auto options = described_options(command);
        return sorted(po::command_line_parser(words).options(options).run().options);
    } catch (const po::unknown_option& error) {
        const std::string given = error.get_option_name();
        return command.empty() ? Typed{.fault = unknown(given.substr(0, given.find('=')))}
                               : read_words(words, {});
    } catch (const po::ambiguous_option& error) {
        return {.fault = ambiguous(error)};
    } catch (const po::invalid_command_line_syntax& error) {
        const bool extra = error.kind() == po::invalid_syntax::extra_parameter;
        return {.fault = wrong(error.get_option_name() +
                               (extra ? " takes no value" : " needs a value"))};
    } catch (const po::error& error) {
        return {.fault = wrong(error.what())};
    }
}

} // namespace

std::string CommandLine::value(std::string_view option, std::string_view otherwise) const {
    const auto found = options.find(option);
    return found == options.end() || found->second.empty() ? std::string(otherwise)
                                                           : found->second.front();
}

std::vector<std::string> CommandLine::values(std::string_view option) const {
    const auto found = options.find(option);
    return found == options.end() ? std::vector<std::string>() : found->second;
}

Typed sort_words(std::span<const std::string> words) {
    // The command decides what an option may be short for, and may come after it.
    const auto command = std::ranges::find_if(
        words, [](std::string_view word) { return find_command(word) != nullptr; });
    std::vector<std::string> with_end(words.begin(), words.end());
    with_end.emplace_back("--");
    return read_words(with_end, command == words.end() ? std::string_view() : *command);
}

Result<CommandLine> parse_command_line(std::span<const std::string> arguments) {
    Typed typed = sort_words(arguments);
    if (typed.fault) {
        return Unexpected(*typed.fault);
    }
    if (typed.pending != nullptr) {
        return Unexpected(wrong("--" + std::string(typed.pending->name) + " needs a value, " +
                                std::string(typed.pending->argument)));
    }
    return std::move(typed.line);
}

} // namespace libsplice::cli
