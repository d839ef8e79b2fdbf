// The load of a line: stated, or worked out from a sail, a block or a boat.
#pragma once

#include "libsplice/catalogue/catalogue.h"
#include "libsplice/cut/bind/cell_reader.h"
#include "libsplice/cut/sentence.h"

#include <optional>

namespace libsplice {

/// A load, and where it comes from.
struct StatedLoad {
    Force force;
    CitationId source = cited_job;
    std::optional<PieceCaution> note; ///< of a load that is worked out: how, and its limits
};

/// Reads the column load; nothing where it is empty or wrong. Code::not_a_tension for what is no
/// force, the faults of read_load_words(), Code::value_out_of_range for a mainsheet that is taken
/// at or ahead of the mast.
[[nodiscard]] std::optional<StatedLoad> read_load(const Catalogue& catalogue, CellReader& cells);

} // namespace libsplice
