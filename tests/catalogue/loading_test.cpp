// Tables that are wrong: each fault has its code, its place and a hint.
#include "folder.h"

#include <gmock/gmock.h>

namespace libsplice::testing {
namespace {

/// The only fault of a folder whose constructions.toml is `text`.
Fault only_fault_of_rules(const std::string& text) {
    const Folder folder;
    folder.write("constructions.toml", text);
    const auto faults = faults_of({folder.path()});
    EXPECT_EQ(faults.size(), 1U) << text;
    return faults.empty() ? Fault{} : faults.front();
}

Fault only_fault_of_ropes(const std::string& text) {
    const Folder folder;
    folder.write("ropes/made-up.toml", text);
    const auto faults = faults_of({folder.path()});
    EXPECT_EQ(faults.size(), 1U) << text;
    return faults.empty() ? Fault{} : faults.front();
}

TEST(Loading, NoFolderIsAFault) {
    const auto faults = faults_of({});
    ASSERT_EQ(faults.size(), 1U);
    EXPECT_EQ(faults[0].code, Code::tables_missing);
}

TEST(Loading, AFolderWithoutAHeadingIsNoFolderOfTables) {
    const Folder folder;
    folder.remove("tables.toml");
    const auto faults = faults_of({folder.path()});
    ASSERT_EQ(faults.size(), 1U);
    EXPECT_EQ(faults[0].code, Code::tables_missing);
    EXPECT_EQ(faults[0].at.file, folder.path());
    EXPECT_THAT(faults[0].text, ::testing::HasSubstr("tables.toml"));
}

TEST(Loading, AHeadingNeedsVersionAndTitle) {
    const Folder folder;
    folder.write("tables.toml", "versoin = \"1\"\n");
    const auto faults = faults_of({folder.path()});
    ASSERT_EQ(faults.size(), 3U);
    EXPECT_THAT(faults[0].text, ::testing::HasSubstr("did you mean \"version\""));
    EXPECT_EQ(faults[1].code, Code::table_key_missing);
    EXPECT_EQ(faults[1].field, "version");
    EXPECT_EQ(faults[2].field, "title");
}

TEST(Loading, BrokenTomlKeepsItsPlace) {
    const Folder folder;
    folder.write("constructions.toml", "[[rule]]\nid = \n");
    const auto faults = faults_of({folder.path()});
    ASSERT_EQ(faults.size(), 1U);
    EXPECT_EQ(faults[0].code, Code::broken_toml);
    EXPECT_EQ(faults[0].at.file, folder.path() + "/constructions.toml");
    EXPECT_EQ(faults[0].at.line, 2U);
}

TEST(Loading, AFolderInPlaceOfAFileIsUnreadable) {
    const Folder folder;
    folder.write("constructions.toml/inside", "");
    const auto faults = faults_of({folder.path()});
    ASSERT_EQ(faults.size(), 1U);
    EXPECT_EQ(faults[0].code, Code::table_unreadable);
}

TEST(Loading, AFileThatNobodyWouldReadIsAFault) {
    const Folder folder;
    folder.write("source.toml", "");
    const auto faults = faults_of({folder.path()});
    ASSERT_EQ(faults.size(), 1U);
    EXPECT_EQ(faults[0].code, Code::table_value_wrong);
    EXPECT_THAT(faults[0].text, ::testing::HasSubstr("did you mean \"sources.toml\""));
}

TEST(Loading, RecordsNeedTwoBrackets) {
    const auto fault = only_fault_of_rules("[rule]\nid = \"a\"\n");
    EXPECT_EQ(fault.code, Code::table_value_wrong);
    EXPECT_THAT(fault.text, ::testing::HasSubstr("[[rule]]"));
}

TEST(Loading, AnUnknownFigureNamesTheNearest) {
    const auto fault =
        only_fault_of_rules(rule_record("a", "tial = { value = 72, unit = \"D\", " + cited + " }"));
    EXPECT_EQ(fault.code, Code::table_value_wrong);
    EXPECT_EQ(fault.field, "tial");
    EXPECT_EQ(fault.at.line, 4U);
    EXPECT_EQ(fault.at.column, 1U);
    EXPECT_THAT(fault.text, ::testing::HasSubstr("did you mean \"tail\""));
}

TEST(Loading, AnUnknownKeyOfAFigureNamesTheNearest) {
    const auto fault = only_fault_of_rules(
        rule_record("a", "tail = { value = 72, uint = \"mm\", unit = \"D\", " + cited + " }"));
    EXPECT_EQ(fault.at.line, 4U);
    EXPECT_EQ(fault.at.column, 22U);
    EXPECT_THAT(fault.text, ::testing::HasSubstr("did you mean \"unit\""));
}

TEST(Loading, UnknownConstructionsAndFibresNameTheNearest) {
    const std::string tail = "tail = { value = 72, unit = \"D\", " + cited + " }";
    auto fault = only_fault_of_rules(rule_record("a", "constructions = [\"12-strnd\"]\n" + tail));
    EXPECT_EQ(fault.at.line, 4U);
    EXPECT_THAT(fault.text, ::testing::HasSubstr("did you mean \"12-strand\""));
    fault = only_fault_of_rules(rule_record("a", "fibres = [\"polyster\"]\n" + tail));
    EXPECT_THAT(fault.text, ::testing::HasSubstr("did you mean \"polyester\""));
}

TEST(Loading, AFigureNeedsAUnitThatSuitsIt) {
    auto fault =
        only_fault_of_rules(rule_record("a", "tail = { value = 72, unit = \"%\", " + cited + " }"));
    EXPECT_EQ(fault.code, Code::table_value_wrong);
    EXPECT_EQ(fault.field, "unit");
    fault = only_fault_of_rules(rule_record("a", "tail = { value = 72, " + cited + " }"));
    EXPECT_THAT(fault.text, ::testing::HasSubstr("\"mm\""));
    fault = only_fault_of_rules(
        rule_record("a", "retained = { value = 90, unit = \"D\", " + cited + " }"));
    EXPECT_THAT(fault.text, ::testing::HasSubstr("no unit"));
    fault = only_fault_of_rules(
        rule_record("a", "tucks = { value = 5, unit = \"mm\", " + cited + " }"));
    EXPECT_EQ(fault.field, "unit");
    fault = only_fault_of_rules(
        rule_record("a", "throat_limit = { value = 60, unit = \"%\", " + cited + " }"));
    EXPECT_THAT(fault.text, ::testing::HasSubstr("\"deg\""));
}

TEST(Loading, ValuesMustBeNumbersAndNotNegative) {
    for (const std::string value : {"-1", "\"many\"", "\"1/0\"", "\"1 2\"", "\"1 1/\"", "true"}) {
        const auto fault = only_fault_of_rules(
            rule_record("a", "tail = { value = " + value + ", unit = \"D\", " + cited + " }"));
        EXPECT_EQ(fault.code, Code::table_value_wrong) << value;
        EXPECT_EQ(fault.field, "value") << value;
        EXPECT_EQ(fault.at.line, 4U) << value;
    }
    const auto fault = only_fault_of_rules(
        rule_record("a", "tail = { value = inf, unit = \"D\", " + cited + " }"));
    EXPECT_EQ(fault.at.line, 4U);
}

TEST(Loading, ASourceMustResolve) {
    const auto fault = only_fault_of_rules(rule_record(
        "a",
        R"(tail = { value = 1, unit = "D", source = "bok", locator = "p", status = "printed" })"));
    EXPECT_EQ(fault.code, Code::source_unknown);
    EXPECT_EQ(fault.at.line, 4U);
    EXPECT_EQ(fault.at.column, 33U);
    EXPECT_THAT(fault.text, ::testing::HasSubstr("did you mean \"book\""));
}

TEST(Loading, ACitationIsWholeOrAbsent) {
    auto fault = only_fault_of_rules(rule_record(
        "a", R"(tail = { value = 1, unit = "D", source = "book", status = "printed" })"));
    EXPECT_EQ(fault.code, Code::table_key_missing);
    EXPECT_EQ(fault.field, "locator");
    fault = only_fault_of_rules(rule_record(
        "a",
        R"(tail = { value = 1, unit = "D", source = "book", locator = "  ", status = "printed" })"));
    EXPECT_EQ(fault.code, Code::table_value_wrong);
    EXPECT_EQ(fault.field, "locator");
    fault = only_fault_of_rules(rule_record(
        "a",
        R"(tail = { value = 1, unit = "D", source = "book", locator = "p", status = "job" })"));
    EXPECT_EQ(fault.field, "status");
    EXPECT_THAT(fault.text, ::testing::HasSubstr("common practice"));
}

TEST(Loading, AFigureDoesNotMixItsRecordsCitationWithItsOwn) {
    const auto fault = only_fault_of_rules(rule_record(
        "a", "source = \"book\"\nlocator = \"p. 1\"\nstatus = \"printed\"\n"
             "tail = { value = 1, unit = \"D\", source = \"book\", locator = \"p. 2\" }"));
    EXPECT_EQ(fault.code, Code::table_key_missing);
    EXPECT_EQ(fault.field, "status");
    EXPECT_EQ(fault.at.line, 7U);
}

TEST(Loading, AWrongCitationOfARecordIsSaidOnce) {
    const auto fault = only_fault_of_ropes(
        rope_record("r", "source = \"bok\"\nlocator = \"p. 1\"\nstatus = \"printed\"\n"
                         "breaking = { value = 5, unit = \"kN\" }\n"
                         "mass = { value = 5, unit = \"g/m\" }"));
    EXPECT_EQ(fault.code, Code::source_unknown);
    EXPECT_EQ(fault.at.line, 7U);
}

TEST(Loading, ASpreadNeedsAnOriginAndOneForm) {
    for (const std::string spread :
         {"value = 5, sd = 1", "value = 5, plus_minus = 1", "low = 4, high = 6",
          "value = 5, spread = \"measured\"", "value = 5, sd = 1, spread = \"guess\"",
          "value = 5, sd = 1, plus_minus = 1, spread = \"measured\"",
          "low = 4, high = 6, sd = 1, spread = \"measured\"",
          "low = 6, high = 4, spread = \"measured\"",
          "low = 4, high = 6, value = 7, spread = \"measured\"",
          "low = 4, spread = \"measured\""}) {
        const auto fault = only_fault_of_rules(
            rule_record("a", "tail = { " + spread + ", unit = \"D\", " + cited + " }"));
        EXPECT_EQ(fault.at.line, 4U) << spread;
    }
}

TEST(Loading, SizesMustBeReadableAndInOrder) {
    const std::string tail = "\ntail = { value = 72, unit = \"D\", " + cited + " }";
    EXPECT_EQ(only_fault_of_rules(rule_record("a", "from = \"half an inch\"" + tail)).field,
              "from");
    EXPECT_EQ(only_fault_of_rules(rule_record("a", "up_to = \"0 mm\"" + tail)).field, "up_to");
    EXPECT_EQ(
        only_fault_of_rules(rule_record("a", "from = \"8 mm\"\nup_to = \"6 mm\"" + tail)).field,
        "from");
}

TEST(Loading, ARuleNeedsItsPlainKeysAndAFigure) {
    auto fault = only_fault_of_rules("[[rule]]\nname = \"a\"\ntail = { value = 1, unit = \"D\", " +
                                     cited + " }\n");
    EXPECT_EQ(fault.code, Code::table_key_missing);
    EXPECT_EQ(fault.field, "id");
    EXPECT_EQ(only_fault_of_rules(rule_record("a", "")).code, Code::table_key_missing);
    const std::string tail = "\ntail = { value = 1, unit = \"D\", " + cited + " }";
    EXPECT_EQ(only_fault_of_rules(rule_record("a", "default = \"yes\"" + tail)).field, "default");
    EXPECT_EQ(only_fault_of_rules(rule_record("a", "kinds = \"bowline\"" + tail)).field, "kinds");
    EXPECT_EQ(only_fault_of_rules(rule_record("a", "kinds = []" + tail)).field, "kinds");
    EXPECT_EQ(only_fault_of_rules(rule_record("a", "tail = 72")).field, "tail");
}

TEST(Loading, TheSameIdTwiceInOneFolder) {
    const std::string tail = "tail = { value = 72, unit = \"D\", " + cited + " }";
    const auto fault = only_fault_of_rules(rule_record("a", tail) + rule_record("a", tail));
    EXPECT_EQ(fault.code, Code::duplicate_record);
    EXPECT_EQ(fault.at.line, 5U);
    EXPECT_EQ(only_fault_of_ropes(rope_record("r", "") + rope_record("r", "")).code,
              Code::duplicate_record);
}

TEST(Loading, RopesAreCheckedValueByValue) {
    auto fault = only_fault_of_ropes(
        rope_record("r", "breaking = { value = 5, unit = \"kn\", " + cited + " }"));
    EXPECT_EQ(fault.at.line, 7U);
    EXPECT_THAT(fault.text, ::testing::HasSubstr("did you mean \"kN\""));
    fault = only_fault_of_ropes(
        rope_record("r", "mass = { value = 0, unit = \"g/m\", " + cited + " }"));
    EXPECT_EQ(fault.field, "value");
    fault = only_fault_of_ropes(
        rope_record("r", "stretch = { value = 2, unit = \"%\", at = \"20\", " + cited + " }"));
    EXPECT_EQ(fault.field, "at");
    fault = only_fault_of_ropes(
        rope_record("r", "stretch = { value = 2, unit = \"%\", " + cited + " }"));
    EXPECT_EQ(fault.code, Code::table_key_missing);
    fault = only_fault_of_ropes(
        rope_record("r", "core_diameter = { value = 2, unit = \"mm\", " + cited + " }"));
    EXPECT_EQ(fault.field, "core_diameter");
    EXPECT_EQ(only_fault_of_ropes(rope_record("r", "breaking = \"5 kN\"")).field, "breaking");
    EXPECT_EQ(only_fault_of_ropes(rope_record("r", "color = \"red\"")).field, "color");
    fault = only_fault_of_ropes("[[rope]]\nid = \"r\"\ntitle = \"t\"\nconstruction = \"4-strand\"\n"
                                "fibre = \"nylon\"\ndiameter = \"6 mm\"\n");
    EXPECT_THAT(fault.text, ::testing::HasSubstr("did you mean \"3-strand\""));
    fault = only_fault_of_ropes("[[rope]]\nid = \"r\"\ntitle = \"t\"\nconstruction = \"3-strand\"\n"
                                "fibre = \"nylon\"\ndiameter = \"6\"\n");
    EXPECT_EQ(fault.field, "diameter");
}

TEST(Loading, AllFaultsAreCollected) {
    const Folder folder;
    folder.write("constructions.toml",
                 rule_record("a", "tail = { value = -1, unit = \"%\", sauce = 1 }"));
    folder.write("ropes/made-up.toml", rope_record("r", "color = \"red\""));
    // Key, unit, source, locator, status and value of the figure; the rope's key.
    EXPECT_EQ(faults_of({folder.path()}).size(), 7U);
}

TEST(Loading, TheFirstFaultIsReturned) {
    const Folder folder;
    folder.write("ropes/made-up.toml", rope_record("r", "color = \"red\"\nsize = 1"));
    FaultSink sink;
    const std::vector<std::string> folders{folder.path()};
    const auto catalogue = Catalogue::load(folders, sink);
    ASSERT_FALSE(catalogue.has_value());
    EXPECT_EQ(sink.count(), 2U);
    EXPECT_EQ(catalogue.error().field, "color");
}

} // namespace
} // namespace libsplice::testing
