// What a replaced file keeps, what a link becomes, and what dead runs leave behind.
#include "libsplice/base/output.h"

#include "tests/base/temporary_folder.h"

#include <gtest/gtest.h>

#include <fcntl.h>
#include <string>
#include <sys/file.h>
#include <sys/stat.h>
#include <sys/wait.h>
#include <unistd.h>

namespace libsplice::testing {
namespace {

struct stat status_of(const std::string& path) {
    struct stat status {};
    EXPECT_EQ(::lstat(path.c_str(), &status), 0) << path;
    return status;
}

void write_over(const std::string& path, std::string_view text) {
    auto output = Output::open(path);
    ASSERT_TRUE(output) << output.error().text;
    output->write(text);
    ASSERT_TRUE(output->commit());
}

/// The number of a process that has just ended.
pid_t dead_process() {
    const pid_t child = ::fork();
    if (child == 0) {
        ::_exit(0);
    }
    ::waitpid(child, nullptr, 0);
    return child;
}

TEST(LeftOver, FilesOfDeadRunsAreRemovedByTheNext) {
    const TemporaryFolder folder;
    const std::string stem = ".splice-" + std::to_string(dead_process());
    fill(folder.file(stem + "-0"), "half a sheet");
    fill(folder.file(stem + "-12"), "half a sheet");
    write_over(folder.file("sheet.csv"), "whole");
    EXPECT_EQ(folder.entry_count(), 1U);
}

TEST(LeftOver, WhatIsNotOursStays) {
    const TemporaryFolder folder;
    const std::string dead = std::to_string(dead_process());
    for (const std::string& name : {".splice-" + dead, ".splice-" + dead + "-0.toml",
                                    ".splice-" + std::to_string(::getpid()) + "-900",
                                    std::string(".splice-0-1"), std::string(".splice-old-1")}) {
        fill(folder.file(name), "x");
    }
    write_over(folder.file("sheet.csv"), "whole");
    EXPECT_EQ(folder.entry_count(), 6U);
}

TEST(LeftOver, WhatAnotherRunIsWritingStays) {
    const TemporaryFolder folder;
    // The process is not seen from here, as in another container, and its lock is.
    const std::string path = folder.file(".splice-" + std::to_string(dead_process()) + "-0");
    fill(path, "half a sheet");
    const int held = ::open(path.c_str(), O_WRONLY | O_CLOEXEC);
    ASSERT_EQ(::flock(held, LOCK_EX | LOCK_NB), 0);
    write_over(folder.file("sheet.csv"), "whole");
    EXPECT_EQ(folder.entry_count(), 2U);
    ::close(held);
}

TEST(Rights, ANewFileIsNeverSetuid) {
    const TemporaryFolder folder;
    const std::string path = folder.file("sheet.csv");
    fill(path, "old");
    ASSERT_EQ(::chmod(path.c_str(), 04755), 0);
    write_over(path, "new");
    EXPECT_EQ(status_of(path).st_mode & mode_t{07777}, mode_t{0755});
}

TEST(Rights, OwnerAndGroupAreKept) {
    if (::geteuid() != 0) {
        GTEST_SKIP() << "only root may give a file away";
    }
    const TemporaryFolder folder;
    const std::string path = folder.file("stock.csv");
    fill(path, "old");
    ASSERT_EQ(::chown(path.c_str(), 1000, 1001), 0);
    ASSERT_EQ(::chmod(path.c_str(), 0640), 0);
    write_over(path, "new");
    const auto status = status_of(path);
    EXPECT_EQ(status.st_uid, 1000U);
    EXPECT_EQ(status.st_gid, 1001U);
    EXPECT_EQ(status.st_mode & mode_t{07777}, mode_t{0640});
}

TEST(Links, OneThatLeadsNowhereIsRefused) {
    const TemporaryFolder folder;
    const std::string path = folder.file("sheet.csv");
    ASSERT_EQ(::symlink("not-there", path.c_str()), 0);
    const auto output = Output::open(path);
    ASSERT_FALSE(output);
    EXPECT_EQ(output.error().code, Code::cannot_write);
    EXPECT_TRUE(S_ISLNK(status_of(path).st_mode));
    EXPECT_EQ(folder.entry_count(), 1U);
}

TEST(Copies, ReplaceAPlantedLinkAndNotWhatItLeadsTo) {
    const TemporaryFolder folder;
    fill(folder.file("precious"), "precious");
    fill(folder.file("stock.csv"), "stock");
    ASSERT_EQ(::chmod(folder.file("stock.csv").c_str(), 0600), 0);
    const std::string copy = folder.file("stock.csv.previous");
    ASSERT_EQ(::symlink("precious", copy.c_str()), 0);
    auto output = Output::open_copy(copy, folder.file("stock.csv"));
    ASSERT_TRUE(output);
    output->write("stock");
    ASSERT_TRUE(output->commit());
    EXPECT_EQ(content(folder.file("precious")), "precious");
    EXPECT_EQ(content(copy), "stock");
    EXPECT_TRUE(S_ISREG(status_of(copy).st_mode));
    EXPECT_EQ(status_of(copy).st_mode & mode_t{07777}, mode_t{0600});
}

TEST(Copies, DoNotWaitForAPipe) {
    const TemporaryFolder folder;
    fill(folder.file("stock.csv"), "stock");
    const std::string copy = folder.file("stock.csv.previous");
    ASSERT_EQ(::mkfifo(copy.c_str(), 0600), 0);
    auto output = Output::open_copy(copy, folder.file("stock.csv"));
    ASSERT_TRUE(output);
    output->write("stock");
    ASSERT_TRUE(output->commit());
    EXPECT_EQ(content(copy), "stock");
}

} // namespace
} // namespace libsplice::testing
