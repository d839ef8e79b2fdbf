// Ropes that are tried on a line, against figures that were worked out by hand.
#include "libsplice/choose/chooser.h"
#include "libsplice/cut/ropes/listed_rope.h"

#include "asked.h"

#include <algorithm>
#include <memory>

namespace libsplice::testing {
namespace {

/// The shipped tables with a list of invented ropes, and the choice for one line.
class Shop {
  public:
    explicit Shop(const std::string& list) {
        FaultSink faults;
        auto catalogue = Catalogue::load(std::array{tables_folder()}, faults);
        Input input = Input::of_text(list, "list.csv");
        EXPECT_TRUE(list.empty() || add_rope_list(input, *catalogue, faults));
        for (const Fault& fault : faults.kept()) {
            ADD_FAILURE() << to_text(fault);
        }
        book_ = std::make_unique<Book>(*Book::open(*std::move(catalogue)));
        candidates_ = std::make_unique<Candidates>(*book_, std::span<const StockedRope>());
    }

    LineChoice choose(const std::vector<NamedCell>& cells,
                      Preference preference = Preference::cost) {
        chooser_ = std::make_unique<Chooser>(*book_, shipped_places(), *candidates_, CutSettings(),
                                             preference);
        LineChoice choice;
        FaultSink faults;
        const auto read =
            read_line_of_cells(cells, book_->field_names(), faults, [&](const JobRow& row) {
                choice = chooser_->choose(row, faults);
                cut_ = cutter().cut(row, faults).cut;
                return true;
            });
        EXPECT_TRUE(read);
        return choice;
    }

    /// What the line itself is cut to.
    [[nodiscard]] Nanometres cut() const { return cut_; }
    [[nodiscard]] const Candidates& candidates() const { return *candidates_; }

  private:
    Cutter& cutter() {
        cutter_ = std::make_unique<Cutter>(*book_, CutSettings());
        return *cutter_;
    }

