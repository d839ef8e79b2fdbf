#include "cli/help.h"

#include "libsplice/base/wrap.h"

#include "cli/options.h"

namespace libsplice::cli {

namespace {

std::string padded(std::string text, std::size_t to) {
    text.resize(std::max(text.size() + 1, to), ' ');
    return text;
}

std::string option_entry(const OptionDeclaration& option) {
    std::string name = "  --" + std::string(option.name);
    if (!option.argument.empty()) {
        name += ' ' + std::string(option.argument);
    }
    std::string meaning(option.meaning);
    if (!option.default_text.empty()) {
        meaning += " [" + std::string(option.default_text) + "]";
    }
    constexpr std::size_t column = 24;
    return padded(name, column) + wrapped(meaning, help_width, column, column) + '\n';
}

} // namespace

std::string help_for_all() {
    std::string text =
        "splice: the length of rope to cut, from the length a line must finish at\n\n"
        "usage: splice VERB ...\n\n";
    for (const Verb& verb : verbs()) {
        text += padded("  " + std::string(verb.name), 10) + std::string(verb.summary) + '\n';
    }
    text += "\nsplice VERB --help tells more of each. Start with the demo:\n  " +
            std::string(verbs().front().example) + "\n";
    return text;
}

std::string help_for(const Verb& verb) {
    std::string text = "usage: splice " + std::string(verb.name) + ' ' +
                       std::string(verb.synopsis) + "\n\n" +
                       wrapped(std::string(verb.about), help_width, 0, 0) + "\n\noptions:\n";
    for (const OptionDeclaration& option : option_declarations()) {
        if (takes(verb.name, option)) {
            text += option_entry(option);
        }
    }
    text += "\nexample:\n  " + std::string(verb.example) + '\n';
    return text;
}

} // namespace libsplice::cli
