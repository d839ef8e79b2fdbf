// Ropes that fail a need by themselves are never cut; the others are cut in the order of what is
// preferred until enough of them meet every need.
#include "libsplice/choose/chooser.h"

#include "libsplice/job/plan_key.h"

#include <algorithm>
#include <array>
#include <iterator>
#include <limits>
#include <map>
#include <string>
#include <utility>

namespace libsplice {

namespace {

/// What the reel in hand says holds of no other rope.
constexpr std::array columns_of_the_reel{
    Column::rope_breaking, Column::rope_stretch, Column::rope_core,         Column::rope_measured,
    Column::rope_mass,     Column::rope_price,   Column::rope_prestretched, Column::lot,
};

bool is_high_modulus(Fibre fibre) {
    return fibre == Fibre::hmpe || fibre == Fibre::aramid || fibre == Fibre::lcp;
}

/// Wire and elastic are no rope that could replace one, nor the other way round.
bool are_interchangeable(Construction one, Construction other) {
    const auto is_apart = [](Construction construction) {
        return construction == Construction::wire || construction == Construction::shock_cord;
    };
    return one == other || (!is_apart(one) && !is_apart(other));
}

/// What a rope is sorted by; what is not known comes last.
struct Merit {
    std::optional<double> price;
    std::optional<Length> give;
    std::optional<double> mass;
    Length diameter;
};

using SortKey = std::array<double, 4>;

/// The smaller, the better.
SortKey key_of(const Merit& merit, Preference preference) {
    constexpr double unknown = std::numeric_limits<double>::infinity();
    const double price = merit.price.value_or(unknown);
    const double give = merit.give ? merit.give->si() : unknown;
    const double mass = merit.mass.value_or(unknown);
    const double diameter = merit.diameter.si();
    switch (preference) {
    case Preference::cost:
        return {price, diameter, give, mass};
    case Preference::stretch:
        return {give, price, mass, diameter};
    case Preference::weight:
        return {mass, price, give, diameter};
    case Preference::hand:
        break;
    }
    return {-diameter, price, give, mass};
}

SortKey key_of(const TriedRope& tried, Preference preference) {
    const Verdict& verdict = tried.verdict;
    return key_of(Merit{verdict.price, verdict.give, verdict.mass_kg, tried.rope->diameter},
                  preference);
}

/// Of a metre of a rope that has not been cut yet.
SortKey key_of(const Candidate& candidate, const Needs& needs, Preference preference) {
    const auto mass =
        candidate.rope->mass ? std::optional(candidate.rope->mass->value.si()) : std::nullopt;
    return key_of(Merit{candidate.price(), give_of(candidate, needs, metres(1.0)), mass,
                        candidate.rope->diameter},
                  preference);
}

} // namespace

/// A line on which ropes are tried.
struct Chooser::Trial {
    PlacedLine placed;
    Needs needs;
    const Rope* named = nullptr;  ///< as the job names it
    bool demo = false;            ///< that is invented
    std::optional<Length> length; ///< under load, once it has been cut from some rope
    /// What ropes of a sort that were tried retain of their strength.
    std::map<std::pair<Construction, Fibre>, double> retained;
    std::vector<std::string> tried; ///< ids

