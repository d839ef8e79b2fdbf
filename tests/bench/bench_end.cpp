// What it costs to open the tables, and to work out one end.
#include "tables.h"

#include <benchmark/benchmark.h>

namespace libsplice::bench {
namespace {

void load_book(benchmark::State& state) {
    for (auto _ : state) {
        const Book book = open_book();
        benchmark::DoNotOptimize(book.kinds().data());
    }
}
BENCHMARK(load_book)->Unit(benchmark::kMillisecond);

void work_out_one_end(benchmark::State& state) {
    const Book book = open_book();
    const auto kind = book.kind("locked-eye");
    const auto rope = book.catalogue().rope("12-strand HMPE 5 mm");
    const std::vector<FieldText> fields{{"eye", "60 mm"}, {"pin", "12 mm"}, {"tail", "80 D"}};
    if (!kind || !rope) {
        state.SkipWithError("the tables do not have this end");
        return;
    }
    for (auto _ : state) {
        const auto allowance = book.work_out(**kind, *rope, fields);
        benchmark::DoNotOptimize(allowance.has_value());
    }
}
BENCHMARK(work_out_one_end)->Unit(benchmark::kMicrosecond);

} // namespace
} // namespace libsplice::bench
