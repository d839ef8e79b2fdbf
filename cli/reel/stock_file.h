// The shop's stock on disk: read, held so that no other run changes it, and written again whole or
// not at all.
#pragma once

#include "libsplice/base/fault_sink.h"
#include "libsplice/base/result.h"
#include "libsplice/job/stock/stock.h"
#include "libsplice/reel/plan.h"

#include <memory>
#include <span>
#include <string>
#include <vector>

namespace libsplice::cli {

class StockFile {
  public:
    /// Reads the stock; `-` is standard input. With `hold` no other run can hold it until this is
    /// gone (Code::stock_locked). Every fault is pushed; the first is the result.
    [[nodiscard]] static Result<StockFile> open(const std::string& path, bool hold,
                                                FaultSink& faults);
    StockFile(StockFile&&) noexcept;
    StockFile& operator=(StockFile&&) noexcept;
    ~StockFile();

    [[nodiscard]] std::span<const StockRow> rows() const { return rows_; }

    /// Writes the stock as it is after the cuts of a plan. The file as it was is kept under its
    /// name with `.previous` behind it. Each is written beside its place, synced and renamed, so
    /// that at any instant the stock is the old or the new one. Code::stock_changed where the file
    /// is not as it was read; Code::cannot_write. Expects a stock that is held.
    [[nodiscard]] Result<bool> write_after(const ReelPlan& plan) const;

  private:
    struct Held;
    StockFile(std::string path, std::string text);
    [[nodiscard]] Result<bool> hold();

    std::string path_;
    std::string text_; ///< as it was read
    std::vector<StockRow> rows_;
    std::unique_ptr<Held> held_;
};

/// The rows after the cuts. A reel that was cut into keeps its id, place and kind, with the length
/// that is left on it, if that is usable; where only some of a row were, the others keep them, and
/// what is left follows under the id with a number behind it. What was ordered beyond the cuts
/// comes as reels.
[[nodiscard]] std::vector<StockRow> rows_after(std::span<const StockRow> rows,
                                               const ReelPlan& plan);

} // namespace libsplice::cli
