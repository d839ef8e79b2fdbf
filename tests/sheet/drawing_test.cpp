// The drawing of a piece's ends: marks to one scale, and words for what each span is.
#include "libsplice/sheet/drawing/drawing.h"
#include "libsplice/sheet/drawing/span_look.h"

#include "bench.h"

#include <gtest/gtest.h>

#include <map>
#include <regex>

namespace libsplice {
namespace {

using Form = Span::Form;

std::string drawing_of(const Bench& bench) {
    std::string svg;
    append_drawing(svg, bench.piece, UnitSystem::metric);
    return svg;
}

/// The places of an end's marks in the drawing, by name.
std::map<std::string, double> places(const std::string& svg, const std::string& end) {
    const std::regex mark("data-end=\"" + end + "\" data-mark=\"([^\"]*)\" x=\"([0-9.]+)\"");
    std::map<std::string, double> found;
    for (std::sregex_iterator at(svg.begin(), svg.end(), mark), last; at != last; ++at) {
        found[(*at)[1]] = std::stod((*at)[2]);
    }
    return found;
}

// Of end a the marks lie at 100, 300 and 400 mm; of end b 15 mm farther from the cut, with the
// tail end at 15 mm.
TEST(Drawing, MarksStandToOneScaleFromBothSides) {
    const Bench bench;
    const std::string svg = drawing_of(bench);
    const auto a = places(svg, "a");
    const auto b = places(svg, "b");
    ASSERT_EQ(a.size(), 3U);
    ASSERT_EQ(b.size(), 4U);
    const double scale = (a.at("far throat") - a.at("taper start")) / 300.0;
    EXPECT_GT(scale, 0.1);
    EXPECT_NEAR(a.at("near throat") - a.at("taper start"), 200.0 * scale, 0.02);
    EXPECT_NEAR(b.at("taper start") - b.at("far throat"), 300.0 * scale, 0.02);
    EXPECT_NEAR(b.at("tail end") - b.at("far throat"), 400.0 * scale, 0.02);
    EXPECT_LT(a.at("far throat"), b.at("far throat"));
}

TEST(Drawing, SaysWhatIsTrimmedOnlyAfterTheCheck) {
    Bench bench;
    EXPECT_NE(drawing_of(bench).find("trim only after the check"), std::string::npos);
    bench.piece.check.reset();
    EXPECT_EQ(drawing_of(bench).find("trim only after the check"), std::string::npos);
}

TEST(Drawing, AJoinIsDrawnFromBothSides) {
    const Bench bench;
    KindDeclaration kind = bench.kind.declaration;
    const auto sides = [&] {
        std::string svg;
        append_drawing(svg, kind, bench.eye, millimetres(5.0), bench.book.names(),
                       UnitSystem::metric);
        return std::pair(places(svg, "a").size(), places(svg, "b").size());
    };
    EXPECT_EQ(sides(), std::pair(std::size_t{3}, std::size_t{0}));
    kind.reach = Reach::both_ends;
    EXPECT_EQ(sides(), std::pair(std::size_t{3}, std::size_t{3}));
}

struct Words {
    Span span;
    std::string_view words;
};

TEST(SpanWords, CountWhatIsCountedAndNameWhatItGoesRound) {
    const auto span = [](Form form, double count = 0.0, Nanometres around = 0) {
        return Span{form, 0, mm(100), mm(5), count, around};
    };
    const std::array words{
        Words{span(Form::buried), "goes inside"},
        Words{span(Form::buried, 2.0), "2 tails inside"},
        Words{span(Form::loop), "round the eye"},
        Words{span(Form::loop, 0.0, mm(8)), "round the eye, on 8.0 mm"},
        Words{span(Form::turns, 1.0, mm(40)), "1 turn round 40.0 mm"},
        Words{span(Form::turns, 1.5), "1.5 turns"},
        Words{span(Form::knot, 4.0), "in the knot, 4 crossings"},
        Words{span(Form::crossed, 1.0), "crosses once"},
        Words{span(Form::seized, 7.0), "seized"},
    };
    for (const auto& [of, wanted] : words) {
        EXPECT_EQ(words_of(of, UnitSystem::metric), wanted);
    }
    EXPECT_EQ(words_of(span(Form::loop, 0.0, 12'700'000), UnitSystem::imperial).substr(0, 18),
              "round the eye, on ");
}

/// How often a ring is drawn: a turn, each.
std::size_t rings(const Span& span) {
    std::string svg;
    append_look(svg, span, {OutlinePart::Form::even, 0.0, 200.0, 8.0, 0}, 0.0);
    std::size_t count = 0;
    for (std::size_t at = 0; (at = svg.find(" 0Z", at)) != std::string::npos; ++at) {
        ++count;
    }
    return count;
}

TEST(SpanLook, EveryTurnIsDrawn) {
    for (const double turns : {1.0, 2.0, 7.0}) {
        EXPECT_EQ(rings({Span::Form::turns, 0, mm(100), mm(5), turns, 0}),
                  static_cast<std::size_t>(turns));
    }
    EXPECT_EQ(rings({Span::Form::turns, 0, mm(100), mm(5), 1.5, 0}), 2U);
    // Too many to be told apart: no more than fit.
    EXPECT_EQ(rings({Span::Form::turns, 0, mm(100), mm(5), 1000.0, 0}), 100U);
}

TEST(SpanLook, AnEyeShowsItsPinOnlyIfItIsKnown) {
    EXPECT_EQ(rings({Span::Form::loop, 0, mm(100), mm(5), 0.0, mm(8)}), 1U);
    EXPECT_EQ(rings({Span::Form::loop, 0, mm(100), mm(5), 0.0, 0}), 0U);
}

TEST(SpanLook, EveryPatternIsDefined) {
    const std::string_view defined = drawing_patterns();
    const std::regex used("url\\(#([a-z-]+)\\)");
    for (std::size_t form = 0; form < Span::forms; ++form) {
        std::string svg;
        append_look(svg, {Span::Form(form), 0, mm(100), mm(5), 2.0, mm(8)},
                    {OutlinePart::Form::even, 0.0, 200.0, 8.0, 0}, 0.0);
        EXPECT_FALSE(svg.empty()) << form;
        for (std::sregex_iterator at(svg.begin(), svg.end(), used), last; at != last; ++at) {
            EXPECT_NE(defined.find("id=\"" + std::string((*at)[1]) + '"'), std::string::npos);
        }
    }
}

} // namespace
} // namespace libsplice
