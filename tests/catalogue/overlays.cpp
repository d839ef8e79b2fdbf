// A shop's own folder over the shipped tables.
#include "folder.h"

#include <gmock/gmock.h>

namespace libsplice {
namespace {

using testing::cited;
using ::testing::ElementsAre;
using testing::Folder;
using testing::load;
using testing::rope_record;
using testing::rule_record;

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
    EXPECT_THAT(catalogue.folders()[0].replaces, ElementsAre());
    EXPECT_THAT(catalogue.folders()[1].replaces, ElementsAre("book", "r", "a"));
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

} // namespace
} // namespace libsplice
