// The lists and what each may be asked for: one row a list.
#include "cli/list/listings.h"

#include "libsplice/job/line.h"
#include "libsplice/units/show.h"

#include "cli/list_tables.h"

#include <algorithm>
#include <array>

namespace libsplice::cli {

namespace {

std::vector<Entry> rope_entries(const Book& book) {
    std::vector<Entry> entries;
    for (const Rope& rope : book.catalogue().ropes()) {
        entries.push_back({rope.id, description_of(rope)});
    }
    return entries;
}

std::vector<Entry> kind_entries(const Book& book) {
    std::vector<Entry> entries;
    for (const Kind& kind : book.kinds()) {
        entries.push_back(
            {std::string(kind.declaration.name), std::string(kind.declaration.title)});
    }
    return entries;
}

std::vector<Entry> source_entries(const Book& book) {
    std::vector<Entry> entries;
    for (const Source& source : book.catalogue().sources()) {
        entries.push_back({source.key, source.title});
    }
    return entries;
}

std::vector<Entry> table_entries(const Book& book) {
    std::vector<Entry> entries;
    for (const TableFolder& folder : book.catalogue().folders()) {
        entries.push_back({folder.path, folder.title});
    }
    return entries;
}

std::vector<Entry> plug_in_entries(const Book& book) {
    std::vector<Entry> entries;
    for (const PlugIn& plug_in : book.plug_ins()) {
        entries.push_back({plug_in.name, plug_in.title});
    }
    return entries;
}

std::vector<Entry> column_entries(const Book& /*book*/) {
    std::vector<Entry> entries;
    for (std::size_t i = 0; i < column_count; ++i) {
        entries.push_back(
            {std::string(column_names()[i]), std::string(column_meaning(static_cast<Column>(i)))});
    }
    return entries;
}

std::vector<Entry> fault_entries(const Book& /*book*/) {
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
    Listing{
        {"kinds", "kinds of end, with their fields"}, kinds_as_text, kinds_as_json, kind_entries},
    Listing{{"columns", "columns of a job file"}, columns_as_text, columns_as_json, column_entries},
    Listing{{"faults", "the codes of faults"}, faults_as_text, faults_as_json, fault_entries},
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
