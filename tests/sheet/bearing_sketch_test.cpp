// The sketch of a made end: its dot stands on the bearing point, in proportion.
#include "libsplice/sheet/drawing/bearing_sketch.h"

#include "bench.h"

#include <gtest/gtest.h>

#include <regex>

namespace libsplice::testing {
namespace {

using Form = Span::Form;

std::string sketch(const End& allowance, LineEnd end = LineEnd::a) {
    KindDeclaration kind;
    kind.name = "hand-eye";
    kind.datum = "inside of the eye's crown";
    std::string svg;
    append_bearing_sketch(svg, kind, allowance, end);
    return svg;
}

struct Circle {
    double x = 0.0;
    double y = 0.0;
    double radius = 0.0;
};

/// The circles of a class: `o` for what is seen, `d` for the dot.
std::vector<Circle> circles(const std::string& svg, const std::string& css) {
    const std::regex circle("<circle class=\"" + css +
                            "\" cx=\"([0-9.]+)\" cy=\"([0-9.]+)\" r=\"([0-9.]+)\"");
    std::vector<Circle> found;
    for (std::sregex_iterator at(svg.begin(), svg.end(), circle), last; at != last; ++at) {
        found.push_back({std::stod((*at)[1]), std::stod((*at)[2]), std::stod((*at)[3])});
    }
    return found;
}

EyeFacts eye_inside(double inside, double bearing) {
    EyeFacts eye{};
    eye.inside = metres(inside);
    eye.bearing = metres(bearing);
    return eye;
}

// An eye of 50 mm in 5 mm rope on a pin of 20 mm: the dot lies where the pin touches the crown.
TEST(BearingSketch, AnEyesDotIsWhereItsPinBears) {
    End eye;
    eye.add(Span{Form::loop, mm(200), mm(320), mm(5), 0.0, mm(20)});
    eye.eye = eye_inside(0.05, 0.05);
    const std::string svg = sketch(eye);
    const auto pin = circles(svg, "o");
    const auto dot = circles(svg, "d");
    ASSERT_EQ(pin.size(), 1U);
    ASSERT_EQ(dot.size(), 1U);
    EXPECT_NEAR(dot[0].x, pin[0].x - pin[0].radius, 0.2);
    EXPECT_NEAR(dot[0].y, pin[0].y, 0.05);
    // 84 units for 55 mm along, 52 for 30 mm across: the first decides.
    EXPECT_NEAR(pin[0].radius, 10.0 * 84.0 / 55.0, 0.1);
}

TEST(BearingSketch, ARingsDotLiesInItsBore) {
    End eye;
    eye.add(Span{Form::loop, mm(200), mm(320), mm(5), 0.0, mm(20)});
    eye.eye = eye_inside(0.05, 0.044);
    const auto dot = circles(sketch(eye), "d");
    const auto ring = circles(sketch(eye), "o");
    ASSERT_EQ(dot.size(), 1U);
    EXPECT_NEAR(dot[0].x, ring[0].x - ring[0].radius + 6.0 * 84.0 / 55.0, 0.2);
}

TEST(BearingSketch, AHitchsDotIsOnTheLoadSideOfItsSpar) {
    End hitch;
    hitch.add(Span{Form::half_hitches, mm(60), mm(120), mm(6), 2.0});
    hitch.add(Span{Form::turns, mm(120), mm(400), mm(6), 2.0, mm(40)});
    const auto spar = circles(sketch(hitch), "o");
    const auto dot = circles(sketch(hitch), "d");
    ASSERT_EQ(spar.size(), 1U);
    EXPECT_NEAR(dot.at(0).x, spar[0].x + spar[0].radius, 0.2);
}

// A shank of 45 mm of which the wire fills 40: the pin's centre lies 5 mm beyond the wire's end.
TEST(BearingSketch, AFittingsDotIsItsPin) {
    End swage;
    swage.add(Row{Item::shank, Group::own, SpreadOrigin::none, cited_job, mm(-45), 0.0});
    swage.add(Row{Item::insertion, Group::own, SpreadOrigin::none, cited_job, mm(40), 0.0});
    swage.standing_mark = mm(40);
    swage.add(Span{Form::pressed, 0, mm(40), mm(4)});
    const auto pin = circles(sketch(swage), "o");
    const auto dot = circles(sketch(swage), "d");
    ASSERT_EQ(pin.size(), 1U);
    EXPECT_NEAR(dot.at(0).x, pin[0].x, 0.05);
    // A wire that goes in as far as the pin has no room for one beyond it.
    swage.shape = {};
    swage.add(Span{Form::pressed, 0, mm(45), mm(4)});
    EXPECT_TRUE(circles(sketch(swage), "o").empty());
}

TEST(BearingSketch, ABallsDotIsItsFaceAndAKnotsToo) {
    End stopper;
    stopper.add(Span{Form::knot, mm(40), mm(140), mm(6), 4.0});
    const double face = circles(sketch(stopper), "d").at(0).x;
    EXPECT_EQ(circles(sketch(stopper), "o").size(), 2U);
    stopper.add(Span{Form::ball, mm(140), mm(155), mm(6)});
    EXPECT_EQ(circles(sketch(stopper), "o").size(), 3U);
    EXPECT_GT(circles(sketch(stopper), "d").at(0).x, face);
}

TEST(BearingSketch, ACutEndIsMeasuredToTheCut) {
    End cut;
    cut.made = false;
    EXPECT_EQ(circles(sketch(cut), "d").size(), 1U);
    EXPECT_TRUE(circles(sketch(cut), "o").empty());
}

TEST(BearingSketch, EndBIsTurnedRound) {
    End eye;
    eye.add(Span{Form::loop, mm(200), mm(320), mm(5), 0.0, mm(20)});
    EXPECT_EQ(sketch(eye).find("matrix(-1"), std::string::npos);
    EXPECT_NE(sketch(eye, LineEnd::b).find("matrix(-1 0 0 1 170 0)"), std::string::npos);
}

TEST(BearingSketch, SaysWhatIsMeasuredTo) {
    const std::string svg = sketch({});
    EXPECT_NE(svg.find("aria-label=\"hand-eye: a dot on the bearing point"), std::string::npos);
    EXPECT_NE(svg.find("the dot: inside of the eye&#39;s crown"), std::string::npos);
}

} // namespace
} // namespace libsplice::testing
