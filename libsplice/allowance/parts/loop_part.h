// Loop knots: the rope in the loop's legs, in the knot and beyond it.
#pragma once

#include "libsplice/allowance/parts/eye_part.h"
#include "libsplice/allowance/parts/stopper_part.h"

namespace libsplice {

namespace field {
[[nodiscard]] constexpr FieldDeclaration loop_of(std::string_view default_text) {
    return {"loop",
            "inside of the loop's crown (the bearing point) to the knot, loaded on its pin",
            Dimension::length,
            0.005,
            10.0,
            default_text};
}
inline constexpr FieldDeclaration loop = loop_of("3 times the pin, at least 8 D");
} // namespace field

/// Which of a kind's fields describe a loop knot.
struct LoopFields {
    std::size_t loop;
    std::size_t pin;
    std::size_t tail;
};

/// On which side of the loop the knot's rope lies. A barrel round the standing part lies on the
/// tail's side; a loop of doubled rope has a half of its knot on either side; the turns that a
/// bowline makes in its standing part lie there, as figure `standing_side` says.
enum class KnotLies : std::uint8_t { tail_side, both_sides, turned_in_standing_part };

/// How a loop knot lies.
struct LoopShape {
    Span::Form form = Span::Form::nipped;
    double count = 1.0; ///< of its turns or crossings
    KnotLies lies = KnotLies::tail_side;
};

/// A loop knot with its steps: the loop as an eye without a throat of its own, the rope beyond its
/// two legs, and the tail. In slippery rope with the slip caution. Faults name `loop`.
[[nodiscard]] Result<End> lay_loop(const Request& request, LoopFields fields, LoopShape shape,
                                   Steps steps);

} // namespace libsplice
