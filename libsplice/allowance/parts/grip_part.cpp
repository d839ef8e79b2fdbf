// How well the braid grips a buried tail: a cross-check beside the published length.
#include "libsplice/allowance/parts/buried_eye_part.h"
#include "libsplice/mechanics/rope/grip.h"

namespace libsplice {

namespace {

constexpr std::string_view may_slip =
    "in a simple model of its grip this bury of {bury} could slip: {grip_margin} times the grip "
    "that it needs, but only {grip_margin_low} with friction and braid angle both at their lowest. "
    "The model knows neither to better than a factor of about two; it is a cross-check and no "
    "rule. Pull-test a sample and do not leave out the stitching";

/// What the model assumes for a rope, with the ends between which it may lie.
struct Assumed {
    const Figure* angle;
    const Figure* friction;
    const Figure* packing;
    const Figure* share;

    [[nodiscard]] bool all_known() const {
        return angle != nullptr && friction != nullptr && packing != nullptr && share != nullptr;
    }
};

} // namespace

void add_grip(End& end, const BuryPart& bury, const Request& request) {
    const Assumed assumed{
        request.rules.find(FigureId::braid_angle), request.rules.find(FigureId::self_friction),
        request.rules.find(FigureId::packing), request.rules.find(FigureId::throat_share)};
    if (!assumed.all_known()) {
        return;
    }
    const double packing = assumed.packing->number();
    const double share = assumed.share->number();
    const auto margin = [&](double angle, double friction) {
        return grip_margin(bury.facts.inside, bury.host.diameter,
                           {degrees(angle), friction, packing}, share);
    };
    const auto usual = margin(assumed.angle->number(), assumed.friction->number());
    const auto low = margin(assumed.angle->lowest_number(), assumed.friction->lowest_number());
    const auto high = margin(assumed.angle->highest_number(), assumed.friction->highest_number());
    if (!usual || !low || !high) {
        return;
    }
    end.grip = GripFacts{.margin = *usual,
                         .lowest = *low,
                         .highest = *high,
                         .friction = assumed.friction->number(),
                         .braid_angle_deg = assumed.angle->number(),
                         .packing = packing,
                         .throat_share = share};
    if (*low < 1.0) {
        end.add(Caution{may_slip, assumed.friction->source});
    }
}

} // namespace libsplice
