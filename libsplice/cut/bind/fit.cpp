// Reads how close a line has to be and what rope it gets over.
#include "libsplice/cut/bind/fit.h"

#include "libsplice/mechanics/chance/spread.h"

#include <array>

namespace libsplice {

namespace {

constexpr std::array<std::string_view, 3> fits{"exact", "trim-aboard", "at-least"};
constexpr Nanometres usual_step = nanometres_per_metre / 200;  // 5 mm
constexpr Nanometres exact_step = nanometres_per_metre / 1000; // 1 mm

} // namespace

std::span<const std::string_view> fit_names() {
    return fits;
}

FitAndSpare bind_fit(const CutSettings& settings, CellReader& cells) {
    FitAndSpare bound;
    const auto given = cells.choice(Column::fit, fits);
    bound.fit = static_cast<Fit>(given.value_or(static_cast<std::size_t>(Fit::at_least)));
    bound.tolerance = cells.length(Column::tolerance, 1);
    if (bound.tolerance && bound.fit != Fit::exact) {
        cells.add(Fault{Code::tolerance_without_exact,
                        "a tolerance goes with fit exact; leave one of them out"},
                  Column::tolerance);
    }
    const Nanometres usual = bound.fit == Fit::exact ? exact_step : usual_step;
    bound.step = settings.step ? to_nanometres(*settings.step) : usual;
    bound.spare_quantile = normal_quantile(1.0 - settings.risk);
    bound.spare = cells.length(Column::spare, 0);
    bound.extra = cells.length(Column::extra, 0).value_or(0);
    bound.wear = cells.length(Column::wear, 0).value_or(0);
    return bound;
}

} // namespace libsplice
