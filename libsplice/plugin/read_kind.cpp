// Reads a kind's record: its fields, constructions and texts.
#include "libsplice/plugin/read_kind.h"

#include "libsplice/allowance/book.h"
#include "libsplice/base/text.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstddef>

namespace libsplice {

namespace {

/// Rows of the line and of the bench, which the host adds.
bool is_hosts_own(Item item) {
    constexpr std::array of_the_line{Item::finished_length, Item::fitting,     Item::pin_centre,
                                     Item::stretch,         Item::slack,       Item::first_stretch,
                                     Item::shrinkage,       Item::cutting_loss};
    return std::ranges::count(of_the_line, item) != 0 || lies_outside_tail(item);
}

Constructions read_constructions(const splice_plugin_kind& record, Checker& checker) {
    Constructions constructions;
    const auto words =
        checker.names(record.constructions, "the kind's constructions", Letters::any);
    for (const std::string_view word : words) {
        const auto construction = read_construction(word);
        if (construction) {
            constructions.add(*construction);
        } else if (checker.ok()) {
            checker.fail(Code::plug_in_declaration, "no construction is called " + in_quotes(word) +
                                                        did_you_mean(word, construction_names()));
        }
    }
    return constructions;
}

void check_limits(const FieldDeclaration& field, Checker& checker) {
    const std::string what = "the field " + in_quotes(field.name);
    if (field.dimension == Dimension::choice) {
        if (field.choices.empty()) {
            checker.fail(Code::plug_in_declaration, what + " is a choice without words");
        }
        return;
    }
    if (!std::isfinite(field.lowest) || !std::isfinite(field.highest)) {
        checker.fail(Code::plug_in_declaration, what + " has a bound that is not a number");
    } else if (field.lowest > field.highest) {
        checker.fail(Code::plug_in_declaration, what + " has its bounds upside-down");
    }
}

FieldDeclaration read_field(const splice_plugin_field& record, Checker& checker,
                            std::vector<std::string_view>& choices) {
    FieldDeclaration field;
    field.name = checker.name(record.name, "a field's name", Letters::underlined);
    field.meaning = checker.text(record.meaning, "a field's meaning");
    field.default_text = checker.text(record.default_text, "what holds by default for a field");
    if (record.also != nullptr) {
        field.also = checker.name(record.also, "a field's other name", Letters::underlined);
    }
    if (record.dimension < SPLICE_DIMENSION_LENGTH || record.dimension > SPLICE_DIMENSION_CHOICE) {
        checker.fail(Code::plug_in_declaration,
                     "the field " + in_quotes(field.name) + " has no known dimension");
        return field;
    }
    field.dimension = Dimension(record.dimension - SPLICE_DIMENSION_LENGTH);
    field.lowest = record.lowest;
    field.highest = record.highest;
    field.required = record.required != 0;
    choices = checker.names(record.choices, "a field's words", Letters::hyphenated);
    field.choices = choices;
    check_limits(field, checker);
    return field;
}

/// No two fields of a kind, and none of those that every end has, share a name.
void check_field_names(std::span<const FieldDeclaration> fields, Checker& checker) {
    std::vector<std::string_view> names;
    for (const auto& field : common_fields()) {
        names.push_back(field.name);
    }
    for (const auto& field : fields) {
        for (const std::string_view name : {field.name, field.also}) {
            if (!name.empty() && std::ranges::count(names, name) != 0) {
                checker.fail(Code::plug_in_declaration,
                             "the name of the field " + in_quotes(name) + " is taken");
            }
            names.push_back(name);
        }
    }
}

void read_fields(const splice_plugin_kind& record, Checker& checker, PluggedKind& into) {
    const auto records =
        checker.records(record.fields, record.field_count, offsetof(splice_plugin_field, also),
                        "fields", most_fields);
    into.choices.resize(records.size());
    for (std::size_t i = 0; i < records.size(); ++i) {
        into.fields.push_back(read_field(records[i], checker, into.choices[i]));
    }
    if (checker.ok()) {
        check_field_names(into.fields, checker);
    }
    into.declaration.fields = into.fields;
}

/// Interns the words of one list.
template <class Id, class Intern>
std::vector<Id> read_ids(std::span<const std::string_view> words, Checker& checker, Intern intern) {
    std::vector<Id> ids;
    for (const std::string_view word : words) {
        const std::optional<Id> id = intern(word);
        if (!id) {
            checker.fail(Code::plug_in_declaration, "there is no room for more names");
            return {};
        }
        ids.push_back(*id);
    }
    return ids;
}

/// The words that `{tail}` and `{@far throat}` may stand for.
struct NamesInTexts {
    std::vector<std::string_view> marks;
    std::vector<std::string_view> values;

