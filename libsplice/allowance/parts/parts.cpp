#include "libsplice/allowance/parts/parts.h"

#include "libsplice/units/show.h"

namespace libsplice {

SourcedLength from_figure(const Figure& figure, Length rope) {
    return {figure.length(rope), figure.spread(rope), figure.origin, figure.source};
}

Result<SourcedLength> field_or_figure(const Request& request, std::size_t field, FigureId figure,
                                      Length rope) {
    if (const auto given = request.fields.length(field)) {
        return from_job(*given);
    }
    const auto found = request.rules.need(figure);
    if (!found) {
        return Unexpected(found.error());
    }
    return from_figure(*found, rope);
}

Row row_of(Item item, const SourcedLength& length, Group group) {
    return Row{item,          group, length.origin, length.source, to_nanometres(length.length),
               length.sd.si()};
}

// Common practice among riggers; no document that is cited prints it.
bool melts_clean(Fibre fibre) {
    switch (fibre) {
    case Fibre::polyester:
    case Fibre::nylon:
    case Fibre::polypropylene:
    case Fibre::rubber: // the cord's braided cover is what melts
        return true;
    case Fibre::hmpe: // melts low and shrinks back
    case Fibre::aramid:
    case Fibre::lcp:
    case Fibre::manila: // these three char
    case Fibre::galvanised_steel:
    case Fibre::stainless_steel:
        return false;
    }
    return false;
}

Cut usual_cut(const Rope& rope) {
    return melts_clean(rope.fibre) || has_cover(rope.construction) ? Cut::heat : Cut::shears;
}

std::optional<Fault> find_foreign_field(const Request& request,
                                        std::span<const FieldDeclaration> fields,
                                        FieldRange foreign, std::string_view made) {
    for (std::size_t i = foreign.first; i < foreign.last; ++i) {
        if (request.fields.has(i)) {
            const std::string name(fields[i].name);
            return Fault{
                Code::unknown_field, std::string(made) + " has no field \"" + name + '"', {}, name};
        }
    }
    return std::nullopt;
}

Nanometres add_cutting_loss(End& allowance, const Request& request, Cut cut) {
    if (request.rope.construction == Construction::wire) {
        return 0;
    }
    const auto figure =
        request.rules.find(cut == Cut::heat ? FigureId::heat_cut : FigureId::shear_cut);
    if (figure == nullptr) {
        return 0;
    }
    const Row row = row_of(Item::cutting_loss,
                           from_figure(*figure, request.rope.counting_diameter()), Group::cut);
    allowance.add(row);
    return row.length;
}

void add_crossing(End& allowance, double count, Nanometres at, Length rope) {
    const Nanometres start = at - to_nanometres(rope * count);
    allowance.add(
        Span{Span::Form::crossed, std::max<Nanometres>(start, 0), at, to_nanometres(rope), count});
}

void set_value(End& allowance, ValueName name, Length length) {
    for (Value& value : allowance.values) {
        if (value.name == name) {
            value.value = length.si();
        }
    }
}

void add_retained(End& allowance, const Request& request) {
    if (const auto figure = request.rules.find(FigureId::retained)) {
        allowance.retained = Retained{figure->number(), figure->source};
    }
}

void add_slip_caution(End& allowance, const Request& request) {
    if (const auto slip = request.rules.find(FigureId::slip)) {
        allowance.add(Caution{"this knot slips in this rope long before it breaks: splice it",
                              slip->source, Caution::Weight::refused_for_person});
    }
}

std::optional<Fault> check_minimum(const Request& request, FigureId minimum, std::string_view field,
                                   Length chosen, Length rope) {
    const auto figure = request.rules.find(minimum);
    if (figure == nullptr || to_nanometres(chosen) >= to_nanometres(figure->length(rope))) {
        return std::nullopt;
    }
    Fault fault{Code::below_published_minimum,
                "a " + std::string(field) + " of " + show_length(chosen, UnitSystem::metric) +
                    " is below the published minimum of " +
                    show_length(figure->length(rope), UnitSystem::metric) + " for this rope"};
    fault.field = field;
    fault.rule = to_text(request.citations.at(figure->source));
    return fault;
}

} // namespace libsplice
