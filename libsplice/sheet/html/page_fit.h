// How large a piece is set on paper, so that no page splits it.
#pragma once

#include "libsplice/cut/piece.h"

namespace libsplice {

/// How a piece is laid out on a page of A4 or Letter.
struct PageFit {
    double size = 1.0;    ///< of its text; the marks' numbers keep theirs
    bool abreast = false; ///< both ends side by side, instead of one below the other
};

/// The layout that leaves the text largest, or nearly, 1 at the most. `shape_of_drawing` is its
/// height over its width. The heights are estimates; a test in a browser holds them to what is
/// printed.
[[nodiscard]] PageFit fit_on_page(const Piece& piece, double shape_of_drawing);

} // namespace libsplice
