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
    std::string name = "  --" + std::string(option.name);
    if (!option.argument.empty()) {
        name += ' ' + std::string(option.argument);
    }
    const std::string meaning = meaning_of(option, command);
    constexpr std::size_t column = 24;
    return padded(name, column) + wrapped(meaning, help_width, column, column) + '\n';
}

std::string options_in_a_row() {
    std::string text;
    for (const OptionDeclaration& option : option_declarations()) {
        text += (text.empty() ? "--" : " --") + std::string(option.name);
    }
    return "  " + wrapped(text, help_width, 2, 2) + '\n';
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
    Word{"LIBSPLICE_TABLES", "folders of tables, parted by colons, where --tables names none"},
    Word{"NO_COLOR", "set to anything, no colour is used"},
};

std::string word_entry(const Word& word) {
    constexpr std::size_t column = 20;
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
    if (!option.default_text.empty()) {
        meaning += " [" + std::string(option.default_text) + "]";
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

std::string help_for_all() {
    std::string text = "splice: " + std::string(about_the_command()) +
                       "\n\n"
                       "usage: splice COMMAND ...\n\n";
    for (const Command& command : commands()) {
        text += padded("  " + std::string(command.name), 10) + std::string(command.summary) + '\n';
    }
    text += "\noptions, each of the commands that take it:\n" + options_in_a_row();
    text += "\nexit status:\n";
    for (const ExitMeaning& exit : exit_meanings()) {
        text += "  " + std::to_string(static_cast<int>(exit.exit)) + "  " +
                wrapped(exit.meaning, help_width, 5, 5) + '\n';
    }
    text += "\nenvironment:\n";
    for (const Word& variable : variables) {
        text += word_entry(variable);
    }
    text += "\nsplice COMMAND --help tells more of each. Start with the demo:\n  " +
            std::string(commands().front().example) + "\n";
    return text;
}

std::string help_for(const Command& command) {
    std::string text = "usage: splice " + std::string(command.name) + ' ' +
                       std::string(command.synopsis) + "\n\n" +
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
    text += "\nexample:\n  " + std::string(command.example) + '\n';
    return text;
}

} // namespace libsplice::cli
