// The sheet that is read at the bench: what stands on it, in what order, and how wide it is.
#include "libsplice/base/text.h"
#include "libsplice/sheet/words/fill_text.h"

#include "bench.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <sstream>

namespace libsplice {
namespace {

void expect_narrow(const std::string& sheet) {
    std::istringstream lines(sheet);
    for (std::string line; std::getline(lines, line);) {
        EXPECT_LE(character_count(line), 80U) << line;
    }
}

/// The words of a sheet with single blanks, so that a line break does not matter.
std::string words_of(const std::string& sheet) {
    std::istringstream in(sheet);
    std::string words;
    for (std::string word; in >> word;) {
        words += word + ' ';
    }
    return words;
}

void expect_in_order(const std::string& sheet, std::initializer_list<std::string_view> texts) {
    const std::string words = words_of(sheet);
    std::size_t at = 0;
    for (const auto text : texts) {
        const std::size_t found = words.find(text, at);
        ASSERT_NE(found, std::string::npos) << text << "\nis missing, or too early, in\n" << sheet;
        at = found;
    }
}

TEST(TextSheet, FollowsTheOrderOfTheWork) {
    Bench bench;
    expect_in_order(
        bench.sheet(Format::text),
        {"trapeze line | No 1 | make 2",
         "C U T 2.765 m",
         "12-strand HMPE 5 mm",
         "Mark with 4.5 kg on the rope.",
         "Prestretched no",
         "5.0 mm in diameter",
         "Finished 2.000 m",
         "exact, 3 mm either way; chance of falling outside 25 %",
         "THREAD NOW ball, ring",
         "END A, made first: hand-eye",
         "near throat 300 mm 200 mm",
         "far throat 400 mm 100 mm",
         "1. Lead 300 mm",
         "at 400 mm",
         "Bury 300 mm; smallest published 200 mm; the rope is 7.1 mm",
         "CAUTION a tail of 300 mm is short",
         "CHECK Load to 4.5 kg. From the bearing point of end a to the far throat mark of end b "
         "must read 1.970 m (1.967 m to 1.973 m)",
         "read ____",
         "END B, made last",
         "tail end 15 mm 15 mm 2.370 m",
         "far throat 415 mm 100 mm 1.970 m",
         "Between the marks",
         "1.950 m",
         "at 415 mm",
         "Trim the last 15 mm only after the check. It holds spare 13 mm, rounding 2 mm.",
         "end a retains 90 %",
         "On this sheet",
         "maker's own splicing instructions",
         "Test every line before use",
         "competent person",
         "Local rules",
         "fit for use",
         "risk of 1 %",
         "Sources"});
}

TEST(TextSheet, TheLedgerIsShownWhereItIsAskedFor) {
    Bench bench;
    EXPECT_EQ(bench.sheet(Format::text).find("LEDGER"), std::string::npos);
    SheetOptions options;
    options.ledger = true;
    expect_in_order(bench.sheet(Format::text, options),
                    {"LEDGER", "finished length - 2.000 m 1.0 mm tape job",
                     "take-up as spliced a 20 mm 10.0 mm take-up", "spare b 13 mm",
                     "cut length 2.765 m"});
}

TEST(TextSheet, NothingIsWiderThanThePage) {
    Bench bench;
    const std::string one_word(300, 'x');
    std::string greek;
    for (int i = 0; i < 120; ++i) {
        greek += "αβγ ";
    }
    bench.piece.name = one_word;
    bench.piece.boat = greek;
    bench.piece.fit_first = bench.piece.note = one_word;
    bench.piece.colour = bench.piece.lot = bench.piece.pair = greek;
    bench.piece.cut = mm(123'456'789);
    for (const UnitSystem units : {UnitSystem::metric, UnitSystem::imperial}) {
        SheetOptions options;
        options.units = units;
        options.ledger = true;
        const std::string sheet = bench.sheet(Format::text, options);
        expect_narrow(sheet);
        EXPECT_EQ(std::ranges::count(sheet, 'x') / 2 >= 3 * 300, true); // nothing is cut off
        expect_narrow(bench.end_sheet(Format::text, options));
    }
    bench.refuse();
    bench.fault.text = greek + one_word;
    expect_narrow(bench.sheet(Format::text));
}

TEST(TextSheet, ANumberStaysWithItsUnit) {
    Bench bench;
    for (std::size_t length = 40; length < 80; ++length) {
        const std::string note = std::string(length, 'x') + " 12 ft 6 3/4 in and 875 mm";
        bench.piece.note = note;
        const std::string sheet = bench.sheet(Format::text);
        EXPECT_NE(sheet.find("12 ft 6 3/4 in"), std::string::npos) << sheet;
        EXPECT_NE(sheet.find("875 mm"), std::string::npos) << sheet;
    }
}

TEST(TextSheet, ControlBytesAreShownNotSent) {
    Bench bench;
    bench.piece.name = "a\x1b[31mb";
    const std::string sheet = bench.sheet(Format::text);
    EXPECT_EQ(sheet.find('\x1b'), std::string::npos);
    EXPECT_NE(sheet.find("a\\x1b[31mb"), std::string::npos);
}

TEST(TextSheet, SaysHowToMark) {
    Bench bench;
    SheetOptions imperial;
    imperial.units = UnitSystem::imperial;
    expect_in_order(bench.sheet(Format::text, imperial), {"Mark with 10 lb on the rope."});
    bench.plan.states.marking_tension = {};
    expect_in_order(bench.sheet(Format::text), {"Mark relaxed and straight."});
    bench.plan.states.marking_basis = MarkingTension::Basis::slack;
    expect_in_order(bench.sheet(Format::text), {"Mark slack.", "Lay it slack."});
}

TEST(TextSheet, InImperialUnitsNoMetricLengthIsLeft) {
    Bench bench;
    bench.piece.rope = "a rope";
    SheetOptions imperial;
    imperial.units = UnitSystem::imperial;
    imperial.ledger = true;
    const std::string sheet = bench.sheet(Format::text, imperial);
    // 2765 mm = 108.858 in = 9 ft 0 14/16 in
    EXPECT_NE(sheet.find("9 ft 0 7/8 in"), std::string::npos) << sheet;
    EXPECT_EQ(sheet.find(" mm"), std::string::npos);
}

TEST(TextSheet, ARefusedPieceSaysWhyInTheSamePlace) {
    Bench bench;
    bench.refuse();
    const std::string sheet = bench.sheet(Format::text);
    expect_in_order(sheet, {"trapeze line", "N O T C U T", "Why the buries meet", "job.csv:7:3"});
    EXPECT_EQ(sheet.find("Trim"), std::string::npos);
}

TEST(TextSheet, WithTheOtherEndFirstTheMarksChangeSides) {
    Bench bench;
    bench.plan.ends.first_end = LineEnd::b;
    expect_in_order(bench.sheet(Format::text),
                    {"END B, made first", "END A, made last", "bearing point of"});
}

TEST(TextEnd, ShowsTheAllowanceAndWhatItIsMadeOf) {
    const Bench bench;
    const std::string sheet = bench.end_sheet(Format::text);
    expect_in_order(sheet,
                    {"hand-eye, an eye made up", "A L L O W A N C E 380 mm",
                     "rope round the eye - 100 mm", "allowance 380 mm", "far throat 400 mm 100 mm",
                     "tail 300 mm", "throat angle 23 degrees", "1. Lead 300 mm",
                     "CAUTION a tail of 300 mm", "90 % of the rope's", "Follow the rope maker's"});
}

std::string filled(const Bench& bench, std::string_view text, Nanometres over = 0,
                   UnitSystem units = UnitSystem::metric) {
    std::string into;
    append_filled(into, text, {bench.eye, bench.book.names(), over, units});
    return into;
}

TEST(FillText, PutsFiguresInTheirPlaces) {
    const Bench bench;
    EXPECT_EQ(filled(bench, "{tail}"), "300 mm");
    EXPECT_EQ(filled(bench, "{tail}", 0, UnitSystem::imperial), "11 13/16 in"); // 11.811 in
    EXPECT_EQ(filled(bench, "{tucks} tucks"), "5 tucks");
    EXPECT_EQ(filled(bench, "opens to {throat_angle}"), "opens to 23 degrees");
    EXPECT_EQ(filled(bench, "at {@far throat}, {@near throat}", mm(15)), "at 415 mm, 315 mm");
    EXPECT_EQ(filled(bench, "no figure at all"), "no figure at all");
    EXPECT_EQ(filled(bench, ""), "");
}

TEST(FillText, WhatTheEndDoesNotHaveIsSaid) {
    const Bench bench;
    EXPECT_EQ(filled(bench, "{pin} and {@crown}"), "(no figure) and (no figure)");
    EXPECT_EQ(filled(bench, "an open { brace"), "an open { brace");
    EXPECT_EQ(filled(bench, "} {tail}"), "} 300 mm");
}

TEST(Formats, AreReadByTheirNames) {
    EXPECT_EQ(read_format("text"), Format::text);
    EXPECT_EQ(read_format("csv"), Format::csv);
    EXPECT_EQ(read_format("json"), Format::json);
    EXPECT_EQ(read_format("xml"), std::nullopt);
}

} // namespace
} // namespace libsplice
