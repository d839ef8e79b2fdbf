// What an end is refused for, with the code, the field and a way out.
#include "ends.h"

namespace libsplice::testing {
namespace {

constexpr std::string_view rope = "12-strand HMPE 5 mm";

TEST(Refusal, EyeTooSmallForItsPin) {
    // The throat may not come nearer than the centreline radius: 12/2 + (12 + 6)/2 = 15 mm.
    const auto fault =
        refuse_end("buried-eye", "12-strand HMPE 6 mm", {{"eye", "14 mm"}, {"pin", "12 mm"}});
    EXPECT_EQ(fault.code, Code::eye_too_small);
    EXPECT_EQ(fault.field, "eye");
    EXPECT_TRUE(says(fault, "15 mm")) << fault.text;
    EXPECT_EQ(refuse_end("tucked-eye", "3-strand nylon 12 mm", {{"eye", "5 mm"}}).code,
              Code::eye_too_small);
}

TEST(Refusal, ThroatOver60Degrees) {
    // Pin 12, rope 5: with the throat 15 mm from the pin's centre, rho^2 = 231.25 and
    // beta = asin(8.5/15.20690633) - atan(2.5/15) = 33.98 - 9.46 degrees: 49 degrees open. With
    // 13 mm: asin(8.5/13.23820230) - atan(2.5/13) = 39.95 - 10.89: 58.1. With 12.5 mm:
    // asin(8.5/12.74754878) - atan(2.5/12.5) = 41.82 - 11.31: 61.0.
    const auto with_eye = [](std::string_view eye) {
        return try_end("buried-eye", rope, {{"eye", eye}, {"pin", "12 mm"}});
    };
    EXPECT_TRUE(with_eye("21 mm"));
    EXPECT_TRUE(with_eye("19 mm"));
    const auto wide = with_eye("18.5 mm");
    ASSERT_FALSE(wide);
    EXPECT_EQ(wide.error().code, Code::throat_too_wide);
    EXPECT_EQ(wide.error().field, "eye");
    EXPECT_TRUE(says(wide.error(), "61 degrees") && says(wide.error(), "limit of 60"))
        << wide.error().text;
    // Legs drawn to one line: 8.5 / sin 30 degrees + 6 = 23 mm, which is always enough.
    EXPECT_TRUE(says(wide.error(), "23 mm")) << wide.error().text;
    EXPECT_TRUE(with_eye("23 mm"));
}

TEST(Refusal, TailBelowThePublishedMinimumNamesTheRule) {
    const auto hmpe = refuse_end("buried-eye", rope, {{"tail", "224 mm"}}); // 45 D is 225
    EXPECT_EQ(hmpe.code, Code::below_published_minimum);
    EXPECT_EQ(hmpe.field, "tail");
    EXPECT_TRUE(hmpe.rule.starts_with("practical-sailor-hmpe-splice")) << hmpe.rule;
    EXPECT_TRUE(says(hmpe, "225 mm")) << hmpe.text;
    make_end("buried-eye", rope, {{"tail", "225 mm"}});

    const auto polyester =
        refuse_end("locked-eye", "12-strand polyester 10 mm", {{"tail", "239 mm"}}); // 24 D
    EXPECT_EQ(polyester.code, Code::below_published_minimum);
    EXPECT_TRUE(polyester.rule.starts_with("toss-riggers-apprentice")) << polyester.rule;
    make_end("locked-eye", "12-strand polyester 10 mm", {{"tail", "240 mm"}});
    EXPECT_EQ(refuse_end("buried-eye", "12-strand polypropylene 10 mm", {{"tail", "239 mm"}}).code,
              Code::below_published_minimum);
    make_end("buried-eye", "12-strand polypropylene 10 mm", {{"tail", "240 mm"}});
}

TEST(Refusal, TaperLongerThanItsTail) {
    const auto fault = refuse_end("buried-eye", rope, {{"tail", "360 mm"}, {"taper", "361 mm"}});
    EXPECT_EQ(fault.code, Code::taper_longer_than_tail);
    EXPECT_EQ(fault.field, "taper");
    make_end("buried-eye", rope, {{"tail", "360 mm"}, {"taper", "360 mm"}});
}

TEST(Refusal, FidThatComesOutBeforeTheTailsEnd) {
    // The tail lies along 360 + 47.309 = 407.309 mm of the host when it is spliced.
    const auto fault = refuse_end("buried-eye", rope, {{"exit", "407 mm"}});
    EXPECT_EQ(fault.code, Code::field_out_of_range);
    EXPECT_EQ(fault.field, "exit");
    EXPECT_TRUE(says(fault, "408 mm")) << fault.text;
    make_end("buried-eye", rope, {{"exit", "408 mm"}});
}

TEST(Refusal, FidThatComesOutInsideACoversTail) {
    // Of 10 mm rope: the cover's tail is a fid of 210 mm and lies in the core from its entry on.
    const std::string braid = "double-braid polyester 10 mm";
    const auto eye = refuse_end("cover-core-eye", braid, {{"exit", "209 mm"}});
    EXPECT_EQ(eye.code, Code::field_out_of_range);
    EXPECT_EQ(eye.field, "exit");
    EXPECT_TRUE(says(eye, "210 mm")) << eye.text;
    make_end("cover-core-eye", braid, {{"exit", "210 mm"}});
    // In a join it is counted from there, and the entry lies a short section of 70 mm on.
    const auto join = refuse_end("end-for-end", braid, {{"exit", "279 mm"}});
    EXPECT_EQ(join.code, Code::field_out_of_range);
    EXPECT_EQ(join.field, "exit");
    make_end("end-for-end", braid, {{"exit", "290 mm"}});
}

TEST(Refusal, UnknownFieldNamesTheNearest) {
    const auto fault = refuse_end("buried-eye", rope, {{"tial", "400 mm"}});
    EXPECT_EQ(fault.code, Code::unknown_field);
    EXPECT_EQ(fault.field, "tial");
    EXPECT_TRUE(says(fault, "did you mean \"tail\"") || says(fault, "\"taper\"")) << fault.text;
    const auto far_off = refuse_end("whipped", rope, {{"circumference", "1 mm"}});
    EXPECT_EQ(far_off.code, Code::unknown_field);
    EXPECT_TRUE(says(far_off, "length")) << far_off.text;
    const auto none = refuse_end("bare", rope, {{"tail", "1 mm"}});
    EXPECT_EQ(none.code, Code::unknown_field);
    EXPECT_TRUE(says(none, "none of its own")) << none.text;
}

TEST(Refusal, UnknownRuleNamesTheOthers) {
    const auto fault = refuse_end("buried-eye", rope, {{"rule", "60-diameter"}});
    EXPECT_EQ(fault.code, Code::unknown_rule);
    EXPECT_EQ(fault.field, "rule");
    EXPECT_TRUE(says(fault, "60-diameters") && says(fault, "three-fids")) << fault.text;
    // A rule of another fibre is not one of this rope's.
    EXPECT_EQ(refuse_end("buried-eye", rope, {{"rule", "24-diameters"}}).code, Code::unknown_rule);
}

TEST(Refusal, WrongConstructionListsWhatCanBeMade) {
    const auto fault = refuse_end("buried-eye", "wire stainless-steel 4 mm");
    EXPECT_EQ(fault.code, Code::wrong_construction);
    EXPECT_TRUE(says(fault, "clipped-eye")) << fault.text;
    EXPECT_FALSE(says(fault, "bowline")) << fault.text;
    const auto laid = refuse_end("stripped-eye", "3-strand nylon 12 mm");
    EXPECT_TRUE(says(laid, "tucked-eye") && says(laid, "seized-eye")) << laid.text;
}

TEST(Refusal, FibreOfWhichNoSourceSpeaksIsNotGuessed) {
    const auto fault = refuse_end("buried-eye", "12-strand manila 10 mm");
    EXPECT_EQ(fault.code, Code::figure_missing);
    EXPECT_TRUE(says(fault, "tail")) << fault.text;
}

} // namespace
} // namespace libsplice::testing
