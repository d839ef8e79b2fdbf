// Gathers the cautions of a line, and those of one of its pieces.
#include "libsplice/cut/judge/cautions.h"

#include "libsplice/cut/judge/elastic.h"
#include "libsplice/cut/judge/passage.h"
#include "libsplice/cut/layout.h"

#include <algorithm>
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
constexpr std::string_view wear_caution =
    "the rope for wear is {1}, and to make this end again takes {2}: it buys no re-make";
constexpr std::string_view milk_first_caution =
    "cover is milked out at this end, which is made first: make the other end first instead";
constexpr std::string_view eased_caution =
    "the length is that of the eased purchase, which carries no load: nothing has been taken off "
    "for the stretch at the tension that the job gives";
constexpr std::string_view first_stretch_caution =
    "no source gives the first stretch of this rope when it is new, and nothing is taken off for "
    "it: load it before it is marked, or the line comes out long";
constexpr std::string_view no_load_state_caution =
    "a line in this state carries little or no load, and {1} is taken off its length for the "
    "stretch at the tension that the job gives: leave the tension empty if it hangs slack";

constexpr std::string_view strength_caution =
    "no source gives the breaking strength of this rope, so nobody can say whether it holds the "
    "load of {1}: give its strength from the reel in hand, as rope_breaking";
constexpr std::string_view share_caution =
    "the load is {1} of what the line holds after its ends and knots, and {2} is the most that is "
    "published for such rope in use: take stronger rope, or ends that keep more of it";

constexpr std::string_view generic_caution =
    "the breaking strength of this rope is a cautious one for any rope of its construction, fibre "
    "and size: give its own from the reel in hand, as rope_breaking";
constexpr std::string_view generic_person_caution =
    "nothing but the strength on its own reel says what a rope that carries a person holds, and "
    "this one has only a generic strength: no design factor is worked out; give rope_breaking";

constexpr std::string_view sheet_load_limit =
    "the load of {1} is worked out, and holds for the apparent wind at which this sail is really "
    "carried: a boat of much form stability, or of two hulls, carries it longer and loads it more";
constexpr std::string_view mainsheet_load_limit =
    "the load of {1} is worked out for one part of the tackle, without friction, and holds for the "
    "apparent wind at which this sail is really carried";
constexpr std::string_view block_load_limit =
    "the load of {1} is worked out without friction, for what holds the block";
constexpr std::string_view tackle_load_limit =
    "the load of {1} is worked out for the hauling part, as it hauls; its source takes the same "
    "loss at every sheave";
constexpr std::string_view righting_load_limit =
    "the load of {1} is worked out for a boat of two hulls with the whole crew out on the wire, as "
    "its windward hull leaves the water; waves and gusts are not in it";

/// What limits a load that was worked out; empty: it is not one of these.
std::string_view limit_of_load(FormulaId formula) {
    switch (formula) {
    case FormulaId::sheet_load:
        return sheet_load_limit;
    case FormulaId::mainsheet_load:
        return mainsheet_load_limit;
    case FormulaId::block_load:
        return block_load_limit;
    case FormulaId::tackle_load:
        return tackle_load_limit;
    case FormulaId::righting_load:
        return righting_load_limit;
    default:
        return {};
    }
}

using Cautions = std::vector<PieceCaution>;

/// From the end to where the slip knot has to stand; 0 where the splice needs none.
Nanometres slack_cover_needed(const End& end) {
    return end.cover && end.cover->slip_knot ? to_nanometres(*end.cover->slip_knot) : 0;
}

void add_cautions_of_ends(const BoundEnds& ends, Cautions& cautions) {
    for (const LineEnd end : both_ends) {
        if (!ends.counts(end)) {
            continue;
        }
        for (const Caution& caution : ends.at(end).allowance->cautions) {
            if (caution.weight != Caution::Weight::person_only) {
                cautions.push_back({caution, end});
            }
        }
    }
}

void add_person_cautions(const BoundLine& line, Cautions& cautions) {
    if (line.person.carries && line.strength.load) {
        cautions.push_back({{fall_caution, cited_job}, std::nullopt});
        cautions.push_back({{stopper_caution, cited_job}, std::nullopt});
    }
}

/// Of a strength that is not the reel's own, where anything rests on it.
void add_generic_caution(const BoundLine& line, Cautions& cautions) {
    const Rope& rope = *line.rope;
    if (!rope.generic_breaking) {
        return;
    }
    if (line.person.carries) {
        cautions.push_back({{generic_person_caution, rope.breaking->source}, std::nullopt});
    } else if (line.strength.load || line.states.tension.basis == Tension::Basis::force) {
        cautions.push_back({{generic_caution, rope.breaking->source}, std::nullopt});
    }
}

