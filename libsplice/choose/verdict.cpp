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
        if (!rope_.breaking || rope_.generic_breaking) {
            return fail(Column::carries_person,
                        "no strength of the reel itself is known, and what any rope of its sort "
                        "holds is never enough for a person: give rope_breaking");
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
        const Force holds = rope_.breaking->value * retained.value_or(1.0);
        const double share = candidate_.working_share ? candidate_.working_share->value : 1.0;
        if (*needs_.load > holds * share) {
            return fail(Column::load, "the load of " + shown(*needs_.load) + " is " +
                                          percent(*needs_.load / holds) + " of the " +
                                          shown(holds) + " that it holds; the most is " +
                                          percent(share));
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
        return fail(Column::held_range, "at " + shown(size) + " it is " +
                                            shown(thin ? range->from - size : size - range->up_to) +
                                            (thin ? " too thin" : " too thick") +
                                            " for what holds it");
    }

    [[nodiscard]] Finding sheave() const {
        const auto& least = tables_.least_sheave();
        const Length size = rope_.counting_diameter();
        if (!needs_.sheave || !least || *needs_.sheave >= size * least->value) {
            return std::nullopt;
        }
        return fail(Column::sheave, "its sheave of " + shown(*needs_.sheave) + " is " +
                                        show_number(*needs_.sheave / size, 1) +
                                        " times its diameter; the least is " +
                                        show_number(least->value, 1));
    }

    [[nodiscard]] Finding hole() const {
        const Length size = rope_.counting_diameter();
        if (!needs_.smallest_hole || *needs_.smallest_hole > size) {
            return std::nullopt;
        }
        return fail(Column::smallest_hole, "at " + shown(size) + " it does not pass a hole of " +
                                               shown(*needs_.smallest_hole));
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
        return fail(Column::hand, "at " + shown(size) + " it is " + shown(least->value - size) +
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
    const Tension load{Tension::Basis::force, needs.load->si()};
    const auto at_load = strain_at(*candidate.stretch, load, *candidate.rope);
    const auto at_set =
        strain_at(*candidate.stretch, needs.set.value_or(Tension{}), *candidate.rope);
    if (!at_load || !at_set) {
        return std::nullopt;
    }
    return length * ((1.0 + *at_load) / (1.0 + *at_set) - 1.0);
}

std::optional<Failure> failure_of_rope(const Candidate& candidate, const Needs& needs,
                                       const ChoiceTables& tables, std::optional<Length> length) {
    constexpr double on_the_safe_side = 1.1; // the length is not known to the millimetre yet
    return Judge(candidate, needs, tables).first(std::nullopt, length, on_the_safe_side);
}

Verdict verdict_on(const Piece& piece, const Candidate& candidate, const Needs& needs,
                   const ChoiceTables& tables) {
    const Judge judge(candidate, needs, tables);
    Verdict verdict;
    const auto fits = [](bool asked, const Judge::Finding& finding) {
        return asked ? std::optional(!finding) : std::nullopt;
    };
    verdict.fits.ends = piece.fault == nullptr;
    const auto holders = judge.holders();
    verdict.fits.cleat = fits(!needs.held_by.empty() || needs.held_range.has_value(),
                              holders ? holders : judge.range());
    verdict.fits.sheave = fits(needs.sheave.has_value(), judge.sheave());
    verdict.fits.hole = fits(needs.smallest_hole.has_value(), judge.hole());
    verdict.fits.hand = fits(needs.hand.has_value(), judge.hand());
    verdict.fits.heat = fits(needs.runs.has_value(), judge.heat());
    if (piece.fault != nullptr) {
        verdict.fails = Failure{piece.fault->field, piece.fault->text};
        return verdict;
    }
    const Length loaded = from_nanometres(piece.loaded);
    verdict.give = give_of(candidate, needs, loaded);
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
