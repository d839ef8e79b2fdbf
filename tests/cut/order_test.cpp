// The steps of a whole line stand in an order in which they can be done.
#include "jobs.h"

#include <gmock/gmock.h>

namespace libsplice::testing {
namespace {

/// Where the first such step stands; the end of the list if there is none.
std::size_t place_of(const Piece& piece, Action action, std::optional<LineEnd> end) {
    const auto found = std::ranges::find_if(piece.steps, [&](const PieceStep& step) {
        return step.action == action && step.end == end;
    });
    return static_cast<std::size_t>(found - piece.steps.begin());
}

bool has(const Piece& piece, Action action, std::optional<LineEnd> end) {
    return place_of(piece, action, end) < piece.steps.size();
}

/// The names of the marks that a step is done at.
std::vector<MarkName> marks_of(const Piece& piece, const PieceStep& step) {
    std::vector<MarkName> names;
    for (const std::uint8_t number : step.at) {
        for (const PieceMark& mark : piece.marks) {
            if (mark.end == step.end && mark.number == number) {
                names.push_back(mark.name);
            }
        }
    }
    return names;
}

const PieceStep& step_of(const Piece& piece, Action action, std::optional<LineEnd> end) {
    const auto place = place_of(piece, action, end);
    EXPECT_LT(place, piece.steps.size());
    return piece.steps.at(place < piece.steps.size() ? place : 0);
}

const Line eye_and_whipping =
    with(plain_line, with(eye_at("end_a", "buried-eye", "36 mm", "12 mm"), {{"end_b", "whipped"}}));
const Line strop = with(plain_line, with(eye_at("end_a", "buried-eye", "36 mm", "12 mm"),
                                         eye_at("end_b", "buried-eye", "36 mm", "12 mm")));

TEST(Order, PlainEndKeepsAllThatLiesOutsideItUntilItIsCutAboard) {
    const auto one = cut_one(
        with(eye_and_whipping, {{"wear", "600 mm"}, {"extra", "300 mm"}, {"spare", "40 mm"}}));
    const Piece& piece = one.piece();
    EXPECT_FALSE(has(piece, Action::trim, LineEnd::b));
    const PieceStep& cut = step_of(piece, Action::cut, LineEnd::b);
    EXPECT_TRUE(cut.at.empty()); // the raw end, and nothing with it
    // 600 + 300 + 40 and the rounding.
    const double outside = 940.0 + length_of(piece, Item::rounding);
    EXPECT_NEAR(cut.amounts[0].value * 1000.0, outside, 1e-6);
    const PieceStep& aboard = step_of(piece, Action::cut_aboard, LineEnd::b);
    EXPECT_EQ(marks_of(piece, aboard), std::vector{MarkName::bearing_point});
    EXPECT_NEAR(aboard.amounts[0].value, 0.6, 1e-12); // the rope for wear stays on
    EXPECT_LT(place_of(piece, Action::cut, LineEnd::b),
              place_of(piece, Action::cut_aboard, LineEnd::b));
    EXPECT_LT(place_of(piece, Action::cut_aboard, LineEnd::b),
              place_of(piece, Action::whip, LineEnd::b));
}

TEST(Order, SurplusOfASplicedEndIsTrimmedBeforeItIsThinnedOrClosed) {
    const auto one = cut_one(with(strop, {{"fit", "exact"}}));
    const Piece& piece = one.piece();
    const PieceStep& trim = step_of(piece, Action::trim, LineEnd::b);
    EXPECT_EQ(marks_of(piece, trim), std::vector{MarkName::tail_end});
    EXPECT_NEAR(trim.amounts[0].value * 1000.0,
                length_of(piece, Item::spare) + length_of(piece, Item::rounding), 1e-6);
    const auto place = place_of(piece, Action::trim, LineEnd::b);
    EXPECT_LT(place_of(piece, Action::mark, LineEnd::b), place);
    for (const Action action :
         {Action::lead_in, Action::bring_together, Action::taper, Action::bury, Action::stitch}) {
        EXPECT_LT(place, place_of(piece, action, LineEnd::b)) << name_of(action);
    }
    EXPECT_FALSE(has(piece, Action::trim, LineEnd::a)); // nothing lies outside the first
    // The check is read between the two ends, with the first one made.
    const auto check = place_of(piece, Action::measure, std::nullopt);
    EXPECT_LT(place_of(piece, Action::stitch, LineEnd::a), check);
    EXPECT_LT(check, place);
}

TEST(Order, TrimNamesWhatItCutsOff) {
    const auto one = cut_one(with(strop, {{"fit", "exact"}}));
    const PieceStep& trim = step_of(one.piece(), Action::trim, LineEnd::b);
    EXPECT_THAT(std::string(trim.text), ::testing::HasSubstr("spare"));
    EXPECT_THAT(std::string(trim.text), ::testing::HasSubstr("rounding"));
}

TEST(Order, RopeForWearLiesAtAnEndThatKeepsIt) {
    const Line wear = with(eye_and_whipping, {{"wear", "600 mm"}});
    EXPECT_NE(find_row(cut_one(wear).piece(), Item::wear, LineEnd::b), nullptr);
    // Made last, the eye has no place for it.
    const auto turned = cut_one(with(wear, {{"first_end", "b"}}));
    EXPECT_NE(find_row(turned.piece(), Item::wear, LineEnd::b), nullptr);
    EXPECT_EQ(find_row(turned.piece(), Item::wear, LineEnd::a), nullptr);
    const auto fault = refuse_one(with(strop, {{"wear", "600 mm"}}));
    EXPECT_EQ(fault.code, Code::cannot_be_both);
    EXPECT_EQ(fault.field, "wear");
    EXPECT_EQ(refuse_one(with(strop, {{"extra", "600 mm"}})).field, "extra");
}

TEST(Order, KnotKeepsRopeForWearBeyondItsTrim) {
    const Line line{{"name", "sheet"},    {"rope", "demo-db-poly-8"}, {"length", "9 m"},
                    {"end_a", "bowline"}, {"end_b", "figure-eight"},  {"extra", "300 mm"},
                    {"spare", "25 mm"}};
    const auto one = cut_one(line);
    const PieceStep& trim = step_of(one.piece(), Action::trim, LineEnd::b);
    EXPECT_EQ(marks_of(one.piece(), trim), std::vector{MarkName::trim});
    const double surplus = 25.0 + length_of(one.piece(), Item::rounding);
    EXPECT_NEAR(mark_of(one.piece(), LineEnd::b, MarkName::trim), surplus, near);
    EXPECT_NEAR(mark_of(one.piece(), LineEnd::b, MarkName::tail_end), surplus + 300.0, near);
}

TEST(Order, RemakesAreCounted) {
    const auto one = cut_one(with(eye_and_whipping, {{"wear", "1200 mm"}}));
    const auto& remakes = one.piece().line->remakes;
    ASSERT_EQ(remakes.size(), 1U);
    EXPECT_EQ(remakes[0].end, LineEnd::a);
    // A tail of 72 x 5 = 360 mm, the eye's legs of some 90 less its 36, and the rows of the splice.
    EXPECT_NEAR(in_millimetres(remakes[0].takes), 440.0, 40.0);
    EXPECT_EQ(remakes[0].count, 2);
    EXPECT_EQ(cut_one(with(eye_and_whipping, {{"wear", "300 mm"}})).piece().line->remakes[0].count,
              0);
}

TEST(Order, CaptiveFittingGoesInBeforeItsEndCloses) {
    const Line ring{
        {"end_a.fitting", "ring"}, {"end_a.fitting_length", "20 mm"}, {"end_a.captive", "yes"}};
    const auto one = cut_one(with(eye_and_whipping, ring));
    const PieceStep& step = step_of(one.piece(), Action::fit_first, LineEnd::a);
    EXPECT_EQ(step.named, "ring");
    EXPECT_LT(place_of(one.piece(), Action::fit_first, LineEnd::a),
              place_of(one.piece(), Action::bring_together, LineEnd::a));
    EXPECT_EQ(refuse_one(with(eye_and_whipping, {{"end_a.captive", "yes"}})).code,
              Code::field_missing);
}

TEST(Order, TurnedEyeWithACaptiveFittingIsRefusedWithAnOffer) {
    const Line turned = with(with(strop, {{"end_b", "locked-eye"}}),
                             {{"end_b.fitting", "adjuster"}, {"end_b.fitting_length", "80 mm"}});
    cut_one(turned);
    const auto fault = refuse_one(with(turned, {{"end_b.captive", "yes"}}));
    EXPECT_EQ(fault.code, Code::order_impossible);
    EXPECT_EQ(fault.field, "end_b");
    EXPECT_TRUE(says(fault, "end_b = buried-eye") && says(fault, "first_end = b")) << fault.text;
    cut_one(with(turned, {{"end_b.captive", "yes"}, {"end_b", "buried-eye"}}));
    // Made first, with the other end free, the eye is not turned.
    cut_one(with(turned, {{"end_b.captive", "yes"}, {"first_end", "b"}}));
}

TEST(Order, SecondLarkedEyeIsRefusedWithAnOffer) {
    const Line larked = with(plain_line, {{"end_a", "larked-eye"}, {"end_a.pin", "12 mm"}});
    cut_one(larked);
    const auto fault = refuse_one(with(larked, {{"end_b", "larked-eye"}, {"end_b.pin", "12 mm"}}));
    EXPECT_EQ(fault.code, Code::order_impossible);
    EXPECT_TRUE(says(fault, "buried-eye with made = aboard")) << fault.text;
}

TEST(Order, LarkedEyeIsHungAfterTheCheckAndBeforeTheLineIsRove) {
    const auto run = cut_toml("[[line]]\nname = \"line\"\nrope = \"12-strand HMPE 5 mm\"\n"
                              "route = { points = [ [\"0 m\", \"0 m\"], { at = [\"3 m\", \"0 m\"], "
                              "sheave = \"60 mm\" }, [\"3 m\", \"4 m\"] ] }\n"
                              "prestretched = \"yes\"\n"
                              "end_a = { kind = \"larked-eye\", pin = \"12 mm\" }\n"
                              "end_b = { kind = \"buried-eye\", eye = \"36 mm\" }\n");
    ASSERT_TRUE(run.faults.empty()) << run.faults.front().text;
    const Piece& piece = run.lines.front().piece;
    const auto hang = place_of(piece, Action::hang, LineEnd::a);
    const auto reeve = place_of(piece, Action::reeve, std::nullopt);
    EXPECT_LT(place_of(piece, Action::stitch, LineEnd::a), hang);
    EXPECT_LT(hang, reeve);
    EXPECT_LT(reeve, place_of(piece, Action::lead_in, LineEnd::b));
}

TEST(Order, WhatHasToBeOnTheLineGoesOnOverAnEndThatIsStillFree) {
    const auto both_made = cut_one(with(strop, {{"fit_first", "ball, block"}}));
    const auto thread = place_of(both_made.piece(), Action::fit_first, std::nullopt);
    EXPECT_EQ(step_of(both_made.piece(), Action::fit_first, std::nullopt).named, "ball, block");
    EXPECT_LT(place_of(both_made.piece(), Action::stitch, LineEnd::a), thread);
    EXPECT_LT(thread, place_of(both_made.piece(), Action::lead_in, LineEnd::b));
    // A locked eye is made with the other end drawn through it: nothing may lie on the line yet.
    const auto locked = cut_one(
        with(plain_line, {{"end_a", "whipped"}, {"end_b", "locked-eye"}, {"fit_first", "ball"}}));
    EXPECT_LT(place_of(locked.piece(), Action::pass_line_through_tail, LineEnd::b),
              place_of(locked.piece(), Action::fit_first, std::nullopt));
    EXPECT_FALSE(has(cut_one(strop).piece(), Action::fit_first, std::nullopt));
}

/// The places of all such steps.
std::vector<std::size_t> places_of(const Piece& piece, Action action, std::optional<LineEnd> end) {
    std::vector<std::size_t> places;
    for (std::size_t i = 0; i < piece.steps.size(); ++i) {
        if (piece.steps[i].action == action && piece.steps[i].end == end) {
            places.push_back(i);
        }
    }
    return places;
}

TEST(Order, EndThatIsCutAboardIsMarkedAndWhippedAfterThat) {
    const auto one = cut_one(with(eye_and_whipping, {{"wear", "600 mm"}}));
    const Piece& piece = one.piece();
    const auto marks = places_of(piece, Action::mark, LineEnd::b);
    ASSERT_EQ(marks.size(), 2U);
    EXPECT_EQ(marks_of(piece, piece.steps[marks[0]]),
              (std::vector{MarkName::tail_end, MarkName::bearing_point}));
    EXPECT_EQ(marks_of(piece, piece.steps[marks[1]]), std::vector{MarkName::whipping});
    // The whipping is 1.5 D long and begins 1 D from the end: 2.5 x 5 mm from the cut there is
    // then.
    EXPECT_NEAR(piece.steps[marks[1]].amounts[0].value, 0.0125, 1e-12);
    EXPECT_LT(place_of(piece, Action::cut_aboard, LineEnd::b), marks[1]);
    EXPECT_LT(marks[1], place_of(piece, Action::whip, LineEnd::b));
}

TEST(Order, MarkOnTheVeryEndIsLeftOut) {
    const Line line{{"name", "sheet"},    {"rope", "demo-db-poly-8"}, {"length", "9 m"},
                    {"end_a", "bowline"}, {"end_b", "figure-eight"},  {"extra", "300 mm"},
                    {"spare", "0 mm"}};
    const double rounding = length_of(cut_one(line).piece(), Item::rounding);
    ASSERT_GT(rounding, 0.001);
    // As much more to keep, and nothing is rounded.
    const auto one = cut_one(with(line, {{"extra", std::to_string(300.0 + rounding) + " mm"}}));
    const Piece& piece = one.piece();
    ASSERT_NEAR(length_of(piece, Item::rounding), 0.0, 1e-6);
    EXPECT_TRUE(std::ranges::none_of(piece.marks,
                                     [](const PieceMark& mark) { return mark.from_end == 0; }));
    EXPECT_FALSE(has(piece, Action::trim, LineEnd::b));
    EXPECT_NEAR(mark_of(piece, LineEnd::b, MarkName::tail_end), 300.0 + rounding, 1e-5);
    // The others are numbered from 1 without it, in the steps too.
    const auto tie = step_of(piece, Action::tie, LineEnd::b);
    EXPECT_EQ(marks_of(piece, tie), std::vector{MarkName::knot_face});
}

TEST(Order, ClosedLineThatIsCutToFitIsClosedAboard) {
    const Line loop = with(plain_line, {{"end_b", "endless-loop"}, {"fit", "trim-aboard"}});
    for (const char* first : {"a", "b"}) {
        const auto one = cut_one(with(loop, {{"first_end", first}}));
        const auto aboard = place_of(one.piece(), Action::plain, LineEnd::b);
        EXPECT_LT(aboard, place_of(one.piece(), Action::pass_tail_through_host, LineEnd::b));
        EXPECT_LT(aboard, place_of(one.piece(), Action::trim, LineEnd::a));
    }
    EXPECT_FALSE(
        has(cut_one(with(loop, {{"fit", "at-least"}})).piece(), Action::plain, LineEnd::b));
}

TEST(Order, FirstEndMayBeMadeAboardIfTheLastIsCutThere) {
    const Line line = with(eye_and_whipping, {{"end_a.made", "aboard"}, {"fit", "trim-aboard"}});
    const auto one = cut_one(line);
    EXPECT_LT(place_of(one.piece(), Action::plain, LineEnd::a),
              place_of(one.piece(), Action::lead_in, LineEnd::a));
    EXPECT_EQ(refuse_one(with(line, {{"fit", "at-least"}})).code, Code::cannot_be_both);
}

TEST(Order, NeitherEyeOfAStropHoldsAClosedFitting) {
    const Line whole = with(plain_line, {{"end_a", "two-eye-strop"}});
    const std::vector<std::string> ends{"end_a", "end_b"};
    for (const std::string& end : ends) {
        const auto fault = refuse_one(with(whole, {{end + ".fitting", "ring"},
                                                   {end + ".fitting_length", "20 mm"},
                                                   {end + ".captive", "yes"}}));
        EXPECT_EQ(fault.code, Code::order_impossible);
        EXPECT_EQ(fault.field, end);
        EXPECT_TRUE(says(fault, end + " = buried-eye")) << fault.text;
    }
    // A loop is closed round what hangs in it, whichever end names it.
    const auto loop = cut_one(with(plain_line, {{"end_a", "endless-loop"},
                                                {"end_b.fitting", "ring"},
                                                {"end_b.fitting_length", "20 mm"},
                                                {"end_b.captive", "yes"}}));
    EXPECT_LT(place_of(loop.piece(), Action::fit_first, LineEnd::b),
              place_of(loop.piece(), Action::pass_tail_through_host, LineEnd::a));
}

TEST(Order, EyeThatIsNotHungYetIsMeasuredFromItsThroat) {
    const auto one = cut_one(with(plain_line, {{"end_a", "larked-eye"},
                                               {"end_a.eye", "90 mm"},
                                               {"end_a.pin", "8 mm"},
                                               {"end_b", "buried-eye"},
                                               {"fit", "exact"}}));
    const PieceStep& step = step_of(one.piece(), Action::plain, LineEnd::a);
    // Eye less twice the pin and rope and 1.5 D that draws up: 90 - 2 x (8 + 5) - 7.5.
    EXPECT_NEAR(step.amounts[0].value * 1000.0, 56.5, near);
    EXPECT_EQ(place_of(one.piece(), Action::plain, LineEnd::a) + 1,
              place_of(one.piece(), Action::measure, std::nullopt));
}

TEST(Order, EndMadeAboardIsTheLast) {
    const auto fault = refuse_one(with(strop, {{"end_a.made", "aboard"}}));
    EXPECT_EQ(fault.code, Code::cannot_be_both);
    EXPECT_EQ(fault.field, "end_a.made");
    cut_one(with(strop, {{"end_a.made", "aboard"}, {"end_b.made", "aboard"}}));
    const auto one = cut_one(with(strop, {{"end_b.made", "aboard"}}));
    EXPECT_TRUE(one.piece().line->end(LineEnd::b).aboard);
    EXPECT_EQ(refuse_one(with(strop, {{"end_b.made", "somewhere"}})).code, Code::field_unreadable);
    // A line that is cut to fit aboard has its last end made there.
    EXPECT_TRUE(
        cut_one(with(strop, {{"fit", "trim-aboard"}})).piece().line->end(LineEnd::b).aboard);
}

TEST(Order, CheckHasAReadingBeforeAndAfterTheFirstEndIsLoaded) {
    const auto one = cut_one(with(strop, {{"fit", "exact"}}));
    ASSERT_TRUE(one.piece().check);
    // The first splice draws out by its settling at the first load: it then reads so much more.
    const double settles = length_of(one.piece(), Item::settling, LineEnd::a);
    EXPECT_LT(settles, 0.0);
    EXPECT_NEAR(in_millimetres(one.piece().check->reads_loaded - one.piece().check->reads),
                -settles, near);
    const PieceStep& step = step_of(one.piece(), Action::measure, std::nullopt);
    EXPECT_EQ(step.named, "far throat");
    EXPECT_NEAR(step.amounts[0].value * 1000.0, in_millimetres(one.piece().check->reads), near);
}

TEST(Order, EveryMarkOfAStepIsOnThePiece) {
    for (const Line& line : many_sorts()) {
        const auto one = cut_one(line);
        for (const PieceStep& step : one.piece().steps) {
            for (const std::uint8_t number : step.at) {
                EXPECT_TRUE(std::ranges::any_of(one.piece().marks,
                                                [&](const PieceMark& mark) {
                                                    return mark.end == step.end &&
                                                           mark.number == number;
                                                }))
                    << step.text << ' ' << int{number};
            }
        }
    }
}

TEST(Between, TheMarksIsNeverNegative) {
    // Exits of 108 D = 540 mm from either throat cross in a line of 900 mm.
    const auto one = cut_one(with(strop, {{"length", "900 mm"}}));
    EXPECT_GT(one.piece().between_marks, 0);
    EXPECT_EQ(one.piece().between[0], MarkName::far_throat);
    const auto longer = cut_one(strop);
    EXPECT_EQ(longer.piece().between[0], MarkName::exit);
}

} // namespace
} // namespace libsplice::testing
