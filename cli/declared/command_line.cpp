#include "cli/declared/command_line.h"

#include "libsplice/base/text.h"

#include "cli/declared/options.h"

#include <boost/program_options.hpp>

namespace libsplice::cli {

namespace {

namespace po = boost::program_options;

/// A fault of the command line has no code of its own: it never reaches a file or a host.
Unexpected wrong(std::string text) {
    return Unexpected(Fault{Code::not_a_choice, std::move(text)});
}

po::options_description described_options() {
    po::options_description described;
    for (const OptionDeclaration& option : option_declarations()) {
        const std::string name(option.name);
        if (option.argument.empty()) {
            described.add_options()(name.c_str(), "");
        } else {
            described.add_options()(name.c_str(), po::value<std::vector<std::string>>(), "");
        }
    }
    return described;
}

Unexpected unknown_option(const std::string& given) {
    std::vector<std::string> dashed;
    for (const OptionDeclaration& option : option_declarations()) {
        dashed.push_back("--" + std::string(option.name));
    }
    const std::vector<std::string_view> names(dashed.begin(), dashed.end());
    const auto name = given.substr(std::min(given.find_first_not_of('-'), given.size()));
    return wrong("unknown option \"" + given + "\"" + did_you_mean("--" + name, names));
}

Result<CommandLine> sort_options(const std::vector<po::option>& parsed) {
    CommandLine line;
    for (const po::option& option : parsed) {
        if (option.position_key >= 0 || option.string_key.empty()) {
            for (const std::string& word : option.value) {
                if (line.command.empty()) {
                    line.command = word;
                } else {
                    line.words.push_back(word);
                }
            }
            continue;
        }
        auto& values = line.options[option.string_key];
        values.insert(values.end(), option.value.begin(), option.value.end());
        if (values.size() > 1 && !find_option(option.string_key)->repeatable) {
            return wrong("--" + option.string_key + " is given twice");
        }
    }
    return line;
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

Result<CommandLine> parse_command_line(const std::vector<std::string>& arguments) {
    namespace style = po::command_line_style;
    try {
        const auto described = described_options();
        po::positional_options_description words;
        words.add("word", -1);
        const auto parsed = po::command_line_parser(arguments)
                                .options(described)
                                .positional(words)
                                .style(style::unix_style & ~style::allow_guessing)
                                .allow_unregistered()
                                .run();
        for (const po::option& option : parsed.options) {
            if (option.unregistered && option.string_key != "word") {
                return unknown_option(option.original_tokens.empty()
                                          ? option.string_key
                                          : option.original_tokens.front());
            }
        }
        return sort_options(parsed.options);
    } catch (const po::error& error) {
        return wrong(error.what());
    }
}

} // namespace libsplice::cli
