// Writes each list as text: a name starts its line.
#include "libsplice/base/wrap.h"
#include "libsplice/units/show.h"

#include "cli/declared/help.h"
#include "cli/list_tables.h"

namespace libsplice::cli {

namespace {

/// `name`, then its meaning in a hanging paragraph.
void write_entry(Output& output, std::string_view name, std::string_view meaning,
                 std::size_t indent) {
    output.write(std::string(indent, ' '));
    output.write(name);
    output.write("\n");
    output.write(std::string(indent + 4, ' '));
    output.write(wrapped(meaning, help_width, indent + 4, indent + 4));
    output.write("\n");
}

void write_entries(const std::vector<Entry>& entries, const Chosen& chosen, Output& output) {
    for (const Entry& entry : entries) {
        if (chosen.has(entry.name)) {
            write_entry(output, entry.name, entry.meaning, 0);
        }
    }
}

void write_field(Output& output, const FieldDeclaration& field) {
    write_entry(output, field.name, meaning_of(field), 4);
}

} // namespace

std::string description_of(const Rope& rope) {
    return std::string(name_of(rope.construction)) + ' ' + std::string(name_of(rope.fibre)) + ' ' +
           show_number(rope.diameter.si() * 1000.0, 2) + " mm";
}

void ropes_as_text(const Book& book, const Chosen& chosen, Output& output) {
    for (const Rope& rope : book.catalogue().ropes()) {
        if (!chosen.has(rope.id)) {
            continue;
        }
        std::string meaning = description_of(rope);
        if (rope.breaking) {
            meaning += ", breaks at " + show_number(rope.breaking->value.si() / 1000.0, 2) +
                       " kN (" + to_text(book.citation(rope.breaking->source)) + ")";
        }
        write_entry(output, rope.id, meaning, 0);
    }
}

void kinds_as_text(const Book& book, const Chosen& chosen, Output& output) {
    for (const Kind& kind : book.kinds()) {
        if (!chosen.has(kind.declaration.name)) {
            continue;
        }
        const auto& declaration = kind.declaration;
        write_entry(output, declaration.name, about_kind(declaration), 0);
        for (const auto& field : declaration.fields) {
            write_field(output, field);
        }
        output.write("\n");
    }
    write_entry(output, "every end", "Fields that every kind takes in a job:", 0);
    for (const auto& field : common_fields()) {
        write_field(output, field);
    }
}

void sources_as_text(const Book& book, const Chosen& chosen, Output& output) {
    for (const Source& source : book.catalogue().sources()) {
        if (!chosen.has(source.key)) {
            continue;
        }
        write_entry(output, source.key,
                    source.title + (source.terms.empty() ? "" : " (" + source.terms + ")"), 0);
    }
}

void columns_as_text(const Book& book, const Chosen& chosen, Output& output) {
    write_entries(find_listing("columns")->entries(book), chosen, output);
}

void faults_as_text(const Book& book, const Chosen& chosen, Output& output) {
    write_entries(find_listing("faults")->entries(book), chosen, output);
}

void tables_as_text(const Book& book, const Chosen& chosen, Output& output) {
    for (const TableFolder& folder : book.catalogue().folders()) {
        if (!chosen.has(folder.path)) {
            continue;
        }
        std::string meaning = folder.title + ", version " + folder.version;
        for (std::size_t i = 0; i < folder.replaces.size(); ++i) {
            meaning += (i == 0 ? "; replaces " : ", ") + folder.replaces[i];
        }
        write_entry(output, folder.path, meaning, 0);
    }
}

void plug_ins_as_text(const Book& book, const Chosen& chosen, Output& output) {
    for (const PlugIn& plug_in : book.plug_ins()) {
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
        write_entry(output, plug_in.name, meaning, 0);
    }
    if (book.plug_ins().empty()) {
        output.write("no plug-ins are loaded\n");
    }
}

} // namespace libsplice::cli
