// Which ropes a line can be of, by the ends that it asks for.
#pragma once

#include "libsplice/allowance/book.h"
#include "libsplice/cut/bind/cell_reader.h"

#include <array>

namespace libsplice {

/// Wire and elastic are no rope that could replace one, nor the other way round.
[[nodiscard]] bool are_interchangeable(Construction one, Construction other);

/// Which constructions both ends of a line can be made in. A line that says how far it is pulled
/// out is elastic.
class EndsAllow {
  public:
    EndsAllow(const Book& book, const CellReader& cells);

    [[nodiscard]] bool allows(Construction construction) const {
        return allowed_.at(static_cast<std::size_t>(construction));
    }
    /// Whether the line may be of this, if it does not say what it is made of: of wire or elastic
    /// only if nothing else will do.
    [[nodiscard]] bool may_be(Construction construction) const;

  private:
    std::array<bool, construction_count> allowed_{};
};

} // namespace libsplice
