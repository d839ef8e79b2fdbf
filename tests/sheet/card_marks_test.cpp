// Marks of a card that share a row: evenly as they read on the tape, or each by itself.
#include "libsplice/sheet/panel/card/card.h"

#include "bench.h"

#include <gtest/gtest.h>

namespace libsplice::testing {
namespace {

/// The row of the places at which pairs are dropped, at the end that is made first.
CardMark dropped_pairs(UnitSystem units) {
    Cutter cutter(shipped_book(), {});
    FaultSink faults(1000);
    const std::string csv = csv_of({two_eyes()});
    Input input = Input::of_text(csv, "job.csv");
    Gathered lines;
    const auto whole =
        read_job(input, shipped_book().field_names(), faults, [&](const JobRow& row) {
            lines.add(cutter.cut(row, faults));
            return true;
        });
    EXPECT_TRUE(whole);
    CitationLog citing{Credits(shipped_book())};
    return card_of(lines.entries().front(), Methods(), units, citing).ends.front().marks.front();
}

TEST(CardMarks, EvenOnesAreSaidByTheirFirstAndLast) {
    // 120 mm of taper in six parts of 20 mm, 22 mm of tail before the last pair.
    const CardMark row = dropped_pairs(UnitSystem::metric);
    EXPECT_EQ(row.name, "drop a pair at each of 5 marks, 20 apart");
    EXPECT_EQ(row.from_cut_end, "22 to 102");
    EXPECT_EQ(row.from_before, "22");
    EXPECT_EQ(row.places.size(), 5U);
}

TEST(CardMarks, ThoseThatReadUnevenlyAreListed) {
    // 22, 42, 62, 82 and 102 mm are 13.9, 26.5, 39.1, 51.7 and 64.3 sixteenths of an inch.
    const CardMark row = dropped_pairs(UnitSystem::imperial);
    EXPECT_EQ(row.name, "drop a pair at each");
    EXPECT_EQ(row.from_cut_end, "7/8, 1 5/8, 2 7/16, 3 1/4, 4");
}

} // namespace
} // namespace libsplice::testing
