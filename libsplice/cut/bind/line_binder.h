// From a job's line to its plan: names become ropes, kinds and figures, texts become quantities.
#pragma once

#include "libsplice/cut/bind/cell_reader.h"
#include "libsplice/cut/bind/end_table.h"
#include "libsplice/cut/bound_line.h"

#include <deque>
#include <string>
#include <unordered_map>
#include <vector>

namespace libsplice {

/// Binds lines against one book. It owns the ropes and the ends that plans point to; each distinct
/// one is worked out once. Not shared by threads: each has its own.
class LineBinder {
  public:
    /// The book must outlive this.
    LineBinder(const Book& book, const CutSettings& settings);

    /// The plan of a line, or nothing: every fault of the line has then been added to `faults`,
    /// each with its place and field.
    [[nodiscard]] std::optional<LinePlan> bind(const JobLine& line, std::vector<Fault>& faults);

    /// Distinct ropes and ends held; when it grows large, start over with a new binder.
    [[nodiscard]] std::size_t size() const { return ropes_.size() + ends_.size(); }

  private:
    const Rope* find_rope(const JobLine& line, LineFields& fields);

    const Book& book_;
    CutSettings settings_;
    std::deque<Rope> ropes_;
    std::unordered_map<std::string, const Rope*> rope_by_text_;
    EndTable ends_;
};

} // namespace libsplice
