// splice list: what the tables and the program hold.
#include "libsplice/base/text.h"

#include "cli/declared/command.h"
#include "cli/declared/sheet_options.h"
#include "cli/list/listings.h"
#include "cli/messages.h"
#include "cli/tables.h"

#include <algorithm>

namespace libsplice::cli {

namespace {

/// What is wrong with the names that are asked for; empty: nothing.
std::string wrong_name(const Listing& listing, const Book& book,
                       std::span<const std::string> asked) {
    const auto entries = listing.entries(book);
    std::vector<std::string_view> names(entries.size());
    std::ranges::transform(entries, names.begin(), &Entry::name);
    for (const std::string& name : asked) {
        if (std::ranges::find(names, name) == names.end()) {
            return "\"" + name + "\" is not among the " + std::string(listing.word.name) +
                   did_you_mean(name, names);
        }
    }
    return {};
}

} // namespace

Exit run_list(const CommandLine& line) {
    const auto answer = read_answer(line);
    if (!answer) {
        return wrong_command(answer.error().text);
    }
    if (answer->format == Format::csv) {
        return wrong_command("list writes text or json");
    }
    std::vector<std::string_view> names;
    for (const Listing& listing : listings()) {
        names.push_back(listing.word.name);
    }
    if (line.words.empty()) {
        return wrong_command("list needs one of " + listed(names));
    }
    const Listing* found = find_listing(line.words.front());
    if (found == nullptr) {
        return wrong_command("there is no list of \"" + line.words.front() + "\"" +
                             did_you_mean(line.words.front(), names) + "; there are " +
                             listed(names));
    }
    const auto book = open_book(line);
    if (!book) {
        return Exit::unusable_file;
    }
    const auto asked = std::span(line.words).subspan(1);
    if (const auto wrong = wrong_name(*found, *book, asked); !wrong.empty()) {
        return wrong_command(wrong);
    }
    auto output = Output::open(answer->output);
    if (!output) {
        say(output.error());
        return Exit::unusable_file;
    }
    const auto write = answer->format == Format::json ? found->as_json : found->as_text;
    write(*book, Chosen(asked), *output);
    if (const auto committed = output->commit(); !committed) {
        say(committed.error());
        return Exit::unusable_file;
    }
    return Exit::done;
}

} // namespace libsplice::cli
