// TOML as a plain tree: values, order, and what is refused.
#include "libsplice/base/document.h"

#include <gtest/gtest.h>

#include <string>

namespace libsplice::testing {
namespace {

TEST(Document, HoldsEverySortOfValue) {
    const auto root = parse_toml("name = \"halyard\"\ncount = 3\nsize = 6.5\nspliced = true\n"
                                 "worn = false\nsizes = [6, 8.0]\nday = 2024-05-17\n"
                                 "end = { kind = \"bowline\" }\n",
                                 "job.toml");
    ASSERT_TRUE(root);
    EXPECT_EQ(*root->find("name")->text(), "halyard");
    EXPECT_TRUE(root->find("count")->is_whole());
    EXPECT_DOUBLE_EQ(root->find("count")->number(), 3.0);
    EXPECT_FALSE(root->find("size")->is_whole());
    EXPECT_TRUE(root->find("size")->is_number());
    EXPECT_DOUBLE_EQ(root->find("size")->number(), 6.5);
    EXPECT_TRUE(*root->find("spliced")->boolean());
    ASSERT_EQ(root->find("sizes")->array()->size(), 2U);
    EXPECT_DOUBLE_EQ(root->find("sizes")->array()->at(1).number(), 8.0);
    EXPECT_EQ(*root->find("day")->text(), "2024-05-17");
    EXPECT_EQ(*root->find("end")->find("kind")->text(), "bowline");
}

TEST(Document, SaysWhatANodeIsNot) {
    const auto root = parse_toml("count = 3\n", "job.toml");
    ASSERT_TRUE(root);
    const Node& count = *root->find("count");
    EXPECT_EQ(count.text(), nullptr);
    EXPECT_EQ(count.boolean(), nullptr);
    EXPECT_EQ(count.array(), nullptr);
    EXPECT_EQ(count.table(), nullptr);
    EXPECT_EQ(count.find("x"), nullptr);
    EXPECT_EQ(root->find("x"), nullptr);
    EXPECT_FALSE(root->is_number());
}

TEST(Document, GivesScalarsAsACellWouldHoldThem) {
    const auto root = parse_toml("a = \"6.4 m\"\nb = 60\nc = 6.40\nd = true\ne = false\nf = [1]\n"
                                 "g = { h = 1 }\ni = -0.1\nj = 0.3\n",
                                 "job.toml");
    ASSERT_TRUE(root);
    EXPECT_EQ(root->find("a")->scalar_text(), "6.4 m");
    EXPECT_EQ(root->find("b")->scalar_text(), "60");
    EXPECT_EQ(root->find("c")->scalar_text(), "6.4");
    EXPECT_EQ(root->find("d")->scalar_text(), "yes");
    EXPECT_EQ(root->find("e")->scalar_text(), "no");
    EXPECT_EQ(root->find("f")->scalar_text(), "");
    EXPECT_EQ(root->find("g")->scalar_text(), "");
    EXPECT_EQ(root->find("i")->scalar_text(), "-0.1");
    EXPECT_EQ(root->find("j")->scalar_text(), "0.3");
}

TEST(Document, KeepsKeysInTheOrderOfTheFile) {
    const auto root = parse_toml("zulu = 1\nalfa = 2\n[mike]\ny = 1\nb = 2\n[charlie]\n", "t.toml");
    ASSERT_TRUE(root);
    std::string order;
    for (const auto& [key, node] : *root->table()) {
        order += key + ' ';
    }
    EXPECT_EQ(order, "zulu alfa mike charlie ");
    EXPECT_EQ(root->find("mike")->table()->at(0).first, "y");
}

TEST(Document, EmptyTextIsAnEmptyTable) {
    const auto root = parse_toml("", "t.toml");
    ASSERT_TRUE(root);
    EXPECT_TRUE(root->table()->empty());
}

TEST(Document, KnowsThePlaceOfEachKey) {
    const auto root = parse_toml("# lines of one boat\n"
                                 "[defaults]\n"
                                 "  boat = \"No 1\"\n"
                                 "\n"
                                 "[[line]]\n"
                                 "name = \"é\"\n"
                                 "[[line]]\n"
                                 "name = \"é\"\n"
                                 "end_a = { kind = \"é\", eye = \"60 mm\" }\n"
                                 "sizes = [\n"
                                 "  6,\n"
                                 "]\n",
                                 "job.toml");
    ASSERT_TRUE(root);
    EXPECT_EQ(root->at(), (Place{"job.toml", 1, 1}));
    EXPECT_EQ(root->find("defaults")->find("boat")->at(), (Place{"job.toml", 3, 3}));
    const auto& lines = *root->find("line")->array();
    ASSERT_EQ(lines.size(), 2U);
    EXPECT_EQ(lines[0].at().line, 5U);
    EXPECT_EQ(lines[1].at().line, 7U);
    EXPECT_EQ(lines[1].find("name")->at(), (Place{"job.toml", 8, 1}));
    // Counted by hand in characters: `end_a = { kind = "é", ` is 22 of them, and 23 bytes.
    EXPECT_EQ(lines[1].find("end_a")->find("eye")->at(), (Place{"job.toml", 9, 23}));
    EXPECT_EQ(lines[1].find("sizes")->array()->front().at(), (Place{"job.toml", 11, 3}));
}

TEST(Document, CountsLinesAlikeWithAByteOrderMarkAndCarriageReturns) {
    const auto root = parse_toml("\xEF\xBB\xBFname = 1\r\n\r\nrope = 2\r\n", "job.toml");
    ASSERT_TRUE(root);
    EXPECT_EQ(root->find("name")->at(), (Place{"job.toml", 1, 1}));
    EXPECT_EQ(root->find("rope")->at(), (Place{"job.toml", 3, 1}));
}

TEST(Document, RefusesBrokenTomlAtItsPlace) {
    const auto root = parse_toml("name = \"a\"\nrope = = 3\n", "job.toml");
    ASSERT_FALSE(root);
    EXPECT_EQ(root.error().code, Code::broken_toml);
    EXPECT_EQ(root.error().at, (Place{"job.toml", 2, 8}));
}

TEST(Document, RefusesAKeyThatStandsTwice) {
    const auto root = parse_toml("name = \"a\"\nname = \"b\"\n", "job.toml");
    ASSERT_FALSE(root);
    EXPECT_EQ(root.error().code, Code::broken_toml);
    EXPECT_EQ(root.error().at.line, 2U);
}

TEST(Document, RefusesTextThatIsNotUtf8AtItsPlace) {
    const auto root = parse_toml("a = 1\nb = \"\xC3\xA9\xE9\"\n", "job.toml");
    ASSERT_FALSE(root);
    EXPECT_EQ(root.error().code, Code::not_utf8);
    EXPECT_EQ(root.error().at, (Place{"job.toml", 2, 7}));
}

TEST(Document, RefusesNumbersThatAreNotFinite) {
    for (const char* number : {"inf", "-inf", "nan"}) {
        const auto root = parse_toml("a = 1\nsize = " + std::string(number) + "\n", "job.toml");
        ASSERT_FALSE(root) << number;
        EXPECT_EQ(root.error().code, Code::broken_toml);
        EXPECT_EQ(root.error().at.line, 2U);
    }
}

std::string repeated(const std::string& part, int times) {
    std::string text;
    for (int i = 0; i < times; ++i) {
        text += part;
    }
    return text;
}

TEST(Document, SurvivesWhatIsNestedWithoutEnd) {
    const int deep = 200'000;
    for (const std::string& text :
         {"a = " + repeated("[", deep), "a = " + repeated("[", 100) + repeated("]", 100),
          "a = " + repeated("{ a = ", deep), repeated("a.", deep) + "a = 1",
          "[" + repeated("a.", deep) + "a]", "[[" + repeated("a . ", deep) + "a]]",
          "x = 1\n" + repeated("\"=\".", deep) + "a = 1"}) {
        const auto root = parse_toml(text, "job.toml");
        ASSERT_FALSE(root) << text.substr(0, 20);
        EXPECT_EQ(root.error().code, Code::broken_toml);
    }
}

TEST(Document, LeavesFullStopsInTextAlone) {
    const std::string prose = repeated("Lead it aft. ", 100);
    const auto root = parse_toml(
        "note = \"" + prose + "\" # " + prose + "\nother = '" + prose + "'\n", "job.toml");
    ASSERT_TRUE(root);
    EXPECT_EQ(*root->find("note")->text(), prose);
}

} // namespace
} // namespace libsplice::testing
