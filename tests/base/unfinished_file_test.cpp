// Files that are being written can be taken away at any time, and no others.
#include "libsplice/base/files/unfinished_file.h"
#include "libsplice/base/output.h"

#include "tests/base/temporary_folder.h"

#include <gtest/gtest.h>

#include <list>

namespace libsplice::testing {

namespace {

TEST(UnfinishedFile, IsRemovedWhileItIsWritten) {
    const TemporaryFolder folder;
    auto output = Output::open(folder.file("sheet.csv"));
    ASSERT_TRUE(output);
    output->write("half a sheet");
    output->flush();
    EXPECT_EQ(folder.entry_count(), 1U);
    remove_unfinished_files();
    EXPECT_EQ(folder.entry_count(), 0U);
    EXPECT_FALSE(output->commit()) << "there is nothing left to put in its place";
}

TEST(UnfinishedFile, OnceItIsFinishedItStays) {
    const TemporaryFolder folder;
    auto output = Output::open(folder.file("sheet.csv"));
    ASSERT_TRUE(output && output->commit());
    remove_unfinished_files();
    EXPECT_EQ(folder.entry_count(), 1U);
}

TEST(UnfinishedFile, MoreThanCanBeRememberedDoNoHarm) {
    const TemporaryFolder folder;
    std::list<Result<Output>> outputs;
    for (int i = 0; i < 10; ++i) {
        outputs.push_back(Output::open(folder.file(std::to_string(i))));
        ASSERT_TRUE(outputs.back());
    }
    for (auto& output : outputs) {
        EXPECT_TRUE(output->commit());
    }
    outputs.clear();
    EXPECT_EQ(folder.entry_count(), 10U);
    // The places are free again.
    const auto next = Output::open(folder.file("next"));
    EXPECT_EQ(folder.entry_count(), 11U);
    remove_unfinished_files();
    EXPECT_EQ(folder.entry_count(), 10U);
}

} // namespace

} // namespace libsplice::testing
