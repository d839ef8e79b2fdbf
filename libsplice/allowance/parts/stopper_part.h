// Stopper knots: the rope that lies beyond the knot's face.
#pragma once

#include "libsplice/allowance/parts/parts.h"

namespace libsplice {

namespace field {
inline constexpr FieldDeclaration set{
    "set",
    "rope in the knot as set by hand, as a multiple of the knot at its tightest",
    Dimension::ratio,
    0.7,
    2.0,
    "the table's figure for the construction"};
} // namespace field

/// What the rope beyond a stopper is called, and which figure gives it where the job does not.
struct BeyondKnot {
    Item item = Item::tail;
    ValueName value = ValueName::tail_m;
    FigureId figure = FigureId::tail;
};
/// Behind the stopper of an end whose `tail` is something else.
inline constexpr BeyondKnot left_behind_stopper{Item::end_left, ValueName::end_left_m,
                                                FigureId::end_left};

namespace field {
inline constexpr FieldDeclaration hole{.name = "hole",
                                       .meaning =
                                           "diameter of the hole that the knot must not go through",
                                       .dimension = Dimension::length,
                                       .lowest = 0.0005,
                                       .highest = 0.5,
                                       .default_text = "none; it is not compared"};
} // namespace field

/// Which of a kind's fields describe a stopper.
struct StopperFields {
    std::size_t set;
    std::size_t beyond; ///< the rope beyond it
    BeyondKnot beyond_is = {};
    std::optional<std::size_t> hole = {}; ///< what the knot is compared with
};

/// What lies beyond a stopper's face.
struct StopperPart {
    std::optional<SourcedLength> ball = {}; ///< a ball or ferrule threaded on before the knot
    SourcedLength knot = {}; ///< rope used up: its length less the distance of its ends
    Length width = {};       ///< across the line, at its tightest; 0: not known
    std::optional<SourcedLength> body = {}; ///< length along the rope, where `knot` leaves it out
    SourcedLength beyond = {};              ///< rope beyond it
    BeyondKnot beyond_is = {};
    Span::Form form = Span::Form::knot; ///< how the knot is drawn
    double count = 0.0;                 ///< of its crossings or turns; 0: not said
};

/// Code::field_out_of_range where the hole is as wide as the tightest knot, or wider.
[[nodiscard]] Result<StopperPart> read_stopper(const Request& request, StopperFields fields);

/// All of a stopper but its steps: rows, marks and values, with the ball outermost.
[[nodiscard]] End lay_stopper(const Request& request, const StopperPart& stopper);

/// A stopper knot, read and laid, with its steps. `crossings` are those of its plainest picture.
[[nodiscard]] Result<End> lay_stopper_knot(const Request& request, StopperFields fields,
                                           double crossings, Steps steps);

} // namespace libsplice
