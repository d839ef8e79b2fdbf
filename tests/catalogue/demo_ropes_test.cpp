// The invented ropes of the demo, as the demo's pages show them.
#include "lookup.h"

#include <array>

namespace libsplice::testing {
namespace {

struct Row {
    std::string id;
    double diameter; ///< mm
    double core;     ///< mm, 0: none
    double breaking; ///< kN, 0: none
    double mass;     ///< g/m
    double stretch;  ///< % at 20 %, 0: none
    double price;    ///< a metre
};

void expect_row(const Row& row) {
    const auto rope = shipped().rope(row.id);
    ASSERT_TRUE(rope.has_value()) << row.id;
    const auto si = [](const auto& value) {
        return value ? value->value.si() : 0.0;
    };
    EXPECT_NEAR(rope->diameter.si(), row.diameter / 1000, 1e-12) << row.id;
    EXPECT_NEAR(si(rope->core_diameter), row.core / 1000, 1e-12) << row.id;
    EXPECT_NEAR(si(rope->breaking), row.breaking * 1000, 1e-6) << row.id;
    EXPECT_NEAR(si(rope->mass), row.mass / 1000, 1e-12) << row.id;
    const bool by_share = rope->stretch && !rope->stretch->by_force;
    EXPECT_NEAR(by_share ? rope->stretch->curve.at(0.2) : 0.0, row.stretch / 100, 1e-12) << row.id;
    EXPECT_DOUBLE_EQ(rope->price->value, row.price) << row.id;
    EXPECT_EQ(shipped().citations().at(rope->mass->source).status, Status::demo) << row.id;
    EXPECT_FALSE(rope->generic) << row.id;
}

TEST(DemoRopes, AreAsInvented) {
    for (const Row& row : {
             Row{"demo-db-poly-5", 5, 0, 5.2, 18, 2.8, 1.2},
             Row{"demo-db-poly-6", 6, 0, 8.0, 26, 2.8, 1.6},
             Row{"demo-db-poly-8", 8, 0, 14.0, 46, 2.8, 2.4},
             Row{"demo-db-poly-10", 10, 0, 21.5, 72, 2.8, 3.5},
             Row{"demo-b12-hmpe-2.5", 2.5, 0, 5.5, 4, 0.8, 1.5},
             Row{"demo-b12-hmpe-3", 3, 0, 8.5, 5.5, 0.8, 1.9},
             Row{"demo-b12-hmpe-4", 4, 0, 14.5, 9.5, 0.8, 2.8},
             Row{"demo-b12-hmpe-5", 5, 0, 22.0, 14.5, 0.8, 3.9},
             Row{"demo-cd-hmpe-5", 5, 3.5, 11.0, 17, 0.9, 3.2},
             Row{"demo-cd-hmpe-6", 6, 4.2, 15.5, 24, 0.9, 4.1},
             Row{"demo-cd-hmpe-8", 8, 5.6, 27.0, 42, 0.9, 6.5},
             Row{"demo-laid-poly-12", 12, 0, 24.0, 110, 3.0, 2.9},
             Row{"demo-laid-manila-14", 14, 0, 12.5, 140, 4.5, 2.2},
             Row{"demo-plait-nylon-14", 14, 0, 38.0, 125, 12.0, 4.8},
             Row{"demo-plait-poly-14", 14, 0, 33.0, 150, 4.2, 4.4},
             Row{"demo-sb-poly-3", 3, 0, 1.6, 7, 3.5, 0.5},
             Row{"demo-sb-poly-4", 4, 0, 2.7, 12, 3.5, 0.7},
             Row{"demo-shock-5", 5, 0, 0, 16, 0, 0.9},
             Row{"demo-shock-8", 8, 0, 0, 40, 0, 1.7},
             Row{"demo-wire-1-8-in", 3.175, 0, 7.6, 42, 0, 3.4},
             Row{"demo-wire-4", 4, 0, 9.8, 66, 0, 4.6},
         }) {
        expect_row(row);
    }
}

TEST(DemoRopes, ShockCordPullsAsInvented) {
    constexpr std::array strains{0.14, 0.30, 0.50, 0.75, 1.05};
    for (const auto& [id, step] :
         {std::pair{"demo-shock-5", 15.0}, std::pair{"demo-shock-8", 40.0}}) {
        const auto rope = shipped().rope(id);
        ASSERT_TRUE(rope && rope->stretch && rope->stretch->by_force) << id;
        const auto points = rope->stretch->curve.points();
        ASSERT_EQ(points.size(), strains.size()) << id;
        for (std::size_t i = 0; i < strains.size(); ++i) {
            EXPECT_DOUBLE_EQ(points[i].load, step * static_cast<double>(i + 1)) << id;
            EXPECT_NEAR(points[i].strain, strains[i], 1e-12) << id;
        }
    }
}

} // namespace
} // namespace libsplice::testing
