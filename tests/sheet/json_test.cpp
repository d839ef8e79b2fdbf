// JSON of a cut sheet and of one end, read back by a library.
#include "libsplice/sheet/json/json_text.h"

#include "bench.h"

#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

#include <cmath>
#include <map>
#include <set>

namespace libsplice::testing {
namespace {

using Json = nlohmann::ordered_json;

std::vector<std::string> keys_of(const Json& object) {
    std::vector<std::string> keys;
    for (const auto& [key, value] : object.items()) {
        keys.push_back(key);
    }
    return keys;
}

using Keys = std::vector<std::string>;

const Keys piece_keys{"name",
                      "boat",
                      "quantity",
                      "rope",
                      "finished_m",
                      "cut_m",
                      "ledger",
                      "marks",
                      "check",
                      "retained_strength",
                      "cautions",
                      "error",
                      "steps",
                      "between_marks_m",
                      "marking_tension_n",
                      "prestretched",
                      "fit",
                      "tolerance_m",
                      "outside_tolerance",
                      "outside_cause",
                      "pair_apart",
                      "first_end",
                      "state",
                      "pair",
                      "lot",
                      "colour",
                      "fit_first",
                      "note",
                      "design_factor",
                      "load_n",
                      "load",
                      "carries_person",
                      "person_rules",
                      "sleeve",
                      "route",
                      "stretch_at_load_m",
                      "elastic"};

Json sheet_as_json(const std::vector<Line>& lines, const SheetOptions& options = {}) {
    return Json::parse(sheet_of(lines, Format::json, options));
}

Json piece_as_json(const Line& line) {
    return sheet_as_json({line})["pieces"][0];
}

TEST(JsonSheet, HasTheKeysThatWerePromised) {
    const Json sheet = sheet_as_json({plain_line, two_eyes()});
    EXPECT_EQ(keys_of(sheet),
              (Keys{"schema", "version", "tables", "plug_ins", "pieces", "sources", "counts"}));
    ASSERT_EQ(sheet["pieces"].size(), 2U);
    const Json& piece = sheet["pieces"][1];
    EXPECT_EQ(keys_of(piece), piece_keys);
    EXPECT_EQ(sheet["schema"], 1);
    EXPECT_EQ(sheet["counts"], (Json{{"lines", 2}, {"pieces", 3}, {"refused", 0}}));
    for (const Json& mark : piece["marks"]) {
        EXPECT_EQ(keys_of(mark), (Keys{"end", "number", "name", "from_end_m"}));
    }
    for (const Json& step : piece["steps"]) {
        for (const char* key : {"end", "action", "at", "text"}) {
            EXPECT_TRUE(step.contains(key)) << key << " of " << step;
        }
    }
}

TEST(JsonSheet, FiguresAreInSiUnitsWhateverIsAskedFor) {
    SheetOptions imperial;
    imperial.units = UnitSystem::imperial;
    EXPECT_EQ(sheet_of({two_eyes()}, Format::json, imperial), sheet_of({two_eyes()}, Format::json));
    const Line loaded = with(two_eyes(), {{"load", "1.2 kN"}, {"carries_person", "yes"}});
    const Json piece = piece_as_json(loaded);
    EXPECT_EQ(piece["finished_m"], 2.0);
    EXPECT_EQ(piece["tolerance_m"], 0.01);
    EXPECT_EQ(piece["load_n"], 1200.0);
    EXPECT_EQ(piece["carries_person"], true);
    EXPECT_EQ(piece["prestretched"], true);
    EXPECT_EQ(piece["first_end"], "a");
    EXPECT_EQ(piece["fit_first"], "ball, ring");
    // The reference tension of rope of 5 mm is 25 / 8 kgf = 3.125 x 9.80665 N.
    EXPECT_NEAR(piece["marking_tension_n"].get<double>(), 30.646, 0.001);
}

TEST(JsonSheet, AnyoneCanAddTheLedgerUp) {
    const Json piece = piece_as_json(two_eyes());
    long long sum = 0;
    std::set<std::string> own;
    for (const auto& row : piece["ledger"]) {
        sum += std::llround(row["length_m"].get<double>() * 1e9);
        const auto group = row["group"].get<std::string>();
        if (group.find(": ") != std::string::npos) {
            EXPECT_TRUE(own.insert(group).second) << group;
        }
    }
    EXPECT_EQ(sum, std::llround(piece["cut_m"].get<double>() * 1e9));
}

// Last mark of end a + what lies between + last mark of end b = cut length.
TEST(JsonSheet, MarksAndWhatLiesBetweenMakeTheCutLength) {
    const Json piece = piece_as_json(two_eyes());
    std::map<std::string, double> last;
    for (const Json& mark : piece["marks"]) {
        last[mark["end"]] = mark["from_end_m"];
    }
    EXPECT_NEAR(last.at("a") + last.at("b") + piece["between_marks_m"].get<double>(),
                piece["cut_m"].get<double>(), 1e-9);
}

TEST(JsonSheet, NamesEachDocumentOnce) {
    const Json sheet = sheet_as_json({two_eyes(), two_eyes()});
    std::set<std::string> keys;
    for (const Json& source : sheet["sources"]) {
        const std::string key = source["key"];
        EXPECT_TRUE(keys.insert(key).second) << key;
        EXPECT_EQ(source["title"], shipped_book().catalogue().find_source(key)->title);
    }
    EXPECT_FALSE(keys.empty());
}

TEST(JsonSheet, ARefusedLineKeepsItsPlace) {
    const Fault fault = refuse_one(refused_line());
    const Json sheet = sheet_as_json({refused_line(), plain_line});
    const Json& piece = sheet["pieces"][0];
    EXPECT_EQ(keys_of(piece), piece_keys);
    EXPECT_TRUE(piece["cut_m"].is_null());
    EXPECT_TRUE(piece["check"].is_null());
    EXPECT_EQ(piece["ledger"], Json::array());
    EXPECT_EQ(piece["marks"], Json::array());
    EXPECT_EQ(piece["error"]["code"], static_cast<int>(fault.code));
    EXPECT_EQ(piece["error"]["text"], fault.text);
    EXPECT_EQ(piece["error"]["at"], to_text(fault.at));
    EXPECT_TRUE(sheet["pieces"][1]["error"].is_null());
}

TEST(JsonSheet, ARelaxedLineHasNoMarkingTension) {
    EXPECT_TRUE(
        piece_as_json(with(plain_line, {{"rope", "demo-shock-5"}}))["marking_tension_n"].is_null());
}

TEST(JsonSheet, ASheetWithoutPiecesIsWhole) {
    std::string text;
    Output output = Output::to_string(text);
    const auto writer = row_of(Format::json).cut(output, shipped_book(), {});
    writer->begin();
    writer->end({});
    output.flush();
    EXPECT_EQ(Json::parse(text)["pieces"], Json::array());
}

TEST(JsonSheet, NamesSurviveWhateverIsInThem) {
    const std::string name = "a \\ \t\x01\x7f µ\xf0\x9f\xaa\xa2 b";
    EXPECT_EQ(piece_as_json(with(plain_line, {{"name", name}}))["name"], name);
}

TEST(JsonText, BytesThatAreNotUtf8AreReplaced) {
    std::string text;
    Output output = Output::to_string(text);
    JsonText(output).text("a\xff\xc3z");
    output.flush();
    EXPECT_EQ(text, "\"a\\ufffd\\ufffdz\"");
}

TEST(JsonText, NumbersAreRounded) {
    std::string text;
    Output output = Output::to_string(text);
    JsonText json(output);
    json.begin_array();
    json.number(0.1 + 0.2);
    json.number(2.0 / 3.0);
    json.number(14'000.0);
    json.metres(-1);
    json.metres(6'475'000'000);
    json.whole(-7);
    json.boolean(true);
    json.null();
    json.end_array();
    output.flush();
    EXPECT_EQ(text, "[0.3,0.666666666667,14000,-0.000000001,6.475,-7,true,null]");
}

TEST(JsonText, ALengthIsRoundedToNanometres) {
    std::string text;
    Output output = Output::to_string(text);
    JsonText json(output);
    json.begin_answer();
    json.number("sd_m", 0.0014664696837416492);
    json.number("mass_kg", 0.0014664696837416492);
    json.end_object();
    output.flush();
    EXPECT_EQ(text, R"({"schema":1,"sd_m":0.00146647,"mass_kg":0.00146646968374})");
}

TEST(JsonEnd, HasTheKeysThatWerePromised) {
    const Json end =
        Json::parse(end_sheet_of("buried-eye", "12-strand HMPE 5 mm",
                                 {{"eye", "40 mm", {}}, {"pin", "8 mm", {}}}, Format::json));
    EXPECT_EQ(keys_of(end),
              (Keys{"schema", "kind", "rope", "allowance_m", "ledger", "marks", "taper", "steps",
                    "values", "retained_strength", "cautions", "stretch", "plug_ins", "sources"}));
    long long sum = 0;
    for (const Json& row : end["ledger"]) {
        sum += std::llround(row["length_m"].get<double>() * 1e9);
    }
    EXPECT_EQ(sum, std::llround(end["allowance_m"].get<double>() * 1e9));
    EXPECT_EQ(end["values"]["eye_m"], 0.04);
}

} // namespace
} // namespace libsplice::testing
