// What it costs to pull a knot tight, and how far from print it ends.
#include "libsplice/mechanics/knots/knot_shapes.h"
#include "libsplice/mechanics/knots/loose_knot.h"
#include "libsplice/mechanics/knots/pin_shapes.h"
#include "libsplice/mechanics/knots/tighten.h"
#include "libsplice/mechanics/knots/tighten_on_pin.h"

#include <benchmark/benchmark.h>

#include <cmath>

namespace libsplice::bench {
namespace {

/// The mesh in hundredths of a diameter; `printed` is what is published, in diameters.
void pull(benchmark::State& state, const std::vector<Point>& points, double printed) {
    const auto loose = loose_rope(points);
    const auto* rope = std::get_if<Curve>(&loose);
    if (rope == nullptr) {
        state.SkipWithError("this is no rope");
        return;
    }
    const double mesh = static_cast<double>(state.range(0)) / 100.0;
    double consumed = 0.0;
    for (auto _ : state) {
        consumed = tighten(*rope, mesh).consumed();
        benchmark::DoNotOptimize(consumed);
    }
    state.counters["error_percent"] = 100.0 * std::abs(consumed / printed - 1.0);
}

void overhand(benchmark::State& state) {
    pull(state, wound_through_loop(1), 10.1);
}
void figure_eight(benchmark::State& state) {
    pull(state, twisted_bight(2), 13.7);
}
/// Nothing is printed of knots round a pin.
void pull_on_pin(benchmark::State& state, const std::vector<Point>& points, double pin,
                 PinHold hold) {
    const double mesh = static_cast<double>(state.range(0)) / 100.0;
    for (auto _ : state) {
        benchmark::DoNotOptimize(tighten_on_pin({points, false}, pin, hold, mesh));
    }
}
void figure_eight_loop(benchmark::State& state) {
    pull_on_pin(state, doubled_figure_eight(1.0, {}), 1.0, PinHold::loop);
}
void clove_hitch(benchmark::State& state) {
    pull_on_pin(state, clove_hitch_drawn(4.0, 1.4), 4.0, PinHold::hitch);
}
BENCHMARK(overhand)->Arg(20)->Arg(10)->Arg(5)->Unit(benchmark::kSecond);
BENCHMARK(figure_eight)->Arg(20)->Arg(10)->Arg(5)->Unit(benchmark::kSecond);
BENCHMARK(figure_eight_loop)->Arg(20)->Arg(10)->Arg(5)->Unit(benchmark::kSecond);
BENCHMARK(clove_hitch)->Arg(20)->Arg(10)->Arg(5)->Unit(benchmark::kSecond);

} // namespace
} // namespace libsplice::bench
