// What several kinds are built from.
#include "libsplice/allowance/parts/parts.h"

#include "libsplice/units/show.h"

#include <algorithm>
#include <cmath>

namespace libsplice {

SourcedLength from_job(Length length) {
    return {length, {}, SpreadOrigin::none, cited_job, {FormulaId::as_job, {}}};
}

SourcedLength taken_off_by_job(Length length) {
    return {-length, {}, SpreadOrigin::none, cited_job, {FormulaId::less_as_job, {}}};
}

SourcedLength from_geometry(Length length, const Working& working) {
    return {length, {}, SpreadOrigin::none, cited_geometry, working};
}

SourcedLength from_figure(const Figure& figure, Length diameter) {
    return {figure.length(diameter), figure.spread(diameter), figure.origin, figure.source,
            figure.unit == FigureUnit::diameters
                ? Working(FormulaId::diameters, {figure.value, diameter.si()})
                : Working(FormulaId::as_printed, {})};
}

SourcedLength times(double count, const SourcedLength& each) {
    SourcedLength all = each;
    all.length = each.length * count;
    all.sd = each.sd * std::abs(count);
    all.working = each.working.formula == FormulaId::diameters
                      ? Working(FormulaId::times_diameters,
                                {count, each.working.numbers[0], each.working.numbers[1]})
                      : Working(FormulaId::times_length, {count, each.length.si()});
    return all;
}

Figure Figures::figure(FigureId id) {
    auto found = request_.rules.need(id);
    if (found) {
        return *found;
    }
    keep(std::move(found).error());
    Figure nothing;
    nothing.unit = FigureUnit::mm; // a length and a number alike
    return nothing;
}

SourcedLength Figures::field_or(std::size_t field, FigureId id, Length diameter) {
    const auto given = request_.fields.length(field);
    return given ? from_job(*given) : length(id, diameter);
}

double Figures::field_or(std::optional<std::size_t> field, FigureId id) {
    return field && request_.fields.has(*field) ? request_.fields.at(*field) : number(id);
}

Row row_of(Item item, const SourcedLength& length, Group group) {
    return Row{
        item,           group,         length.origin, length.source, to_nanometres(length.length),
        length.sd.si(), length.working};
}

// Common practice among riggers; no document that is cited prints it.
bool melts_clean(Fibre fibre) {
    switch (fibre) {
    case Fibre::polyester:
    case Fibre::nylon:
    case Fibre::polypropylene:
    case Fibre::polyester_polyolefin:
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

void add_crossing(End& end, double count, Nanometres at, Length diameter) {
    const Nanometres start = at - to_nanometres(diameter * count);
    end.add(Span{Span::Form::crossed, std::max<Nanometres>(start, 0), at, to_nanometres(diameter),
                 count});
}

void add_retained(End& allowance, const Request& request) {
    if (const auto figure = request.rules.find(FigureId::retained)) {
        allowance.retained = Retained{figure->number(), figure->source};
    }
}

void add_core_alone(End& allowance, const Request& request) {
    const auto kept = request.rules.find(FigureId::core_alone);
    if (kept == nullptr) {
        return;
    }
    if (!allowance.retained || allowance.retained->share > kept->number()) {
        allowance.retained = Retained{kept->number(), kept->source};
    }
    allowance.add(Caution{"the cover of double braid carries about half of the load, and here the "
                          "core alone is spliced: half of the strength goes",
                          kept->source, Caution::Weight::refused_for_person});
}

void add_slip_caution(End& allowance, const Request& request) {
    if (const auto slip = request.rules.find(FigureId::slip)) {
        allowance.add(Caution{"this knot slips in this rope long before it breaks: splice it",
                              slip->source, Caution::Weight::refused_for_person});
    }
}

std::optional<Fault> check_minimum(const Request& request, FigureId minimum, std::string_view field,
                                   Length chosen, Length diameter) {
    const auto figure = request.rules.find(minimum);
    if (figure == nullptr || to_nanometres(chosen) >= to_nanometres(figure->length(diameter))) {
        return std::nullopt;
    }
    Fault fault{Code::below_published_minimum,
                "a " + std::string(field) + " of " + show_length(chosen, UnitSystem::metric) +
                    " is below the published minimum of " +
                    show_length(figure->length(diameter), UnitSystem::metric) + " for this rope"};
    fault.field = field;
    fault.rule = to_text(request.citations.at(figure->source));
    return fault;
}

void count_both_sides(End& end) {
    for (Row& row : end.rows) {
        row.length *= 2;
        row.sd *= 2.0;
        row.working.sides = 2;
    }
}

} // namespace libsplice
