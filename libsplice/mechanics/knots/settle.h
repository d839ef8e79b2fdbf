// Pulling a rope at one mesh until it hardly gets shorter.
#pragma once

#include "libsplice/mechanics/knots/pull.h"
#include "libsplice/mechanics/knots/tighten.h"

namespace libsplice {

/// One stretch of the work.
struct Stage {
    double mesh = 0.0;
    Pull::Strength strength;
    double settled = 0.0; ///< a block of steps that shortens less ends it; in diameters
};

/// Pulls in blocks of steps until one shortens the rope by less than the stage asks for.
/// `size_of(curve)` is what gets shorter; `tidied(curve, block)` gives the pull to go on with where
/// the points, tails or legs have gone far from what they should be, else nothing. False if
/// `telling` has asked to end.
template <class SizeOf, class Tidied>
bool settle(Pull& pull, const Stage& stage, const Telling& telling, SizeOf size_of, Tidied tidied) {
    constexpr std::size_t steps_of_block = 100;
    constexpr int most_blocks = 2000;
    bool going_on = true;
    double before = size_of(pull.curve());
    for (int block = 1; block <= most_blocks && going_on; ++block) {
        pull.steps(steps_of_block, stage.strength);
        const double now = size_of(pull.curve());
        going_on = !telling || telling(stage.mesh, now);
        if (before - now < stage.settled) {
            break;
        }
        before = now;
        if (auto better = tidied(pull.curve(), block)) {
            pull = *std::move(better);
            before = size_of(pull.curve());
        }
    }
    return going_on;
}

} // namespace libsplice
