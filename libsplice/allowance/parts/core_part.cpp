#include "libsplice/allowance/parts/core_part.h"

#include "libsplice/mechanics/rope/eye.h"
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

/// How much the rope round the eye changes if the core is one standard deviation thicker.
Length spread_of_rope_round(const End& allowance, const CorePart& core) {
    const Length pin(allowance.find(ValueName::pin_m).value_or(0.0));
    const Length throat = Length(allowance.find(ValueName::eye_m).value_or(0.0)) - pin / 2.0;
    const auto round = [&](Length rope) {
        return teardrop_eye(pin, rope, throat, rope / 2.0);
    };
    const auto as_assumed = round(core.diameter);
    const auto thicker = round(core.diameter + core.sd);
    return as_assumed && thicker ? thicker->rope - as_assumed->rope : Length();
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

void add_assumed_core(End& allowance, const CorePart& core) {
    if (!core.assumed) {
        return;
    }
    allowance.add(Caution{"the core's diameter is assumed, not known: measure it and give it as "
                          "core, for every length of this splice is counted in it",
                          core.source});
    for (Row& row : allowance.rows) {
        if (row.item == Item::eye_legs) {
            row.sd = spread_of_rope_round(allowance, core).si();
            row.origin = SpreadOrigin::stated_guess;
            row.group = Group::rope;
        }
    }
}

} // namespace libsplice
