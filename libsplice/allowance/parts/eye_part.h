// The eye itself, as every kind with an eye needs it: geometry, rows, marks, limits.
#pragma once

#include "libsplice/allowance/kind.h"

namespace libsplice {

/// The fields that describe an eye, for the declarations of kinds.
namespace field {
[[nodiscard]] constexpr FieldDeclaration eye_of(std::string_view default_text) {
    return {
        "eye",
        "inside of the crown (the bearing point) to the throat, straight, with the pin in place",
        Dimension::length,
        0.001,
        10.0,
        default_text};
}
inline constexpr FieldDeclaration eye = eye_of("3 times the pin, at least 8 D");
inline constexpr FieldDeclaration pin{
    "pin",
    "diameter of the pin, ring or thimble groove in the eye; 0 is a soft eye",
    Dimension::length,
    0.0,
    1.0,
    "0 mm: a soft eye"};
} // namespace field

/// Which of a kind's fields describe the eye.
struct EyeFields {
    std::size_t eye;
    std::size_t pin;
};

/// An eye worked out for rope (or core) of one diameter.
struct EyePart {
    Length rope; ///< diameter of what goes round
    Length pin;
    Length inside;     ///< crown to throat
    Length rope_round; ///< throat to throat
    Angle throat_angle;
    CitationId source{}; ///< of the inside length
    Length soft_spread;  ///< how far a pin that is not known moves the bearing point; 0 with a pin
    Length legs{};       ///< how far the legs lie side by side before the throat; behind a ring
};

/// Works the eye out and checks it: Code::eye_too_small, Code::throat_too_wide (the published limit
/// on the angle at the throat, where a pin is given).
[[nodiscard]] Result<EyePart> read_eye(const Request& request, EyeFields fields, Length rope);
/// The same for a length and a pin that the kind has found itself; `source` is the length's.
[[nodiscard]] Result<EyePart> shape_eye(const Request& request, Length inside, CitationId source,
                                        Length pin, Length rope);

/// Rows `rope round the eye`, `throat to bearing point` and, on a soft eye, the spread of a pin
/// that is not known.
void add_eye_rows(End& allowance, const EyePart& eye);
/// What a kind calls the two marks of its throat, tail side first.
struct ThroatMarks {
    MarkName near = MarkName::near_throat;
    MarkName far = MarkName::far_throat;
};
/// Marks near throat, crown and far throat; the end's standing part begins at the far throat.
void add_eye_marks(End& allowance, const EyePart& eye, Nanometres near_throat,
                   ThroatMarks names = {});
/// Values, the loop of the shape, and a caution where the eye is short for its pin.
void add_eye_facts(End& allowance, const EyePart& eye, const Request& request,
                   Nanometres near_throat);

} // namespace libsplice
