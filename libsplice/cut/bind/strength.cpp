// Finds where a line is weakest, and refuses a load that it does not hold.
#include "libsplice/cut/bind/strength.h"

#include "libsplice/allowance/parts/laid_back_part.h"
#include "libsplice/cut/layout.h"
#include "libsplice/units/show.h"

#include <algorithm>

namespace libsplice {

namespace {

std::string at_end(LineEnd end) {
    return " at end " + std::string(end == LineEnd::a ? "a" : "b");
}

/// Takes what is retained at one place, if that is the least so far.
void take(Strength& strength, Retained retained, WeakPlace place, std::optional<LineEnd> end) {
    if (!strength.retained || retained.share < strength.retained->share) {
        strength.retained = retained;
        strength.place = place;
        strength.weaker = end;
    }
}

bool bends_over_something(const End& made) {
    return (made.eye && made.eye->bent_round > Length()) ||
           (made.turns && made.turns->bend_ratio.has_value());
}

void count_end(LineEnd end, const BoundEnd& bound, Strength& strength) {
    const End& made = *bound.allowance;
    if (made.retained) {
        take(strength, *made.retained, WeakPlace::end, end);
    } else if (made.made) {
        strength.not_counted.push_back("the " + std::string(bound.kind->declaration.name) +
                                       at_end(end));
    }
    if (made.bend_retained) {
        take(strength, *made.bend_retained, WeakPlace::pin, end);
    } else if (bends_over_something(made)) {
        strength.not_counted.push_back("the bend over the pin" + at_end(end));
    }
    if (!bound.fitting.empty()) {
        strength.not_counted.push_back("the " + bound.fitting + at_end(end));
    }
}

void count_sheaves(const StrengthOf& of, Strength& strength) {
    if (!of.route || !of.route->least_sheave) {
        return;
    }
    const double ratio = *of.route->least_sheave / of.rope.counting_diameter();
    if (const auto retained = retained_over(of.rules, ratio)) {
        take(strength, *retained, WeakPlace::sheave, {});
    } else {
        strength.not_counted.emplace_back("the bends over its sheaves");
    }
}

/// The smallest rope of the tables, of the same sort, that breaks at so much.
const Rope* find_holding(const StrengthOf& of, Force breaking) {
    const Rope* found = nullptr;
    for (const Rope& rope : of.book.catalogue().ropes()) {
        if (rope.construction == of.rope.construction && rope.fibre == of.rope.fibre &&
            rope.breaking && rope.breaking->value >= breaking &&
            (found == nullptr || rope.diameter < found->diameter)) {
            found = &rope;
        }
    }
    return found;
}

void refuse_overload(const StrengthOf& of, const Strength& strength, Force holds,
                     CellReader& cells) {
    const auto shown = [](Force force) {
        return show_force(force, UnitSystem::metric);
    };
    const Force needed = *strength.load * (of.rope.breaking->value / holds);
    const Rope* rope = find_holding(of, needed);
    std::string text = "the line holds at most " + shown(holds) + " and the load is " +
                       shown(*strength.load) + ": it would break. ";
    if (strength.retained) {
        text += "Its rope breaks at " + shown(of.rope.breaking->value) + ", of which it keeps " +
                show_number(strength.retained->share * 100.0, 0) + " %. ";
    }
    text += "With these ends a rope that breaks at " + shown(needed) + " or more would hold";
    text += rope == nullptr ? "" : ", such as " + rope->id;
    if (of.rope.generic_breaking) {
        text +=
            ". This strength is the least of any such rope; if the reel gives more, write it as "
            "rope_breaking";
    }
    cells.add(LineFault{Fault{Code::overloaded, std::move(text)}, Column::load});
}

void compare(const StrengthOf& of, Strength& strength, CellReader& cells) {
    const Force holds =
        of.rope.breaking->value * (strength.retained ? strength.retained->share : 1.0);
    strength.design_factor = holds / *strength.load;
    strength.share = *strength.load / holds;
    if (*strength.design_factor < 1.0) {
        refuse_overload(of, strength, holds, cells);
    }
}

} // namespace

Strength bind_strength(const StrengthOf& of, CellReader& cells) {
    Strength strength;
    if (of.load) {
        strength.load = of.load->force;
        strength.load_working = of.load->working;
    }
    for (const LineEnd end : both_ends) {
        if (of.ends.counts(end)) {
            count_end(end, of.ends.at(end), strength);
        }
    }
    count_sheaves(of, strength);
    if (const Figure* share = of.rules.find(FigureId::working_share)) {
        strength.working_share = {share->number(), share->source};
    }
    const bool known = of.rope.breaking && !(of.carries_person && of.rope.generic_breaking);
    if (strength.load && known && *strength.load > Force()) {
        compare(of, strength, cells);
    }
    return strength;
}

} // namespace libsplice
