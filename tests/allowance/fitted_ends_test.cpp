// Ends in sleeves, shanks and crimps, whose lengths the job gives, and sealed ends.
#include "ends.h"

namespace libsplice::testing {
namespace {

constexpr std::string_view wire = "wire stainless-steel 4 mm";

TEST(FerruleEye, TurnsBackWhatTheSleevesSheetSays) {
    const FieldList fields{{"eye", "30 mm"}, {"pin", "10 mm"}, {"turn_back", "25 mm"}};
    const auto end = make_end("ferrule-eye", wire, fields);
    // h = 25, R = 7, w = 2: rho^2 = 629, legs sqrt(580), beta = asin(7/sqrt(629)) - atan(2/25).
    const double beta = std::asin(7.0 / std::sqrt(629.0)) - std::atan(0.08);
    const double round = 7.0 * (3.141592653589793 + 2.0 * beta) + 2.0 * std::sqrt(580.0);
    EXPECT_NEAR(length_of(end, Item::eye_legs), round, 1e-5);
    EXPECT_NEAR(in_millimetres(end.total()), round - 30.0 + 25.0, 1e-5);
    EXPECT_NEAR(mark_of(end, MarkName::turn_back), 25.0, near);
    const auto missing = refuse_end("ferrule-eye", wire, {{"eye", "30 mm"}});
    EXPECT_EQ(missing.code, Code::field_missing);
    EXPECT_EQ(missing.field, "turn_back");
}

TEST(FerruleEye, HasNoStrengthOfAnotherFitting) {
    const auto end = make_end("ferrule-eye", wire, {{"turn_back", "25 mm"}});
    EXPECT_FALSE(end.retained);
    EXPECT_TRUE(cautions_about(end, "Flemish eye"));
}

TEST(FerruleEye, TurnBackShorterThanASleeveIsCautioned) {
    // 4 D of 4 mm.
    EXPECT_TRUE(cautions_about(make_end("ferrule-eye", wire, {{"turn_back", "15 mm"}}), "sleeve"));
    EXPECT_FALSE(cautions_about(make_end("ferrule-eye", wire, {{"turn_back", "17 mm"}}),
                                "shorter than most sleeves"));
}

TEST(WireEyes, KeepInTheBendWhatIsPrintedForThePin) {
    const auto kept = [](std::string_view pin) {
        return find_value(make_end("ferrule-eye", wire,
                                   {{"eye", "300 mm"}, {"pin", pin}, {"turn_back", "25 mm"}}),
                          ValueName::bend_retained)
            .value_or(not_there);
    };
    EXPECT_NEAR(kept("4 mm"), 0.50, 1e-9);
    EXPECT_NEAR(kept("16 mm"), 0.75, 1e-9);
    EXPECT_NEAR(kept("40 mm"), 0.86, 1e-9);
    // 12 mm is 3 D: 65 and 10 log(3/2)/log(2) = 5.849625 hundredths more.
    EXPECT_NEAR(kept("12 mm"), 0.70849625, 1e-8);
    EXPECT_TRUE(std::isnan(kept("3 mm")));
    const auto thin =
        make_end("clipped-eye", "wire stainless-steel 1/8 in", {{"eye", "30 mm"}, {"pin", "3 mm"}});
    EXPECT_TRUE(cautions_about(thin, "thimble"));
}

TEST(SwagedFitting, TheShankComesOutAndTheWireInsideComesIn) {
    const FieldList fields{{"shank", "70 mm"}, {"insertion", "45 mm"}, {"growth", "4 mm"}};
    const auto end = make_end("swaged-fitting", wire, fields);
    EXPECT_NEAR(in_millimetres(end.total()), -29.0, near); // -70 + 45 - 4
    EXPECT_NEAR(mark_of(end, MarkName::shank_mouth), 45.0, near);
    ASSERT_TRUE(end.retained);
    EXPECT_NEAR(end.retained->share, 0.95, 1e-12);
}

TEST(SwagedFitting, GuessesNothing) {
    const FieldList whole{{"shank", "70 mm"}, {"insertion", "45 mm"}, {"growth", "4 mm"}};
    for (std::size_t left_out = 0; left_out < whole.size(); ++left_out) {
        FieldList fields = whole;
        fields.erase(fields.begin() + static_cast<std::ptrdiff_t>(left_out));
        const auto fault = refuse_end("swaged-fitting", wire, fields);
        EXPECT_EQ(fault.code, Code::field_missing);
        EXPECT_EQ(fault.field, whole[left_out].name);
    }
    EXPECT_EQ(refuse_end("swaged-fitting", wire,
                         {{"shank", "40 mm"}, {"insertion", "45 mm"}, {"growth", "0 mm"}})
                  .code,
              Code::field_out_of_range);
}

TEST(CrimpedEnd, CountsTheCordInTheFitting) {
    const auto end = make_end("crimped-end", "shock-cord rubber 5 mm", {{"length", "10 mm"}});
    EXPECT_NEAR(in_millimetres(end.total()), 19.0, near); // 10, an end left of 5, a heat cut of 4
    EXPECT_NEAR(mark_of(end, MarkName::crimp), 19.0, near);
    const auto hook =
        make_end("crimped-end", "shock-cord rubber 5 mm", {{"length", "10 mm"}, {"form", "hook"}});
    EXPECT_NE(hook.steps.data(), end.steps.data());
    EXPECT_EQ(refuse_end("crimped-end", "shock-cord rubber 5 mm").field, "length");
}

TEST(CrimpedEnd, LoopHasBothPartsInItsRing) {
    // 5 mm, a soft loop of 40 mm: half a circle of the cord and two legs, 2.5 pi + 80 =
    // 87.853981634; 8 mm of the tail in the ring, 5 beyond it, a heat cut of 4.
    const auto loop = make_end("crimped-end", "shock-cord rubber 5 mm",
                               {{"form", "loop"}, {"length", "8 mm"}, {"eye", "40 mm"}});
    EXPECT_NEAR(in_millimetres(loop.total()), 87.853981634 - 40.0 + 17.0, near);
    EXPECT_NEAR(mark_of(loop, MarkName::near_throat), 17.0, near);
    EXPECT_NEAR(mark_of(loop, MarkName::far_throat), 104.853981634, near);
    EXPECT_EQ(
        refuse_end("crimped-end", "shock-cord rubber 5 mm", {{"length", "8 mm"}, {"eye", "40 mm"}})
            .field,
        "eye");
}

TEST(HeatSealed, OnlyWhatMeltsClean) {
    const auto melted = make_end("heat-sealed", "double-braid polyester 6 mm");
    EXPECT_NEAR(in_millimetres(melted.total()), 4.0, near);
    EXPECT_EQ(find_row(melted, Item::end_left), nullptr);
    for (const std::string_view rope :
         {"12-strand HMPE 4 mm", "12-strand aramid 4 mm", "3-strand manila 14 mm"}) {
        EXPECT_EQ(refuse_end("heat-sealed", rope).code, Code::wrong_construction) << rope;
    }
}

TEST(HeatSealed, ACoverIsSealedOverACoreCutBack) {
    // Between 1 and 2 diameters of 6 mm.
    const auto covered = make_end("heat-sealed", "core-dependent HMPE 6 mm");
    EXPECT_NEAR(in_millimetres(covered.total()), 4.0, near);
    EXPECT_NEAR(mark_of(covered, MarkName::core_end), 13.0, near);
    EXPECT_EQ(refuse_end("heat-sealed", "3-strand polyester 12 mm", {{"core_back", "6 mm"}}).code,
              Code::unknown_field);
}

} // namespace
} // namespace libsplice::testing
