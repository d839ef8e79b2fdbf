// JSON of a cut sheet and of one end, read back by a library.
#include "libsplice/sheet/json/json_text.h"

#include "bench.h"

#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

#include <cmath>
#include <map>
#include <set>

namespace libsplice {
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
                      "first_end",
                      "state",
                      "pair",
                      "lot",
                      "colour",
                      "fit_first",
                      "note",
                      "design_factor",
                      "load_n",
                      "carries_person",
                      "person_rules",
                      "sleeve",
                      "route",
                      "stretch_at_load_m",
                      "elastic"};

TEST(JsonSheet, HasTheKeysThatWerePromised) {
    Bench bench;
    const auto sheet = Json::parse(bench.sheet(Format::json));
    EXPECT_EQ(keys_of(sheet),
              (Keys{"schema", "version", "tables", "plug_ins", "pieces", "sources", "counts"}));
    ASSERT_EQ(sheet["pieces"].size(), 2U);
    const auto& piece = sheet["pieces"][1];
    EXPECT_EQ(keys_of(piece), piece_keys);
    EXPECT_EQ(keys_of(piece["ledger"][0]),
              (Keys{"item", "end", "length_m", "sd_m", "group", "source", "working"}));
    EXPECT_EQ(keys_of(piece["marks"][0]), (Keys{"end", "number", "name", "from_end_m"}));
    EXPECT_EQ(keys_of(piece["check"]), (Keys{"from", "to", "reads_m"}));
    EXPECT_EQ(sheet["counts"], (Json{{"lines", 2}, {"pieces", 4}, {"refused", 0}}));
}

TEST(JsonSheet, FiguresAreInSiUnitsWhateverIsAskedFor) {
    Bench bench;
    SheetOptions imperial;
    imperial.units = UnitSystem::imperial;
    const std::string text = bench.sheet(Format::json, imperial);
    EXPECT_EQ(text, bench.sheet(Format::json));
    const auto piece = Json::parse(text)["pieces"][0];
    EXPECT_EQ(piece["cut_m"], 2.765);
    EXPECT_EQ(piece["finished_m"], 2.0);
    EXPECT_EQ(piece["between_marks_m"], 1.95);
    EXPECT_EQ(piece["check"]["reads_m"], 1.97);
    EXPECT_EQ(piece["tolerance_m"], 0.003);
    EXPECT_EQ(piece["retained_strength"], 0.9);
    EXPECT_NEAR(piece["marking_tension_n"].get<double>(), 44.13, 0.005); // 4.5 x 9.80665
    EXPECT_TRUE(piece["design_factor"].is_null());
    EXPECT_EQ(piece["steps"][2],
              (Json{{"end", "b"},
                    {"action", "lead_in"},
                    {"at", {4}},
                    {"text", "Lead 300 mm of tail inside, past the far throat at 415 mm."}}));
}