    [[nodiscard]] bool has(std::string_view word) const {
        if (word.starts_with('@')) {
            return std::ranges::count(marks, word.substr(1)) != 0;
        }
        return std::ranges::any_of(values, [word](std::string_view value) {
            return value.starts_with(word) && (value == word || value.substr(word.size()) == "_m" ||
                                               value.substr(word.size()) == "_deg");
        });
    }
};

/// Every `{figure}` of a text is declared.
void check_figures(std::string_view text, const NamesInTexts& figures, Checker& checker) {
    for (auto open = text.find('{'); open != std::string_view::npos; open = text.find('{')) {
        const auto close = text.find('}', open);
        const std::string_view word = text.substr(open + 1, close - open - 1);
        if (close == std::string_view::npos || !figures.has(word)) {
            checker.fail(Code::plug_in_declaration,
                         "a step or caution names the figure " + in_quotes(word) +
                             ", which is not among the kind's values and marks");
            return;
        }
        text.remove_prefix(close + 1);
    }
}

NamesInTexts read_names(const splice_plugin_kind& record, Checker& checker, Names& names,
                        PluggedKind& into) {
    const auto items = checker.names(record.items, "the kind's items", Letters::any);
    NamesInTexts figures{checker.names(record.marks, "the kind's marks", Letters::any),
                         checker.names(record.values, "the kind's values", Letters::underlined)};
    if (!checker.ok()) {
        return figures;
    }
    into.items = read_ids<Item>(items, checker,
                                [&](std::string_view word) { return names.intern_item(word); });
    into.marks = read_ids<MarkName>(figures.marks, checker,
                                    [&](std::string_view word) { return names.intern_mark(word); });
    into.values = read_ids<ValueName>(
        figures.values, checker, [&](std::string_view word) { return names.intern_value(word); });
    const auto hosts_own = std::ranges::find_if(into.items, is_hosts_own);
    if (hosts_own != into.items.end()) {
        checker.fail(Code::plug_in_declaration,
                     "the item " + in_quotes(names.of(*hosts_own)) + " is the host's own to add");
    }
    return figures;
}

void read_cautions(const splice_plugin_kind& record, const NamesInTexts& figures, Checker& checker,
                   PluggedKind& into) {
    const auto records = checker.records(record.cautions, record.caution_count,
                                         sizeof(splice_plugin_caution), "cautions", 64);
    for (const auto& caution : records) {
        const auto text = checker.text(caution.text, "a caution");
        check_figures(text, figures, checker);
        if (caution.weight > SPLICE_WEIGHT_PERSON_ONLY) {
            checker.fail(Code::plug_in_declaration, "a caution has no known weight");
        }
        const std::size_t own = caution.citation - SPLICE_CITED_OWN;
        if (caution.citation < SPLICE_CITED_OWN || own >= into.citations.size()) {
            checker.fail(Code::plug_in_source, "a caution names no rule that it rests on");
        }
        if (checker.ok()) {
            into.cautions.push_back({text, into.citations[own], Caution::Weight(caution.weight)});
        }
    }
}

void read_ways(const splice_plugin_kind& record, const NamesInTexts& figures, Checker& checker,
               PluggedKind& into) {
    if (!checker.check_list(record.ways, record.way_count, 64, "lists of steps")) {
        checker.fail(Code::plug_in_declaration, "a kind has no list of steps");
        return;
    }
    for (std::uint32_t i = 0; i < record.way_count; ++i) {
        std::vector<Step>& steps = into.ways.emplace_back();
        for (const std::string_view text : checker.texts(record.ways[i], "the kind's steps")) {
            check_figures(text, figures, checker);
            steps.push_back({Action::plain, {}, text});
        }
    }
}

} // namespace

void read_kind(const splice_plugin_kind& record, Checker& checker, Names& names,
               PluggedKind& into) {
    auto& declaration = into.declaration;
    declaration.name = checker.name(record.name, "the kind's name", Letters::hyphenated);
    declaration.title = checker.text(record.title, "the kind's title");
    declaration.datum = checker.text(record.datum, "the kind's datum");
    if (record.reach > SPLICE_REACH_BOTH_ENDS || record.cut > SPLICE_CUT_NO_LOSS) {
        checker.fail(Code::plug_in_declaration, "the kind " + in_quotes(declaration.name) +
                                                    " has a reach or a cut that is not known");
        return;
    }
    constexpr std::array reaches{Reach::one_end, Reach::plain, Reach::both_ends};
    declaration.reach = reaches.at(record.reach);
    declaration.constructions = read_constructions(record, checker);
    into.cut = record.cut;
    read_fields(record, checker, into);
    const NamesInTexts figures = read_names(record, checker, names, into);
    read_cautions(record, figures, checker, into);
    if (checker.ok()) {
        read_ways(record, figures, checker, into);
    }
}

} // namespace libsplice
