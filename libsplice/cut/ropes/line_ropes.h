// The ropes of lines: named, described or the job's own, with what the reel in hand says of each.
#pragma once

#include "libsplice/catalogue/catalogue.h"
#include "libsplice/cut/bind/cell_reader.h"

#include <cstddef>
#include <deque>
#include <string>
#include <unordered_map>

namespace libsplice {

/// Owns each distinct rope that lines have; two lines whose reels differ in a fact have two.
class LineRopes {
  public:
    /// The catalogue must outlive this.
    explicit LineRopes(const Catalogue& catalogue) : catalogue_(catalogue) {}

    /// The rope of the line, or null: its faults have then been added to `cells`.
    /// Code::cell_missing, unknown_rope, rope_not_understood, and those of state_facts() at the
    /// facts' own cells.
    [[nodiscard]] const Rope* find(CellReader& cells);
    [[nodiscard]] std::size_t size() const { return ropes_.size(); }

  private:
    [[nodiscard]] std::optional<Rope> make(CellReader& cells) const;

    const Catalogue& catalogue_;
    std::deque<Rope> ropes_;
    std::unordered_map<std::string, const Rope*> by_key_;
};

} // namespace libsplice
