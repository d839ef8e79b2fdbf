// Walking through folders of tables, file by file and record by record.
#include "libsplice/catalogue/reading/read_tables.h"

#include "libsplice/base/input.h"
#include "libsplice/base/text.h"
#include "libsplice/catalogue/reading/read_aliases.h"
#include "libsplice/catalogue/reading/read_generic.h"
#include "libsplice/catalogue/reading/read_record.h"
#include "libsplice/catalogue/reading/read_rope.h"
#include "libsplice/catalogue/reading/read_rule.h"

#include <algorithm>
#include <array>
#include <filesystem>
#include <system_error>
#include <utility>

namespace libsplice {

namespace {

namespace fs = std::filesystem;

bool exists(const std::string& path) {
    std::error_code ignored;
    return fs::exists(path, ignored);
}

bool is_file(const std::string& path) {
    std::error_code ignored;
    return fs::is_regular_file(path, ignored);
}

/// The TOML files of a folder, sorted by name.
std::vector<std::string> toml_files(const std::string& folder, std::error_code& error) {
    std::vector<std::string> files;
    fs::directory_iterator entry(folder, error);
    while (!error && entry != fs::directory_iterator()) {
        if (entry->path().extension() == ".toml") {
            files.push_back(entry->path().string());
        }
        entry.increment(error);
    }
    std::ranges::sort(files);
    return files;
}

} // namespace

void TableReader::read_folder(const std::string& path) {
    folder_ = TableFolder{path, {}, {}, {}};
    own_sources_.clear();
    own_generics_.clear();
    own_ropes_.clear();
    own_rules_.clear();
    const std::string main = is_file(path) ? path : path + "/tables.toml";
    if (!exists(main)) {
        faults_.push(Fault{Code::tables_missing,
                           "there is no folder of tables here; it would hold tables.toml with "
                           "\"version\" and \"title\"",
                           Place{path}});
        return;
    }
    if (const auto document = parse(main)) {
        read_heading(*document);
        if (main != path) {
            read_aliases(path + "/aliases.toml");
        }
        read_sources(list_of(*document, "source"));
        if (main != path) {
            check_files();
            read_sources(records(path + "/sources.toml", "source"));
        }
        read_ropes(list_of(*document, "rope"));
        read_rules(list_of(*document, "rule"));
    }
    if (main != path) {
        read_files();
    }
    catalogue_.folders_.push_back(std::move(folder_));
}

void TableReader::read_files() {
    for (const Node& record : records(folder_.path + "/generic.toml", "generic")) {
        TableContext context = this->context();
        if (auto generic = read_generic(context, record)) {
            keep(catalogue_.generics_, own_generics_, *std::move(generic), &GenericRope::id,
                 record);
        }
    }
    for (const auto& file : files_in("ropes")) {
        read_ropes(records(file, "rope"));
    }
    for (const auto& file : {folder_.path + "/constructions.toml", folder_.path + "/bench.toml"}) {
        read_rules(records(file, "rule"));
    }
    for (const auto& file : files_in("terminations")) {
        read_rules(records(file, "rule"));
    }
}

/// A misspelt name must not make a file go unread. What places.toml says is for the choice of rope,
/// which reads it.
void TableReader::check_files() {
    constexpr std::array<std::string_view, 7> known{
        "tables.toml", "sources.toml",       "aliases.toml", "generic.toml",
        "places.toml", "constructions.toml", "bench.toml"};
    for (const auto& file : files_in(".")) {
        const std::string name = fs::path(file).filename().string();
        if (std::ranges::find(known, name) == known.end()) {
            faults_.push(Fault{Code::table_value_wrong,
                               "no table is called \"" + name +
                                   "\"; ropes go into ropes/, rules of ends into terminations/" +
                                   did_you_mean(name, known),
                               Place{file}});
        }
    }
}

std::vector<std::string> TableReader::files_in(const std::string& subfolder) {
    const std::string path = subfolder == "." ? folder_.path : folder_.path + '/' + subfolder;
    if (!exists(path)) {
        return {};
    }
    std::error_code error;
    auto files = toml_files(path, error);
    if (error) {
        faults_.push(Fault{Code::table_unreadable, "the folder cannot be read: " + error.message(),
                           Place{path}});
    }
    return files;
}

std::optional<Node> TableReader::parse(const std::string& file) {
    auto input = Input::open(file);
    auto text = input ? input->read_all() : Result<std::string>(Unexpected(input.error()));
    if (!text) {
        Fault fault = text.error();
        fault.code = Code::table_unreadable;
        faults_.push(std::move(fault));
        return std::nullopt;
    }
    auto document = parse_toml(*text, file);
    if (!document) {
        faults_.push(document.error());
        return std::nullopt;
    }
    return *std::move(document);
}

/// Those of a file that may be left out.
Node::Array TableReader::records(const std::string& file, std::string_view name) {
    if (!exists(file)) {
        return {};
    }
    const auto document = parse(file);
    return document ? records_of(*document, name) : Node::Array();
}

/// The tables of `[[name]]`; nothing else may stand in the document.
Node::Array TableReader::records_of(const Node& document, std::string_view name) {
    TableContext context = this->context();
    check_keys(context, document, std::array{name});
    return list_of(document, name);
}

Node::Array TableReader::list_of(const Node& document, std::string_view name) {
    TableContext context = this->context();
    const Node* list = document.find(name);
    if (list == nullptr) {
        return {};
    }
    const auto is_table = [](const Node& node) {
        return node.table() != nullptr;
    };
    if (list->array() == nullptr || !std::ranges::all_of(*list->array(), is_table)) {
        push_fault(context, Code::table_value_wrong, *list, std::string(name),
                   "write records under [[" + std::string(name) + "]], with two brackets");
        return {};
    }
    return *list->array();
}

template <class Record>
void TableReader::keep(std::vector<Record>& records, std::vector<std::string>& own, Record record,
                       std::string Record::*id, const Node& at) {
    const std::string name = record.*id;
    if (std::ranges::find(own, name) != own.end()) {
        faults_.push(Fault{Code::duplicate_record,
                           "\"" + name + "\" occurs twice in this folder; rename or remove one",
                           at.at()});
        return;
    }
    own.push_back(name);
    const auto earlier = std::ranges::find(records, name, id);
    if (earlier != records.end()) {
        *earlier = std::move(record);
        folder_.replaces.push_back(name);
        return;
    }
    records.push_back(std::move(record));
}

void TableReader::read_heading(const Node& document) {
    TableContext context = this->context();
    check_keys(context, document,
               std::array<std::string_view, 5>{"version", "title", "source", "rope", "rule"});
    folder_.version = require_text(context, document, "version");
    folder_.title = require_text(context, document, "title");
}

TableContext TableReader::context() {
    return {catalogue_.sources_, catalogue_.aliases_, catalogue_.citations_, faults_};
}

/// Aliases add up over the folders: a word of a shop's own does not take the trade's away.
void TableReader::read_aliases(const std::string& file) {
    const auto document = exists(file) ? parse(file) : std::nullopt;
    if (!document) {
        return;
    }
    TableContext context = this->context();
    check_keys(context, *document, std::array<std::string_view, 2>{"alias", "unclear"});
    for (const Node& record : list_of(*document, "alias")) {
        if (auto alias = read_alias(context, record)) {
            catalogue_.aliases_.add(*std::move(alias));
        }
    }
    for (const Node& record : list_of(*document, "unclear")) {
        if (auto unclear = read_unclear(context, record)) {
            catalogue_.aliases_.add(*std::move(unclear));
        }
    }
}

void TableReader::read_sources(const Node::Array& records) {
    TableContext context = this->context();
    for (const Node& record : records) {
        check_keys(context, record,
                   std::array<std::string_view, 4>{"key", "title", "terms", "note"});
        static_cast<void>(optional_text(context, record, "note"));
        Source source{require_text(context, record, "key"), require_text(context, record, "title"),
                      require_text(context, record, "terms"), folder_.path};
        if (!source.key.empty()) {
            keep(catalogue_.sources_, own_sources_, std::move(source), &Source::key, record);
        }
    }
}

void TableReader::read_ropes(const Node::Array& records) {
    TableContext context = this->context();
    for (const Node& record : records) {
        if (auto rope = read_rope(context, record)) {
            keep(catalogue_.ropes_, own_ropes_, *std::move(rope), &Rope::id, record);
        }
    }
}

std::vector<Rope> TableReader::read_rope_text(std::string_view text, const std::string& name) {
    const auto document = parse_toml(text, name);
    if (!document) {
        faults_.push(document.error());
        return {};
    }
    TableContext context = this->context();
    std::vector<Rope> ropes;
    for (const Node& record : records_of(*document, "rope")) {
        if (auto rope = read_rope(context, record)) {
            ropes.push_back(*std::move(rope));
        }
    }
    return ropes;
}

void TableReader::read_rules(const Node::Array& records) {
    TableContext context = this->context();
    for (const Node& record : records) {
        if (auto rule = read_rule(context, record)) {
            keep(catalogue_.rules_, own_rules_, *std::move(rule), &Rule::id, record);
        }
    }
}

} // namespace libsplice
