// Ropes that fail a need by themselves are never cut; the others are cut in the order of what is
// preferred until enough of them meet every need.
#include "libsplice/choose/chooser.h"

#include "libsplice/choose/ends_allow.h"
#include "libsplice/choose/hybrid.h"
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

/// What a rope is sorted by; what is not known comes last.
struct Merit {
    std::optional<double> price;
    bool unusual = false; ///< its fibre is, in such a place
    bool dear = false;    ///< its fibre is
    std::optional<Length> give;
    std::optional<double> mass;
    Length diameter;
};

/// Where no price is known, rope of a usual fibre comes first, and of these a dear one last.
SortKey key_of(const Merit& merit, Preference preference) {
    constexpr double unknown = std::numeric_limits<double>::infinity();
    const double price = merit.price.value_or(unknown);
    const double unusual = merit.unusual ? 1.0 : 0.0;
    const double dear = merit.dear ? 1.0 : 0.0;
    const double give = merit.give ? merit.give->si() : unknown;
    const double mass = merit.mass.value_or(unknown);
    const double diameter = merit.diameter.si();
    switch (preference) {
    case Preference::cost:
        return {price, unusual, dear, diameter, give, mass};
    case Preference::stretch:
        return {give, price, unusual, dear, mass, diameter};
    case Preference::weight:
        return {mass, price, unusual, dear, give, diameter};
    case Preference::hand:
        break;
    }
    return {-diameter, price, unusual, dear, give, mass};
}

/// All that a line says but its names: lines with one key have the same ropes.
std::string key_of(const JobLine& line) {
    constexpr std::array names{Column::name,   Column::boat, Column::note,
                               Column::colour, Column::lot,  Column::pair};
    std::string key;
    write_plan_key(line, key);
    for (const ColumnDeclaration& column : job_columns) {
        const Cell& cell = line.cell(column.id);
        if (!column.decides && std::ranges::find(names, column.id) == names.end()) {
            key += '\x1f';
            key += cell.unit ? static_cast<char>('1' + static_cast<int>(*cell.unit)) : '0';
            key += cell.text;
        }
    }
    return key;
}

bool is_unusual(const Rope& rope, const Needs& needs) {
    return std::ranges::find(needs.usual.value, rope.fibre) == needs.usual.value.end();
}

void count(std::vector<RopesOut>& out, std::string_view need) {
    const auto known = std::ranges::find(out, need, &RopesOut::need);
    if (known == out.end()) {
        out.push_back({std::string(need), 1});
    } else {
        ++known->ropes;
    }
}

} // namespace

/// A line on which ropes are tried.
struct Chooser::Trial {
    PlacedLine placed;
    EndsAllow ends;
    Needs needs = {};
    const Rope* named = nullptr;       ///< as the job names it
    bool demo = false;                 ///< that is invented
    std::optional<Length> length = {}; ///< under load, once it has been cut from some rope
    /// What ropes of a sort that were tried retain of their strength.
    std::map<std::pair<Construction, Fibre>, double> retained = {};
    std::vector<std::string> tried = {}; ///< ids

    [[nodiscard]] bool has_tried(const Rope& rope) const {
        return std::ranges::find(tried, rope.id) != tried.end();
    }
    [[nodiscard]] Foreseen foreseen(const Rope& rope) const {
        const auto known = retained.find({rope.construction, rope.fibre});
        return {length, known == retained.end() ? std::nullopt : std::optional(known->second)};
    }
};

SortKey Chooser::key_of(const TriedRope& tried, const Needs& needs) const {
    const Verdict& verdict = tried.verdict;
    const Merit merit{verdict.price,
                      is_unusual(*tried.rope, needs),
                      tables_.of(tried.rope->fibre).dear,
                      verdict.give,
                      verdict.mass_kg,
                      tried.rope->diameter};
    return libsplice::key_of(merit, preference_);
}

/// Of a metre of a rope that has not been cut yet.
SortKey Chooser::key_of(const Candidate& candidate, const Needs& needs) const {
    const Rope& rope = *candidate.rope;
    const auto mass = rope.mass ? std::optional(rope.mass->value.si()) : std::nullopt;
    const Merit merit{candidate.price(),
                      is_unusual(rope, needs),
                      tables_.of(rope.fibre).dear,
                      give_of(candidate, needs, metres(1.0)),
                      mass,
                      rope.diameter};
    return libsplice::key_of(merit, preference_);
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
    return {&rope, shown_as, verdict_on(piece, candidate, trial.needs, tables_), {}};
}

