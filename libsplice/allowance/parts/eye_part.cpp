// An eye: its rope round a pin, its throat's angle, and what the job and print allow.
#include "libsplice/allowance/parts/eye_part.h"

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

Fault too_small(const EyeShape& shape, Length diameter, const EyeWords& words) {
    const Length least = shape.pin / 2.0 + (shape.pin + diameter) / 2.0;
    return Fault{Code::eye_too_small,
                 "an eye of " + shown(shape.inside) + " is too small for a pin of " +
                     shown(shape.pin) + " in rope of " + shown(diameter) +
                     "; it must be more than " + shown(least),
                 {},
                 std::string(words.field)};
}

/// Where the legs are drawn to one line at the throat, h = R / sin(half the angle); legs that lie
/// side by side open less, so this eye is always long enough.
Length long_enough(Length pin, Length diameter, double limit_in_degrees) {
    const Length radius = (pin + diameter) / 2.0;
    return radius / std::sin(limit_in_degrees / degrees_per_radian / 2.0) + pin / 2.0;
}

Fault too_wide(const EyePart& eye, double limit) {
    const EyeFacts& facts = eye.facts;
    return Fault{Code::throat_too_wide,
                 "the throat of an eye of " + shown(facts.inside) + " on a pin of " +
                     shown(facts.pin) + " opens to " +
                     show_number(facts.throat_angle.si() * degrees_per_radian, 0) +
                     " degrees, over the limit of " + show_number(limit, 0) + "; an eye of " +
                     shown(long_enough(facts.pin, facts.diameter, limit)) + " will do",
                 {},
                 std::string(eye.words.field)};
}

/// How far the bearing point moves towards the throat when a soft eye is hung on the largest pin
/// that it is advised for. Pins between none and that one move it evenly, so the root mean square
/// is 1/sqrt(3).
Length spread_of_soft_eye(const EyeFacts& eye, double advised_pins) {
    const Length largest = eye.inside / advised_pins;
    const auto throat = throat_distance(largest, eye.diameter, eye.rope_round, eye.diameter / 2.0);
    if (!throat) {
        return {};
    }
    const Length shift = eye.inside - (*throat + largest / 2.0);
    return shift * std::numbers::inv_sqrt3;
}

Working working_of_round(const EyeFacts& eye) {
    const double radius = (eye.bent_round + eye.diameter).si() / 2.0;
    const double height = (eye.inside - eye.bent_round / 2.0 - eye.legs).si();
    const double offset = eye.diameter.si() / 2.0;
    const double angle = eye.throat_angle.si() * degrees_per_radian;
    return eye.legs > Length()
               ? Working(FormulaId::eye_with_legs, {radius, height, offset, angle, eye.legs.si()})
               : Working(FormulaId::eye, {radius, height, offset, angle});
}

} // namespace

Result<EyePart> read_eye(const Request& request, EyeFields fields, Length diameter,
                         const EyeWords& words) {
    Figures need(request);
    const Figure pins = need.figure(FigureId::eye_pins);
    const Figure diameters = need.figure(FigureId::eye_diameters);
    if (need.failed()) {
        return need.fault();
    }
    const Length pin = request.fields.length(fields.pin).value_or(Length());
    const auto given = request.fields.length(fields.eye);
    const EyeShape usual{std::max(pin * pins.number(), diameters.length(diameter)), pins.source,
                         pin};
    return shape_eye(request, given ? EyeShape{*given, cited_job, pin} : usual, diameter, words);
}

std::optional<EyePart> bend_eye(const EyeShape& shape, Length diameter, const EyeWords& words) {
    const auto round = teardrop_eye(shape.pin, diameter,
                                    shape.inside - shape.legs - shape.pin / 2.0, diameter / 2.0);
    if (!round) {
        return std::nullopt;
    }
    EyePart eye;
    eye.words = words;
    eye.facts.diameter = diameter;
    eye.facts.inside = shape.inside;
    eye.facts.bearing = shape.inside;
    eye.facts.pin = shape.pin;
    eye.facts.bent_round = shape.pin;
    eye.facts.rope_round = round->rope_round + shape.legs * 2.0;
    eye.facts.throat_angle = round->throat_angle;
    eye.facts.legs = shape.legs;
    eye.round = from_geometry(eye.facts.rope_round, working_of_round(eye.facts));
    eye.bearing.length = shape.inside;
    eye.bearing.source = shape.source;
    return eye;
}

