// Strands tucked: how many, how long they are, and what is left of them.
#include "libsplice/allowance/parts/tuck_part.h"

#include "libsplice/units/show.h"

namespace libsplice {

namespace {

std::optional<Fault> too_few(const Request& request, double count) {
    const auto least = request.rules.find(FigureId::minimum_tucks);
    if (least == nullptr || count >= least->number()) {
        return std::nullopt;
    }
    Fault fault{Code::below_published_minimum, show_number(count, 0) +
                                                   " tucks are below the published minimum of " +
                                                   show_number(least->number(), 0) + " for " +
                                                   std::string(name_of(request.rope.fibre))};
    fault.field = "tucks";
    fault.rule = to_text(request.citations.at(least->source));
    return fault;
}

/// Strand length that one full tuck needs.
SourcedLength rope_for_a_tuck(Figures& need, const Request& request,
                              std::optional<std::size_t> pick) {
    const Length diameter = request.rope.counting_diameter();
    if (request.rope.construction == Construction::three_strand || !pick) {
        return need.length(FigureId::per_tuck, diameter);
    }
    const double picks = need.number(FigureId::picks_per_tuck);
    return times(picks, need.field_or(*pick, FigureId::pick, diameter));
}

double number_or_none(const Request& request, FigureId id) {
    const auto figure = request.rules.find(id);
    return figure == nullptr ? 0.0 : figure->number();
}

} // namespace

Result<TuckPart> read_tucks(const Request& request, TuckFields fields) {
    const Length diameter = request.rope.counting_diameter();
    Figures need(request);
    TuckPart tucks;
    tucks.count = need.field_or(std::optional(fields.tucks), FigureId::tucks);
    if (!need.failed()) {
        need.check(too_few(request, tucks.count));
    }
    const SourcedLength a_tuck = rope_for_a_tuck(need, request, fields.pick);
    tucks.end_left = need.field_or(fields.end_left, FigureId::end_left, diameter);
    need.check(check_minimum(request, FigureId::minimum_end_left, "end_left", tucks.end_left.length,
                             diameter));
    if (need.failed()) {
        return need.fault();
    }
    tucks.singles = number_or_none(request, FigureId::tucks_single);
    tucks.halves = number_or_none(request, FigureId::tucks_half);
    tucks.unlaid = times(tucks.count + tucks.singles + tucks.halves, a_tuck);
    return tucks;
}

Nanometres add_tucks(End& allowance, const TuckPart& tucks, const Request& request) {
    allowance.add(row_of(Item::tucks, tucks.unlaid, Group::rope));
    allowance.add(row_of(Item::end_left, tucks.end_left));
    const Nanometres tail_end = add_cutting_loss(allowance, request, Cut::shears);
    const Nanometres unlay =
        tail_end + to_nanometres(tucks.end_left.length) + to_nanometres(tucks.unlaid.length);
    allowance.add(Value{ValueName::tucks, tucks.count});
    allowance.add(Value{ValueName::unlay_m, tucks.unlaid.length.si()});
    allowance.add(Value{ValueName::end_left_m, tucks.end_left.length.si()});
    allowance.add(Value{ValueName::tail_m, (tucks.unlaid.length + tucks.end_left.length).si()});
    const Nanometres width = to_nanometres(request.rope.counting_diameter());
    const Nanometres last_tuck = tail_end + to_nanometres(tucks.end_left.length);
    if (last_tuck > tail_end) {
        allowance.add(Span{Span::Form::straight, tail_end, last_tuck, width});
    }
    allowance.add(Span{Span::Form::tucked, last_tuck, unlay, width,
                       tucks.count + tucks.singles + tucks.halves});
    return unlay;
}

} // namespace libsplice
