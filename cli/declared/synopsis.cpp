// A synopsis is read once into places and what may be written there.
#include "cli/declared/synopsis.h"

namespace libsplice::cli {

namespace {

/// The parts of `text` between characters `at`, empty ones left out.
std::vector<std::string_view> parts_of(std::string_view text, char at) {
    std::vector<std::string_view> parts;
    while (!text.empty()) {
        const auto end = std::min(text.find(at), text.size());
        if (end > 0) {
            parts.push_back(text.substr(0, end));
        }
        text.remove_prefix(std::min(end + 1, text.size()));
    }
    return parts;
}

Slot slot_of(std::string_view token) {
    Slot slot;
    const auto without = [&token](std::string_view what) {
        const bool has = token.ends_with(what);
        token.remove_suffix(has ? what.size() : 0);
        return has;
    };
    if (token.starts_with('[')) {
        token.remove_prefix(1);
    }
    static_cast<void>(without("]"));
    slot.repeats = without("...");
    static_cast<void>(without("]"));
    slot.texts = parts_of(token, '|');
    return slot;
}

} // namespace

std::vector<Form> forms_of(std::string_view synopsis) {
    std::vector<Form> forms(1);
    bool of_option = false; // the token is the value of an option
    for (const std::string_view token : parts_of(synopsis, ' ')) {
        if (token == "|") {
            forms.emplace_back();
        } else if (token.starts_with("--") || token.starts_with("[--")) {
            of_option = !token.ends_with(']');
        } else if (of_option) {
            of_option = false;
        } else {
            forms.back().push_back(slot_of(token));
        }
    }
    return forms;
}

std::string_view first_placeholder(std::string_view synopsis) {
    const auto forms = forms_of(synopsis);
    const Form& first = forms.front();
    return first.empty() || !is_placeholder(first.front().texts.front())
               ? std::string_view()
               : first.front().texts.front();
}

bool is_placeholder(std::string_view text) {
    return !text.empty() && text.front() >= 'A' && text.front() <= 'Z';
}

bool is_assignment(std::string_view text) {
    return !is_placeholder(text) && text.find('=') != std::string_view::npos;
}

} // namespace libsplice::cli
