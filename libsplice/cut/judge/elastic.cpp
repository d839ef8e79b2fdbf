// How far elastic is pulled out at both ends of its travel, and what that asks of it.
#include "libsplice/cut/judge/elastic.h"

#include "libsplice/mechanics/rope/stretch.h"

namespace libsplice {

namespace {

constexpr std::string_view slack_caution =
    "where its way is shortest the elastic is pulled out less than its working range: it pulls "
    "little there and may hang slack";
constexpr std::string_view far_caution =
    "the elastic is pulled out beyond its working range: it ages sooner";
constexpr std::string_view limit_caution =
    "the elastic is pulled out {1} over its relaxed length where its way is longest, and it is the "
    "custom to stop at {2}: a cord of {3} relaxed would stay inside, pulled out {4} where its way "
    "is "
    "shortest; write that as its stretch";
constexpr std::string_view no_cord_caution =
    "the elastic is pulled out {1} over its relaxed length where its way is longest, and it is the "
    "custom to stop at {2}: its way grows so much that no cord stays inside; give it less travel "
    "or "
    "a longer way";
constexpr std::string_view loss_caution =
    "elastic loses some of its pull in its first weeks: make the end that is easy to reach last, "
    "and take it up there";

/// From the cord's own curve.
void set_pull(const Rope& rope, CellReader& cells, States& states) {
    if (!states.stretch) {
        cells.add(Fault{Code::stretch_missing,
                        "no source gives the pull of this shock cord; give its stretch instead, "
                        "as 30 %"},
                  Column::tension);
        return;
    }
    const auto strain = strain_at(*states.stretch, states.tension, rope);
    if (!strain) {
        cells.add(strain.error(), Column::tension);
        return;
    }
    states.working_strain = *strain;
    states.strain_source = states.stretch->source;
    states.strain_spread = states.stretch->spread;
    states.strain_origin = states.stretch->origin;
}

/// The cord's pull where it is pulled out by `strain`.
std::optional<Force> pull_at(const BoundLine& line, double strain) {
    const auto& stretch = line.states.stretch;
    const auto load = stretch ? stretch->curve.load_at(strain) : std::nullopt;
    if (!load || stretch->by_force) {
        return load ? std::optional(Force(*load)) : std::nullopt;
    }
    return line.rope->breaking ? std::optional(line.rope->breaking->value * *load) : std::nullopt;
}

/// The longest that the cord's way gets.
Length longest_way(const BoundLine& line, const Piece& piece) {
    return from_nanometres(piece.loaded) + line.along.travel.value_or(Length());
}

bool lies_beyond(const BoundLine& line, const Piece& piece, double limit) {
    const Length relaxed = from_nanometres(piece.elastic->relaxed);
    return to_nanometres(longest_way(line, piece)) > to_nanometres(relaxed * (1.0 + limit));
}

/// Names the cord that would just stay inside the limit, if there is one.
PieceCaution past_limit(const BoundLine& line, const Piece& piece, const Figure& limit) {
    const double farthest_out = piece.elastic->longest.value_or(piece.elastic->shortest);
    const Length cord = longest_way(line, piece) / (1.0 + limit.number());
    const double at_rest = from_nanometres(piece.loaded) / cord - 1.0;
    TextAmounts amounts;
    amounts.push_back(share_amount(farthest_out));
    amounts.push_back(share_amount(limit.number()));
    amounts.push_back(amount_of(cord));
    amounts.push_back(share_amount(at_rest));
    return {{at_rest > 0.0 ? limit_caution : no_cord_caution, limit.source}, std::nullopt, amounts};
}

} // namespace

void bind_elastic(const Rules& rules, const Rope& rope, CellReader& cells, States& states) {
    const auto ratio = cells.share(Column::stretch);
    const bool pulled = states.tension.basis != Tension::Basis::reference;
    if (ratio && pulled) {
        cells.add(Fault{Code::cannot_be_both,
                        "elastic takes its stretch or its tension, not both; leave one out"},
                  Column::stretch);
        return;
    }
    if (!ratio && !pulled) {
        return;
    }
    states.elastic =
        ElasticRange{rules.find(FigureId::elastic_from), rules.find(FigureId::elastic_up_to),
                     rules.find(FigureId::elastic_limit), rules.find(FigureId::elastic_loss)};
    if (pulled) {
        set_pull(rope, cells, states);
        return;
    }
    states.working_strain = *ratio;
    states.strain_source = cited_job;
}

void refuse_elastic_columns(CellReader& cells, const Rope& rope) {
    if (cells.share(Column::stretch)) {
        cells.add(Fault{Code::cannot_be_both, "only shock cord is pulled out by a stretch; for " +
                                                  std::string(name_of(rope.construction)) +
                                                  " give the tension at which its length holds"},
                  Column::stretch);
    }
}

std::optional<Elastic> elastic_of(const BoundLine& line, Nanometres loaded) {
    if (!line.states.elastic) {
        return std::nullopt;
    }
    Elastic elastic;
    elastic.shortest = line.states.working_strain;
    elastic.pull_shortest = pull_at(line, elastic.shortest);
    const Length way = from_nanometres(loaded);
    const Length relaxed = length_at(way, elastic.shortest, 0.0);
    elastic.relaxed = to_nanometres(relaxed);
    if (const auto& travel = line.along.travel) {
        elastic.longest = (way + *travel) / relaxed - 1.0;
        elastic.pull_longest = pull_at(line, *elastic.longest);
    }
    return elastic;
}

void add_elastic_cautions(const BoundLine& line, Piece& piece) {
    if (!piece.elastic) {
        return;
    }
    const auto& [from, up_to, limit, loss] = *line.states.elastic;
    const auto add = [&](std::string_view text, const Figure& figure) {
        piece.cautions.push_back({{text, figure.source}, std::nullopt});
    };
    if (from != nullptr && piece.elastic->shortest < from->number()) {
        add(slack_caution, *from);
    }
    const double most = piece.elastic->longest.value_or(piece.elastic->shortest);
    if (limit != nullptr && lies_beyond(line, piece, limit->number())) {
        piece.cautions.push_back(past_limit(line, piece, *limit));
    } else if (up_to != nullptr && most > up_to->number()) {
        add(far_caution, *up_to);
    }
    if (loss != nullptr) {
        add(loss_caution, *loss);
    }
}

} // namespace libsplice
