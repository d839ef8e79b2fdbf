// Cutting through the C library: jobs and single lines in, pieces and their parts out.
#include "c_host.h"

#include <cmath>
#include <cstring>
#include <limits>

namespace libsplice::testing {
namespace {

constexpr std::string_view csv_job =
    "name,rope,length,fit,prestretched,end_a,end_a.eye,end_a.pin\n"
    "outhaul,demo-b12-hmpe-3,2.4 m,trim-aboard,yes,buried-eye,30 mm,6 mm\n"
    "wrong,demo-b12-hmpe-3,2.4 metres,trim-aboard,yes,,,\n";
constexpr std::string_view toml_job = "[[line]]\n"
                                      "name = \"main halyard\"\n"
                                      "rope = \"double-braid polyester 6 mm\"\n"
                                      "length = \"15.2 m\"\n"
                                      "prestretched = \"yes\"\n"
                                      "end_a = { kind = \"bowline\", loop = \"60 mm\", "
                                      "pin = \"8 mm\" }\n"
                                      "end_b = \"whipped\"\n";

splice_status add_csv(splice_sheet* sheet, std::string_view job, splice_fault* fault = nullptr) {
    return splice_sheet_add_csv(sheet, job.data(), job.size(), "job.csv", fault);
}

std::vector<splice_cell> outhaul_with(const char* name, const char* text) {
    std::vector<splice_cell> cells = outhaul;
    for (splice_cell& cell : cells) {
        if (std::strcmp(cell.name, name) == 0) {
            cell.text = text;
            return cells;
        }
    }
    cells.push_back({name, text});
    return cells;
}

TEST(Sheet, CutsALineGivenCellByCell) {
    const auto sheet = open_sheet();
    ASSERT_EQ(add(sheet.get(), outhaul), 0);
    const splice_piece piece = piece_of(sheet.get());
    EXPECT_EQ(piece.fault_code, 0);
    EXPECT_STREQ(piece.name, "outhaul");
    EXPECT_STREQ(piece.end_a, "buried-eye");
    EXPECT_EQ(piece.quantity, 1);
    EXPECT_DOUBLE_EQ(piece.cut_m, 2.685); // by hand, in the page of buried-eye
    EXPECT_DOUBLE_EQ(piece.finished_m, 2.4);
    EXPECT_EQ(piece.first_end, static_cast<std::uint32_t>(SPLICE_END_A));
    EXPECT_TRUE(std::isnan(piece.outside_tolerance));
}

TEST(Sheet, ARouteIsMeasuredButOpensNoFile) {
    const auto sheet = open_sheet();
    constexpr std::string_view job =
        "[[line]]\nname = \"a\"\nrope = \"demo-b12-hmpe-3\"\n"
        "route = { points = [[\"0 m\", \"0 m\"], [\"3 m\", \"4 m\"]] }\n"
        "[[line]]\nname = \"b\"\nrope = \"demo-b12-hmpe-3\"\nroute = \"/etc/hostname\"\n"
        "[[line]]\nname = \"c\"\nrope = \"demo-b12-hmpe-3\"\n"
        "route = { points_file = \"/etc/hostname\" }\n";
    ASSERT_EQ(splice_sheet_add_toml(sheet.get(), job.data(), job.size(), "job.toml", nullptr), 0);
    EXPECT_DOUBLE_EQ(piece_of(sheet.get(), 0).finished_m, 5.0);
    EXPECT_EQ(piece_of(sheet.get(), 1).fault_code, 118);
    EXPECT_EQ(piece_of(sheet.get(), 2).fault_code, 118);
}

TEST(Sheet, ALedgerAddsUpToTheNanometre) {
    const auto sheet = open_sheet();
    ASSERT_EQ(add(sheet.get(), outhaul), 0);
    const splice_piece piece = piece_of(sheet.get());
    std::int64_t sum = 0;
    std::string items;
    for (std::uint32_t i = 0; i < piece.row_count; ++i) {
        auto row = record<splice_row>();
        ASSERT_EQ(splice_sheet_row(sheet.get(), 0, i, &row, nullptr), 0);
        sum += row.length_nm;
        items += std::string(row.item) + ';';
        EXPECT_GT(std::strlen(row.source), 0U) << row.item;
        // Only what draws out takes off what its group errs.
        EXPECT_EQ(row.sd_m < 0.0, std::strcmp(row.item, "settling") == 0) << row.item;
        if (std::strcmp(row.item, "tail") == 0) {
            EXPECT_DOUBLE_EQ(row.length_m, 0.216); // 72 D of 3 mm
            EXPECT_EQ(row.end, static_cast<std::uint32_t>(SPLICE_END_A));
        }
    }
    EXPECT_EQ(sum, piece.cut_nm);
    EXPECT_EQ(items,
              "finished length;rope round the eye;throat to bearing point;tail;take-up as spliced;"
              "settling;cutting loss;cutting loss;spare;rounding;");
}

TEST(Sheet, MarksAreThoseOfTheSheet) {
    const auto sheet = open_sheet();
    ASSERT_EQ(add(sheet.get(), outhaul), 0);
    const splice_piece piece = piece_of(sheet.get());
    auto mark = record<splice_mark>();
    double before = 0.0;
    double last_of_a = 0.0;
    double last_of_b = 0.0;
    for (std::uint32_t i = 0; i < piece.mark_count; ++i) {
        ASSERT_EQ(splice_sheet_mark(sheet.get(), 0, i, &mark, nullptr), 0);
        const bool of_a = mark.end == SPLICE_END_A;
        EXPECT_GE(mark.from_end_m, of_a ? before : last_of_b);
        (of_a ? last_of_a : last_of_b) = mark.from_end_m;
        before = of_a ? mark.from_end_m : before;
    }
    EXPECT_NEAR(last_of_a + piece.between_marks_m + last_of_b, piece.cut_m, 1e-9);
}

TEST(Sheet, CutsJobsInMemory) {
    const auto sheet = open_sheet();
    ASSERT_EQ(add_csv(sheet.get(), csv_job), 0);
    auto fault = record<splice_fault>();
    ASSERT_EQ(splice_sheet_add_toml(sheet.get(), toml_job.data(), toml_job.size(), nullptr, &fault),
              0)
        << fault.text;
    ASSERT_EQ(splice_sheet_piece_count(sheet.get()), 3U);
    EXPECT_DOUBLE_EQ(piece_of(sheet.get(), 0).cut_m, 2.685);
    EXPECT_TRUE(std::isnan(piece_of(sheet.get(), 1).cut_m));
    EXPECT_DOUBLE_EQ(piece_of(sheet.get(), 2).cut_m, 15.480); // by hand, in the page of bowline

    auto counts = record<splice_counts>();
    ASSERT_EQ(splice_sheet_counts(sheet.get(), &counts, nullptr), 0);
    EXPECT_EQ(counts.lines, 3U);
    EXPECT_EQ(counts.pieces, 2U);
    EXPECT_EQ(counts.refused, 1U);
}

TEST(Sheet, ARefusedLineStaysAsAPieceWithItsFault) {
    const auto sheet = open_sheet();
    ASSERT_EQ(add_csv(sheet.get(), csv_job), 0);
    const splice_piece piece = piece_of(sheet.get(), 1);
    EXPECT_EQ(piece.fault_code, 112);
    EXPECT_EQ(piece.row_count, 0U);
    EXPECT_STREQ(piece.name, "wrong");
    auto why = record<splice_fault>();
    ASSERT_EQ(splice_sheet_piece_fault(sheet.get(), 1, &why, nullptr), 0);
    EXPECT_EQ(why.code, 112);
    EXPECT_STREQ(why.at, "job.csv:3:23");
    EXPECT_STREQ(why.field, "length");
    ASSERT_EQ(splice_sheet_fault_count(sheet.get()), 1U);
    auto same = record<splice_fault>();
    ASSERT_EQ(splice_sheet_fault(sheet.get(), 0, &same, nullptr), 0);
    EXPECT_STREQ(same.text, why.text);
    why.code = 7;
    EXPECT_EQ(splice_sheet_piece_fault(sheet.get(), 0, &why, nullptr), 0);
    EXPECT_EQ(why.code, 7) << "a piece that is cut has no fault to tell";
}

TEST(Sheet, TheFaultOfALineGivenByCellsHasNoPlace) {
    const auto sheet = open_sheet();
    ASSERT_EQ(add(sheet.get(), outhaul_with("length", "-1 m")), 0);
    auto why = record<splice_fault>();
    ASSERT_EQ(splice_sheet_piece_fault(sheet.get(), 0, &why, nullptr), 0);
    EXPECT_EQ(why.code, 117);
    EXPECT_STREQ(why.at, "");
    EXPECT_STREQ(why.field, "length");
    ASSERT_EQ(splice_sheet_fault(sheet.get(), 0, &why, nullptr), 0);
    EXPECT_STREQ(why.at, "");
}

TEST(Sheet, CellsMayHoldWhatCsvMustQuote) {
    const auto sheet = open_sheet();
    ASSERT_EQ(add(sheet.get(), outhaul_with("note", "say \"when\",\nthen cut")), 0);
    EXPECT_STREQ(piece_of(sheet.get()).note, "say \"when\",\nthen cut");
}

TEST(Sheet, ANameMayGiveTheUnit) {
    const auto sheet = open_sheet();
    ASSERT_EQ(
        add(sheet.get(), {{"name", "bare"}, {"rope", "demo-b12-hmpe-3"}, {"length [mm]", "2400"}}),
        0);
    EXPECT_DOUBLE_EQ(piece_of(sheet.get()).finished_m, 2.4);
}

TEST(Sheet, ABrokenJobIsAFaultOfTheCallAndAllItsFaultsAreKept) {
    const auto sheet = open_sheet();
    auto fault = record<splice_fault>();
    EXPECT_EQ(add_csv(sheet.get(), "name,ropee,lenght\nx,y,z\n", &fault), 107);
    EXPECT_TRUE(says(fault, "ropee")) << fault.text;
    EXPECT_EQ(splice_sheet_piece_count(sheet.get()), 0U);
    EXPECT_EQ(splice_sheet_fault_count(sheet.get()), 2U);
    EXPECT_EQ(splice_sheet_add_csv(sheet.get(), nullptr, 0, nullptr, &fault), 103);
    EXPECT_EQ(splice_sheet_add_toml(sheet.get(), "[[line]", 7, "job.toml", &fault), 106);
    EXPECT_EQ(add(sheet.get(), {{"nmae", "x"}}, &fault), 107);
    EXPECT_EQ(add(sheet.get(), {{"name", "x"}, {"name", "y"}}, &fault), 104);
    EXPECT_EQ(add(sheet.get(), {{"name", ""}}, &fault), 111);
    ASSERT_EQ(add(sheet.get(), outhaul, &fault), 0) << "a sheet goes on after a fault";
    EXPECT_DOUBLE_EQ(piece_of(sheet.get()).cut_m, 2.685);
}

TEST(Sheet, CautionsAndStepsAreSentences) {
    auto settings = record<splice_settings>();
    settings.steps = 1;
    const auto sheet = open_sheet(&settings);
    ASSERT_EQ(add(sheet.get(), outhaul_with("end_b", "bowline")), 0);
    const splice_piece piece = piece_of(sheet.get());
    ASSERT_EQ(piece.fault_code, 0);
    EXPECT_GT(piece.step_count, 0U);
    EXPECT_GT(piece.caution_count, 0U);
    std::string sources;
    for (std::uint32_t i = 0; i < piece.step_count; ++i) {
        auto step = record<splice_step>();
        ASSERT_EQ(splice_sheet_step(sheet.get(), 0, i, &step, nullptr), 0);
        EXPECT_EQ(std::strchr(step.text, '{'), nullptr) << step.text;
    }
    for (std::uint32_t i = 0; i < piece.caution_count; ++i) {
        auto caution = record<splice_caution>();
        ASSERT_EQ(splice_sheet_caution(sheet.get(), 0, i, &caution, nullptr), 0);
        EXPECT_GT(std::strlen(caution.text), 0U);
        EXPECT_EQ(std::strchr(caution.text, '{'), nullptr) << caution.text;
        EXPECT_EQ(caution.end, static_cast<std::uint32_t>(SPLICE_END_B)); // it slips in this rope
        EXPECT_GT(std::strlen(caution.rule), 0U);
        sources += std::string(caution.rule) + '\n';
    }
    EXPECT_NE(sources.find("practical-sailor-hmpe-splice"), std::string::npos) << sources;
}

TEST(Sheet, SettingsDecideStepAndRisk) {
    auto settings = record<splice_settings>();
    settings.step_m = 0.1;
    settings.risk = 0.5; // half the lines may be short: no spare
    const auto sheet = open_sheet(&settings);
    ASSERT_EQ(add(sheet.get(), outhaul), 0);
    // 2.4 + 0.272 of allowances and no spare: up to the next tenth
    EXPECT_DOUBLE_EQ(piece_of(sheet.get()).cut_m, 2.7);
}

TEST(Sheet, WrongSettingsAreFaults) {
    const auto status_of = [](auto change) {
        auto settings = record<splice_settings>();
        change(settings);
        splice_sheet* sheet = nullptr;
        const splice_status status = splice_sheet_open(shipped(), &settings, &sheet, nullptr);
        EXPECT_EQ(sheet, nullptr);
        return status;
    };
    constexpr double not_a_number = std::numeric_limits<double>::quiet_NaN();
    EXPECT_EQ(status_of([](auto& settings) { settings.risk = 0.6; }), 117);
    EXPECT_EQ(status_of([](auto& settings) { settings.risk = not_a_number; }), 117);
    EXPECT_EQ(status_of([](auto& settings) { settings.step_m = -0.001; }), 117);
    EXPECT_EQ(status_of([](auto& settings) { settings.step_m = not_a_number; }), 117);
    EXPECT_EQ(status_of([](auto& settings) { settings.step_m = 2.0; }), 117);
    EXPECT_EQ(status_of([](auto& settings) { settings.marking_tension = "hard"; }), 113);
    EXPECT_EQ(status_of([](auto& settings) { settings.size = 0; }), 801);
}

TEST(Sheet, LengthsOfManyPiecesComeInOneCall) {
    const auto sheet = open_sheet();
    ASSERT_EQ(add_csv(sheet.get(), csv_job), 0);
    std::vector<double> cut_m(2);
    std::vector<double> finished_m(2);
    std::vector<std::int32_t> codes(2);
    ASSERT_EQ(splice_sheet_lengths(sheet.get(), 0, 2, cut_m.data(), finished_m.data(), codes.data(),
                                   nullptr),
              0);
    EXPECT_DOUBLE_EQ(cut_m[0], 2.685);
    EXPECT_TRUE(std::isnan(cut_m[1]));
    EXPECT_DOUBLE_EQ(finished_m[0], 2.4);
    EXPECT_EQ(codes, (std::vector<std::int32_t>{0, 112}));
    EXPECT_EQ(splice_sheet_lengths(sheet.get(), 2, 0, nullptr, nullptr, nullptr, nullptr), 0);
    EXPECT_EQ(splice_sheet_lengths(sheet.get(), 1, 2, nullptr, nullptr, nullptr, nullptr), 801);
    EXPECT_EQ(splice_sheet_lengths(sheet.get(), 3, 0, nullptr, nullptr, nullptr, nullptr), 801);
    EXPECT_EQ(splice_sheet_lengths(nullptr, 0, 0, nullptr, nullptr, nullptr, nullptr), 801);
}

TEST(Sheet, AClearedSheetStartsOverAndCountsOn) {
    const auto sheet = open_sheet();
    ASSERT_EQ(add_csv(sheet.get(), csv_job), 0);
    ASSERT_EQ(splice_sheet_clear(sheet.get(), nullptr), 0);
    EXPECT_EQ(splice_sheet_piece_count(sheet.get()), 0U);
    EXPECT_EQ(splice_sheet_fault_count(sheet.get()), 0U);
    ASSERT_EQ(add(sheet.get(), outhaul), 0);
    EXPECT_DOUBLE_EQ(piece_of(sheet.get()).cut_m, 2.685);
    auto counts = record<splice_counts>();
    ASSERT_EQ(splice_sheet_counts(sheet.get(), &counts, nullptr), 0);
    EXPECT_EQ(counts.lines, 3U);
}

TEST(Sheet, WrongCallsAreFaults) {
    const auto sheet = open_sheet();
    ASSERT_EQ(add(sheet.get(), outhaul), 0);
    auto fault = record<splice_fault>();
    splice_sheet* opened = nullptr;
    auto piece = record<splice_piece>();
    auto row = record<splice_row>();
    auto mark = record<splice_mark>();
    auto caution = record<splice_caution>();
    auto step = record<splice_step>();
    auto counts = record<splice_counts>();
    EXPECT_EQ(splice_sheet_open(nullptr, nullptr, &opened, &fault), 801);
    EXPECT_EQ(splice_sheet_open(shipped(), nullptr, nullptr, &fault), 801);
    EXPECT_EQ(splice_sheet_clear(nullptr, &fault), 801);
    EXPECT_EQ(splice_sheet_add_csv(nullptr, "", 0, "", &fault), 801);
    EXPECT_EQ(splice_sheet_add_csv(sheet.get(), nullptr, 1, "", &fault), 801);
    EXPECT_EQ(splice_sheet_add_toml(nullptr, "", 0, "", &fault), 801);
    EXPECT_EQ(splice_sheet_add_line(nullptr, outhaul.data(), 1, &fault), 801);
    EXPECT_EQ(splice_sheet_add_line(sheet.get(), nullptr, 1, &fault), 801);
    EXPECT_EQ(splice_sheet_add_line(sheet.get(), outhaul.data(), 0, &fault), 801);
    EXPECT_EQ(add(sheet.get(), {{nullptr, "x"}}, &fault), 801);
    EXPECT_EQ(splice_sheet_piece(nullptr, 0, &piece, &fault), 801);
    EXPECT_EQ(splice_sheet_piece(sheet.get(), 1, &piece, &fault), 801);
    EXPECT_EQ(splice_sheet_piece(sheet.get(), 0, nullptr, &fault), 801);
    piece.size = 4;
    EXPECT_EQ(splice_sheet_piece(sheet.get(), 0, &piece, &fault), 801);
    EXPECT_EQ(splice_sheet_piece_fault(nullptr, 0, &fault, &fault), 801);
    EXPECT_EQ(splice_sheet_piece_fault(sheet.get(), 1, &fault, &fault), 801);
    EXPECT_EQ(splice_sheet_row(nullptr, 0, 0, &row, &fault), 801);
    EXPECT_EQ(splice_sheet_row(sheet.get(), 1, 0, &row, &fault), 801);
    EXPECT_EQ(splice_sheet_row(sheet.get(), 0, 100, &row, &fault), 801);
    EXPECT_EQ(splice_sheet_row(sheet.get(), 0, 0, nullptr, &fault), 801);
    EXPECT_EQ(splice_sheet_mark(sheet.get(), 0, 100, &mark, &fault), 801);
    EXPECT_EQ(splice_sheet_caution(sheet.get(), 0, 100, &caution, &fault), 801);
    EXPECT_EQ(splice_sheet_step(sheet.get(), 0, 0, &step, &fault), 801) << "none are kept";
    EXPECT_EQ(splice_sheet_counts(nullptr, &counts, &fault), 801);
    EXPECT_EQ(splice_sheet_counts(sheet.get(), nullptr, &fault), 801);
    EXPECT_EQ(splice_sheet_fault(nullptr, 0, &fault, &fault), 801);
    EXPECT_EQ(splice_sheet_fault(sheet.get(), 0, &fault, &fault), 801);
    EXPECT_EQ(splice_sheet_piece_count(nullptr), 0U);
    EXPECT_EQ(splice_sheet_fault_count(nullptr), 0U);
    splice_sheet_close(nullptr);
}

} // namespace
} // namespace libsplice::testing
