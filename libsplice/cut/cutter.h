// One line of a job after the other becomes a piece.
#pragma once

#include "libsplice/base/fault_sink.h"
#include "libsplice/cut/bind/line_binder.h"
#include "libsplice/cut/pairs.h"
#include "libsplice/cut/piece.h"
#include "libsplice/job/read_job.h"

#include <cstddef>
#include <memory>
#include <string>
#include <unordered_map>
#include <vector>

namespace libsplice {

/// What a run came to.
struct Counts {
    std::size_t lines = 0;   ///< rows of the job
    std::size_t pieces = 0;  ///< lines times their quantities, refused ones left out
    std::size_t refused = 0; ///< lines that cannot be cut
};

/// Cuts lines against a book. Lines that are made alike share one bound line, so that a long job of
/// few sorts costs an addition a line. Not shared by threads.
class Cutter {
  public:
    /// The book must outlive this.
    Cutter(const Book& book, const CutSettings& settings);

    /// Works one row out. Its faults go to `faults`, all of them; the piece carries the first. The
    /// piece and what it borrows live until the next call.
    [[nodiscard]] const Piece& cut(const JobRow& row, FaultSink& faults);

    [[nodiscard]] const Counts& counts() const { return counts_; }

  private:
    const BoundLine* find_line(CellReader& cells);
    void work_out(CellReader& cells);
    const Piece& refuse(const Fault& fault);

    const Book& book_;
    CutSettings settings_;
    std::unique_ptr<LineBinder> binder_;
    std::unordered_map<std::string, std::unique_ptr<const BoundLine>> lines_;
    std::string plan_key_;
    PairBook pairs_;
    std::vector<Fault> row_faults_;
    Fault first_fault_{};
    Piece piece_;
    Counts counts_;
};

} // namespace libsplice
