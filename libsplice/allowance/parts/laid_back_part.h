// Eyes whose tail lies back along the standing part and is held there from outside.
#pragma once

#include "libsplice/allowance/parts/eye_part.h"

namespace libsplice {

/// The strength that rope keeps in a bend of `ratio` of its own diameters, by the printed ratios;
/// nothing where none is printed for it, or the bend is sharper than any that is.
[[nodiscard]] std::optional<Retained> retained_over(const Rules& rules, double ratio);

/// How the tail of a stitched or seized eye lies.
struct LapPart {
    SourcedLength tail;   ///< the whole end beyond the throat
    Length held;          ///< from the throat, how far the stitching or the first seizing reaches
    MarkName held_mark{}; ///< where that ends on the standing part
    ValueName held_value{};
    Span::Form holds{};                      ///< stitched or seized
    std::string_view tail_field = "overlap"; ///< what faults call the tail
};

/// An eye whose tail is stitched or seized to the standing part, all but its steps. The tail's end
/// is sealed where the rope allows it. Code::field_out_of_range for `tail_field` where the tail is
/// shorter than what holds it. No source says what stitches or seizings hold: a caution, and a
/// refusal for a person.
[[nodiscard]] Result<End> eye_with_lap(const Request& request, const EyePart& eye,
                                       const LapPart& lap);

/// What an eye in wire is made of whose end is turned back.
struct TurnedBackPart {
    EyePart eye;
    SourcedLength turned; ///< from the throat to the wire's end
    Span::Form held{};    ///< what holds the turned-back wire: clips, or a sleeve
    double count = 1.0;   ///< of clips or sleeves
};

/// The words of its eye: the mark at the near throat is where the turn-back starts.
inline constexpr EyeWords turned_back_words{.near = MarkName::turn_back};

/// All of such an eye but its steps, with the strength that the wire keeps where it bends round its
/// pin, by the printed ratios; a caution where the pin is thinner than any that is printed.
[[nodiscard]] End turned_back_eye(const Request& request, const TurnedBackPart& part);

} // namespace libsplice
