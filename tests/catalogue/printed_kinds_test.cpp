// Figures of joins, covered eyes, hitches, loops and bends against print: taken from the documents.
#include "lookup.h"

#include <initializer_list>

namespace libsplice::testing {
namespace {

using enum FigureId;

const std::string hmpe = "12-strand HMPE 5 mm";
const std::string covered_hmpe = "core-dependent HMPE 8 mm";
const std::string polyester = "12-strand polyester 8 mm";
const std::string double_braid = "double-braid polyester 10 mm";
const std::string parallel = "parallel-core polyester 10 mm";
const std::string laid_polyester = "3-strand polyester 12 mm";
const std::string laid_manila = "3-strand manila 14 mm";
const std::string plait = "8-plait polyester 14 mm";
const std::string shock_cord = "shock-cord rubber 5 mm";
const std::string wire = "wire stainless-steel 1/4 in";

/// One number of a document: for what end, on what rope, by what rule (empty: the default).
struct Row {
    std::string kind;
    std::string rope;
    FigureId id;
    double printed;
    std::string rule{};
    double within = 0.0; ///< where the document's own arithmetic is rounded
};

void expect_printed(std::initializer_list<Row> rows) {
    for (const Row& row : rows) {
        EXPECT_NEAR(value(row.kind, row.rope, row.id, row.rule), row.printed, row.within + 1e-9)
            << row.kind << ", " << row.rope << ", " << name_of(row.id) << ' ' << row.rule;
    }
}

/// One number of a document that comes with its limits.
struct Limits {
    std::string kind;
    std::string rope;
    FigureId id;
    double middle;
    double low;
    double high;
};

void expect_limits(std::initializer_list<Limits> rows) {
    for (const Limits& row : rows) {
        const Figure found = figure(row.kind, row.rope, row.id);
        EXPECT_NEAR(found.value, row.middle, 1e-9) << row.kind << ' ' << row.rope;
        EXPECT_NEAR(found.sd, spread_between(row.low, row.high), 1e-9)
            << row.kind << ' ' << row.rope;
    }
}

bool is_for(const std::string& kind, const std::string& rule, const std::string& description) {
    const auto rope = shipped().rope(description);
    return rope && std::ranges::any_of(rules_of(kind), [&](const Rule* each) {
               return each->name == rule && each->applies_to(*rope);
           });
}

TEST(PrintedJoins, ShortSplice) {
    expect_printed({
        // The Complete Rigger's Apprentice, p. 97: five each side, three in manila. 29 CFR
        // 1926.251(d): eight in all, six in manila.
        {"short-splice", laid_polyester, tucks, 5},
        {"short-splice", laid_polyester, tucks, 8 / 2.0, "four-tucks"},
        {"short-splice", laid_manila, tucks, 3},
        {"short-splice", laid_polyester, minimum_tucks, 8 / 2.0},
        {"short-splice", laid_manila, minimum_tucks, 6 / 2.0},
        // The Splicing Handbook, scan p. 28: 16 in for four tucks in 3/4 in rope.
        {"short-splice", laid_polyester, per_tuck, 16 / 0.75 / 4, "", 0.05},
        // Boat Crew Seamanship Manual, Table 7-6.
        {"short-splice", laid_polyester, retained, 85},
    });
}

TEST(PrintedJoins, ShortSpliceTails) {
    // 29 CFR 1926.251(d): 6 D under 1 in, 6 in from 1 in.
    const auto metres = [](const std::string& rope, FigureId id) {
        return figure("short-splice", rope, id).length(shipped_diameter(rope)).si();
    };
    for (const FigureId id : {end_left, minimum_end_left}) {
        EXPECT_NEAR(metres("3-strand manila 12 mm", id), 0.072, 1e-9);
        EXPECT_NEAR(metres("3-strand manila 1 in", id), 0.1524, 1e-9);
        EXPECT_NEAR(metres("3-strand manila 1 1/2 in", id), 0.1524, 1e-9);
        EXPECT_NEAR(metres("3-strand manila 2 in", id), 0.1524, 1e-9);
    }
}

TEST(PrintedJoins, LongSpliceAndEndForEnd) {
    expect_printed({
        // Samson 3-strand Class I long splice: 36 crowns from each end, one strand 25 or more.
        {"long-splice", laid_polyester, crowns, 36},
        {"long-splice", laid_polyester, strand_crowns, 25},
        // Samson double braid end-for-end: one fid of 21 D. The Splicing Handbook, p. 56: a short
        // section, then a fid and a short section; p. 61: last third tapered.
        {"end-for-end", double_braid, tail, 21},
        {"end-for-end", double_braid, taper, 21 / 3.0},
        {"end-for-end", double_braid, short_section, 28 - 21},
        {"end-for-end", double_braid, FigureId::exit, 7 + 21 + 7},
        // Samson 8-strand Class II end-for-end: 6, 3 and 3. Class I eye: ten picks for five tucks.
        {"end-for-end", plait, tucks, 6},
        {"end-for-end", plait, tucks_single, 3},
        {"end-for-end", plait, tucks_half, 3},
        {"end-for-end", plait, picks_per_tuck, 10 / 5.0},
        // 29 CFR 1926.251(d): four each side, 6 D left of each strand.
        {"end-for-end", plait, minimum_tucks, 4},
        {"end-for-end", plait, end_left, 6},
    });
}

TEST(PrintedJoins, CoreToCore) {
    expect_printed({
        // Cortland Core Dependent Type 2: Mark 1 at two and a half fids of 21 D.
        {"core-to-core", covered_hmpe, tail, 52.5},
        // The Splicing Handbook, p. 70-71: two fids; three and a short section; last third.
        {"core-to-core", covered_hmpe, FigureId::exit, 63 + 7},
        {"core-to-core", covered_hmpe, taper, 7},
        {"core-to-core", covered_hmpe, tail, 42, "two-fids"},
        {"core-to-core", covered_hmpe, taper, 7, "two-fids"},
        // Rope Inc. sp21: Mark 2 to 3 is three fids.
        {"core-to-core", covered_hmpe, FigureId::exit, 63, "two-fids"},
    });
}

TEST(PrintedJoins, SewnAndCovered) {
    expect_printed({
        // Bench practice: a stitched control line overlaps 12 to 15 D, or butts on 25 D each way.
        {"sewn-join", double_braid, overlap, 15},
        {"sewn-join", double_braid, overlap, 12, "short-overlap"},
        {"sewn-join", polyester, tail, 25},
        {"sewn-join", polyester, taper, 25 / 3.0, "", 0.05},
        {"sewn-join", polyester, FigureId::exit, 25 * 4 / 3.0, "", 0.05},
        // Practical Sailor: 45 D held when lock-stitched, shorter did not.
        {"sewn-join", hmpe, tail, 45},
        {"sewn-join", hmpe, minimum_tail, 45},
        {"sewn-join", hmpe, taper, 45 / 3.0},
        {"sewn-join", hmpe, FigureId::exit, 45 * 4 / 3.0},
        {"cover-over-join", hmpe, minimum_tail, 45},
        // Bench practice: a thin halyard lies 40 to 60 D inside its hoisting tail.
        {"cover-over-join", hmpe, tail, 60},
        {"cover-over-join", hmpe, taper, 60 / 3.0},
        {"cover-over-join", polyester, tail, 40, "40-diameters"},
        {"cover-over-join", polyester, taper, 40 / 3.0, "40-diameters", 0.05},
        {"cover-over-join", double_braid, take_up_spread, 2.5}, // an end's take-up, on the bench
    });
    // Bench practice: the first stitch 1 to 1.5 D on.
    expect_limits({{"cover-over-join", hmpe, stitch_start, 1.25, 1, 1.5}});
}

TEST(PrintedBends, StrengthAndSheaves) {
    expect_printed({
        // Crosby general catalogue: strength of wire by D/d.
        {"ferrule-eye", wire, bend_40, 95},
        {"ferrule-eye", wire, bend_30, 93},
        {"ferrule-eye", wire, bend_15, 89},
        {"clipped-eye", wire, bend_10, 86},
        {"clipped-eye", wire, bend_6, 79},
        {"clipped-eye", wire, bend_4, 75},
        {"clipped-eye", wire, bend_2, 65},
        {"ferrule-eye", wire, bend_1, 50},
        // Marlow, Maximising Performance: 8 to 10 D, up to 20 D for aramid. The Complete Rigger's
        // Apprentice, p. 35: 6 to 8 D for braid.
        {"cover-over-join", "12-strand aramid 5 mm", advised_sheave, 20},
        {"cover-over-join", hmpe, advised_sheave, 8},
        {"cover-over-join", hmpe, advised_sheave, 6, "small-sheave"},
    });
}

TEST(PrintedFittedEnds, NoClipTableNamesFifteenMillimetres) {
    // 8 CCR 8497, Table 1, goes from 9/16 in, 14.3 mm, to 5/8 in, 15.9 mm.
    EXPECT_TRUE(is_absent("clipped-eye", "wire stainless-steel 15 mm", turn_back));
}

TEST(PrintedFittedEnds, StrengthAndSeal) {
    expect_printed({
        // TM 5-3810-305-10, Table 4: swaged socket on a wire core. AC 43.13-1B: proof 60 %.
        {"swaged-fitting", wire, retained, 95},
        {"ferrule-eye", wire, proof, 60},
    });
    // The table's "mechanical spliced sleeve" is the Flemish eye, not the turned-back loop.
    EXPECT_TRUE(is_absent("ferrule-eye", wire, retained));
    // Bench practice: core cut back 1 to 2 D under a sealed cover.
    expect_limits({{"heat-sealed", double_braid, core_back, 1.5, 1, 2}});
}

TEST(PrintedCoveredEyes, CoreEye) {
    const std::string thin = "core-dependent HMPE 5 mm";
    expect_printed({
        // Cortland: two and a half fids, knot 7 to 10 fids back; the last third tapered.
        {"core-eye", covered_hmpe, tail, 52.5},
        {"core-eye", covered_hmpe, taper, 52.5 / 3},
        {"core-eye", covered_hmpe, FigureId::exit, 52.5 * 4 / 3},
        {"core-eye", covered_hmpe, slip_knot, 210},
        // Rope Inc. sp21, step 2: core mark 1 to 2, one short section of the fid.
        {"core-eye", covered_hmpe, short_section, 21 / 3.0},
        // Rope Inc. sp21: two fids, three fids, ten fids.
        {"core-eye", covered_hmpe, tail, 42, "two-fids"},
        {"core-eye", covered_hmpe, taper, 7, "two-fids"},
        {"core-eye", covered_hmpe, FigureId::exit, 63, "two-fids"},
        {"core-eye", covered_hmpe, slip_knot, (2 + 10) * 21, "two-fids"},
        // The Splicing Handbook, p. 70-71: two fids, three and a short section, eight fids.
        {"core-eye", covered_hmpe, tail, 42, "two-fids-and-short-section"},
        {"core-eye", covered_hmpe, taper, 7, "two-fids-and-short-section"},
        {"core-eye", covered_hmpe, FigureId::exit, 63 + 7, "two-fids-and-short-section"},
        {"core-eye", covered_hmpe, slip_knot, 168, "two-fids-and-short-section"},
        // Bench practice: covered 5 and 6 mm, two fids plus the taper; not below 5 mm.
        {"core-eye", thin, tail, 42 + 7, "two-fids-and-taper"},
        {"core-eye", thin, taper, 7, "two-fids-and-taper"},
        {"core-eye", thin, FigureId::exit, 49 * 4 / 3.0, "two-fids-and-taper", 0.7},
        {"core-eye", covered_hmpe, least_size, 5},
    });
    EXPECT_TRUE(is_for("core-eye", "two-fids-and-taper", "core-dependent HMPE 6 mm"));
    EXPECT_FALSE(is_for("core-eye", "two-fids-and-taper", "core-dependent HMPE 7 mm"));
    EXPECT_FALSE(is_for("core-eye", "two-fids-and-taper", "core-dependent HMPE 4 mm"));
}

TEST(PrintedCoveredEyes, CoverCoreAndParallelCore) {
    expect_printed({
        // Samson double braid Class I: one fid, then a fid and a short section. SP-10: 28 D and a
        // knot 8 to 10 fids back. The Splicing Handbook, p. 61: last third tapered.
        {"cover-core-eye", double_braid, tail, 21},
        {"cover-core-eye", double_braid, taper, 21 / 3.0},
        {"cover-core-eye", double_braid, short_section, 28 - 21},
        {"cover-core-eye", double_braid, FigureId::exit, 21 + 7},
        {"cover-core-eye", double_braid, slip_knot, 210},
        {"cover-core-eye", double_braid, tail, 21, "one-and-a-third-fids"},
        {"cover-core-eye", double_braid, FigureId::exit, 28, "one-and-a-third-fids"},
        // SP-10, stage 3: the core comes out a third of a fid beyond the far mark; New England
        // Ropes, mark D: a long section beyond it.
        {"cover-core-eye", double_braid, core_out, 28 - 21},
        {"cover-core-eye", double_braid, core_out, 21 - 7, "long-section-out"},
        // Samson: 18 in of 1/2 in rope besides the eye. Used rope: up to 90 %, and the estimate
        // below it.
        {"cover-core-eye", double_braid, shortening, 18 / 0.5 - 21},
        {"cover-core-eye", double_braid, retained, 80},
        {"cover-core-eye", double_braid, least_size, 8}, // bench practice: from 8 mm up
        // New England Ropes, parallel core: a long section, a short section, one fid, 8 to 10 fids.
        {"parallel-core-eye", parallel, tail, 21 - 7},
        {"parallel-core-eye", parallel, taper, 7},
        {"parallel-core-eye", parallel, short_section, 7},
        {"parallel-core-eye", parallel, FigureId::exit, 21},
        {"parallel-core-eye", parallel, slip_knot, 210},
    });
}

TEST(PrintedSmallEyes, SeizedStitchedRingAndLarked) {
    expect_printed({
        // The Splicing Handbook, p. 77: made eye, 22 D and a seizing of 3 D.
        {"ring-eye", double_braid, seizing, 3},
        // Bench practice: 1 D to a thimble's point; a larked eye loses 1.5 D besides its turns;
        // small eyes are 8 D long.
        {"ring-eye", double_braid, ring_clearance, 1},
        {"larked-eye", hmpe, turn_draw, 1.5},
        {"larked-eye", hmpe, eye_diameters, 8},
        {"soft-shackle", hmpe, end_left, 20}, // bench practice: past a stopper in bare HMPE
    });
    // Bench practice: 12 to 15 D, the longer.
    expect_limits({{"stitched-eye", double_braid, overlap, 15, 12, 15}});
}

TEST(PrintedKnots, Stoppers) {
    expect_printed({
        // Lengths of the tightest open knots, computed; 5_1 and 6_1 each in two forms.
        {"overhand", polyester, knot, 10.098},
        {"double-overhand", polyester, knot, 17.198},
        {"double-overhand", polyester, knot, 17.307, "barrel-form"},
        {"stevedore", polyester, knot, 20.776},
        {"stevedore", polyester, knot, 22.005, "other-form"},
        {"stopper-ball", polyester, knot, 17.198},
        {"stopper-ball", polyester, knot, 13.716, "figure-eight-behind"},
        {"stopper-ball", polyester, knot, 10.098, "overhand-behind"},
        // Along the rope, a rigger's estimate.
        {"overhand", polyester, body, 2.5},
        {"double-overhand", polyester, body, 3.5},
        {"stopper-ball", polyester, body, 3.5},
        {"stopper-ball", polyester, body, 3.5, "figure-eight-behind"},
        {"stopper-ball", polyester, body, 2.5, "overhand-behind"},
        // Knots for the Outdoors, table of knot strength.
        {"overhand", laid_manila, retained, 45},
    });
    for (const std::string kind : {"overhand", "double-overhand", "stevedore", "stopper-ball"}) {
        // Bench practice: 1.15 firm covered, 1.05 soft bare; 8, 12 and 20 D past a stopper.
        expect_printed({{kind, double_braid, set, 1.15},
                        {kind, hmpe, set, 1.05},
                        {kind, polyester, tail, 8},
                        {kind, covered_hmpe, tail, 12},
                        {kind, hmpe, tail, 20}});
        EXPECT_NEAR(figure(kind, double_braid, set).sd, 0.115, 1e-9) << kind; // a tenth
        EXPECT_NEAR(figure(kind, hmpe, set).sd, 0.105, 1e-9) << kind;
    }
}

TEST(PrintedKnots, TailsSlipAndFriction) {
    expect_printed({
        // Bench practice: 6 D in shock cord; 12 and 15 D past a loop knot, 20 D in bare HMPE.
        {"double-overhand", shock_cord, tail, 6},
        {"barrel-noose", shock_cord, tail, 6},
        {"figure-eight-loop", polyester, tail, 12},
        {"double-bowline", covered_hmpe, tail, 15},
        {"overhand-loop", hmpe, tail, 20},
        {"clove-hitch", hmpe, tail, 20},
        // A hitch's tail, 12 to 15 D: recalled.
        {"clove-hitch", polyester, tail, 15},
        {"clove-hitch", polyester, tail, 12, "short-tail"},
    });
    expect_limits({
        // Practical Sailor: knots in HMPE slip at 20 to 35 % of break.
        {"bowline", hmpe, slip, 27.5, 20, 35},
        {"buntline-hitch", hmpe, slip, 27.5, 20, 35},
        // Rope on itself, dry: recalled.
        {"clove-hitch", hmpe, friction, 0.07, 0.05, 0.10},
        {"lashing", polyester, friction, 0.12, 0.10, 0.20},
        {"lashing", "12-strand nylon 8 mm", friction, 0.12, 0.12, 0.25},
        {"round-turn-two-half-hitches", "12-strand aramid 5 mm", friction, 0.15, 0.12, 0.20},
    });
}

TEST(PrintedLoopsAndHitches, RopeUsed) {
    // A rigger's estimates, less the tail; a double fisherman's is a barrel on each side. The
    // figure-eight loop is worked out, with a rigger's 6 D either way.
    expect_limits({
        {"figure-eight-loop", polyester, beyond_loop, 44.95, 38.95, 50.95},
        {"barrel-noose", polyester, beyond_loop, 22, 17, 27},
        {"bowline", polyester, standing_side, 7, 5, 9},
        {"double-bowline", polyester, standing_side, 15, 12, 18},
        {"double-bowline", polyester, beyond_loop, 23, 18, 28},
        {"sheet-bend", polyester, bight, 4, 2, 6},
        {"double-fisherman", covered_hmpe, knot, 30, 24, 36},
        {"double-fisherman", polyester, knot, 22, 17, 27},
        {"halyard-hitch", polyester, beyond_turns, 20, 15, 25},
        {"buntline-hitch", polyester, beyond_turns, 14, 10, 18},
    });
    expect_printed({
        // A bowline's 15 D and one turn more round two parts; two half hitches are two turns round
        // the rope, and so are those of a halyard hitch.
        {"double-bowline", polyester, beyond_loop, 15 + 2 * 3.1416 + 2, "", 0.5},
        {"double-bowline", polyester, standing_side, 2 * (2 * 3.1416 + 2) - 2, "", 0.5},
        {"halyard-hitch", polyester, turns, 2},
        {"round-turn-two-half-hitches", polyester, beyond_turns, 2 * 2 * 3.1416, "", 0.5},
        {"buntline-hitch", polyester, turns, 1},
        {"clove-hitch", polyester, turns, 2},
        // Bench practice: three half hitches of about 12 D finish a lashing; loops as eyes.
        {"lashing", polyester, half_hitches, 3},
        {"lashing", polyester, per_half_hitch, 12},
        {"figure-eight-loop", polyester, eye_pins, 3},
        {"overhand-loop", polyester, eye_diameters, 8},
    });
}

TEST(PrintedLoopsAndHitches, Strength) {
    expect_printed({
        // Boat Crew Seamanship Manual, Table 7-6; Knots for the Outdoors; Practical Sailor.
        {"clove-hitch", laid_manila, retained, 60},
        {"clove-hitch", laid_manila, retained, 75, "strength-compiled"},
        {"round-turn-two-half-hitches", laid_manila, retained, 60},
        {"round-turn-two-half-hitches", laid_manila, retained, 65, "strength-on-post"},
        {"round-turn-two-half-hitches", laid_manila, retained, 65, "strength-round-turn"},
        {"round-turn-two-half-hitches", laid_manila, retained, 75, "strength-half-hitches"},
        {"sheet-bend", laid_manila, retained, 48},
        // Hartter, read in a second hand: about a third, and 57 %.
        {"bowline", hmpe, retained, 33},
        {"figure-eight-loop", hmpe, retained, 33},
        {"cow-hitch", hmpe, retained, 57},
        {"sheet-bend", laid_manila, retained, 59, "strength-manual"},
        // Yachting Monthly, November 2017, p. 68-73, of 2640 kg: 1280, 1730, slipping from 200.
        {"sheet-bend", laid_polyester, retained, 128000 / 2640.0, "strength-tested", 0.05},
        {"double-fisherman", laid_polyester, retained, 173000 / 2640.0, "", 0.05},
        {"sheet-bend", laid_polyester, slip, 20000 / 2640.0, "", 0.05},
    });
}

TEST(PrintedPerson, Rules) {
    // 29 CFR 1926.502(d)(9); 1926.104(d); Cordage Institute, as quoted: 12 to 15 for life lines.
    const Figure lanyard =
        figure("person", hmpe, minimum_strength, "lanyards and vertical lifelines");
    EXPECT_DOUBLE_EQ(lanyard.value, 5000);
    EXPECT_EQ(lanyard.unit, FigureUnit::lbf);
    EXPECT_DOUBLE_EQ(value("person", hmpe, minimum_strength, "lanyard rope"), 5400);
    const Figure factor = figure("person", hmpe, design_factor, "life lines");
    EXPECT_DOUBLE_EQ(factor.value, 13.5);
    EXPECT_DOUBLE_EQ(factor.sd, spread_between(12, 15));
}

} // namespace
} // namespace libsplice::testing
