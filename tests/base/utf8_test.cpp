// Which bytes are UTF-8, by the table of well-formed sequences in the Unicode standard (table 3-7).
#include "libsplice/base/text.h"

#include <gtest/gtest.h>

#include <optional>
#include <string>
#include <vector>

namespace libsplice::testing {
namespace {

using std::string_literals::operator""s;

TEST(Utf8, WellFormedTextHasNoBadByte) {
    for (const std::string& text : {""s, "rope"s, "a\0b"s, "\x7F"s, "\xC2\x80"s, "\xDF\xBF"s,
                                    "\xE0\xA0\x80"s, "\xED\x9F\xBF"s, "\xEE\x80\x80"s,
                                    "\xEF\xBF\xBF"s, "\xF0\x90\x80\x80"s, "\xF4\x8F\xBF\xBF"s}) {
        EXPECT_EQ(first_bad_utf8(text), std::nullopt) << ::testing::PrintToString(text);
    }
}

TEST(Utf8, MalformedTextIsBadFromTheStartOfTheSequence) {
    struct Case {
        std::string text;
        std::size_t bad_at;
    };
    const std::vector<Case> cases{
        {"\x80", 0},                 // a continuation alone
        {"ab\xBF", 2},               //
        {"\xC0\x80", 0},             // overlong NUL
        {"\xC1\xBF", 0},             // overlong
        {"\xE0\x9F\xBF", 0},         // overlong
        {"\xF0\x8F\xBF\xBF", 0},     // overlong
        {"\xED\xA0\x80", 0},         // first surrogate
        {"\xED\xBF\xBF", 0},         // last surrogate
        {"\xF4\x90\x80\x80", 0},     // past U+10FFFF
        {"\xF5\x80\x80\x80", 0},     //
        {"\xFE", 0},                 // never a byte of UTF-8
        {"\xFF", 0},                 //
        {"x\xC3", 1},                // cut short
        {"x\xE2\x82", 1},            //
        {"x\xF0\x9F\x98", 1},        //
        {"\xC3(", 0},                // no continuation
        {"\xE2(\xA1", 0},            //
        {"\xE2\x82(", 0},            //
        {"\xC3\xA9\xC3\xA9\xE9", 4}, // Latin-1 after good text
        {"caf\xE9 au lait", 3},
    };
    for (const auto& [text, bad_at] : cases) {
        EXPECT_EQ(first_bad_utf8(text), bad_at) << ::testing::PrintToString(text);
    }
}

TEST(CharacterCount, CountsCodePoints) {
    EXPECT_EQ(character_count(""), 0U);
    EXPECT_EQ(character_count("tack"), 4U);
    EXPECT_EQ(character_count("Größe"), 5U);
    EXPECT_EQ(character_count("6 mm²"), 5U);
    EXPECT_EQ(character_count("\xF0\x9F\x9A\xA3 row"), 5U);
    EXPECT_EQ(character_count("e\xCC\x81"), 2U); // a letter and a combining accent
}

} // namespace
} // namespace libsplice::testing
