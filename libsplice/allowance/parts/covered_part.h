// Covered rope: its core, the slip knot that holds it in its cover, and eyes in which cover and
// core both carry.
#pragma once

#include "libsplice/allowance/parts/eye_part.h"

namespace libsplice {

namespace field {
inline constexpr FieldDeclaration core{"core",
                                       "diameter of the core",
                                       Dimension::length,
                                       0.0003,
                                       0.2,
                                       "the rope's own figure, else 0.7 of its diameter",
                                       false,
                                       {},
                                       {},
                                       FieldRole::core};
} // namespace field

/// The core's diameter: the field, the rope's record, or the tables' share of the nominal diameter.
struct CorePart {
    Length diameter;
    Length sd; ///< of the diameter; 0 where it is known
    CitationId source{};
    bool assumed = false; ///< neither the job nor the rope's record gives it
};

/// Code::figure_missing where no source gives even a share, Code::field_out_of_range where the core
/// would be as thick as the rope.
[[nodiscard]] Result<CorePart> read_core(const Request& request, std::size_t field);

/// What is said of an assumed core where every length of the splice is counted in it.
inline constexpr std::string_view core_is_assumed =
    "the core's diameter is assumed, not known: measure it and give it as core, for every length "
    "of this splice is counted in it";

/// A caution, `text`, where the core's diameter is assumed.
void add_core_caution(End& end, const CorePart& core, std::string_view text = core_is_assumed);

/// Where the slip knot goes that keeps cover and core together, and slack cover to milk out at the
/// line's other end.
void add_slip_knot(End& end, const Request& request);

/// A caution, `text`, in rope thinner than the tables' least size for the kind.
void add_small_rope_caution(End& end, const Request& request, std::string_view text);

/// Which of a kind's fields describe such a splice.
struct CoveredFields {
    EyeFields eye;
    std::size_t tail;
    std::size_t exit;
    std::optional<std::size_t> core_out; ///< where core and cover are led into each other
};

/// An eye whose core is led back through the cover of the eye, all but its steps: beyond the eye
/// lie the tail and the standing part that the splice uses up. With `core_out` the cover's tail is
/// led into the core besides, and the exit is measured from where it enters; without it the core's
/// tail alone is held, under the cover, and the exit is measured from the throat.
[[nodiscard]] Result<End> covered_eye(const Request& request, CoveredFields fields);

} // namespace libsplice
