#include "libsplice/allowance/parts/tuck_part.h"

#include "libsplice/units/show.h"

namespace libsplice {

namespace {

Result<double> count_of_tucks(const Request& request, std::size_t field) {
    double count = 0.0;
    if (request.fields.has(field)) {
        count = request.fields.at(field);
    } else {
        const auto figure = request.rules.need(FigureId::tucks);
        if (!figure) {
            return Unexpected(figure.error());
        }
        count = figure->number();
    }
    const auto least = request.rules.find(FigureId::minimum_tucks);
    if (least != nullptr && count < least->number()) {
        Fault fault{Code::below_published_minimum,
                    show_number(count, 0) + " tucks are below the published minimum of " +
                        show_number(least->number(), 0) + " for " +
                        std::string(name_of(request.rope.fibre))};
        fault.field = "tucks";
        fault.rule = to_text(request.citations.at(least->source));
        return Unexpected(std::move(fault));
    }
    return count;
}

/// Strand length that one full tuck needs.
Result<SourcedLength> rope_for_a_tuck(const Request& request, std::optional<std::size_t> pick) {
    const Length rope = request.rope.counting_diameter();
    if (request.rope.construction == Construction::three_strand || !pick) {
        const auto figure = request.rules.need(FigureId::per_tuck);
        if (!figure) {
            return Unexpected(figure.error());
        }
        return from_figure(*figure, rope);
    }
    const auto picks = request.rules.need(FigureId::picks_per_tuck);
    const auto length = field_or_figure(request, *pick, FigureId::pick, rope);
    if (!picks || !length) {
        return Unexpected(picks ? length.error() : picks.error());
    }
    const double count = picks->number();
    return SourcedLength{length->length * count, length->sd * count, length->origin,
                         length->source};
}

double number_or_none(const Request& request, FigureId id) {
    const auto figure = request.rules.find(id);
    return figure == nullptr ? 0.0 : figure->number();
}

} // namespace

Result<TuckPart> read_tucks(const Request& request, TuckFields fields) {
    const Length rope = request.rope.counting_diameter();
    const auto count = count_of_tucks(request, fields.tucks);
    if (!count) {
        return Unexpected(count.error());
    }
    const auto a_tuck = rope_for_a_tuck(request, fields.pick);
    if (!a_tuck) {
        return Unexpected(a_tuck.error());
    }
    const auto end_left = field_or_figure(request, fields.end_left, FigureId::end_left, rope);
    if (!end_left) {
        return Unexpected(end_left.error());
    }
    if (auto fault = check_minimum(request, FigureId::minimum_end_left, "end_left",
                                   end_left->length, rope)) {
        return Unexpected(*std::move(fault));
    }
    TuckPart tucks{*count, number_or_none(request, FigureId::tucks_single),
                   number_or_none(request, FigureId::tucks_half), *a_tuck, *end_left};
    const double all = tucks.count + tucks.singles + tucks.halves;
    tucks.unlaid.length = a_tuck->length * all;
    tucks.unlaid.sd = a_tuck->sd * all;
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
