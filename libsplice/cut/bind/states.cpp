// Works out the strains and shares that lead from the length asked for to the rope on the bench.
#include "libsplice/cut/bind/states.h"

#include "libsplice/cut/judge/elastic.h"
#include "libsplice/mechanics/rope/stretch.h"

#include <algorithm>

namespace libsplice {

namespace {

std::string words_for(const Rope& rope) {
    return std::string(name_of(rope.construction)) + ' ' + std::string(name_of(rope.fibre));
}

void set_strains(const Rope& rope, const Tension& marked_at, CellReader& cells, States& states) {
    if (!states.stretch) {
        cells.add(Fault{Code::stretch_missing,
                        "no source gives the stretch of " + words_for(rope) +
                            "; give the length at the reference tension (leave tension empty) and "
                            "mark at the reference pull"},
                  Column::tension);
        return;
    }
    const auto working = strain_at(*states.stretch, states.tension, rope);
    const auto marking = strain_at(*states.stretch, marked_at, rope);
    if (!working || !marking) {
        cells.add(working ? marking.error() : working.error(), Column::tension);
        return;
    }
    states.working_strain = *working;
    states.marking_strain = *marking;
    states.strain_source = states.stretch->source;
    states.strain_spread = states.stretch->spread;
    states.strain_origin = states.stretch->origin;
}

std::optional<LengthShare> share_from(const Figure* figure) {
    if (figure == nullptr) {
        return std::nullopt;
    }
    return LengthShare{figure->number(), figure->number_spread(), figure->origin, figure->source};
}

void set_marking(const StatesOf& of, CellReader& cells, States& states) {
    const MarkingTension& marked = of.settings.marking_tension;
    states.marking_basis = marked.basis;
    if (marked.basis == MarkingTension::Basis::slack) {
        if (of.fit == Fit::exact) {
            cells.add(Fault{Code::slack_for_exact,
                            "an exact line cannot be marked slack: mark it at the reference pull "
                            "or at a load"},
                      Column::fit);
        }
        states.slack = share_from(of.rules.find(FigureId::slack));
        return;
    }
    states.marking_tension = marked.basis == MarkingTension::Basis::load
                                 ? marked.load
                                 : reference_tension(of.rope.diameter);
}

void set_milk_out(const StatesOf& of, States& states) {
    const bool milks_first = of.ends.first().allowance->milks_cover;
    const bool milks_last = of.ends.last().allowance->milks_cover;
    if (milks_first == milks_last) {
        return;
    }
    states.milk_out = share_from(of.rules.find(FigureId::milk_out));
    if (const auto* least = of.rules.find(FigureId::minimum_milk_out)) {
        states.least_milk_out = to_nanometres(least->length(of.rope.diameter));
    }
}

/// What holds for rope of every sort.
States start(const StatesOf& of) {
    States states;
    states.prestretched = of.asked.prestretched;
    states.wash = of.asked.wash;
    states.tension = of.asked.tension;
    if (of.eased && states.tension.basis != Tension::Basis::reference) {
        states.tension_left_out = true;
        states.tension = {};
    }
    const auto* fixed = of.rules.find(FigureId::tape_fixed);
    const auto* share = of.rules.find(FigureId::tape_share);
    if (fixed != nullptr && share != nullptr) {
        states.tape = {fixed->length(of.rope.diameter), share->number(), share->source};
    }
    states.stretch = stretch_of(of.rope, of.rules);
    return states;
}

void set_pulled(const StatesOf& of, CellReader& cells, States& states) {
    set_marking(of, cells, states);
    const MarkingTension& marked = of.settings.marking_tension;
    Tension marked_at;
    if (marked.basis == MarkingTension::Basis::load) {
        marked_at = {Tension::Basis::force, marked.load.si()};
    }
    if (!(states.tension == marked_at)) {
        set_strains(of.rope, marked_at, cells, states);
    }
    if (!states.prestretched) {
        states.first_stretch = share_from(of.rules.find(FigureId::first_stretch));
    }
    if (states.wash) {
        states.shrinkage = share_from(of.rules.find(FigureId::shrinkage));
    }
    set_milk_out(of, states);
}

std::optional<StrainAtPull> known_strain(const Rope& rope, const RopeStretch& stretch,
                                         const Tension& tension) {
    const auto strain = strain_at(stretch, tension, rope);
    return strain && is_covered(stretch, tension, rope).value_or(false)
               ? std::optional(StrainAtPull{tension, pull_of(tension, rope), *strain})
               : std::nullopt;
}

/// The strain at the line's load, else at its tension, or why it is not known.
void set_load(const Rope& rope, const States& states, const std::optional<Force>& load,
              PullsOfLine& pulls) {
    Tension at = states.tension;
    if (load) {
        at = {Tension::Basis::force, load->si()};
    }
    if (at.basis == Tension::Basis::reference) {
        return;
    }
    const auto strain = strain_at(*states.stretch, at, rope);
    const bool covered = is_covered(*states.stretch, at, rope).value_or(false);
    if (strain && covered) {
        pulls.load = StrainAtPull{at, pull_of(at, rope), *strain};
    } else if (strain) {
        pulls.load_not_known = "the last published value of this " + words_for(rope) + " is at " +
                               states.stretch->last_load() +
                               (states.stretch->by_force ? "" : " of breaking strength") +
                               ", and nothing is guessed for a load so far beyond it";
    } else if (strain.error().code == Code::beyond_stretch) {
        pulls.load_not_known = strain.error().text;
    }
}

} // namespace

StateAsked read_state(CellReader& cells) {
    StateAsked asked;
    asked.tension = cells.tension(Column::tension).value_or(Tension{});
    asked.prestretched = cells.yes(Column::prestretched);
    asked.wash = cells.yes(Column::wash);
    return asked;
}

States bind_states(const StatesOf& of, CellReader& cells) {
    States states = start(of);
    if (of.rope.construction == Construction::shock_cord) {
        bind_elastic(of.rules, of.rope, cells, states);
        return states;
    }
    refuse_elastic_columns(cells, of.rope);
    if (!measured_relaxed(of.rope.construction)) {
        set_pulled(of, cells, states);
    } else if (states.tension.basis != Tension::Basis::reference) {
        cells.add(Fault{Code::measured_relaxed,
                        words_for(of.rope) +
                            " is measured relaxed and straight; give its length so, without a "
                            "tension"},
                  Column::tension);
    }
    return states;
}

PullsOfLine bind_pulls(const Rope& rope, const States& states, const std::optional<Force>& load) {
    PullsOfLine pulls;
    if (!states.stretch || measured_relaxed(rope.construction)) {
        return pulls;
    }
    const auto asked = strain_at(*states.stretch, states.tension, rope);
    const auto reference = strain_at(*states.stretch, {}, rope);
    if (!asked || !reference) {
        return pulls;
    }
    pulls.asked = *asked;
    pulls.reference = *reference;
    set_load(rope, states, load, pulls);
    constexpr auto share = Tension::Basis::share;
    std::vector<Tension> tensions{
        Tension{}, {share, 0.1}, {share, 0.2}, {share, 0.3}, states.tension};
    if (load) {
        tensions.push_back({Tension::Basis::force, load->si()});
    }
    for (const Tension& tension : tensions) {
        if (const auto known = known_strain(rope, *states.stretch, tension)) {
            pulls.pulls.push_back(*known);
        }
    }
    std::ranges::stable_sort(pulls.pulls, {}, &StrainAtPull::strain);
    return pulls;
}

} // namespace libsplice
