// Writes the man pages while the program is built: write_manual TABLES SOURCE PAGES INTO.
// PAGES holds the project's own pages as requests of man(7).
#include "libsplice/base/input.h"
#include "libsplice/base/output.h"

#include "cli/declared/manual.h"
#include "cli/messages.h"
#include "cli/tables.h"

namespace {

using namespace libsplice;
using namespace libsplice::cli;

/// The fault has been said where there is none.
std::optional<std::string> text_of(const std::string& path) {
    auto input = Input::open(path);
    auto text = input ? input->read_all() : Unexpected(input.error());
    if (!text) {
        say(text.error());
        return std::nullopt;
    }
    return *std::move(text);
}

/// Sections of a page of ours are subsections of its title, which falls away. A font that not every
/// reader of man pages knows gives way to bold.
std::string as_man_page(std::string text) {
    const auto first = text.find(".SS\n");
    const auto start = text.find(".LP\n");
    text.erase(0, std::min(first, start));
    for (const auto& [from, to] :
         {std::pair<std::string_view, std::string_view>{".SS\n", ".SH\n"}, {"\\fC", "\\fB"}}) {
        for (auto at = text.find(from); at != std::string::npos; at = text.find(from, at)) {
            text.replace(at, from.size(), to);
        }
    }
    // Right after a heading a paragraph begins without saying so.
    text.insert(0, ".SH\nDESCRIPTION\n");
    for (auto at = text.find(".SH\n"); at != std::string::npos; at = text.find(".SH\n", at + 1)) {
        const auto next = text.find('\n', at + 4) + 1;
        if (text.compare(next, 4, ".LP\n") == 0) {
            text.erase(next, 4);
        }
    }
    return text;
}

bool write(const std::string& path, std::string_view text) {
    auto output = Output::open(path);
    if (!output) {
        say(output.error());
        return false;
    }
    output->write(text);
    const auto done = output->commit();
    if (!done) {
        say(done.error());
    }
    return done.has_value();
}

} // namespace

int main(int argument_count, char** arguments) {
    const std::vector<std::string> words(arguments, arguments + argument_count);
    if (words.size() != 5) {
        say("write_manual TABLES SOURCE PAGES INTO");
        return 2;
    }
    CommandLine line;
    line.options["tables"] = {words[1]};
    const auto book = open_book(line);
    ManualSources sources;
    for (const auto& [into, path] :
         {std::pair{&sources.job_page, words[3] + "/job-files.man"},
          {&sources.tables_page, words[3] + "/tables.man"},
          {&sources.plug_in_page, words[3] + "/plug-ins.man"},
          {&sources.plug_in_header, words[2] + "/libsplice/abi/include/splice_plugin.h"}}) {
        const auto text = text_of(path);
        if (!text) {
            return 3;
        }
        *into = path.ends_with(".man") ? as_man_page(*text) : *text;
    }
    if (!book) {
        return 3;
    }
    for (const ManFile& page : manual(*book, sources)) {
        if (!write(words[4] + "/man" + page.name.substr(page.name.size() - 1) + '/' + page.name,
                   page.text)) {
            return 3;
        }
    }
    return 0;
}
