// Lines whose length comes from the way they run. Expected lengths are worked out by hand from the
// formula that stands beside each.
#include "jobs.h"

#include <gtest/gtest.h>

#include <cmath>
#include <filesystem>
#include <fstream>
#include <numbers>

namespace libsplice::testing {

namespace {

constexpr double pi = std::numbers::pi;

/// A prestretched line of 5 mm rope, with nothing made at either end, that runs `route`.
Run run_route(const std::string& route) {
    std::string way = route;
    std::ranges::replace(way, '\n', ' '); // an inline table stands on one line
    return cut_toml(
        "[[line]]\nname = \"a\"\nrope = \"double-braid polyester 5 mm\"\nprestretched = true\n"
        "route = " +
        way + "\n");
}

double finished_millimetres(const Run& run) {
    for (const Fault& fault : run.faults) {
        ADD_FAILURE() << to_text(fault);
    }
    return in_millimetres(run.lines.front().piece.finished.value_or(0));
}

} // namespace

TEST(Route, RunsRoundASheaveInTheCornerOfTheLegs) {
    // 3 m and 4 m at a right angle, R = (40 + 5)/2 = 22.5: 7000 - 2 R + R pi/2
    const auto run = run_route(R"({ points = [ { at = ["0 m", "0 m", "0 m"] },
        { at = ["3 m", "0 m", "0 m"], sheave = "40 mm" }, { at = ["3 m", "4 m", "0 m"] } ] })");
    EXPECT_NEAR(finished_millimetres(run), 7000.0 - 45.0 + 22.5 * pi / 2.0, near);
}

TEST(Route, TurnsOnAPinWithoutDiameterByHalfTheRope) {
    const auto run = run_route(R"({ points = [ { at = ["0 m", "0 m"] },
        { at = ["3 m", "0 m"], sheave = "0 mm" }, { at = ["3 m", "4 m"] } ] })");
    EXPECT_NEAR(finished_millimetres(run), 7000.0 - 5.0 + 2.5 * pi / 2.0, near);
}

TEST(Route, TakesAPlainCornerAsAPoint) {
    const auto run = run_route(
        R"({ points = [["0 m", "0 m", "0 m"], ["1 m", "2 m", "2 m"], ["1 m", "2 m", "-1 m"]] })");
    EXPECT_NEAR(finished_millimetres(run), 3000.0 + 3000.0, near);
}

TEST(Route, ComesFromAPointsFileBesideTheJob) {
    const auto folder = std::filesystem::temp_directory_path() / "libsplice-route-test";
    std::filesystem::create_directories(folder);
    std::ofstream(folder / "way.csv") << "y [m],sheave,x [m]\n0,,0\n0,40 mm,3\n4,,3\n";
    const std::string job = (folder / "job.csv").string();
    std::ofstream(job)
        << "name,rope,prestretched,route\na,double-braid polyester 5 mm,yes,way.csv\n";
    auto input = Input::open(job);
    ASSERT_TRUE(input);
    const auto run = cut_input(*input, {}, shipped_book());
    std::filesystem::remove_all(folder);
    EXPECT_NEAR(finished_millimetres(run), 7000.0 - 45.0 + 22.5 * pi / 2.0, near);
}

TEST(Route, LacesAsPrintedGeometrySays) {
    // The working for these stands with the tests of mechanics; here the rope is 5 mm thick.
    const double leg = std::sqrt(80.0 * 80.0 + 50.0 * 50.0 - 13.0 * 13.0);
    const double lean = std::atan(50.0 / 80.0) - std::asin(13.0 / std::hypot(80.0, 50.0));
    EXPECT_NEAR(
        finished_millimetres(run_route(
            R"({ lacing = "zigzag", legs = 11, gap = "80 mm", advance = "50 mm", edge = "8 mm" })")),
        11.0 * leg + 10.0 * 6.5 * (pi - 2.0 * lean), near);
    EXPECT_NEAR(finished_millimetres(run_route(
                    R"({ lacing = "criss-cross", pairs = 8, gap = "80 mm", pitch = "50 mm" })")),
                1400.757358, near);
    EXPECT_NEAR(finished_millimetres(run_route(
                    R"({ lacing = "straight", pairs = 8, gap = "80 mm", pitch = "50 mm" })")),
                1517.054531, near);
    EXPECT_NEAR(finished_millimetres(run_route(
                    R"({ lacing = "spiral", turns = 12, rail = "60 mm", pitch = "90 mm" })")),
                2677.884859, near);
    const double plane =
        2.0 * std::sqrt(45.0 * 45.0 - 18.5 * 18.5) + 18.5 * (pi + 2.0 * std::asin(18.5 / 45.0));
    EXPECT_NEAR(
        finished_millimetres(run_route(
            R"({ lacing = "rail", loops = 20, gap = "45 mm", rail = "32 mm", pitch = "60 mm" })")),
        20.0 * std::hypot(plane, 60.0), near);
}

