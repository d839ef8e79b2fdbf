// The one place that knows what the figures of an end are called.
#include "libsplice/allowance/values.h"

#include <algorithm>
#include <numbers>

namespace libsplice {

namespace {

constexpr double degrees_per_radian = 180.0 / std::numbers::pi;

class Collector {
  public:
    void add(ValueName name, double value) { values_.push_back({name, value}); }
    void add(ValueName name, Length length) { add(name, length.si()); }
    template <class Figure>
    void add(ValueName name, const std::optional<Figure>& figure) {
        if (figure) {
            add(name, *figure);
        }
    }
    /// A length that is left out where it is 0.
    void add_if_any(ValueName name, Length length) {
        if (length > Length()) {
            add(name, length);
        }
    }
    [[nodiscard]] const ShortList<Value, most_end_values>& values() const { return values_; }

  private:
    ShortList<Value, most_end_values> values_;
};

void collect_eye(Collector& into, const EyeFacts& eye) {
    into.add(ValueName::eye_m, eye.inside);
    into.add(ValueName::pin_m, eye.pin);
    into.add(ValueName::eye_rope_m, eye.diameter);
    into.add(ValueName::rope_round_eye_m, eye.rope_round);
    into.add(ValueName::throat_angle_deg, eye.throat_angle.si() * degrees_per_radian);
    into.add_if_any(ValueName::legs_m, eye.legs);
    if (to_nanometres(eye.bearing) != to_nanometres(eye.inside)) {
        into.add(ValueName::bearing_m, eye.bearing);
    }
    if (eye.bent_round > Length()) {
        into.add(ValueName::bend_ratio, eye.bent_round / eye.diameter);
    }
}

void collect_taper(Collector& into, const TaperFacts& taper) {
    if (taper.strands) {
        into.add(ValueName::strands, static_cast<double>(*taper.strands));
        into.add(ValueName::pairs, static_cast<double>(taper.pairs));
        into.add(ValueName::end_step_m, taper.end_step);
    }
    if (taper.strands || taper.end_section > 0.0) {
        into.add(ValueName::end_section, taper.end_section);
    }
    into.add(ValueName::end_loss, taper.end_loss);
}

void collect_bury(Collector& into, const BuryFacts& bury) {
    into.add(ValueName::tail_m, bury.tail);
    into.add(ValueName::bury_m, bury.tail);
    into.add(ValueName::taper_m, bury.taper);
    into.add(ValueName::take_up_m, bury.take_up);
    if (bury.braid_constant) {
        into.add(ValueName::take_up_settled_m, bury.take_up + bury.settling);
    }
    into.add_if_any(ValueName::exit_m, bury.exit);
    into.add(ValueName::entry_m, bury.entry);
    into.add(ValueName::braid_constant, bury.braid_constant);
    into.add_if_any(ValueName::over_bury_m, bury.over);
    into.add_if_any(ValueName::minimum_bury_m, bury.minimum);
    into.add(ValueName::fid_m, bury.fid);
    if (bury.end) {
        collect_taper(into, *bury.end);
    }
}

void collect_grip(Collector& into, const GripFacts& grip) {
    into.add(ValueName::grip_margin, grip.margin);
    into.add(ValueName::grip_margin_low, grip.lowest);
    into.add(ValueName::grip_margin_high, grip.highest);
    into.add(ValueName::friction, grip.friction);
    into.add(ValueName::braid_angle_deg, grip.braid_angle_deg);
    into.add(ValueName::packing, grip.packing);
    into.add(ValueName::throat_share, grip.throat_share);
}

void collect_knot(Collector& into, const KnotFacts& knot) {
    into.add(ValueName::ball_m, knot.ball);
    into.add(ValueName::knot_m, knot.rope);
    into.add(ValueName::knot_width_m, knot.width);
    into.add(ValueName::body_m, knot.body);
    into.add(knot.left_name, knot.left);
}

void collect_turns(Collector& into, const TurnFacts& turns) {
    into.add(turns.around_name, turns.around);
    into.add(ValueName::turns, turns.count);
    into.add(ValueName::bend_ratio, turns.bend_ratio);
    into.add(ValueName::load_past_turns, turns.load_past);
    into.add(ValueName::hitch_margin, turns.margin);
    into.add(ValueName::extra_turns, turns.extra);
}

} // namespace

ShortList<Value, most_end_values> values_of(const End& end) {
    Collector into;
    const auto add = [&](const auto& part, auto collect_part) {
        if (part) {
            collect_part(into, *part);
        }
    };
    add(end.eye, collect_eye);
    if (end.bend_retained) {
        into.add(ValueName::bend_retained, end.bend_retained->share);
    }
    add(end.bury, collect_bury);
    if (end.cover) {
        into.add(ValueName::slip_knot_m, end.cover->slip_knot);
        into.add(ValueName::cover_tail_m, end.cover->tail);
        into.add(ValueName::cover_end_m, end.cover->end);
    }
    if (end.stitching) {
        into.add(ValueName::stitch_start_m, end.stitching->start);
        into.add(ValueName::stitch_end_m, end.stitching->end);
    }
    add(end.grip, collect_grip);
    add(end.turns, collect_turns);
    add(end.knot, collect_knot);
    for (const Value& value : end.others) {
        into.add(value.name, value.value);
    }
    return into.values();
}

std::optional<double> find_value(const End& end, ValueName name) {
    const auto values = values_of(end);
    const auto found = std::ranges::find(values, name, &Value::name);
    return found == values.end() ? std::nullopt : std::optional(found->value);
}

} // namespace libsplice
