// What may stand at the cursor, from the declarations and from the book.
#include "cli/declared/complete.h"

#include "libsplice/job/read_job.h"

#include "cli/declared/options.h"
#include "cli/declared/synopsis.h"
#include "cli/list/listing_texts.h"
#include "cli/messages.h"
#include "cli/settings/settings.h"
#include "cli/tables.h"

#include <algorithm>
#include <optional>

namespace libsplice::cli {

namespace {

/// Gathers what begins with the word being typed.
class Suggestions {
  public:
    explicit Suggestions(std::string_view begun) : begun_(begun) {}

    void add(std::string word, std::string_view meaning) {
        if (word.starts_with(begun_)) {
            completion.words.push_back({std::move(word), std::string(meaning)});
        }
    }
    Completion completion;

  private:
    std::string_view begun_;
};

/// The entries of a listing; the book is opened for them only.
void add_entries(std::string_view listing, const CommandLine& line, std::string_view before,
                 Suggestions& into) {
    const Listing* found = find_listing(listing);
    const auto book = found == nullptr ? std::nullopt : open_book(line);
    if (!book) {
        return;
    }
    for (const Entry& entry : found->entries({*book, line})) {
        into.add(std::string(before) + entry.name, entry.meaning);
    }
}

/// Ropes by their ids; once a blank is typed, as the tables' ropes may be described.
void add_ropes(const CommandLine& line, std::string_view before, std::string_view begun,
               Suggestions& into) {
    if (begun.find(' ') == std::string_view::npos) {
        add_entries("ropes", line, before, into);
        add_entries("constructions", line, before, into);
        return;
    }
    const auto book = open_book(line);
    if (!book) {
        return;
    }
    for (const Rope& rope : book->catalogue().ropes()) {
        into.add(std::string(before) + description_of(rope), rope.id);
    }
}

/// The names of the job's lines; of a job that cannot be read, none.
void add_lines(const CommandLine& line, Suggestions& into) {
    const auto book = open_book(line);
    auto input = Input::open(line.words.front());
    if (!book || !input || line.words.front() == "-") {
        return;
    }
    FaultSink ignored(0);
    constexpr std::size_t most_lines = 10'000;
    std::size_t number = 0;
    static_cast<void>(read_job(*input, book->field_names(), ignored, [&](const JobRow& row) {
        into.add(std::string(row.line.text(Column::name)),
                 "line " + std::to_string(++number) + ' ' +
                     std::string(row.line.text(Column::boat)));
        return number < most_lines;
    }));
}

void add_commands(Suggestions& into) {
    for (const Command& command : commands()) {
        into.add(std::string(command.name), command.summary);
    }
}

/// `begun` is what is typed of the value, `before` what stands before it in the word.
void add_value(const OptionDeclaration& option, const CommandLine& line, std::string_view before,
               std::string_view begun, Suggestions& into) {
    if (option.choices != nullptr) {
        for (const auto choice : option.choices(line.command)) {
            into.add(std::string(before) + std::string(choice), "");
        }
    } else if (option.argument == "ROPE") {
        add_ropes(line, before, begun, into);
    } else if (option.argument == "FILE") {
        into.completion.paths = Paths::files;
    } else if (option.argument == "DIR") {
        into.completion.paths = Paths::folders;
    }
}

void add_options(const CommandLine& line, Suggestions& into) {
    for (const OptionDeclaration& option : option_declarations()) {
        const bool goes = takes(line.command, option);
        const bool given = line.has(option.name) && !line.set_in.contains(option.name);
        if (goes && (option.repeatable || !given)) {
            into.add("--" + std::string(option.name), option.meaning);
        }
    }
}

/// Whether a word begins so.
bool is_given(const CommandLine& line, std::string_view before) {
    return std::ranges::any_of(line.words,
                               [&](const std::string& word) { return word.starts_with(before); });
}

/// `eye=`, and for a field with words of its own `construction=braid`. Of the fields that every end
/// has, an end by itself takes the rule.
void add_fields(const CommandLine& line, std::string_view begun, Suggestions& into) {
    const auto book = open_book(line);
    const auto kind = book ? book->kind(line.words.front()) : Unexpected(Fault{});
    if (!kind) {
        return;
    }
    const auto add = [&](const FieldDeclaration& field) {
        const std::string before = std::string(field.name) + '=';
        if (begun.starts_with(before)) {
            for (const auto choice : field.choices) {
                into.add(before + std::string(choice), "");
            }
        } else if (!is_given(line, before)) {
            into.add(before, field.meaning);
        }
    };
    std::ranges::for_each((*kind)->declaration.fields, add);
    for (const auto& field : common_fields()) {
        if (field.name == "rule") {
            add(field);
        }
    }
}

void add_text(std::string_view text, const Typed& typed, const Command& command,
              std::string_view begun, Suggestions& into) {
    const CommandLine& line = typed.line;
    if (command.words != nullptr && text == first_placeholder(command.synopsis)) {
        for (const Word& word : command.words()) {
            into.add(std::string(word.name), word.meaning);
        }
    } else if (text == "NAME") {
        add_entries(line.words.front(), line, "", into);
    } else if (text == "KIND") {
        add_entries("kinds", line, "", into);
    } else if (text == "ROPE") {
        add_ropes(line, "", begun, into);
    } else if (text == "LINE") {
        add_lines(line, into);
    } else if (text == "FIELD=VALUE") {
        add_fields(line, begun, into);
    } else if (text == "JOB" || text == "FILE" || text.ends_with(".csv")) {
        into.completion.paths = Paths::files;
    } else if (text == "DIR") {
        into.completion.paths = Paths::folders;
    } else if (is_assignment(text)) {
        const auto before = text.substr(0, text.find('=') + 1);
        if (!is_given(line, before)) {
            into.add(std::string(before), "");
        }
    } else if (!is_placeholder(text)) {
        into.add(std::string(text), "");
    }
}

/// Whether the words typed so far may be the beginning of this form.
bool fits(const Form& form, std::span<const std::string> words) {
    for (std::size_t i = 0; i < std::min(form.size(), words.size()); ++i) {
        const bool fixed = std::ranges::none_of(form[i].texts, [](std::string_view text) {
            return is_placeholder(text) || is_assignment(text);
        });
        if (fixed && std::ranges::find(form[i].texts, words[i]) == form[i].texts.end()) {
            return false;
        }
    }
    return true;
}

/// A form whose second word is fixed fits better than one that takes anything there.
bool has_fixed_start(const Form& form) {
    return !form.empty() && !is_placeholder(form.front().texts.front());
}

/// Whether a slot of the form may be what stands at place `at`: it is the one there, the last that
/// repeats, or one of several `name=VALUE`, whose order is free.
bool may_stand(const Slot& slot, const Form& form, std::size_t at) {
    const auto own = static_cast<std::size_t>(&slot - form.data());
    const bool last = own + 1 == form.size();
    const Slot& there = form[std::min(at, form.size() - 1)];
    return own == at || (last && own < at && slot.repeats) ||
           (is_assignment(slot.texts.front()) && is_assignment(there.texts.front()));
}

void add_words(const Typed& typed, const Command& command, std::string_view begun,
               Suggestions& into) {
    const auto at = typed.line.words.size();
    auto forms = forms_of(command.synopsis);
    std::erase_if(forms, [&](const Form& form) { return !fits(form, typed.line.words); });
    if (at > 0 && std::ranges::any_of(forms, has_fixed_start)) {
        std::erase_if(forms, [](const Form& form) { return !has_fixed_start(form); });
    }
    for (const Form& form : forms) {
        for (const Slot& slot : form) {
            if (may_stand(slot, form, at)) {
                for (const auto text : slot.texts) {
                    add_text(text, typed, command, begun, into);
                }
            }
        }
    }
}

} // namespace

Completion complete(std::span<const std::string> words) {
    const std::string empty;
    const std::string& begun = words.empty() ? empty : words.back();
    Typed typed = sort_words(words.first(words.empty() ? 0 : words.size() - 1));
    if (typed.fault) {
        return {};
    }
    FaultSink ignored(0);
    add_settings(read_settings(typed.line, ignored), typed.line);
    Suggestions into(begun);
    const auto equals = begun.find('=');
    if (typed.pending != nullptr) {
        add_value(*typed.pending, typed.line, "", begun, into);
    } else if (begun.starts_with('-') && !typed.options_ended) {
        const OptionDeclaration* option =
            equals == std::string::npos || equals < 2
                ? nullptr
                : find_option(std::string_view(begun).substr(2, equals - 2));
        if (option != nullptr) {
            add_value(*option, typed.line, begun.substr(0, equals + 1), begun.substr(equals + 1),
                      into);
        } else {
            add_options(typed.line, into);
        }
    } else if (typed.line.command.empty()) {
        add_commands(into);
        into.add(std::string(help_word), "explain a command");
    } else if (typed.line.command == help_word) {
        add_commands(into);
    } else if (const Command* command = find_command(typed.line.command)) {
        add_words(typed, *command, begun, into);
    }
    return std::move(into.completion);
}

std::string to_text(const Completion& completion) {
    std::string text;
    if (completion.paths != Paths::none) {
        text += completion.paths == Paths::files ? "\tfiles\n" : "\tfolders\n";
    }
    for (const Entry& entry : completion.words) {
        text += entry.name + '\t' + entry.meaning + '\n';
    }
    return text;
}

} // namespace libsplice::cli
