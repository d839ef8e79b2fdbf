// CSV files larger than the pieces they are read in, and cells that must not fill the memory.
#include "rows.h"

#include <gtest/gtest.h>

#include <array>
#include <cstdio>
#include <ostream>
#include <string>
#include <sys/resource.h>
#include <unistd.h>

namespace libsplice::testing {
namespace {

/// Name of row `i`, of a length that varies so that chunk ends fall everywhere in a row.
std::string row_name(int i) {
    return "line " + std::to_string(i) + std::string(static_cast<std::size_t>(i % 37), 'x');
}

void expect_rows(const std::string& line_end) {
    constexpr int count = 20'000;
    std::string text = "name,note,rope" + line_end;
    for (int i = 0; i < count; ++i) {
        text += row_name(i) + ",\"é \"\"" + line_end + "é\",r" + std::to_string(i) + line_end;
    }
    Input input = Input::of_text(text, "job.csv");
    FaultSink faults;
    int i = 0;
    const auto read = read_job(input, known_fields, faults, [&](const JobRow& row) {
        const auto line = static_cast<std::uint32_t>(2 + 2 * i);
        EXPECT_EQ(row.line.text(Column::name), row_name(i));
        EXPECT_EQ(row.line.text(Column::note), "é \"" + line_end + "é");
        EXPECT_EQ(row.line.text(Column::rope), "r" + std::to_string(i));
        EXPECT_EQ(row.line.place(row.line.cell(Column::note)),
                  csv_place(line, static_cast<std::uint32_t>(row_name(i).size() + 2)));
        EXPECT_EQ(row.line.place(row.line.cell(Column::rope)), csv_place(line + 1, 4));
        ++i;
        return !::testing::Test::HasFailure();
    });
    EXPECT_TRUE(read);
    EXPECT_TRUE(faults.empty());
    EXPECT_EQ(i, count);
}

TEST(LargeCsv, ReadsAcrossChunks) {
    expect_rows("\n");
}

TEST(LargeCsv, ReadsLineEndsCutByChunks) {
    expect_rows("\r\n");
}

TEST(LargeCsv, ReadsCarriageReturnsCutByChunks) {
    expect_rows("\r");
}

/// Writes `head`, then `times` times `body`, then `tail` into a pipe from a child process, and
/// reads what comes out.
ReadJob read_from_pipe(const std::string& head, const std::string& body, int times,
                       const std::string& tail) {
    std::array<int, 2> ends{};
    EXPECT_EQ(::pipe(ends.data()), 0);
    const pid_t child = ::fork();
    if (child == 0) {
        ::close(ends[0]);
        std::FILE* out = ::fdopen(ends[1], "w");
        std::fwrite(head.data(), 1, head.size(), out);
        for (int i = 0; i < times; ++i) {
            std::fwrite(body.data(), 1, body.size(), out);
        }
        std::fwrite(tail.data(), 1, tail.size(), out);
        std::fclose(out);
        ::_exit(0);
    }
    ::close(ends[1]);
    auto input = Input::open("/dev/fd/" + std::to_string(ends[0]));
    EXPECT_TRUE(input);
    ReadJob job = read(*std::move(input));
    ::close(ends[0]);
    return job;
}

/// Greatest memory of this process so far, in KiB.
long peak_memory() {
    rusage usage{};
    ::getrusage(RUSAGE_SELF, &usage);
    return usage.ru_maxrss;
}

struct Flood {
    const char* what;
    std::string head;
    std::string tail;
    char byte;

    friend void PrintTo(const Flood& flood, std::ostream* out) { *out << flood.what; }
};

class LargeCells : public ::testing::TestWithParam<Flood> {};

TEST_P(LargeCells, KeepMemoryBounded) {
    const Flood& flood = GetParam();
    constexpr int mebibytes = 64;
    const std::string body(std::size_t{1} << 20U, flood.byte);
    const long before = peak_memory();
    const auto job = read_from_pipe("name,note,rope\n" + flood.head, body, mebibytes, flood.tail);
    EXPECT_LT(peak_memory() - before, 20 * 1024);
    ASSERT_EQ(job.rows.size(), 2U);
    ASSERT_EQ(job.rows[0].fault.size(), 1U);
    EXPECT_EQ(job.rows[0].cells.at("name"), "a");
    EXPECT_EQ(job.rows[0].cells.count("note"), 0U);
    EXPECT_EQ(job.rows[1].cells.at("name"), "z");
}

INSTANTIATE_TEST_SUITE_P(CsvRows, LargeCells,
                         ::testing::Values(Flood{"plain", "a,", ",r\nz\n", 'x'},
                                           Flood{"quoted", "a,\"", "\",r\nz\n", 'x'},
                                           Flood{"line_ends", "a,\"", "\",r\nz\n", '\n'},
                                           Flood{"doubled_quotes", "a,\"", "\",r\nz\n", '"'},
                                           Flood{"leading_blanks", "a,", "x,r\nz\n", ' '},
                                           Flood{"blanks_within", "a,x", "x,r\nz\n", ' '},
                                           Flood{"trailing_blanks", "a,\"x\"", ",r\nz\n", ' '},
                                           Flood{"commas", "a,", "\nz\n", ','}),
                         [](const auto& flood) { return std::string(flood.param.what); });

} // namespace
} // namespace libsplice::testing
