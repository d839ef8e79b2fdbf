// Ropes that fail a need by themselves are never cut; the others are cut in the order of what is
// preferred until enough of them meet every need.
#include "libsplice/choose/chooser.h"

#include "libsplice/job/plan_key.h"

#include <algorithm>
#include <array>
#include <limits>
#include <tuple>
#include <utility>

namespace libsplice {

namespace {

/// What the reel in hand says holds of no other rope.
constexpr std::array columns_of_the_reel{
    Column::rope_breaking, Column::rope_stretch, Column::rope_core,         Column::rope_measured,
    Column::rope_mass,     Column::rope_price,   Column::rope_prestretched, Column::lot,
};

constexpr double unknown = std::numeric_limits<double>::infinity();

bool is_high_modulus(Fibre fibre) {
    return fibre == Fibre::hmpe || fibre == Fibre::aramid || fibre == Fibre::lcp;
}

} // namespace

/// A line on which ropes are tried.
struct Chooser::Trial {
    PlacedLine placed;
    Needs needs;
    std::string plan_key;
    std::optional<Length> length;   ///< under load, once it has been cut from some rope
    std::vector<std::size_t> tried; ///< candidates
};

bool is_preferred(const TriedRope& one, const TriedRope& other, Preference preference) {
    const auto key = [&](const TriedRope& rope) {
        const double price = rope.verdict.price.value_or(unknown);
        const double give = rope.verdict.give ? rope.verdict.give->si() : unknown;
        const double mass = rope.verdict.mass_kg.value_or(unknown);
        const double thin = -rope.rope->diameter.si();
        switch (preference) {
        case Preference::cost:
            return std::tuple(price, give, mass);
        case Preference::stretch:
            return std::tuple(give, price, mass);
        case Preference::weight:
            return std::tuple(mass, price, give);
        case Preference::hand:
            break;
        }
        return std::tuple(thin, price, give);
    };
    return key(one) < key(other);
}

/// The same before the line is cut: of a metre, and of a rope under the load alone.
double Chooser::key_of(const Candidate& candidate, const Needs& needs) const {
    switch (preference_) {
    case Preference::cost:
        return candidate.price().value_or(unknown);
    case Preference::stretch: {
        const auto give = give_of(candidate, needs, metres(1.0));
        return give ? give->si() : unknown;
    }
    case Preference::weight:
        return candidate.rope->mass ? candidate.rope->mass->value.si() : unknown;
    case Preference::hand:
        break;
    }
    return -candidate.rope->diameter.si();
}

TriedRope Chooser::try_rope(Trial& trial, std::size_t candidate, ShownAs shown_as) {
    const Candidate& tried = candidates_.at(candidate);
    const bool own = shown_as == ShownAs::named;
    JobLine line = trial.placed.line;
    line.cells.at(static_cast<std::size_t>(Column::pair)) = {}; // a trial has no partner
    if (!own) {
        line.cells.at(static_cast<std::size_t>(Column::rope)).text = tried.rope->id;
        line.own_rope = nullptr;
        for (const Column column : columns_of_the_reel) {
            line.cells.at(static_cast<std::size_t>(column)) = {};
        }
    }
    write_plan_key(line, trial.plan_key);
    line.plan_key = trial.plan_key;
    FaultSink unheard;
    const Piece& piece = cutter_.cut(JobRow{line}, unheard);
    if (piece.fault == nullptr && !trial.length) {
        trial.length = from_nanometres(piece.loaded);
    }
    trial.tried.push_back(candidate);
    Candidate facts = tried;
    if (own && piece.line != nullptr) { // with what the reel in hand says
        facts.rope = piece.line->rope;
        facts.stretch = piece.line->states.stretch;
    }
    return {candidate, tried.rope, shown_as, verdict_on(piece, facts, trial.needs, tables_)};
}

void Chooser::try_named(Trial& trial, LineChoice& choice) {
    const auto named = candidates_.find(choice.rope);
    if (!named) {
        return;
    }
    choice.ropes.push_back(try_rope(trial, *named, ShownAs::named));
    const auto add = [&](std::optional<std::size_t> candidate, ShownAs shown_as) {
        if (candidate && std::ranges::find(trial.tried, *candidate) == trial.tried.end()) {
            choice.ropes.push_back(try_rope(trial, *candidate, shown_as));
        }
    };
    add(candidates_.next_down(*named), ShownAs::size_down);
    add(candidates_.next_up(*named), ShownAs::size_up);
    if (is_high_modulus(candidates_.at(*named).rope->fibre)) {
        add(candidates_.polyester_up(*named), ShownAs::polyester_up);
    }
}

/// Candidates that fail no need by themselves, the preferred ones first.
std::vector<std::size_t> Chooser::hopeful(const Trial& trial) const {
    std::vector<std::pair<double, std::size_t>> keyed;
    for (std::size_t i = 0; i < candidates_.size(); ++i) {
        const Candidate& candidate = candidates_.at(i);
        if (std::ranges::find(trial.tried, i) == trial.tried.end() &&
            !failure_of_rope(candidate, trial.needs, tables_, trial.length)) {
            keyed.emplace_back(key_of(candidate, trial.needs), i);
        }
    }
    std::ranges::sort(keyed);
    std::vector<std::size_t> order;
    for (const auto& [key, index] : keyed) {
        order.push_back(index);
    }
    return order;
}

void Chooser::try_best(Trial& trial, LineChoice& choice, std::size_t most) {
    constexpr std::size_t most_cut = 60; // of a line for which hardly any rope serves
    std::vector<TriedRope> failed;
    std::size_t found = 0;
    std::size_t cut = 0;
    for (const std::size_t candidate : hopeful(trial)) {
        if (found == most || cut == most_cut + most) {
            break;
        }
        ++cut;
        TriedRope tried = try_rope(trial, candidate, ShownAs::best);
        if (!tried.verdict.fails) {
            ++found;
            choice.ropes.push_back(std::move(tried));
        } else if (failed.size() < best_shown) {
            failed.push_back(std::move(tried));
        }
    }
    if (found == 0) { // so that it is said what the nearest ones lack
        std::ranges::move(failed, std::back_inserter(choice.ropes));
    }
}

LineChoice Chooser::choose(const JobRow& row, FaultSink& faults, std::size_t most_best) {
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
    Trial trial{with_place(row.line, tables_, cells), {}, {}, {}, {}};
    CellReader placed(trial.placed.line, own_faults);
    trial.needs = read_needs(trial.placed, book_.catalogue(), placed);
    choice.needs = trial.needs;
    if (!own_faults.empty()) {
        for (const Fault& fault : own_faults) {
            faults.push(fault);
        }
        choice.fault = own_faults.front();
        return choice;
    }
    try_named(trial, choice);
    try_best(trial, choice, most_best);
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
