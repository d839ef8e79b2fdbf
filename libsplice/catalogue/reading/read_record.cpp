// Keys, words and sources of one record, with a fault for whatever is wrong about them.
#include "libsplice/catalogue/reading/read_record.h"

#include "libsplice/base/text.h"

#include <algorithm>
#include <array>
#include <utility>

namespace libsplice {

namespace {

constexpr std::array<std::string_view, 3> cited_by{"source", "locator", "status"};

/// What a table may say of a number's worth; `job` and `geometry` are not for tables.
constexpr std::array table_statuses{Status::printed,  Status::derived,     Status::common_practice,
                                    Status::computed, Status::from_memory, Status::shop,
                                    Status::demo};

void push_missing(TableContext& context, const Node& table, std::string_view key) {
    push_fault(context, Code::table_key_missing, table, std::string(key),
               '"' + std::string(key) + "\" is missing; give it");
}

std::optional<Status> read_status(TableContext& context, const Node& table) {
    const std::string text = require_text(context, table, "status");
    if (text.empty()) {
        return std::nullopt;
    }
    std::array<std::string_view, table_statuses.size()> names;
    std::ranges::transform(table_statuses, names.begin(),
                           [](Status status) { return name_of(status); });
    const auto found = std::ranges::find(names, text);
    if (found == names.end()) {
        push_fault(context, Code::table_value_wrong, *table.find("status"), "status",
                   '"' + text + "\" is no status; it is one of " + listed(names) +
                       did_you_mean(text, names));
        return std::nullopt;
    }
    return table_statuses[static_cast<std::size_t>(found - names.begin())];
}

bool source_resolves(TableContext& context, const Node& table, const std::string& key) {
    if (std::ranges::find(context.sources, key, &Source::key) != context.sources.end()) {
        return true;
    }
    std::vector<std::string_view> keys;
    for (const auto& source : context.sources) {
        keys.push_back(source.key);
    }
    push_fault(context, Code::source_unknown, *table.find("source"), "source",
               "no source has the key \"" + key + "\"; add it to sources.toml" +
                   did_you_mean(key, keys));
    return false;
}

bool has_citation(const Node& table) {
    return std::ranges::any_of(cited_by,
                               [&](std::string_view key) { return table.find(key) != nullptr; });
}

} // namespace

void push_fault(TableContext& context, Code code, const Node& at, std::string field,
                std::string text) {
    context.faults.push(Fault{code, std::move(text), at.at(), std::move(field)});
}

void check_keys(TableContext& context, const Node& table, std::span<const std::string_view> known) {
    for (const auto& [key, value] : *table.table()) {
        if (std::ranges::find(known, key) == known.end()) {
            push_fault(context, Code::table_value_wrong, value, key,
                       "\"" + key + "\" is no key of this record" + did_you_mean(key, known));
        }
    }
}

std::string require_text(TableContext& context, const Node& table, std::string_view key) {
    if (table.find(key) == nullptr) {
        push_missing(context, table, key);
        return {};
    }
    return optional_text(context, table, key);
}

std::string optional_text(TableContext& context, const Node& table, std::string_view key) {
    const Node* node = table.find(key);
    if (node == nullptr) {
        return {};
    }
    std::string text(node->text() == nullptr ? std::string_view() : trimmed(*node->text()));
    if (text.empty()) {
        push_fault(context, Code::table_value_wrong, *node, std::string(key),
                   '"' + std::string(key) + "\" must be a text in quotes, not blank");
    }
    return text;
}

std::vector<std::string> optional_texts(TableContext& context, const Node& table,
                                        std::string_view key) {
    const Node* node = table.find(key);
    if (node == nullptr) {
        return {};
    }
    std::vector<std::string> texts;
    if (node->array() != nullptr) {
        for (const Node& part : *node->array()) {
            if (part.text() != nullptr && !trimmed(*part.text()).empty()) {
                texts.emplace_back(trimmed(*part.text()));
            }
        }
    }
    if (node->array() == nullptr || texts.empty() || texts.size() != node->array()->size()) {
        push_fault(context, Code::table_value_wrong, *node, std::string(key),
                   '"' + std::string(key) + "\" must be a list of texts, e.g. [\"a\", \"b\"]");
    }
    return texts;
}

bool optional_flag(TableContext& context, const Node& table, std::string_view key) {
    const Node* node = table.find(key);
    if (node == nullptr) {
        return false;
    }
    if (node->boolean() == nullptr) {
        push_fault(context, Code::table_value_wrong, *node, std::string(key),
                   '"' + std::string(key) + "\" must be true or false, without quotes");
        return false;
    }
    return *node->boolean();
}

std::optional<CitationId> read_record_citation(TableContext& context, const Node& record) {
    if (!has_citation(record)) {
        return std::nullopt;
    }
    return read_citation(context, record, std::nullopt).value_or(cited_derived);
}

std::optional<CitationId> read_citation(TableContext& context, const Node& table,
                                        std::optional<CitationId> inherited) {
    if (inherited && !has_citation(table)) {
        return inherited;
    }
    std::string key = require_text(context, table, "source");
    std::string locator = require_text(context, table, "locator");
    const auto status = read_status(context, table);
    if (key.empty() || !source_resolves(context, table, key) || locator.empty() || !status) {
        return std::nullopt;
    }
    return context.citations.intern(Citation{*status, std::move(key), std::move(locator)});
}

} // namespace libsplice