TEST(JsonSheet, AnyoneCanAddTheLedgerUp) {
    Bench bench;
    const auto piece = Json::parse(bench.sheet(Format::json))["pieces"][0];
    long long sum = 0;
    std::map<std::string, double> together;
    std::set<std::string> own;
    for (const auto& row : piece["ledger"]) {
        sum += std::llround(row["length_m"].get<double>() * 1e9);
        const auto group = row["group"].get<std::string>();
        together[group] += row["sd_m"].get<double>();
        if (group.find(": ") != std::string::npos) {
            EXPECT_TRUE(own.insert(group).second) << group;
        }
    }
    EXPECT_EQ(sum, 2'765'000'000);
    double squares = 0.0;
    for (const auto& [group, sd] : together) {
        squares += sd * sd;
    }
    // tape 1 mm, stretch 2 mm, the take-ups of both ends together 20 mm
    EXPECT_NEAR(std::sqrt(squares), std::sqrt(1e-6 + 4e-6 + 4e-4), 1e-12);
    EXPECT_TRUE(own.contains("line: stretch"));
    EXPECT_TRUE(own.contains("a: tail"));
}

TEST(JsonSheet, RowsOfOneItemAndEndThatErrOnTheirOwnHaveTwoNames) {
    Bench bench;
    bench.piece.ledger.push_back(bench.piece.ledger[1]);
    const auto ledger = Json::parse(bench.sheet(Format::json))["pieces"][0]["ledger"];
    EXPECT_EQ(ledger[1]["group"], "line: stretch");
    EXPECT_EQ(ledger.back()["group"], "line: stretch 2");
}

TEST(JsonSheet, NamesEachDocumentOnce) {
    Bench bench;
    const auto sheet = Json::parse(bench.sheet(Format::json));
    const auto& key = bench.book.citation(document_of(bench.book)).key;
    ASSERT_EQ(sheet["sources"].size(), 1U); // job and geometry need no document
    EXPECT_EQ(sheet["sources"][0]["key"], key);
    EXPECT_EQ(sheet["sources"][0]["title"], bench.book.catalogue().find_source(key)->title);
}

TEST(JsonSheet, ARefusedLineKeepsItsPlace) {
    Bench bench;
    bench.refuse();
    const auto piece = Json::parse(bench.sheet(Format::json))["pieces"][0];
    EXPECT_EQ(keys_of(piece), piece_keys);
    EXPECT_TRUE(piece["cut_m"].is_null());
    EXPECT_TRUE(piece["check"].is_null());
    EXPECT_EQ(piece["ledger"], Json::array());
    EXPECT_EQ(piece["marks"], Json::array());
    EXPECT_EQ(piece["error"], (Json{{"code", 401},
                                    {"text", "the buries meet"},
                                    {"at", "job.csv:7:3"},
                                    {"field", "length"}}));
    bench.fault.rule = "a rule";
    EXPECT_EQ(Json::parse(bench.sheet(Format::json))["pieces"][0]["error"]["rule"], "a rule");
}

TEST(JsonSheet, ASlackOrRelaxedLineHasNoMarkingTension) {
    Bench bench;
    bench.plan.states.marking_tension = {};
    const auto piece = Json::parse(bench.sheet(Format::json))["pieces"][0];
    EXPECT_TRUE(piece["marking_tension_n"].is_null());
}

TEST(JsonSheet, ASheetWithoutPiecesIsWhole) {
    const Bench bench;
    std::string text;
    Output output = Output::to_string(text);
    const auto writer = row_of(Format::json).cut(output, bench.book, {});
    writer->begin();
    writer->end({});
    output.flush();
    EXPECT_EQ(Json::parse(text)["pieces"], Json::array());
}

TEST(JsonSheet, NamesSurviveWhateverIsInThem) {
    Bench bench;
    const std::string name = "a \"b\" \\ \n\t\x01\x7f µ\xf0\x9f\xaa\xa2";
    bench.piece.name = name;
    EXPECT_EQ(Json::parse(bench.sheet(Format::json))["pieces"][0]["name"], name);
}

TEST(JsonText, BytesThatAreNotUtf8AreReplaced) {
    std::string text;
    Output output = Output::to_string(text);
    JsonText(output).text("a\xff\xc3z");
    output.flush();
    EXPECT_EQ(text, "\"a\\ufffd\\ufffdz\"");
}

TEST(JsonText, NumbersReadBackTheSame) {
    std::string text;
    Output output = Output::to_string(text);
    JsonText json(output);
    json.begin_array();
    json.number(0.1 + 0.2);
    json.metres(-1);
    json.metres(6'475'000'000);
    json.whole(-7);
    json.boolean(true);
    json.null();
    json.end_array();
    output.flush();
    EXPECT_EQ(text, "[0.30000000000000004,-0.000000001,6.475,-7,true,null]");
}

TEST(JsonEnd, HasTheKeysThatWerePromised) {
    const Bench bench;
    const auto end = Json::parse(bench.end_sheet(Format::json));
    EXPECT_EQ(keys_of(end),
              (Keys{"kind", "rope", "allowance_m", "ledger", "marks", "taper", "steps", "values",
                    "retained_strength", "cautions", "stretch", "plug_ins", "sources"}));
    EXPECT_EQ(end["allowance_m"], 0.38);
    EXPECT_EQ(end["marks"][2], (Json{{"number", 3}, {"name", "far throat"}, {"from_end_m", 0.4}}));
    EXPECT_EQ(end["values"]["tail_m"], 0.3);
    EXPECT_EQ(end["values"]["tucks"], 5.0);
    EXPECT_EQ(
        end["steps"][1],
        (Json{{"end", nullptr}, {"action", "tuck"}, {"at", {2, 3}}, {"text", "Put in 5 tucks."}}));
    EXPECT_EQ(end["ledger"].size(), 4U);
    EXPECT_EQ(end["sources"].size(), 2U); // of its rows, and of its rope's stretch
}

} // namespace
} // namespace libsplice
