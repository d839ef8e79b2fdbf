// Ropes as people write them: what is understood, and what is answered with the right word.
#include "folder.h"

#include <gmock/gmock.h>

#include <array>

namespace libsplice::testing {
namespace {

struct Spelling {
    std::string_view written;
    std::string_view meant; ///< in our words
};

// As price lists, price labels, magazines and shop counters write them.
constexpr std::array spellings{
    Spelling{"12-strand HMPE 6 mm", "12-strand HMPE 6 mm"},
    Spelling{"6 mm double braid polyester", "double-braid polyester 6 mm"},
    Spelling{"Double Braid Polyester 8mm", "double-braid polyester 8 mm"},
    Spelling{"8MM POLYESTER DOUBLE-BRAID", "double-braid polyester 8 mm"},
    Spelling{"braid on braid polyester 8 mm", "double-braid polyester 8 mm"},
    Spelling{"Braid-on-braid polyester, 8 mm", "double-braid polyester 8 mm"},
    Spelling{"three-strand nylon 8 mm", "3-strand nylon 8 mm"},
    Spelling{"8 mm three strand nylon rope", "3-strand nylon 8 mm"},
    Spelling{"3 strand polyester 1/2 in", "3-strand polyester 1/2 in"},
    Spelling{"polyester three-strand 1/2\"", "3-strand polyester 1/2 in"},
    Spelling{"laid polyester 10 mm", "3-strand polyester 10 mm"},
    Spelling{"laid-3 manila 14 mm", "3-strand manila 14 mm"},
    Spelling{"12 strand UHMWPE 5mm", "12-strand HMPE 5 mm"},
    Spelling{"HMPE 12-plait 3 mm", "12-strand HMPE 3 mm"},
    Spelling{"braid-12 HMPE 3 mm", "12-strand HMPE 3 mm"},
    Spelling{"single braid HMPE 4 mm", "12-strand HMPE 4 mm"},
    Spelling{"hollow braid polypropylene 6 mm", "12-strand polypropylene 6 mm"},
    Spelling{"plait-8 nylon 12 mm", "8-plait nylon 12 mm"},
    Spelling{"8-strand plaited polyester 14 mm", "8-plait polyester 14 mm"},
    Spelling{"square plait polyester 4 mm", "square-plait polyester 4 mm"},
    Spelling{"HMPE core, polyester cover, 8 mm", "core-dependent HMPE 8 mm"},
    Spelling{"polyester covered HMPE 6 mm", "core-dependent HMPE 6 mm"},
    Spelling{"core dependent HMPE 10 mm", "core-dependent HMPE 10 mm"},
    Spelling{"core-dependant HMPE 10 mm", "core-dependent HMPE 10 mm"},
    Spelling{"parallel core polyester 10 mm", "parallel-core polyester 10 mm"},
    Spelling{"16-plait polyester on laid core 8 mm", "laid-core polyester 8 mm"},
    Spelling{"16 plait polyester, braided core, 8 mm", "double-braid polyester 8 mm"},
    Spelling{"pre-stretched 3-strand polyester 6 mm", "3-strand polyester 6 mm pre-stretched"},
    Spelling{"3-strand polyester 6 mm prestretched", "3-strand polyester 6 mm pre-stretched"},
    Spelling{"bungee cord 6 mm", "shock-cord rubber 6 mm"},
    Spelling{"shockcord 5mm", "shock-cord rubber 5 mm"},
    Spelling{"7x19 stainless wire 4 mm", "wire stainless-steel 4 mm"},
    Spelling{"galvanized wire rope 1/8 in", "wire galvanised-steel 1/8 in"},
    Spelling{"wire stainless 3 mm", "wire stainless-steel 3 mm"},
    Spelling{"solid braid nylon 1/4 inch", "solid-braid nylon 1/4 in"},
    Spelling{"3-strand PP 10 mm", "3-strand polypropylene 10 mm"},
    Spelling{"double braid polyamide 12 mm", "double-braid nylon 12 mm"},
    Spelling{"12-strand HMPE 4 mm high grade", "12-strand HMPE 4 mm higher-grade"},
    Spelling{"3-strand polyester and polyolefin 12 mm", "3-strand polyester-polyolefin 12 mm"},
    Spelling{"1 1/2 in 3-strand nylon", "3-strand nylon 1 1/2 in"},
    Spelling{"double braid polyester rope 7/16 inches diameter", "double-braid polyester 7/16 in"},
};

TEST(RopeWords, AreUnderstoodAsTheTradeWritesThem) {
    for (const auto& [written, meant] : spellings) {
        const auto rope = shipped().rope(written);
        ASSERT_TRUE(rope) << written << ": " << rope.error().text;
        EXPECT_EQ(rope->id, meant) << written;
    }
}

TEST(RopeWords, OneRopeWrittenInTwoWaysIsOneRope) {
    EXPECT_EQ(shipped().rope("6 mm double braid polyester")->id,
              shipped().rope("Double-Braid polyester 6mm")->id);
}

struct Refusal {
    std::string_view written;
    std::string_view says; ///< the word that helps
    Code code;
};

constexpr std::array refusals{
    Refusal{"16-plait polyester 8 mm", "double-braid or laid-core", Code::rope_not_understood},
    Refusal{"8-plait polyester 4 mm", "square plait or a hollow braid", Code::rope_not_understood},
    Refusal{"braided polyester 8 mm", "double-braid, 12-strand or solid-braid",
            Code::rope_not_understood},
    Refusal{"double braid poly 8 mm", "polyester or polypropylene", Code::rope_not_understood},
    Refusal{"polyester core polyester cover 8 mm", "double-braid or laid-core",
            Code::rope_not_understood},
    Refusal{"double braid HMPE core polyester cover 8 mm", "core-dependent HMPE 8 mm",
            Code::rope_not_understood},
    Refusal{"Northern Star Racing 8 mm", "construction, fibre and diameter", Code::unknown_rope},
    Refusal{"kernmantle HMPE 6 mm", "core-dependent", Code::rope_not_understood},
    Refusal{"double-braid 8 mm", "the fibre is missing", Code::rope_not_understood},
    Refusal{"polyester 8 mm", "the construction is missing", Code::rope_not_understood},
    Refusal{"double-braid polyester", "the diameter is missing", Code::rope_not_understood},
    Refusal{"double-braid polyester 8", "give it its unit", Code::rope_not_understood},
    Refusal{"blue double-braid polyester 8 mm", "\"blue\"", Code::rope_not_understood},
    Refusal{"double-brad polyester 8 mm", "did you mean \"double-braid\"",
            Code::rope_not_understood},
    Refusal{"double-braid polyster 8 mm", "did you mean \"polyester\"", Code::rope_not_understood},
    Refusal{"3-strand 12-strand nylon 8 mm", "two constructions", Code::rope_not_understood},
    Refusal{"12-strand HMPE 0.4 mm", "0.5 mm", Code::rope_not_understood},
    Refusal{"12-strand HMPE 201 mm", "200 mm", Code::rope_not_understood},
};

TEST(RopeWords, AreAnsweredWithTheWordThatHelps) {
    for (const auto& [written, says, code] : refusals) {
        const auto rope = shipped().rope(written);
        ASSERT_FALSE(rope) << written << " is taken as " << rope->id;
        EXPECT_EQ(rope.error().code, code) << written << ": " << rope.error().text;
        EXPECT_THAT(rope.error().text, ::testing::HasSubstr(std::string(says))) << written;
    }
}

TEST(RopeWords, PreStretchedRopeIsSoldSo) {
    EXPECT_TRUE(shipped().rope("pre-stretched 3-strand polyester 6 mm")->prestretched);
    EXPECT_FALSE(shipped().rope("3-strand polyester 6 mm")->prestretched);
}

TEST(RopeWords, EveryAliasMeansOneThing) {
    const Aliases& aliases = shipped().aliases();
    for (const Alias& alias : aliases.all()) {
        for (const std::string& word : alias.words) {
            std::optional<Construction> in;
            for (std::size_t i = 0; i < construction_count; ++i) {
                const auto construction = static_cast<Construction>(i);
                if (!alias.constructions.empty() && alias.constructions.allows(construction)) {
                    in = construction;
                }
            }
            const auto meaning = aliases.find(alias.of, plain_words(word), in);
            ASSERT_TRUE(meaning) << word;
            EXPECT_EQ(meaning->name, alias.name) << word << " means something before it";
        }
    }
    EXPECT_GT(aliases.all().size(), 50U);
}

TEST(PlainWords, AreWithoutCapitalsHyphensAndMarks) {
    EXPECT_EQ(plain_words("Three-Strand, 8mm"), "three strand 8 mm");
    EXPECT_EQ(plain_words("1/2\" nylon"), "1/2 in nylon");
    EXPECT_EQ(plain_words("Lark's head"), "larks head");
    EXPECT_EQ(plain_words("1-1/2 in"), "1 1/2 in");
    EXPECT_EQ(plain_words("7x19"), "7 x 19");
    EXPECT_EQ(plain_words("  "), "");
}

} // namespace
} // namespace libsplice::testing
