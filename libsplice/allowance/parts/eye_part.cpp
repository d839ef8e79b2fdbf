#include "libsplice/allowance/parts/eye_part.h"

#include "libsplice/allowance/parts/parts.h"
#include "libsplice/mechanics/rope/eye.h"
#include "libsplice/units/show.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace libsplice {

namespace {

constexpr double degrees_per_radian = 180.0 / std::numbers::pi;

std::string shown(Length length) {
    return show_length(length, UnitSystem::metric);
}

Fault too_small(Length inside, Length pin, Length rope) {
    const Length least = pin / 2.0 + (pin + rope) / 2.0;
    return Fault{Code::eye_too_small,
                 "an eye of " + shown(inside) + " is too small for a pin of " + shown(pin) +
                     " in rope of " + shown(rope) + "; it must be more than " + shown(least),
                 {},
                 "eye"};
}

/// Where the legs are drawn to one line at the throat, h = R / sin(half the angle); legs that lie
/// side by side open less, so this eye is always long enough.
Length long_enough(Length pin, Length rope, double limit_in_degrees) {
    const Length radius = (pin + rope) / 2.0;
    return radius / std::sin(limit_in_degrees / degrees_per_radian / 2.0) + pin / 2.0;
}

Fault too_wide(const EyePart& eye, double limit) {
    return Fault{Code::throat_too_wide,
                 "the throat of an eye of " + shown(eye.inside) + " on a pin of " + shown(eye.pin) +
                     " opens to " + show_number(eye.throat_angle.si() * degrees_per_radian, 0) +
                     " degrees, over the limit of " + show_number(limit, 0) + "; an eye of " +
                     shown(long_enough(eye.pin, eye.rope, limit)) + " will do",
                 {},
                 "eye"};
}

/// How far the bearing point moves towards the throat when a soft eye is hung on the largest pin
/// that it is advised for. Pins between none and that one move it evenly, so the root mean square
/// is 1/sqrt(3).
Length spread_of_soft_eye(const EyePart& eye, double advised_pins) {
    const Length largest = eye.inside / advised_pins;
    const auto throat = throat_distance(largest, eye.rope, eye.rope_round, eye.rope / 2.0);
    if (!throat) {
        return {};
    }
    const Length shift = eye.inside - (*throat + largest / 2.0);
    return shift * std::numbers::inv_sqrt3;
}

} // namespace

Result<EyePart> read_eye(const Request& request, EyeFields fields, Length rope) {
    const Length pin = request.fields.length(fields.pin).value_or(Length());
    const auto pins = request.rules.need(FigureId::eye_pins);
    const auto diameters = request.rules.need(FigureId::eye_diameters);
    if (!pins || !diameters) {
        return Unexpected(pins ? diameters.error() : pins.error());
    }
    const auto given = request.fields.length(fields.eye);
    return given ? shape_eye(request, *given, cited_job, pin, rope)
                 : shape_eye(request, std::max(pin * pins->number(), diameters->length(rope)),
                             pins->source, pin, rope);
}

Result<EyePart> shape_eye(const Request& request, Length inside, CitationId source, Length pin,
                          Length rope) {
    EyePart eye{rope, pin, inside, {}, {}, source, {}};
    const auto shape = teardrop_eye(eye.pin, rope, eye.inside - eye.pin / 2.0, rope / 2.0);
    if (!shape) {
        return Unexpected(too_small(eye.inside, eye.pin, rope));
    }
    eye.rope_round = shape->rope;
    eye.throat_angle = shape->throat_angle;

    const auto limit = request.rules.find(FigureId::throat_limit);
    const double angle = eye.throat_angle.si() * degrees_per_radian;
    if (eye.pin > Length() && limit != nullptr && angle > limit->number()) {
        return Unexpected(too_wide(eye, limit->number()));
    }
    const auto pins = request.rules.find(FigureId::eye_pins);
    if (!(eye.pin > Length()) && pins != nullptr) {
        eye.soft_spread = spread_of_soft_eye(eye, pins->number());
    }
    return eye;
}

void add_eye_rows(End& allowance, const EyePart& eye) {
    allowance.add(row_of(Item::eye_legs, from_geometry(eye.rope_round)));
    allowance.add(
        row_of(Item::throat_to_bearing, {-eye.inside, {}, SpreadOrigin::none, eye.source}));
    if (eye.soft_spread > Length()) {
        allowance.add(row_of(Item::soft_eye,
                             {{}, eye.soft_spread, SpreadOrigin::stated_guess, cited_geometry}));
    }
}

void add_eye_marks(End& allowance, const EyePart& eye, Nanometres near_throat, ThroatMarks names) {
    const Nanometres far_throat = near_throat + to_nanometres(eye.rope_round);
    allowance.add(Mark{names.near, near_throat});
    allowance.add(Mark{MarkName::crown, near_throat + to_nanometres(eye.rope_round / 2.0)});
    allowance.add(Mark{names.far, far_throat});
    allowance.standing_mark = far_throat;
}

void add_eye_facts(End& allowance, const EyePart& eye, const Request& request,
                   Nanometres near_throat) {
    allowance.add(Value{ValueName::eye_m, eye.inside.si()});
    allowance.add(Value{ValueName::pin_m, eye.pin.si()});
    allowance.add(Value{ValueName::eye_rope_m, eye.rope.si()});
    allowance.add(Value{ValueName::rope_round_eye_m, eye.rope_round.si()});
    allowance.add(Value{ValueName::throat_angle_deg, eye.throat_angle.si() * degrees_per_radian});
    if (eye.legs > Length()) {
        allowance.add(Value{ValueName::legs_m, eye.legs.si()});
    }
    allowance.add(Span{.form = Span::Form::loop,
                       .from = near_throat,
                       .to = near_throat + to_nanometres(eye.rope_round),
                       .width = to_nanometres(eye.rope),
                       .around = to_nanometres(eye.pin)});
    if (!(eye.pin > Length())) {
        return;
    }
    allowance.add(Value{ValueName::bend_ratio, eye.pin / eye.rope});
    const auto advised = request.rules.find(FigureId::advised_eye_pins);
    if (advised != nullptr &&
        to_nanometres(eye.inside) < to_nanometres(eye.pin * advised->number())) {
        allowance.add(Caution{"the eye of {eye} is short for a pin of {pin}: the throat opens and "
                              "the splice is loaded sideways",
                              advised->source});
    }
}

} // namespace libsplice
