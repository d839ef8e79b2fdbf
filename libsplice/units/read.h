// Lengths, tensions and plain numbers as people write them.
#pragma once

#include "libsplice/base/result.h"
#include "libsplice/units/quantity.h"

#include <cstdint>
#include <optional>
#include <string_view>

namespace libsplice {

/// A unit of length as written: the heading `length [m]` or the `mm` of `60 mm`.
enum class LengthUnit : std::uint8_t { mm, cm, m, in, ft };

/// The unit named by `text` (`mm`, `cm`, `m`, `in`, `ft`), or nothing.
[[nodiscard]] std::optional<LengthUnit> read_length_unit(std::string_view text);

/// How a length was written, which decides e.g. which fid rule holds for a rope's diameter.
struct WrittenLength {
    Length length;
    bool imperial = false; ///< written in inches or feet
};

/// Reads a length: a number and a unit (`6.4 m`, `60 mm`, `3/8 in`, `1 1/2 in`, `12 ft 6 in`), or a
/// bare number where `bare` gives the unit (from a heading). ASCII digits only; a sign is allowed;
/// the result is finite. Faults, all Code::not_a_length with a hint: a bare number without `bare`,
/// a decimal comma, inches of 12 or over after feet, a zero denominator, an unknown unit, anything
/// left over. The fault has no place; the caller knows it.
[[nodiscard]] Result<WrittenLength> read_length(std::string_view text,
                                                std::optional<LengthUnit> bare = std::nullopt);

/// A pull on the rope: a force, or a share of the rope's minimum breaking strength.
struct Tension {
    enum class Basis : std::uint8_t { reference, force, share };
    Basis basis = Basis::reference; ///< reference: the rope's reference tension (none was given)
    double value = 0.0;             ///< newtons for `force`, 0.3 for 30 % for `share`; else 0

    friend bool operator==(const Tension&, const Tension&) = default;
};

/// Reads `600 N`, `1.2 kN`, `60 kgf`, `135 lbf`, `30 %`; zero is allowed, negative values and
/// shares over 100 % are not. Code::not_a_tension.
[[nodiscard]] Result<Tension> read_tension(std::string_view text);

/// Reads a plain number: digits, a point, an exponent; finite. Code::not_a_number.
[[nodiscard]] Result<double> read_number(std::string_view text);

/// Reads a whole number from `lowest` to `highest`. Code::not_a_number.
[[nodiscard]] Result<std::int64_t> read_count(std::string_view text, std::int64_t lowest,
                                              std::int64_t highest);

} // namespace libsplice
