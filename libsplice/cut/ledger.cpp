#include "libsplice/cut/ledger.h"

#include "libsplice/cut/cautions.h"
#include "libsplice/cut/elastic.h"
#include "libsplice/cut/layout.h"
#include "libsplice/cut/spread.h"
#include "libsplice/cut/verdict.h"
#include "libsplice/mechanics/chance/spread.h"
#include "libsplice/mechanics/rope/stretch.h"

#include <algorithm>
#include <cmath>

namespace libsplice {

namespace {

class Ledger {
  public:
    explicit Ledger(std::vector<LedgerRow>& rows) : rows_(rows) { rows_.clear(); }

    void add(Item item, Nanometres length, CitationId source, std::optional<LineEnd> end = {}) {
        add(Row{item, Group::own, SpreadOrigin::none, source, length, 0.0}, end);
    }
    void add(const Row& row, std::optional<LineEnd> end) {
        rows_.push_back({row, end});
        sum_ += row.length;
    }
    [[nodiscard]] Nanometres sum() const { return sum_; }

  private:
    std::vector<LedgerRow>& rows_;
    Nanometres sum_ = 0;
};

/// What the job's length says, brought to the rope's bearing points.
void add_length(Ledger& ledger, const LinePlan& plan, Nanometres finished) {
    const auto measured = [&](Item item, Nanometres length) {
        const double limit =
            plan.tape.fixed.si() + plan.tape.share * std::abs(from_nanometres(length).si());
        return Row{item,      Group::tape, SpreadOrigin::printed_range,
                   cited_job, length,      rectangular_spread(limit)};
    };
    Row asked = measured(Item::finished_length, finished);
    asked.source = plan.route ? cited_geometry : cited_job;
    ledger.add(asked, {});
    for (const LineEnd end : both_ends) {
        if (const auto fitting = plan.end(end).fitting_length) {
            ledger.add(measured(Item::fitting, -*fitting), end);
        }
        if (const Nanometres beyond = plan.end(end).pin_centre; beyond != 0) {
            ledger.add(Item::pin_centre, beyond, cited_geometry, end);
        }
    }
    if (const int laid = plan.first().allowance->laid; plan.closing && laid > 1) {
        ledger.add(Item::further_parts, ledger.sum() * (laid - 1), cited_geometry, plan.closing);
    }
}

Nanometres share_of(Nanometres length, double factor) {
    return std::llround(static_cast<double>(length) * factor);
}

/// Rope that will be washed is cut longer, so that it comes out right once it has shrunk.
void add_shrinkage(Ledger& ledger, const LengthShare& shrinkage) {
    const Nanometres loaded = ledger.sum();
    ledger.add(Row{Item::shrinkage, Group::own, shrinkage.origin, shrinkage.source,
                   share_of(loaded, 1.0 / (1.0 - shrinkage.share) - 1.0),
                   from_nanometres(loaded).si() * shrinkage.sd},
               {});
}

/// From the state that was asked for to the rope on the bench; on the loaded path only.
void add_states(Ledger& ledger, const LinePlan& plan) {
    const Nanometres unloaded = plan.route ? plan.route->unloaded : 0;
    const Nanometres loaded = ledger.sum() - unloaded;
    const double factor = (1.0 + plan.marking_strain) / (1.0 + plan.working_strain);
    if (const Nanometres change = share_of(loaded, factor - 1.0); change != 0) {
        // Both strains err together: the spread is that of their difference.
        const double sd = plan.strain_spread * std::abs(from_nanometres(change).si()) /
                          (1.0 + plan.working_strain);
        ledger.add(
            Row{Item::stretch, Group::own, plan.strain_origin, plan.strain_source, change, sd}, {});
    }
    const auto add_share = [&](Item item, const LengthShare& share, Nanometres at_marking) {
        ledger.add(Row{item, Group::own, share.origin, share.source,
                       share_of(at_marking, 1.0 / (1.0 + share.share) - 1.0),
                       from_nanometres(at_marking).si() * share.sd},
                   {});
    };
    if (plan.first_stretch) {
        add_share(Item::first_stretch, *plan.first_stretch, ledger.sum() - unloaded);
    }
    if (plan.slack) {
        add_share(Item::slack, *plan.slack, ledger.sum());
    }
    if (plan.shrinkage) {
        add_shrinkage(ledger, *plan.shrinkage);
    }
}

void add_end(Ledger& ledger, const LinePlan& plan, LineEnd end) {
    if (!plan.counts(end)) {
        return;
    }
    for (const Row& row : plan.end(end).allowance->rows) {
        ledger.add(row, end);
    }
}

void add_milk_out(Ledger& ledger, const LinePlan& plan, Nanometres loaded) {
    if (!plan.milk_out) {
        return;
    }
    const Nanometres by_share = share_of(loaded, plan.milk_out->share);
    ledger.add(Row{Item::milk_out, Group::own, plan.milk_out->origin, plan.milk_out->source,
                   std::max(by_share, plan.least_milk_out),
                   from_nanometres(loaded).si() * plan.milk_out->sd},
               free_end(plan));
}

/// Rope outside the tail of the end made last.
void add_over(Ledger& ledger, const LinePlan& plan, const std::vector<LedgerRow>& rows) {
    const auto last = other(plan.first_end);
    if (plan.extra != 0) {
        ledger.add(Item::extra, plan.extra, cited_job, last);
    }
    if (plan.wear != 0) {
        ledger.add(Item::wear, plan.wear, cited_job, last);
    }
    const Nanometres spare =
        plan.spare.value_or(to_nanometres(Length(plan.spare_quantile * combined_spread(rows))));
    ledger.add(Item::spare, spare, plan.spare ? cited_job : cited_computed, last);
    const Nanometres over_step = ledger.sum() % plan.step;
    ledger.add(Item::rounding, over_step == 0 ? 0 : plan.step - over_step, cited_computed, last);
}

} // namespace

std::optional<Fault> fold(const LinePlan& plan, Nanometres finished, Piece& piece) {
    Ledger ledger(piece.ledger);
    add_length(ledger, plan, finished);
    const Nanometres loaded = ledger.sum();
    add_states(ledger, plan);
    add_end(ledger, plan, plan.first_end);
    add_milk_out(ledger, plan, loaded);
    add_end(ledger, plan, other(plan.first_end));
    add_over(ledger, plan, piece.ledger);

    piece.plan = &plan;
    piece.loaded = loaded;
    piece.cut = ledger.sum();
    piece.over = outside_tail(piece.ledger, other(plan.first_end));
    if (auto fault = check_room(plan, piece, finished)) {
        return fault;
    }
    if (auto fault = find_elastic(plan, piece)) {
        return fault;
    }
    place_marks(plan, piece);
    piece.check = check_figure(plan, piece);
    piece.outside = chance_outside_tolerance(plan, piece);
    find_strength(plan, piece);
    collect_cautions(plan, piece);
    return refuse_for_person(plan);
}

} // namespace libsplice
