// Cover and core led into each other: what the splice uses up, and where it is marked.
#include "libsplice/allowance/parts/covered_part.h"

#include "libsplice/mechanics/rope/braid.h"
#include "libsplice/units/show.h"

namespace libsplice {

namespace {

Result<CorePart> find_core(const Request& request, std::size_t field) {
    if (const auto given = request.fields.length(field)) {
        return CorePart{*given, {}, cited_job, false};
    }
    if (const auto& recorded = request.rope.core_diameter) {
        return CorePart{recorded->value, {}, recorded->source, false};
    }
    const auto share = request.rules.need(FigureId::core_share);
    if (!share) {
        return Unexpected(share.error());
    }
    return CorePart{request.rope.diameter * share->number(),
                    request.rope.diameter * share->number_spread(), share->source, true};
}

/// The lengths of a splice whose core is led back through the eye.
struct CoveredPart {
    SourcedLength tail;
    Length taper;
    SourcedLength shortening;
    SourcedLength entry; ///< from the throat to the core's mark that meets the near throat
    Length exit;         ///< from the throat
    std::optional<Length> core_out; ///< from the throat to where the core leaves the cover again
};

std::optional<Fault> shorter_than_taper(const CoveredPart& part) {
    if (part.taper <= part.tail.length) {
        return std::nullopt;
    }
    return Fault{Code::taper_longer_than_tail,
                 "the tail must be at least as long as its taper of " +
                     show_length(part.taper, UnitSystem::metric),
                 {},
                 "tail"};
}

std::optional<Fault> out_before_entry(const CoveredPart& part) {
    if (part.exit > part.entry.length) {
        return std::nullopt;
    }
    return Fault{Code::field_out_of_range,
                 "the exit must lie beyond the core's entry, " +
                     show_length(part.entry.length, UnitSystem::metric) + " from the throat",
                 {},
                 "exit"};
}

/// The cover's tail lies in the core from its entry on, and the fid comes out beyond it.
std::optional<Fault> out_before_tail_ends(const CoveredPart& part) {
    if (to_nanometres(part.exit) >= to_nanometres(part.tail.length)) {
        return std::nullopt;
    }
    return Fault{Code::field_out_of_range,
                 "the fid would come out before the tail's end; the exit must be at least " +
                     show_length(part.tail.length, UnitSystem::metric) + " from the entry",
                 {},
                 "exit"};
}

Result<CoveredPart> read_covered(const Request& request, CoveredFields fields) {
    const Length diameter = request.rope.counting_diameter();
    Figures need(request);
    CoveredPart part;
    part.tail = need.field_or(fields.tail, FigureId::tail, diameter);
    part.exit = need.field_or(fields.exit, FigureId::exit, diameter).length;
    part.taper = need.figure(FigureId::taper).length(diameter);
    part.shortening = need.length(FigureId::shortening, diameter);
    part.entry = need.length(FigureId::short_section, diameter);
    need.check(check_minimum(request, FigureId::minimum_tail, "tail", part.tail.length, diameter));
    need.check(shorter_than_taper(part));
    if (fields.core_out) {
        need.check(out_before_tail_ends(part));
        part.exit = part.exit + part.entry.length;
        part.core_out = need.field_or(*fields.core_out, FigureId::core_out, diameter).length;
    } else {
        need.check(out_before_entry(part));
    }
    if (need.failed()) {
        return need.fault();
    }
    return part;
}

BuryFacts facts_of(const CoveredPart& part, const Request& request) {
    const Length diameter = request.rope.counting_diameter();
    BuryFacts bury;
    bury.tail = part.tail.length;
    bury.taper = part.taper;
    bury.take_up = part.shortening.length;
    bury.entry = part.entry.length;
    bury.exit = part.exit;
    bury.over = diameter_over_bury(diameter);
    bury.inside = tapered_tail(bury.tail, bury.taper);
    if (const auto fid =
            request.rules.find(request.rope.imperial ? FigureId::fid : FigureId::fid_metric)) {
        bury.fid = fid->length(diameter);
    }
    return bury;
}

/// The tail, and the marks beyond the far throat.
void lay_covered(End& end, const CoveredPart& part, const Request& request, Nanometres tail_end,
                 Nanometres far_throat) {
    const Nanometres width = to_nanometres(request.rope.counting_diameter());
    const Nanometres taper_start = tail_end + to_nanometres(part.taper);
    end.bury = facts_of(part, request);
    end.add(Mark{MarkName::taper_start, taper_start});
    end.add(Mark{MarkName::core_entry, far_throat + to_nanometres(part.entry.length)});
    if (part.core_out) {
        end.add(Mark{MarkName::core_out, far_throat + to_nanometres(*part.core_out)});
        end.add(Value{ValueName::core_out_m, part.core_out->si()});
    }
    end.add(Mark{MarkName::exit, far_throat + to_nanometres(part.exit)});
    end.bury_reach = to_nanometres(part.tail.length) + to_nanometres(part.shortening.length);
    if (!part.core_out) {
        end.bury_reach += to_nanometres(part.entry.length);
    }
    end.fid_reach = to_nanometres(part.exit);
    end.add(Span{Span::Form::tapered, tail_end, taper_start, width});
}

} // namespace

Result<CorePart> read_core(const Request& request, std::size_t field) {
    auto core = find_core(request, field);
    if (core && core->diameter >= request.rope.diameter) {
        return Unexpected(Fault{Code::field_out_of_range,
                                "a core of " + show_fine(core->diameter, UnitSystem::metric) +
                                    " does not fit inside rope of " +
                                    show_fine(request.rope.diameter, UnitSystem::metric),
                                {},
                                "core"});
    }
    return core;
}

void add_core_caution(End& end, const CorePart& core, std::string_view text) {
    if (core.assumed) {
        end.add(Caution{text, core.source});
    }
}

void add_slip_knot(End& end, const Request& request) {
    end.milks_cover = true;
    if (const auto knot = request.rules.find(FigureId::slip_knot)) {
        CoverFacts cover = end.cover.value_or(CoverFacts());
        cover.slip_knot = knot->length(request.rope.counting_diameter());
        end.cover = cover;
    }
}

void add_small_rope_caution(End& end, const Request& request, std::string_view text) {
    const auto least = request.rules.find(FigureId::least_size);
    if (least != nullptr && to_nanometres(request.rope.diameter) <
                                to_nanometres(least->length(request.rope.diameter))) {
        end.add(Caution{text, least->source});
    }
}

Result<End> covered_eye(const Request& request, CoveredFields fields) {
    Figures need(request);
    const auto eye = need.part(read_eye(request, fields.eye, request.rope.counting_diameter()));
    const auto part = need.part(read_covered(request, fields));
    if (need.failed()) {
        return need.fault();
    }
    End end;
    add_eye_rows(end, eye);
    end.add(row_of(Item::tail, part.tail));
    end.add(row_of(Item::take_up, part.shortening, Group::take_up));
    const bool into_each_other = part.core_out.has_value();
    if (!into_each_other) {
        // The core's mark beyond the throat is drawn up to it, and the cover stays where it was.
        end.add(row_of(Item::crossing_below, part.entry));
    }
    const Nanometres tail_end = add_cutting_loss(end, request, Cut::shears);
    const Nanometres near_throat = tail_end + to_nanometres(part.tail.length);
    const Nanometres far_throat = near_throat + to_nanometres(eye.facts.rope_round);
    lay_covered(end, part, request, tail_end, far_throat);
    end.add(Span{Span::Form::buried, tail_end + to_nanometres(part.taper), near_throat,
                 to_nanometres(eye.facts.diameter), into_each_other ? 1.0 : 2.0});
    if (into_each_other) {
        add_crossing(end, 2.0, near_throat, eye.facts.diameter);
    }
    lay_eye(end, eye, request, near_throat);
    add_slip_knot(end, request);
    add_retained(end, request);
    return end;
}

} // namespace libsplice
