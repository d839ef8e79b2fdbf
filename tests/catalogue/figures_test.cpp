// Figures as printed: fractions, units, and spreads from limits.
#include "folder.h"

#include <cmath>

namespace libsplice::testing {
namespace {

/// The figure `id` of a rule whose only figure is `text`.
Figure figure_of(FigureId id, const std::string& text) {
    const Folder folder;
    folder.write("constructions.toml",
                 rule_record("a", std::string(name_of(id)) + " = { " + text + ", " + cited + " }"));
    const Catalogue catalogue = load({folder.path()});
    const Figure* figure = catalogue.rules()[0].find(id);
    return figure == nullptr ? Figure{} : *figure;
}

TEST(Figures, InchesReadAsPrinted) {
    const auto value = [](const std::string& text) {
        return figure_of(FigureId::turn_back, "value = \"" + text + "\", unit = \"in\"").value;
    };
    EXPECT_DOUBLE_EQ(value("11 1/2"), 11.5);
    EXPECT_DOUBLE_EQ(value("3/8"), 0.375);
    EXPECT_DOUBLE_EQ(value("12"), 12.0);
    EXPECT_DOUBLE_EQ(value(" 5 1/4 "), 5.25);
}

TEST(Figures, LengthsScaleWithTheirUnit) {
    const Length rope = millimetres(6);
    const auto length = [&](const std::string& text) {
        return figure_of(FigureId::tail, text).length(rope).si();
    };
    EXPECT_DOUBLE_EQ(length("value = 72, unit = \"D\""), 0.432);
    EXPECT_DOUBLE_EQ(length("value = 50, unit = \"mm\""), 0.05);
    EXPECT_DOUBLE_EQ(length("value = 5, unit = \"cm\""), 0.05);
    EXPECT_DOUBLE_EQ(length("value = 2, unit = \"m\""), 2.0);
    EXPECT_DOUBLE_EQ(length("value = 6, unit = \"in\""), 0.1524);
    EXPECT_DOUBLE_EQ(length("value = 1, unit = \"ft\""), 0.3048);
}

TEST(Figures, LimitsBecomeAStandardDeviation) {
    // Half width over the root of 3: 2 / 1.7320508 = 1.1547005.
    const Figure range = figure_of(FigureId::first_stretch,
                                   "low = 4, high = 8, unit = \"%\", spread = \"printed range\"");
    EXPECT_DOUBLE_EQ(range.value, 6.0);
    EXPECT_NEAR(range.sd, 1.1547005, 1e-7);
    EXPECT_EQ(range.origin, SpreadOrigin::printed_range);
    EXPECT_NEAR(range.number_spread(), 0.011547005, 1e-9);
    EXPECT_DOUBLE_EQ(range.lowest_number(), 0.04);
    EXPECT_DOUBLE_EQ(range.highest_number(), 0.08);

    const Figure either_way =
        figure_of(FigureId::beyond_loop,
                  "value = 15, plus_minus = 4, unit = \"D\", spread = \"stated guess\"");
    EXPECT_DOUBLE_EQ(either_way.value, 15.0);
    EXPECT_NEAR(either_way.sd, 2.3094011, 1e-7);
    EXPECT_NEAR(either_way.low, 11.0, 1e-12);
    EXPECT_NEAR(either_way.high, 19.0, 1e-12);
    EXPECT_EQ(either_way.origin, SpreadOrigin::stated_guess);

    const Figure lopsided =
        figure_of(FigureId::first_stretch,
                  "low = 4, high = 8, value = 5, unit = \"%\", spread = \"measured\"");
    EXPECT_DOUBLE_EQ(lopsided.value, 5.0);
    EXPECT_NEAR(lopsided.sd, 1.1547005, 1e-7);
    EXPECT_EQ(lopsided.origin, SpreadOrigin::measured);
}

TEST(Figures, AFigureWithoutSpreadSaysSo) {
    const Figure figure = figure_of(FigureId::tucks, "value = 5");
    EXPECT_DOUBLE_EQ(figure.sd, 0.0);
    EXPECT_EQ(figure.origin, SpreadOrigin::none);
}

TEST(Figures, ARecordsCitationHoldsForItsFigures) {
    const Folder folder;
    folder.write("constructions.toml",
                 rule_record("a", "source = \"book\"\nlocator = \"p. 1\"\nstatus = \"printed\"\n"
                                  "tail = { value = 1, unit = \"D\" }\n"
                                  "taper = { value = 2, unit = \"D\", source = \"book\", locator = "
                                  "\"p. 2\", status = \"derived\" }"));
    const Catalogue catalogue = load({folder.path()});
    const Rule& rule = catalogue.rules()[0];
    EXPECT_EQ(to_text(catalogue.citations().at(rule.find(FigureId::tail)->source)), "book p. 1");
    EXPECT_EQ(to_text(catalogue.citations().at(rule.find(FigureId::taper)->source)),
              "derived from book p. 2");
}

TEST(Figures, AnAbsurdOneIsRefused) {
    for (const std::string figure :
         {R"(tail = { value = 20000, unit = "D")", R"(tail = { value = 2000, unit = "m")",
          R"(retained = { value = 120, unit = "%")", R"(retained = { value = 1.2)",
          R"(core_share = { low = 0.6, high = 1.4, spread = "stated guess")",
          R"(tucks = { value = 1e9)", R"(throat_limit = { value = 270, unit = "deg")"}) {
        const Folder folder;
        folder.write("constructions.toml", rule_record("a", figure + ", " + cited + " }"));
        const auto faults = faults_of({folder.path()});
        ASSERT_EQ(faults.size(), 1U) << figure;
        EXPECT_EQ(faults[0].code, Code::table_value_wrong) << figure;
        EXPECT_NE(faults[0].text.find("out of range"), std::string::npos) << faults[0].text;
    }
}

TEST(Figures, EveryNameReadsBack) {
    EXPECT_EQ(read_figure_name("tail"), FigureId::tail);
    EXPECT_EQ(read_figure_name("bend_10"), FigureId::bend_10);
    EXPECT_EQ(read_figure_name("slip"), FigureId::slip);
    EXPECT_FALSE(read_figure_name("tial").has_value());
}

} // namespace
} // namespace libsplice::testing
