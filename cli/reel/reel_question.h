// What splice reel asks: the pieces of jobs and the rows of a stock, in one vocabulary.
#pragma once

#include "libsplice/base/fault_sink.h"
#include "libsplice/cut/cutter.h"
#include "libsplice/job/stock/stock.h"
#include "libsplice/reel/plan.h"
#include "libsplice/sheet/reel/reel_sheet.h"

#include "cli/progress.h"

#include <span>
#include <string>
#include <vector>

namespace libsplice::cli {

/// Reads jobs, cuts their lines and keeps the pieces as demands of the question.
class PieceGatherer {
  public:
    PieceGatherer(const Book& book, const CutSettings& settings)
        : book_(book), cutter_(book, settings) {}

    /// False where a job cannot be used; its faults have been pushed.
    bool gather(const std::string& job, FaultSink& faults, Progress& progress);

    std::vector<Demand> demands;
    std::vector<RefusedLine> refused;

  private:
    void keep(const Piece& piece);

    const Book& book_;
    Cutter cutter_;
};

/// The rows of a stock, each rope by the name that demands have. Where no row and no table gives a
/// rope's price, a metre of it counts as 1, and its rows say that they have no price. Faults of
/// ropes that are not known are pushed with their place.
[[nodiscard]] std::vector<ReelStock> stock_of(std::span<const StockRow> rows, const Book& book,
                                              FaultSink& faults);

} // namespace libsplice::cli
