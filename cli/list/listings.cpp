// The table of lists, and the names in each.
#include "cli/list/listings.h"

#include "libsplice/job/line.h"
#include "libsplice/units/show.h"

#include "cli/list/listing_texts.h"
#include "cli/list/setting_values.h"

#include <algorithm>
#include <array>

namespace libsplice::cli {

namespace {

std::vector<Entry> rope_entries(const ListSource& source) {
    std::vector<Entry> entries;
    for (const Rope& rope : source.book.catalogue().ropes()) {
        entries.push_back({rope.id, description_of(rope)});
    }
    return entries;
}

std::vector<Entry> kind_entries(const ListSource& source) {
    std::vector<Entry> entries;
    for (const Kind& kind : source.book.kinds()) {
        entries.push_back(
            {std::string(kind.declaration.name), std::string(kind.declaration.title)});
    }
    return entries;
}

std::vector<Entry> source_entries(const ListSource& source) {
    std::vector<Entry> entries;
    for (const Source& one : source.book.catalogue().sources()) {
        entries.push_back({one.key, one.title});
    }
    return entries;
}

std::vector<Entry> table_entries(const ListSource& source) {
    std::vector<Entry> entries;
    for (const TableFolder& folder : source.book.catalogue().folders()) {
        entries.push_back({folder.path, folder.title});
    }
    return entries;
}

std::vector<Entry> plug_in_entries(const ListSource& source) {
    std::vector<Entry> entries;
    for (const PlugIn& plug_in : source.book.plug_ins()) {
        entries.push_back({plug_in.name, plug_in.title});
    }
    return entries;
}

std::vector<Entry> construction_entries(const ListSource& /*source*/) {
    std::vector<Entry> entries;
    for (const auto name : construction_names()) {
        entries.push_back({std::string(name), std::string(meaning_of(*read_construction(name)))});
    }
    return entries;
}

std::vector<Entry> setting_entries(const ListSource& source) {
    std::vector<Entry> entries;
    for (const SettingValue& setting : setting_values(source.command)) {
        entries.push_back({setting.name, setting.meaning});
    }
    return entries;
}

std::vector<Entry> column_entries(const ListSource& /*source*/) {
    std::vector<Entry> entries;
    entries.reserve(job_columns.size());
    for (const ColumnDeclaration& column : job_columns) {
        entries.push_back({std::string(column.name), std::string(column.meaning)});
    }
    return entries;
}

std::vector<Entry> error_entries(const ListSource& /*source*/) {
    std::vector<Entry> entries;
    for (const CodeTitle& code : all_codes()) {
        entries.push_back(
            {std::to_string(static_cast<unsigned>(code.code)), std::string(code.title)});
    }
    return entries;
}

constexpr std::array all_listings{
    Listing{{"ropes", "ropes, with construction, fibre, diameter and breaking strength"},
            ropes_as_text,
            ropes_as_json,
            rope_entries},
    Listing{{"kinds", "kinds of end, and the fields of those that are named"},
            kinds_as_text,
            kinds_as_json,
            kind_entries},
    Listing{{"constructions", "how ropes are made, and the words for it"},
            constructions_as_text,
            constructions_as_json,
            construction_entries},
    Listing{{"columns", "columns of a job file"}, columns_as_text, columns_as_json, column_entries},
    Listing{{"settings", "options that a file of settings may give, their values, and from where"},
            settings_as_text,
            settings_as_json,
            setting_entries},
    Listing{{"errors", "errors by their code, with cause and remedy"},
            errors_as_text,
            errors_as_json,
            error_entries},
    Listing{{"sources", "documents that figures are taken from"},
            sources_as_text,
            sources_as_json,
            source_entries},
    Listing{{"tables", "folders of tables in use"}, tables_as_text, tables_as_json, table_entries},
    Listing{{"plug-ins", "plug-ins that are loaded"},
            plug_ins_as_text,
            plug_ins_as_json,
            plug_in_entries},
};

} // namespace

bool Chosen::has(std::string_view name) const {
    return names_.empty() || std::ranges::find(names_, name) != names_.end();
}

std::span<const Listing> listings() {
    return all_listings;
}

const Listing* find_listing(std::string_view name) {
    for (const Listing& listing : all_listings) {
        if (listing.word.name == name) {
            return &listing;
        }
    }
    return nullptr;
}

} // namespace libsplice::cli
