// A shop's own folder over the shipped tables.
#include "folder.h"

#include <gmock/gmock.h>

namespace libsplice::testing {
namespace {

TEST(Overlays, ALaterRecordReplacesTheWholeEarlierOne) {
    const Folder base("2026.1");
    base.write("constructions.toml",
               rule_record("a", "tail = { value = 72, unit = \"D\", " + cited +
                                    " }\ntaper = { value = 24, unit = \"D\", " + cited + " }") +
                   rule_record("b", "tail = { value = 1, unit = \"D\", " + cited + " }"));
    base.write("ropes/all.toml", rope_record("r", "colour = \"red\"") + rope_record("s", ""));
    const Folder shop("shop 3");
    shop.write("sources.toml",
               "[[source]]\nkey = \"book\"\ntitle = \"The Book\"\nterms = \"none\"\n");
    shop.write("terminations/own.toml",
               rule_record("a", "tail = { value = 80, unit = \"D\", " + cited + " }"));
    shop.write("ropes/own.toml", rope_record("r", ""));

    const Catalogue catalogue = load({base.path(), shop.path()});
    EXPECT_EQ(catalogue.version(), "2026.1 + shop 3");
    ASSERT_EQ(catalogue.rules().size(), 2U);
    EXPECT_DOUBLE_EQ(catalogue.rules()[0].find(FigureId::tail)->value, 80.0);
    EXPECT_EQ(catalogue.rules()[0].find(FigureId::taper), nullptr);
    EXPECT_EQ(catalogue.rules()[1].id, "b");
    ASSERT_EQ(catalogue.ropes().size(), 2U);
    EXPECT_EQ(catalogue.ropes()[0].colour, "");
    EXPECT_EQ(catalogue.find_source("book")->title, "The Book");
    EXPECT_EQ(catalogue.find_source("book")->folder, shop.path());
    EXPECT_THAT(catalogue.folders()[0].replaces, ::testing::ElementsAre());
    EXPECT_THAT(catalogue.folders()[1].replaces, ::testing::ElementsAre("book", "r", "a"));
    EXPECT_EQ(catalogue.folders()[1].title, "made up");
}

TEST(Overlays, AnEarlierFoldersSourcesAreKnown) {
    const Folder base;
    const Folder shop;
    shop.remove("sources.toml");
    shop.write("bench.toml",
               rule_record("a", "heat_cut = { value = 6, unit = \"mm\", " + cited + " }"));
    EXPECT_EQ(load({base.path(), shop.path()}).rules().size(), 1U);
}

TEST(Overlays, FilesAreReadInTheOrderOfTheirNames) {
    const Folder folder;
    const std::string tail = "tail = { value = 1, unit = \"D\", " + cited + " }";
    folder.write("terminations/b.toml", rule_record("third", tail));
    folder.write("terminations/a.toml", rule_record("second", tail));
    folder.write("constructions.toml", rule_record("first", tail));
    const Catalogue catalogue = load({folder.path()});
    ASSERT_EQ(catalogue.rules().size(), 3U);
    EXPECT_EQ(catalogue.rules()[0].id, "first");
    EXPECT_EQ(catalogue.rules()[1].id, "second");
    EXPECT_EQ(catalogue.rules()[2].id, "third");
}

TEST(Overlays, AnUnknownSourceIsNotNull) {
    const Folder folder;
    EXPECT_EQ(load({folder.path()}).find_source("pamphlet"), nullptr);
}

TEST(Overlays, ASingleFileMayTakeAFoldersPlace) {
    const Folder base;
    const std::string tail = "tail = { value = 7, unit = \"D\", " + cited + " }";
    base.write("own/shop.toml",
               "version = \"shop 1\"\ntitle = \"own\"\n[[source]]\nkey = \"pieces\"\n"
               "title = \"Pieces\"\nterms = \"own\"\n" +
                   rope_record("r", "") + rule_record("a", tail));
    const Catalogue catalogue = load({base.path(), base.path() + "/own/shop.toml"});
    EXPECT_EQ(catalogue.version(), "1 + shop 1");
    EXPECT_EQ(catalogue.rules().size(), 1U);
    EXPECT_EQ(catalogue.ropes().size(), 1U);
    EXPECT_NE(catalogue.find_source("pieces"), nullptr);
}

TEST(Overlays, ARuleThatNamesTheRopeStandsBeforeOthersOfItsKind) {
    const auto kind_rule = [](const std::string& id, const std::string& keys, int value) {
        return rule_record(id, keys + "kinds = [\"k\"]\ndefault = true\ntail = { value = " +
                                   std::to_string(value) + ", unit = \"D\", " + cited + " }");
    };
    const Folder base;
    base.write("ropes/all.toml", rope_record("ours", ""));
    base.write("terminations/all.toml",
               kind_rule("a", "", 1) + kind_rule("b", "ropes = [\"3-strand nylon 10 mm\"]\n", 2) +
                   kind_rule("c", "ropes = [\"ours\"]\n", 3));
    const Catalogue catalogue = load({base.path()});
    std::vector<const Rule*> rules;
    for (const Rule& rule : catalogue.rules()) {
        rules.push_back(&rule);
    }
    const auto tail_of = [&](const std::string& description) {
        const Rope rope = *catalogue.rope(description);
        return Rules(rope, rules, {}, nullptr).find(FigureId::tail)->value;
    };
    EXPECT_EQ(tail_of("3-strand nylon 10 mm"), 2.0);
    EXPECT_EQ(tail_of("3-strand  nylon 1 cm"), 2.0); // however it is written
    EXPECT_EQ(tail_of("3-strand nylon 12 mm"), 1.0);
    EXPECT_EQ(tail_of("ours"), 3.0);
    EXPECT_EQ(tail_of("12-strand HMPE 6 mm"), 1.0); // of its sort and size, and not that rope
}

} // namespace
} // namespace libsplice::testing