/// Of a load that is much for the line, or cannot be judged.
void add_load_cautions(const BoundLine& line, Cautions& cautions) {
    const Strength& strength = line.strength;
    if (strength.load_working) {
        TextAmounts amounts;
        amounts.push_back(amount_of(*strength.load));
        cautions.push_back(
            {{limit_of_load(strength.load_working->working.formula), strength.load_working->source},
             std::nullopt,
             amounts});
    }
    add_generic_caution(line, cautions);
    if (strength.load && !line.rope->breaking) {
        TextAmounts amounts;
        amounts.push_back(amount_of(*strength.load));
        cautions.push_back({{strength_caution, cited_job}, std::nullopt, amounts});
    }
    if (strength.share && strength.working_share &&
        *strength.share > strength.working_share->value) {
        TextAmounts amounts;
        amounts.push_back(share_amount(*strength.share));
        amounts.push_back(share_amount(strength.working_share->value));
        cautions.push_back(
            {{share_caution, strength.working_share->source}, std::nullopt, amounts});
    }
}

/// Of the cover that splicing leaves slack.
void add_cover_cautions(const BoundLine& line, Cautions& cautions) {
    const auto& first = *line.first().allowance;
    if (first.milks_cover && line.last().allowance->milks_cover) {
        cautions.push_back({{milk_caution, cited_job}, std::nullopt});
    }
    if (line.states.milk_out && free_end(line.ends) == line.ends.first_end && first.made) {
        cautions.push_back({{milk_first_caution, cited_job}, line.ends.first_end});
    }
}

/// Of what the rope does before and after it is cut: washed, prestretched, eased.
void add_state_cautions(const BoundLine& line, Cautions& cautions) {
    const States& states = line.states;
    if (states.wash && !states.shrinkage) {
        cautions.push_back({{wash_caution, cited_job}, std::nullopt});
    }
    if (states.tension_left_out) {
        cautions.push_back({{eased_caution, cited_job}, std::nullopt});
    }
    if (!states.prestretched && !states.first_stretch &&
        !measured_relaxed(line.rope->construction)) {
        cautions.push_back({{first_stretch_caution, cited_job}, std::nullopt});
    }
}

void add_wear_cautions(const BoundLine& line, Cautions& cautions) {
    for (const Remakes& remakes : line.remakes) {
        if (remakes.count == 0) {
            TextAmounts amounts;
            amounts.push_back(amount_of(from_nanometres(line.fit.wear)));
            amounts.push_back(amount_of(from_nanometres(remakes.takes)));
            cautions.push_back({{wear_caution, cited_geometry}, remakes.end, amounts});
        }
    }
}

/// Where the fid of the end made last comes out inside the bury of the other.
void add_reach_caution(const BoundLine& line, Piece& piece) {
    const auto& first = *line.first().allowance;
    const auto& last = *line.last().allowance;
    if (first.bury_reach == 0 || last.fid_reach == 0 ||
        first.bury_reach + last.fid_reach <= room_between(line, piece)) {
        return;
    }
    piece.cautions.push_back(
        line.ends.closing ? PieceCaution{{closed_reach_caution, cited_geometry}, {}}
                          : PieceCaution{{reach_caution, cited_geometry}, line.ends.last_end()});
}

/// Whether the words name a state in which the line is let off.
bool is_let_off(std::string_view state) {
    constexpr std::array<std::string_view, 4> words{"eased", "lowered", "slack", "let out"};
    std::string lower(state);
    std::ranges::transform(lower, lower.begin(), [](char letter) {
        return letter >= 'A' && letter <= 'Z' ? static_cast<char>(letter - 'A' + 'a') : letter;
    });
    return std::ranges::any_of(
        words, [&](std::string_view word) { return lower.find(word) != std::string::npos; });
}

/// Of a tension that is given for a state without load.
void add_let_off_caution(const BoundLine& line, Piece& piece) {
    const auto stretch = std::ranges::find_if(piece.ledger, [](const LedgerRow& entry) {
        return entry.row.item == Item::stretch && entry.row.length < 0;
    });
    if (stretch == piece.ledger.end() || line.states.elastic || !is_let_off(piece.state)) {
        return;
    }
    TextAmounts amounts;
    amounts.push_back(amount_of(from_nanometres(-stretch->row.length)));
    piece.cautions.push_back({{no_load_state_caution, cited_job}, std::nullopt, amounts});
}

void add_short_cover_caution(const BoundLine& line, Piece& piece) {
    const auto& first = *line.first().allowance;
    const auto& last = *line.last().allowance;
    if (first.milks_cover && last.milks_cover &&
        slack_cover_needed(first) + slack_cover_needed(last) > piece.cut) {
        piece.cautions.push_back({{short_cover_caution, cited_geometry}, std::nullopt});
    }
}

} // namespace

std::vector<PieceCaution> cautions_of_line(const BoundLine& line) {
    Cautions cautions;
    add_cautions_of_ends(line.ends, cautions);
    add_load_cautions(line, cautions);
    add_person_cautions(line, cautions);
    add_cover_cautions(line, cautions);
    add_passage_cautions(line, cautions);
    add_state_cautions(line, cautions);
    add_wear_cautions(line, cautions);
    return cautions;
}

void add_cautions(const BoundLine& line, Piece& piece) {
    piece.cautions.assign(line.cautions.begin(), line.cautions.end());
    add_reach_caution(line, piece);
    add_short_cover_caution(line, piece);
    add_let_off_caution(line, piece);
    add_elastic_cautions(line, piece);
}

} // namespace libsplice
