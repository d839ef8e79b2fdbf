// Writes each list as an array of JSON objects.
#include "libsplice/sheet/json/json_text.h"

#include "cli/list_tables.h"

namespace libsplice::cli {

namespace {

void write_field(JsonText& json, const FieldDeclaration& field) {
    json.begin_object();
    json.text("name", field.name);
    json.text("also", field.also);
    json.text("meaning", field.meaning);
    json.text("dimension", name_of(field.dimension));
    json.text("default", field.default_text);
    json.key("required");
    json.boolean(field.required);
    const bool ranged = field.dimension != Dimension::choice;
    for (const auto& [key, limit] :
         {std::pair{"lowest", field.lowest}, {"highest", field.highest}}) {
        json.key(key);
        if (ranged) {
            json.number(limit);
        } else {
            json.null();
        }
    }
    json.key("choices");
    json.begin_array();
    for (const auto choice : field.choices) {
        json.text(choice);
    }
    json.end_array();
    json.end_object();
}

void write_kind(JsonText& json, const KindDeclaration& kind) {
    json.begin_object();
    json.text("name", kind.name);
    json.text("title", kind.title);
    json.text("datum", kind.datum);
    json.key("constructions");
    json.begin_array();
    for (const auto name : construction_names()) {
        if (kind.constructions.allows(*read_construction(name))) {
            json.text(name);
        }
    }
    json.end_array();
    json.key("fields");
    json.begin_array();
    for (const auto& field : kind.fields) {
        write_field(json, field);
    }
    for (const auto& field : common_fields()) {
        write_field(json, field);
    }
    json.end_array();
    json.end_object();
}

void write_rope(JsonText& json, const Rope& rope, const Book& book) {
    json.begin_object();
    json.text("id", rope.id);
    json.text("title", rope.title);
    json.text("construction", name_of(rope.construction));
    json.text("fibre", name_of(rope.fibre));
    json.key("diameter_m");
    json.metres(to_nanometres(rope.diameter));
    json.key("breaking_n");
    if (rope.breaking) {
        json.number(rope.breaking->value.si());
        json.text("source", to_text(book.citation(rope.breaking->source)));
    } else {
        json.null();
        json.key("source");
        json.null();
    }
    json.end_object();
}

void write_names(JsonText& json, std::string_view key, const std::vector<std::string>& names) {
    json.key(key);
    json.begin_array();
    for (const std::string& name : names) {
        json.text(name);
    }
    json.end_array();
}

void end_line(JsonText& json, Output& output) {
    json.end_array();
    output.write("\n");
}

void write_entries(const std::vector<Entry>& entries, std::string_view key, const Chosen& chosen,
                   Output& output) {
    JsonText json(output);
    json.begin_array();
    for (const Entry& entry : entries) {
        if (chosen.has(entry.name)) {
            json.begin_object();
            json.text(key, entry.name);
            json.text("meaning", entry.meaning);
            json.end_object();
        }
    }
    end_line(json, output);
}

} // namespace

void ropes_as_json(const Book& book, const Chosen& chosen, Output& output) {
    JsonText json(output);
    json.begin_array();
    for (const Rope& rope : book.catalogue().ropes()) {
        if (!chosen.has(rope.id)) {
            continue;
        }
        write_rope(json, rope, book);
    }
    end_line(json, output);
}

void kinds_as_json(const Book& book, const Chosen& chosen, Output& output) {
    JsonText json(output);
    json.begin_array();
    for (const Kind& kind : book.kinds()) {
        if (!chosen.has(kind.declaration.name)) {
            continue;
        }
        write_kind(json, kind.declaration);
    }
    end_line(json, output);
}

void sources_as_json(const Book& book, const Chosen& chosen, Output& output) {
    JsonText json(output);
    json.begin_array();
    for (const Source& source : book.catalogue().sources()) {
        if (!chosen.has(source.key)) {
            continue;
        }
        json.begin_object();
        json.text("key", source.key);
        json.text("title", source.title);
        json.text("terms", source.terms);
        json.end_object();
    }
    end_line(json, output);
}

void columns_as_json(const Book& book, const Chosen& chosen, Output& output) {
    write_entries(find_listing("columns")->entries(book), "name", chosen, output);
}

void faults_as_json(const Book& book, const Chosen& chosen, Output& output) {
    write_entries(find_listing("faults")->entries(book), "code", chosen, output);
}

void tables_as_json(const Book& book, const Chosen& chosen, Output& output) {
    JsonText json(output);
    json.begin_array();
    for (const TableFolder& folder : book.catalogue().folders()) {
        if (!chosen.has(folder.path)) {
            continue;
        }
        json.begin_object();
        json.text("id", folder.path);
        json.text("name", folder.title);
        json.text("version", folder.version);
        write_names(json, "replaces", folder.replaces);
        json.end_object();
    }
    end_line(json, output);
}

void plug_ins_as_json(const Book& book, const Chosen& chosen, Output& output) {
    JsonText json(output);
    json.begin_array();
    for (const PlugIn& plug_in : book.plug_ins()) {
        if (!chosen.has(plug_in.name)) {
            continue;
        }
        json.begin_object();
        json.text("name", plug_in.name);
        json.text("version", plug_in.version);
        json.text("title", plug_in.title);
        json.text("path", plug_in.path);
        write_names(json, "kinds", plug_in.kinds);
        write_names(json, "ropes", plug_in.ropes);
        json.end_object();
    }
    end_line(json, output);
}

} // namespace libsplice::cli
