// How long a made line is at other pulls than the one that its length was asked at.
#pragma once

#include "libsplice/cut/piece.h"
#include "libsplice/units/tension.h"

namespace libsplice {

/// Sets the piece's stretch at its load from its bound line and its loaded length.
void add_stretch(const BoundLine& line, Piece& piece);

/// Sets its lengths at several pulls, from the same.
void add_lengths(const BoundLine& line, Piece& piece);

} // namespace libsplice