/// The line in a rope that it does not name.
JobLine Chooser::in_rope(JobLine line, const Rope& rope) {
    line.cells.at(static_cast<std::size_t>(Column::rope)) = Cell{rope.id};
    line.own_rope = nullptr;
    for (const Column column : columns_of_the_reel) {
        line.cells.at(static_cast<std::size_t>(column)) = {};
    }
    return line;
}

TriedRope Chooser::try_candidate(Trial& trial, std::size_t index, ShownAs shown_as) {
    const Candidate& candidate = candidates_.at(index);
    return cut_from(trial, candidate, shown_as, in_rope(trial.placed.line, *candidate.rope));
}

/// The best high-modulus core under a cover that serves with its cover taken off to the cleat.
std::optional<TriedRope> Chooser::try_hybrid(Trial& trial) {
    constexpr std::size_t most_cut = 5;
    if (trial.placed.line.cell(Column::cleat).empty()) {
        return std::nullopt;
    }
    std::vector<std::pair<SortKey, std::size_t>> keyed;
    for (std::size_t i = 0; i < candidates_.size(); ++i) {
        const Candidate& candidate = candidates_.at(i);
        const Rope& rope = *candidate.rope;
        const bool buyable = !candidate.invented || candidate.at_hand || trial.demo;
        if (buyable && rope.construction == Construction::core_dependent &&
            is_high_modulus(rope.fibre) &&
            !failed_by_rope(candidate, trial.needs, tables_, trial.foreseen(rope))) {
            keyed.emplace_back(key_of(candidate, trial.needs), i);
        }
    }
    std::ranges::sort(keyed);
    for (std::size_t k = 0; k < std::min(keyed.size(), most_cut); ++k) {
        const Candidate& candidate = candidates_.at(keyed[k].second);
        const Rope& rope = *candidate.rope;
        const auto hybrid =
            HybridLine::of(trial.placed, trial.needs, book_.common_rules(rope), rope);
        if (!hybrid) {
            return std::nullopt;
        }
        TriedRope tried =
            cut_from(trial, candidate, ShownAs::hybrid, in_rope(hybrid->line(), rope));
        if (!tried.verdict.fails) {
            tried.made = hybrid->in_words();
            return tried;
        }
    }
    return std::nullopt;
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

/// Whether the rope is of a sort that the line may be of. What was invented for the demo is for
/// lines that name such a rope, or for a stock that has it.
bool Chooser::may_try(const Trial& trial, const Candidate& candidate) const {
    const Construction construction = candidate.rope->construction;
    const bool of_its_sort = trial.named != nullptr
                                 ? are_interchangeable(construction, trial.named->construction)
                                 : trial.ends.may_be(construction);
    return of_its_sort && (!candidate.invented || candidate.at_hand || trial.demo) &&
           !trial.has_tried(*candidate.rope);
}

/// Candidates that fail no need by themselves, the preferred ones first.
std::vector<std::size_t> Chooser::hopeful(const Trial& trial, std::vector<RopesOut>& out) const {
    std::vector<std::pair<SortKey, std::size_t>> keyed;
    for (std::size_t i = 0; i < candidates_.size(); ++i) {
        const Candidate& candidate = candidates_.at(i);
        const Rope& rope = *candidate.rope;
        if (!may_try(trial, candidate)) {
            continue;
        }
        if (!trial.ends.allows(rope.construction)) {
            count(out, "ends");
        } else if (const auto need =
                       failed_by_rope(candidate, trial.needs, tables_, trial.foreseen(rope))) {
            count(out, column_name(*need));
        } else {
            keyed.emplace_back(key_of(candidate, trial.needs), i);
        }
    }
    std::ranges::sort(keyed);
    std::vector<std::size_t> order(keyed.size());
    std::ranges::transform(keyed, order.begin(), &std::pair<SortKey, std::size_t>::second);
    return order;
}

/// The best others that meet every need; if there are none, the nearest ones, so that it is said
/// what they lack.
std::vector<TriedRope> Chooser::try_best(Trial& trial, std::vector<RopesOut>& out) {
    constexpr std::size_t most_cut = 200; // of a line for which hardly any rope serves
    std::vector<TriedRope> best;
    std::vector<TriedRope> nearest;
    for (const std::size_t index : hopeful(trial, out)) {
        if (best.size() == best_shown || trial.tried.size() >= most_cut) {
            break;
        }
        // What the ropes before it came to says more than was known when the list was made.
        const Candidate& candidate = candidates_.at(index);
        if (const auto need =
                failed_by_rope(candidate, trial.needs, tables_, trial.foreseen(*candidate.rope))) {
            count(out, column_name(*need));
            continue;
        }
        TriedRope tried = try_candidate(trial, index, ShownAs::best);
        if (tried.verdict.fails) {
            count(out, tried.verdict.fails->need);
        }
        std::vector<TriedRope>& kept = tried.verdict.fails ? nearest : best;
        if (kept.size() < best_shown) {
            kept.push_back(std::move(tried));
        }
    }
    std::ranges::sort(best, {}, [&](const TriedRope& tried) { return key_of(tried, trial.needs); });
    return best.empty() ? nearest : best;
}

/// The line's needs and the rope that it names; what is wrong with them is added to `faults`.
Chooser::Trial Chooser::begin(const JobRow& row, CellReader& cells, std::vector<Fault>& faults) {
    Trial trial{with_place(row.line, tables_, cells), EndsAllow(book_, cells)};
    CellReader placed(trial.placed.line, faults);
    trial.needs = read_needs(trial.placed, book_.catalogue(), placed);
    trial.needs.usual = tables_.usual_at(trial.placed.place);
    if (!row.line.text(Column::rope).empty()) {
        trial.named = ropes_.find(cells);
    }
    return trial;
}

LineChoice Chooser::work_out(const JobRow& row, FaultSink& faults) {
    LineChoice choice;
    choice.rope = row.line.text(Column::rope);
    std::vector<Fault> own_faults;
    CellReader cells(row.line, own_faults);
    choice.quantity = cells.quantity();
    Trial trial = begin(row, cells, own_faults);
    choice.needs = trial.needs;
    if (!own_faults.empty()) {
        for (const Fault& fault : own_faults) {
            faults.push(fault);
        }
        choice.fault = own_faults.front();
        return choice;
    }
    choice.ropes = try_named(trial);
    std::ranges::move(try_best(trial, choice.out), std::back_inserter(choice.ropes));
    if (auto hybrid = try_hybrid(trial)) {
        choice.ropes.push_back(*std::move(hybrid));
    }
    for (std::size_t i = 0; i < choice.ropes.size(); ++i) {
        if (!choice.ropes[i].verdict.fails && choice.ropes[i].shown_as != ShownAs::hybrid &&
            (!choice.chosen || key_of(choice.ropes[i], trial.needs) <
                                   key_of(choice.ropes[*choice.chosen], trial.needs))) {
            choice.chosen = i;
        }
    }
    return choice;
}

LineChoice Chooser::choose(const JobRow& row, FaultSink& faults) {
    LineChoice choice;
    if (row.fault != nullptr) {
        choice.rope = row.line.text(Column::rope);
        choice.fault = *row.fault;
    } else {
        const std::string key = libsplice::key_of(row.line);
        const auto like = chosen_.find(key);
        choice = like == chosen_.end() ? work_out(row, faults) : like->second;
        if (like == chosen_.end() && !choice.fault) {
            chosen_.emplace(key, choice);
        }
    }
    choice.name = row.line.text(Column::name);
    choice.boat = row.line.text(Column::boat);
    choice.colour = row.line.text(Column::colour);
    choice.lot = row.line.text(Column::lot);
    choice.pair = row.line.text(Column::pair);
    return choice;
}

void Chooser::add_others(const JobRow& row, std::span<const std::size_t> candidates,
                         LineChoice& choice) {
    if (choice.fault || row.fault != nullptr) {
        return;
    }
    const auto [like, is_new] = others_.try_emplace(libsplice::key_of(row.line));
    if (is_new) {
        std::vector<Fault> unheard;
        CellReader cells(row.line, unheard);
        Trial trial = begin(row, cells, unheard);
        for (const TriedRope& rope : choice.ropes) {
            trial.tried.push_back(rope.rope->id);
        }
        for (const std::size_t index : candidates) {
            const Candidate& candidate = candidates_.at(index);
            const Rope& rope = *candidate.rope;
            if (!may_try(trial, candidate) || !trial.ends.allows(rope.construction) ||
                failed_by_rope(candidate, trial.needs, tables_, trial.foreseen(rope))) {
                continue;
            }
            TriedRope tried = try_candidate(trial, index, ShownAs::together);
            if (!tried.verdict.fails) {
                like->second.push_back(std::move(tried));
            }
        }
    }
    choice.others = like->second;
}

} // namespace libsplice
