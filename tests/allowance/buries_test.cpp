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

TEST(Bury, TakeUpGoesWithTheTail) {
    // A third tapered: 4.7978069 / 72 = 0.0666362 of the tail.
    const auto take_up = [](std::string_view fibre, const FieldList& fields) {
        return length_of(make_end("buried-eye", rope_in(fibre), fields), Item::take_up);
    };
    EXPECT_NEAR(take_up("HMPE", {}), 47.978069, near);
    EXPECT_NEAR(take_up("polyester", {}), 27.98720692, near);                // 42 D
    EXPECT_NEAR(take_up("polyester", {{"tail", "24 D"}}), 15.9926897, near); // 24 D
    // Without a taper all of the tail has full section: 72 (1/0.9254223147 - 1) = 5.802 D.
    EXPECT_NEAR(take_up("HMPE", {{"taper", "0 mm"}}), 58.0227, 1e-3);
}

TEST(Bury, TaperAndExitFollowATailThatTheJobGives) {
    const auto end = make_end("buried-eye", "12-strand HMPE 10 mm", {{"tail", "90 D"}});
    EXPECT_NEAR(value_of(end, ValueName::taper_m), 300.0, near); // a third
    EXPECT_NEAR(value_of(end, ValueName::exit_m), 1350.0, near); // one and a half times
    EXPECT_NEAR(length_of(end, Item::settling), -18.0, near);    // 2 %
    EXPECT_EQ(find_row(end, Item::tail)->source, cited_job);
}

TEST(Bury, SettingIsOfHmpeAndOfTheJob) {
    const auto polyester = make_end("buried-eye", "12-strand polyester 10 mm");
    EXPECT_EQ(find_row(polyester, Item::settling), nullptr);
    EXPECT_EQ(value_of(polyester, ValueName::take_up_settled_m),
              value_of(polyester, ValueName::take_up_m));
    const auto loaded = make_end("buried-eye", "12-strand HMPE 10 mm", {{"settled", "yes"}});
    EXPECT_EQ(find_row(loaded, Item::settling), nullptr);
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
