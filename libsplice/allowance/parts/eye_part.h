// The eye itself, as every kind with an eye needs it: geometry, rows, marks, limits.
#pragma once

#include "libsplice/allowance/parts/parts.h"

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
    "0 mm: a soft eye",
    false,
    {},
    {},
    FieldRole::pin};
} // namespace field

/// Which of a kind's fields describe the eye.
struct EyeFields {
    std::size_t eye;
    std::size_t pin;
};

/// What a kind calls its eye's rows, the two marks of its throat, tail side first, and its field.
struct EyeWords {
    Item round = Item::eye_legs;
    Item to_bearing = Item::throat_to_bearing;
    MarkName near = MarkName::near_throat;
    MarkName far = MarkName::far_throat;
    std::string_view field = "eye";
};

/// An eye worked out, for rope (or core) of one diameter.
struct EyePart {
    EyeFacts facts;
    EyeWords words;
    SourcedLength round; ///< rope from throat to throat
    Group round_group = Group::own;
    SourcedLength bearing; ///< from the bearing point to the throat
    Length soft_spread;    ///< how far a pin that is not known moves the bearing point
};

/// Works the eye out and checks it: Code::eye_too_small, Code::throat_too_wide (the published limit
/// on the angle at the throat, where a pin is given). Faults name the words' field.
[[nodiscard]] Result<EyePart> read_eye(const Request& request, EyeFields fields, Length diameter,
                                       const EyeWords& words = {});

/// An eye whose shape the kind has found itself.
struct EyeShape {
    Length inside;
    CitationId source{}; ///< of the inside length
    Length pin;          ///< what it is shaped on
    Length legs = {};    ///< how far the legs lie side by side before the throat
};
/// Without the published limits; nothing where the rope does not go round the pin so short.
[[nodiscard]] std::optional<EyePart> bend_eye(const EyeShape& shape, Length diameter,
                                              const EyeWords& words = {});
/// With them, as read_eye().
[[nodiscard]] Result<EyePart> shape_eye(const Request& request, const EyeShape& shape,
                                        Length diameter, const EyeWords& words = {});

/// The bearing point of an eye that bears elsewhere than inside its crown: `bearing` lies between
/// it and the throat, and what it bears on there is `pin` thick.
void bear_elsewhere(EyePart& eye, const SourcedLength& bearing, Length pin);

/// Gives the rope round the eye the spread that comes of a diameter known to `sd` only.
void doubt_diameter(EyePart& eye, Length sd);

/// Rows `rope round the eye`, `throat to bearing point` and, on a soft eye, the spread of a pin
/// that is not known.
void add_eye_rows(End& end, const EyePart& eye);

/// Facts, the loop of the shape, marks near throat, crown and far throat, and a caution where the
/// eye is short for its pin. The end's standing part begins at the far throat.
void lay_eye(End& end, const EyePart& eye, const Request& request, Nanometres near_throat);

} // namespace libsplice
