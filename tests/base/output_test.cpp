// An output file is there whole or not at all.
#include "libsplice/base/output.h"

#include "tests/base/temporary_folder.h"

#include <gtest/gtest.h>

#include <array>
#include <csignal>
#include <string>
#include <sys/stat.h>
#include <unistd.h>

namespace libsplice::testing {
namespace {

mode_t mode_of(const std::string& path) {
    struct stat status {};
    EXPECT_EQ(::stat(path.c_str(), &status), 0);
    return status.st_mode & mode_t{07777};
}

/// Puts another descriptor in the place of standard output while it lives.
class StandardOutput {
  public:
    explicit StandardOutput(int other) : kept_(::dup(STDOUT_FILENO)) {
        ::dup2(other, STDOUT_FILENO);
    }
    StandardOutput(const StandardOutput&) = delete;
    StandardOutput& operator=(const StandardOutput&) = delete;
    ~StandardOutput() {
        ::dup2(kept_, STDOUT_FILENO);
        ::close(kept_);
    }

  private:
    int kept_;
};

TEST(Output, TakesItsNameAtTheCommit) {
    const TemporaryFolder folder;
    const std::string path = folder.file("sheet.csv");
    auto output = Output::open(path);
    ASSERT_TRUE(output);
    output->write("name,cut_m");
    output->write('\n');
    output->flush();
    EXPECT_NE(::access(path.c_str(), F_OK), 0);
    ASSERT_TRUE(output->commit());
    EXPECT_EQ(content(path), "name,cut_m\n");
    EXPECT_EQ(folder.entry_count(), 1U);
}

TEST(Output, LeavesTheOldFileWholeUntilThen) {
    const TemporaryFolder folder;
    const std::string path = folder.file("sheet.csv");
    fill(path, "old");
    auto output = Output::open(path);
    ASSERT_TRUE(output);
    output->write(std::string(200'000, 'n'));
    output->flush();
    EXPECT_EQ(content(path), "old");
    ASSERT_TRUE(output->commit());
    EXPECT_EQ(content(path), std::string(200'000, 'n'));
}

TEST(Output, LeavesNoTraceWithoutACommit) {
    const TemporaryFolder folder;
    const std::string path = folder.file("sheet.csv");
    fill(path, "old");
    {
        auto output = Output::open(path);
        ASSERT_TRUE(output);
        output->write(std::string(200'000, 'n'));
        EXPECT_EQ(folder.entry_count(), 2U);
    }
    EXPECT_EQ(content(path), "old");
    EXPECT_EQ(folder.entry_count(), 1U);
}

TEST(Output, AnOutputThatIsReplacedLeavesNoTraceEither) {
    const TemporaryFolder folder;
    auto first = Output::open(folder.file("first"));
    auto second = Output::open(folder.file("second"));
    ASSERT_TRUE(first && second);
    *first = *std::move(second);
    first->write("kept");
    ASSERT_TRUE(first->commit());
    EXPECT_EQ(folder.entry_count(), 1U);
    EXPECT_EQ(content(folder.file("second")), "kept");
}

TEST(Output, KeepsLargeTextInOrder) {
    const TemporaryFolder folder;
    auto output = Output::open(folder.file("long"));
    ASSERT_TRUE(output);
    std::string expected;
    for (int i = 0; i < 50'000; ++i) {
        const std::string row = std::to_string(i) + '\n';
        output->write(row);
        expected += row;
    }
    ASSERT_TRUE(output->commit());
    EXPECT_EQ(content(folder.file("long")), expected);
}

TEST(Output, KeepsTheModeOfTheOldFile) {
    const TemporaryFolder folder;
    const std::string path = folder.file("sheet.csv");
    fill(path, "old");
    ASSERT_EQ(::chmod(path.c_str(), 0640), 0);
    auto output = Output::open(path);
    ASSERT_TRUE(output);
    ASSERT_TRUE(output->commit());
    EXPECT_EQ(mode_of(path), 0640U);
}

TEST(Output, GivesANewFileTheUsualMode) {
    const TemporaryFolder folder;
    const mode_t kept = ::umask(027);
    auto output = Output::open(folder.file("new"));
    ::umask(kept);
    ASSERT_TRUE(output);
    ASSERT_TRUE(output->commit());
    EXPECT_EQ(mode_of(folder.file("new")), 0640U);
}

TEST(Output, WritesThroughASymbolicLink) {
    const TemporaryFolder folder;
    fill(folder.file("real"), "old");
    ASSERT_EQ(::symlink("real", folder.file("link").c_str()), 0);
    auto output = Output::open(folder.file("link"));
    ASSERT_TRUE(output);
    output->write("new");
    ASSERT_TRUE(output->commit());
    EXPECT_EQ(content(folder.file("real")), "new");
    EXPECT_TRUE(std::filesystem::is_symlink(folder.file("link")));
}

TEST(Output, RefusesAFolder) {
    const TemporaryFolder folder;
    const auto output = Output::open(folder.path());
    ASSERT_FALSE(output);
    EXPECT_EQ(output.error().code, Code::cannot_write);
    EXPECT_NE(output.error().text.find("folder"), std::string::npos);
}

TEST(Output, RefusesAPlaceThatIsNotThere) {
    const TemporaryFolder folder;
    const auto output = Output::open(folder.file("none/sheet.csv"));
    ASSERT_FALSE(output);
    EXPECT_EQ(output.error().code, Code::cannot_write);
    EXPECT_EQ(output.error().at.file, folder.file("none/sheet.csv"));
    EXPECT_FALSE(Output::open(""));
}

TEST(Output, RefusesAFolderThatMayNotBeWrittenTo) {
    if (::geteuid() == 0) {
        GTEST_SKIP() << "the superuser may write anywhere";
    }
    const TemporaryFolder folder;
    ASSERT_EQ(::chmod(folder.path().c_str(), 0500), 0);
    const auto output = Output::open(folder.file("sheet.csv"));
    EXPECT_EQ(::chmod(folder.path().c_str(), 0700), 0);
    ASSERT_FALSE(output);
    EXPECT_EQ(output.error().code, Code::cannot_write);
}

TEST(Output, FailsAtTheCommitIfItsFolderHasGone) {
    const TemporaryFolder folder;
    ASSERT_TRUE(std::filesystem::create_directory(folder.file("inner")));
    auto output = Output::open(folder.file("inner/sheet.csv"));
    ASSERT_TRUE(output);
    std::filesystem::remove_all(folder.file("inner"));
    const auto committed = output->commit();
    ASSERT_FALSE(committed);
    EXPECT_EQ(committed.error().code, Code::cannot_write);
}

TEST(Output, FailsAtTheCommitIfTheDeviceIsFull) {
    if (::access("/dev/full", W_OK) != 0) {
        GTEST_SKIP() << "no device that is always full";
    }
    auto output = Output::open("/dev/full");
    ASSERT_TRUE(output);
    output->write(std::string(200'000, 'x'));
    EXPECT_FALSE(output->reader_gone());
    const auto committed = output->commit();
    ASSERT_FALSE(committed);
    EXPECT_EQ(committed.error().code, Code::cannot_write);
    struct stat status {};
    ASSERT_EQ(::stat("/dev/full", &status), 0);
    EXPECT_TRUE(S_ISCHR(status.st_mode)); // written to, not replaced
}

TEST(Output, DashIsStandardOutput) {
    const TemporaryFolder folder;
    std::array<int, 2> ends{};
    ASSERT_EQ(::pipe(ends.data()), 0);
    bool committed = false;
    {
        const StandardOutput replaced(ends[1]);
        auto output = Output::open("-");
        output->write("sheet\n");
        committed = output->commit().has_value();
    }
    ::close(ends[1]);
    std::array<char, 16> piece{};
    EXPECT_TRUE(committed);
    EXPECT_EQ(::read(ends[0], piece.data(), piece.size()), 6);
    EXPECT_EQ(std::string(piece.data(), 6), "sheet\n");
    ::close(ends[0]);
}

TEST(Output, EndsQuietlyWhenTheReaderHasGone) {
    const auto kept = std::signal(SIGPIPE, SIG_IGN);
    std::array<int, 2> ends{};
    ASSERT_EQ(::pipe(ends.data()), 0);
    ::close(ends[0]);
    bool gone_before = true;
    bool gone_after = false;
    bool committed = false;
    {
        const StandardOutput replaced(ends[1]);
        auto output = Output::open("-");
        gone_before = output->reader_gone();
        output->write("sheet\n");
        output->flush();
        gone_after = output->reader_gone();
        output->write("more\n");
        committed = output->commit().has_value();
    }
    ::close(ends[1]);
    std::signal(SIGPIPE, kept);
    EXPECT_FALSE(gone_before);
    EXPECT_TRUE(gone_after);
    EXPECT_TRUE(committed);
}

TEST(Output, WritesToMemory) {
    std::string text = "> ";
    auto output = Output::to_string(text);
    output.write("rope");
    output.write(' ');
    EXPECT_EQ(text, "> ");
    ASSERT_TRUE(output.commit());
    EXPECT_EQ(text, "> rope ");
    EXPECT_FALSE(output.reader_gone());
}

} // namespace
} // namespace libsplice::testing
