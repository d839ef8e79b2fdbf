// What is done at the bench and aboard, in the order of the work.
#include "libsplice/sheet/panel/card/card_steps.h"

#include "libsplice/sheet/panel/card/card_facts.h"
#include "libsplice/sheet/panel/card/methods.h"
#include "libsplice/sheet/panel/panel_marks.h"
#include "libsplice/sheet/words/piece_text.h"
#include "libsplice/sheet/words/words.h"

#include <algorithm>

namespace libsplice {

namespace {

constexpr Nanometres too_little_to_show = nanometres_per_metre / 2000;

void add_end(std::vector<CardStep>& steps, const Piece& piece, LineEnd end, const Methods& methods,
             UnitSystem units) {
    if (!piece.line->counts(end)) {
        return;
    }
    if (const Method* method = methods.find(piece, end)) {
        const std::string figures = figures_for_method(piece, end, units);
        steps.push_back({end,
                         Action::plain,
                         {},
                         "Make the " + method->kind + " as on sheet " + method->id +
                             (figures.empty() ? "." : ": " + figures + ".")});
        return;
    }
    const auto marks = marks_of(piece, end);
    const TemplateContext context = filling_of(piece, end, units);
    for (const Step& step : context.allowance.steps) {
        CardStep made{end, step.action, numbers_of(step, marks), {}};
        append_filled(made.text, step.text, context);
        steps.push_back(std::move(made));
    }
}

void add_check(std::vector<CardStep>& steps, const Piece& piece, UnitSystem units) {
    if (!piece.check) {
        return;
    }
    const Nanometres reads = piece.check->reads;
    const BoundEnd& last = piece.line->end(piece.check->to);
    std::string text = how_to_pull(*piece.line, units) + " From the bearing point of end " +
                       std::string(letter_of(piece.check->from)) + " to the " +
                       standing_mark_of(*last.allowance, *piece.line->names) + " mark of end " +
                       std::string(letter_of(piece.check->to)) + " must read " +
                       show_length(reads, units);
    if (const auto& tolerance = piece.line->fit.tolerance) {
        text += ": go from " + show_length(reads - *tolerance, units) + " to " +
                show_length(reads + *tolerance, units);
    }
    steps.push_back({std::nullopt, Action::measure, {}, text + "."});
}

void add_trim(std::vector<CardStep>& steps, const Piece& piece, UnitSystem units) {
    if (piece.over < too_little_to_show) {
        return;
    }
    const LineEnd last = piece.line->ends.last_end();
    const bool aboard = !piece.check;
    steps.push_back({last,
                     aboard ? Action::cut_aboard : Action::trim,
                     {},
                     "Trim the last " + show_length(piece.over, units) +
                         (aboard ? " once the line has been tried aboard." : " after the check.")});
}

} // namespace

std::string marks_named(const CardStep& step) {
    if (step.at.empty() || step.action == Action::mark) {
        return {};
    }
    std::string text = step.at.size() == 1 ? "mark " : "marks ";
    for (std::size_t i = 0; i < step.at.size(); ++i) {
        text += (i == 0 ? "" : ", ") + std::to_string(step.at[i]);
    }
    return text;
}

std::vector<CardStep> steps_of(const Piece& piece, const Methods& methods, UnitSystem units) {
    std::vector<CardStep> steps;
    if (!piece.fit_first.empty()) {
        steps.push_back({std::nullopt,
                         Action::fit_first,
                         {},
                         "Put on the rope now: " + std::string(piece.fit_first) + "."});
    }
    add_end(steps, piece, piece.line->ends.first_end, methods, units);
    add_check(steps, piece, units);
    add_end(steps, piece, piece.line->ends.last_end(), methods, units);
    add_trim(steps, piece, units);
    return steps;
}

} // namespace libsplice
