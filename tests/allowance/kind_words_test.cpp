// Kinds of end as makers' sheets, handbooks and the trade call them.
#include "ends.h"

#include <gmock/gmock.h>

#include <array>

namespace libsplice::testing {
namespace {

struct Spelling {
    std::string_view written;
    Construction construction;
    std::string_view meant;
};

constexpr std::array spellings{
    Spelling{"eye splice", Construction::three_strand, "tucked-eye"},
    Spelling{"Eye Splice", Construction::double_braid, "cover-core-eye"},
    Spelling{"eye-splice", Construction::core_dependent, "core-eye"},
    Spelling{"lark's head", Construction::double_braid, "cow-hitch"},
    Spelling{"Larks Head", Construction::double_braid, "cow-hitch"},
    Spelling{"scaffold knot", Construction::double_braid, "barrel-noose"},
    Spelling{"figure 8", Construction::double_braid, "figure-eight"},
    Spelling{"figure of eight", Construction::double_braid, "figure-eight"},
    Spelling{"Figure-8", Construction::double_braid, "figure-eight"},
    Spelling{"whipping", Construction::double_braid, "whipped"},
    Spelling{"brummel", Construction::twelve_strand, "locked-eye"},
    Spelling{"locked brummel splice", Construction::twelve_strand, "locked-eye"},
    Spelling{"whoopie", Construction::twelve_strand, "adjustable-eye"},
    Spelling{"grommet", Construction::twelve_strand, "endless-loop"},
    Spelling{"double fisherman's", Construction::double_braid, "double-fisherman"},
    Spelling{"round turn and two half hitches", Construction::three_strand,
             "round-turn-two-half-hitches"},
    Spelling{"BOWLINE", Construction::double_braid, "bowline"},
    Spelling{"bulldog grips", Construction::wire, "clipped-eye"},
    Spelling{"hog ring", Construction::shock_cord, "crimped-end"},
    Spelling{"none", Construction::double_braid, "bare"},
    Spelling{"hot knife", Construction::double_braid, "heat-sealed"},
};

TEST(KindWords, AreUnderstoodAsTheTradeSaysThem) {
    for (const auto& [written, construction, meant] : spellings) {
        const auto kind = shipped_book().kind(written, construction);
        if (!kind) {
            ADD_FAILURE() << written << ": " << kind.error().text;
            continue;
        }
        EXPECT_EQ((*kind)->declaration.name, meant) << written;
    }
}

TEST(KindWords, ThatCouldMeanTwoThingsAreAnsweredWithBoth) {
    const auto eye = shipped_book().kind("eye splice", Construction::twelve_strand);
    ASSERT_FALSE(eye);
    EXPECT_EQ(eye.error().code, Code::unknown_kind);
    EXPECT_THAT(eye.error().text, ::testing::HasSubstr("buried-eye or locked-eye"));
    EXPECT_FALSE(shipped_book().kind("fisherman", Construction::double_braid));
    EXPECT_FALSE(shipped_book().kind("nonsense"));
}

TEST(KindWords, AllMeanKindsThatThereAre) {
    const Book& book = shipped_book();
    const auto exists = [&](std::string_view name) {
        return std::ranges::any_of(book.kinds(),
                                   [&](const Kind& kind) { return kind.declaration.name == name; });
    };
    for (const Alias& alias : book.catalogue().aliases().all()) {
        EXPECT_TRUE(alias.of != AliasOf::kind || exists(alias.name)) << alias.name;
    }
    for (const UnclearWords& unclear : book.catalogue().aliases().all_unclear()) {
        for (const std::string& name : unclear.means) {
            EXPECT_TRUE(unclear.of != AliasOf::kind || exists(name)) << name;
        }
    }
}

} // namespace
} // namespace libsplice::testing