TEST(Route, LacesRowsOfEyeletsAsTheirCountAndPitchWould) {
    const auto straight = run_route(
        R"({ lacing = "zigzag", legs = 5, gap = "80 mm", advance = "50 mm", edge = "8 mm" })");
    const auto rows = run_route(R"({ lacing = "zigzag", edge = "8 mm", rows = [
        { points = [["0 mm", "0 mm"], ["200 mm", "0 mm"]], count = 3 },
        { points = [["50 mm", "80 mm"], ["250 mm", "80 mm"]], count = 3 } ] })");
    EXPECT_NEAR(finished_millimetres(rows), finished_millimetres(straight), near);
}

TEST(Route, PurchaseIsItsPartsItsTurnsAndItsTail) {
    const auto run =
        run_route(R"({ purchase = 4, run = "1200 mm", sheave = "20 mm", tail = "600 mm" })");
    EXPECT_NEAR(finished_millimetres(run), 5517.809725, near);
}

TEST(Route, PurchaseAsRiggedShowsItsTailEasedAndHauled) {
    const auto run = run_route(
        R"({ purchase = 4, run = "720 mm", hauled = "180 mm", becket = "16 mm", lead = "850 mm",
             tail = "380 mm", sheaves = [ { size = "22 mm", turn = 180 }, { size = "22 mm", turn = 90 } ] })");
    // 4 x 720 - 16 + 13.5 (pi + pi/2) + 850 + 380
    EXPECT_NEAR(finished_millimetres(run), 4.0 * 720.0 - 16.0 + 13.5 * 1.5 * pi + 1230.0, near);
    const auto& route = run.lines.front().piece.line->route;
    ASSERT_TRUE(route && route->tail_eased && route->tail_hauled);
    EXPECT_NEAR(route->tail_eased->si(), 0.380, 1e-12);
    EXPECT_NEAR(route->tail_hauled->si(), 0.380 + 4.0 * 0.540, 1e-12);
}

TEST(Route, PurchaseThatHaulsAnotherTravelsAsFarAsThatOneTakesIn) {
    // the load comes 100 mm; two parts haul 200 mm in, which is what the lower purchase travels
    const auto run = run_route(
        R"({ purchase = 3, run = "900 mm", travel = "100 mm", hauls = 2, sheave = "20 mm", tail = "0 mm" })");
    ASSERT_TRUE(run.faults.empty());
    EXPECT_NEAR(run.lines.front().piece.line->route->tail_hauled->si(), 3.0 * 0.200, 1e-12);
}

TEST(Route, TakesNoWorkingStretchOffAnEasedPurchase) {
    const std::string route =
        R"({ purchase = 4, run = "1200 mm", sheave = "20 mm", tail = "600 mm" })";
    const auto run =
        cut_toml("[[line]]\nname = \"a\"\nrope = \"demo-db-poly-8\"\nprestretched = true\n"
                 "tension = \"20 %\"\nroute = " +
                 route + "\n");
    ASSERT_TRUE(run.faults.empty()) << run.faults.front().text;
    const Piece& piece = run.lines.front().piece;
    EXPECT_EQ(find_row(piece, Item::stretch), nullptr);
    EXPECT_TRUE(cautions_about(piece, "carries no load"));
}

TEST(Route, TakesStretchOffALoadedWay) {
    const auto run =
        cut_toml("[[line]]\nname = \"a\"\nrope = \"demo-db-poly-8\"\nprestretched = true\n"
                 "tension = \"20 %\"\nroute = { points = [[\"0 m\", \"0 m\"], "
                 "[\"0 m\", \"10 m\"]] }\n");
    ASSERT_TRUE(run.faults.empty()) << run.faults.front().text;
    EXPECT_LT(length_of(run.lines.front().piece, Item::stretch), -200.0);
}

TEST(Route, BedsTheRopeInOnlyWhereItIsLoaded) {
    const auto first_stretch_of = [](const std::string& tail) {
        const auto run = cut_toml(
            "[[line]]\nname = \"a\"\nrope = \"12-strand HMPE 5 mm\"\nroute = { purchase = 2, run = "
            "\"1 m\", sheave = \"20 mm\", tail = \"" +
            tail + "\" }\n");
        return length_of(run.lines.front().piece, Item::first_stretch);
    };
    EXPECT_NEAR(first_stretch_of("0 m"), first_stretch_of("5 m"), near);
}

TEST(Route, NamesItsWayAsTheSourceOfTheLength) {
    const auto run = run_route(R"({ points = [["0 m", "0 m"], ["0 m", "4 m"]] })");
    EXPECT_EQ(find_row(run.lines.front().piece, Item::finished_length)->source, cited_geometry);
}

TEST(Route, CautionsOfASheaveThatIsTooSmallForTheRope) {
    const auto with_sheave = [](const std::string& size) {
        const auto run = run_route(R"({ points = [ { at = ["0 m", "0 m"] }, { at = ["3 m", "0 m"],
            sheave = ")" + size + R"(" }, { at = ["3 m", "4 m"] } ] })");
        return cautions_about(run.lines.front().piece, "the smallest sheave on its way");
    };
    EXPECT_TRUE(with_sheave("39 mm")); // 8 D of 5 mm is 40 mm
    EXPECT_FALSE(with_sheave("40 mm"));
}

} // namespace libsplice::testing