    std::unique_ptr<Book> book_;
    std::unique_ptr<Candidates> candidates_;
    std::unique_ptr<Chooser> chooser_;
    std::unique_ptr<Cutter> cutter_;
    Nanometres cut_ = 0;
};

Shop& shipped_shop() {
    static Shop shop("");
    return shop;
}

const TriedRope* find(const LineChoice& choice, ShownAs shown_as) {
    const auto found = std::ranges::find(choice.ropes, shown_as, &TriedRope::shown_as);
    return found == choice.ropes.end() ? nullptr : &*found;
}

/// The line's own rope against its needs.
Verdict of_named(const std::vector<NamedCell>& cells) {
    const LineChoice choice = shipped_shop().choose(cells);
    const TriedRope* named = find(choice, ShownAs::named);
    EXPECT_NE(named, nullptr);
    return named == nullptr ? Verdict() : named->verdict;
}

std::vector<NamedCell> line_of(const char* rope, const std::vector<NamedCell>& more) {
    std::vector<NamedCell> cells{{"name", "line"}, {"rope", rope}, {"length", "10 m"}};
    cells.insert(cells.end(), more.begin(), more.end());
    return cells;
}

TEST(Chooser, StrengthIsHeldAgainstAFifthOfIt) {
    // Polyester double braid of 8 mm: 0.20 × 8² = 12.8 kN, a fifth of it 2.56 kN.
    const char* rope = "double-braid polyester 8 mm";
    const Verdict holds = of_named(line_of(rope, {{"load", "2.55 kN"}}));
    EXPECT_FALSE(holds.fails) << holds.fails->text;
    ASSERT_TRUE(holds.factor);
    EXPECT_NEAR(*holds.factor, 12.8 / 2.55, 1e-9);
    const Verdict fails = of_named(line_of(rope, {{"load", "2.6 kN"}}));
    ASSERT_TRUE(fails.fails);
    EXPECT_EQ(fails.fails->need, "load");
    EXPECT_NE(fails.fails->text.find("13000 N"), std::string::npos) << fails.fails->text;
    EXPECT_NE(fails.fails->text.find("200 N"), std::string::npos) << fails.fails->text;
}

TEST(Chooser, EndsAreTakenOff) {
    // A bowline takes some of it: what fits without one is too much with one.
    const char* rope = "double-braid polyester 8 mm";
    const Verdict knotted = of_named(
        line_of(rope, {{"load", "2.5 kN"}, {"end_a", "bowline"}, {"end_a.loop", "80 mm"}}));
    ASSERT_TRUE(knotted.fails);
    EXPECT_EQ(knotted.fails->need, "load");
    EXPECT_LT(*knotted.factor, 12.8 / 2.5);
}

TEST(Chooser, GiveIsFromSetToLoad) {
    // 2 % at 20 %: 1 % at 1 kN of 10 kN, 0.2 % at 200 N. 10 m × (1.010 / 1.002 − 1) = 79.8 mm.
    const std::vector<NamedCell> reel{{"rope_breaking", "10 kN"}, {"rope_stretch", "2 % at 20 %"},
                                      {"load", "1 kN"},           {"set_tension", "200 N"},
                                      {"prestretched", "yes"},    {"tension", "200 N"}};
    auto cells = line_of("double-braid polyester 8 mm", reel);
    cells.push_back({"most_give", "85 mm"});
    const Verdict little = of_named(cells);
    ASSERT_TRUE(little.give);
    EXPECT_NEAR(little.give->si(), 0.0798, 0.0003);
    EXPECT_FALSE(little.fails) << little.fails->text;
    cells.back().text = "70 mm";
    const Verdict much = of_named(cells);
    ASSERT_TRUE(much.fails);
    EXPECT_EQ(much.fails->need, "most_give");
    EXPECT_NE(much.fails->text.find("10 mm"), std::string::npos) << much.fails->text;
}

TEST(Chooser, EachNeedIsLookedAt) {
    struct Row {
        const char* rope;
        std::vector<NamedCell> needs;
        const char* fails; ///< empty: none
    };
    const char* polyester = "double-braid polyester 8 mm";
    const char* hmpe = "12-strand HMPE 5 mm";
    for (const Row& row : {
             Row{polyester, {{"sheave", "40 mm"}}, ""}, // five diameters
             Row{polyester, {{"sheave", "39 mm"}}, "sheave"},
             Row{polyester, {{"held_range", "4-8 mm"}}, ""},
             Row{polyester, {{"held_range", "4-7 mm"}}, "held_range"},
             Row{polyester, {{"held_range", "9-12 mm"}}, "held_range"},
             Row{polyester, {{"hand", "all-day"}}, ""},
             Row{"double-braid polyester 6 mm", {{"hand", "all-day"}}, "hand"},
             Row{polyester, {{"held_by", "cleat"}}, ""},
             Row{hmpe, {{"held_by", "cleat"}}, "held_by"},
             Row{hmpe, {{"held_by", "splice"}}, ""},
             Row{hmpe, {{"runs", "runs-hot"}}, "runs"},
             Row{polyester, {{"runs", "runs-hot"}}, ""},
             Row{polyester, {{"floats", "yes"}}, "floats"},
             Row{"3-strand polypropylene 8 mm", {{"floats", "yes"}}, ""},
             Row{polyester, {{"price_limit", "2"}}, "price_limit"},
             Row{polyester, {{"price_limit", "2"}, {"rope_price", "1.90"}}, ""},
             // 12-strand HMPE of 5 mm: 0.50 × 4.7625² = 11.34 kN; a quarter is 2.84 kN, a fifth
             // less.
             Row{hmpe, {{"load", "2.2 kN"}, {"standing", "season"}}, ""},
             Row{hmpe, {{"load", "100 N"}, {"carries_person", "yes"}}, "carries_person"},
             Row{"solid-braid polyester 8 mm", {{"load", "100 N"}}, "load"},
         }) {
        const Verdict verdict = of_named(line_of(row.rope, row.needs));
        EXPECT_EQ(verdict.fails ? verdict.fails->need : "", row.fails)
            << row.rope << ' ' << row.needs.front().heading << ": "
            << (verdict.fails ? verdict.fails->text : "");
    }
}

TEST(Chooser, RopeToBuyIsWhatTheLedgerSays) {
    auto cells = line_of("double-braid polyester 8 mm", {{"quantity", "3"},
                                                         {"end_a", "bowline"},
                                                         {"end_a.loop", "80 mm"},
                                                         {"rope_price", "2.50"},
                                                         {"rope_mass", "50 g/m"}});
    const LineChoice choice = shipped_shop().choose(cells);
    const Verdict& verdict = find(choice, ShownAs::named)->verdict;
    ASSERT_TRUE(verdict.buy && verdict.price && verdict.mass_kg);
    EXPECT_EQ(*verdict.buy, 3 * shipped_shop().cut());
    const double metres_to_buy = 3.0 * static_cast<double>(shipped_shop().cut()) / 1e9;
    EXPECT_NEAR(*verdict.price, 2.5 * metres_to_buy, 1e-9);
    EXPECT_NEAR(*verdict.mass_kg, 0.05 * metres_to_buy, 1e-9);
}

TEST(Chooser, NeighboursInSizeAreShown) {
    const LineChoice choice =
        shipped_shop().choose(line_of("double-braid polyester 8 mm", {{"load", "500 N"}}));
    ASSERT_NE(find(choice, ShownAs::size_down), nullptr);
    ASSERT_NE(find(choice, ShownAs::size_up), nullptr);
    EXPECT_EQ(find(choice, ShownAs::size_down)->rope->id, "double-braid polyester 6 mm");
    EXPECT_EQ(find(choice, ShownAs::size_up)->rope->id, "double-braid polyester 10 mm");
    EXPECT_EQ(find(choice, ShownAs::polyester_up), nullptr);
    const LineChoice high =
        shipped_shop().choose(line_of("core-dependent HMPE 8 mm", {{"load", "500 N"}}));
    ASSERT_NE(find(high, ShownAs::polyester_up), nullptr);
    EXPECT_EQ(find(high, ShownAs::polyester_up)->rope->id, "double-braid polyester 10 mm");
    std::vector<std::string> ids;
    std::ranges::transform(high.ropes, std::back_inserter(ids),
                           [](const TriedRope& rope) { return rope.rope->id; });
    std::ranges::sort(ids);
    EXPECT_EQ(std::ranges::adjacent_find(ids), ids.end()) << "each rope once";
}

const std::string invented_list = "id,construction,fibre,diameter,breaking,stretch,mass,price\n"
                                  "cheap,double-braid,polyester,8 mm,11 kN,3 % at 20 %,50 g/m,1\n"
                                  "stiff,core-dependent,HMPE,8 mm,30 kN,0.7 % at 20 %,45 g/m,6\n"
                                  "light,core-dependent,HMPE,6 mm,20 kN,0.8 % at 20 %,20 g/m,4\n"
                                  "weak,double-braid,polyester,3 mm,1.5 kN,3 % at 20 %,7 g/m,0.3\n"
                                  "thick,double-braid,polyester,12 mm,30 kN,3 % at 20 %,99 g/m,3\n";

TEST(Chooser, WhatIsPreferredComesFirst) {
    Shop shop(invented_list);
    // A fifth of 1.5 kN is 300 N, so "weak" is out.
    const std::vector<NamedCell> cells{
        {"name", "line"}, {"length", "10 m"}, {"load", "400 N"}, {"prestretched", "yes"}};
    const LineChoice cheap = shop.choose(cells, Preference::cost);
    ASSERT_TRUE(cheap.chosen);
    EXPECT_EQ(cheap.ropes[*cheap.chosen].rope->id, "cheap");
    EXPECT_EQ(cheap.ropes.size(), best_shown);
    EXPECT_EQ(find(cheap, ShownAs::named), nullptr);
    const LineChoice firm = shop.choose(cells, Preference::stretch);
    ASSERT_TRUE(firm.chosen);
    // "stiff" gives 0.7 % × (400 N / 30 kN) / 20 % of 10 m, 4.7 mm: what is chosen gives no more.
    EXPECT_LE(firm.ropes[*firm.chosen].verdict.give->si(), 0.0047);
    const LineChoice thick = shop.choose(cells, Preference::hand);
    ASSERT_TRUE(thick.chosen);
    for (const TriedRope& rope : thick.ropes) {
        EXPECT_FALSE(rope.rope->id.starts_with("demo")) << "nobody can buy " << rope.rope->id;
    }
    EXPECT_GE(thick.ropes[*thick.chosen].rope->diameter.si(), 0.012);
}

TEST(Chooser, WhatFailsIsNeverChosen) {
    Shop shop(invented_list);
    const LineChoice choice = shop.choose({{"name", "line"},
                                           {"length", "10 m"},
                                           {"load", "400 N"},
                                           {"price_limit", "5"},
                                           {"floats", "no"},
                                           {"most_give", "15 mm"},
                                           {"prestretched", "yes"}});
    // 10 m at 400 N: "light" gives 0.8 % × 2 % / 20 % = 8 mm and costs 4; "stiff" costs 6;
    // polyester of 11 kN gives 55 mm, that of 30 kN 20 mm.
    ASSERT_TRUE(choice.chosen);
    EXPECT_EQ(choice.ropes[*choice.chosen].rope->id, "light");
    for (const TriedRope& rope : choice.ropes) {
        EXPECT_TRUE(!rope.verdict.fails || rope.rope->id != "light");
    }
    const LineChoice none = shop.choose({{"name", "line"}, {"length", "10 m"}, {"load", "40 kN"}});
    EXPECT_FALSE(none.chosen);
}

TEST(Chooser, ALineThatCannotBeReadHasAFault) {
    const LineChoice choice =
        shipped_shop().choose(line_of("double-braid polyester 8 mm", {{"hand", "often"}}));
    ASSERT_TRUE(choice.fault);
    EXPECT_EQ(choice.fault->field, "hand");
    EXPECT_TRUE(choice.ropes.empty());
    EXPECT_TRUE(shipped_shop().choose(line_of("no such rope", {})).fault);
}

TEST(Chooser, AHybridIsShownWhereACleatHoldsTheLine) {
    // Cover has to lie 300 to 500 mm beyond the cleat: 7.8 m less 0.4 m are bare.
    auto cells = line_of("core-dependent HMPE 6 mm", {{"load", "500 N"},
                                                      {"held_by", "cleat"},
                                                      {"cleat", "7.8 m"},
                                                      {"end_a", "core-eye"},
                                                      {"end_a.eye", "60 mm"},
                                                      {"end_a.pin", "8 mm"}});
    cells.at(2).text = "15 m";
    const LineChoice choice = shipped_shop().choose(cells);
    const TriedRope* hybrid = find(choice, ShownAs::hybrid);
    ASSERT_NE(hybrid, nullptr);
    EXPECT_EQ(hybrid->made, "end_a = stripped-eye, strip = 7400 mm");
    EXPECT_EQ(hybrid->rope->construction, Construction::core_dependent);
    EXPECT_TRUE(hybrid->verdict.buy);
    ASSERT_TRUE(choice.chosen);
    EXPECT_NE(choice.ropes.at(*choice.chosen).shown_as, ShownAs::hybrid)
        << "the job's line is not made so";
    cells.at(4).text = "splice";
    EXPECT_EQ(find(shipped_shop().choose(cells), ShownAs::hybrid), nullptr);
}

TEST(Chooser, WithoutAPriceTheUsualFibreComesFirst) {
    const auto chosen = [](const std::vector<NamedCell>& more) {
        std::vector<NamedCell> cells{{"name", "line"}, {"length", "10 m"}, {"load", "500 N"}};
        cells.insert(cells.end(), more.begin(), more.end());
        const LineChoice choice = shipped_shop().choose(cells);
        return choice.chosen ? choice.ropes.at(*choice.chosen).rope->fibre : Fibre::manila;
    };
    EXPECT_EQ(chosen({}), Fibre::polyester);
    EXPECT_EQ(chosen({{"place", "dock line"}}), Fibre::nylon);
    EXPECT_EQ(chosen({{"place", "tow line"}}), Fibre::polypropylene);
    EXPECT_EQ(chosen({{"place", "cascade"}}), Fibre::hmpe);
}

TEST(Chooser, AnEndThatARopeCannotHaveIsCounted) {
    const LineChoice choice = shipped_shop().choose({{"name", "strop"},
                                                     {"length", "2 m"},
                                                     {"end_a", "ferrule-eye"},
                                                     {"end_a.eye", "40 mm"},
                                                     {"end_a.pin", "16 mm"}});
    ASSERT_FALSE(choice.ropes.empty());
    for (const TriedRope& rope : choice.ropes) {
        EXPECT_EQ(rope.rope->construction, Construction::wire) << rope.rope->id;
    }
    const auto out = std::ranges::find(choice.out, "ends", &RopesOut::need);
    ASSERT_NE(out, choice.out.end());
    EXPECT_GT(out->ropes, 20U);
}

TEST(Chooser, NoGenericStrengthIsOfSolidBraidOrShockCord) {
    const Candidates& candidates = shipped_shop().candidates();
    for (std::size_t i = 0; i < candidates.size(); ++i) {
        const Rope& rope = *candidates.at(i).rope;
        if (rope.construction == Construction::solid_braid ||
            rope.construction == Construction::shock_cord) {
            EXPECT_FALSE(rope.generic_breaking) << rope.id;
        }
    }
}

} // namespace
} // namespace libsplice::testing
