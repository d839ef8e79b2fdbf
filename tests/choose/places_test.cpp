// What places.toml says, against the documents that it names, and what a wrong record is told.
#include "asked.h"
#include "tests/catalogue/folder.h"

#include <array>

namespace libsplice::testing {
namespace {

TEST(Places, FibresAreAsThePublishedRangesSay) {
    struct Row {
        Fibre fibre;
        double lightest, heaviest; ///< against water
        double melts, melts_up_to; ///< or chars, degrees Celsius
    };
    for (const Row& row :
         {Row{Fibre::nylon, 1.14, 1.14, 238, 255}, Row{Fibre::polyester, 1.38, 1.38, 240, 260},
          Row{Fibre::polypropylene, 0.91, 0.91, 162, 175}, Row{Fibre::hmpe, 0.94, 0.97, 144, 152},
          Row{Fibre::aramid, 1.44, 1.44, 427, 427}, Row{Fibre::lcp, 1.41, 1.44, 327, 327}}) {
        const FibreFacts& facts = shipped_places().of(row.fibre);
        ASSERT_TRUE(facts.gravity && facts.melts) << static_cast<int>(row.fibre);
        EXPECT_GE(facts.gravity->value, row.lightest);
        EXPECT_LE(facts.gravity->value, row.heaviest);
        EXPECT_GE(facts.melts->value, row.melts);
        EXPECT_LE(facts.melts->value, row.melts_up_to);
    }
    EXPECT_FALSE(shipped_places().of(Fibre::manila).gravity);
}

TEST(Places, WhatWordsAskIsAsPublished) {
    const auto& sheet = shipped_places().least_for(Handling::all_day);
    ASSERT_TRUE(sheet);
    EXPECT_NEAR(sheet->value.si(), 0.008, 1e-12) << "a main sheet in wind";
    EXPECT_FALSE(shipped_places().least_for(Handling::now_and_then)) << "nobody prints one";
    ASSERT_TRUE(shipped_places().least_sheave());
    EXPECT_EQ(shipped_places().least_sheave()->value, 5.0);
    ASSERT_TRUE(shipped_places().of(Fibre::hmpe).steady_share);
    EXPECT_EQ(shipped_places().of(Fibre::hmpe).steady_share->value, 0.25);
    EXPECT_FALSE(shipped_places().of(Fibre::polyester).steady_share);
    EXPECT_TRUE(shipped_places().lets_slip(Holder::cleat));
    EXPECT_TRUE(shipped_places().lets_slip(Holder::clutch));
    EXPECT_FALSE(shipped_places().lets_slip(Holder::splice));
    // A polyester sheet burns through HMPE, so the limit lies between the two.
    const auto& hot = shipped_places().least_melting(Running::runs_hot);
    ASSERT_TRUE(hot);
    EXPECT_GT(hot->value, 175.0);
    EXPECT_LT(hot->value, 238.0);
}

TEST(Places, EveryPlaceCanBeRead) {
    EXPECT_GE(shipped_places().places().size(), 15U);
    for (const CitedRecord& place : shipped_places().places()) {
        const auto asked = asked_by({{"name", "line"}, {"place", place.id}});
        EXPECT_TRUE(asked.faults.empty()) << place.id << ": " << asked.faults.front().text;
        EXPECT_EQ(asked.needs.place, place.id);
        EXPECT_FALSE(asked.needs.load) << "no load is published for a place";
        EXPECT_FALSE(asked.needs.most_give);
    }
}

/// What a folder with this `places.toml` is told.
std::vector<Fault> told(const std::string& text) {
    const Folder folder;
    folder.write("places.toml", text);
    FaultSink faults;
    const auto catalogue = Catalogue::load(std::array{folder.path()}, faults);
    if (catalogue) {
        static_cast<void>(ChoiceTables::open(*catalogue, faults));
    }
    return faults.kept();
}

TEST(Places, AWrongRecordIsTold) {
    const auto cell = [](const std::string& key, const std::string& is) {
        return key + " = { is = \"" + is + "\", " + cited + " }\n";
    };
    EXPECT_TRUE(told("[[place]]\nid = \"guy\"\n" + cell("held_by", "winch")).empty());
    for (const std::string& text : {
             "[[place]]\nid = \"guy\"\n" + cell("held", "winch"),
             std::string("[[place]]\nid = \"guy\"\nheld_by = \"winch\"\n"),
             std::string("[[place]]\nid = \"guy\"\nheld_by = { is = \"winch\" }\n"),
             "[[place]]\n" + cell("held_by", "winch"),
             "[[fibre]]\nid = \"hemp\"\n" + cell("gravity", "1.5"),
             "[[fibre]]\nid = \"nylon\"\n" + cell("gravity", "heavy"),
             "[[hand]]\nid = \"often\"\n" + cell("least", "6 mm"),
             "[[hand]]\nid = \"all-day\"\n" + cell("least", "6"),
             "[[plaice]]\nid = \"guy\"\n" + cell("held_by", "winch"),
         }) {
        EXPECT_FALSE(told(text).empty()) << text;
    }
}

TEST(Places, ALaterFolderReplacesAPlace) {
    const Folder own;
    own.write("places.toml",
              "[[place]]\nid = \"main sheet\"\nheld_by = { is = \"winch\", " + cited + " }\n");
    const Catalogue catalogue = load({LIBSPLICE_TABLES_DIR, own.path()});
    FaultSink faults;
    const auto tables = ChoiceTables::open(catalogue, faults);
    ASSERT_TRUE(tables);
    const CitedRecord* place = tables->find_place("Main Sheet");
    ASSERT_NE(place, nullptr);
    EXPECT_EQ(place->find("held_by")->text, "winch");
    EXPECT_EQ(place->find("hand"), nullptr) << "the whole record is replaced";
    EXPECT_EQ(tables->find_place("mainsheet"), nullptr);
}

} // namespace
} // namespace libsplice::testing
