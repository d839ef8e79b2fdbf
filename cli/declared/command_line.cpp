// Words become a command, its options and the rest; half a line is sorted as far as it goes.
#include "cli/declared/command_line.h"

#include "libsplice/base/text.h"

#include "cli/declared/options.h"

#include <algorithm>

namespace libsplice::cli {

namespace {

/// Sorts one word after the other.
class Sorter {
  public:
    explicit Sorter(std::string_view command) : command_(command) {}

    void add(const std::string& word) {
        if (typed.pending != nullptr) {
            give(*typed.pending, word);
            typed.pending = nullptr;
        } else if (typed.options_ended || word == "-" || !word.starts_with('-')) {
            add_word(word);
        } else if (word == "--") {
            typed.options_ended = true;
        } else if (word.starts_with("--")) {
            add_long(word);
        } else {
            add_short(word);
        }
    }

    Typed typed;

  private:
    void add_word(const std::string& word) {
        if (typed.line.command.empty()) {
            typed.line.command = word;
        } else {
            typed.line.words.push_back(word);
        }
    }

    void add_long(const std::string& word) {
        const auto equals = word.find('=');
        const auto name = std::string_view(word).substr(2, std::min(equals, word.size()) - 2);
        const auto found = options_called(name, command_);
        if (found.size() != 1) {
            wrong(found.empty() ? unknown(word.substr(0, equals)) : ambiguous(name, found));
            const bool has_value =
                equals == std::string::npos && !found.empty() && !found.front()->argument.empty();
            typed.pending = has_value ? found.front() : nullptr; // what follows is no command
        } else if (equals == std::string::npos) {
            take(*found.front());
        } else if (found.front()->argument.empty()) {
            wrong("--" + std::string(found.front()->name) + " takes no value");
        } else {
            give(*found.front(), word.substr(equals + 1));
        }
    }

    void add_short(const std::string& word) {
        for (std::size_t i = 1; i < word.size(); ++i) {
            const OptionDeclaration* option = find_short_option(word[i]);
            if (option == nullptr) {
                wrong(unknown(word.size() == 2 ? word : '-' + word.substr(i, 1)));
                return;
            }
            if (!option->argument.empty() && i + 1 < word.size()) {
                give(*option, word.substr(word[i + 1] == '=' ? i + 2 : i + 1));
                return;
            }
            take(*option);
        }
    }

    /// An option without a value beside it: a switch, or the value follows.
    void take(const OptionDeclaration& option) {
        if (option.argument.empty()) {
            give(option, {});
        } else {
            typed.pending = &option;
        }
    }

    void give(const OptionDeclaration& option, std::optional<std::string> value) {
        const std::string name(option.name);
        if (!option.repeatable && !option.argument.empty() && typed.line.has(name)) {
            wrong("--" + name + " is given twice");
        }
        auto& values = typed.line.options[name];
        if (value) {
            values.push_back(*std::move(value));
        }
    }

    /// A fault of the command line has no code of its own: it never reaches a file or a host.
    void wrong(std::string text) {
        if (!typed.fault) {
            typed.fault = Fault{Code::not_a_choice, std::move(text)};
        }
    }

    static std::string unknown(const std::string& given) {
        std::vector<std::string> dashed;
        for (const OptionDeclaration& option : option_declarations()) {
            dashed.push_back("--" + std::string(option.name));
        }
        const std::vector<std::string_view> names(dashed.begin(), dashed.end());
        return "unknown option " + in_quotes(given) + did_you_mean(given, names);
    }

    static std::string ambiguous(std::string_view name,
                                 std::span<const OptionDeclaration* const> found) {
        std::string text;
        for (const OptionDeclaration* option : found) {
            text += (text.empty() ? "--" : ", --") + std::string(option->name);
        }
        return "--" + std::string(name) + " may be " + text + "; write more of it";
    }

    std::string_view command_;
};

Typed sorted(std::span<const std::string> words, std::string_view command) {
    Sorter sorter(command);
    for (const std::string& word : words) {
        sorter.add(word);
    }
    return std::move(sorter.typed);
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
    // Which options there are to be shortened depends on the command, which may stand after them.
    const std::string command = sorted(words, {}).line.command;
    return sorted(words, command);
}

Result<CommandLine> parse_command_line(std::span<const std::string> arguments) {
    Typed typed = sort_words(arguments);
    if (typed.fault) {
        return Unexpected(*typed.fault);
    }
    if (typed.pending != nullptr) {
        return Unexpected(Fault{Code::not_a_choice, "--" + std::string(typed.pending->name) +
                                                        " needs a value, " +
                                                        std::string(typed.pending->argument)});
    }
    return std::move(typed.line);
}

} // namespace libsplice::cli
