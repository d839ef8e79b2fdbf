// Breaking strengths against print.
#include "lookup.h"

#include <array>

namespace libsplice::testing {
namespace {

double breaking(const std::string& description) {
    const auto rope = shipped().rope(description);
    if (!rope || !rope->breaking) {
        ADD_FAILURE() << "no strength for " << description;
        return 0.0;
    }
    return rope->breaking->value.si();
}

TEST(PrintedStrength, LaidRopes) {
    struct Row {
        std::string size;
        double manila, nylon, polyester; ///< kN; the row printed as 12 mm is 1/2 in rope
    };
    for (const auto& row : {
             Row{"6 mm", 2.4, 6.61, 5.34},
             Row{"8 mm", 4.0, 10.2, 8.3},
             Row{"10 mm", 5.4, 14.4, 12.0},
             Row{"1/2 in", 10.6, 25.2, 19.6},
             Row{"14 mm", 13.8, 32.0, 23.1},
             Row{"16 mm", 17.6, 39.6, 27.1},
             Row{"18 mm", 21.6, 56.8, 37.4},
             Row{"24 mm", 36.0, 98.9, 58.6},
         }) {
        EXPECT_NEAR(breaking("3-strand manila " + row.size), row.manila * 1000, 1e-6) << row.size;
        EXPECT_NEAR(breaking("3-strand nylon " + row.size), row.nylon * 1000, 1e-6) << row.size;
        EXPECT_NEAR(breaking("3-strand polyester-polyolefin " + row.size), row.polyester * 1000,
                    1e-6)
            << row.size;
    }
    EXPECT_NEAR(breaking("3-strand manila 5 mm"), 1800, 1e-6);
    EXPECT_NEAR(breaking("3-strand nylon 5 mm"), 3910, 1e-6);
    EXPECT_FALSE(shipped().rope("3-strand polyester-polyolefin 5 mm")->breaking.has_value());
    EXPECT_FALSE(shipped().rope("3-strand manila 12 mm")->breaking.has_value());
}

TEST(PrintedStrength, SmallWire) {
    struct Row {
        std::string size;
        double carbon, stainless; ///< lbf, AC 43.13-1B, Table 7-3
    };
    constexpr double pound = 4.4482216152605;
    for (const auto& row :
         {Row{"1/16 in", 480, 480}, Row{"3/32 in", 920, 920}, Row{"1/8 in", 2000, 1760},
          Row{"5/32 in", 2800, 2400}, Row{"3/16 in", 4200, 3700}, Row{"7/32 in", 5600, 5000},
          Row{"1/4 in", 7000, 6400}}) {
        EXPECT_NEAR(breaking("wire galvanised-steel " + row.size), row.carbon * pound, 1e-6)
            << row.size;
        EXPECT_NEAR(breaking("wire stainless-steel " + row.size), row.stainless * pound, 1e-6)
            << row.size;
    }
}

TEST(PrintedStrength, InventedRopesLendNothingToDescriptions) {
    EXPECT_NEAR(breaking("double-braid polyester 6 mm"), 0.20 * 36.0 * 1000.0, 1e-6);
    // 5 mm may be 3/16 in: 0.50 x 4.7625 x 4.7625.
    EXPECT_NEAR(breaking("12-strand HMPE 5 mm"), 11340.7, 0.1);
}

TEST(PrintedStrength, NothingIsKnownOutsideTheSizesRead) {
    for (const char* rope :
         {"double-braid polyester 4 mm", "double-braid polyester 18 mm", "12-strand HMPE 1.5 mm",
          "12-strand HMPE 18 mm", "12-strand polyester 6 mm", "core-dependent HMPE 5 mm",
          "3-strand polypropylene 20 mm", "laid-core polyester 12 mm", "8-plait polyester 18 mm",
          "core-dependent HMPE 8 mm lower-grade", "12-strand HMPE 8 mm higher-grade"}) {
        EXPECT_FALSE(shipped().rope(rope)->breaking) << rope;
        EXPECT_FALSE(shipped().rope(rope)->mass) << rope;
    }
}

// No table was read of either, at any size.
TEST(PrintedStrength, SolidBraidAndShockCordStayWithoutOne) {
    for (const char* sort : {"solid-braid nylon", "solid-braid polyester", "shock-cord rubber",
                             "12-strand LCP", "parallel-core polyester", "double-braid HMPE"}) {
        for (const char* size : {"3 mm", "6 mm", "8 mm", "10 mm", "12 mm"}) {
            const auto rope = shipped().rope(std::string(sort) + ' ' + size);
            ASSERT_TRUE(rope) << sort;
            EXPECT_FALSE(rope->breaking) << sort << ' ' << size;
        }
    }
}

TEST(PrintedStrength, AGenericOneSaysThatItIsOne) {
    const auto rope = shipped().rope("12-strand HMPE 4 mm");
    ASSERT_TRUE(rope && rope->breaking);
    EXPECT_TRUE(rope->generic_breaking);
    const Citation& source = shipped().citations().at(rope->breaking->source);
    EXPECT_EQ(source.status, Status::derived);
    EXPECT_NE(source.locator.find("cautious generic"), std::string::npos);
    EXPECT_FALSE(shipped().rope("3-strand manila 10 mm")->generic_breaking);
}

} // namespace
} // namespace libsplice::testing
