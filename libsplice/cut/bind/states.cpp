#include "libsplice/cut/bind/states.h"

#include "libsplice/cut/elastic.h"
#include "libsplice/mechanics/rope/stretch.h"

namespace libsplice {

namespace {

std::string described(const Rope& rope) {
    return std::string(name_of(rope.construction)) + ' ' + std::string(name_of(rope.fibre));
}

void bind_strains(const Tension& marked_at, LineFields& fields, LinePlan& plan) {
    if (!plan.stretch) {
        fields.add(Fault{Code::stretch_missing,
                         "no source gives the stretch of " + described(*plan.rope) +
                             "; give the length at the reference tension (leave tension empty) and "
                             "mark at the reference pull"},
                   Column::tension);
        return;
    }
    const auto working = strain_at(*plan.stretch, plan.tension, *plan.rope);
    const auto marking = strain_at(*plan.stretch, marked_at, *plan.rope);
    if (!working || !marking) {
        fields.add(working ? marking.error() : working.error(), Column::tension);
        return;
    }
    plan.working_strain = *working;
    plan.marking_strain = *marking;
    plan.strain_source = plan.stretch->source;
    plan.strain_spread = plan.stretch->spread;
    plan.strain_origin = plan.stretch->origin;
}

std::optional<LengthShare> share_from(const Figure* figure) {
    if (figure == nullptr) {
        return std::nullopt;
    }
    return LengthShare{figure->number(), figure->number_spread(), figure->origin, figure->source};
}

void bind_marking(const Rules& rules, const CutSettings& settings, LineFields& fields,
                  LinePlan& plan) {
    plan.marking_basis = settings.marking_tension.basis;
    if (settings.marking_tension.basis == MarkingTension::Basis::slack) {
        if (plan.fit == Fit::exact) {
            fields.add(
                Fault{Code::slack_for_exact,
                      "an exact line cannot be marked slack: mark it at the reference pull or "
                      "at a load"},
                Column::fit);
        }
        plan.slack = share_from(rules.find(FigureId::slack));
        return;
    }
    plan.marking_tension = settings.marking_tension.basis == MarkingTension::Basis::load
                               ? settings.marking_tension.load
                               : reference_tension(plan.rope->diameter);
}

void bind_milk_out(const Rules& rules, LinePlan& plan) {
    const bool milks_first = plan.first().allowance->milks_cover;
    const bool milks_last = plan.last().allowance->milks_cover;
    if (milks_first == milks_last) {
        return;
    }
    plan.milk_out = share_from(rules.find(FigureId::milk_out));
    if (const auto least = rules.find(FigureId::minimum_milk_out)) {
        plan.least_milk_out = to_nanometres(least->length(plan.rope->diameter));
    }
}

} // namespace

void bind_states(const Book& book, const CutSettings& settings, LineFields& fields,
                 LinePlan& plan) {
    const Rules rules = book.common_rules(*plan.rope);
    const auto fixed = rules.find(FigureId::tape_fixed);
    const auto share = rules.find(FigureId::tape_share);
    if (fixed != nullptr && share != nullptr) {
        plan.tape = {fixed->length(plan.rope->diameter), share->number(), share->source};
    }
    plan.stretch = stretch_of(*plan.rope, rules);
    if (plan.rope->construction == Construction::shock_cord) {
        bind_elastic(rules, fields, plan);
        return;
    }
    refuse_elastic_columns(fields, *plan.rope);
    if (measured_relaxed(plan.rope->construction)) {
        if (plan.tension.basis != Tension::Basis::reference) {
            fields.add(Fault{Code::measured_relaxed,
                             described(*plan.rope) +
                                 " is measured relaxed and straight; give its length so, without a "
                                 "tension"},
                       Column::tension);
        }
        return;
    }
    bind_marking(rules, settings, fields, plan);
    Tension marked_at;
    if (settings.marking_tension.basis == MarkingTension::Basis::load) {
        marked_at = {Tension::Basis::force, settings.marking_tension.load.si()};
    }
    if (!(plan.tension == marked_at)) {
        bind_strains(marked_at, fields, plan);
    }
    if (!plan.prestretched) {
        plan.first_stretch = share_from(rules.find(FigureId::first_stretch));
    }
    if (plan.wash) {
        plan.shrinkage = share_from(rules.find(FigureId::shrinkage));
    }
    bind_milk_out(rules, plan);
}

} // namespace libsplice
