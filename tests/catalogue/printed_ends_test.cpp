// Figures of ends against print: the numbers here were taken from the documents, not the tables.
#include "lookup.h"

#include <array>

namespace libsplice::testing {
namespace {

using enum FigureId;

const std::string hmpe = "12-strand HMPE 5 mm";
const std::string covered_hmpe = "core-dependent HMPE 6 mm";
const std::string polyester = "12-strand polyester 8 mm";
const std::string aramid = "12-strand aramid 5 mm";
const std::string laid_polyester = "3-strand polyester 12 mm";
const std::string laid_manila = "3-strand manila 14 mm";
const std::string plait = "8-plait polyester 14 mm";

struct BuryRow {
    std::string kind;
    std::string rope;
    std::string rule; ///< empty: the default
    double tail;
    double taper;
    double exit;
};

TEST(PrintedBuries, TailTaperAndExit) {
    const std::array rows{
        // The Complete Rigger's Apprentice, p. 103-106: HMPE 72 D, 1 1/2 times that; polyester and
        // nylon 24 D, 1 1/3 times that. Practical Sailor: 72 D, 45 D lock-stitched.
        BuryRow{"buried-eye", hmpe, "", 72, 24, 108},
        BuryRow{"locked-eye", hmpe, "", 72, 24, 108},
        BuryRow{"stripped-eye", covered_hmpe, "", 72, 24, 108},
        BuryRow{"buried-eye", hmpe, "45-diameters", 45, 15, 60},
        BuryRow{"buried-eye", polyester, "24-diameters", 24, 8, 32},
        // Splicing Modern Ropes: 60 D, 100 D uncoated, exit a third further.
        BuryRow{"buried-eye", hmpe, "60-diameters", 60, 20, 80},
        BuryRow{"buried-eye", hmpe, "100-diameters", 100, 33.3, 133.3},
        // New England Ropes: two fids and three fids of 21 D; lock-stitched three, older two and a
        // half.
        BuryRow{"buried-eye", polyester, "", 42, 14, 63},
        BuryRow{"stripped-eye", "double-braid polyester 8 mm", "", 42, 14, 63},
        BuryRow{"locked-eye", "12-strand polypropylene 8 mm", "", 42, 14, 63},
        BuryRow{"buried-eye", polyester, "three-fids-lock-stitched", 63, 21, 84},
        BuryRow{"buried-eye", polyester, "two-and-a-half-fids", 52.5, 17.5, 70},
        // Samson 12-strand Class II: one fid tapered and two in full.
        BuryRow{"buried-eye", aramid, "", 63, 21, 84},
        BuryRow{"locked-eye", hmpe, "three-fids", 63, 21, 84},
    };
    for (const auto& row : rows) {
        EXPECT_DOUBLE_EQ(value(row.kind, row.rope, tail, row.rule), row.tail)
            << row.rope << row.rule;
        EXPECT_DOUBLE_EQ(value(row.kind, row.rope, taper, row.rule), row.taper)
            << row.rope << row.rule;
        EXPECT_DOUBLE_EQ(value(row.kind, row.rope, FigureId::exit, row.rule), row.exit)
            << row.rope << row.rule;
    }
}

TEST(PrintedBuries, Floors) {
    EXPECT_DOUBLE_EQ(value("buried-eye", hmpe, minimum_tail), 45);
    EXPECT_DOUBLE_EQ(value("locked-eye", hmpe, advised_tail), 60);
    EXPECT_DOUBLE_EQ(value("stripped-eye", covered_hmpe, person_tail), 72);
    EXPECT_DOUBLE_EQ(value("buried-eye", polyester, minimum_tail), 24);
    EXPECT_DOUBLE_EQ(value("buried-eye", polyester, advised_tail), 42);
    EXPECT_DOUBLE_EQ(value("buried-eye", "12-strand polypropylene 8 mm", minimum_tail), 24);
    EXPECT_DOUBLE_EQ(value("buried-eye", "12-strand polypropylene 8 mm", advised_tail), 42);
    EXPECT_DOUBLE_EQ(value("buried-eye", aramid, advised_tail), 63);
    EXPECT_TRUE(is_absent("buried-eye", aramid, minimum_tail));
}

TEST(PrintedBuries, GeometryIsThatOfAHollowBraid) {
    for (const auto kind : {"buried-eye", "locked-eye", "endless-loop"}) {
        const Figure angle = figure(kind, hmpe, take_up_angle, "geometry");
        EXPECT_DOUBLE_EQ(angle.value, 15) << kind;
        EXPECT_DOUBLE_EQ(angle.low, 12) << kind;
        EXPECT_DOUBLE_EQ(angle.high, 18) << kind;
        EXPECT_EQ(angle.unit, FigureUnit::degrees) << kind;
    }
}

TEST(PrintedBuries, CrossingAndStitching) {
    const Figure closes = figure("locked-eye", hmpe, crossing);
    EXPECT_DOUBLE_EQ(closes.value, 1);
    EXPECT_DOUBLE_EQ(closes.sd, spread_between(0, 2));
    EXPECT_TRUE(is_absent("buried-eye", hmpe, crossing));
    const Figure start = figure("buried-eye", hmpe, stitch_start);
    EXPECT_DOUBLE_EQ(start.value, 1.25);
    EXPECT_DOUBLE_EQ(start.sd, spread_between(1, 1.5));
    const Figure stitched = figure("buried-eye", hmpe, stitch_length);
    EXPECT_DOUBLE_EQ(stitched.value, 7);
    EXPECT_DOUBLE_EQ(stitched.sd, spread_between(6, 8));
    EXPECT_EQ(stitched.origin, SpreadOrigin::printed_range);
}

TEST(PrintedBuries, StrengthAndCover) {
    // The sheet is of high-modulus rope; in other fibres an estimate below it.
    EXPECT_DOUBLE_EQ(figure("buried-eye", hmpe, retained).number(), 0.90);
    EXPECT_DOUBLE_EQ(value("buried-eye", polyester, retained), 85);
    EXPECT_DOUBLE_EQ(value("stripped-eye", covered_hmpe, cover_tail), 30);
    EXPECT_DOUBLE_EQ(value("stripped-eye", covered_hmpe, cover_gap), 5);
}

TEST(PrintedEyes, SizeAndThroat) {
    for (const std::string kind : {"buried-eye", "locked-eye", "bowline"}) {
        EXPECT_DOUBLE_EQ(value(kind, hmpe, eye_diameters), 8) << kind;
    }
    EXPECT_DOUBLE_EQ(value("buried-eye", hmpe, eye_pins), 3);
    EXPECT_DOUBLE_EQ(value("bowline", hmpe, eye_pins), 3);
    EXPECT_DOUBLE_EQ(value("locked-eye", hmpe, eye_pins), 5); // a locked crossing takes side load
    EXPECT_DOUBLE_EQ(value("buried-eye", hmpe, advised_eye_pins), 3);
    EXPECT_DOUBLE_EQ(value("stripped-eye", covered_hmpe, advised_eye_pins), 3);
    EXPECT_DOUBLE_EQ(value("locked-eye", hmpe, advised_eye_pins), 5);
    EXPECT_DOUBLE_EQ(value("tucked-eye", laid_manila, throat_limit), 60); // 29 CFR 1926.251(d)
    EXPECT_DOUBLE_EQ(value("clipped-eye", "wire stainless-steel 1/2 in", throat_limit), 60);
}

TEST(PrintedTucks, Numbers) {
    // Pawson: 5 in synthetics, 3 in natural fibre. OSHA: 4 and 3 at least. Ashley: 4 if long-jawed.
    EXPECT_DOUBLE_EQ(value("tucked-eye", laid_polyester, tucks), 5);
    EXPECT_DOUBLE_EQ(value("tucked-eye", laid_polyester, tucks, "four-tucks"), 4);
    EXPECT_DOUBLE_EQ(value("tucked-eye", laid_polyester, minimum_tucks), 4);
    EXPECT_DOUBLE_EQ(value("tucked-eye", laid_manila, tucks), 3);
    EXPECT_DOUBLE_EQ(value("tucked-eye", laid_manila, tucks, "four-tucks-natural"), 4);
    EXPECT_DOUBLE_EQ(value("tucked-eye", laid_manila, minimum_tucks), 3);
}

TEST(PrintedTucks, LengthsAndStrength) {
    // Merry: 16 in for four tucks in 3/4 in rope, 5.33 D each.
    EXPECT_NEAR(value("tucked-eye", laid_polyester, per_tuck), 16.0 / 0.75 / 4.0, 0.05);
    EXPECT_DOUBLE_EQ(value("tucked-eye", laid_manila, retained), 90); // USCG Table 7-6
    const auto left_of = [](const std::string& rope, FigureId id) {
        return figure("tucked-eye", rope, id).length(shipped_diameter(rope)).si();
    };
    for (const FigureId id : {end_left, minimum_end_left}) {
        EXPECT_NEAR(left_of("3-strand manila 12 mm", id), 0.072, 1e-9);
        EXPECT_NEAR(left_of("3-strand manila 1 in", id), 0.1524, 1e-9);
        EXPECT_NEAR(left_of("3-strand manila 1 1/2 in", id), 0.1524, 1e-9);
        EXPECT_NEAR(left_of("3-strand manila 2 in", id), 0.1524, 1e-9);
    }
}

TEST(PrintedTucks, EightPlait) {
    // Samson 8-strand Class I: ten picks to Mark 1, six beyond Mark 2.
    const Figure per = figure("tucked-eye", plait, picks_per_tuck);
    EXPECT_DOUBLE_EQ(value("tucked-eye", plait, tucks), 5);
    EXPECT_DOUBLE_EQ(per.value, 2);
    EXPECT_EQ(per.unit, FigureUnit::picks);
    EXPECT_DOUBLE_EQ(value("tucked-eye", plait, FigureId::exit), 6);
    EXPECT_DOUBLE_EQ(value("tucked-eye", plait, pick), 1.0);
    EXPECT_DOUBLE_EQ(figure("tucked-eye", plait, pick).sd, 0.2);
    EXPECT_DOUBLE_EQ(value("tucked-eye", plait, end_left), 6);
}

TEST(PrintedStoppers, FigureEight) {
    EXPECT_DOUBLE_EQ(value("figure-eight", hmpe, knot), 13.716);
    EXPECT_DOUBLE_EQ(value("figure-eight", hmpe, body), 3.5);
    EXPECT_DOUBLE_EQ(figure("figure-eight", hmpe, body).sd, 0.5);
    struct Row {
        std::string rope;
        double set;
        double tail;
    };
    for (const auto& row :
         {Row{"double-braid polyester 6 mm", 1.15, 8}, Row{covered_hmpe, 1.15, 12},
          Row{hmpe, 1.05, 20}, Row{polyester, 1.05, 8}, Row{laid_manila, 1.1, 8},
          Row{"shock-cord rubber 5 mm", 1.1, 6}}) {
        EXPECT_DOUBLE_EQ(value("figure-eight", row.rope, set), row.set) << row.rope;
        EXPECT_NEAR(figure("figure-eight", row.rope, set).sd, row.set / 10.0, 1e-12) << row.rope;
        EXPECT_DOUBLE_EQ(value("figure-eight", row.rope, tail), row.tail) << row.rope;
    }
    EXPECT_DOUBLE_EQ(value("figure-eight", laid_manila, retained), 48); // Jacobson
    EXPECT_TRUE(is_absent("figure-eight", hmpe, retained));
}

TEST(PrintedLoops, Bowline) {
    const Figure beyond = figure("bowline", polyester, beyond_loop);
    EXPECT_DOUBLE_EQ(beyond.value, 15);
    EXPECT_DOUBLE_EQ(beyond.sd, spread_between(11, 19));
    EXPECT_DOUBLE_EQ(value("bowline", polyester, tail), 12);
    EXPECT_DOUBLE_EQ(value("bowline", covered_hmpe, tail), 15);
    EXPECT_DOUBLE_EQ(value("bowline", hmpe, tail), 20);
    EXPECT_DOUBLE_EQ(value("bowline", polyester, standing_side), 7);
    // Jacobson; Yachting Monthly: 1600 of 3690 kg, and 2150 of 5360 kg with another finish;
    // Hartter: about a third.
    EXPECT_DOUBLE_EQ(value("bowline", laid_manila, retained), 60);
    EXPECT_NEAR(value("bowline", "double-braid polyester 10 mm", retained), 160000.0 / 3690, 0.05);
    EXPECT_NEAR(value("bowline", covered_hmpe, retained, "yosemite-finish"), 215000.0 / 5360, 0.05);
    EXPECT_TRUE(is_absent("bowline", covered_hmpe, retained));
    EXPECT_DOUBLE_EQ(value("bowline", hmpe, retained), 33);
}

TEST(PrintedClips, CountAndTurnBack) {
    struct Row {
        std::string size;
        double clips;
        double turn_back;
    };
    // Small sizes: a supplier's table. From 1/2 in: 8 CCR 8497, Table 1.
    for (const auto& row :
         {Row{"1/8 in", 2, 3.75}, Row{"3/16 in", 2, 3.75}, Row{"1/4 in", 2, 4.75},
          Row{"5/16 in", 2, 5.25}, Row{"3/8 in", 2, 6.5}, Row{"7/16 in", 2, 7},
          Row{"1/2 in", 3, 11.5}, Row{"9/16 in", 3, 12}, Row{"5/8 in", 3, 12}, Row{"3/4 in", 4, 18},
          Row{"7/8 in", 4, 19}, Row{"1 in", 5, 26}, Row{"1 1/8 in", 6, 34}, Row{"1 1/4 in", 6, 37},
          Row{"1 1/2 in", 7, 48}}) {
        const std::string rope = "wire galvanised-steel " + row.size;
        EXPECT_DOUBLE_EQ(value("clipped-eye", rope, clips), row.clips) << row.size;
        EXPECT_DOUBLE_EQ(value("clipped-eye", rope, turn_back), row.turn_back) << row.size;
        EXPECT_EQ(figure("clipped-eye", rope, turn_back).unit, FigureUnit::in);
        EXPECT_DOUBLE_EQ(value("clipped-eye", rope, clip_spacing), 6); // FM 55-501, 12-101
        EXPECT_DOUBLE_EQ(value("clipped-eye", rope, retained), 80);    // TM 5-3810-305-10, Table 4
    }
}

TEST(PrintedClips, NothingIsGuessedBetweenPrintedSizes) {
    struct Row {
        std::string size;
        std::string sides;
    };
    for (const auto& row : {Row{"4 mm", "1/8 in on one side and 3/16 in on the other"},
                            Row{"14 mm", "1/2 in on one side and 9/16 in on the other"},
                            Row{"1 3/8 in", "1 1/4 in on one side and 1 1/2 in on the other"}}) {
        const Fault fault =
            shipped_fault("clipped-eye", "wire stainless-steel " + row.size, turn_back);
        EXPECT_EQ(fault.code, Code::size_not_printed) << row.size;
        EXPECT_NE(fault.text.find(row.sides), std::string::npos) << fault.text;
    }
}

} // namespace
} // namespace libsplice::testing
