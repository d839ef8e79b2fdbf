#include "libsplice/sheet/json_text.h"

#include "cli/list_tables.h"

namespace libsplice::cli {

namespace {

void write_text(JsonText& json, std::string_view key, std::string_view value) {
    json.key(key);
    json.text(value);
}

void write_field(JsonText& json, const FieldDeclaration& field) {
    json.begin_object();
    write_text(json, "name", field.name);
    write_text(json, "meaning", field.meaning);
    write_text(json, "dimension", name_of(field.dimension));
    write_text(json, "default", field.default_text);
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
    write_text(json, "name", kind.name);
    write_text(json, "title", kind.title);
    write_text(json, "datum", kind.datum);
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
    write_text(json, "id", rope.id);
    write_text(json, "title", rope.title);
    write_text(json, "construction", name_of(rope.construction));
    write_text(json, "fibre", name_of(rope.fibre));
    json.key("diameter_m");
    json.metres(to_nanometres(rope.diameter));
    json.key("breaking_n");
    if (rope.breaking) {
        json.number(rope.breaking->value.si());
        write_text(json, "source", to_text(book.citation(rope.breaking->source)));
    } else {
        json.null();
        json.key("source");
        json.null();
    }
    json.end_object();
}

void end_line(JsonText& json, Output& output) {
    json.end_array();
    output.write("\n");
}

} // namespace

void ropes_as_json(const Book& book, Output& output) {
    JsonText json(output);
    json.begin_array();
    for (const Rope& rope : book.catalogue().ropes()) {
        write_rope(json, rope, book);
    }
    end_line(json, output);
}

void kinds_as_json(const Book& book, Output& output) {
    JsonText json(output);
    json.begin_array();
    for (const Kind& kind : book.kinds()) {
        write_kind(json, kind.declaration);
    }
    end_line(json, output);
}

void sources_as_json(const Book& book, Output& output) {
    JsonText json(output);
    json.begin_array();
    for (const Source& source : book.catalogue().sources()) {
        json.begin_object();
        write_text(json, "key", source.key);
        write_text(json, "title", source.title);
        write_text(json, "terms", source.terms);
        json.end_object();
    }
    end_line(json, output);
}

void tables_as_json(const Book& book, Output& output) {
    JsonText json(output);
    json.begin_array();
    for (const TableFolder& folder : book.catalogue().folders()) {
        json.begin_object();
        write_text(json, "id", folder.path);
        write_text(json, "name", folder.title);
        write_text(json, "version", folder.version);
        json.key("replaces");
        json.begin_array();
        for (const auto& id : folder.replaces) {
            json.text(id);
        }
        json.end_array();
        json.end_object();
    }
    end_line(json, output);
}

void plug_ins_as_json(const Book& /*book*/, Output& output) {
    JsonText json(output);
    json.begin_array();
    end_line(json, output);
}

} // namespace libsplice::cli
