// The outline of a rope's end that is laid out straight, part by part.
#pragma once

#include <span>
#include <string>
#include <vector>

namespace libsplice {

/// A stretch of rope in a drawing, along x. Units are the drawing's.
struct OutlinePart {
    enum class Form : unsigned char {
        even,    ///< of one width
        pointed, ///< thinned out towards `from`
        bulging, ///< a knot: wider in its middle, and lumpy
    };
    Form form = Form::even;
    double from = 0.0; ///< nearer to the cut end, on whichever side that lies
    double to = 0.0;
    double half_width = 0.0; ///< over 0
    int lumps = 0;           ///< of a knot; 0: as many as are round
};

/// The union of all parts about the line y = 0, as the `d` of an SVG path. Empty without parts.
[[nodiscard]] std::string outline_path(std::span<const OutlinePart> parts, double y);

} // namespace libsplice
