// Every list as an array of objects.
#include "libsplice/sheet/json/json_text.h"

#include "cli/list/error_page.h"
#include "cli/list/listing_texts.h"
#include "cli/list/setting_values.h"

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

/// `key`: the value, or null; and its source under `source_key`.
template <class T, class Write>
void write_sourced(JsonText& json, std::string_view key, std::string_view source_key,
                   const std::optional<Sourced<T>>& value, const Book& book, const Write& write) {
    json.key(key);
    if (value) {
        write(value->value);
    } else {
        json.null();
    }
    json.key(source_key);
    if (value) {
        json.text(to_text(book.citation(value->source)));
    } else {
        json.null();
    }
}

/// The points of the curve: `strain` at `load_n`, or at `load_share` of the breaking strength.
void write_stretch_curve(JsonText& json, const std::optional<RopeStretch>& stretch,
                         const Book& book) {
    json.key("stretch");
    if (!stretch) {
        json.null();
        json.key("stretch_source");
        json.null();
        return;
    }
    json.begin_array();
    for (const StretchPoint& point : stretch->curve.points()) {
        json.begin_object();
        json.number(stretch->by_force ? "load_n" : "load_share", point.load);
        json.number("strain", point.strain);
        json.end_object();
    }
    json.end_array();
    json.text("stretch_source", to_text(book.citation(stretch->source)));
}

void write_rope(JsonText& json, const Rope& rope, const Book& book) {
    const auto number = [&json](auto value) {
        json.number(value.si());
    };
    json.begin_object();
    json.text("id", rope.id);
    json.text("title", rope.title);
    json.text("construction", name_of(rope.construction));
    json.text("fibre", name_of(rope.fibre));
    json.key("diameter_m");
    json.metres(to_nanometres(rope.diameter));
    write_sourced(json, "breaking_n", "source", rope.breaking, book, number);
    write_stretch_curve(json, stretch_of(rope, book.common_rules(rope)), book);
    write_sourced(json, "mass_kg_m", "mass_source", rope.mass, book, number);
    write_sourced(json, "price", "price_source", rope.price, book,
                  [&json](double price) { json.number(price); });
    write_sourced(json, "core_diameter_m", "core_diameter_source", rope.core_diameter, book,
                  [&json](Length length) { json.metres(to_nanometres(length)); });
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

void write_entries(std::string_view listing, std::string_view key, const ListSource& source,
                   const Chosen& chosen, Output& output) {
    JsonText json(output);
    json.begin_array();
    for (const Entry& entry : find_listing(listing)->entries(source)) {
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

void ropes_as_json(const ListSource& source, const Chosen& chosen, Output& output) {
    JsonText json(output);
    json.begin_array();
    for (const Rope& rope : chosen_ropes(source, chosen)) {
        write_rope(json, rope, source.book);
    }
    end_line(json, output);
}

void kinds_as_json(const ListSource& source, const Chosen& chosen, Output& output) {
    JsonText json(output);
    json.begin_array();
    for (const Kind& kind : source.book.kinds()) {
        if (chosen.has(kind.declaration.name)) {
            write_kind(json, kind.declaration);
        }
    }
    end_line(json, output);
}

void constructions_as_json(const ListSource& source, const Chosen& chosen, Output& output) {
    write_entries("constructions", "name", source, chosen, output);
}

void columns_as_json(const ListSource& source, const Chosen& chosen, Output& output) {
    write_entries("columns", "name", source, chosen, output);
}

void sources_as_json(const ListSource& source, const Chosen& chosen, Output& output) {
    JsonText json(output);
    json.begin_array();
    for (const Source& one : source.book.catalogue().sources()) {
        if (chosen.has(one.key)) {
            json.begin_object();
            json.text("key", one.key);
            json.text("title", one.title);
            json.text("terms", one.terms);
            json.end_object();
        }
    }
    end_line(json, output);
}

void settings_as_json(const ListSource& source, const Chosen& chosen, Output& output) {
    JsonText json(output);
    json.begin_array();
    for (const SettingValue& setting : setting_values(source.command)) {
        if (chosen.has(setting.name)) {
            json.begin_object();
            json.text("name", setting.name);
            json.text("meaning", setting.meaning);
            json.text("value", setting.value);
            json.text("from", setting.from);
            json.end_object();
        }
    }
    end_line(json, output);
}

void errors_as_json(const ListSource& /*source*/, const Chosen& chosen, Output& output) {
    JsonText json(output);
    json.begin_array();
    for (const CodeTitle& code : all_codes()) {
        const std::string number = std::to_string(static_cast<unsigned>(code.code));
        if (chosen.has(number)) {
            const auto help = help_on(code.code).value_or(ErrorHelp{});
            json.begin_object();
            json.text("code", number);
            json.text("meaning", code.title);
            json.text("cause", help.cause);
            json.text("remedy", help.remedy);
            json.end_object();
        }
    }
    end_line(json, output);
}

void tables_as_json(const ListSource& source, const Chosen& chosen, Output& output) {
    JsonText json(output);
    json.begin_array();
    for (const TableFolder& folder : source.book.catalogue().folders()) {
        if (chosen.has(folder.path)) {
            json.begin_object();
            json.text("id", folder.path);
            json.text("name", folder.title);
            json.text("version", folder.version);
            write_names(json, "replaces", folder.replaces);
            json.end_object();
        }
    }
    end_line(json, output);
}

void plug_ins_as_json(const ListSource& source, const Chosen& chosen, Output& output) {
    JsonText json(output);
    json.begin_array();
    for (const PlugIn& plug_in : source.book.plug_ins()) {
        if (chosen.has(plug_in.name)) {
            json.begin_object();
            json.text("name", plug_in.name);
            json.text("version", plug_in.version);
            json.text("title", plug_in.title);
            json.text("path", plug_in.path);
            write_names(json, "kinds", plug_in.kinds);
            write_names(json, "ropes", plug_in.ropes);
            json.end_object();
        }
    }
    end_line(json, output);
}

} // namespace libsplice::cli
