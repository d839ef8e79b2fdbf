// What makes up part of the length but is not rope, and lengths that run to a pin's centre.
#include "jobs.h"

namespace libsplice::testing {
namespace {

const Line eye_line = with(plain_line, eye_at("end_a", "buried-eye", "36 mm", "12 mm"));

TEST(Fitting, IsANegativeRow) {
    const auto without = cut_one(with(eye_line, {{"spare", "0 mm"}}), step_of(millimetres(0.001)));
    const auto one = cut_one(with(eye_line, {{"spare", "0 mm"},
                                             {"end_a.fitting", "bow shackle"},
                                             {"end_a.fitting_length", "22 mm"}}),
                             step_of(millimetres(0.001)));
    EXPECT_NEAR(length_of(one.piece(), Item::fitting), -22.0, near);
    EXPECT_EQ(find_row(one.piece(), Item::fitting)->source, cited_job);
    EXPECT_NEAR(in_millimetres(without.piece().cut - one.piece().cut), 22.0, 1e-3);
    EXPECT_EQ(one.piece().line->end(LineEnd::a).fitting, "bow shackle");
}

TEST(Fitting, WithoutItsLengthIsRefused) {
    const auto fault = refuse_one(with(eye_line, {{"end_a.fitting", "snap shackle"}}));
    EXPECT_EQ(fault.code, Code::field_missing);
    EXPECT_EQ(fault.field, "end_a.fitting");
    EXPECT_TRUE(says(fault, "fitting_length")) << fault.text;
}

TEST(Fitting, LengthIsRead) {
    EXPECT_EQ(refuse_one(with(eye_line, {{"end_a.fitting_length", "short"}})).code,
              Code::field_unreadable);
    EXPECT_EQ(refuse_one(with(eye_line, {{"end_a.fitting_length", "-1 mm"}})).code,
              Code::field_out_of_range);
    EXPECT_EQ(refuse_one(with(eye_line, {{"end_a.fitting_length", "5001 mm"}})).code,
              Code::field_out_of_range);
}

TEST(PinCentre, AddsHalfThePin) {
    const auto one = cut_one(with(eye_line, {{"end_a.measured", "pin-centre"}}));
    EXPECT_NEAR(length_of(one.piece(), Item::pin_centre), 6.0, near);
    const auto bearing = cut_one(with(eye_line, {{"end_a.measured", "bearing"}}));
    EXPECT_EQ(find_row(bearing.piece(), Item::pin_centre), nullptr);
}

TEST(PinCentre, NeedsThePin) {
    const auto fault =
        refuse_one(with(plain_line, {{"end_a", "buried-eye"}, {"end_a.measured", "pin-centre"}}));
    EXPECT_EQ(fault.code, Code::field_missing);
    EXPECT_EQ(fault.field, "end_a.measured");
    const auto word = refuse_one(with(eye_line, {{"end_a.measured", "centre"}}));
    EXPECT_EQ(word.code, Code::field_unreadable);
    EXPECT_EQ(word.field, "end_a.measured");
}

TEST(FarEnd, FixedWhereTheOtherEndIsMadeOrFittedFirst) {
    const Line locked = with(plain_line, {{"end_a", "locked-eye"}});
    const auto steps_of = [](const Line& line, LineEnd end) {
        const auto one = cut_one(line);
        return std::ranges::count(one.piece().line->end(end).allowance->steps,
                                  Action::turn_eye_through, &Step::action);
    };
    const auto free = steps_of(locked, LineEnd::a);
    const auto fixed = steps_of(with(locked, {{"end_a.far_end", "fixed"}}), LineEnd::a);
    ASSERT_NE(free, fixed);
    const Line both = with(locked, {{"end_b", "locked-eye"}});
    EXPECT_EQ(steps_of(both, LineEnd::a), free);
    EXPECT_EQ(steps_of(both, LineEnd::b), fixed);
    // A fitting on the other end is in the way only if it is there before this end is made.
    const Line fitted =
        with(locked, {{"end_b.fitting", "ring"}, {"end_b.fitting_length", "30 mm"}});
    EXPECT_EQ(steps_of(fitted, LineEnd::a), free);
    EXPECT_EQ(steps_of(with(fitted, {{"first_end", "b"}}), LineEnd::a), fixed);
    // The job cannot have it otherwise.
    EXPECT_EQ(refuse_one(with(both, {{"end_b.far_end", "free"}})).code, Code::order_impossible);
}

} // namespace
} // namespace libsplice::testing
