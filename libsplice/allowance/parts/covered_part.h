// Eyes in covered rope whose cover stays on: what holds of all of them, and those in which cover
// and core both carry.
#pragma once

#include "libsplice/allowance/parts/eye_part.h"

namespace libsplice {

/// Where the slip knot goes that keeps cover and core together, and slack cover to milk out at the
/// line's other end.
void add_slip_knot(End& allowance, const Request& request);

/// A caution, `text`, in rope thinner than the tables' least size for the kind.
void add_small_rope_caution(End& allowance, const Request& request, std::string_view text);

/// Which of a kind's fields describe such a splice.
struct CoveredFields {
    EyeFields eye;
    std::size_t tail;
    std::size_t exit;
};

/// From where an exit is measured: from the throat, or from where the core is entered.
enum class ExitFrom : std::uint8_t { throat, core_entry };

/// An eye in which cover and core are led into each other, all but its steps: beyond the eye lie
/// the tail and the standing part that the splice uses up.
[[nodiscard]] Result<End> covered_eye(const Request& request, CoveredFields fields,
                                      ExitFrom exit_from);

} // namespace libsplice