Result<EyePart> shape_eye(const Request& request, const EyeShape& shape, Length diameter,
                          const EyeWords& words) {
    const auto bent = bend_eye(shape, diameter, words);
    if (!bent) {
        return Unexpected(too_small(shape, diameter, words));
    }
    EyePart eye = *bent;
    const auto limit = request.rules.find(FigureId::throat_limit);
    const double angle = eye.facts.throat_angle.si() * degrees_per_radian;
    const bool on_pin = shape.pin > Length();
    if (on_pin && limit != nullptr && angle > limit->number()) {
        return Unexpected(too_wide(eye, limit->number()));
    }
    const auto pins = request.rules.find(FigureId::eye_pins);
    if (!on_pin && pins != nullptr) {
        eye.soft_spread = spread_of_soft_eye(eye.facts, pins->number());
    }
    return eye;
}

void bear_elsewhere(EyePart& eye, const SourcedLength& bearing, Length pin) {
    eye.bearing = bearing;
    eye.facts.bearing = bearing.length;
    eye.facts.pin = pin;
}

void doubt_diameter(EyePart& eye, Length sd) {
    const EyeFacts& facts = eye.facts;
    const auto round = [&](Length diameter) {
        return teardrop_eye(facts.bent_round, diameter,
                            facts.inside - facts.legs - facts.bent_round / 2.0, diameter / 2.0);
    };
    const auto as_assumed = round(facts.diameter);
    const auto thicker = round(facts.diameter + sd);
    eye.round.sd = as_assumed && thicker ? thicker->rope_round - as_assumed->rope_round : Length();
    eye.round.origin = SpreadOrigin::stated_guess;
    eye.round_group = Group::rope;
}

void add_eye_rows(End& end, const EyePart& eye) {
    end.add(row_of(eye.words.round, eye.round, eye.round_group));
    SourcedLength to_bearing = eye.bearing;
    to_bearing.length = -eye.bearing.length;
    to_bearing.working = {FormulaId::to_throat, {eye.bearing.length.si()}};
    end.add(row_of(eye.words.to_bearing, to_bearing));
    if (eye.soft_spread > Length()) {
        end.add(row_of(Item::soft_eye, {{},
                                        eye.soft_spread,
                                        SpreadOrigin::stated_guess,
                                        cited_geometry,
                                        {FormulaId::not_known_pin, {}}}));
    }
}

void lay_eye(End& end, const EyePart& eye, const Request& request, Nanometres near_throat) {
    const EyeFacts& facts = eye.facts;
    const Nanometres far_throat = near_throat + to_nanometres(facts.rope_round);
    end.add(Mark{eye.words.near, near_throat});
    end.add(Mark{MarkName::crown, near_throat + to_nanometres(facts.rope_round / 2.0)});
    end.add(Mark{eye.words.far, far_throat});
    end.standing_mark = far_throat;
    end.eye = facts;
    if (facts.pin > Length()) {
        end.pin = facts.pin;
    }
    end.add(Span{.form = Span::Form::loop,
                 .from = near_throat,
                 .to = far_throat,
                 .width = to_nanometres(facts.diameter),
                 .around = to_nanometres(facts.bent_round)});
    const auto advised = request.rules.find(FigureId::advised_eye_pins);
    if (facts.bent_round > Length() && advised != nullptr &&
        to_nanometres(facts.inside) < to_nanometres(facts.bent_round * advised->number())) {
        end.add(Caution{"the eye of {eye} is short for a pin of {pin}: the throat opens and the "
                        "splice is loaded sideways",
                        advised->source});
    }
}

} // namespace libsplice
