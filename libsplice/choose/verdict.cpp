// Holds a rope against one need after the other, in the order of the need columns.
#include "libsplice/choose/verdict.h"

#include "libsplice/units/show.h"

#include <algorithm>
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

/// One rope against one set of needs.
class Judge {
  public:
    Judge(const Candidate& candidate, const Needs& needs, const ChoiceTables& tables)
        : candidate_(candidate), rope_(*candidate.rope), needs_(needs), tables_(tables) {}

    using Finding = std::optional<Failure>;

    [[nodiscard]] Finding person() const {
        if (!needs_.carries_person) {
            return std::nullopt;
        }
        if (!candidate_.strength_is_its_own) {
            return fail(Column::carries_person,
                        "it carries a person, and no strength of the reel itself is known: the "
                        "strength that any rope of its sort has at least never counts for a "
                        "person, and no rule that was read says what such a line must hold; "
                        "rope_breaking gives that of the reel");
        }
        return std::nullopt;
    }

    [[nodiscard]] Finding strength(std::optional<double> retained) const {
        if (!needs_.load) {
            return std::nullopt;
        }
        if (!rope_.breaking) {
            return fail(Column::load, "its breaking strength is not known: rope_breaking, or "
                                      "breaking in a rope list, gives it");
        }
        if (!candidate_.working_share) {
            return fail(Column::load, "no source that was read says how much of its strength such "
                                      "rope may be loaded to");
        }
        const Force holds = rope_.breaking->value * retained.value_or(1.0);
        const double share = candidate_.working_share->value;
        const Force wanted = *needs_.load / share;
        if (wanted > holds) {
            return fail(Column::load, "it holds " + shown(holds) + "; the load of " +
                                          shown(*needs_.load) + " at " + percent(share) +
                                          " of what it holds needs " + shown(wanted) + ", " +
                                          shown(wanted - holds) + " more");
        }
        return std::nullopt;
    }

    [[nodiscard]] Finding give(std::optional<Length> length, double slack) const {
        if (!needs_.most_give || !needs_.load) {
            return std::nullopt;
        }
        if (!candidate_.stretch) {
            return fail(Column::most_give, "its stretch is not known: rope_stretch, or stretch in "
                                           "a rope list, gives it");
        }
        if (!length) {
            return std::nullopt;
        }
        const auto give = give_of(candidate_, needs_, *length);
        if (!give) {
            return fail(Column::most_give, "its stretch at this load is beyond what is published");
        }
        if (*give > *needs_.most_give * slack) {
            return fail(Column::most_give, "it gives " + shown(*give) + " from set to load, " +
                                               shown(*give - *needs_.most_give) +
                                               " more than it may");
        }
        return std::nullopt;
    }

    [[nodiscard]] Finding standing() const {
        const auto& steady = tables_.of(rope_.fibre).steady_share;
        if (needs_.standing != Standing::season || !needs_.load || !rope_.breaking || !steady ||
            *needs_.load <= rope_.breaking->value * steady->value) {
            return std::nullopt;
        }
        return fail(Column::standing, "the load stays for the season at " +
                                          percent(*needs_.load / rope_.breaking->value) +
                                          " of its strength, and over " + percent(steady->value) +
                                          " its fibre creeps");
    }

    [[nodiscard]] Finding holders() const {
        if (!is_bare(rope_) || !tables_.of(rope_.fibre).slippery) {
            return std::nullopt;
        }
        for (const Holder holder : needs_.held_by) {
            if (tables_.lets_slip(holder)) {
                return fail(Column::held_by,
                            "bare it runs through a " +
                                std::string(holder_words.at(static_cast<std::size_t>(holder))) +
                                ": it needs a cover where it is held");
            }
        }
        return std::nullopt;
    }

    [[nodiscard]] Finding range() const {
        const auto& range = needs_.held_range;
        const Length size = rope_.counting_diameter();
        if (!range || (size >= range->from && size <= range->up_to)) {
            return std::nullopt;
        }
        const bool thin = size < range->from;
        return fail(Column::held_range,
                    "at " + size_of(size) + " it is " +
                        size_of(thin ? range->from - size : size - range->up_to) +
                        (thin ? " too thin" : " too thick") + " for what holds it");
    }

    /// The smallest sheave for the rope: what its own sort asks, of wire; else the least for rope.
    [[nodiscard]] std::optional<Length> least_sheave() const {
        if (rope_.construction == Construction::wire) {
            return candidate_.advised_sheave ? std::optional(candidate_.advised_sheave->value)
                                             : std::nullopt;
        }
        const auto& least = tables_.least_sheave();
        return least ? std::optional(rope_.counting_diameter() * least->value) : std::nullopt;
    }

    [[nodiscard]] Finding sheave() const {
        const auto least = least_sheave();
        if (!needs_.sheave || !least || *needs_.sheave >= *least) {
            return std::nullopt;
        }
        return fail(Column::sheave, "its sheave of " + shown(*needs_.sheave) + " is " +
                                        shown(*least - *needs_.sheave) +
                                        " smaller than the least of " + shown(*least));
    }

    [[nodiscard]] Finding hole() const {
        const Length size = rope_.counting_diameter();
        if (!needs_.smallest_hole || *needs_.smallest_hole > size) {
            return std::nullopt;
        }
        return fail(Column::smallest_hole, "at " + size_of(size) + " it does not pass a hole of " +
                                               size_of(*needs_.smallest_hole));
    }

    [[nodiscard]] Finding hand() const {
        if (!needs_.hand) {
            return std::nullopt;
        }
        const auto& least = tables_.least_for(*needs_.hand);
        const Length size = rope_.counting_diameter();
        if (!least || size >= least->value) {
            return std::nullopt;
        }
        return fail(Column::hand, "at " + size_of(size) + " it is " + size_of(least->value - size) +
                                      " too thin for the hand");
    }

