// Text for a terminal and a bench: one table of a job, the card of a line, an end.
#include "libsplice/base/text.h"
#include "libsplice/sheet/text/text_page.h"
#include "libsplice/sheet/words/fill_text.h"

#include "bench.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <initializer_list>
#include <sstream>

namespace libsplice::testing {
namespace {

std::vector<std::string> lines_of(const std::string& text) {
    std::istringstream in(text);
    std::vector<std::string> lines;
    for (std::string line; std::getline(in, line);) {
        lines.push_back(line);
    }
    return lines;
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

void expect_narrow(const std::string& sheet) {
    for (const std::string& line : lines_of(sheet)) {
        EXPECT_LE(character_count(line), TextPage::width) << line;
    }
}

TEST(TextTable, OneRowForLikeLines) {
    std::vector<Line> job;
    for (const char* boat : {"Cat 1", "Cat 2", "Cat 3"}) {
        job.push_back(with(two_eyes(), {{"boat", boat}}));
        job.push_back(with(plain_line, {{"boat", boat}, {"name", "lacing"}}));
    }
    const auto lines = lines_of(sheet_of(job, Format::text));
    ASSERT_GE(lines.size(), 3U);
    EXPECT_TRUE(lines[0].starts_with("line ")) << lines[0];
    EXPECT_TRUE(lines[1].starts_with("trapeze line")) << lines[1];
    EXPECT_NE(lines[1].find("Cat 1 to Cat 3 (2)"), std::string::npos) << lines[1];
    EXPECT_NE(lines[1].find("12-strand HMPE, 5 mm, blue"), std::string::npos) << lines[1];
    EXPECT_NE(lines[1].find("2.000"), std::string::npos) << lines[1];
    EXPECT_TRUE(lines[2].starts_with("lacing")) << lines[2];
    EXPECT_EQ(std::ranges::count_if(
                  lines, [](const auto& line) { return line.starts_with("trapeze line"); }),
              1);
}

TEST(TextTable, CautionsAreCountedAndNamedOnceBelow) {
    const Line person = with(two_eyes(), {{"carries_person", "yes"}, {"load", "1.2 kN"}});
    const std::string sheet = sheet_of({person, with(person, {{"boat", "No 2"}})}, Format::text);
    const auto heading = sheet.find("\nCautions:");
    ASSERT_NE(heading, std::string::npos) << sheet;
    const std::string falls = "a person who falls";
    const std::string words = words_of(sheet);
    EXPECT_NE(words.find(falls), std::string::npos);
    EXPECT_EQ(words.find(falls), words.rfind(falls));
}

TEST(TextTable, ALineThatCannotBeCutSaysWhyBelow) {
    const std::string sheet = sheet_of({refused_line(), two_eyes()}, Format::text);
    EXPECT_NE(sheet.find("not cut"), std::string::npos);
    expect_in_order(sheet, {"2.000", "Not cut:", "trapeze line:"});
}

TEST(TextTable, HostileNamesStayText) {
    const std::string sheet = sheet_of({with(two_eyes(), {{"name", "a\x1b[31mb"}})}, Format::text);
    EXPECT_EQ(sheet.find('\x1b'), std::string::npos);
    EXPECT_NE(sheet.find("a\\x1b[31mb"), std::string::npos);
}

TEST(TextCard, FollowsTheOrderOfTheWork) {
    expect_in_order(sheet_of({two_eyes()}, Format::text, in_full()),
                    {"1 trapeze line, make 2: No 1 (2)",
                     "CUT",
                     "12-strand HMPE, 5 mm, blue",
                     "Pull to mark at",
                     "Finished",
                     "2.000 m",
                     "exact: 1.990 m to 2.010 m",
                     "prestretched",
                     "Put on first ball, ring",
                     "End a, made first: locked-eye",
                     "no mark, in mm",
                     "taper",
                     "End b, made last: buried-eye",
                     "from the first end",
                     "Between the marks",
                     "1. End a:",
                     "must read",
                     "Thread now, because it does not go on once this end is closed: ball, ring.",
                     "End b:",
                     "Trim at the tail end mark",
                     "check read ____",
                     "finished ____",
                     "FOR THE OFFICE",
                     "lines: 1; pieces to cut: 2",
                     "maker's own splicing instructions",
                     "Test every line before use",
                     "competent person",
                     "Local rules",
                     "fit for use",
                     "risk of 1 %",
                     "Sources"});
}

TEST(TextCard, NothingIsLetterSpaced) {
    EXPECT_EQ(sheet_of({two_eyes()}, Format::text, in_full()).find("C U T"), std::string::npos);
}

// A mark's distance from the first end's bearing point and from the cut end add up to the same
// length for every mark of the end made last.
TEST(TextCard, TheLastEndIsMeasuredFromBothSides) {
    const One one = cut_one(two_eyes());
    const std::string sheet = sheet_of({two_eyes()}, Format::text, in_full());
    const auto rows = lines_of(sheet.substr(sheet.find("End b, made last")));
    std::vector<long> sums;
    for (const std::string& row : rows) {
        std::istringstream in(row);
        std::vector<std::string> words;
        for (std::string word; in >> word;) {
            words.push_back(word);
        }
        const bool one_mark = row.find("drop a pair") == std::string::npos;
        const bool is_mark =
            one_mark && words.size() > 4 && words[0].size() <= 2 &&
            std::ranges::all_of(words[0], [](char c) { return c >= '0' && c <= '9'; });
        if (is_mark) {
            sums.push_back(std::stol(words[words.size() - 3]) + std::stol(words.back()));
        }
        if (row.find("Between the marks") != std::string::npos) {
            break;
        }
    }
    ASSERT_GE(sums.size(), 4U) << sheet;
    for (const long sum : sums) {
        EXPECT_NEAR(static_cast<double>(sum), static_cast<double>(sums.front()), 1.0);
    }
    EXPECT_LT(static_cast<double>(sums.front()), in_millimetres(one.piece().cut));
}

TEST(TextCard, TheLedgerIsShownIfItIsAskedFor) {
    EXPECT_EQ(sheet_of({two_eyes()}, Format::text, in_full()).find("LEDGER"), std::string::npos);
    SheetOptions options = in_full();
    options.ledger = true;
    expect_in_order(
        sheet_of({two_eyes()}, Format::text, options),
        {"LEDGER", "finished length - 2.000 m", "take-up", "spare b", "rounding b", "cut length"});
}

TEST(TextCard, NothingIsWiderThanThePage) {
    const std::string one_word(300, 'x');
    std::string greek;
    for (int i = 0; i < 120; ++i) {
        greek += "αβγ ";
    }
    const Line wide = with(two_eyes(), {{"name", one_word},
                                        {"boat", greek},
                                        {"note", one_word},
                                        {"fit_first", one_word},
                                        {"lot", greek}});
    for (const UnitSystem units : {UnitSystem::metric, UnitSystem::imperial}) {
        SheetOptions options = in_full(units);
        options.ledger = true;
        const std::string sheet = sheet_of({wide}, Format::text, options);
        expect_narrow(sheet);
        EXPECT_GE(std::ranges::count(sheet, 'x'), 3 * 300); // nothing is cut off
    }
    expect_narrow(sheet_of({with(refused_line(), {{"name", one_word}})}, Format::text, in_full()));
}

TEST(TextCard, ANumberStaysWithItsUnit) {
    for (std::size_t length = 40; length < 80; ++length) {
        const std::string note = std::string(length, 'x') + " 12 ft 6 3/4 in and 875 mm";
        const std::string sheet =
            sheet_of({with(plain_line, {{"note", note}})}, Format::text, in_full());
        EXPECT_NE(sheet.find("12 ft 6 3/4 in"), std::string::npos) << sheet;
        EXPECT_NE(sheet.find("875 mm"), std::string::npos) << sheet;
    }
}

TEST(TextCard, SaysHowToMark) {
    expect_in_order(sheet_of({two_eyes()}, Format::text, in_full(UnitSystem::imperial)),
                    {"Pull to mark at", " lb"});
    const Line cord = with(plain_line, {{"rope", "demo-shock-5"}});
    expect_in_order(sheet_of({cord}, Format::text, in_full()), {"none: relaxed and straight"});
}

TEST(Card, SaysBesideTheMarksThatTheyLieShortByTheFirstStretch) {
    const Line fresh = with(two_eyes(), {{"prestretched", "no"}});
    expect_in_order(sheet_of({fresh}, Format::text, in_full()),
                    {"Pull to mark at", "in its first loads, so the marks lie short by that"});
    const std::string loaded =
        sheet_of({with(fresh, {{"prestretched", "yes"}})}, Format::text, in_full());
    EXPECT_EQ(loaded.find("lie short"), std::string::npos);
}

TEST(Card, MarksOnATailThatIsThinnedAreTape) {
    expect_in_order(sheet_of({two_eyes()}, Format::text, in_full()),
                    {"Mark with", "tape on a tail that is thinned"});
    const std::string plain = sheet_of({plain_line}, Format::text, in_full());
    EXPECT_EQ(words_of(plain).find("tape on a tail"), std::string::npos);
}

TEST(Card, PairMarksShareARow) {
    const std::string sheet = words_of(sheet_of({two_eyes()}, Format::text, in_full()));
    // Once at each end, five places in it: twelve strands drop five pairs.
    std::size_t rows = 0;
    for (auto at = sheet.find("drop a pair at each"); at != std::string::npos;
         at = sheet.find("drop a pair at each", at + 1)) {
        ++rows;
    }
    EXPECT_EQ(rows, 2U) << sheet;
}

TEST(TextCard, InImperialUnitsNoMetricLengthIsLeft) {
    const std::string sheet = sheet_of({with(plain_line, {{"name", "a line"}})}, Format::text,
                                       in_full(UnitSystem::imperial));
    // 4 m = 157.480 in = 13 ft 1.48 in, to the sixteenth 1 1/2
    EXPECT_NE(sheet.find("13 ft 1 1/2 in"), std::string::npos) << sheet;
    EXPECT_EQ(sheet.find(" mm"), std::string::npos) << sheet;
}

TEST(TextCard, ARefusedLineSaysWhyInTheSamePlace) {
    const std::string sheet = sheet_of({refused_line()}, Format::text, in_full());
    expect_in_order(sheet, {"trapeze line", "NOT CUT", "Why"});
    EXPECT_EQ(sheet.find("Trim"), std::string::npos);
}

TEST(TextCard, WithTheOtherEndFirstTheEndsChangePlaces) {
    expect_in_order(sheet_of({with(two_eyes(), {{"first_end", "b"}})}, Format::text, in_full()),
                    {"End b, made first", "End a, made last"});
}

TEST(TextEnd, ShowsTheAllowanceAndWhatItIsMadeOf) {
    expect_in_order(end_sheet_of("buried-eye", "12-strand HMPE 5 mm",
                                 {{"eye", "40 mm", {}}, {"pin", "8 mm", {}}}, Format::text),
                    {"buried-eye", "ALLOWANCE", "LEDGER", "allowance", "MARKS", "far throat",
                     "STEPS IN ORDER", "1. ", "Follow the rope maker's"});
}

/// An end with a tail of 300 mm and five tucks, its far throat at 400 mm.
End small_end() {
    End end;
    end.add(Mark{MarkName::near_throat, 300'000'000});
    end.add(Mark{MarkName::far_throat, 400'000'000});
    end.add(Value{ValueName::tail_m, 0.3});
    end.add(Value{ValueName::tucks, 5.0});
    end.add(Value{ValueName::throat_angle_deg, 23.4});
    return end;
}

std::string filled(std::string_view text, Nanometres over = 0,
                   UnitSystem units = UnitSystem::metric) {
    const End end = small_end();
    std::string into;
    append_filled(into, text, {end, shipped_book().names(), over, units});
    return into;
}

TEST(FillText, PutsFiguresInTheirPlaces) {
    EXPECT_EQ(filled("{tail}"), "300 mm");
    EXPECT_EQ(filled("{tail}", 0, UnitSystem::imperial), "11 13/16 in"); // 11.811 in
    EXPECT_EQ(filled("{tucks} tucks"), "5 tucks");
    EXPECT_EQ(filled("opens to {throat_angle}"), "opens to 23 degrees");
    EXPECT_EQ(filled("at {@far throat}, {@near throat}", 15'000'000), "at 415 mm, 315 mm");
    EXPECT_EQ(filled("no figure at all"), "no figure at all");
    EXPECT_EQ(filled(""), "");
}

TEST(FillText, WhatTheEndDoesNotHaveIsSaid) {
    EXPECT_EQ(filled("{pin} and {@crown}"), "(no figure) and (no figure)");
    EXPECT_EQ(filled("an open { brace"), "an open { brace");
    EXPECT_EQ(filled("} {tail}"), "} 300 mm");
}

TEST(Formats, AreReadByTheirNames) {
    EXPECT_EQ(read_format("text"), Format::text);
    EXPECT_EQ(read_format("csv"), Format::csv);
    EXPECT_EQ(read_format("json"), Format::json);
    EXPECT_EQ(read_format("xml"), std::nullopt);
}

} // namespace
} // namespace libsplice::testing
