// How long a tail each published rule asks for, and what its take-up and settling come to.
#include "ends.h"

namespace libsplice::testing {
namespace {

/// On rope of 10 mm, so that 1 D is 1 cm. Lengths in D.
struct BuryCase {
    std::string_view fibre;
    std::string_view rule; ///< empty: what holds where none is asked for
    double tail;
    double taper;
    double exit;
    std::string_view source;
};

// As the documents print them; a taper of a third of the tail and an exit a third beyond the tail
// where they say nothing.
constexpr std::array bury_cases{
    BuryCase{"HMPE", "", 72, 24, 108, "practical-sailor-hmpe-splice"},
    BuryCase{"HMPE", "60-diameters", 60, 20, 80, "polman-modern-ropes"},
    BuryCase{"HMPE", "100-diameters", 100, 33.3, 133.3, "polman-modern-ropes"},
    BuryCase{"HMPE", "45-diameters", 45, 15, 60, "practical-sailor-hmpe-splice"},
    BuryCase{"HMPE", "three-fids", 63, 21, 84, "samson-12-strand-class-2"},
    BuryCase{"HMPE", "three-fids-lock-stitched", 63, 21, 84, "ner-splicing-guide"},
    BuryCase{"HMPE", "two-and-a-half-fids", 52.5, 17.5, 70, "ner-lock-stitch-older"},
    BuryCase{"polyester", "", 42, 14, 63, "ner-splicing-guide"},
    BuryCase{"nylon", "", 42, 14, 63, "ner-splicing-guide"},
    BuryCase{"polypropylene", "", 42, 14, 63, "ner-splicing-guide"},
    BuryCase{"polyester", "24-diameters", 24, 8, 32, "toss-riggers-apprentice"},
    BuryCase{"nylon", "three-fids", 63, 21, 84, "samson-12-strand-class-2"},
    BuryCase{"aramid", "", 63, 21, 84, "samson-12-strand-class-2"},
    BuryCase{"LCP", "", 63, 21, 84, "samson-12-strand-class-2"},
};

FieldList by_rule(std::string_view rule) {
    return rule.empty() ? FieldList{} : FieldList{{"rule", rule}};
}

std::string rope_in(std::string_view fibre) {
    return "12-strand " + std::string(fibre) + " 10 mm";
}

TEST(Bury, FollowsThePublishedRule) {
    for (const auto& bury : bury_cases) {
        const auto end = make_end("buried-eye", rope_in(bury.fibre), by_rule(bury.rule));
        const std::string which = rope_in(bury.fibre) + ' ' + std::string(bury.rule);
        EXPECT_NEAR(value_of(end, ValueName::tail_m), bury.tail * 10.0, near) << which;
        EXPECT_NEAR(value_of(end, ValueName::taper_m), bury.taper * 10.0, near) << which;
        EXPECT_NEAR(value_of(end, ValueName::exit_m), bury.exit * 10.0, near) << which;
        EXPECT_EQ(source_of(end, Item::tail), bury.source) << which;
    }
}

TEST(Bury, LockedEyeInHmpeIs72DiametersFromAnotherBook) {
    const auto end = make_end("locked-eye", "12-strand HMPE 10 mm");
    EXPECT_NEAR(value_of(end, ValueName::tail_m), 720.0, near);
    EXPECT_NEAR(value_of(end, ValueName::taper_m), 240.0, near);
    EXPECT_NEAR(value_of(end, ValueName::exit_m), 1080.0, near);
    EXPECT_EQ(source_of(end, Item::tail), "toss-riggers-apprentice");
}

/// In D: what 12 strands take up over a tail whose last third loses five pairs.
struct TakeUpCase {
    std::string_view fibre;
    std::string_view tail; ///< empty: the rule's
    double spliced;
    double spliced_spread;
    double settled;
    double settled_spread;
};

// 52 of 72 D lie in full section, then 4 D each with 10, 8, 6, 4 and 2 of 12 strands; other tails
// in proportion. HMPE: K = 0.25 as spliced, 0.135 once it was loaded; others 0.18 and 0.10.
// 1/root(1 - K s/12), from 12 strands down:
//   0.25:  1.1547005 1.1239030 1.0954451 1.0690450 1.0444659 1.0215078: 9.4618953 over 72 D
//   0.135: 1.0752067 1.0614898 1.0482848 1.0355607 1.0232890 1.0114435: 4.6310178
//   0.18:  1.1043153 1.0846523 1.0660036 1.0482848 1.0314212 1.0153462: 6.4072260, and 3.7375485
//          over 42 D
//   0.10:  1.0540926 1.0444659 1.0350983 1.0259784 1.0170953 1.0084390: 3.3371202, and 1.9466534
// The spreads: what is less with K less by 0.05, once loaded with K less by 0.04.
constexpr std::array take_up_cases{
    TakeUpCase{"HMPE", "", 9.4618953125, 2.220513602, 4.6310178305, 1.472960773},
    TakeUpCase{"HMPE", "90 D", 11.8273691407, 2.775642002, 5.7887722881, 1.841200967},
    TakeUpCase{"polyester", "", 3.7375485203, 1.146556534, 1.9466534372, 0.813559227},
    TakeUpCase{"nylon", "", 3.7375485203, 1.146556534, 1.9466534372, 0.813559227},
    TakeUpCase{"polyester", "24 D", 2.1357420116, 0.655175163, 1.1123733927, 0.464890987},
    TakeUpCase{"aramid", "", 5.6063227805, 1.719834802, 2.9199801558, 1.220338840}, // 63 D
};

FieldList with_tail(std::string_view tail) {
    return tail.empty() ? FieldList{} : FieldList{{"tail", tail}};
}

TEST(Bury, TakeUpGoesWithTheTailAndTheFibre) {
    for (const auto& one : take_up_cases) {
        const auto end = make_end("buried-eye", rope_in(one.fibre), with_tail(one.tail));
        const std::string which = rope_in(one.fibre) + ' ' + std::string(one.tail);
        EXPECT_NEAR(length_of(end, Item::take_up), one.spliced * 10.0, near) << which;
        EXPECT_NEAR(spread_of(end, Item::take_up), one.spliced_spread * 10.0, near) << which;
        EXPECT_NEAR(length_of(end, Item::settling), (one.settled - one.spliced) * 10.0, near)
            << which;
        EXPECT_NEAR(value_of(end, ValueName::take_up_m), one.spliced * 10.0, near) << which;
        EXPECT_NEAR(value_of(end, ValueName::take_up_settled_m), one.settled * 10.0, near) << which;
    }
}

TEST(Bury, NetTakeUpErrsAsOnceItWasLoaded) {
    for (const auto& one : take_up_cases) {
        const auto end = make_end("buried-eye", rope_in(one.fibre), with_tail(one.tail));
        const std::string which = rope_in(one.fibre) + ' ' + std::string(one.tail);
        // One constant: the rows err together, so their spreads add with their signs.
        EXPECT_EQ(find_row(end, Item::take_up)->group, Group::take_up) << which;
        EXPECT_EQ(find_row(end, Item::settling)->group, Group::take_up) << which;
        EXPECT_NEAR(spread_of(end, Item::take_up) + spread_of(end, Item::settling),
                    one.settled_spread * 10.0, near)
            << which;
    }
}

TEST(Bury, TakesUpMoreWithoutATaper) {
    // 72/root(1 - K) - 72 D: 11.1384388 with K = 0.25, 5.4148796 with 0.135.
    const auto blunt = make_end("buried-eye", "12-strand HMPE 10 mm", {{"taper", "0 mm"}});
    EXPECT_NEAR(value_of(blunt, ValueName::take_up_m), 111.384387633, near);
    EXPECT_NEAR(value_of(blunt, ValueName::take_up_settled_m), 54.148796021, near);
}

TEST(Bury, TaperAndExitFollowATailThatTheJobGives) {
    const auto end = make_end("buried-eye", "12-strand HMPE 10 mm", {{"tail", "90 D"}});
    EXPECT_NEAR(value_of(end, ValueName::taper_m), 300.0, near); // a third
    EXPECT_NEAR(value_of(end, ValueName::exit_m), 1350.0, near); // one and a half times
    EXPECT_EQ(find_row(end, Item::tail)->source, cited_job);
}

TEST(Bury, LoadedOnTheBenchHasOneRow) {
    const auto loaded = make_end("buried-eye", "12-strand HMPE 10 mm", {{"settled", "yes"}});
    EXPECT_EQ(find_row(loaded, Item::settling), nullptr);
    EXPECT_NEAR(length_of(loaded, Item::take_up), 46.310178305, near);
    EXPECT_NEAR(spread_of(loaded, Item::take_up), 14.72960773, near);
    // The piece comes out as long either way.
    EXPECT_EQ(loaded.total(), make_end("buried-eye", "12-strand HMPE 10 mm").total());
}

TEST(Bury, MarksAreMadeBeforeTheFirstLoad) {
    // Both are for the hand: 720 + 94.618953125 from the throat, loaded later or not.
    for (const std::string_view settled : {"yes", "no"}) {
        const auto end = make_end("buried-eye", "12-strand HMPE 10 mm", {{"settled", settled}});
        EXPECT_NEAR(mark_of(end, MarkName::bury_end) - mark_of(end, MarkName::far_throat),
                    814.618953125, near)
            << settled;
        EXPECT_NEAR(in_millimetres(end.bury_reach), 814.618953125, near) << settled;
    }
    // A fid that comes out where the tail ends.
    const auto end = make_end("buried-eye", "12-strand HMPE 10 mm", {{"exit", "815 mm"}});
    EXPECT_NEAR(mark_of(end, MarkName::exit) - mark_of(end, MarkName::far_throat), 815.0, near);
    EXPECT_EQ(refuse_end("buried-eye", "12-strand HMPE 10 mm", {{"exit", "814 mm"}}).field, "exit");
}

TEST(Bury, GeometryIsARuleToAskFor) {
    // K = 2 tan^2 15 = 0.1435935394: over the steps 4.960026 D of 72. 12 to 18 degrees are 3/root 3
    // either way: at 13.267949 degrees K = 0.1112027, which takes up 1.216575 D less.
    const auto end = make_end("buried-eye", "12-strand HMPE 10 mm", by_rule("geometry"));
    EXPECT_NEAR(length_of(end, Item::take_up), 49.6002638447, near);
    EXPECT_NEAR(spread_of(end, Item::take_up), 12.165753185, near);
    EXPECT_EQ(find_row(end, Item::settling), nullptr); // the angle says nothing of the first load
    EXPECT_NEAR(value_of(end, ValueName::take_up_settled_m), 49.6002638447, near);
    EXPECT_NEAR(length_of(end, Item::tail), 720.0, near);
    EXPECT_NEAR(find_value(end, ValueName::braid_constant).value_or(0.0), 0.1435935394, 5e-11);
    // A core's taper is even: 4.7978069 of its diameters.
    const auto core = make_end("stripped-eye", "core-dependent HMPE 6 mm",
                               {{"core", "4 mm"}, {"rule", "geometry"}});
    EXPECT_NEAR(length_of(core, Item::take_up), 4.0 * 4.7978069004, near);
}

TEST(Bury, ShortOfWhatIsAdvisedIsCautioned) {
    const auto cautioned = [](std::string_view fibre, std::string_view tail) {
        return cautions_about(make_end("buried-eye", rope_in(fibre), {{"tail", tail}}),
                              "shorter than is generally advised");
    };
    EXPECT_TRUE(cautioned("HMPE", "59 D"));
    EXPECT_FALSE(cautioned("HMPE", "60 D"));
    EXPECT_TRUE(cautioned("polyester", "41 D"));
    EXPECT_FALSE(cautioned("polyester", "42 D"));
    EXPECT_TRUE(cautioned("polypropylene", "41 D"));
    EXPECT_FALSE(cautioned("polypropylene", "42 D"));
    EXPECT_TRUE(cautioned("aramid", "62 D"));
    EXPECT_FALSE(cautioned("aramid", "63 D"));
}

TEST(Bury, UnderAPersonAsksFor72Diameters) {
    const auto cautioned = [](std::string_view tail) {
        const auto end = make_end("buried-eye", "12-strand HMPE 10 mm", {{"tail", tail}});
        return std::ranges::any_of(end.cautions, [](const Caution& caution) {
            return caution.weight == Caution::Weight::person_only;
        });
    };
    EXPECT_TRUE(cautioned("71 D"));
    EXPECT_FALSE(cautioned("72 D"));
}

} // namespace
} // namespace libsplice::testing
