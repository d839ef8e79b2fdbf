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
constexpr std::string_view small_sheave =
    "the route turns on a sheave that is smaller than is advised for this rope: it loses strength "
    "there and wears";
constexpr std::string_view too_thick = "the rope is thicker over the bury than the smallest thing "
                                       "that it has to pass: it will not run "
                                       "through";

// Distances run on the finished line, from the bearing point of end a.

bool bury_lies_on(const End& end, Length sheave) {
    return end.eye && end.bury && sheave >= end.eye->inside &&
           sheave <= end.eye->inside + end.bury->tail;
}

bool cover_end_lies_on(const End& end, Length sheave) {
    return end.cover && end.cover->end && end.cover->tail &&
           sheave >= *end.cover->end - *end.cover->tail && sheave <= *end.cover->end;
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
        cautions.push_back({{small_sheave, along.advised_sheave->source}, {}});
    }
    const auto cover_end = end.cover ? end.cover->end : std::nullopt;
    if (along.cleat && cover_end && along.cover_at_cleat &&
        *along.cleat - *cover_end < along.cover_at_cleat->value) {
        add(cover_short_of_cleat, along.cover_at_cleat->source, LineEnd::a);
    }
    for (const LineEnd which : both_ends) {
        const auto& bury = line.end(which).allowance->bury;
        if (along.smallest_hole && bury && line.counts(which) &&
            bury->over > *along.smallest_hole) {
            add(too_thick, cited_geometry, which);
        }
    }
}

} // namespace libsplice
