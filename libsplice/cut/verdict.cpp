#include "libsplice/cut/verdict.h"

#include "libsplice/cut/elastic.h"
#include "libsplice/cut/layout.h"
#include "libsplice/cut/passage.h"
#include "libsplice/cut/spread.h"
#include "libsplice/mechanics/spread.h"
#include "libsplice/units/show.h"

#include <algorithm>
#include <cmath>

namespace libsplice {

namespace {

/// Whether the row can still move the finished length once the check has read right: what lies
/// beyond a throat or a knot's face comes off the tail, and the first end has been measured with
/// the line. An item made whole has no check, so all of its splices still count.
bool moves_finished_length(const LinePlan& plan, const LedgerRow& entry) {
    if (!entry.end || entry.row.item == Item::fitting || entry.row.item == Item::soft_eye) {
        return true;
    }
    const bool between_bearing_and_throat =
        entry.row.item == Item::take_up || entry.row.item == Item::cover_take_up ||
        entry.row.item == Item::setting || entry.row.item == Item::crossing ||
        entry.row.item == Item::throat_to_bearing || entry.row.item == Item::knot_to_bearing;
    return between_bearing_and_throat && (plan.closing || entry.end != plan.made_first);
}

constexpr std::string_view reach_caution = "the fid of the end made last comes out inside the "
                                           "first end's bury: bring it out at its bury end "
                                           "instead, or make the end with the longer bury last";
constexpr std::string_view closed_reach_caution =
    "the fid of either tail comes out inside the other's bury: bring it out at the bury end "
    "instead";
constexpr std::string_view fall_caution = "the design factor is for the load as stated; a person "
                                          "who falls on the line doubles or triples it";
constexpr std::string_view stopper_caution = "where a cleat holds this line, have a stopper beyond "
                                             "it, so that a slipping cleat cannot drop the "
                                             "person";
constexpr std::string_view milk_caution = "both ends are spliced under the cover: there is nowhere "
                                          "to milk the cover to, so keep the slack "
                                          "even as you work";
constexpr std::string_view wash_caution = "no source gives what this rope shrinks in the wash: "
                                          "wash and dry the new rope before it is marked";
constexpr std::string_view short_cover_caution =
    "the line is shorter than the slack cover that its two splices need: the slip knots would have "
    "to stand beyond each other. Splice one end only, or strip the cover at one";
constexpr std::string_view wear_caution = "rope for wear lies outside the end made last and is "
                                          "trimmed with it: keep it at an end that is only "
                                          "cut or whipped, or make that end first";
constexpr std::string_view milk_first_caution =
    "cover is milked out at this end, which is made first: make the other end first instead";
constexpr std::string_view eased_caution =
    "the length is that of the eased purchase, which carries no load: nothing has been taken off "
    "for the stretch at the tension that the job gives";
constexpr std::string_view bedding_caution =
    "no source gives the bedding-in of this rope: load it before it is marked";

/// From the end to where the slip knot has to stand; 0 where the splice needs none.
Nanometres slack_cover_needed(const Allowance& end) {
    return to_nanometres(Length(end.find(ValueName::slip_knot_m).value_or(0.0)));
}

Fault refusal_for_person(const LinePlan& plan, End end, const Caution& caution) {
    Fault fault{Code::refused_for_person,
                std::string(plan.end(end).kind->declaration.name) +
                    " is refused on a line that carries a person: " + std::string(caution.text)};
    fault.field = end == End::a ? "end_a" : "end_b";
    fault.rule = to_text(plan.citations->at(caution.rule));
    return fault;
}

} // namespace

std::optional<Fault> check_room(const LinePlan& plan, const Piece& piece, Nanometres finished) {
    const Nanometres room = room_between(plan, piece);
    const Nanometres needed =
        plan.first().allowance->bury_reach + plan.last().allowance->bury_reach;
    if (room > 0 && room >= needed) {
        return std::nullopt;
    }
    // Rope between the throats grows with the finished length at the rate of stretch and bedding.
    const double rate = plan.first().allowance->laid * (1.0 + plan.marking_strain) /
                        (1.0 + plan.working_strain) /
                        (1.0 + (plan.bedding ? plan.bedding->share : 0.0)) /
                        (1.0 + (plan.slack ? plan.slack->share : 0.0));
    const Nanometres millimetre = nanometres_per_metre / 1000;
    const double short_by = static_cast<double>(std::max<Nanometres>(needed, 1) - room);
    const Nanometres lacking = std::llround(std::ceil(short_by / rate));
    const Nanometres least = (finished + lacking + millimetre) / millimetre * millimetre;
    if (needed == 0) {
        return Fault{Code::nothing_left,
                     "nothing is left between the ends of a line of " +
                         show_length(finished, UnitSystem::metric) +
                         "; fittings and ends need at least " +
                         show_length(least, UnitSystem::metric),
                     {},
                     "length"};
    }
    return Fault{Code::buries_overlap,
                 "the buries need " + show_length(needed, UnitSystem::metric) +
                     " between the throats and there are " +
                     show_length(std::max<Nanometres>(room, 0), UnitSystem::metric) +
                     "; with these ends the line must be " +
                     show_length(least, UnitSystem::metric) +
                     " or longer. Else make an endless loop seized to length, shorten "
                     "the tails to the published minimum and lock-stitch them, or use thinner rope",
                 {},
                 "length"};
}

std::optional<double> chance_outside_tolerance(const LinePlan& plan, const Piece& piece) {
    if (!plan.tolerance) {
        return std::nullopt;
    }
    std::vector<LedgerRow> remaining;
    for (const LedgerRow& entry : piece.ledger) {
        if (moves_finished_length(plan, entry)) {
            remaining.push_back(entry);
        }
    }
    return chance_outside(from_nanometres(*plan.tolerance).si(), combined_spread(remaining));
}

void find_strength(const LinePlan& plan, Piece& piece) {
    piece.retained.reset();
    piece.weaker.reset();
    piece.design_factor.reset();
    for (const End end : both_ends) {
        const auto& retained = plan.end(end).allowance->retained;
        if (retained && (!piece.retained || retained->share < piece.retained->share)) {
            piece.retained = retained;
            piece.weaker = end;
        }
    }
    if (plan.load && plan.rope->breaking && plan.load->si() > 0.0) {
        const double share = piece.retained ? piece.retained->share : 1.0;
        piece.design_factor = share * (plan.rope->breaking->value / *plan.load);
    }
}

std::optional<Fault> collect_cautions(const LinePlan& plan, Piece& piece) {
    piece.cautions.clear();
    for (const End end : both_ends) {
        if (!plan.counts(end)) {
            continue;
        }
        for (const Caution& caution : plan.end(end).allowance->cautions) {
            if (plan.person && caution.weight != Caution::Weight::advice) {
                return refusal_for_person(plan, end, caution);
            }
            if (caution.weight != Caution::Weight::person_only) {
                piece.cautions.push_back({caution, end});
            }
        }
    }
    const auto& first = *plan.first().allowance;
    const auto& last = *plan.last().allowance;
    if (first.bury_reach != 0 && last.fid_reach != 0 &&
        first.bury_reach + last.fid_reach > room_between(plan, piece)) {
        piece.cautions.push_back(
            plan.closing ? PieceCaution{{closed_reach_caution, cited_geometry}, {}}
                         : PieceCaution{{reach_caution, cited_geometry}, other(plan.made_first)});
    }
    if (plan.person && plan.load) {
        piece.cautions.push_back({{fall_caution, cited_job}, std::nullopt});
        piece.cautions.push_back({{stopper_caution, cited_job}, std::nullopt});
    }
    if (first.milks_cover && last.milks_cover) {
        piece.cautions.push_back({{milk_caution, cited_job}, std::nullopt});
        if (slack_cover_needed(first) + slack_cover_needed(last) > piece.cut) {
            piece.cautions.push_back({{short_cover_caution, cited_geometry}, std::nullopt});
        }
    }
    if (plan.wash && !plan.shrinkage) {
        piece.cautions.push_back({{wash_caution, cited_job}, std::nullopt});
    }
    add_passage_cautions(plan, piece.cautions);
    add_elastic_cautions(plan, piece);
    if (plan.route && plan.route->tension_left_out) {
        piece.cautions.push_back({{eased_caution, cited_job}, std::nullopt});
    }
    if (plan.wear != 0 && last.made) {
        piece.cautions.push_back({{wear_caution, cited_geometry}, other(plan.made_first)});
    }
    if (plan.milk_out && free_end(plan) == plan.made_first && first.made) {
        piece.cautions.push_back({{milk_first_caution, cited_job}, free_end(plan)});
    }
    if (plan.fit == Fit::exact && !plan.bedded && !plan.bedding &&
        !measured_relaxed(plan.rope->construction)) {
        piece.cautions.push_back({{bedding_caution, cited_job}, std::nullopt});
    }
    return std::nullopt;
}

} // namespace libsplice
