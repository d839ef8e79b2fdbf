// The drawing of a piece's ends: marks to one scale, and words for what each span is.
#include "libsplice/sheet/drawing/drawing.h"
#include "libsplice/sheet/drawing/span_look.h"

#include "bench.h"

#include <gtest/gtest.h>

#include <map>
#include <regex>

namespace libsplice::testing {
namespace {

using Form = Span::Form;

std::string drawing_of(const Line& line) {
    const One one = cut_one(line);
    std::string svg;
    append_drawing(svg, one.piece(), UnitSystem::metric);
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

TEST(Drawing, MarksStandToOneScaleFromBothSides) {
    const One one = cut_one(two_eyes());
    const std::string svg = drawing_of(two_eyes());
    const auto& names = shipped_book().names();
    // From the marks that lie farthest apart, since places are drawn to a hundredth.
    double scale = 0.0;
    double farthest = 0.0;
    const auto each_pair = [&](const auto& see) {
        for (const LineEnd end : {LineEnd::a, LineEnd::b}) {
            const auto drawn = places(svg, end == LineEnd::a ? "a" : "b");
            std::optional<PieceMark> first;
            for (const PieceMark& mark : one.piece().marks) {
                if (mark.end != end) {
                    continue;
                }
                if (!first) {
                    first = mark;
                    continue;
                }
                const double apart = in_millimetres(mark.from_end - first->from_end);
                const double seen = std::abs(drawn.at(std::string(names.of(mark.name))) -
                                             drawn.at(std::string(names.of(first->name))));
                see(apart, seen, names.of(mark.name));
            }
        }
    };
    each_pair([&](double apart, double seen, std::string_view) {
        scale = apart > farthest ? seen / apart : scale;
        farthest = std::max(farthest, apart);
    });
    each_pair([&](double apart, double seen, std::string_view name) {
        EXPECT_NEAR(seen, apart * scale, 0.03) << name;
    });
    EXPECT_GT(scale, 0.1);
}

TEST(Drawing, SaysWhatIsTrimmedOnlyAfterTheCheck) {
    EXPECT_NE(drawing_of(two_eyes()).find("trim only after the check"), std::string::npos);
    EXPECT_EQ(
        drawing_of(with(plain_line, {{"end_a", "whipped"}})).find("trim only after the check"),
        std::string::npos);
}

TEST(Drawing, AJoinIsDrawnFromBothSides) {
    KindDeclaration kind;
    End end;
    end.add(Mark{MarkName::near_throat, 300'000'000});
    end.add(Mark{MarkName::far_throat, 400'000'000});
    const auto sides = [&] {
        std::string svg;
        append_drawing(svg, kind, end, millimetres(5.0), shipped_book().names(),
                       UnitSystem::metric);
        return std::pair(places(svg, "a").size(), places(svg, "b").size());
    };
    EXPECT_EQ(sides(), std::pair(std::size_t{2}, std::size_t{0}));
    kind.reach = Reach::both_ends;
    EXPECT_EQ(sides(), std::pair(std::size_t{2}, std::size_t{2}));
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
} // namespace libsplice::testing
