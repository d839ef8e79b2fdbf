// The load of a line: stated, or worked out of what the job says of a sail, a block or a boat.
#pragma once

#include "libsplice/catalogue/catalogue.h"
#include "libsplice/cut/bind/cell_reader.h"
#include "libsplice/cut/bound_line.h"

#include <optional>

namespace libsplice {

/// A load, and how it was worked out.
struct StatedLoad {
    Force force;
    std::optional<LoadWorking> working; ///< nothing: the job states it as a force
};

/// Reads the column load; nothing where it is empty or wrong. Code::not_a_tension for what is no
/// force, the faults of read_load_words(), Code::value_out_of_range for a mainsheet that is taken
/// at or ahead of the mast, Code::figure_missing where no table has the formula's figure.
[[nodiscard]] std::optional<StatedLoad> read_load(const Catalogue& catalogue, CellReader& cells);

} // namespace libsplice
