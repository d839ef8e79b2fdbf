// Fits a figure of the tables to what a shop measured.
#include "libsplice/allowance/learn.h"

#include "libsplice/mechanics/rope/braid.h"

#include <gsl/assert>

#include <algorithm>
#include <array>
#include <cmath>

namespace libsplice {

namespace {

constexpr double grubbs_level = 0.05;

/// What is learnt, and what the tables say of it, in counting diameters.
struct Known {
    Learnable what = Learnable::knot;
    double length = 0.0;
    double spread = 0.0;
    BuriedTail tail = {};         ///< of a take-up
    double constant_spread = 0.0; ///< of a K that is measured once, without a spread of its own
};

Unexpected nothing(const Kind& kind, std::string_view why) {
    return Unexpected(Fault{Code::nothing_to_learn,
                            std::string(kind.declaration.name) + ": " + std::string(why)});
}

bool is_about(double a, double b) {
    return std::abs(a - b) <= 1e-6 * std::abs(b);
}

/// The take-up of one buried tail once it was loaded, where the kind's is that and no more. Pieces
/// are loaded before they are measured, so what draws out at first load is off, with its spread.
std::optional<Known> known_take_up(const End& end, const Rules& rules, const Rope& rope) {
    const Figure* spliced = rules.find(FigureId::spliced_constant);
    const auto taken = std::ranges::find(end.rows, Item::take_up, &Row::item);
    if (!end.bury || spliced == nullptr || taken == end.rows.end()) {
        return std::nullopt;
    }
    const auto drawn_out = std::ranges::find(end.rows, Item::settling, &Row::item);
    const BuryFacts& bury = *end.bury;
    const Length settled = bury.take_up + bury.settling;
    const bool by_two_rows = drawn_out != end.rows.end();
    // A kind with two tails has both in one row.
    const Nanometres of_rows = taken->length + (by_two_rows ? drawn_out->length : 0);
    const double spread = taken->sd + (by_two_rows ? drawn_out->sd : 0.0);
    const Length width = rope.counting_diameter();
    return Known{Learnable::take_up, settled / width,
                 spread * (settled / from_nanometres(of_rows)) / width.si(), bury.inside,
                 spliced->number_spread()};
}

Known of_figure(Learnable what, const Figure& figure, Length width) {
    return {what, figure.length(width) / width, figure.spread(width) / width};
}

std::optional<Known> known_figure(const Rules& rules, const Rope& rope) {
    const Length width = rope.counting_diameter();
    if (const Figure* figure = rules.find(FigureId::beyond_loop)) {
        return of_figure(Learnable::beyond_loop, *figure, width);
    }
    if (const Figure* figure = rules.find(FigureId::beyond_turns)) {
        return of_figure(Learnable::beyond_turns, *figure, width);
    }
    const Figure* knot = rules.find(FigureId::knot);
    const Figure* set = rules.find(FigureId::set);
    if (knot == nullptr || set == nullptr) {
        return std::nullopt;
    }
    const double tight = knot->length(width) / width;
    return Known{Learnable::knot, tight * set->number(), tight * set->number_spread()};
}

Result<Known> known_of(const Book& book, const Kind& kind, const Rope& rope) {
    const auto end = book.work_out(kind, rope, {});
    const auto rules = book.rules(kind, rope, {});
    if (!rules || (!end && end.error().code != Code::field_missing)) {
        return Unexpected(rules ? end.error() : rules.error());
    }
    if (end && end->bury) {
        if (const auto take_up = known_take_up(*end, *rules, rope)) {
            return *take_up;
        }
        return nothing(kind, "what it takes up is not that of one buried tail");
    }
    const auto figure = known_figure(*rules, rope);
    if (!figure) {
        return nothing(kind, "no figure of it depends on the hand that makes it");
    }
    if (end &&
        !(end->knot && is_about(end->knot->rope / rope.counting_diameter(), figure->length))) {
        return nothing(kind, "its knots are reckoned with those of another kind");
    }
    return *figure;
}

/// K of a braid that takes up `wanted` over a tail: take-up grows with K, so halving finds it.
/// Nothing where no braid takes up so much.
std::optional<double> constant_for(std::span<const BuriedPart> tail, Length wanted) {
    double low = 0.0;
    double high = 1.0; // a tail of the rope's own size does not go into such a braid
    for (int i = 0; i < 100; ++i) {
        const double middle = (low + high) / 2.0;
        const auto taken = take_up_over(tail, middle);
        (taken && *taken < wanted ? low : high) = middle;
    }
    const auto reached = take_up_over(tail, low);
    const bool found = reached && std::abs(*reached / wanted - 1.0) < 1e-9;
    return found ? std::optional(low) : std::nullopt;
}

/// The constant and its spread in place of lengths.
std::optional<Fault> fit_braid(Learnt& learnt, const Known& known, const Kind& kind, Length width) {
    const auto constant = constant_for(known.tail, learnt.sample.mean * width);
    if (!constant) {
        return Fault{Code::nothing_to_learn,
                     std::string(kind.declaration.name) +
                         ": no braid takes up so much over its tail; what is measured is how much "
                         "the rope over the bury shortens, nothing else"};
    }
    learnt.constant = *constant;
    if (learnt.own_spread) {
        const double least = learnt.sample.mean - learnt.spread;
        const auto less = least > 0.0 ? constant_for(known.tail, least * width) : 0.0;
        learnt.constant_spread = *constant - less.value_or(0.0);
        return std::nullopt;
    }
    const double less = std::max(0.0, *constant - known.constant_spread);
    learnt.spread = learnt.sample.mean - *take_up_over(known.tail, less) / width;
    return std::nullopt;
}

} // namespace

Result<Learnt> learn(const Book& book, const Kind& kind, const Rope& rope,
                     std::span<const double> used, double risk) {
    Expects(!used.empty() && risk > 0.0 && risk < 1.0);
    const auto known = known_of(book, kind, rope);
    if (!known) {
        return Unexpected(known.error());
    }
    Learnt learnt;
    learnt.what = known->what;
    learnt.sample = sample_of(used);
    learnt.tables = known->length;
    learnt.tables_spread = known->spread;
    learnt.spread = known->spread;
    learnt.outlier = outlier_of(used, grubbs_level);
    const double mean = learnt.sample.mean;
    if (used.size() > 1) {
        learnt.limit = prediction_limit(learnt.sample, 1.0 - risk);
    }
    // Pieces that read all alike say only that the tape was too coarse.
    learnt.own_spread = learnt.sample.spread > 1e-9 * mean;
    if (learnt.own_spread) {
        const double deviations = normal_quantile(1.0 - risk);
        learnt.spread =
            deviations > 0.0 ? (*learnt.limit - mean) / deviations : learnt.sample.spread;
    }
    learnt.constant = mean;
    learnt.constant_spread = learnt.spread;
    if (known->what == Learnable::take_up) {
        learnt.constant_spread = 0.0;
        if (auto fault = fit_braid(learnt, *known, kind, rope.counting_diameter())) {
            return Unexpected(*std::move(fault));
        }
    }
    return learnt;
}

} // namespace libsplice
