// The man pages are put together here; their words are declared elsewhere.
#include "cli/declared/manual.h"

#include "libsplice/base/version.h"

#include "cli/declared/help.h"
#include "cli/declared/roff.h"
#include "cli/declared/synopsis.h"
#include "cli/list/listings.h"

#include <algorithm>

namespace libsplice::cli {

namespace {

/// `2026-11-01` of tables whose version is 2026.11: what is made from the same sources is the same.
std::string date_of(const Book& book) {
    std::string date = book.catalogue().folders().front().version;
    std::ranges::replace(date, '.', '-');
    return std::ranges::count(date, '-') == 1 ? date + "-01" : date;
}

ManPage begun(const Book& book, std::string_view name, int section, std::string_view summary) {
    return {name, section, summary, date_of(book), version()};
}

std::string page_of(const Command& command) {
    return "splice-" + std::string(command.name);
}

void option_item(ManPage& page, const OptionDeclaration& option, std::string_view command) {
    const std::string letter = option.letter == '\0' ? "" : std::string("-") + option.letter + ", ";
    page.item(letter + "--" + std::string(option.name), option.argument,
              meaning_of(option, command));
}

void exits(ManPage& page) {
    page.section("EXIT STATUS");
    for (const ExitMeaning& exit : exit_meanings()) {
        page.item(std::to_string(static_cast<int>(exit.exit)), "", exit.meaning);
    }
}

void entries(ManPage& page, std::string_view listing, const Book& book) {
    for (const Entry& entry : find_listing(listing)->entries({book, CommandLine{}})) {
        page.item(entry.name, "", entry.meaning);
    }
}

void see_also(ManPage& page, std::string_view but) {
    std::string names;
    const auto add = [&](std::string_view name, std::string_view section) {
        if (name != but) {
            names +=
                (names.empty() ? "" : ", ") + std::string(name) + '(' + std::string(section) + ')';
        }
    };
    add("splice", "1");
    for (const Command& command : commands()) {
        add(page_of(command), "1");
    }
    add("splice-plug-in", "3");
    add("splice-job", "5");
    add("splice-tables", "5");
    page.section("SEE ALSO");
    page.paragraph(names);
}

ManFile command_page(const Book& book) {
    ManPage page = begun(book, "splice", 1, about_the_command());
    page.section("SYNOPSIS");
    page.command("splice", "COMMAND ...");
    page.section("COMMANDS");
    for (const Command& command : commands()) {
        page.item(command.name, command.synopsis,
                  std::string(command.summary) + "; see " + page_of(command) + "(1)");
    }
    page.section("OPTIONS");
    for (const OptionDeclaration& option : option_declarations()) {
        option_item(page, option, {});
    }
    exits(page);
    page.section("ENVIRONMENT");
    for (const Word& variable : environment_variables()) {
        page.item(variable.name, "", variable.meaning);
    }
    page.section("FILES");
    for (const Word& file : files_of_the_user()) {
        page.item(file.name, "", file.meaning);
    }
    page.section("DIAGNOSTICS");
    page.paragraph(
        "Errors are printed on standard error as file:line:column: error CODE: sentence.");
    entries(page, "errors", book);
    page.section("EXAMPLES");
    page.literal(commands().front().example);
    see_also(page, "splice");
    return {"splice.1", page.text()};
}

ManFile page_of_command(const Book& book, const Command& command) {
    ManPage page = begun(book, page_of(command), 1, command.summary);
    page.section("SYNOPSIS");
    page.command("splice " + std::string(command.name),
                 std::string(command.synopsis) + " [OPTION...]");
    page.section("DESCRIPTION");
    page.paragraph(command.about);
    if (command.words != nullptr) {
        page.paragraph(std::string(first_placeholder(command.synopsis)) + " is one of:");
        for (const Word& word : command.words()) {
            page.item(word.name, "", word.meaning);
        }
    }
    page.section("OPTIONS");
    for (const OptionDeclaration& option : option_declarations()) {
        if (takes(command.name, option)) {
            option_item(page, option, command.name);
        }
    }
    exits(page);
    page.section("EXAMPLES");
    page.literal(command.example);
    see_also(page, page_of(command));
    return {page_of(command) + ".1", page.text()};
}

void field_items(ManPage& page, std::span<const FieldDeclaration> fields) {
    for (const FieldDeclaration& field : fields) {
        page.item(field.name, "", meaning_of(field));
    }
}

ManFile job_page(const Book& book, const ManualSources& sources) {
    ManPage page = begun(book, "splice-job", 5, "job files: the lines to cut");
    page.raw(sources.job_page);
    page.section("ALL COLUMNS");
    entries(page, "columns", book);
    page.section("FIELDS OF EVERY END");
    field_items(page, common_fields());
    page.section("KINDS OF END AND THEIR FIELDS");
    for (const Kind& kind : book.kinds()) {
        page.subsection(kind.declaration.name);
        page.paragraph(about_kind(kind.declaration));
        field_items(page, kind.declaration.fields);
    }
    see_also(page, "splice-job");
    return {"splice-job.5", page.text()};
}

ManFile tables_page(const Book& book, const ManualSources& sources) {
    ManPage page = begun(book, "splice-tables", 5, "tables of ropes, sources and rules");
    page.raw(sources.tables_page);
    page.section("FIGURES");
    for (const FigureDeclaration& figure : figure_table) {
        page.item(figure.word, "", figure.meaning);
    }
    for (const auto& [heading, names] :
         {std::pair<std::string_view, std::span<const std::string_view>>{"CONSTRUCTIONS",
                                                                         construction_names()},
          {"FIBRES", fibre_names()}}) {
        page.section(heading);
        std::string words;
        for (const auto name : names) {
            words += (words.empty() ? "" : ", ") + std::string(name);
        }
        page.paragraph(words);
    }
    see_also(page, "splice-tables");
    return {"splice-tables.5", page.text()};
}

ManFile plug_in_page(const Book& book, const ManualSources& sources) {
    ManPage page = begun(book, "splice-plug-in", 3, "kinds of end and ropes from elsewhere");
    page.raw(sources.plug_in_page);
    page.section("THE HEADER");
    page.literal(sources.plug_in_header);
    see_also(page, "splice-plug-in");
    return {"splice-plug-in.3", page.text()};
}

} // namespace

std::vector<ManFile> manual(const Book& book, const ManualSources& sources) {
    std::vector<ManFile> files{command_page(book), job_page(book, sources),
                               plug_in_page(book, sources)};
    for (const Command& command : commands()) {
        files.push_back(page_of_command(book, command));
    }
    files.push_back(tables_page(book, sources));
    return files;
}

} // namespace libsplice::cli
