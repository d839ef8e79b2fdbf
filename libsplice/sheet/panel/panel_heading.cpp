#include "libsplice/sheet/panel/panel_heading.h"

#include "libsplice/sheet/panel/panel_facts.h"
#include "libsplice/sheet/panel/panel_route.h"
#include "libsplice/sheet/words/words.h"

namespace libsplice {

namespace {

std::string rope_of(const Piece& piece) {
    std::string text(piece.rope);
    for (const auto& [word, value] : {std::pair{"", piece.colour}, {"lot ", piece.lot}}) {
        if (!value.empty()) {
            text += ", " + std::string(word) + std::string(value);
        }
    }
    return text;
}

bool is_slack(const BoundLine& plan) {
    return plan.states.marking_basis == MarkingTension::Basis::slack;
}

bool is_pulled(const BoundLine& plan) {
    return plan.states.marking_tension > Force();
}

std::string how_to_mark(const BoundLine& plan, UnitSystem units) {
    if (is_pulled(plan)) {
        return "Mark with " + show_pull(plan.states.marking_tension, units) + " on the rope.";
    }
    return is_slack(plan) ? "Mark slack." : "Mark relaxed and straight.";
}

/// How a mark is put on so that it is still there when it is needed.
std::string_view marks_that_last(const Rope& rope) {
    if (rope.construction == Construction::wire) {
        return "tape round the wire";
    }
    return rope.fibre == Fibre::hmpe
               ? "a thread drawn through the rope; ink washes off"
               : "a thread, or tape folded to a flag on dark rope; ink washes off";
}

/// The pull that the finished length was asked at.
std::string tension_of(const BoundLine& plan, UnitSystem units) {
    switch (plan.states.tension.basis) {
    case Tension::Basis::force:
        return "at a pull of " + show_force(Force(plan.states.tension.value), units);
    case Tension::Basis::share:
        return "at " + show_share(plan.states.tension.value) + " of breaking strength";
    case Tension::Basis::reference:
        break;
    }
    if (plan.states.elastic) {
        return "its way where it is shortest, pulled out " + show_share(plan.states.working_strain);
    }
    if (plan.route && plan.route->eased) {
        return "eased, without load";
    }
    return measured_relaxed(plan.rope->construction) ? "relaxed and straight"
                                                     : "at the reference tension";
}

std::string fit_of(const Piece& piece, UnitSystem units) {
    const BoundLine& plan = *piece.line;
    const std::string last(letter_of(other(plan.ends.first_end)));
    switch (plan.fit.fit) {
    case Fit::trim_aboard:
        return "trim-aboard: end " + last + " is cut to fit aboard";
    case Fit::at_least:
        return "at-least: no shorter than this";
    case Fit::exact:
        break;
    }
    std::string text = "exact";
    if (plan.fit.tolerance) {
        text += ", " + show_length(*plan.fit.tolerance, units) + " either way";
    }
    if (piece.chance_outside) {
        text += "; chance of falling outside " + show_share(*piece.chance_outside);
    }
    if (const auto& cause = piece.chance_cause) {
        text += ", most of it from " + std::string(plan.names->of(cause->item)) + ": " +
                std::string(cause->cure) + ", and " + show_share(cause->after) + " is left";
    }
    return text;
}

/// Where the finished length starts and stops at an end.
std::string datum_of(const BoundEnd& plan, UnitSystem units) {
    std::string text(plan.kind->declaration.datum);
    if (plan.fitting_length) {
        text = "the working point of " + (plan.fitting.empty() ? "a fitting" : plan.fitting) +
               ", " + show_length(*plan.fitting_length, units) + " beyond the " + text;
    } else if (plan.pin_centre != 0) {
        text = "the pin's centre, " + show_length(plan.pin_centre, units) + " from the " + text;
    }
    return text;
}

/// Where the cover of a stripped line ends in one of its states.
std::string show_cover(const CoverPlace& place, UnitSystem units) {
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

void write_cover(Page& page, const AlongLine& along, UnitSystem units) {
    if (along.cover_hoisted) {
        page.fact("Cover ends",
                  "hoisted " + show_cover(*along.cover_hoisted, units) +
                      (along.cover_lowered ? "; lowered " + show_cover(*along.cover_lowered, units)
                                           : std::string()));
    }
}

} // namespace

std::string how_to_pull(const BoundLine& plan, UnitSystem units) {
    if (is_pulled(plan)) {
        return "Load to " + show_pull(plan.states.marking_tension, units) + ".";
    }
    return is_slack(plan) ? "Lay it slack." : "Lay it relaxed and straight.";
}

void write_title(Page& page, const Piece& piece) {
    page.rule('-');
    std::string title(piece.name.empty() ? "(no name)" : piece.name);
    if (!piece.boat.empty()) {
        title += "  |  " + std::string(piece.boat);
    }
    title += "  |  make " + std::to_string(piece.quantity);
    page.title(title);
}

void write_heading(Page& page, const Piece& piece, UnitSystem units) {
    const BoundLine& plan = *piece.line;
    page.large("CUT", show_length(piece.cut, units));
    page.fact("Rope", rope_of(piece));
    page.paragraph(how_to_mark(plan, units), 2);
    page.fact("Mark by", marks_that_last(*plan.rope));
    page.fact("Prestretched", plan.states.prestretched ? "yes" : "no");
    page.fact("Marks are for",
              "rope " + show_fine(plan.rope->counting_diameter(), units) + " in diameter");
    std::string finished = show_length(piece.finished.value_or(0), units);
    if (!piece.state.empty()) {
        finished += ", " + std::string(piece.state);
    }
    page.fact("Finished", finished + ", " + tension_of(plan, units));
    write_route(page, piece, units);
    page.fact("Fit", fit_of(piece, units));
    if (plan.ends.closing) {
        page.fact("Measured", datum_of(plan.end(*plan.ends.closing), units));
    } else {
        page.fact("From end a", datum_of(plan.end(LineEnd::a), units));
        page.fact("to end b", datum_of(plan.end(LineEnd::b), units));
    }
    if (!piece.pair.empty()) {
        page.fact("Pair", std::string(piece.pair) +
                              ": cut all lines of this pair from one lot, one after the other");
    }
    write_cover(page, plan.along, units);
    for (const Remakes& remakes : plan.remakes) {
        page.fact("Wear", show_length(plan.fit.wear, units) + " to make end " +
                              std::string(letter_of(remakes.end)) + " again, which takes " +
                              show_length(remakes.takes, units) + ": " +
                              std::to_string(remakes.count) +
                              (remakes.count == 1 ? " time" : " times"));
    }
    if (plan.along.sleeve) {
        page.fact("Sleeve", show_length(plan.along.sleeve->finished, units) + " long, from " +
                                show_length(plan.along.sleeve->from, units) +
                                " beyond the bearing point of end a; cut its rope " +
                                show_length(plan.along.sleeve->cut, units) +
                                ", for it gets shorter as it is opened over the line");
    }
    page.fact("Note", piece.note);
    if (plan.person.carries) {
        page.fact("Person", "this line carries a person: a competent person inspects it first");
    }
}

void write_refusal(Page& page, const Piece& piece, UnitSystem units) {
    page.large("NOT CUT", "");
    const Fault& fault = *piece.fault;
    page.fact("Why", fault.text);
    page.fact("Rule", fault.rule);
    page.fact("Field", fault.field);
    page.fact("At", to_text(fault.at));
    page.fact("Fault", std::to_string(static_cast<unsigned>(fault.code)));
    page.fact("Rope", rope_of(piece));
    if (piece.finished) {
        page.fact("Finished", show_length(*piece.finished, units));
    }
    page.fact("Pair", piece.pair);
    page.fact("Note", piece.note);
}

} // namespace libsplice
