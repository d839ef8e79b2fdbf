// clipped-eye: clips and turn-back as printed for each size of wire, and nothing in between.
#include "ends.h"

#include <algorithm>

namespace libsplice::testing {
namespace {

struct ClipCase {
    std::string_view size;
    double clips;
    double turn_back; ///< inches
    std::string_view source;
};

// The supplier's table of small sizes, then 8 CCR 8497, Table 1.
constexpr std::array clip_cases{
    ClipCase{"1/8 in", 2, 3.75, "small-wire-clip-table"},
    ClipCase{"3/16 in", 2, 3.75, "small-wire-clip-table"},
    ClipCase{"1/4 in", 2, 4.75, "small-wire-clip-table"},
    ClipCase{"5/16 in", 2, 5.25, "small-wire-clip-table"},
    ClipCase{"3/8 in", 2, 6.5, "small-wire-clip-table"},
    ClipCase{"7/16 in", 2, 7, "small-wire-clip-table"},
    ClipCase{"1/2 in", 3, 11.5, "california-8-ccr-8497"},
    ClipCase{"9/16 in", 3, 12, "california-8-ccr-8497"},
    ClipCase{"5/8 in", 3, 12, "california-8-ccr-8497"},
    ClipCase{"3/4 in", 4, 18, "california-8-ccr-8497"},
    ClipCase{"7/8 in", 4, 19, "california-8-ccr-8497"},
    ClipCase{"1 in", 5, 26, "california-8-ccr-8497"},
    ClipCase{"1 1/8 in", 6, 34, "california-8-ccr-8497"},
    ClipCase{"1 1/4 in", 6, 37, "california-8-ccr-8497"},
    ClipCase{"1 1/2 in", 7, 48, "california-8-ccr-8497"},
};

std::string wire(std::string_view size) {
    return "wire galvanised-steel " + std::string(size);
}

TEST(ClippedEye, ClipsAndTurnBackAreThePrintedOnes) {
    for (const auto& clip : clip_cases) {
        const auto end = make_end("clipped-eye", wire(clip.size));
        EXPECT_NEAR(find_value(end, ValueName::clips).value_or(0.0), clip.clips, 1e-12)
            << clip.size;
        EXPECT_NEAR(length_of(end, Item::turn_back), clip.turn_back * 25.4, near) << clip.size;
        EXPECT_EQ(source_of(end, Item::turn_back), clip.source) << clip.size;
    }
}

TEST(ClippedEye, RowsAndMarksAreTheArithmetic) {
    // 1/8 in = 3.175 mm; pin 10, eye 30: h = 25, R = 6.5875, w = 1.5875. rho^2 = 627.52015625,
    // leg = sqrt(627.52015625 - 43.39515625) = sqrt(584.125) = 24.16867811,
    // beta = asin(6.5875/25.05035242) - atan(1.5875/25) = 0.266111 - 0.063415.
    const auto end = make_end("clipped-eye", wire("1/8 in"), {{"eye", "30 mm"}, {"pin", "10 mm"}});
    const double beta = std::asin(6.5875 / 25.05035242) - std::atan(1.5875 / 25.0);
    const double round = 6.5875 * (3.141592654 + 2.0 * beta) + 2.0 * 24.16867811;
    EXPECT_NEAR(length_of(end, Item::eye_legs), round, 1e-5);
    EXPECT_NEAR(in_millimetres(end.total()), round - 30.0 + 95.25, 1e-5);
    EXPECT_NEAR(mark_of(end, MarkName::turn_back), 95.25, near);
    EXPECT_NEAR(mark_of(end, MarkName::far_throat), 95.25 + round, 1e-5);
    EXPECT_EQ(find_row(end, Item::cutting_loss), nullptr);
    EXPECT_NEAR(value_of(end, ValueName::spacing_m), 19.05, near); // 6 D
    ASSERT_TRUE(end.retained);
    EXPECT_NEAR(end.retained->share, 0.80, 1e-12);
}

TEST(ClippedEye, MoreClipsTurnBackInProportion) {
    const auto end = make_end("clipped-eye", wire("1/8 in"), {{"clips", "3"}});
    EXPECT_NEAR(length_of(end, Item::turn_back), 142.875, near); // 95.25 x 3/2
}

TEST(ClippedEye, FewerClipsOrLessTurnBackAreRefused) {
    const auto clips = refuse_end("clipped-eye", wire("1/2 in"), {{"clips", "2"}});
    EXPECT_EQ(clips.code, Code::below_published_minimum);
    EXPECT_EQ(clips.field, "clips");
    EXPECT_TRUE(clips.rule.starts_with("california-8-ccr-8497")) << clips.rule;
    const auto turned = refuse_end("clipped-eye", wire("1/2 in"), {{"turn_back", "11 in"}});
    EXPECT_EQ(turned.code, Code::below_published_minimum);
    EXPECT_EQ(turned.field, "turn_back");
    make_end("clipped-eye", wire("1/2 in"), {{"turn_back", "11 1/2 in"}});
}

TEST(ClippedEye, SizesInBetweenNameTheirNeighbours) {
    const auto between = refuse_end("clipped-eye", wire("5 mm")); // 0.197 in
    EXPECT_EQ(between.code, Code::size_not_printed);
    EXPECT_TRUE(says(between, "3/16 in") && says(between, "1/4 in")) << between.text;
    const auto thinner = refuse_end("clipped-eye", wire("2 mm"));
    EXPECT_EQ(thinner.code, Code::size_not_printed);
    EXPECT_TRUE(says(thinner, "1/8 in")) << thinner.text;
    const auto thicker = refuse_end("clipped-eye", wire("40 mm"));
    EXPECT_EQ(thicker.code, Code::size_not_printed);
    EXPECT_TRUE(says(thicker, "1 1/2 in")) << thicker.text;
}

TEST(ClippedEye, TorqueIsThePrintedOne) {
    // 4.5 and 65 pound-feet of 1.3558179483 N m.
    EXPECT_NEAR(
        find_value(make_end("clipped-eye", wire("1/8 in")), ValueName::torque_nm).value_or(0.0),
        6.1011807674, 1e-9);
    EXPECT_NEAR(
        find_value(make_end("clipped-eye", wire("1/2 in")), ValueName::torque_nm).value_or(0.0),
        88.12816664, 1e-8);
}

TEST(ClippedEye, OtherClipsAreNamedOnlyWhereThereAreOthers) {
    const auto places = [](const End& end) {
        return std::ranges::count(end.steps, Action::seize, &Step::action);
    };
    EXPECT_EQ(places(make_end("clipped-eye", wire("1/4 in"))), 2);
    EXPECT_EQ(places(make_end("clipped-eye", wire("1/2 in"))), 3);
    EXPECT_EQ(
        places(make_end("clipped-eye", wire("5 mm"), {{"clips", "2"}, {"turn_back", "100 mm"}})),
        2);
}

TEST(ClippedEye, EveryClipHasAMarkWhereItsBaseIsKnown) {
    // 1/2 in: three clips on 292.1 mm. Bases of 30: 45 from the end, 15 from the throat, one
    // between.
    const auto end = make_end("clipped-eye", wire("1/2 in"), {{"base", "30 mm"}});
    EXPECT_NEAR(mark_of(end, MarkName::clip_1), 45.0, near);
    EXPECT_NEAR(mark_of(end, MarkName::clip_2), 161.05, near); // (45 + 277.1) / 2
    EXPECT_NEAR(mark_of(end, MarkName::clip_3), 277.1, near);
    // Four bases of 73.1 are 292.4.
    const auto fault = refuse_end("clipped-eye", wire("1/2 in"), {{"base", "73.1 mm"}});
    EXPECT_EQ(fault.code, Code::field_out_of_range);
    EXPECT_EQ(fault.field, "base");
    make_end("clipped-eye", wire("1/2 in"), {{"base", "73 mm"}});
}

TEST(ClippedEye, MetricSizesNeedBothFromTheMaker) {
    const auto end =
        make_end("clipped-eye", wire("5 mm"), {{"clips", "3"}, {"turn_back", "120 mm"}});
    EXPECT_NEAR(length_of(end, Item::turn_back), 120.0, near);
    EXPECT_TRUE(cautions_about(end, "clip maker's sheet"));
    EXPECT_EQ(refuse_end("clipped-eye", wire("5 mm"), {{"clips", "3"}}).code,
              Code::size_not_printed);
}

} // namespace
} // namespace libsplice::testing
