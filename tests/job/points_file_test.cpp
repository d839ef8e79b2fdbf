// Points of a route in a file: read in any order of columns, every mistake at its place.
#include "libsplice/job/route/points_file.h"

#include <gtest/gtest.h>

#include <filesystem>
#include <fstream>
#include <string>

namespace libsplice::testing {

namespace {

class PointsFile : public ::testing::Test {
  protected:
    void SetUp() override {
        path_ = std::filesystem::temp_directory_path() /
                (std::string("libsplice-points-") +
                 ::testing::UnitTest::GetInstance()->current_test_info()->name() + ".csv");
    }
    void TearDown() override { std::filesystem::remove(path_); }

    std::vector<RoutePoint> read(const std::string& text) {
        std::ofstream(path_) << text;
        return read_points_file(path_.string(), faults_);
    }

    std::filesystem::path path_;
    std::vector<Fault> faults_;
};

} // namespace

TEST_F(PointsFile, ReadsColumnsInAnyOrder) {
    const auto points = read("sheave, y [mm],x [m]\n,-250,1.5\n40 mm, 0 , 2\n");
    ASSERT_TRUE(faults_.empty()) << to_text(faults_.front());
    ASSERT_EQ(points.size(), 2U);
    EXPECT_EQ(points[0].at, (std::array{metres(1.5), metres(-0.25), metres(0.0)}));
    EXPECT_FALSE(points[0].sheave);
    EXPECT_EQ(points[1].sheave, millimetres(40.0));
    EXPECT_EQ(points[1].place, (Place{path_.string(), 3, 1}));
}

TEST_F(PointsFile, TellsEveryMistakeOfItsHeading) {
    read("x [furlong],z,z,w\n");
    ASSERT_EQ(faults_.size(), 4U);
    EXPECT_EQ(faults_[0].code, Code::unknown_column);
    EXPECT_EQ(faults_[0].at.column, 1U);
    EXPECT_EQ(faults_[1].code, Code::duplicate_column);
    EXPECT_EQ(faults_[1].at.column, 15U);
    EXPECT_EQ(faults_[2].code, Code::unknown_column);
    EXPECT_EQ(faults_[2].at.column, 17U);
    EXPECT_EQ(faults_[3].code, Code::route_not_readable);
}

TEST_F(PointsFile, TellsEveryMistakeOfItsCells) {
    read("x [m],y [m],sheave\n1,2,\n,2,\n1;2,2,-3 mm\n");
    ASSERT_EQ(faults_.size(), 3U);
    EXPECT_EQ(faults_[0].code, Code::cell_missing);
    EXPECT_EQ(faults_[0].at, (Place{path_.string(), 3, 1}));
    EXPECT_EQ(faults_[1].code, Code::not_a_length);
    EXPECT_EQ(faults_[1].at, (Place{path_.string(), 4, 1}));
    EXPECT_EQ(faults_[2].code, Code::value_out_of_range);
    EXPECT_EQ(faults_[2].at, (Place{path_.string(), 4, 7}));
}

TEST_F(PointsFile, SaysThatItIsEmpty) {
    read("");
    ASSERT_EQ(faults_.size(), 1U);
    EXPECT_EQ(faults_[0].code, Code::no_heading);
}

} // namespace libsplice::testing