    [[nodiscard]] bool has_tried(const Rope& rope) const {
        return std::ranges::find(tried, rope.id) != tried.end();
    }
    [[nodiscard]] Foreseen foreseen(const Rope& rope) const {
        const auto known = retained.find({rope.construction, rope.fibre});
        return {length, known == retained.end() ? std::nullopt : std::optional(known->second)};
    }
};

bool is_preferred(const TriedRope& one, const TriedRope& other, Preference preference) {
    return key_of(one, preference) < key_of(other, preference);
}

/// Cuts the line, which names the candidate.
TriedRope Chooser::cut_from(Trial& trial, const Candidate& candidate, ShownAs shown_as,
                            JobLine line) {
    line.cells.at(static_cast<std::size_t>(Column::pair)) = {}; // a trial has no partner
    std::string plan_key;
    write_plan_key(line, plan_key);
    line.plan_key = plan_key;
    FaultSink unheard;
    const Piece& piece = cutter_.cut(JobRow{line}, unheard);
    const Rope& rope = *candidate.rope;
    if (piece.fault == nullptr) {
        trial.length = trial.length.value_or(from_nanometres(piece.loaded));
        if (piece.strength.retained) {
            trial.retained.emplace(std::pair(rope.construction, rope.fibre),
                                   piece.strength.retained->share);
        }
    }
    trial.tried.push_back(rope.id);
    return {&rope, shown_as, verdict_on(piece, candidate, trial.needs, tables_)};
}

TriedRope Chooser::try_candidate(Trial& trial, std::size_t index, ShownAs shown_as) {
    const Candidate& candidate = candidates_.at(index);
    JobLine line = trial.placed.line;
    line.cells.at(static_cast<std::size_t>(Column::rope)) = Cell{candidate.rope->id};
    line.own_rope = nullptr;
    for (const Column column : columns_of_the_reel) {
        line.cells.at(static_cast<std::size_t>(column)) = {};
    }
    return cut_from(trial, candidate, shown_as, line);
}

/// The rope that the line names, and its neighbours in size.
std::vector<TriedRope> Chooser::try_named(Trial& trial) {
    std::vector<TriedRope> ropes;
    if (trial.named == nullptr) {
        return ropes;
    }
    const Rope& named = *trial.named;
    const Candidate own = candidate_of(book_, named);
    trial.demo = own.invented;
    ropes.push_back(cut_from(trial, own, ShownAs::named, trial.placed.line));
    const auto add = [&](std::optional<std::size_t> index, ShownAs shown_as) {
        if (index && !trial.has_tried(*candidates_.at(*index).rope)) {
            ropes.push_back(try_candidate(trial, *index, shown_as));
        }
    };
    add(candidates_.next_down(named), ShownAs::size_down);
    add(candidates_.next_up(named), ShownAs::size_up);
    if (is_high_modulus(named.fibre)) {
        add(candidates_.polyester_up(named), ShownAs::polyester_up);
    }
    return ropes;
}

/// Candidates that fail no need by themselves, the preferred ones first. What was invented for the
/// demo is for lines that name such a rope.
std::vector<std::size_t> Chooser::hopeful(const Trial& trial) const {
    const Construction sort =
        trial.named == nullptr ? Construction::double_braid : trial.named->construction;
    std::vector<std::pair<SortKey, std::size_t>> keyed;
    for (std::size_t i = 0; i < candidates_.size(); ++i) {
        const Candidate& candidate = candidates_.at(i);
        const Rope& rope = *candidate.rope;
        if (candidate.invented && !trial.demo) {
            continue;
        }
        if (are_interchangeable(rope.construction, sort) && !trial.has_tried(rope) &&
            !failure_of_rope(candidate, trial.needs, tables_, trial.foreseen(rope))) {
            keyed.emplace_back(key_of(candidate, trial.needs, preference_), i);
        }
    }
    std::ranges::sort(keyed);
    std::vector<std::size_t> order(keyed.size());
    std::ranges::transform(keyed, order.begin(), &std::pair<SortKey, std::size_t>::second);
    return order;
}

/// The best others that meet every need; if there are none, the nearest ones, so that it is said
/// what they lack.
std::vector<TriedRope> Chooser::try_best(Trial& trial) {
    constexpr std::size_t most_cut = 200; // of a line for which hardly any rope serves
    std::vector<TriedRope> best;
    std::vector<TriedRope> nearest;
    for (const std::size_t index : hopeful(trial)) {
        if (best.size() == best_shown || trial.tried.size() >= most_cut) {
            break;
        }
        // What the ropes before it came to says more than was known when the list was made.
        const Candidate& candidate = candidates_.at(index);
        if (failure_of_rope(candidate, trial.needs, tables_, trial.foreseen(*candidate.rope))) {
            continue;
        }
        TriedRope tried = try_candidate(trial, index, ShownAs::best);
        std::vector<TriedRope>& kept = tried.verdict.fails ? nearest : best;
        if (kept.size() < best_shown) {
            kept.push_back(std::move(tried));
        }
    }
    std::ranges::sort(best, [&](const TriedRope& one, const TriedRope& other) {
        return is_preferred(one, other, preference_);
    });
    return best.empty() ? nearest : best;
}

LineChoice Chooser::choose(const JobRow& row, FaultSink& faults) {
    LineChoice choice;
    choice.name = row.line.text(Column::name);
    choice.boat = row.line.text(Column::boat);
    choice.rope = row.line.text(Column::rope);
    if (row.fault != nullptr) {
        choice.fault = *row.fault;
        return choice;
    }
    std::vector<Fault> own_faults;
    CellReader cells(row.line, own_faults);
    choice.quantity = cells.quantity();
    Trial trial{with_place(row.line, tables_, cells), {}, nullptr, false, {}, {}, {}};
    CellReader placed(trial.placed.line, own_faults);
    trial.needs = read_needs(trial.placed, placed);
    choice.needs = trial.needs;
    if (!choice.rope.empty()) {
        trial.named = ropes_.find(cells);
    }
    if (!own_faults.empty()) {
        for (const Fault& fault : own_faults) {
            faults.push(fault);
        }
        choice.fault = own_faults.front();
        return choice;
    }
    choice.ropes = try_named(trial);
    std::ranges::move(try_best(trial), std::back_inserter(choice.ropes));
    for (std::size_t i = 0; i < choice.ropes.size(); ++i) {
        if (!choice.ropes[i].verdict.fails &&
            (!choice.chosen ||
             is_preferred(choice.ropes[i], choice.ropes[*choice.chosen], preference_))) {
            choice.chosen = i;
        }
    }
    return choice;
}

} // namespace libsplice
