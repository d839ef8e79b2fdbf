// A rule from its record.
#include "libsplice/catalogue/reading/read_rule.h"

#include "libsplice/base/text.h"
#include "libsplice/catalogue/reading/read_figure.h"
#include "libsplice/catalogue/reading/read_stretch.h"
#include "libsplice/units/read.h"

#include <algorithm>
#include <array>
#include <utility>

namespace libsplice {

namespace {

constexpr std::array<std::string_view, 14> plain_keys{
    "id",   "name",  "kinds", "default", "constructions", "fibres", "ropes",
    "from", "up_to", "note",  "source",  "locator",       "status", "caution"};

/// The words of a list, each of which `read` must know.
template <class Word, class Read>
WordSet<Word> read_words(TableContext& context, const Node& table, std::string_view key, Read read,
                         std::span<const std::string_view> known) {
    WordSet<Word> words;
    for (const auto& text : optional_texts(context, table, key)) {
        if (const auto word = read(text)) {
            words.add(*word);
        } else {
            push_fault(context, Code::table_value_wrong, *table.find(key), std::string(key),
                       '"' + text + "\" is none of " + listed(known) + did_you_mean(text, known));
        }
    }
    return words;
}

/// A text that begins as a description must be one; any other is a rope's id.
std::vector<NamedRope> read_ropes(TableContext& context, const Node& table) {
    std::vector<NamedRope> ropes;
    for (auto& text : optional_texts(context, table, "ropes")) {
        std::optional<RopeDescription> sort;
        if (describes_rope(text)) {
            const auto described = read_rope_description(text, context.aliases);
            if (!described) {
                push_fault(context, Code::table_value_wrong, *table.find("ropes"), "ropes",
                           described.error().text);
                continue;
            }
            sort = *described;
        }
        ropes.push_back({std::move(text), sort});
    }
    return ropes;
}

/// `{ text = "...", weight = "refused" }`, with a citation of its own or the record's.
std::optional<RuleCaution> read_caution(TableContext& context, const Node& table) {
    const Node* const node = table.find("caution");
    if (node == nullptr) {
        return std::nullopt;
    }
    constexpr std::array<std::string_view, 5> keys{"text", "weight", "source", "locator", "status"};
    check_keys(context, *node, keys);
    RuleCaution caution;
    caution.text = require_text(context, *node, "text");
    const std::string weight = optional_text(context, *node, "weight");
    const auto source = read_citation(context, *node, read_record_citation(context, table));
    const auto read = read_caution_weight(weight.empty() ? "advice" : std::string_view(weight));
    if (!read) {
        push_fault(context, Code::table_value_wrong, *node->find("weight"), "weight",
                   '"' + weight + "\" is none of " + listed(caution_weights()) +
                       did_you_mean(weight, caution_weights()));
    }
    if (!read || !source || caution.text.empty()) {
        return std::nullopt;
    }
    caution.weight = *read;
    caution.source = *source;
    return caution;
}

void read_figures(TableContext& context, const Node& table, Rule& rule) {
    const auto inherited = read_record_citation(context, table);
    for (const auto& [key, value] : *table.table()) {
        if (std::ranges::find(plain_keys, key) != plain_keys.end()) {
            continue;
        }
        const auto id = read_figure_name(key);
        if (!id) {
            push_fault(context, Code::table_value_wrong, value, key,
                       '"' + key + "\" is neither a key of a rule nor a figure" +
                           did_you_mean(key, figure_names));
            continue;
        }
        if (*id == FigureId::stretch) {
            rule.stretch = read_stretch(context, value, inherited);
        } else if (const auto figure = read_figure(context, *id, value, inherited)) {
            rule.figures.emplace_back(*id, *figure);
        }
    }
}

} // namespace

std::optional<PrintedSize> read_printed_size(TableContext& context, const Node& table,
                                             std::string_view key) {
    std::string text = optional_text(context, table, key);
    if (text.empty()) {
        return std::nullopt;
    }
    const auto size = read_length(text);
    if (!size || size->length <= Length()) {
        push_fault(context, Code::table_value_wrong, *table.find(key), std::string(key),
                   '"' + text + "\" is no size of rope; write it like \"6 mm\" or \"1/2 in\"");
        return std::nullopt;
    }
    return PrintedSize{size->length, std::move(text)};
}

std::optional<Rule> read_rule(TableContext& context, const Node& table) {
    const std::size_t faults_before = context.faults.count();
    Rule rule;
    rule.id = require_text(context, table, "id");
    rule.name = require_text(context, table, "name");
    rule.kinds = optional_texts(context, table, "kinds");
    rule.is_default = optional_flag(context, table, "default");
    rule.constructions = read_words<Construction>(context, table, "constructions",
                                                  read_construction, construction_names());
    rule.fibres = read_words<Fibre>(context, table, "fibres", read_fibre, fibre_names());
    rule.ropes = read_ropes(context, table);
    rule.from = read_printed_size(context, table, "from");
    rule.up_to = read_printed_size(context, table, "up_to");
    static_cast<void>(optional_text(context, table, "note"));
    if (rule.from && rule.up_to && rule.from->length > rule.up_to->length) {
        push_fault(context, Code::table_value_wrong, *table.find("from"), "from",
                   "\"from\" must not be larger than \"up_to\"");
    }
    rule.caution = read_caution(context, table);
    read_figures(context, table, rule);
    if (context.faults.count() != faults_before) {
        return std::nullopt;
    }
    if (rule.figures.empty() && !rule.stretch && !rule.caution) {
        push_fault(
            context, Code::table_key_missing, table, {},
            "this rule holds neither a figure nor a caution; give one, or take the record out");
        return std::nullopt;
    }
    return rule;
}

} // namespace libsplice
