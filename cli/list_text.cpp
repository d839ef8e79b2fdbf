#include "libsplice/base/wrap.h"
#include "libsplice/units/show.h"

#include "cli/help.h"
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

std::string limits(const FieldDeclaration& field) {
    switch (field.dimension) {
    case Dimension::choice: {
        std::string words;
        for (const auto choice : field.choices) {
            words += (words.empty() ? "" : " | ") + std::string(choice);
        }
        return words;
    }
    case Dimension::length:
        return show_length(Length(field.lowest), UnitSystem::metric) + " to " +
               show_length(Length(field.highest), UnitSystem::metric);
    default:
        return show_number(field.lowest, 3) + " to " + show_number(field.highest, 3);
    }
}

void write_field(Output& output, const FieldDeclaration& field) {
    std::string meaning(field.meaning);
    if (!field.also.empty()) {
        meaning += ", also " + std::string(field.also);
    }
    if (const auto range = limits(field); !range.empty()) {
        meaning += " (" + range + ")";
    }
    meaning += field.required ? "; required" : "; default: " + std::string(field.default_text);
    write_entry(output, field.name, meaning, 4);
}

std::string made_in(const KindDeclaration& kind) {
    std::string names;
    for (const auto name : construction_names()) {
        if (kind.constructions.allows(*read_construction(name))) {
            names += (names.empty() ? "" : ", ") + std::string(name);
        }
    }
    return names;
}

} // namespace

void ropes_as_text(const Book& book, Output& output) {
    for (const Rope& rope : book.catalogue().ropes()) {
        std::string meaning = std::string(name_of(rope.construction)) + ' ' +
                              std::string(name_of(rope.fibre)) + ' ' +
                              show_number(rope.diameter.si() * 1000.0, 2) + " mm";
        if (rope.breaking) {
            meaning += ", breaks at " + show_number(rope.breaking->value.si() / 1000.0, 2) +
                       " kN (" + to_text(book.citation(rope.breaking->source)) + ")";
        }
        write_entry(output, rope.id, meaning, 0);
    }
}

void kinds_as_text(const Book& book, Output& output) {
    for (const Kind& kind : book.kinds()) {
        const auto& declaration = kind.declaration;
        write_entry(output, declaration.name,
                    std::string(declaration.title) + ". Measured to: " +
                        std::string(declaration.datum) + ". Made in: " + made_in(declaration) + ".",
                    0);
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

void sources_as_text(const Book& book, Output& output) {
    for (const Source& source : book.catalogue().sources()) {
        write_entry(output, source.key,
                    source.title + (source.terms.empty() ? "" : " (" + source.terms + ")"), 0);
    }
}

void tables_as_text(const Book& book, Output& output) {
    for (const TableFolder& folder : book.catalogue().folders()) {
        std::string meaning = folder.title + ", version " + folder.version;
        for (std::size_t i = 0; i < folder.replaces.size(); ++i) {
            meaning += (i == 0 ? "; replaces " : ", ") + folder.replaces[i];
        }
        write_entry(output, folder.path, meaning, 0);
    }
}

void plug_ins_as_text(const Book& book, Output& output) {
    for (const PlugIn& plug_in : book.plug_ins()) {
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
