// What is done at the bench and aboard, in the order of the work.
#include "libsplice/sheet/panel/card/card_steps.h"

#include "libsplice/sheet/panel/card/methods.h"
#include "libsplice/sheet/words/piece_text.h"

#include <algorithm>

namespace libsplice {

namespace {

CardStep own_step(const Piece& piece, const PieceStep& step, UnitSystem units) {
    CardStep made{step.end, step.action, {step.at.begin(), step.at.end()}, {}};
    append_step(made.text, piece, step, units);
    return made;
}

/// Steps of a method that follow each other on a piece.
struct Run {
    const Method* method = nullptr;
    LineEnd end{};
    std::size_t from = 0; ///< the first one's number on the method's sheet
    std::size_t to = 0;
};

/// The place of a step on its end's sheet; nothing if it has none.
std::optional<Run> run_of(const Piece& piece, const PieceStep& step, const Methods& methods) {
    const Method* method = step.end ? methods.find(piece, *step.end) : nullptr;
    if (method == nullptr) {
        return std::nullopt;
    }
    const Steps steps = piece.line->end(*step.end).allowance->steps;
    const auto found = std::ranges::find(steps, step.text, &Step::text);
    if (found == steps.end()) {
        return std::nullopt;
    }
    const auto number = static_cast<std::size_t>(found - steps.begin()) + 1;
    return Run{method, *step.end, number, number};
}

CardStep reference_to(const Run& run, const Piece& piece, UnitSystem units) {
    const bool whole = run.from == 1 && run.to == run.method->steps.size();
    const std::string which = whole                ? std::string()
                              : run.from == run.to ? ", step " + std::to_string(run.from)
                                                   : ", steps " + std::to_string(run.from) +
                                                         " to " + std::to_string(run.to);
    const std::string figures = figures_for_method(piece, run.end, run.from, run.to, units);
    return {run.end,
            Action::plain,
            {},
            run.method->kind + ": sheet " + run.method->id + which +
                (figures.empty() ? "." : ". " + figures + '.')};
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
    std::optional<Run> open;
    const auto close = [&] {
        if (open) {
            steps.push_back(reference_to(*open, piece, units));
            open.reset();
        }
    };
    for (const PieceStep& step : piece.steps) {
        const auto run = run_of(piece, step, methods);
        if (run && open && open->end == run->end && run->from == open->to + 1) {
            open->to = run->to;
            continue;
        }
        close();
        open = run;
        if (!run) {
            steps.push_back(own_step(piece, step, units));
        }
    }
    close();
    return steps;
}

} // namespace libsplice
