// Reads the words of the trade from their records.
#include "libsplice/catalogue/reading/read_aliases.h"

#include "libsplice/base/text.h"

#include <algorithm>
#include <array>
#include <utility>

namespace libsplice {

namespace {

std::optional<AliasOf> read_of(TableContext& context, const Node& table) {
    const std::string text = require_text(context, table, "of");
    const auto names = alias_of_names();
    const auto found = std::ranges::find(names, text);
    if (found != names.end()) {
        return static_cast<AliasOf>(found - names.begin());
    }
    if (!text.empty()) {
        push_fault(context, Code::table_value_wrong, *table.find("of"), "of",
                   '"' + text + "\" is none of " + listed(names));
    }
    return std::nullopt;
}

/// Names of constructions and fibres are known here; those of kinds and fields are for the book.
bool is_name(AliasOf of, std::string_view name) {
    return (of != AliasOf::construction || read_construction(name)) &&
           (of != AliasOf::fibre || read_fibre(name));
}

void check_names(TableContext& context, const Node& table, std::string_view key,
                 std::optional<AliasOf> of, const std::vector<std::string>& names) {
    for (const std::string& name : names) {
        if (of && !name.empty() && !is_name(*of, name)) {
            push_fault(context, Code::table_value_wrong, *table.find(key), std::string(key),
                       '"' + name + "\" is no " +
                           std::string(alias_of_names()[static_cast<std::size_t>(*of)]));
        }
    }
}

std::vector<std::string> read_phrases(TableContext& context, const Node& table,
                                      std::string_view key) {
    if (table.find(key) == nullptr) {
        push_fault(context, Code::table_key_missing, table, std::string(key),
                   '"' + std::string(key) + "\" is missing; give it");
    }
    return optional_texts(context, table, key);
}

Constructions read_constructions(TableContext& context, const Node& table) {
    Constructions constructions;
    for (const std::string& text : optional_texts(context, table, "constructions")) {
        if (const auto construction = read_construction(text)) {
            constructions.add(*construction);
        } else {
            push_fault(context, Code::table_value_wrong, *table.find("constructions"),
                       "constructions", '"' + text + "\" is no construction");
        }
    }
    return constructions;
}

} // namespace

std::optional<Alias> read_alias(TableContext& context, const Node& table) {
    const std::size_t faults_before = context.faults.count();
    check_keys(context, table,
               std::array<std::string_view, 4>{"of", "name", "words", "constructions"});
    const auto of = read_of(context, table);
    Alias alias{of.value_or(AliasOf{}), require_text(context, table, "name"),
                read_phrases(context, table, "words"), read_constructions(context, table)};
    check_names(context, table, "name", of, {alias.name});
    return context.faults.count() == faults_before ? std::optional(std::move(alias)) : std::nullopt;
}

std::optional<UnclearWords> read_unclear(TableContext& context, const Node& table) {
    const std::size_t faults_before = context.faults.count();
    check_keys(context, table,
               std::array<std::string_view, 5>{"of", "words", "means", "hint", "constructions"});
    const auto of = read_of(context, table);
    UnclearWords unclear{of.value_or(AliasOf{}), read_phrases(context, table, "words"),
                         read_phrases(context, table, "means"),
                         optional_text(context, table, "hint"), read_constructions(context, table)};
    check_names(context, table, "means", of, unclear.means);
    if (unclear.means.size() == 1) {
        push_fault(context, Code::table_value_wrong, *table.find("means"), "means",
                   "words that mean one thing are an alias; name two things or more");
    }
    return context.faults.count() == faults_before ? std::optional(std::move(unclear))
                                                   : std::nullopt;
}

} // namespace libsplice
