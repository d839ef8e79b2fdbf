// Which rule gives a figure, and what is said where none does.
#include "libsplice/units/read.h"

#include "folder.h"

#include <gmock/gmock.h>

namespace libsplice::testing {
namespace {

Rule rule(const std::string& name, FigureId id, double value) {
    Rule made;
    made.id = name;
    made.name = name;
    Figure figure;
    figure.value = value;
    made.figures.emplace_back(id, figure);
    return made;
}

Rule rule_for_sizes(FigureId id, double value, const std::string& from, const std::string& up_to) {
    Rule made = rule(from, id, value);
    made.is_default = true;
    if (!from.empty()) {
        made.from = PrintedSize{read_length(from)->length, from};
    }
    if (!up_to.empty()) {
        made.up_to = PrintedSize{read_length(up_to)->length, up_to};
    }
    return made;
}

Rope rope_of(const std::string& description) {
    const auto rope = Catalogue().rope(description);
    EXPECT_TRUE(rope.has_value()) << description;
    return rope ? *rope : Rope{};
}

TEST(RuleSizes, BothEndsBelong) {
    const Rule made = rule_for_sizes(FigureId::clips, 3, "1/2 in", "1 in");
    EXPECT_TRUE(made.applies_to(rope_of("wire stainless-steel 1/2 in")));
    EXPECT_TRUE(made.applies_to(rope_of("wire stainless-steel 12.7 mm")));
    EXPECT_TRUE(made.applies_to(rope_of("wire stainless-steel 25.4 mm")));
    EXPECT_FALSE(made.applies_to(rope_of("wire stainless-steel 12.699 mm")));
    EXPECT_FALSE(made.applies_to(rope_of("wire stainless-steel 25.401 mm")));
}

TEST(RuleSizes, GoByTheNominalDiameter) {
    const Rule made = rule_for_sizes(FigureId::clips, 3, "6 mm", "6 mm");
    Rope rope = rope_of("12-strand HMPE 6 mm");
    rope.measured_diameter = Sourced<Length>{millimetres(6.4), {}};
    EXPECT_TRUE(made.applies_to(rope));
}

TEST(RuleWords, ConstructionAndFibreMustFit) {
    Rule made = rule("a", FigureId::tail, 72);
    made.constructions = Constructions(Construction::twelve_strand);
    made.fibres = Fibres(Fibre::hmpe);
    EXPECT_TRUE(made.applies_to(rope_of("12-strand HMPE 5 mm")));
    EXPECT_FALSE(made.applies_to(rope_of("12-strand polyester 5 mm")));
    EXPECT_FALSE(made.applies_to(rope_of("core-dependent HMPE 5 mm")));
}

TEST(RuleOrder, ChosenThenDefaultsThenAnyKind) {
    const Rope rope = rope_of("12-strand HMPE 5 mm");
    const Rule chosen = rule("chosen", FigureId::tail, 60);
    Rule first = rule("first", FigureId::tail, 72);
    first.is_default = true;
    Rule second = rule("second", FigureId::tail, 42);
    second.is_default = true;
    second.figures.emplace_back(FigureId::taper, Figure{.value = 14});
    const Rule named = rule("named", FigureId::exit, 100);
    Rule any = rule("any", FigureId::fid, 21);
    any.figures.emplace_back(FigureId::tail, Figure{.value = 1});
    const std::vector<const Rule*> of_kind{&chosen, &named, &first, &second};
    const std::vector<const Rule*> of_any{&any};

    const Rules without(rope, of_kind, of_any, nullptr);
    EXPECT_DOUBLE_EQ(without.find(FigureId::tail)->value, 72.0);
    EXPECT_DOUBLE_EQ(without.find(FigureId::taper)->value, 14.0);
    EXPECT_DOUBLE_EQ(without.need(FigureId::fid)->value, 21.0);
    EXPECT_EQ(without.find(FigureId::exit), nullptr);

    const Rules with(rope, of_kind, of_any, &chosen);
    EXPECT_DOUBLE_EQ(with.find(FigureId::tail)->value, 60.0);
    EXPECT_DOUBLE_EQ(with.find(FigureId::taper)->value, 14.0);
}

TEST(RuleMissing, NamesTheFigureAndTheRope) {
    const Rope rope = rope_of("3-strand manila 14 mm");
    const Rules rules(rope, {}, {}, nullptr);
    const auto figure = rules.need(FigureId::tail);
    ASSERT_FALSE(figure.has_value());
    EXPECT_EQ(figure.error().code, Code::figure_missing);
    EXPECT_THAT(figure.error().text, ::testing::HasSubstr("\"tail\""));
    EXPECT_THAT(figure.error().text, ::testing::HasSubstr("3-strand in manila"));
}

TEST(RuleMissing, NamesThePrintedSizesOnEitherSide) {
    const Rule small = rule_for_sizes(FigureId::clips, 2, "1/8 in", "1/8 in");
    const Rule middle = rule_for_sizes(FigureId::clips, 2, "3/16 in", "3/16 in");
    const Rule large = rule_for_sizes(FigureId::clips, 3, "1 1/2 in", "1 1/2 in");
    const std::vector<const Rule*> of_kind{&large, &small, &middle};
    const auto message = [&](const std::string& rope_text) {
        const Rope rope = rope_of(rope_text);
        const auto figure = Rules(rope, of_kind, {}, nullptr).need(FigureId::clips);
        EXPECT_FALSE(figure.has_value());
        EXPECT_EQ(figure.error().code, Code::size_not_printed);
        return figure.error().text;
    };
    EXPECT_THAT(message("wire stainless-steel 4 mm"),
                ::testing::HasSubstr("1/8 in on one side and 3/16 in on the other"));
    EXPECT_THAT(message("wire stainless-steel 6 mm"),
                ::testing::HasSubstr("3/16 in on one side and 1 1/2 in on the other"));
    EXPECT_THAT(message("wire stainless-steel 2 mm"),
                ::testing::HasSubstr("1/8 in at the smallest"));
    EXPECT_THAT(message("wire stainless-steel 40 mm"),
                ::testing::HasSubstr("1 1/2 in at the largest"));
    EXPECT_THAT(message("wire stainless-steel 4 mm"),
                ::testing::HasSubstr("wire stainless-steel 4 mm"));
}

TEST(RuleMissing, OtherSizesOfOtherSortsDoNotCount) {
    Rule wire_only = rule_for_sizes(FigureId::clips, 2, "1/8 in", "1/8 in");
    wire_only.constructions = Constructions(Construction::wire);
    const std::vector<const Rule*> of_kind{&wire_only};
    const Rope rope = rope_of("3-strand manila 14 mm");
    EXPECT_EQ(Rules(rope, of_kind, {}, nullptr).need(FigureId::clips).error().code,
              Code::figure_missing);
}

} // namespace
} // namespace libsplice::testing
