// The marks of an end as a table: a running tape and the gaps, since a tape slips.
#pragma once

#include "libsplice/cut/piece.h"
#include "libsplice/sheet/panel/page.h"
#include "libsplice/units/show.h"

#include <span>
#include <string>
#include <vector>

namespace libsplice {

/// The marks of one end of a piece.
[[nodiscard]] std::span<const PieceMark> marks_of(const Piece& piece, LineEnd end);
/// The marks of an end alone, as those of a piece whose rope ends where this end's tail does.
[[nodiscard]] std::vector<PieceMark> marks_of(const End& allowance);

/// The numbers of the marks that a step names, in the step's order; `marks` are those of its end. A
/// mark that this end does not have is left out.
[[nodiscard]] std::vector<std::size_t> numbers_of(const Step& step,
                                                  std::span<const PieceMark> marks);

/// From the cut end, and each from the mark before.
void write_marks(Page& page, std::span<const PieceMark> marks, const Names& names,
                 UnitSystem units);

} // namespace libsplice
