// Does a risk of 1 % mean 1 %? Whole lines are drawn from the spreads that their ledgers state, and
// those that come out short are counted. The draws know nothing of how the spare was worked out.
#include "jobs.h"

#include <gtest/gtest.h>

#include <array>
#include <cmath>
#include <numbers>
#include <random>

namespace libsplice::testing {

namespace {

constexpr int lines_drawn = 200'000;
/// Four standard deviations of a count that is expected at 1 %.
const double sampling = 4.0 * std::sqrt(0.01 * 0.99 / lines_drawn);

/// The error of a row whose place among all that could happen is `normal`. A printed range may lie
/// anywhere between its limits, all else is normal.
double error_of(const Row& row, double normal) {
    if (row.origin != SpreadOrigin::printed_range) {
        return row.sd * normal;
    }
    const double place = 0.5 * std::erfc(-normal / std::numbers::sqrt2);
    return row.sd * std::numbers::sqrt3 * (2.0 * place - 1.0);
}

/// What one line needs over its ledger: rows of one group err together, all others by themselves.
double drawn_error(const std::vector<LedgerRow>& ledger, std::mt19937_64& random) {
    std::normal_distribution<double> normal;
    std::map<Group, double> together;
    double error = 0.0;
    for (const LedgerRow& entry : ledger) {
        if (!(std::abs(entry.row.sd) > 0.0)) {
            continue;
        }
        const auto group = entry.row.group;
        if (group == Group::own) {
            error += error_of(entry.row, normal(random));
        } else {
            const auto known = together.try_emplace(group, 0.0);
            if (known.second) {
                known.first->second = normal(random);
            }
            error += error_of(entry.row, known.first->second);
        }
    }
    return error;
}

double share_short(const Piece& piece) {
    const double over = (length_of(piece, Item::spare) + length_of(piece, Item::rounding)) / 1000.0;
    std::mt19937_64 random(20260101);
    int short_lines = 0;
    for (int i = 0; i < lines_drawn; ++i) {
        short_lines += drawn_error(piece.ledger, random) > over ? 1 : 0;
    }
    return static_cast<double>(short_lines) / lines_drawn;
}

/// A line with correlated take-up at both ends, one whose first stretch weighs most, a knotted
/// sheet, a stretched halyard.
std::vector<Line> lines_at_risk() {
    const auto eyes = with(eye_at("end_a", "buried-eye", "36 mm", "12 mm"),
                           eye_at("end_b", "buried-eye", "36 mm", "12 mm"));
    return {
        with(plain_line, eyes),
        with(with(plain_line, eyes), {{"prestretched", "no"}, {"length", "12 m"}}),
        {{"name", "sheet"},
         {"rope", "demo-db-poly-8"},
         {"length", "9 m"},
         {"prestretched", "yes"},
         {"end_a", "figure-eight"},
         {"end_b", "bowline"},
         {"end_b.loop", "60 mm"},
         {"end_b.pin", "8 mm"}},
        {{"name", "halyard"},
         {"rope", "demo-db-poly-8"},
         {"length", "12 m"},
         {"prestretched", "yes"},
         {"tension", "1 kN"},
         {"end_a", "bowline"},
         {"end_a.loop", "60 mm"},
         {"end_a.pin", "8 mm"}},
    };
}

} // namespace

TEST(Risk, IsWhatItSaysWithoutRounding) {
    for (const Line& line : lines_at_risk()) {
        const auto one = cut_one(line, step_of(metres(1e-9)));
        const double share = share_short(one.piece());
        EXPECT_LE(share, 0.01 + sampling) << line.at("name");
        EXPECT_GE(share, 0.002) << line.at("name");
    }
}

TEST(Risk, IsNeverMoreOnceTheCutIsRoundedUp) {
    for (const Line& line : lines_at_risk()) {
        const auto one = cut_one(line);
        EXPECT_LE(share_short(one.piece()), 0.01 + sampling) << line.at("name");
    }
}

TEST(Risk, IsMissedWhereCorrelatedRowsAreTakenForIndependent) {
    // The same draws find the mistake that the groups are there for: one row of take-up an end.
    const Line eyes = with(eye_at("end_a", "buried-eye", "36 mm", "12 mm"),
                           eye_at("end_b", "buried-eye", "36 mm", "12 mm"));
    auto one =
        cut_one(with(with(plain_line, eyes), {{"end_a.settled", "yes"}, {"end_b.settled", "yes"}}),
                step_of(metres(1e-9)));
    Piece piece = one.piece();
    double squares = 0.0;
    for (const LedgerRow& entry : piece.ledger) {
        squares += entry.row.sd * entry.row.sd;
    }
    for (LedgerRow& entry : piece.ledger) {
        if (entry.row.item == Item::spare) {
            entry.row.length = to_nanometres(Length(2.326347874 * std::sqrt(squares)));
        }
    }
    EXPECT_GT(share_short(piece), 0.02);
}

} // namespace libsplice::testing
