#include "libsplice/cut/elastic.h"

#include "libsplice/mechanics/rope/stretch.h"
#include "libsplice/units/show.h"

namespace libsplice {

namespace {

constexpr std::string_view slack_caution =
    "where its way is shortest the elastic is pulled out less than its working range: it pulls "
    "little there and may hang slack";
constexpr std::string_view far_caution =
    "the elastic is pulled out beyond its working range: it ages sooner";
constexpr std::string_view loss_caution =
    "elastic loses some of its pull in its first weeks: make the end that is easy to reach last, "
    "and take it up there";

/// From the cord's own curve.
void bind_pull(LineFields& fields, LinePlan& plan) {
    if (!plan.stretch) {
        fields.add(Fault{Code::stretch_missing,
                         "no source gives the pull of this shock cord; give its stretch instead, "
                         "as 30 %"},
                   Column::tension);
        return;
    }
    const auto strain = strain_at(*plan.stretch, plan.tension, *plan.rope);
    if (!strain) {
        fields.add(strain.error(), Column::tension);
        return;
    }
    plan.working_strain = *strain;
    plan.strain_source = plan.stretch->source;
    plan.strain_spread = plan.stretch->spread;
    plan.strain_origin = plan.stretch->origin;
}

/// The cord's pull where it is pulled out by `strain`.
std::optional<Force> pull_at(const LinePlan& plan, double strain) {
    const auto load = plan.stretch ? plan.stretch->curve.load_at(strain) : std::nullopt;
    if (!load || plan.stretch->by_force) {
        return load ? std::optional(Force(*load)) : std::nullopt;
    }
    return plan.rope->breaking ? std::optional(plan.rope->breaking->value * *load) : std::nullopt;
}

std::string shown(double share) {
    return show_number(share * 100.0, 2) + " %";
}

Fault overstretched(const LinePlan& plan, double strain, bool at_far_end) {
    const std::string where = at_far_end ? "at the other end of its travel" : "in this state";
    Fault fault{Code::elastic_overstretched,
                where + " the elastic would be pulled out " + shown(strain) +
                    " over its relaxed length, and it is stopped at " +
                    shown(plan.elastic->limit->number()) +
                    "; give it a longer way, less travel or less stretch"};
    const bool pulled = plan.tension.basis != Tension::Basis::reference;
    fault.field = column_name(at_far_end ? Column::travel
                              : pulled   ? Column::tension
                                         : Column::stretch);
    fault.rule = to_text(plan.citations->at(plan.elastic->limit->source));
    return fault;
}

} // namespace

void bind_elastic(const Rules& rules, LineFields& fields, LinePlan& plan) {
    const auto ratio = fields.share(Column::stretch);
    const bool pulled = plan.tension.basis != Tension::Basis::reference;
    if (ratio && pulled) {
        fields.add(Fault{Code::cannot_be_both,
                         "elastic takes its stretch or its tension, not both; leave one out"},
                   Column::stretch);
        return;
    }
    if (!ratio && !pulled) {
        return;
    }
    plan.elastic =
        ElasticRange{rules.find(FigureId::elastic_from), rules.find(FigureId::elastic_up_to),
                     rules.find(FigureId::elastic_limit), rules.find(FigureId::elastic_loss)};
    if (pulled) {
        bind_pull(fields, plan);
        return;
    }
    plan.working_strain = *ratio;
    plan.strain_source = cited_job;
}

void refuse_elastic_columns(LineFields& fields, const Rope& rope) {
    if (fields.share(Column::stretch)) {
        fields.add(Fault{Code::cannot_be_both, "only shock cord is pulled out by a stretch; for " +
                                                   std::string(name_of(rope.construction)) +
                                                   " give the tension at which its length holds"},
                   Column::stretch);
    }
}

std::optional<Fault> find_elastic(const LinePlan& plan, Piece& piece) {
    piece.elastic.reset();
    if (!plan.elastic) {
        return std::nullopt;
    }
    Elastic elastic;
    elastic.shortest = plan.working_strain;
    elastic.pull_shortest = pull_at(plan, elastic.shortest);
    const Length way = from_nanometres(piece.loaded);
    const Length relaxed = length_at(way, elastic.shortest, 0.0);
    elastic.relaxed = to_nanometres(relaxed);
    if (plan.travel) {
        elastic.longest = (way + *plan.travel) / relaxed - 1.0;
        elastic.pull_longest = pull_at(plan, *elastic.longest);
    }
    piece.elastic = elastic;
    const auto too_far = [&](Length pulled_out) {
        const Figure* limit = plan.elastic->limit;
        return limit != nullptr &&
               to_nanometres(pulled_out) > to_nanometres(relaxed * (1.0 + limit->number()));
    };
    if (too_far(way)) {
        return overstretched(plan, elastic.shortest, false);
    }
    if (plan.travel && too_far(way + *plan.travel)) {
        return overstretched(plan, *elastic.longest, true);
    }
    return std::nullopt;
}

void add_elastic_cautions(const LinePlan& plan, Piece& piece) {
    if (!piece.elastic) {
        return;
    }
    const auto& [from, up_to, limit, loss] = *plan.elastic;
    const auto add = [&](std::string_view text, const Figure& figure) {
        piece.cautions.push_back({{text, figure.source}, std::nullopt});
    };
    if (from != nullptr && piece.elastic->shortest < from->number()) {
        add(slack_caution, *from);
    }
    const double farthest = piece.elastic->longest.value_or(piece.elastic->shortest);
    if (up_to != nullptr && farthest > up_to->number()) {
        add(far_caution, *up_to);
    }
    if (loss != nullptr) {
        add(loss_caution, *loss);
    }
}

} // namespace libsplice
