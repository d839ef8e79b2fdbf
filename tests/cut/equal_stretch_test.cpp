// The size that stretches no more, from the tables.
#include "libsplice/cut/equal_stretch.h"

#include "tests/support/tables.h"

#include <gtest/gtest.h>

namespace libsplice::testing {
namespace {

const Tension load{Tension::Basis::force, 600.0};

Result<EqualStretch> ask(std::string_view rope, std::string_view against) {
    const Book& book = shipped_book();
    return size_for_equal_stretch(book, *book.catalogue().rope(rope), load, metres(8.0), against);
}

TEST(EqualStretch, OfCoveredHmpeInPolyester) {
    // 11 kN, 0.9 % at 20 %: 600 N are 5.4545 %, 0.245455 %, 19.6364 mm of 8 m.
    const auto found = ask("demo-cd-hmpe-5", "double-braid polyester");
    ASSERT_TRUE(found);
    EXPECT_NEAR(found->known.longer.si() * 1000.0, 19.63636364, 1e-6);
    // The nearest is 5 mm, 5.2 kN and 2.8 %: 11.5385 %, 1.615385 %, 6.5812 times as much.
    EXPECT_EQ(found->base.rope.id, "demo-db-poly-5");
    EXPECT_NEAR(found->softer, 6.581196581, 1e-8);
    // 5 mm x root of 6.5812.
    EXPECT_NEAR(found->size->si() * 1000.0, 12.82692147, 1e-6);
    // The largest of the demo is 10 mm: 31.2558 mm.
    EXPECT_FALSE(found->no_more);
    ASSERT_TRUE(found->one_size_up);
    EXPECT_EQ(found->sizes[*found->one_size_up].rope.id, "demo-db-poly-6");
    // 7.5 % of 8 kN, 1.05 %: 84 mm.
    EXPECT_NEAR(found->sizes[*found->one_size_up].longer.si() * 1000.0, 84.0, 1e-9);
}

TEST(EqualStretch, OfPolyesterInHmpe) {
    // 6 mm polyester: 84 mm. 12-strand of 2.5 mm, 5.5 kN, 0.8 %: 34.909 mm are no more.
    const auto found = ask("demo-db-poly-6", "demo-b12-hmpe-4");
    ASSERT_TRUE(found);
    EXPECT_EQ(found->base.rope.id, "demo-b12-hmpe-4");
    ASSERT_TRUE(found->no_more);
    EXPECT_EQ(found->sizes[*found->no_more].rope.id, "demo-b12-hmpe-2.5");
    // 4 mm, 14.5 kN: 13.2414 mm; 4 x root of (13.2414/84).
    EXPECT_NEAR(found->size->si() * 1000.0, 1.588133334, 1e-7);
}

TEST(EqualStretch, WhatIsNotKnownIsRefused) {
    EXPECT_EQ(ask("demo-db-poly-6", "soft string").error().code, Code::rope_not_understood);
    EXPECT_EQ(ask("demo-db-poly-6", "solid-braid polypropylene").error().code,
              Code::strength_missing);
    EXPECT_EQ(ask("8-plait polypropylene 9 mm", "double-braid polyester").error().code,
              Code::stretch_missing);
    EXPECT_EQ(ask("double-braid polyester 20 mm", "double-braid polyester").error().code,
              Code::strength_missing);
}

} // namespace
} // namespace libsplice::testing
