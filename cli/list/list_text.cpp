// Every list as text: a name at the start of its line, its meaning beside it.
#include "libsplice/base/text.h"
#include "libsplice/base/wrap.h"
#include "libsplice/units/show.h"

#include "cli/declared/help.h"
#include "cli/list/error_page.h"
#include "cli/list/listing_texts.h"
#include "cli/list/setting_values.h"
#include "cli/settings/settings.h"

#include <algorithm>

namespace libsplice::cli {

namespace {

/// Names and meanings in two columns; names that are long have a line of their own.
void write_entries(std::span<const Entry> entries, std::size_t indent, Output& output) {
    constexpr std::size_t widest = 22;
    std::size_t width = 0;
    for (const Entry& entry : entries) {
        const auto length = display_width(entry.name);
        width = length > widest ? width : std::max(width, length);
    }
    const std::size_t column = indent + width + 2;
    for (const Entry& entry : entries) {
        const std::string name = show_controls(entry.name);
        const auto length = display_width(name);
        output.write(std::string(indent, ' ') + name);
        if (!entry.meaning.empty()) {
            output.write(length > width ? '\n' + std::string(column, ' ')
                                        : std::string(column - indent - length, ' '));
            output.write(wrapped(show_controls(entry.meaning), help_width, column, column));
        }
        output.write("\n");
    }
}

void write_listing(std::string_view listing, const ListSource& source, const Chosen& chosen,
                   Output& output) {
    auto entries = find_listing(listing)->entries(source);
    std::erase_if(entries, [&](const Entry& entry) { return !chosen.has(entry.name); });
    write_entries(entries, 0, output);
}

std::vector<Entry> field_entries(std::span<const FieldDeclaration> fields) {
    std::vector<Entry> entries;
    for (const auto& field : fields) {
        entries.push_back({std::string(field.name), meaning_of(field)});
    }
    return entries;
}

/// A kind with its fields.
void write_kind(const KindDeclaration& kind, Output& output) {
    output.write(show_controls(kind.name) + '\n');
    output.write("    " + wrapped(show_controls(about_kind(kind)), help_width, 4, 4) + '\n');
    write_entries(field_entries(kind.fields), 4, output);
    output.write("  and what every end takes in a job:\n");
    write_entries(field_entries(common_fields()), 4, output);
}

} // namespace

std::string description_of(const Rope& rope) {
    return std::string(name_of(rope.construction)) + ' ' + std::string(name_of(rope.fibre)) + ' ' +
           show_number(rope.diameter.si() * 1000.0, 2) + " mm";
}

std::vector<Rope> chosen_ropes(const ListSource& source, const Chosen& chosen) {
    const Catalogue& catalogue = source.book.catalogue();
    if (chosen.all()) {
        return {catalogue.ropes().begin(), catalogue.ropes().end()};
    }
    std::vector<Rope> ropes;
    for (const std::string& name : chosen.names()) {
        if (auto rope = catalogue.rope(name)) {
            ropes.push_back(*std::move(rope));
        }
    }
    return ropes;
}

void ropes_as_text(const ListSource& source, const Chosen& chosen, Output& output) {
    std::vector<Entry> entries;
    for (const Rope& rope : chosen_ropes(source, chosen)) {
        std::string meaning = description_of(rope);
        if (rope.breaking) {
            meaning += ", breaks at " + show_number(rope.breaking->value.si() / 1000.0, 2) +
                       " kN (" + to_text(source.book.citation(rope.breaking->source)) + ")";
        } else {
            meaning += ", breaking strength not known";
        }
        entries.push_back({rope.id, std::move(meaning)});
    }
    write_entries(entries, 0, output);
}

void kinds_as_text(const ListSource& source, const Chosen& chosen, Output& output) {
    if (chosen.all()) {
        write_listing("kinds", source, chosen, output);
        output.write("\nsplice list kinds KIND shows the fields of a kind.\n");
        return;
    }
    for (const Kind& kind : source.book.kinds()) {
        if (chosen.has(kind.declaration.name)) {
            write_kind(kind.declaration, output);
        }
    }
}

void constructions_as_text(const ListSource& source, const Chosen& chosen, Output& output) {
    write_listing("constructions", source, chosen, output);
}

void sources_as_text(const ListSource& source, const Chosen& chosen, Output& output) {
    std::vector<Entry> entries;
    for (const Source& one : source.book.catalogue().sources()) {
        if (chosen.has(one.key)) {
            entries.push_back(
                {one.key, one.title + (one.terms.empty() ? "" : " (" + one.terms + ")")});
        }
    }
    write_entries(entries, 0, output);
}

void columns_as_text(const ListSource& source, const Chosen& chosen, Output& output) {
    write_listing("columns", source, chosen, output);
}

void settings_as_text(const ListSource& source, const Chosen& chosen, Output& output) {
    std::vector<Entry> entries;
    for (const SettingValue& setting : setting_values(source.command)) {
        if (chosen.has(setting.name)) {
            entries.push_back({setting.name, setting.value + " (" + setting.from + ")"});
        }
    }
    write_entries(entries, 0, output);
    if (chosen.all()) {
        output.write("\nFiles of settings, the later one stronger:\n");
        for (const auto& file : settings_files(source.command)) {
            output.write("  " + show_controls(file.string()) + '\n');
        }
    }
}

void errors_as_text(const ListSource& source, const Chosen& chosen, Output& output) {
    if (chosen.all()) {
        write_listing("errors", source, chosen, output);
        output.write("\nsplice list errors CODE gives the cause and what to do.\n");
        return;
    }
    for (const CodeTitle& code : all_codes()) {
        const std::string number = std::to_string(static_cast<unsigned>(code.code));
        if (chosen.has(number)) {
            const auto help = help_on(code.code).value_or(ErrorHelp{});
            output.write(number + "  " + std::string(code.title) + '\n');
            output.write("     " + wrapped(help.cause, help_width, 5, 5) + '\n');
            output.write("     " + wrapped("What to do: " + help.remedy, help_width, 5, 5) + '\n');
        }
    }
}

void tables_as_text(const ListSource& source, const Chosen& chosen, Output& output) {
    std::vector<Entry> entries;
    for (const TableFolder& folder : source.book.catalogue().folders()) {
        if (!chosen.has(folder.path)) {
            continue;
        }
        std::string meaning = folder.title + ", version " + folder.version;
        for (std::size_t i = 0; i < folder.replaces.size(); ++i) {
            meaning += (i == 0 ? "; replaces " : ", ") + folder.replaces[i];
        }
        entries.push_back({folder.path, std::move(meaning)});
    }
    write_entries(entries, 0, output);
}

void plug_ins_as_text(const ListSource& source, const Chosen& chosen, Output& output) {
    std::vector<Entry> entries;
    for (const PlugIn& plug_in : source.book.plug_ins()) {
        if (!chosen.has(plug_in.name)) {
            continue;
        }
        std::string meaning =
            plug_in.title + ", version " + plug_in.version + ", from " + plug_in.path;
        for (const auto& [what, names] :
             {std::pair{"kinds", &plug_in.kinds}, {"ropes", &plug_in.ropes}}) {
            for (std::size_t i = 0; i < names->size(); ++i) {
                meaning += (i == 0 ? "; " + std::string(what) + ": " : ", ") + (*names)[i];
            }
        }
        entries.push_back({plug_in.name, std::move(meaning)});
    }
    write_entries(entries, 0, output);
    if (source.book.plug_ins().empty()) {
        output.write("no plug-ins are loaded\n");
    }
}

} // namespace libsplice::cli
