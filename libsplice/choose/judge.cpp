// Holds a rope against one need after the other, in the order of the need columns.
#include "libsplice/choose/judge.h"

#include "libsplice/choose/verdict.h"
#include "libsplice/units/show.h"

#include <array>

namespace libsplice {

namespace {

std::string shown(Length length) {
    return show_length(length, UnitSystem::metric);
}

/// A diameter, to the hundredth of a millimetre.
std::string size_of(Length diameter) {
    return show_number(diameter.si() * 1000.0, 2) + " mm";
}

std::string shown(Force force) {
    return show_force(force, UnitSystem::metric);
}

std::string percent(double share) {
    return show_number(100.0 * share, 1) + " %";
}

/// Bare rope of a fibre that runs through what holds it; a cover hides the fibre.
bool is_bare(const Rope& rope) {
    return rope.construction == Construction::three_strand ||
           rope.construction == Construction::eight_plait ||
           rope.construction == Construction::twelve_strand;
}

/// The fibre on its outside; nothing for a cover of which only the core is known.
std::optional<Fibre> outer_fibre(const Rope& rope) {
    const bool covered = rope.construction == Construction::core_dependent ||
                         rope.construction == Construction::parallel_core;
    return covered && rope.fibre != Fibre::polyester ? std::nullopt : std::optional(rope.fibre);
}

} // namespace

template <class Text>
Judge::Failure Judge::fail(Column column, Text text) const {
    return {column, worded_ ? text() : std::string()};
}

Judge::Finding Judge::person() const {
    if (!needs_.carries_person) {
        return std::nullopt;
    }
    if (!candidate_.strength_is_its_own) {
        return fail(Column::carries_person, [&] {
            return std::string(
                "it carries a person, and no strength of the reel itself is known: the "
                "strength that any rope of its sort has at least never counts for a "
                "person, and no rule that was read says what such a line must hold; "
                "rope_breaking gives that of the reel");
        });
    }
    return std::nullopt;
}

Judge::Finding Judge::strength(std::optional<double> retained) const {
    if (!needs_.load) {
        return std::nullopt;
    }
    if (!rope_.breaking) {
        return fail(Column::load, [&] {
            return std::string("its breaking strength is not known: rope_breaking, or "
                               "breaking in a rope list, gives it");
        });
    }
    if (!candidate_.working_share) {
        return fail(Column::load, [&] {
            return std::string("no source that was read says how much of its strength such "
                               "rope may be loaded to");
        });
    }
    const Force holds = rope_.breaking->value * retained.value_or(1.0);
    const double share = candidate_.working_share->value;
    const Force wanted = *needs_.load / share;
    if (wanted > holds) {
        return fail(Column::load, [&] {
            return "it holds " + shown(holds) + "; the load of " + shown(*needs_.load) + " at " +
                   percent(share) + " of what it holds needs " + shown(wanted) + ", " +
                   shown(wanted - holds) + " more";
        });
    }
    return std::nullopt;
}

Judge::Finding Judge::give(std::optional<Length> length, double slack) const {
    if (!needs_.most_give || !needs_.load) {
        return std::nullopt;
    }
    if (!candidate_.stretch) {
        return fail(Column::most_give, [&] {
            return std::string("its stretch is not known: rope_stretch, or stretch in "
                               "a rope list, gives it");
        });
    }
    if (!length) {
        return std::nullopt;
    }
    const auto give = give_of(candidate_, needs_, *length);
    if (!give) {
        return fail(Column::most_give, [&] {
            return std::string("its stretch at this load is beyond what is published");
        });
    }
    if (*give > *needs_.most_give * slack) {
        return fail(Column::most_give, [&] {
            return "it gives " + shown(*give) + " from set to load, " +
                   shown(*give - *needs_.most_give) + " more than it may";
        });
    }
    return std::nullopt;
}

Judge::Finding Judge::standing() const {
    const auto& steady = tables_.of(rope_.fibre).steady_share;
    if (needs_.standing != Standing::season || !needs_.load || !rope_.breaking || !steady ||
        *needs_.load <= rope_.breaking->value * steady->value) {
        return std::nullopt;
    }
    return fail(Column::standing, [&] {
        return "the load stays for the season at " + percent(*needs_.load / rope_.breaking->value) +
               " of its strength, and over " + percent(steady->value) + " its fibre creeps";
    });
}

Judge::Finding Judge::holders() const {
    if (!is_bare(rope_) || !tables_.of(rope_.fibre).slippery) {
        return std::nullopt;
    }
    for (const Holder holder : needs_.held_by) {
        if (tables_.lets_slip(holder)) {
            return fail(Column::held_by, [&] {
                return "bare it runs through a " +
                       std::string(holder_words.at(static_cast<std::size_t>(holder))) +
                       ": it needs a cover where it is held";
            });
        }
    }
    return std::nullopt;
}

Judge::Finding Judge::range() const {
    const auto& range = needs_.held_range;
    const Length size = rope_.counting_diameter();
    if (!range || (size >= range->from && size <= range->up_to)) {
        return std::nullopt;
    }
    const bool thin = size < range->from;
    return fail(Column::held_range, [&] {
        return "at " + size_of(size) + " it is " +
               size_of(thin ? range->from - size : size - range->up_to) +
               (thin ? " too thin" : " too thick") + " for what holds it";
    });
}

std::optional<Length> Judge::least_sheave() const {
    if (rope_.construction == Construction::wire) {
        return candidate_.advised_sheave ? std::optional(candidate_.advised_sheave->value)
                                         : std::nullopt;
    }
    const auto& least = tables_.least_sheave();
    return least ? std::optional(rope_.counting_diameter() * least->value) : std::nullopt;
}

Judge::Finding Judge::sheave() const {
    const auto least = least_sheave();
    if (!needs_.sheave || !least || *needs_.sheave >= *least) {
        return std::nullopt;
    }
    return fail(Column::sheave, [&] {
        return "its sheave of " + shown(*needs_.sheave) + " is " + shown(*least - *needs_.sheave) +
               " smaller than the least of " + shown(*least);
    });
}

Judge::Finding Judge::hole() const {
    const Length size = rope_.counting_diameter();
    if (!needs_.smallest_hole || *needs_.smallest_hole > size) {
        return std::nullopt;
    }
    return fail(Column::smallest_hole, [&] {
        return "at " + size_of(size) + " it does not pass a hole of " +
               size_of(*needs_.smallest_hole);
    });
}

Judge::Finding Judge::hand() const {
    if (!needs_.hand) {
        return std::nullopt;
    }
    const auto& least = tables_.least_for(*needs_.hand);
    const Length size = rope_.counting_diameter();
    if (!least || size >= least->value) {
        return std::nullopt;
    }
    return fail(Column::hand, [&] {
        return "at " + size_of(size) + " it is " + size_of(least->value - size) +
               " too thin for the hand";
    });
}

Judge::Finding Judge::heat() const {
    if (!needs_.runs) {
        return std::nullopt;
    }
    const auto& least = tables_.least_melting(*needs_.runs);
    const auto outside = outer_fibre(rope_);
    if (!least || !outside) {
        return std::nullopt;
    }
    const auto& melts = tables_.of(*outside).melts;
    if (!melts || melts->value >= least->value) {
        return std::nullopt;
    }
    return fail(Column::runs, [&] {
        return "its outside melts at " + show_number(melts->value, 0) +
               " degrees, and a line that runs hot needs " + show_number(least->value, 0);
    });
}

Judge::Finding Judge::floats() const {
    if (!needs_.floats) {
        return std::nullopt;
    }
    const auto outside = outer_fibre(rope_);
    const auto& gravity = tables_.of(rope_.fibre).gravity;
    if (!outside || !gravity) {
        return fail(Column::floats, [&] { return std::string("whether it floats is not known"); });
    }
    if (gravity->value >= 1.0) {
        return fail(Column::floats, [&] {
            return "its fibre is " + show_number(gravity->value, 2) + " times as heavy as water";
        });
    }
    return std::nullopt;
}

Judge::Finding Judge::price() const {
    if (!needs_.price_limit) {
        return std::nullopt;
    }
    const auto price = candidate_.price();
    if (!price) {
        return fail(Column::price_limit, [&] { return std::string("its price is not known"); });
    }
    if (*price > *needs_.price_limit) {
        return fail(Column::price_limit, [&] {
            return "a metre costs " + show_number(*price, 2) + ", " +
                   show_number(*price - *needs_.price_limit, 2) + " more than it may";
        });
    }
    return std::nullopt;
}

Judge::Finding Judge::first(std::optional<double> retained, std::optional<Length> length,
                            double slack) const {
    if (auto found = person()) {
        return found;
    }
    if (auto found = strength(retained)) {
        return found;
    }
    if (auto found = give(length, slack)) {
        return found;
    }
    using Look = Finding (Judge::*)() const;
    constexpr std::array<Look, 9> others{&Judge::standing, &Judge::holders, &Judge::range,
                                         &Judge::sheave,   &Judge::hole,    &Judge::hand,
                                         &Judge::heat,     &Judge::floats,  &Judge::price};
    for (const Look look : others) {
        if (auto found = (this->*look)()) {
            return found;
        }
    }
    return std::nullopt;
}

} // namespace libsplice
