// Help texts are put together here; every word of them is declared elsewhere.
#include "cli/declared/help.h"

#include "libsplice/base/wrap.h"
#include "libsplice/units/show.h"

#include "cli/declared/synopsis.h"

#include <array>

namespace libsplice::cli {

namespace {

std::string padded(std::string text, std::size_t to) {
    text.resize(std::max(text.size() + 1, to), ' ');
    return text;
}

std::string option_entry(const OptionDeclaration& option, std::string_view command) {
    constexpr std::size_t column = 27;
    const std::string name = (option.letter == '\0' ? "      " : "  ") + spelled(option);
    const std::string meaning = meaning_of(option, command);
    if (name.size() + 1 > column) {
        return name + '\n' + std::string(column, ' ') +
               wrapped(meaning, help_width, column, column) + '\n';
    }
    return padded(name, column) + wrapped(meaning, help_width, column, column) + '\n';
}

/// Options of many commands, in one line each.
std::string all_options() {
    std::string text;
    for (const OptionDeclaration& option : option_declarations()) {
        text += option_entry(option, {});
    }
    return text;
}

std::string command_list() {
    std::string text;
    for (const Command& command : commands()) {
        text += padded("  " + std::string(command.name), 11) + std::string(command.summary) + '\n';
    }
    return text;
}

std::string limits(const FieldDeclaration& field) {
    switch (field.dimension) {
    case Dimension::choice: {
        std::string words;
        for (const auto choice : field.choices) {
            words += (words.empty() ? "" : " | ") + std::string(choice);
        }
        return words;
    }
    case Dimension::length:
        return show_length(Length(field.lowest), UnitSystem::metric) + " to " +
               show_length(Length(field.highest), UnitSystem::metric);
    default:
        return show_number(field.lowest, 3) + " to " + show_number(field.highest, 3);
    }
}

std::string made_in(const KindDeclaration& kind) {
    std::string names;
    for (const auto name : construction_names()) {
        if (kind.constructions.allows(*read_construction(name))) {
            names += (names.empty() ? "" : ", ") + std::string(name);
        }
    }
    return names;
}

constexpr std::array variables{
    Word{"LIBSPLICE_TABLES", "folders of tables, separated by colons, in place of the program's "
                             "own and the user's"},
    Word{"NO_COLOR", "set to anything, it takes colour out of messages"},
    Word{"XDG_CONFIG_HOME", "the folder of libsplice/config.toml [~/.config]"},
    Word{"XDG_DATA_HOME", "the folder of libsplice/tables [~/.local/share]"},
};

constexpr std::array user_files{
    Word{"$XDG_CONFIG_HOME/libsplice/config.toml",
         "options to use each time: keys are the long names of options, values as on the command "
         "line, which wins; splice list settings shows them"},
    Word{"splice.toml", "the same, beside a job; it wins over config.toml"},
    Word{"$XDG_DATA_HOME/libsplice/tables",
         "the user's own tables; their records replace the program's of the same id"},
};

std::string word_entry(const Word& word) {
    constexpr std::size_t column = 20;
    if (word.meaning.empty()) {
        return "  " + std::string(word.name) + '\n';
    }
    return padded("  " + std::string(word.name), column) +
           wrapped(word.meaning, help_width, column, column) + '\n';
}

} // namespace

std::string meaning_of(const OptionDeclaration& option, std::string_view command) {
    std::string meaning(option.meaning);
    if (option.choices != nullptr) {
        std::string words;
        for (const auto choice : option.choices(command)) {
            words += (words.empty() ? "" : " | ") + std::string(choice);
        }
        meaning += " (" + words + ")";
    }
    if (!option.otherwise.empty()) {
        meaning += " [" + std::string(option.otherwise) + "]";
    }
    if (option.repeatable) {
        meaning += "; may be given again";
    }
    return meaning;
}

std::string meaning_of(const FieldDeclaration& field) {
    std::string meaning(field.meaning);
    if (!field.also.empty()) {
        meaning += ", also " + std::string(field.also);
    }
    if (const auto range = limits(field); !range.empty()) {
        meaning += " (" + range + ")";
    }
    return meaning +
           (field.required ? "; required" : "; default: " + std::string(field.default_text));
}

std::string about_kind(const KindDeclaration& kind) {
    return std::string(kind.title) + ". Measured to: " + std::string(kind.datum) +
           ". Made in: " + made_in(kind) + ".";
}

std::string_view about_the_command() {
    return "the length of rope to cut, from the length a line must finish at";
}

std::span<const Word> environment_variables() {
    return variables;
}

std::span<const Word> files_of_the_user() {
    return user_files;
}

std::string short_help() {
    return "splice: " + std::string(about_the_command()) +
           "\n\n"
           "  splice new job.csv        writes a sample job; change it to yours\n"
           "  splice cut job.csv        shows what to cut for every line, and where to mark it\n"
           "  splice help               lists the commands and options\n"
           "  splice help COMMAND       explains one of them\n";
}

std::string help_for_all() {
    std::string text = "splice: " + std::string(about_the_command()) + "\n\nexample:\n  " +
                       std::string(commands().front().example) +
                       "\n\nusage: splice COMMAND ...\n\n" + command_list() +
                       "\noptions (splice COMMAND --help shows those that it takes):\n" +
                       all_options() + "\nexit status:\n";
    for (const ExitMeaning& exit : exit_meanings()) {
        text += padded("  " + std::to_string(static_cast<int>(exit.exit)), 7) +
                wrapped(exit.meaning, help_width, 7, 7) + '\n';
    }
    text += "\nenvironment:\n";
    for (const Word& variable : variables) {
        text += word_entry(variable);
    }
    text += "\nfiles:\n";
    for (const Word& file : user_files) {
        text += "  " + std::string(file.name) + "\n      " +
                wrapped(file.meaning, help_width, 6, 6) + '\n';
    }
    return text;
}

std::string help_for(const Command& command) {
    std::string text = "example:\n  " + std::string(command.example) + "\n\nusage: splice " +
                       std::string(command.name) + ' ' + std::string(command.synopsis) + "\n\n" +
                       wrapped(std::string(command.about), help_width, 0, 0) + "\n";
    if (command.words != nullptr) {
        text += '\n' + std::string(first_placeholder(command.synopsis)) + " is one of:\n";
        for (const Word& word : command.words()) {
            text += word_entry(word);
        }
    }
    text += "\noptions:\n";
    for (const OptionDeclaration& option : option_declarations()) {
        if (takes(command.name, option)) {
            text += option_entry(option, command.name);
        }
    }
    return text;
}

} // namespace libsplice::cli
