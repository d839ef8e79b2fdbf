// Small work on text: trimming, control bytes, near words, lists.
#include "libsplice/base/text.h"

#include <gtest/gtest.h>

#include <array>
#include <string>

namespace libsplice::testing {
namespace {

using std::string_literals::operator""s;

TEST(Trimmed, DropsBlanksAndTabsAtTheEndsOnly) {
    EXPECT_EQ(trimmed("  main  halyard\t"), "main  halyard");
    EXPECT_EQ(trimmed("\t \t"), "");
    EXPECT_EQ(trimmed(""), "");
    EXPECT_EQ(trimmed("x"), "x");
    EXPECT_EQ(trimmed(" a\n"), "a\n");
}

TEST(ShowControls, MakesControlBytesVisible) {
    EXPECT_EQ(show_controls("\x1b[31mred"), "\\x1b[31mred");
    EXPECT_EQ(show_controls("a\0b\r\n\x7f"s), "a\\x00b\\x0d\\x0a\\x7f");
}

TEST(ShowControls, EscapesWhatDrivesATerminalOrTurnsATextRound) {
    EXPECT_EQ(show_controls("\xC2\x9B"
                            "31mred"),
              "\\u009b31mred")
        << "C1 controls";
    EXPECT_EQ(show_controls("a\xE2\x80\xAE"
                            "b"),
              "a\\u202eb")
        << "right to left";
    EXPECT_EQ(show_controls("a\xE2\x80\xA8"
                            "b"),
              "a\\u2028b")
        << "line separator";
    EXPECT_EQ(show_controls("\xE2\x81\xA6"), "\\u2066");
    EXPECT_EQ(show_controls("a\x9B"
                            "b\xFF"),
              "a\\x9bb\\xff")
        << "bytes that are no UTF-8";
    EXPECT_EQ(show_controls("\xE2\x80"), "\\xe2\\x80") << "half a character";
}

TEST(DisplayWidth, CountsColumnsOfATerminal) {
    EXPECT_EQ(display_width("halyard"), 7U);
    EXPECT_EQ(display_width("Gr\u00f6\u00dfe"), 5U);
    EXPECT_EQ(display_width("\u4e3b\u5e06\u5347\u964d\u7d22"), 10U) << "two columns each";
    EXPECT_EQ(display_width("e\u0301"), 1U) << "an accent over a letter";
    EXPECT_EQ(display_width(""), 0U);
}

TEST(ShowControls, LeavesTheRestAlone) {
    EXPECT_EQ(show_controls("Größe 6 mm\xC2\xB2 \\ ~"), "Größe 6 mm\xC2\xB2 \\ ~");
}

constexpr std::array<std::string_view, 5> columns{"length", "rope", "tension", "name", "quantity"};

TEST(Nearest, FindsASlipOfTheKeys) {
    EXPECT_EQ(nearest("lenght", columns), "length");      // two letters changed places
    EXPECT_EQ(nearest("tenson", columns), "tension");     // one left out
    EXPECT_EQ(nearest("quantitty", columns), "quantity"); // one too many
    EXPECT_EQ(nearest("rope", columns), "rope");
}

TEST(Nearest, TakesTheNearerOfTwo) {
    constexpr std::array<std::string_view, 2> words{"end_a", "end_b"};
    EXPECT_EQ(nearest("endb", words), "end_b");
}

TEST(Nearest, IsSilentWhereNothingIsNear) {
    EXPECT_EQ(nearest("colour", columns), std::nullopt);
    EXPECT_EQ(nearest("quxxxxty", columns), std::nullopt); // four of eight letters off
    EXPECT_EQ(nearest("xope", {}), std::nullopt);
    EXPECT_EQ(nearest("", columns), std::nullopt);
    EXPECT_EQ(nearest(std::string(100'000, 'r'), columns), std::nullopt);
}

TEST(DidYouMean, IsAHintOrNothing) {
    EXPECT_EQ(did_you_mean("nam", columns), "; did you mean \"name\"?");
    EXPECT_EQ(did_you_mean("zzzzzz", columns), "");
}

TEST(Listed, JoinsWords) {
    constexpr std::array<std::string_view, 3> words{"exact", "trim", "least"};
    EXPECT_EQ(listed(words), "exact, trim and least");
    EXPECT_EQ(listed(std::span(words).first(2)), "exact and trim");
    EXPECT_EQ(listed(std::span(words).first(1)), "exact");
    EXPECT_EQ(listed({}), "");
}

} // namespace
} // namespace libsplice::testing
