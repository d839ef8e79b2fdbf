// The book: resolves names to kinds and rules, and has ends worked out.
#include "libsplice/allowance/book.h"

#include "libsplice/allowance/built_in_kinds.h"
#include "libsplice/allowance/fields.h"
#include "libsplice/allowance/parts/covered_part.h"
#include "libsplice/base/text.h"

#include <algorithm>

namespace libsplice {

namespace {

constexpr std::array<std::string_view, 2> measured_choices{"bearing", "pin-centre"};

constexpr std::array<std::string_view, 2> made_choices{"bench", "aboard"};
constexpr std::array<std::string_view, 2> no_or_yes{"no", "yes"};

constexpr std::array<FieldDeclaration, 6> fields_of_every_end{
    FieldDeclaration{"rule", "a named rule of the tables to follow in place of the default",
                     Dimension::choice, 0.0, 0.0, "the kind's default for this rope"},
    FieldDeclaration{"fitting", "name of the fitting that makes up part of the length",
                     Dimension::choice, 0.0, 0.0, "none"},
    FieldDeclaration{"fitting_length",
                     "from the rope's bearing point to the fitting's working point",
                     Dimension::length, 0.0, 5.0, "none; needed where a fitting is named"},
    FieldDeclaration{"measured", "what the finished length runs to at this end", Dimension::choice,
                     0.0, 0.0, "bearing", false, measured_choices},
    FieldDeclaration{"made", "where this end is made", Dimension::choice, 0.0, 0.0, "bench", false,
                     made_choices},
    FieldDeclaration{"captive",
                     "whether the fitting is closed and sits in the eye before it is drawn up",
                     Dimension::choice, 0.0, 0.0, "no", false, no_or_yes},
};

std::vector<std::string_view> all_field_names(std::span<const Kind> kinds) {
    std::vector<std::string_view> names;
    const auto add = [&](std::string_view name) {
        if (std::ranges::find(names, name) == names.end()) {
            names.push_back(name);
        }
    };
    for (const auto& field : common_fields()) {
        add(field.name);
    }
    for (const Kind& kind : kinds) {
        for (const auto& field : kind.declaration.fields) {
            add(field.name);
            if (!field.also.empty()) {
                add(field.also);
            }
        }
    }
    return names;
}

/// The last word of a kind's name, which says what sort it is: an eye, a loop, a hitch.
std::string_view sort_of(std::string_view name) {
    return name.substr(name.rfind('-') + 1);
}

/// Up to three kinds that can be made in the rope, those of the same sort first.
std::vector<std::string_view> others_in(const Rope& rope, const KindDeclaration& kind,
                                        std::span<const Kind> kinds) {
    constexpr std::size_t most_named = 3;
    std::vector<std::string_view> possible;
    for (const bool same_sort : {true, false}) {
        for (const Kind& other : kinds) {
            const KindDeclaration& declaration = other.declaration;
            if (possible.size() < most_named && declaration.reach == kind.reach &&
                declaration.constructions.allows(rope.construction) &&
                (sort_of(declaration.name) == sort_of(kind.name)) == same_sort) {
                possible.push_back(declaration.name);
            }
        }
    }
    return possible;
}

Fault wrong_construction(const KindDeclaration& kind, const Rope& rope,
                         std::span<const Kind> kinds) {
    const auto possible = others_in(rope, kind, kinds);
    return Fault{Code::wrong_construction,
                 std::string(kind.name) + " cannot be made in " +
                     std::string(name_of(rope.construction)) + "; what can be, among others: " +
                     (possible.empty() ? "whipped or bare only" : listed(possible))};
}

std::size_t field_of_core(const KindDeclaration& kind) {
    const auto found = find_field(kind.fields, FieldRole::core);
    Expects(found.has_value());
    return *found;
}

Fault refusal(const Kind& kind, const Request& request, const RuleCaution& caution) {
    Fault fault{Code::wrong_construction,
                std::string(kind.declaration.name) + " is not for this rope: " + caution.text};
    fault.rule = to_text(request.citations.at(caution.source));
    return fault;
}

Caution::Weight weight_of(RuleCaution::Weight weight) {
    switch (weight) {
    case RuleCaution::Weight::refused_for_person:
        return Caution::Weight::refused_for_person;
    case RuleCaution::Weight::person_only:
        return Caution::Weight::person_only;
    case RuleCaution::Weight::advice:
    case RuleCaution::Weight::refused: // no end is made, and nothing said of it
        break;
    }
    return Caution::Weight::advice;
}

/// The end as its kind works it out, and after its own cautions those of the tables that apply to
/// this rope. Code::wrong_construction where a source forbids the kind in the rope: the fault gives
/// the caution's words and names the source.
Result<End> work_out_with_cautions(const Kind& kind, const Request& request) {
    const auto cautions = request.rules.cautions();
    const auto refused =
        std::ranges::find(cautions, RuleCaution::Weight::refused, &RuleCaution::weight);
    if (refused != cautions.end()) {
        return Unexpected(refusal(kind, request, **refused));
    }
    auto end = kind.work_out(request);
    if (!end) {
        return end;
    }
    for (const RuleCaution* caution : cautions) {
        end->add(Caution{caution->text, caution->source, weight_of(caution->weight)});
    }
    return end;
}

Result<End> finished(Result<End> end) {
    if (end) {
        end->finish();
    }
    return end;
}

std::string_view chosen_rule(std::span<const FieldText> fields) {
    const auto found = std::ranges::find(fields, std::string_view("rule"), &FieldText::name);
    return found == fields.end() ? std::string_view() : found->text;
}

} // namespace

std::span<const FieldDeclaration> common_fields() {
    return fields_of_every_end;
}

Result<Book> Book::open(Catalogue catalogue, PluggedIn plugged_in) {
    Book book;
    book.catalogue_ = std::move(catalogue);
    book.kinds_ = built_in_kinds();
    for (Kind& kind : plugged_in.kinds) {
        if (book.find_kind(kind.declaration.name) != nullptr) {
            return Unexpected(
                Fault{Code::duplicate_record,
                      "the kind \"" + std::string(kind.declaration.name) + "\" exists already"});
        }
        book.kinds_.push_back(std::move(kind));
    }
    book.names_ = std::move(plugged_in.names);
    book.plug_ins_ = std::move(plugged_in.plug_ins);
    book.field_names_ = all_field_names(book.kinds_);
    if (auto fault = book.index_rules()) {
        return Unexpected(*std::move(fault));
    }
    return book;
}

std::optional<Fault> Book::index_rules() {
    rules_by_kind_.resize(kinds_.size());
    for (const Rule& rule : catalogue_.rules()) {
        if (rule.kinds.empty()) {
            rules_of_any_.push_back(&rule);
        }
        for (const std::string& name : rule.kinds) {
            if (name == kind_of_person_rules) {
                continue;
            }
            if (add_to_named(name, rule)) {
                continue;
            }
            auto found = kind(name);
            if (!found) {
                Fault fault = std::move(found).error();
                fault.text = "the rule \"" + rule.id + "\" of the tables: " + fault.text;
                return fault;
            }
            rules_by_kind_[static_cast<std::size_t>(*found - kinds_.data())].push_back(&rule);
        }
    }
    return std::nullopt;
}

bool Book::add_to_named(std::string_view name, const Rule& rule) {
    bool found = false;
    for (std::size_t i = 0; i < kinds_.size(); ++i) {
        if (kinds_[i].declaration.is_named_by(name)) {
            rules_by_kind_[i].push_back(&rule);
            found = true;
        }
    }
    return found;
}

const Kind* Book::find_kind(std::string_view name) const {
    const auto found = std::ranges::find_if(
        kinds_, [&](const Kind& kind) { return kind.declaration.name == name; });
    return found == kinds_.end() ? nullptr : &*found;
}

Result<const Kind*> Book::kind(std::string_view name,
                               std::optional<Construction> construction) const {
    if (const Kind* own = find_kind(name)) {
        return own;
    }
    const std::string phrase = plain_words(name);
    const auto in_other_letters = std::ranges::find_if(
        kinds_, [&](const Kind& kind) { return plain_words(kind.declaration.name) == phrase; });
    if (in_other_letters != kinds_.end()) {
        return &*in_other_letters;
    }
    const auto meaning = catalogue_.aliases().find(AliasOf::kind, phrase, construction);
    if (meaning && meaning->unclear != nullptr) {
        return Unexpected(Fault{Code::unknown_kind, unclear_text(name, *meaning->unclear)});
    }
    if (const Kind* meant = meaning ? find_kind(meaning->name) : nullptr) {
        return meant;
    }
    std::vector<std::string_view> names;
    for (const Kind& kind : kinds_) {
        names.push_back(kind.declaration.name);
    }
    return Unexpected(
        Fault{Code::unknown_kind,
              "no kind of end is called \"" + std::string(name) + "\"" + did_you_mean(name, names) +
                  (nearest(name, names) ? "" : "; splice list kinds shows them all")});
}

std::span<const Rule* const> Book::rules_of(const Kind& kind) const {
    return rules_by_kind_[static_cast<std::size_t>(&kind - kinds_.data())];
}

Result<Rules> Book::rules(const Kind& kind, const Rope& rope, std::string_view chosen) const {
    const auto of_kind = rules_of(kind);
    if (chosen.empty()) {
        return Rules(rope, of_kind, rules_of_any_, nullptr);
    }
    std::vector<std::string_view> names;
    for (const Rule* rule : of_kind) {
        if (!rule->applies_to(rope) || rule->name.empty()) {
            continue;
        }
        if (rule->name == chosen) {
            return Rules(rope, of_kind, rules_of_any_, rule);
        }
        names.push_back(rule->name);
    }
    return Unexpected(Fault{Code::unknown_rule,
                            std::string(kind.declaration.name) + " has no rule \"" +
                                std::string(chosen) + "\" for this rope" +
                                (names.empty() ? "" : "; it has " + listed(names)),
                            {},
                            "rule"});
}

Rules Book::common_rules(const Rope& rope) const {
    return Rules(rope, {}, rules_of_any_, nullptr);
}

Result<End> Book::work_out(const Kind& kind, const Rope& rope,
                           std::span<const FieldText> fields) const {
    if (!kind.declaration.constructions.allows(rope.construction)) {
        return Unexpected(wrong_construction(kind.declaration, rope, kinds_));
    }
    auto bound = bind_fields(kind.declaration, rope.counting_diameter(), fields);
    if (!bound) {
        return Unexpected(bound.error());
    }
    const auto bearing_rules = rules(kind, rope, chosen_rule(fields));
    if (!bearing_rules) {
        return Unexpected(bearing_rules.error());
    }
    const Request request{rope, *bearing_rules, *bound, catalogue_.citations()};
    if (kind.declaration.counts_in_core) {
        const auto core = read_core(request, field_of_core(kind.declaration));
        if (!core) {
            return Unexpected(core.error());
        }
        bound = bind_fields(kind.declaration, core->diameter, fields);
        if (!bound) {
            return Unexpected(bound.error());
        }
    }
    return finished(work_out_with_cautions(kind, request));
}

Result<End> Book::work_out(const Kind& kind, const Rope& rope, const Rules& rules,
                           const Fields& fields) const {
    if (!kind.declaration.constructions.allows(rope.construction)) {
        return Unexpected(wrong_construction(kind.declaration, rope, kinds_));
    }
    if (auto fault = check_fields(kind.declaration, fields)) {
        return Unexpected(*std::move(fault));
    }
    return finished(work_out_with_cautions(kind, {rope, rules, fields, catalogue_.citations()}));
}

} // namespace libsplice
