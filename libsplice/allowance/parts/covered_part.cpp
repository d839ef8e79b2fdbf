#include "libsplice/allowance/parts/covered_part.h"

#include "libsplice/allowance/parts/parts.h"
#include "libsplice/mechanics/rope/braid.h"
#include "libsplice/units/show.h"

namespace libsplice {

namespace {

/// The lengths of a splice in which both parts carry.
struct CoveredPart {
    SourcedLength tail;
    Length taper;
    SourcedLength shortening;
    Length entry; ///< from the throat to where the core is entered
    Length exit;  ///< from the throat
};

Result<CoveredPart> read_covered(const Request& request, CoveredFields fields, ExitFrom exit_from) {
    const Length rope = request.rope.counting_diameter();
    const auto tail = field_or_figure(request, fields.tail, FigureId::tail, rope);
    const auto exit = field_or_figure(request, fields.exit, FigureId::exit, rope);
    const auto taper = request.rules.need(FigureId::taper);
    const auto shortening = request.rules.need(FigureId::shortening);
    const auto entry = request.rules.need(FigureId::short_section);
    for (const auto* fault :
         {tail ? nullptr : &tail.error(), exit ? nullptr : &exit.error(),
          taper ? nullptr : &taper.error(), shortening ? nullptr : &shortening.error(),
          entry ? nullptr : &entry.error()}) {
        if (fault != nullptr) {
            return Unexpected(*fault);
        }
    }
    if (auto fault = check_minimum(request, FigureId::minimum_tail, "tail", tail->length, rope)) {
        return Unexpected(*std::move(fault));
    }
    CoveredPart part{*tail, taper->length(rope), from_figure(*shortening, rope),
                     entry->length(rope), exit->length};
    if (part.taper > part.tail.length) {
        return Unexpected(Fault{Code::taper_longer_than_tail,
                                "the tail must be at least as long as its taper of " +
                                    show_length(part.taper, UnitSystem::metric),
                                {},
                                "tail"});
    }
    if (exit_from == ExitFrom::core_entry) {
        part.exit = part.exit + part.entry;
    } else if (part.exit <= part.entry) {
        return Unexpected(Fault{Code::field_out_of_range,
                                "the exit must lie beyond the core's entry, " +
                                    show_length(part.entry, UnitSystem::metric) +
                                    " from the throat",
                                {},
                                "exit"});
    }
    return part;
}

void add_covered_marks(End& allowance, const CoveredPart& part) {
    const auto from_throat = [&](Length length) {
        return allowance.standing_mark + to_nanometres(length);
    };
    allowance.add(Mark{MarkName::core_entry, from_throat(part.entry)});
    allowance.add(Mark{MarkName::exit, from_throat(part.exit)});
    allowance.bury_reach = to_nanometres(part.tail.length) + to_nanometres(part.shortening.length);
    allowance.fid_reach = to_nanometres(part.exit);
}

void add_covered_facts(End& allowance, const CoveredPart& part, const Request& request,
                       Nanometres tail_end) {
    const Length rope = request.rope.counting_diameter();
    allowance.add(Value{ValueName::tail_m, part.tail.length.si()});
    allowance.add(Value{ValueName::taper_m, part.taper.si()});
    allowance.add(Value{ValueName::take_up_m, part.shortening.length.si()});
    allowance.add(Value{ValueName::entry_m, part.entry.si()});
    allowance.add(Value{ValueName::exit_m, part.exit.si()});
    allowance.add(Value{ValueName::over_bury_m, diameter_over_bury(rope).si()});
    if (const auto fid =
            request.rules.find(request.rope.imperial ? FigureId::fid : FigureId::fid_metric)) {
        allowance.add(Value{ValueName::fid_m, fid->length(rope).si()});
    }
    const Nanometres taper_start = tail_end + to_nanometres(part.taper);
    allowance.add(Span{Span::Form::tapered, tail_end, taper_start, to_nanometres(rope)});
}

} // namespace

void add_slip_knot(End& allowance, const Request& request) {
    allowance.milks_cover = true;
    if (const auto knot = request.rules.find(FigureId::slip_knot)) {
        allowance.add(
            Value{ValueName::slip_knot_m, knot->length(request.rope.counting_diameter()).si()});
    }
}

void add_small_rope_caution(End& allowance, const Request& request, std::string_view text) {
    const auto least = request.rules.find(FigureId::least_size);
    if (least != nullptr && to_nanometres(request.rope.diameter) <
                                to_nanometres(least->length(request.rope.diameter))) {
        allowance.add(Caution{text, least->source});
    }
}

Result<End> covered_eye(const Request& request, CoveredFields fields, ExitFrom exit_from) {
    const auto eye = read_eye(request, fields.eye, request.rope.counting_diameter());
    if (!eye) {
        return Unexpected(eye.error());
    }
    const auto part = read_covered(request, fields, exit_from);
    if (!part) {
        return Unexpected(part.error());
    }
    End allowance;
    add_eye_rows(allowance, *eye);
    allowance.add(row_of(Item::tail, part->tail));
    allowance.add(row_of(Item::take_up, part->shortening, Group::take_up));
    const Nanometres tail_end = add_cutting_loss(allowance, request, Cut::shears);
    allowance.add(Mark{MarkName::taper_start, tail_end + to_nanometres(part->taper)});
    const Nanometres near_throat = tail_end + to_nanometres(part->tail.length);
    add_eye_marks(allowance, *eye, near_throat);
    add_covered_marks(allowance, *part);
    add_covered_facts(allowance, *part, request, tail_end);
    const bool into_each_other = exit_from == ExitFrom::core_entry;
    allowance.add(Span{Span::Form::buried, tail_end + to_nanometres(part->taper), near_throat,
                       to_nanometres(eye->rope), into_each_other ? 1.0 : 2.0});
    if (into_each_other) {
        add_crossing(allowance, 2.0, near_throat, eye->rope);
    }
    add_eye_facts(allowance, *eye, request, near_throat);
    add_slip_knot(allowance, request);
    add_retained(allowance, request);
    return allowance;
}

} // namespace libsplice
