// splice list: what the tables and the program hold.
#include "libsplice/base/text.h"

#include "cli/list_tables.h"
#include "cli/messages.h"
#include "cli/sheet_options.h"
#include "cli/tables.h"
#include "cli/verb.h"

#include <algorithm>
#include <array>

namespace libsplice::cli {

namespace {

struct Listing {
    std::string_view name;
    void (*as_text)(const Book&, Output&);
    void (*as_json)(const Book&, Output&);
};

constexpr std::array listings{
    Listing{"ropes", ropes_as_text, ropes_as_json},
    Listing{"kinds", kinds_as_text, kinds_as_json},
    Listing{"sources", sources_as_text, sources_as_json},
    Listing{"tables", tables_as_text, tables_as_json},
    Listing{"plug-ins", plug_ins_as_text, plug_ins_as_json},
};

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
    names.reserve(listings.size());
    for (const Listing& listing : listings) {
        names.push_back(listing.name);
    }
    if (line.words.size() != 1) {
        return wrong_command("list needs one of " + listed(names));
    }
    const auto found = std::ranges::find(listings, line.words.front(), &Listing::name);
    if (found == listings.end()) {
        return wrong_command("there is no list of \"" + line.words.front() + "\"" +
                             did_you_mean(line.words.front(), names) + "; there are " +
                             listed(names));
    }
    const auto book = open_book(line);
    if (!book) {
        return Exit::unusable_file;
    }
    auto output = Output::open(answer->output);
    if (!output) {
        say(output.error());
        return Exit::unusable_file;
    }
    (answer->format == Format::json ? found->as_json : found->as_text)(*book, *output);
    if (const auto committed = output->commit(); !committed) {
        say(committed.error());
        return Exit::unusable_file;
    }
    return Exit::done;
}

} // namespace libsplice::cli
