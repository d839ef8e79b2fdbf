// Outlines of rope laid straight.
#include "libsplice/sheet/drawing/outline.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <array>

namespace libsplice::testing {
namespace {

using OutlineForm = OutlinePart::Form;

std::ptrdiff_t count(const std::string& path, char letter) {
    return std::ranges::count(path, letter);
}

TEST(Outline, OfNothingIsEmpty) {
    EXPECT_EQ(outline_path({}, 10.0), "");
}

TEST(Outline, OfEvenRopeIsABox) {
    const std::array parts{OutlinePart{OutlineForm::even, 0.0, 100.0, 8.0, 0}};
    const std::string path = outline_path(parts, 20.0);
    EXPECT_EQ(count(path, 'M'), 1);
    EXPECT_EQ(count(path, 'L'), 4); // back to where it began
    for (const char* corner : {"0 12", "100 12", "100 28", "0 28"}) {
        EXPECT_NE(path.find(corner), std::string::npos) << path;
    }
}

TEST(Outline, PartsThatMeetMakeOne) {
    const std::array parts{OutlinePart{OutlineForm::even, 0.0, 100.0, 8.0, 0},
                           OutlinePart{OutlineForm::even, 50.0, 150.0, 8.0, 0}};
    EXPECT_EQ(count(outline_path(parts, 0.0), 'Z'), 1);
    const std::array apart{parts[0], OutlinePart{OutlineForm::even, 120.0, 150.0, 8.0, 0}};
    EXPECT_EQ(count(outline_path(apart, 0.0), 'Z'), 2);
}

TEST(Outline, ATaperIsThinAtItsEnd) {
    const std::array parts{OutlinePart{OutlineForm::pointed, 0.0, 60.0, 8.0, 0}};
    const std::string path = outline_path(parts, 0.0);
    EXPECT_NE(path.find("0 -2"), std::string::npos) << path;
    EXPECT_NE(path.find("60 -8"), std::string::npos) << path;
}

TEST(Outline, EveryLumpOfAKnotIsSeen) {
    std::array<std::ptrdiff_t, 4> corners{};
    for (int lumps = 3; lumps < 7; ++lumps) {
        const std::array parts{OutlinePart{OutlineForm::bulging, 0.0, 200.0, 8.0, lumps}};
        corners.at(static_cast<std::size_t>(lumps) - 3) = count(outline_path(parts, 0.0), 'L');
    }
    EXPECT_TRUE(std::ranges::is_sorted(corners, std::ranges::less_equal()) ||
                std::ranges::is_sorted(corners));
    EXPECT_LT(corners.front(), corners.back());
}

TEST(Outline, AStretchOfNoLengthIsLeftOut) {
    const std::array parts{OutlinePart{OutlineForm::even, 5.0, 5.0, 8.0, 0}};
    EXPECT_EQ(outline_path(parts, 0.0), "");
}

} // namespace
} // namespace libsplice::testing
