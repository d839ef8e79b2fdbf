#include "libsplice/cut/cautions.h"

#include "libsplice/cut/elastic.h"
#include "libsplice/cut/layout.h"
#include "libsplice/cut/passage.h"

#include <string>

namespace libsplice {

namespace {

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
constexpr std::string_view first_stretch_caution =
    "no source gives the first stretch of this rope: load it before it is marked";

/// From the end to where the slip knot has to stand; 0 where the splice needs none.
Nanometres slack_cover_needed(const End& end) {
    return to_nanometres(Length(end.find(ValueName::slip_knot_m).value_or(0.0)));
}

Fault refusal(const LinePlan& plan, LineEnd end, const Caution& caution) {
    Fault fault{Code::refused_for_person,
                std::string(plan.end(end).kind->declaration.name) +
                    " is refused on a line that carries a person: " + std::string(caution.text)};
    fault.field = end == LineEnd::a ? "end_a" : "end_b";
    fault.rule = to_text(plan.citations->at(caution.rule));
    return fault;
}

void add_cautions_of_ends(const LinePlan& plan, Piece& piece) {
    for (const LineEnd end : both_ends) {
        if (!plan.counts(end)) {
            continue;
        }
        for (const Caution& caution : plan.end(end).allowance->cautions) {
            if (caution.weight != Caution::Weight::person_only) {
                piece.cautions.push_back({caution, end});
            }
        }
    }
}

/// Where the fid of the end made last comes out inside the bury of the other.
void add_reach_caution(const LinePlan& plan, Piece& piece) {
    const auto& first = *plan.first().allowance;
    const auto& last = *plan.last().allowance;
    if (first.bury_reach == 0 || last.fid_reach == 0 ||
        first.bury_reach + last.fid_reach <= room_between(plan, piece)) {
        return;
    }
    piece.cautions.push_back(
        plan.closing ? PieceCaution{{closed_reach_caution, cited_geometry}, {}}
                     : PieceCaution{{reach_caution, cited_geometry}, other(plan.first_end)});
}

void add_person_cautions(const LinePlan& plan, Piece& piece) {
    if (plan.person && plan.load) {
        piece.cautions.push_back({{fall_caution, cited_job}, std::nullopt});
        piece.cautions.push_back({{stopper_caution, cited_job}, std::nullopt});
    }
}

/// Of the cover that splicing leaves slack.
void add_cover_cautions(const LinePlan& plan, Piece& piece) {
    const auto& first = *plan.first().allowance;
    const auto& last = *plan.last().allowance;
    if (first.milks_cover && last.milks_cover) {
        piece.cautions.push_back({{milk_caution, cited_job}, std::nullopt});
        if (slack_cover_needed(first) + slack_cover_needed(last) > piece.cut) {
            piece.cautions.push_back({{short_cover_caution, cited_geometry}, std::nullopt});
        }
    }
    if (plan.milk_out && free_end(plan) == plan.first_end && first.made) {
        piece.cautions.push_back({{milk_first_caution, cited_job}, free_end(plan)});
    }
}

/// Of what the rope does before and after it is cut: washed, prestretched, eased.
void add_state_cautions(const LinePlan& plan, Piece& piece) {
    if (plan.wash && !plan.shrinkage) {
        piece.cautions.push_back({{wash_caution, cited_job}, std::nullopt});
    }
    if (plan.route && plan.route->tension_left_out) {
        piece.cautions.push_back({{eased_caution, cited_job}, std::nullopt});
    }
    if (plan.fit == Fit::exact && !plan.prestretched && !plan.first_stretch &&
        !measured_relaxed(plan.rope->construction)) {
        piece.cautions.push_back({{first_stretch_caution, cited_job}, std::nullopt});
    }
}

void add_wear_caution(const LinePlan& plan, Piece& piece) {
    if (plan.wear != 0 && plan.last().allowance->made) {
        piece.cautions.push_back({{wear_caution, cited_geometry}, other(plan.first_end)});
    }
}

} // namespace

std::optional<Fault> refuse_for_person(const LinePlan& plan) {
    if (!plan.person) {
        return std::nullopt;
    }
    for (const LineEnd end : both_ends) {
        if (!plan.counts(end)) {
            continue;
        }
        for (const Caution& caution : plan.end(end).allowance->cautions) {
            if (caution.weight != Caution::Weight::advice) {
                return refusal(plan, end, caution);
            }
        }
    }
    return std::nullopt;
}

void collect_cautions(const LinePlan& plan, Piece& piece) {
    piece.cautions.clear();
    add_cautions_of_ends(plan, piece);
    add_reach_caution(plan, piece);
    add_person_cautions(plan, piece);
    add_cover_cautions(plan, piece);
    add_passage_cautions(plan, piece.cautions);
    add_elastic_cautions(plan, piece);
    add_state_cautions(plan, piece);
    add_wear_caution(plan, piece);
}

} // namespace libsplice
