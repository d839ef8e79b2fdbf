// Compares what a made line is with what it has to run over and through.
#include "libsplice/cut/judge/passage.h"

#include "libsplice/cut/layout.h"

namespace libsplice {

namespace {

constexpr std::string_view bury_on_sheave = "at full hoist the sheave lies on the bury: rope that "
                                            "is bent over the end of a taper breaks there; "
                                            "make the bury shorter, with the published minimum in "
                                            "mind, or lower the sheave's place on the line";
constexpr std::string_view cover_on_sheave_hoisted =
    "hoisted, the place where the cover goes in lies on the sheave: move the cover's end";
constexpr std::string_view cover_on_sheave_lowered =
    "lowered, the place where the cover goes in lies on the sheave: move the cover's end";
constexpr std::string_view cover_short_of_cleat =
    "the cover does not reach far enough beyond the cleat when hoisted: take less of it off";
constexpr std::string_view small_sheave = "the smallest sheave on its way is {1} and {2} is "
                                          "advised for this rope: it loses strength there "
                                          "and wears";
constexpr std::string_view too_thick_bury = "over the bury the rope is {1} thick, and the smallest "
                                            "thing that it has to pass is {2}: it will not run "
                                            "through";
constexpr std::string_view too_thick_knot = "the knot is about {1} across or more, and the "
                                            "smallest thing that it has to pass is {2}: it will "
                                            "not run through";
constexpr std::string_view small_stopper = "the stopper is about {1} across, and the hole is {2}: "
                                           "it may pull through; use a bigger knot, a "
                                           "ball or a washer";

// Distances run on the finished line, from the bearing point of end a.

bool bury_lies_on(const End& end, Length sheave) {
    return end.eye && end.bury && sheave >= end.eye->inside &&
           sheave <= end.eye->inside + end.bury->tail;
}

bool cover_end_lies_on(const End& end, Length sheave) {
    return end.cover && end.cover->end && end.cover->tail &&
           sheave >= *end.cover->end - *end.cover->tail && sheave <= *end.cover->end;
}

/// How thick an end is where it is thickest, and what that is.
struct Thickest {
    Length across;
    std::string_view caution;
    bool stops = false; ///< it is meant to stop at the hole
};

/// Three parts of rope side by side go through a round hole of this size at least: as many lie in
/// the neck of any loop or hitch.
constexpr double across_three = 2.1547;

std::optional<Thickest> thickest_of(const End& end, const Rope& rope) {
    if (end.bury && end.bury->over > Length()) {
        return Thickest{end.bury->over, too_thick_bury};
    }
    if (!end.knot) {
        return std::nullopt;
    }
    if (end.knot->ball) {
        return Thickest{*end.knot->ball, small_stopper, true};
    }
    if (end.knot->width) {
        return Thickest{*end.knot->width, small_stopper, true};
    }
    return Thickest{rope.counting_diameter() * across_three, too_thick_knot};
}

void add_hole_cautions(const BoundLine& line, std::vector<PieceCaution>& cautions) {
    if (!line.along.smallest_hole) {
        return;
    }
    const Length hole = *line.along.smallest_hole;
    for (const LineEnd which : both_ends) {
        const auto thickest = thickest_of(*line.end(which).allowance, *line.rope);
        if (!line.counts(which) || !thickest) {
            continue;
        }
        const bool goes_through = thickest->across <= hole;
        if (goes_through == thickest->stops) {
            TextAmounts amounts;
            amounts.push_back(amount_of(thickest->across));
            amounts.push_back(amount_of(hole));
            cautions.push_back({{thickest->caution, cited_geometry}, which, amounts});
        }
    }
}

} // namespace

void add_passage_cautions(const BoundLine& line, std::vector<PieceCaution>& cautions) {
    const AlongLine& along = line.along;
    const End& end = *line.end(LineEnd::a).allowance;
    const auto add = [&](std::string_view text, CitationId rule, LineEnd which) {
        cautions.push_back({{text, rule}, which});
    };
    if (along.headroom) {
        if (bury_lies_on(end, *along.headroom)) {
            add(bury_on_sheave, cited_geometry, LineEnd::a);
        }
        if (cover_end_lies_on(end, *along.headroom)) {
            add(cover_on_sheave_hoisted, cited_geometry, LineEnd::a);
        }
        if (along.travel && cover_end_lies_on(end, *along.headroom + *along.travel)) {
            add(cover_on_sheave_lowered, cited_geometry, LineEnd::a);
        }
    }
    if (line.route && line.route->least_sheave && along.advised_sheave &&
        *line.route->least_sheave < along.advised_sheave->value) {
        TextAmounts amounts;
        amounts.push_back(amount_of(*line.route->least_sheave));
        amounts.push_back(amount_of(along.advised_sheave->value));
        cautions.push_back({{small_sheave, along.advised_sheave->source}, {}, amounts});
    }
    const auto cover_end = end.cover ? end.cover->end : std::nullopt;
    if (along.cleat && cover_end && along.cover_at_cleat &&
        *along.cleat - *cover_end < along.cover_at_cleat->value) {
        add(cover_short_of_cleat, along.cover_at_cleat->source, LineEnd::a);
    }
    add_hole_cautions(line, cautions);
}

} // namespace libsplice
