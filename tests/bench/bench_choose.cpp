// How long the choice of rope takes: lists of thousands of ropes against jobs of hundreds of lines.
#include "libsplice/choose/chooser.h"
#include "libsplice/cut/ropes/listed_rope.h"
#include "libsplice/job/read_job.h"

#include <benchmark/benchmark.h>

#include <array>
#include <cstdlib>
#include <memory>
#include <random>
#include <string>

namespace libsplice::bench {
namespace {

struct Sort {
    const char* words;
    double kilonewtons; ///< on a square millimetre of diameter
};
constexpr std::array sorts{Sort{"double-braid,polyester", 0.24}, Sort{"core-dependent,HMPE", 0.5},
                           Sort{"12-strand,HMPE", 0.7}, Sort{"3-strand,polyester", 0.16},
                           Sort{"8-plait,nylon", 0.17}};
constexpr std::array sizes{3, 4, 5, 6, 8, 10, 12, 14, 16};

std::string list_of(std::int64_t ropes) {
    std::minstd_rand random(3);
    std::string text = "id,construction,fibre,diameter,breaking,stretch,mass,price\n";
    for (std::int64_t i = 0; i < ropes; ++i) {
        const Sort& sort = sorts.at(random() % sorts.size());
        const int size = sizes.at(random() % sizes.size());
        const double breaking = sort.kilonewtons * size * size;
        text += 'r' + std::to_string(i) + ',' + sort.words + ',' + std::to_string(size) + " mm," +
                std::to_string(breaking) + " kN,2 % at 20 %," + std::to_string(size * size) +
                " g/m," + std::to_string(1 + static_cast<int>(random() % 20)) + "\n";
    }
    return text;
}

/// Lines of which no two are alike.
std::string job_of(std::int64_t lines) {
    std::minstd_rand random(5);
    constexpr std::array places{"main halyard", "jib sheet", "outhaul", "tack line", "reef line"};
    std::string text = "name,length,place,load,most_give,end_a,end_a.loop\n";
    for (std::int64_t i = 0; i < lines; ++i) {
        text += "line " + std::to_string(i) + ',' + std::to_string(2000 + i * 37) + " mm," +
                places.at(random() % places.size()) + ',' + std::to_string(100 + random() % 2000) +
                " N,150 mm,bowline,80 mm\n";
    }
    return text;
}

void choose_ropes(benchmark::State& state) {
    FaultSink faults;
    auto catalogue = Catalogue::load(std::array<std::string, 1>{LIBSPLICE_TABLES_DIR}, faults);
    const std::string ropes = list_of(state.range(0));
    Input list = Input::of_text(ropes, "list.csv");
    if (!catalogue || !add_rope_list(list, *catalogue, faults)) {
        std::abort();
    }
    const auto tables = ChoiceTables::open(*catalogue, faults);
    const auto book = Book::open(*std::move(catalogue));
    const std::string job = job_of(state.range(1));
    for (auto _ : state) {
        const Candidates candidates(*book, {});
        Chooser chooser(*book, *tables, candidates, CutSettings(), Preference::cost);
        Input input = Input::of_text(job, "job.csv");
        const auto read = read_job(input, book->field_names(), faults, [&](const JobRow& row) {
            benchmark::DoNotOptimize(chooser.choose(row, faults));
            return true;
        });
        benchmark::DoNotOptimize(read);
    }
    state.SetItemsProcessed(state.iterations() * state.range(1));
}
BENCHMARK(choose_ropes)
    ->Args({500, 500})
    ->Args({5000, 50})
    ->Args({5000, 500})
    ->Unit(benchmark::kMillisecond);

} // namespace
} // namespace libsplice::bench
