// Texts in rows: none lies on another, and none on the post that another hangs from.
#include "libsplice/sheet/drawing/stacking.h"

#include <gtest/gtest.h>

namespace libsplice::testing {
namespace {

TEST(Stacking, TextsThatDoNotMeetShareARow) {
    Stacking rows(10.0);
    EXPECT_EQ(rows.place(0.0, 50.0, false), 0U);
    EXPECT_EQ(rows.place(60.0, 50.0, false), 0U);
    EXPECT_EQ(rows.rows(), 1U);
}

TEST(Stacking, TextsThatWouldMeetGoToTheNextRow) {
    Stacking rows(10.0);
    EXPECT_EQ(rows.place(100.0, 50.0, false), 0U);
    EXPECT_EQ(rows.place(60.0, 50.0, false), 1U);  // 60 to 110
    EXPECT_EQ(rows.place(120.0, 50.0, false), 1U); // the first row is taken to 150, and no post
    EXPECT_EQ(rows.place(141.0, 9.0, true), 2U);   // 132 to 141: both rows are taken there
    EXPECT_EQ(rows.rows(), 3U);
}

TEST(Stacking, ATextThatRunsLeftEndsAtItsPost) {
    Stacking rows(10.0);
    EXPECT_EQ(rows.place(100.0, 50.0, true), 0U); // 50 to 100
    EXPECT_EQ(rows.place(111.0, 50.0, false), 0U);
    EXPECT_EQ(rows.place(45.0, 30.0, true), 1U); // it ends 5 before the first begins
}

// The post at 30 goes up to row 1, so a text over it has to lie beyond that row.
TEST(Stacking, NoTextIsCrossedByAPost) {
    Stacking rows(10.0);
    EXPECT_EQ(rows.place(30.0, 20.0, false), 0U);
    EXPECT_EQ(rows.place(20.0, 30.0, false), 1U);
    EXPECT_EQ(rows.place(0.0, 25.0, false),
              2U); // 0 to 25 holds the post at 20, which goes to row 1
}

} // namespace
} // namespace libsplice::testing
