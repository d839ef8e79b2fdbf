// How large a piece is set on paper: the longer, the smaller, and never too small to read.
#include "libsplice/sheet/html/page_fit.h"

#include "bench.h"

#include <gtest/gtest.h>

#include <vector>

namespace libsplice {
namespace {

constexpr double flat_drawing = 0.2;

TEST(PageFit, AShortPieceIsSetLargeEndByEnd) {
    const Bench bench;
    const PageFit fit = fit_on_page(bench.piece, flat_drawing);
    EXPECT_GT(fit.size, 0.8);
    EXPECT_FALSE(fit.abreast);
}

TEST(PageFit, MoreStepsMakeItSmaller) {
    Bench bench;
    std::vector<Step> steps;
    PageFit last;
    for (int count = 1; count < 25; ++count) {
        steps.push_back({Action::lead_in,
                         {},
                         "Lead the tail in at the far throat, along inside and out at the exit, "
                         "and draw it through until both throats meet."});
        bench.eye.steps = steps;
        const PageFit next = fit_on_page(bench.piece, flat_drawing);
        EXPECT_TRUE(next.size <= last.size || next.abreast != last.abreast) << count;
        EXPECT_GE(next.size, 0.44) << count;
        last = next;
    }
    EXPECT_LT(last.size, 0.7);
}

TEST(PageFit, AHigherDrawingLeavesLessForTheText) {
    Bench bench;
    const std::vector<Step> steps(
        14, {Action::smooth, {}, "Smooth the cover over the core from the knot."});
    bench.eye.steps = steps;
    EXPECT_LT(fit_on_page(bench.piece, 0.9).size, fit_on_page(bench.piece, flat_drawing).size);
}

// Twelve marks and eight short steps at either end: the steps of one below its marks leave more
// room than both ends one below the other.
TEST(PageFit, TwoLongEndsStandSideBySide) {
    Bench bench;
    const std::vector<Step> steps(8, {Action::tape, {}, "Tape it."});
    bench.eye.steps = steps;
    for (int i = 0; i < 10; ++i) {
        bench.eye.add(Mark{MarkName::exit, mm(500 + i)});
    }
    EXPECT_TRUE(fit_on_page(bench.piece, 0.4).abreast);
}

TEST(PageFit, WhatIsNotCutIsSetAtItsFullSize) {
    Bench bench;
    bench.refuse();
    EXPECT_EQ(fit_on_page(bench.piece, 0.0).size, 1.0);
}

} // namespace
} // namespace libsplice
