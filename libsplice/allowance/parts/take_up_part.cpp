#include "libsplice/allowance/parts/take_up_part.h"

#include <algorithm>

namespace libsplice {

namespace {

/// The tables' spread as a share of the take-up over the tail that they state it for.
Result<double> usual_share(const Request& request, double constant) {
    const auto spread = request.rules.need(FigureId::take_up_spread);
    const auto stated_tail = request.rules.need(FigureId::take_up_tail);
    const auto stated_taper = request.rules.need(FigureId::take_up_taper);
    for (const auto* figure : {&spread, &stated_tail, &stated_taper}) {
        if (!*figure) {
            return Unexpected(figure->error());
        }
    }
    const Length diameter = metres(1.0);
    const auto stated = take_up_over(
        tapered_tail(stated_tail->length(diameter), stated_taper->length(diameter)), constant);
    if (!stated) {
        return Unexpected(Fault{Code::table_value_wrong,
                                "a tail of the rope's own size does not go into this braid"});
    }
    return *stated > Length() ? spread->length(diameter) / *stated : 0.0;
}

} // namespace

Result<Figure> read_braid_constant(const Request& request) {
    const Figure* of_kind = request.rules.find(FigureId::braid_constant);
    if (of_kind != nullptr && request.citations.at(of_kind->source).status == Status::shop) {
        return *of_kind;
    }
    if (const auto& own = request.rope.braid_constant) {
        return *own;
    }
    return request.rules.need(FigureId::braid_constant);
}

Result<SourcedLength> read_take_up(const Request& request, std::span<const BuriedPart> tail,
                                   Fault too_thick) {
    const auto constant = read_braid_constant(request);
    if (!constant) {
        return Unexpected(constant.error());
    }
    const auto length = take_up_over(tail, constant->number());
    if (!length) {
        return Unexpected(std::move(too_thick));
    }
    if (constant->sd > 0.0) {
        const double less = std::max(0.0, constant->number() - constant->number_spread());
        return SourcedLength{*length, *length - *take_up_over(tail, less), constant->origin,
                             constant->source};
    }
    const auto share = usual_share(request, constant->number());
    if (!share) {
        return Unexpected(share.error());
    }
    return SourcedLength{*length, *length * *share, SpreadOrigin::stated_guess, constant->source};
}

void set_usual_spread(SourcedLength& take_up, const Request& request, Length usual) {
    const auto constant = read_braid_constant(request);
    if (!constant || !(constant->sd > 0.0)) {
        take_up.sd = usual;
        take_up.origin = SpreadOrigin::stated_guess;
    }
}

} // namespace libsplice
