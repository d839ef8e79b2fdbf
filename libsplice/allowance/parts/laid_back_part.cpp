// A tail along the standing part, stitched, seized, clipped or sleeved to it.
#include "libsplice/allowance/parts/laid_back_part.h"

#include "libsplice/mechanics/rope/bend.h"
#include "libsplice/units/show.h"

#include <utility>

namespace libsplice {

namespace {

constexpr std::array<std::pair<double, FigureId>, 8> printed_ratios{
    std::pair{1.0, FigureId::bend_1}, {2.0, FigureId::bend_2},   {4.0, FigureId::bend_4},
    {6.0, FigureId::bend_6},          {10.0, FigureId::bend_10}, {15.0, FigureId::bend_15},
    {30.0, FigureId::bend_30},        {40.0, FigureId::bend_40}};

/// What the tables print for the rope, and where.
struct PrintedBends {
    ShortList<BendPoint, printed_ratios.size()> points;
    CitationId source{};
};

PrintedBends bends_of(const Rules& rules) {
    PrintedBends bends;
    for (const auto& [printed, id] : printed_ratios) {
        if (const auto* figure = rules.find(id)) {
            bends.points.push_back({printed, figure->number()});
            bends.source = figure->source;
        }
    }
    return bends;
}

void add_bend(End& end, const Request& request, const EyeFacts& eye) {
    const PrintedBends bends = bends_of(request.rules);
    if (!(eye.pin > Length()) || bends.points.empty()) {
        return;
    }
    end.bend_retained = retained_over(request.rules, eye.pin / eye.diameter);
    if (!end.bend_retained) {
        end.add(Caution{"the pin of {pin} is thinner than any that is printed for this wire: put a "
                        "thimble in the eye",
                        bends.source});
    }
}

void add_untested_caution(End& end, const Request& request) {
    if (request.rules.find(FigureId::retained) == nullptr) {
        end.add(Caution{
            "no source says what this holds: load a test piece to twice what the line will carry",
            cited_job, Caution::Weight::refused_for_person});
    }
}

} // namespace

std::optional<Retained> retained_over(const Rules& rules, double ratio) {
    const PrintedBends bends = bends_of(rules);
    const auto kept = retained_in_bend({bends.points.begin(), bends.points.end()}, ratio);
    return kept ? std::optional(Retained{*kept, bends.source}) : std::nullopt;
}

Result<End> eye_with_lap(const Request& request, const EyePart& eye, const LapPart& lap) {
    if (to_nanometres(lap.tail.length) < to_nanometres(lap.held)) {
        return Unexpected(Fault{Code::field_out_of_range,
                                "a tail of " + show_length(lap.tail.length, UnitSystem::metric) +
                                    " is shorter than what holds it; it must be at least " +
                                    show_length(lap.held, UnitSystem::metric),
                                {},
                                std::string(lap.tail_field)});
    }
    End end;
    add_eye_rows(end, eye);
    end.add(row_of(Item::tail, lap.tail));
    const Nanometres tail_end = add_cutting_loss(end, request, usual_cut(request.rope));
    const Nanometres tail = to_nanometres(lap.tail.length);
    const Nanometres held = to_nanometres(lap.held);
    const Nanometres near_throat = tail_end + tail;
    const Nanometres far_throat = near_throat + to_nanometres(eye.facts.rope_round);
    end.add(Mark{lap.held_mark, far_throat + held});
    if (tail > held) {
        end.add(Mark{MarkName::lap_end, far_throat + tail});
    }
    end.bury_reach = tail;
    end.add(Value{ValueName::tail_m, lap.tail.length.si()});
    end.add(Value{lap.held_value, lap.held.si()});
    const Nanometres width = to_nanometres(eye.facts.diameter);
    if (near_throat - held > tail_end) {
        end.add(Span{Span::Form::straight, tail_end, near_throat - held, width});
    }
    end.add(Span{lap.holds, near_throat - held, near_throat, width});
    lay_eye(end, eye, request, near_throat);
    add_retained(end, request);
    add_untested_caution(end, request);
    return end;
}

End turned_back_eye(const Request& request, const TurnedBackPart& part) {
    const Nanometres start = to_nanometres(part.turned.length);
    End end;
    add_eye_rows(end, part.eye);
    end.add(row_of(Item::turn_back, part.turned));
    end.add(Value{ValueName::turn_back_m, part.turned.length.si()});
    end.add(Span{part.held, 0, start, to_nanometres(part.eye.facts.diameter), part.count});
    lay_eye(end, part.eye, request, start);
    add_bend(end, request, part.eye.facts);
    add_retained(end, request);
    return end;
}

} // namespace libsplice
