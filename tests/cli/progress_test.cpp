// What the line of progress says.
#include "cli/progress.h"

#include <gtest/gtest.h>

namespace libsplice::testing {

using namespace cli;

namespace {

TEST(ProgressText, SaysCountRateShareAndTimeToGo) {
    // 1,200 in 4 s are 300 a second; a quarter took 4 s, so three quarters take 12.
    EXPECT_EQ(progress_text({"cutting", "lines", 1200, 4.0, 0.25}),
              "cutting: 1,200 lines, 300 a second, 25 %, 12 s to go");
    EXPECT_EQ(progress_text({"cutting", "lines", 999, 2.0, {}}),
              "cutting: 999 lines, 500 a second");
    EXPECT_EQ(progress_text({"cutting", "lines", 1'234'567, 1.0, {}}),
              "cutting: 1,234,567 lines, 1,234,567 a second");
}

TEST(ProgressText, ANoteStandsAtTheEnd) {
    EXPECT_EQ(progress_text({"tightening", "steps", 10, 2.0, {}, "at mesh 0.1"}),
              "tightening: 10 steps, 5 a second, at mesh 0.1");
}

TEST(ProgressText, LongTimesInMinutesAndHours) {
    // One part in a hundred took 2 s: 198 s are left. In 80 s: 7920 s, which is 2 h 12 min.
    EXPECT_EQ(progress_text({"reeling", "plans", 0, 2.0, 0.01}),
              "reeling: 0 plans, 0 a second, 1 %, 3 min 18 s to go");
    EXPECT_EQ(progress_text({"reeling", "plans", 0, 80.0, 0.01}),
              "reeling: 0 plans, 0 a second, 1 %, 2 h 12 min to go");
}

TEST(ProgressText, NothingToGoAtTheEnds) {
    EXPECT_EQ(progress_text({"cutting", "lines", 0, 0.0, 0.0}), "cutting: 0 lines, 0 %");
    EXPECT_EQ(progress_text({"cutting", "lines", 10, 1.0, 1.0}),
              "cutting: 10 lines, 10 a second, 100 %");
    EXPECT_EQ(progress_text({"cutting", "lines", 10, 1.0, 1.5}),
              "cutting: 10 lines, 10 a second, 100 %");
}

} // namespace

} // namespace libsplice::testing