    [[nodiscard]] Finding heat() const {
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
        return fail(Column::runs, "its outside melts at " + show_number(melts->value, 0) +
                                      " degrees, and a line that runs hot needs " +
                                      show_number(least->value, 0));
    }

    [[nodiscard]] Finding floats() const {
        if (!needs_.floats) {
            return std::nullopt;
        }
        const auto outside = outer_fibre(rope_);
        const auto& gravity = tables_.of(rope_.fibre).gravity;
        if (!outside || !gravity) {
            return fail(Column::floats, "whether it floats is not known");
        }
        if (gravity->value >= 1.0) {
            return fail(Column::floats, "its fibre is " + show_number(gravity->value, 2) +
                                            " times as heavy as water");
        }
        return std::nullopt;
    }

    [[nodiscard]] Finding price() const {
        if (!needs_.price_limit) {
            return std::nullopt;
        }
        if (!rope_.price) {
            return fail(Column::price_limit, "its price is not known");
        }
        if (rope_.price->value > *needs_.price_limit) {
            return fail(Column::price_limit,
                        "a metre costs " + show_number(rope_.price->value, 2) + ", " +
                            show_number(rope_.price->value - *needs_.price_limit, 2) +
                            " more than it may");
        }
        return std::nullopt;
    }

    /// The first finding of all.
    [[nodiscard]] Finding first(std::optional<double> retained, std::optional<Length> length,
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
        using Check = Finding (Judge::*)() const;
        constexpr std::array<Check, 9> others{&Judge::standing, &Judge::holders, &Judge::range,
                                              &Judge::sheave,   &Judge::hole,    &Judge::hand,
                                              &Judge::heat,     &Judge::floats,  &Judge::price};
        for (const Check check : others) {
            if (auto found = (this->*check)()) {
                return found;
            }
        }
        return std::nullopt;
    }

  private:
    static Failure fail(Column column, std::string text) {
        return {std::string(column_name(column)), std::move(text)};
    }

    const Candidate& candidate_;
    const Rope& rope_;
    const Needs& needs_;
    const ChoiceTables& tables_;
};

} // namespace

std::optional<Length> give_of(const Candidate& candidate, const Needs& needs, Length length) {
    if (!candidate.stretch || !needs.load) {
        return std::nullopt;
    }
    constexpr Tension slack{Tension::Basis::force, 0.0};
    const Tension load{Tension::Basis::force, needs.load->si()};
    const auto at_load = strain_at(*candidate.stretch, load, *candidate.rope);
    const auto at_set = strain_at(*candidate.stretch, needs.set.value_or(slack), *candidate.rope);
    if (!at_load || !at_set) {
        return std::nullopt;
    }
    return length_at(length, *at_set, *at_load) - length;
}

std::optional<Failure> failure_of_rope(const Candidate& candidate, const Needs& needs,
                                       const ChoiceTables& tables, const Foreseen& foreseen) {
    constexpr double on_the_safe_side = 1.1; // another rope's length and loss are not quite its own
    const auto retained = foreseen.retained
                              ? std::optional(std::min(*foreseen.retained * on_the_safe_side, 1.0))
                              : std::nullopt;
    return Judge(candidate, needs, tables).first(retained, foreseen.length, on_the_safe_side);
}

namespace {

/// What the rope fits, each need on its own.
Fits fits_of(const Judge& judge, const Needs& needs, const ChoiceTables& tables) {
    const auto fits = [](bool asked, const Judge::Finding& finding) {
        return asked ? std::optional(!finding) : std::nullopt;
    };
    const auto holders = judge.holders();
    Fits result;
    result.cleat = fits(!needs.held_by.empty() || needs.held_range.has_value(),
                        holders ? holders : judge.range());
    result.sheave = fits(needs.sheave && judge.least_sheave(), judge.sheave());
    result.hole = fits(needs.smallest_hole.has_value(), judge.hole());
    result.hand = fits(needs.hand && tables.least_for(*needs.hand), judge.hand());
    result.heat = fits(needs.runs && tables.least_melting(*needs.runs), judge.heat());
    return result;
}

/// The needs, with the smallest sheave of the piece's route if the job gives no other.
Needs with_route(const Needs& needs, const Piece& piece) {
    Needs all = needs;
    if (!all.sheave && piece.line != nullptr && piece.line->route) {
        all.sheave = piece.line->route->least_sheave;
    }
    return all;
}

} // namespace

Verdict verdict_on(const Piece& piece, const Candidate& candidate, const Needs& needs,
                   const ChoiceTables& tables) {
    const Needs all_needs = with_route(needs, piece);
    const Judge judge(candidate, all_needs, tables);
    Verdict verdict;
    verdict.fits = fits_of(judge, all_needs, tables);
    verdict.fits.ends = piece.fault == nullptr || !piece.fault->field.starts_with("end_");
    if (piece.fault != nullptr) {
        verdict.fails = Failure{piece.fault->field, piece.fault->text};
        return verdict;
    }
    const Length loaded = from_nanometres(piece.loaded);
    verdict.give = give_of(candidate, all_needs, loaded);
    verdict.factor = piece.strength.design_factor;
    verdict.buy = piece.cut * piece.quantity;
    const double metres_to_buy = from_nanometres(*verdict.buy).si();
    if (const auto price = candidate.price()) {
        verdict.price = *price * metres_to_buy;
    }
    if (candidate.rope->mass) {
        verdict.mass_kg = candidate.rope->mass->value.si() * metres_to_buy;
    }
    const auto& retained = piece.strength.retained;
    verdict.fails =
        judge.first(retained ? std::optional(retained->share) : std::nullopt, loaded, 1.0);
    return verdict;
}

} // namespace libsplice
