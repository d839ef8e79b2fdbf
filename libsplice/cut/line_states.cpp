#include "libsplice/cut/line_states.h"

#include "libsplice/mechanics/stretch.h"

namespace libsplice {

namespace {

/// The rope's own curve, else that of its construction and fibre.
std::optional<Sourced<StretchCurve>> stretch_of(const Rope& rope, const Rules& rules) {
    if (rope.stretch) {
        return rope.stretch;
    }
    const auto strain = rules.find(FigureId::stretch);
    const auto load = rules.find(FigureId::stretch_load);
    if (strain == nullptr || load == nullptr) {
        return std::nullopt;
    }
    return Sourced<StretchCurve>{{strain->number(), load->number()}, strain->source};
}

std::string described(const Rope& rope) {
    return std::string(name_of(rope.construction)) + ' ' + std::string(name_of(rope.fibre));
}

/// The pull as a share of breaking strength.
std::optional<double> share_of(const Tension& tension, const Rope& rope) {
    if (tension.basis == Tension::Basis::share) {
        return tension.value;
    }
    if (!rope.breaking) {
        return std::nullopt;
    }
    const Force pull = tension.basis == Tension::Basis::force ? Force(tension.value)
                                                              : reference_tension(rope.diameter);
    return pull / rope.breaking->value;
}

void bind_strains(const Rules& rules, const Tension& marked_at, LineFields& fields,
                  LinePlan& plan) {
    const auto curve = stretch_of(*plan.rope, rules);
    if (!curve) {
        fields.add(Fault{Code::stretch_missing,
                         "no source gives the stretch of " + described(*plan.rope) +
                             "; give the length at the reference tension (leave tension empty) and "
                             "mark at the reference pull"},
                   Column::tension);
        return;
    }
    const auto working = share_of(plan.tension, *plan.rope);
    const auto marking = share_of(marked_at, *plan.rope);
    if (!working || !marking) {
        fields.add(
            Fault{Code::strength_missing,
                  "no source gives the breaking strength of this " + described(*plan.rope) +
                      ", which its stretch is counted in; name a rope of the tables that has "
                      "one, or leave tension empty"},
            Column::tension);
        return;
    }
    plan.working_strain = curve->value.at(*working);
    plan.marking_strain = curve->value.at(*marking);
    plan.strain_source = curve->source;
}

std::optional<LengthShare> share_from(const Figure* figure) {
    if (figure == nullptr) {
        return std::nullopt;
    }
    return LengthShare{figure->number(), figure->number_spread(), figure->origin, figure->source};
}

void bind_marking(const Rules& rules, const CutSettings& settings, LineFields& fields,
                  LinePlan& plan) {
    plan.marking_basis = settings.marking_pull.basis;
    if (settings.marking_pull.basis == MarkingPull::Basis::slack) {
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
    plan.marking_pull = settings.marking_pull.basis == MarkingPull::Basis::load
                            ? settings.marking_pull.load
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
    if (settings.marking_pull.basis == MarkingPull::Basis::load) {
        marked_at = {Tension::Basis::force, settings.marking_pull.load.si()};
    }
    if (!(plan.tension == marked_at)) {
        bind_strains(rules, marked_at, fields, plan);
    }
    if (!plan.bedded) {
        plan.bedding = share_from(rules.find(FigureId::bedding));
    }
    if (plan.wash) {
        plan.shrinkage = share_from(rules.find(FigureId::shrinkage));
    }
    bind_milk_out(rules, plan);
}

} // namespace libsplice
