// What must be known before the work on a line begins, as labelled facts of its card.
#include "libsplice/sheet/panel/card/card_facts.h"

#include "libsplice/cut/layout.h"
#include "libsplice/sheet/words/route_words.h"
#include "libsplice/sheet/words/show_amounts.h"
#include "libsplice/sheet/words/words.h"

#include <algorithm>

namespace libsplice {

namespace {

bool is_slack(const BoundLine& line) {
    return line.states.marking_basis == MarkingTension::Basis::slack;
}

bool is_pulled(const BoundLine& line) {
    return line.states.marking_tension > Force();
}

/// Whether some of the line's marks lie on a tail that is thinned, strand by strand.
bool thins_a_tail(const BoundLine& line) {
    return std::ranges::any_of(both_ends, [&](LineEnd end) {
        const auto& marks = line.end(end).allowance->marks;
        return std::ranges::find(marks, MarkName::taper_start, &Mark::name) != marks.end();
    });
}

/// How a mark is put on so that it is still there when it is needed.
std::string_view marks_that_last(const Rope& rope) {
    if (rope.construction == Construction::wire) {
        return "tape round the wire";
    }
    return rope.fibre == Fibre::hmpe ? "a thread drawn through the rope; ink washes off"
                                     : "a thread, or tape folded to a flag on dark rope";
}

/// The pull that the finished length was asked at.
std::string state_of(const BoundLine& line, UnitSystem units) {
    switch (line.states.tension.basis) {
    case Tension::Basis::force:
        return "at a pull of " + show_force(Force(line.states.tension.value), units);
    case Tension::Basis::share:
        return "at " + show_share(line.states.tension.value) + " of its breaking strength";
    case Tension::Basis::reference:
        break;
    }
    if (line.states.elastic) {
        return "its shortest state, pulled out " + show_share(line.states.working_strain);
    }
    if (line.route && line.route->eased) {
        return "eased, without load";
    }
    return measured_relaxed(line.rope->construction) ? "relaxed and straight"
                                                     : "at the reference tension";
}

std::string fit_of(const Piece& piece, UnitSystem units) {
    const FitAndSpare& fit = piece.line->fit;
    const Nanometres finished = piece.finished.value_or(0);
    switch (fit.fit) {
    case Fit::trim_aboard:
        return "end " + std::string(letter_of(piece.line->ends.last_end())) +
               " is cut to fit aboard";
    case Fit::at_least:
        return "no shorter than this";
    case Fit::exact:
        break;
    }
    if (!fit.tolerance) {
        return "exact";
    }
    return "exact: " + show_length(finished - *fit.tolerance, units) + " to " +
           show_length(finished + *fit.tolerance, units);
}

/// The first stretch that is still in the rope when it is marked; 0: none, or not known.
Nanometres first_stretch_of(const Piece& piece) {
    const auto row = std::ranges::find(piece.ledger, Item::first_stretch,
                                       [](const LedgerRow& entry) { return entry.row.item; });
    return row == piece.ledger.end() ? 0 : -row->row.length;
}

std::string condition_of(const Piece& piece, UnitSystem units) {
    if (piece.line->states.prestretched) {
        return "prestretched: load it before you mark it";
    }
    const Nanometres gain = first_stretch_of(piece);
    return gain <= 0 ? "new"
                     : "new: it gains " + show_length(gain, units) +
                           " in its first loads, so the marks lie short by that";
}

void add_way(std::vector<CardFact>& facts, const BoundLine& line, UnitSystem units) {
    if (!line.route) {
        return;
    }
    const RouteLength& route = *line.route;
    facts.push_back({"Route", "along the rope's centreline" +
                                  (route.turns == 0 ? std::string()
                                                    : ", with " + turns_in_words(route, units))});
    if (route.tail_eased) {
        facts.push_back(
            {"Tail",
             show_length(*route.tail_eased, units) + " eased" +
                 (route.tail_hauled ? ", " + show_length(*route.tail_hauled, units) + " hauled"
                                    : std::string())});
    }
}

/// `30 % over its relaxed length, pulling 30 N`.
std::string pulled_out(double share, const std::optional<Force>& pull, UnitSystem units) {
    return show_number(share * 100.0, 1) + " % longer" +
           (pull ? ", pulling " + show_force(*pull, units) : "");
}

void add_elastic(std::vector<CardFact>& facts, const Piece& piece, UnitSystem units) {
    if (!piece.elastic) {
        return;
    }
    const Elastic& elastic = *piece.elastic;
    std::string text = show_length(elastic.relaxed, units) + " relaxed; shortest in use " +
                       pulled_out(elastic.shortest, elastic.pull_shortest, units);
    if (elastic.longest) {
        text += "; longest " + pulled_out(*elastic.longest, elastic.pull_longest, units);
    }
    facts.push_back({"Elastic", text});
}

void add_sleeve(std::vector<CardFact>& facts, const BoundLine& line, UnitSystem units) {
    if (!line.along.sleeve) {
        return;
    }
    const Sleeve& sleeve = *line.along.sleeve;
    facts.push_back({"Sleeve", "cut " + show_length(sleeve.cut, units) + " of it; opened it lies " +
                                   show_length(sleeve.finished, units) + " long, from " +
                                   show_length(sleeve.from, units) +
                                   " beyond the bearing point of end a"});
}

/// Where the cover of a stripped line ends in one of its states.
std::string cover_in_words(const CoverPlace& place, UnitSystem units) {
    const auto side = [&](Length length, std::string_view beyond, std::string_view short_of) {
        return show_length(length < Length() ? -length : length, units) + ' ' +
               std::string(length < Length() ? short_of : beyond);
    };
    std::string text;
    if (place.past_sheave) {
        text = side(*place.past_sheave, "past the sheave", "before the sheave");
    }
    if (place.at_cleat) {
        text += (text.empty() ? "" : ", ") +
                side(*place.at_cleat, "before the cleat", "past the cleat");
    }
    return text;
}

void add_cover(std::vector<CardFact>& facts, const AlongLine& along, UnitSystem units) {
    if (along.cover_hoisted) {
        facts.push_back(
            {"Cover ends",
             "hoisted " + cover_in_words(*along.cover_hoisted, units) +
                 (along.cover_lowered ? "; lowered " + cover_in_words(*along.cover_lowered, units)
                                      : std::string())});
    }
}

void add_remakes(std::vector<CardFact>& facts, const BoundLine& line, UnitSystem units) {
    for (const Remakes& remakes : line.remakes) {
        facts.push_back({"Wear", show_length(line.fit.wear, units) + " to make end " +
                                     std::string(letter_of(remakes.end)) + " again, which takes " +
                                     show_length(remakes.takes, units) + ": " +
                                     std::to_string(remakes.count) +
                                     (remakes.count == 1 ? " time" : " times")});
    }
}

/// Only what the pictures of the ends do not say: how a closed line is measured, and fittings.
std::string ends_in_words(const BoundLine& line, UnitSystem units) {
    if (line.ends.closing) {
        return datum_of(line.end(*line.ends.closing), units);
    }
    std::string text;
    for (const LineEnd end : {LineEnd::a, LineEnd::b}) {
        const BoundEnd& bound = line.end(end);
        if (bound.fitting_length || bound.pin_centre != 0) {
            text += (text.empty() ? "" : "; ") + std::string(letter_of(end)) + ": " +
                    datum_of(bound, units);
        }
    }
    return text;
}

} // namespace

std::string datum_of(const BoundEnd& end, UnitSystem units) {
    std::string text(end.kind->declaration.datum);
    if (end.fitting_length) {
        text = "the working point of " + (end.fitting.empty() ? "a fitting" : end.fitting) + ", " +
               show_length(*end.fitting_length, units) + " beyond the " + text;
    } else if (end.pin_centre != 0) {
        text = "the pin's centre, " + show_length(end.pin_centre, units) + " from the " + text;
    }
    return text;
}

std::vector<CardFact> facts_of(const Piece& piece, UnitSystem units) {
    const BoundLine& line = *piece.line;
    std::vector<CardFact> facts;
    facts.push_back({"Pull to mark at", is_pulled(line)
                                            ? show_pull(line.states.marking_tension, units)
                                        : is_slack(line) ? "none: slack"
                                                         : "none: relaxed and straight"});
    std::string finished = show_length(piece.finished.value_or(0), units);
    if (!piece.state.empty()) {
        finished += ", " + std::string(piece.state);
    }
    facts.push_back({"Finished", finished + ", " + state_of(line, units)});
    facts.push_back({"Fit", fit_of(piece, units)});
    facts.push_back({"Rope is", condition_of(piece, units)});
    if (!piece.fit_first.empty()) {
        facts.push_back({"Put on first", std::string(piece.fit_first)});
    }
    if (const std::string to = ends_in_words(line, units); !to.empty()) {
        facts.push_back({"Measured to", to});
    }
    facts.push_back(
        {"Mark with", std::string(marks_that_last(*line.rope)) +
                          (thins_a_tail(line) ? "; tape on a tail that is thinned" : "")});
    add_way(facts, line, units);
    add_elastic(facts, piece, units);
    add_sleeve(facts, line, units);
    add_cover(facts, line.along, units);
    add_remakes(facts, line, units);
    if (!piece.pair.empty()) {
        facts.push_back({"Pair", std::string(piece.pair) +
                                     ": cut its lines from one lot, one after the other"});
    }
    if (!piece.lot.empty()) {
        facts.push_back({"Lot", std::string(piece.lot)});
    }
    if (line.person.carries) {
        facts.push_back({"Carries a person",
                         "a competent person inspects it before use" +
                             (piece.strength.design_factor
                                  ? "; breaking strength over load " +
                                        show_number(*piece.strength.design_factor, 1)
                                  : std::string("; breaking strength over load not known"))});
    }
    if (!piece.note.empty()) {
        facts.push_back({"Note", std::string(piece.note)});
    }
    return facts;
}

} // namespace libsplice
