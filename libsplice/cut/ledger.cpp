// Adds a line up: what its length says, its states, its ends, its spare and the rounding.
#include "libsplice/cut/ledger.h"

#include "libsplice/cut/layout.h"
#include "libsplice/cut/spread.h"
#include "libsplice/mechanics/chance/spread.h"
#include "libsplice/mechanics/rope/stretch.h"

#include <algorithm>
#include <cmath>

namespace libsplice {

namespace {

class Ledger {
  public:
    explicit Ledger(std::vector<LedgerRow>& rows) : rows_(rows) {}

    void add(Item item, Nanometres length, CitationId source, const Working& working,
             std::optional<LineEnd> end) {
        add(Row{item, Group::own, SpreadOrigin::none, source, length, 0.0, working}, end);
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

double in_metres(Nanometres length) {
    return from_nanometres(length).si();
}

/// What the job's length says, brought to the rope's bearing points.
void add_length(Ledger& ledger, const BoundLine& line, Nanometres finished) {
    const auto measured = [&](Item item, Nanometres length, FormulaId formula) {
        const double limit =
            line.states.tape.fixed.si() + line.states.tape.share * std::abs(in_metres(length));
        return Row{item,         Group::tape, SpreadOrigin::printed_range,
                   cited_job,    length,      rectangular_spread(limit),
                   {formula, {}}};
    };
    Row asked = measured(Item::finished_length, finished,
                         line.route ? FormulaId::from_route : FormulaId::as_job);
    asked.source = line.route ? cited_geometry : cited_job;
    ledger.add(asked, {});
    for (const LineEnd end : both_ends) {
        if (const auto fitting = line.end(end).fitting_length) {
            ledger.add(measured(Item::fitting, -*fitting, FormulaId::less_fitting), end);
        }
        if (const Nanometres beyond = line.end(end).pin_centre; beyond != 0) {
            ledger.add(Item::pin_centre, beyond, cited_geometry,
                       {FormulaId::half_pin, {in_metres(beyond * 2)}}, end);
        }
    }
    if (const int laid = line.first().allowance->laid; line.ends.closing && laid > 1) {
        const double further = laid - 1;
        ledger.add(Item::further_parts, ledger.sum() * (laid - 1), cited_geometry,
                   {FormulaId::further_parts, {further, in_metres(ledger.sum())}},
                   line.ends.closing);
    }
}

Nanometres share_of(Nanometres length, double factor) {
    return std::llround(static_cast<double>(length) * factor);
}

/// Rope that will be washed is cut longer, so that it comes out right once it has shrunk.
void add_shrinkage(Ledger& ledger, const LengthShare& shrinkage) {
    const Nanometres loaded = ledger.sum();
    ledger.add(Row{Item::shrinkage,
                   Group::own,
                   shrinkage.origin,
                   shrinkage.source,
                   share_of(loaded, 1.0 / (1.0 - shrinkage.share) - 1.0),
                   in_metres(loaded) * shrinkage.sd,
                   {FormulaId::shortening, {in_metres(loaded), shrinkage.share}}},
               {});
}

/// From the state that was asked for to the rope on the bench; on the loaded path only.
void add_states(Ledger& ledger, const BoundLine& line) {
    const Nanometres unloaded = line.route ? line.route->unloaded : 0;
    const Nanometres loaded = ledger.sum() - unloaded;
    const double factor =
        length_at(metres(1.0), line.states.working_strain, line.states.marking_strain).si();
    if (const Nanometres change = share_of(loaded, factor - 1.0); change != 0) {
        // Both strains err together: the spread is that of their difference.
        const double sd = line.states.strain_spread * std::abs(in_metres(change)) /
                          (1.0 + line.states.working_strain);
        ledger.add(
            Row{Item::stretch,
                Group::own,
                line.states.strain_origin,
                line.states.strain_source,
                change,
                sd,
                {FormulaId::stretch,
                 {in_metres(loaded), line.states.marking_strain, line.states.working_strain}}},
            {});
    }
    const auto add_share = [&](Item item, const LengthShare& share, Nanometres at_marking) {
        ledger.add(Row{item,
                       Group::own,
                       share.origin,
                       share.source,
                       share_of(at_marking, 1.0 / (1.0 + share.share) - 1.0),
                       in_metres(at_marking) * share.sd,
                       {FormulaId::lengthening, {in_metres(at_marking), share.share}}},
                   {});
    };
    if (line.states.first_stretch) {
        add_share(Item::first_stretch, *line.states.first_stretch, ledger.sum() - unloaded);
    }
    if (line.states.slack) {
        add_share(Item::slack, *line.states.slack, ledger.sum());
    }
    if (line.states.shrinkage) {
        add_shrinkage(ledger, *line.states.shrinkage);
    }
}

void add_end(Ledger& ledger, const BoundEnds& ends, LineEnd end) {
    if (!ends.counts(end)) {
        return;
    }
    for (const Row& row : ends.at(end).allowance->rows) {
        ledger.add(row, end);
    }
}

void add_milk_out(Ledger& ledger, const BoundLine& line, Nanometres loaded) {
    if (!line.states.milk_out) {
        return;
    }
    const Nanometres by_share = share_of(loaded, line.states.milk_out->share);
    ledger.add(Row{Item::milk_out,
                   Group::own,
                   line.states.milk_out->origin,
                   line.states.milk_out->source,
                   std::max(by_share, line.states.least_milk_out),
                   in_metres(loaded) * line.states.milk_out->sd,
                   {FormulaId::milk_out,
                    {line.states.milk_out->share, in_metres(loaded),
                     in_metres(line.states.least_milk_out)}}},
               free_end(line.ends));
}

/// Rope outside the tails: what is kept, and what is over at the end made last.
void add_over(Ledger& ledger, const BoundLine& line, const std::vector<LedgerRow>& rows) {
    const LineEnd last = line.ends.last_end();
    const Working as_job(FormulaId::as_job, {});
    if (line.fit.extra != 0) {
        ledger.add(Item::extra, line.fit.extra, cited_job, as_job, line.fit.kept_at);
    }
    if (line.fit.wear != 0) {
        ledger.add(Item::wear, line.fit.wear, cited_job, as_job, line.fit.kept_at);
    }
    if (line.fit.spare) {
        ledger.add(Item::spare, *line.fit.spare, cited_job, as_job, last);
    } else {
        const double spread = combined_spread(rows);
        ledger.add(Item::spare, to_nanometres(Length(line.fit.spare_quantile * spread)),
                   cited_computed, {FormulaId::spare, {line.fit.spare_quantile, spread}}, last);
    }
    const Nanometres over_step = ledger.sum() % line.fit.step;
    ledger.add(Item::rounding, over_step == 0 ? 0 : line.fit.step - over_step, cited_computed,
               {FormulaId::rounding, {in_metres(line.fit.step)}}, last);
}

/// Rope outside the tail of one end: it lies nearer to the cut end than any of the end's own marks.
Nanometres outside_tail(std::span<const LedgerRow> ledger, LineEnd end) {
    Nanometres outside = 0;
    for (const LedgerRow& entry : ledger) {
        if (entry.end == end && lies_outside_tail(entry.row.item)) {
            outside += entry.row.length;
        }
    }
    return outside;
}

} // namespace

void write_ledger(const BoundLine& line, Nanometres finished, Piece& piece) {
    Ledger ledger(piece.ledger);
    add_length(ledger, line, finished);
    const Nanometres loaded = ledger.sum();
    add_states(ledger, line);
    add_end(ledger, line.ends, line.ends.first_end);
    add_milk_out(ledger, line, loaded);
    add_end(ledger, line.ends, line.ends.last_end());
    add_over(ledger, line, piece.ledger);
    piece.loaded = loaded;
    piece.cut = ledger.sum();
    for (const LineEnd end : both_ends) {
        piece.outside_tails[static_cast<std::size_t>(end)] = outside_tail(piece.ledger, end);
    }
}

} // namespace libsplice
