// How many lines a second: a job in memory, cut, and written as a CSV sheet.
#include "libsplice/job/read_job.h"
#include "libsplice/sheet/formats.h"

#include "tables.h"

#include <benchmark/benchmark.h>

namespace libsplice::bench {
namespace {

constexpr int distinct_ends = 300;

/// A job of `lines` lines of all lengths, with `distinct_ends` different eyes.
std::string job_of(std::int64_t lines) {
    std::string csv = "name,boat,rope,length,end_a,end_a.eye,end_a.pin,end_b,prestretched\n";
    for (std::int64_t i = 0; i < lines; ++i) {
        csv += "line " + std::to_string(i) + ",No " + std::to_string(i % 40) + ",demo-b12-hmpe-4," +
               std::to_string(2000 + i * 7 % 15000) + " mm,buried-eye," +
               std::to_string(40 + i % distinct_ends) + " mm,12 mm,figure-eight,yes\n";
    }
    return csv;
}

/// Cuts the job and writes its sheet; false if a line was refused or the sheet not written.
bool cut_job(const Book& book, const std::string& csv, std::string& sheet) {
    FaultSink faults;
    Cutter cutter(book, {});
    Output output = Output::to_string(sheet);
    const auto writer = row_of(Format::csv).cut(output, book, {});
    Input input = Input::of_text(csv, "job.csv");
    writer->begin();
    const auto read = read_csv_job(input, book.field_names(), faults, [&](const JobRow& row) {
        writer->piece(cutter.cut(row, faults));
        return true;
    });
    writer->end(cutter.counts());
    return read && output.commit() && faults.empty();
}

void cut_and_write(benchmark::State& state) {
    const Book book = open_book();
    const std::string csv = job_of(state.range(0));
    for (auto _ : state) {
        std::string sheet;
        if (!cut_job(book, csv, sheet)) {
            state.SkipWithError("the job was not cut");
            break;
        }
        benchmark::DoNotOptimize(sheet);
    }
    state.counters["rows"] = benchmark::Counter(static_cast<double>(state.range(0)),
                                                benchmark::Counter::kIsIterationInvariantRate);
}
BENCHMARK(cut_and_write)->Arg(1'000)->Arg(20'000)->Arg(200'000)->Unit(benchmark::kMillisecond);

} // namespace
} // namespace libsplice::bench
