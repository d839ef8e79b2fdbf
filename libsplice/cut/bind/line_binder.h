// From a job's line to a bound line, against the tables and the kinds of ends.
#pragma once

#include "libsplice/cut/bind/cell_reader.h"
#include "libsplice/cut/bind/end_table.h"
#include "libsplice/cut/bound_line.h"
#include "libsplice/cut/ropes/line_ropes.h"

#include <memory>

namespace libsplice {

/// Binds lines against one book. It owns the ropes and the ends that bound lines point to; each
/// distinct one is worked out once. Not shared by threads: each has its own.
class LineBinder {
  public:
    /// The book must outlive this.
    LineBinder(const Book& book, const CutSettings& settings);

    /// The line, or nothing: every fault of it has then been added to `cells`.
    [[nodiscard]] std::unique_ptr<const BoundLine> bind(CellReader& cells);

    /// Distinct ropes and ends held; when it grows large, start over with a new binder.
    [[nodiscard]] std::size_t size() const { return ropes_.size() + ends_.size(); }

  private:
    const Book& book_;
    CutSettings settings_;
    LineRopes ropes_;
    EndTable ends_;
};

} // namespace libsplice
