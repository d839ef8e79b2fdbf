// Reading files, folders that are none, and text in memory.
#include "libsplice/base/input.h"

#include "tests/base/temporary_folder.h"

#include <gtest/gtest.h>

#include <array>
#include <string>
#include <unistd.h>

namespace libsplice::testing {
namespace {

using std::string_literals::operator""s;

TEST(Input, ReadsAFileWhole) {
    const TemporaryFolder folder;
    const std::string text = "a\0b\r\n"s + std::string(100'000, 'x');
    fill(folder.file("job.csv"), text);
    auto input = Input::open(folder.file("job.csv"));
    ASSERT_TRUE(input);
    EXPECT_EQ(input->name(), folder.file("job.csv"));
    const auto all = input->read_all();
    ASSERT_TRUE(all);
    EXPECT_EQ(*all, text);
}

TEST(Input, ReadsInPieces) {
    auto input = Input::of_text("halyard", "memory");
    std::array<char, 4> piece{};
    EXPECT_EQ(*input.read(piece), 4U);
    EXPECT_EQ(std::string(piece.data(), 4), "haly");
    EXPECT_EQ(*input.read(piece), 3U);
    EXPECT_EQ(std::string(piece.data(), 3), "ard");
    EXPECT_EQ(*input.read(piece), 0U);
    EXPECT_EQ(input.name(), "memory");
}

TEST(Input, ReadAllTakesTheRestOnly) {
    auto input = Input::of_text("halyard", "memory");
    std::array<char, 2> piece{};
    ASSERT_TRUE(input.read(piece));
    EXPECT_EQ(*input.read_all(), "lyard");
    EXPECT_EQ(*input.read_all(), "");
}

TEST(Input, SaysWhatItCannotOpen) {
    const TemporaryFolder folder;
    const auto input = Input::open(folder.file("none.csv"));
    ASSERT_FALSE(input);
    EXPECT_EQ(input.error().code, Code::file_unreadable);
    EXPECT_EQ(input.error().at, Place{folder.file("none.csv")});
    EXPECT_NE(input.error().text.find("No such file"), std::string::npos);
}

TEST(Input, RefusesAFolder) {
    const TemporaryFolder folder;
    const auto input = Input::open(folder.path());
    ASSERT_FALSE(input);
    EXPECT_EQ(input.error().code, Code::file_unreadable);
    EXPECT_NE(input.error().text.find("folder"), std::string::npos);
}

TEST(Input, MovesWithItsPlaceInTheFile) {
    const TemporaryFolder folder;
    fill(folder.file("a"), "first");
    fill(folder.file("b"), "second");
    auto a = Input::open(folder.file("a"));
    auto b = Input::open(folder.file("b"));
    ASSERT_TRUE(a && b);
    std::array<char, 3> piece{};
    ASSERT_TRUE(b->read(piece));
    *a = *std::move(b);
    EXPECT_EQ(a->name(), folder.file("b"));
    EXPECT_EQ(*a->read_all(), "ond");
    const Input moved(*std::move(a));
    EXPECT_EQ(moved.name(), folder.file("b"));
}

TEST(Input, DashIsStandardInput) {
    std::array<int, 2> ends{};
    ASSERT_EQ(::pipe(ends.data()), 0);
    const int kept = ::dup(STDIN_FILENO);
    ASSERT_EQ(::dup2(ends[0], STDIN_FILENO), STDIN_FILENO);
    ASSERT_EQ(::write(ends[1], "name\n", 5), 5);
    ::close(ends[1]);
    ::close(ends[0]);

    auto input = Input::open("-");
    ASSERT_TRUE(input);
    EXPECT_EQ(input->name(), "standard input");
    EXPECT_EQ(*input->read_all(), "name\n");

    ::dup2(kept, STDIN_FILENO);
    ::close(kept);
}

} // namespace
} // namespace libsplice::testing
