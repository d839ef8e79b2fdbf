// The small figures: each stays in its room, and no two are alike.
#include "libsplice/sheet/drawing/motif.h"

#include <gtest/gtest.h>

#include <array>
#include <cmath>
#include <regex>
#include <set>

namespace libsplice::testing {
namespace {

constexpr std::array all_motifs{
    turn_motif, half_hitch_motif, crossing_motif, doubled_crossing_motif,
    tuck_motif, nip_motif,        stitch_motif,   seizing_motif,
    clip_motif, sleeve_motif,     crimp_motif,    melted_motif,
    core_motif, ball_motif,       pin_motif};
constexpr MotifRoom room{100.0, 112.0, 40.0, 8.0};

/// The points that a path moves or draws to, in pairs; arcs are relative and are left out.
std::vector<std::pair<double, double>> points_of(const std::string& path) {
    static const std::regex point("[MLC ](-?[0-9.]+) (-?[0-9.]+)");
    const std::string straight = std::regex_replace(path, std::regex("a[^aZ]*"), "");
    std::vector<std::pair<double, double>> points;
    for (std::sregex_iterator at(straight.begin(), straight.end(), point), end; at != end; ++at) {
        points.emplace_back(std::stod((*at)[1]), std::stod((*at)[2]));
    }
    return points;
}

TEST(Motif, DrawsSomethingNearItsRoom) {
    for (const Motif motif : all_motifs) {
        const auto points = points_of(motif(room));
        ASSERT_FALSE(points.empty());
        for (const auto& [x, y] : points) {
            // A curve's handles reach beyond what is drawn.
            EXPECT_NEAR(x, 106.0, 20.0) << motif(room);
            EXPECT_LE(std::abs(y - 40.0), 2.4 * 8.0) << motif(room);
        }
    }
}

TEST(Motif, NoTwoAreAlike) {
    std::set<std::string> paths;
    for (const Motif motif : all_motifs) {
        EXPECT_TRUE(paths.insert(motif(room)).second) << motif(room);
    }
}

TEST(Motif, MovesWithItsRoom) {
    const MotifRoom next{112.0, 124.0, 40.0, 8.0};
    for (const Motif motif : all_motifs) {
        const auto here = points_of(motif(room));
        const auto there = points_of(motif(next));
        ASSERT_EQ(here.size(), there.size());
        for (std::size_t i = 0; i < here.size(); ++i) {
            EXPECT_NEAR(there[i].first - here[i].first, 12.0, 0.11);
            EXPECT_NEAR(there[i].second, here[i].second, 1e-9);
        }
    }
}

} // namespace
} // namespace libsplice::testing
