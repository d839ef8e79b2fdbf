// What the border of C costs: a million ends, every one with fields of its own, through the C
// library and through C++.
#include "libsplice/abi/include/splice.h"

#include "tables.h"

#include <benchmark/benchmark.h>

#include <chrono>
#include <numeric>

namespace libsplice::bench {
namespace {

constexpr std::size_t end_count = 1'000'000;

/// Eyes from 30 mm up, a tenth of a micrometre apart, so that no two ends are alike.
std::vector<double> distinct_eyes() {
    std::vector<double> eyes(end_count);
    for (std::size_t i = 0; i < end_count; ++i) {
        eyes[i] = 0.030 + static_cast<double>(i) * 1e-7;
    }
    return eyes;
}

double seconds_of(const auto& work) {
    const auto start = std::chrono::steady_clock::now();
    work();
    return std::chrono::duration<double>(std::chrono::steady_clock::now() - start).count();
}

/// The allowances as a program in C++ would have them worked out.
void through_cpp(const Book& book, std::span<const double> eyes, std::span<double> allowances) {
    const auto kind = book.kind("locked-eye");
    const auto rope = book.catalogue().rope("12-strand HMPE 5 mm");
    const auto rules = book.rules(**kind, *rope, "");
    for (std::size_t i = 0; i < eyes.size(); ++i) {
        Fields fields;
        fields.set(0, eyes[i]);
        const auto allowance = book.work_out(**kind, *rope, *rules, fields);
        allowances[i] = allowance ? from_nanometres(allowance->total()).si() : 0.0;
    }
}

void through_c(const splice_book* book, std::span<const double> eyes,
               std::span<double> allowances) {
    const splice_field_column column{"eye", eyes.data()};
    splice_batch batch{};
    batch.size = sizeof batch;
    batch.kind = "locked-eye";
    batch.rope = "12-strand HMPE 5 mm";
    batch.fields = &column;
    batch.field_count = 1;
    batch.count = eyes.size();
    batch.allowances_m = allowances.data();
    splice_work_out_batch(book, &batch, nullptr);
}

void c_over_cpp(benchmark::State& state) {
    const Book book = open_book();
    const char* const folder = LIBSPLICE_TABLES_DIR;
    splice_book_options options{};
    options.size = sizeof options;
    options.folders = &folder;
    options.folder_count = 1;
    splice_book* c_book = nullptr;
    splice_book_open(&options, &c_book, nullptr);

    const auto eyes = distinct_eyes();
    std::vector<double> by_cpp(end_count);
    std::vector<double> by_c(end_count);
    double cpp = 0.0;
    double c = 0.0;
    for (auto _ : state) {
        cpp += seconds_of([&] { through_cpp(book, eyes, by_cpp); });
        c += seconds_of([&] { through_c(c_book, eyes, by_c); });
    }
    splice_book_close(c_book);
    if (by_cpp != by_c || std::accumulate(by_c.begin(), by_c.end(), 0.0) <= 0.0) {
        state.SkipWithError("the two do not come to the same");
    }
    const auto rounds = static_cast<double>(state.iterations());
    state.counters["cpp_s"] = cpp / rounds;
    state.counters["c_s"] = c / rounds;
    state.counters["ratio"] = c / cpp;
}
BENCHMARK(c_over_cpp)->Iterations(5)->Unit(benchmark::kMillisecond);

} // namespace
} // namespace libsplice::bench
