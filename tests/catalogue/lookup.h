// A figure of the shipped tables as one end on one rope gets it.
#pragma once

#include "libsplice/allowance/built_in_kinds.h"

#include "folder.h"

#include <algorithm>

namespace libsplice::testing {

/// Those of the kind; of every kind where `kind` is empty.
inline std::vector<const Rule*> rules_of(const std::string& kind) {
    const Kinds kinds = built_in_kinds();
    const auto known = std::ranges::find(
        kinds, kind, [](const Kind& one) { return std::string(one.declaration.name); });
    const auto names_it = [&](const std::string& word) {
        return known == kinds.end() ? word == kind : known->declaration.is_named_by(word);
    };
    std::vector<const Rule*> rules;
    for (const Rule& rule : shipped().rules()) {
        if (kind.empty() ? rule.kinds.empty() : std::ranges::any_of(rule.kinds, names_it)) {
            rules.push_back(&rule);
        }
    }
    return rules;
}

/// The figure for an end of `kind` on the rope described, by the named rule or by default.
inline Figure figure(const std::string& kind, const std::string& description, FigureId id,
                     const std::string& name = {}) {
    const auto rope = shipped().rope(description);
    if (!rope) {
        ADD_FAILURE() << rope.error().text;
        return {};
    }
    const auto of_kind = rules_of(kind);
    const auto of_any = rules_of({});
    const auto chosen = std::ranges::find_if(
        of_kind, [&](const Rule* rule) { return rule->name == name && rule->applies_to(*rope); });
    EXPECT_EQ(chosen != of_kind.end(), !name.empty()) << kind << ' ' << name;
    const Rules rules(*rope, of_kind, of_any, chosen == of_kind.end() ? nullptr : *chosen);
    const auto found = rules.need(id);
    if (!found) {
        ADD_FAILURE() << kind << ' ' << description << ": " << found.error().text;
        return {};
    }
    return *found;
}

inline double value(const std::string& kind, const std::string& description, FigureId id,
                    const std::string& name = {}) {
    return figure(kind, description, id, name).value;
}

/// Standard deviation of a figure given as the limits `low` and `high`: half the width over the
/// root of 3.
inline double spread_between(double low, double high) {
    return (high - low) / 2.0 / 1.7320508075688772;
}

/// The nominal diameter of the rope described.
inline Length shipped_diameter(const std::string& description) {
    const auto rope = shipped().rope(description);
    return rope ? rope->diameter : Length();
}

/// What is said where the figure is missing.
inline Fault shipped_fault(const std::string& kind, const std::string& description, FigureId id) {
    const auto rope = shipped().rope(description);
    const auto of_kind = rules_of(kind);
    const auto found = Rules(*rope, of_kind, {}, nullptr).need(id);
    EXPECT_FALSE(found.has_value());
    return found ? Fault{} : found.error();
}

/// Whether no source gives the figure.
inline bool is_absent(const std::string& kind, const std::string& description, FigureId id) {
    const auto rope = shipped().rope(description);
    const auto of_kind = rules_of(kind);
    const auto of_any = rules_of({});
    return rope && Rules(*rope, of_kind, of_any, nullptr).find(id) == nullptr;
}

} // namespace libsplice::testing
