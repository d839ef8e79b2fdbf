// splice list: what the tables and the program hold.
#include "libsplice/base/text.h"

#include "cli/declared/command.h"
#include "cli/declared/sheet_options.h"
#include "cli/list/listings.h"
#include "cli/messages.h"
#include "cli/tables.h"
#include "cli/write_out.h"

#include <algorithm>

namespace libsplice::cli {

namespace {

/// What is wrong with the names that are asked for; empty: nothing. A rope may be described, too.
std::string wrong_name(const Listing& listing, const ListSource& source,
                       std::span<const std::string> asked) {
    const auto entries = listing.entries(source);
    std::vector<std::string_view> names(entries.size());
    std::ranges::transform(entries, names.begin(), &Entry::name);
    for (const std::string& name : asked) {
        if (std::ranges::find(names, name) != names.end()) {
            continue;
        }
        if (listing.word.name == "ropes") {
            const auto rope = source.book.catalogue().rope(name);
            if (!rope) {
                return rope.error().text;
            }
            continue;
        }
        return in_quotes(name) + " is not among the " + std::string(listing.word.name) +
               did_you_mean(name, names);
    }
    return {};
}

} // namespace

Exit run_list(const CommandLine& command) {
    const auto answer = read_answer(command);
    if (!answer) {
        return wrong_option(command, answer.error());
    }
    std::vector<std::string_view> names;
    for (const Listing& listing : listings()) {
        names.push_back(listing.word.name);
    }
    if (command.words.empty()) {
        return wrong_command("list needs one of " + listed(names));
    }
    const Listing* found = find_listing(command.words.front());
    if (found == nullptr) {
        return wrong_command("there is no list of " + in_quotes(command.words.front()) +
                             did_you_mean(command.words.front(), names) + "; there are " +
                             listed(names));
    }
    const auto book = open_book(command);
    if (!book) {
        return Exit::unusable_file;
    }
    const auto asked = std::span(command.words).subspan(1);
    if (const auto wrong = wrong_name(*found, {*book, command}, asked); !wrong.empty()) {
        return wrong_command(wrong);
    }
    return write_out(answer->output, [&](Output& output) {
        const auto write = answer->format == Format::json ? found->as_json : found->as_text;
        write({*book, command}, Chosen(asked), output);
        return Exit::done;
    });
}

} // namespace libsplice::cli
