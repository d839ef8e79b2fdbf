// Like lines give like pieces, whatever was cut before them.
#include "jobs.h"

namespace libsplice::testing {
namespace {

void expect_same(const Piece& one, const Piece& another, const std::string& which) {
    EXPECT_EQ(one.cut, another.cut) << which;
    EXPECT_EQ(one.outside_tails, another.outside_tails) << which;
    EXPECT_EQ(one.between_marks, another.between_marks) << which;
    EXPECT_EQ(one.check.has_value(), another.check.has_value()) << which;
    if (one.check && another.check) {
        EXPECT_EQ(one.check->reads, another.check->reads) << which;
    }
    EXPECT_EQ(one.chance_outside, another.chance_outside) << which;
    EXPECT_EQ(one.cautions.size(), another.cautions.size()) << which;
    ASSERT_EQ(one.ledger.size(), another.ledger.size()) << which;
    for (std::size_t i = 0; i < one.ledger.size(); ++i) {
        EXPECT_EQ(one.ledger[i].row.item, another.ledger[i].row.item) << which;
        EXPECT_EQ(one.ledger[i].row.length, another.ledger[i].row.length) << which;
        EXPECT_EQ(one.ledger[i].row.sd, another.ledger[i].row.sd) << which;
        EXPECT_EQ(one.ledger[i].end, another.ledger[i].end) << which;
    }
    ASSERT_EQ(one.marks.size(), another.marks.size()) << which;
    for (std::size_t i = 0; i < one.marks.size(); ++i) {
        EXPECT_EQ(one.marks[i].from_end, another.marks[i].from_end) << which;
        EXPECT_EQ(one.marks[i].name, another.marks[i].name) << which;
    }
}

/// The lines of many sorts, each with a name of its own.
std::vector<Line> named_sorts() {
    auto lines = many_sorts();
    for (std::size_t i = 0; i < lines.size(); ++i) {
        lines[i]["name"] = "line " + std::to_string(i);
    }
    return lines;
}

TEST(Alike, PieceIsThatOfAFreshCutter) {
    const auto lines = named_sorts();
    auto twice = lines;
    twice.insert(twice.end(), lines.begin(), lines.end());
    const auto run = cut_lines(twice);
    for (std::size_t i = 0; i < twice.size(); ++i) {
        const auto fresh = cut_one(twice[i]);
        expect_same(run.lines[i].piece, fresh.piece(), twice[i].at("name"));
    }
}

TEST(Alike, LikeLinesShareAPlanAndOthersDoNot) {
    const Line longer = with(plain_line, {{"name", "longer"}, {"length", "7 m"}, {"boat", "2"}});
    const Line eased = with(plain_line, {{"prestretched", "no"}});
    const auto run = cut_lines({plain_line, longer, eased, plain_line});
    EXPECT_EQ(run.lines[0].piece.line, run.lines[1].piece.line);
    EXPECT_EQ(run.lines[0].piece.line, run.lines[3].piece.line);
    EXPECT_NE(run.lines[0].piece.line, run.lines[2].piece.line);
    EXPECT_EQ(run.lines[1].piece.finished, 7'000'000'000);
}

TEST(Alike, ShuffledRowsGiveTheSamePieces) {
    const auto lines = named_sorts();
    std::vector<Line> shuffled;
    for (std::size_t i = 0; i < lines.size(); ++i) {
        shuffled.push_back(lines[i * 5 % lines.size()]); // 5 and 14 have no common divisor
    }
    ASSERT_EQ(lines.size(), 14U);
    const auto in_order = cut_lines(lines);
    const auto out_of_order = cut_lines(shuffled);
    for (std::size_t i = 0; i < lines.size(); ++i) {
        const auto& same = in_order.lines[i * 5 % lines.size()];
        EXPECT_EQ(out_of_order.lines[i].name, same.name);
        expect_same(out_of_order.lines[i].piece, same.piece, same.name);
    }
}

TEST(Alike, RefusedLineLeavesTheNextOneWhole) {
    const Line eye = with(plain_line, {{"end_a", "buried-eye"}});
    const Line wrong = with(eye, {{"end_a.tail", "100 mm"}});
    const Line too_short = with(eye, {{"length", "50 mm"}});
    const auto run = cut_lines({eye, wrong, eye, too_short, eye});
    const auto alone = cut_one(eye);
    for (const std::size_t i : {0U, 2U, 4U}) {
        EXPECT_FALSE(run.lines[i].fault);
        expect_same(run.lines[i].piece, alone.piece(), "line " + std::to_string(i));
    }
    for (const std::size_t i : {1U, 3U}) {
        ASSERT_TRUE(run.lines[i].fault);
        EXPECT_TRUE(run.lines[i].piece.ledger.empty() && run.lines[i].piece.marks.empty());
        EXPECT_EQ(run.lines[i].piece.cut, 0);
        EXPECT_EQ(run.lines[i].piece.line, nullptr);
        EXPECT_FALSE(run.lines[i].piece.check);
    }
}

TEST(Alike, SameFaultOfManyLinesIsSaidForEach) {
    const Line wrong = with(plain_line, {{"rope", "12-strand HMPE 900 mm"}});
    const auto run = cut_lines({wrong, wrong, wrong});
    EXPECT_EQ(run.counts.refused, 3U);
    EXPECT_EQ(run.faults.size(), 3U);
}

TEST(Alike, MoreSortsThanAreKeptAreStillRight) {
    // Every line of its own sort, more than any table of plans keeps; the first and the last alike.
    constexpr int sorts = 21'000;
    std::string csv = "name,rope,length,prestretched,extra\n";
    const auto add = [&](int extra) {
        csv += "line,12-strand HMPE 5 mm,4 m,yes," + std::to_string(extra) + " mm\n";
    };
    for (int i = 0; i < sorts; ++i) {
        add(i);
    }
    add(0);
    Cutter cutter(shipped_book(), {});
    FaultSink faults;
    Input input = Input::of_text(csv, "job.csv");
    std::vector<Nanometres> cuts;
    const auto whole =
        read_csv_job(input, shipped_book().field_names(), faults, [&](const JobRow& row) {
            cuts.push_back(cutter.cut(row, faults).cut);
            return true;
        });
    ASSERT_TRUE(whole && faults.empty());
    ASSERT_EQ(cuts.size(), static_cast<std::size_t>(sorts) + 1);
    EXPECT_EQ(cuts.front(), cuts.back());
    EXPECT_EQ(cuts.at(20'500), cuts.front() + Nanometres{20'500} * 1'000'000);
}

} // namespace
} // namespace libsplice::testing
