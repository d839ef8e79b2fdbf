// Every mistake of a job is reported in one run, each at its place.
#include "jobs.h"

namespace libsplice::testing {
namespace {

struct Mistake {
    std::string_view row;
    Code code;
    std::uint32_t column; ///< in characters, where the cell starts
    std::string_view field;
};

constexpr std::string_view heading =
    "name,rope,length,end_a,end_a.eye,end_a.tail,fit,tolerance,quantity,prestretched,tension,load,"
    "first_end,extra,end_b,end_b.tail\n";

// One mistake a row. The columns are counted by hand on the rows' texts.
constexpr std::array mistakes{
    Mistake{",12-strand HMPE 5 mm,4 m", Code::cell_missing, 1, "name"},
    Mistake{"a,,4 m", Code::cell_missing, 3, "rope"},
    Mistake{"a,12-strand HMPE 5 mm,", Code::length_or_route, 23, "length"},
    Mistake{"a,12-strand HMPE 5 mm,4", Code::not_a_length, 23, "length"},
    Mistake{"a,12-strand HMPE 5 mm,long", Code::not_a_length, 23, "length"},
    Mistake{"a,12-strand HMPE 5 mm,0 m", Code::value_out_of_range, 23, "length"},
    Mistake{"a,12-strand HMPE 5 mm,-4 m", Code::value_out_of_range, 23, "length"},
    Mistake{"a,12-strand HMPE 5 mm,101 km", Code::not_a_length, 23, "length"},
    Mistake{"a,12-strand HMPE 5 mm,100001 m", Code::value_out_of_range, 23, "length"},
    Mistake{"a,13-strand HMPE 5 mm,4 m", Code::rope_not_understood, 3, "rope"},
    Mistake{"a,12-strand HMPA 5 mm,4 m", Code::rope_not_understood, 3, "rope"},
    Mistake{"a,12-strand HMPE 5,4 m", Code::rope_not_understood, 3, "rope"},
    Mistake{"a,demo-b12,4 m", Code::unknown_rope, 3, "rope"},
    Mistake{"a,12-strand HMPE 5 mm,4 m,buried-aye", Code::unknown_kind, 27, "end_a"},
    Mistake{"a,12-strand HMPE 5 mm,4 m,tucked-eye", Code::wrong_construction, 27, "end_a"},
    Mistake{"a,12-strand HMPE 5 mm,4 m,buried-eye,1 mm", Code::eye_too_small, 38, "end_a.eye"},
    Mistake{"a,12-strand HMPE 5 mm,4 m,buried-eye,round", Code::field_unreadable, 38, "end_a.eye"},
    Mistake{"a,12-strand HMPE 5 mm,4 m,buried-eye,11 m", Code::field_out_of_range, 38, "end_a.eye"},
    Mistake{"a,12-strand HMPE 5 mm,4 m,buried-eye,,100 mm", Code::below_published_minimum, 39,
            "end_a.tail"},
    Mistake{"a,12-strand HMPE 5 mm,4 m,whipped,,100 mm", Code::unknown_field, 36, "end_a.tail"},
    Mistake{"a,12-strand HMPE 5 mm,4 m,,,,tight", Code::not_a_choice, 30, "fit"},
    Mistake{"a,12-strand HMPE 5 mm,4 m,,,,trim-aboard,5 mm", Code::tolerance_without_exact, 42,
            "tolerance"},
    Mistake{"a,12-strand HMPE 5 mm,4 m,,,,,,0", Code::not_a_number, 32, "quantity"},
    Mistake{"a,12-strand HMPE 5 mm,4 m,,,,,,two", Code::not_a_number, 32, "quantity"},
    Mistake{"a,12-strand HMPE 5 mm,4 m,,,,,,,maybe", Code::not_a_choice, 33, "prestretched"},
    Mistake{"a,12-strand HMPE 5 mm,4 m,,,,,,,,hard", Code::not_a_tension, 34, "tension"},
    Mistake{"a,12-strand HMPE 5 mm,4 m,,,,,,,,,30 %", Code::not_a_tension, 35, "load"},
    Mistake{"a,12-strand HMPE 5 mm,4 m,,,,,,,,,,c", Code::not_a_choice, 36, "first_end"},
    Mistake{"a,12-strand HMPE 5 mm,4 m,,,,,,,,,,,-1 m", Code::value_out_of_range, 37, "extra"},
    Mistake{"a,12-strand HMPE 5 mm,4 m,,,,,,,,,,,,whiped", Code::unknown_kind, 38, "end_b"},
    Mistake{"a,12-strand HMPE 5 mm,4 m,,,,,,,,,,,,bare,9 mm", Code::unknown_field, 43,
            "end_b.tail"},
    Mistake{"a,demo-wire-4,4 m,,,,,,,,10 N", Code::measured_relaxed, 26, "tension"},
};

TEST(Faults, AllOfThemAtTheirPlaces) {
    std::string csv(heading);
    for (const Mistake& mistake : mistakes) {
        csv += std::string(mistake.row) + '\n';
    }
    const auto run = cut_text(csv);
    ASSERT_EQ(run.lines.size(), mistakes.size());
    ASSERT_EQ(run.faults.size(), mistakes.size());
    EXPECT_EQ(run.counts.refused, mistakes.size());
    for (std::size_t i = 0; i < mistakes.size(); ++i) {
        const Mistake& mistake = mistakes.at(i);
        const Fault& fault = run.faults[i];
        EXPECT_EQ(fault.code, mistake.code) << mistake.row << ": " << fault.text;
        EXPECT_EQ(fault.field, mistake.field) << mistake.row;
        EXPECT_EQ(fault.at, (Place{"job.csv", static_cast<std::uint32_t>(i + 2), mistake.column}))
            << to_text(fault);
        ASSERT_TRUE(run.lines[i].fault);
        EXPECT_EQ(run.lines[i].fault->code, mistake.code);
    }
}

TEST(Faults, SeveralOfOneRowAreAllReported) {
    const auto run =
        cut_text(std::string(heading) + ",12-strand HMPE 5 mm,long,buried-aye,,,tight,,0,maybe\n");
    std::vector<Code> codes;
    for (const Fault& fault : run.faults) {
        codes.push_back(fault.code);
    }
    std::ranges::sort(codes);
    const std::vector expected{Code::cell_missing, Code::not_a_length, Code::not_a_number,
                               Code::not_a_choice, Code::not_a_choice, Code::unknown_kind};
    EXPECT_EQ(codes, expected);
    EXPECT_EQ(run.counts.refused, 1U);
    EXPECT_EQ(run.lines.front().fault->code, Code::cell_missing);
}

TEST(Faults, BothEndsOfARowAreLookedAt) {
    const auto run = cut_lines({with(plain_line, {{"end_a", "buried-eye"},
                                                  {"end_a.tail", "1 D"},
                                                  {"end_b", "locked-eye"},
                                                  {"end_b.tail", "1 D"}})});
    ASSERT_EQ(run.faults.size(), 2U);
    EXPECT_EQ(run.faults[0].field, "end_a.tail");
    EXPECT_EQ(run.faults[1].field, "end_b.tail");
    EXPECT_FALSE(run.faults[0].rule.empty());
}

TEST(Faults, LengthAndRouteTogetherAreRefused) {
    const auto run = cut_text("name,rope,length,route\na,12-strand HMPE 5 mm,4 m,x\n");
    ASSERT_EQ(run.faults.size(), 1U);
    EXPECT_EQ(run.faults[0].code, Code::length_or_route);
}

TEST(Faults, RefusedLineKeepsItsNameAndCount) {
    const auto run =
        cut_lines({with(plain_line, {{"name", "strop"}, {"quantity", "4"}, {"end_a", "splice"}})});
    EXPECT_EQ(run.lines.front().name, "strop");
    EXPECT_EQ(run.lines.front().piece.quantity, 4);
    EXPECT_EQ(run.lines.front().piece.finished, 4'000'000'000);
    EXPECT_EQ(run.counts.pieces, 0U);
}

TEST(Faults, RowsThatTheReaderRefusesAreCountedOnce) {
    const auto run = cut_text("name,rope,length\na,12-strand HMPE 5 mm,4 m,too,many\n"
                              "b,12-strand HMPE 5 mm,4 m\n");
    EXPECT_EQ(run.faults.size(), 1U);
    EXPECT_EQ(run.counts.refused, 1U);
    EXPECT_EQ(run.lines.at(0).fault->code, Code::too_many_cells);
    EXPECT_FALSE(run.lines.at(1).fault);
}

} // namespace
} // namespace libsplice::testing
