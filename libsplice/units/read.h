// Lengths, tensions and plain numbers as people write them.
#pragma once

#include "libsplice/base/result.h"
#include "libsplice/units/quantity.h"
#include "libsplice/units/tension.h"
#include "libsplice/units/unit.h"
#include "libsplice/units/written_length.h"

#include <cstdint>
#include <optional>
#include <span>
#include <string_view>

namespace libsplice {

/// Reads a length: a number and a unit (`6.4 m`, `60 mm`, `3/8 in`, `1 1/2 in`, `12 ft 6 in`), or a
/// bare number where `bare` gives the unit (from a heading). ASCII digits only; a sign is allowed;
/// the result is finite. Faults, all Code::not_a_length with a hint: a bare number without `bare`,
/// a decimal comma, inches of 12 or over after feet, a zero denominator, an unknown unit, anything
/// left over. The fault has no place; the caller knows it.
[[nodiscard]] Result<WrittenLength> read_length(std::string_view text,
                                                std::optional<LengthUnit> bare = std::nullopt);

/// Reads `600 N`, `1.2 kN`, `60 kgf`, `60 kg` (the same), `135 lbf`, `30 %`; zero is allowed,
/// negative values and shares over 100 % are not. Code::not_a_tension.
[[nodiscard]] Result<Tension> read_tension(std::string_view text);

/// Reads a plain number: digits, a point, an exponent; finite. Code::not_a_number.
[[nodiscard]] Result<double> read_number(std::string_view text);

/// Reads a number that may be a fraction, as inches are printed: `12`, `0.5`, `3/8`, `11 1/2`.
/// Code::not_a_number.
[[nodiscard]] Result<double> read_mixed_number(std::string_view text);

/// What a number without a percent sign counts in.
enum class BareShare : std::uint8_t { ones, percent };
/// Reads a share: `30 %` is 0.3. A bare number is taken as `bare` says: 0.3 is 30 %, or 30 is.
/// Code::not_a_number.
[[nodiscard]] Result<double> read_share(std::string_view text, BareShare bare = BareShare::ones);

/// Reads a number with one of `units` behind it, as `1.2 kN`, and gives it in SI: over 0 and
/// finite. `what` is what the quantity is called in the message. Code::not_a_number.
[[nodiscard]] Result<double> read_quantity(std::string_view text, std::span<const Unit> units,
                                           std::string_view what);

/// Reads a whole number from `lowest` to `highest`. Code::not_a_number.
[[nodiscard]] Result<std::int64_t> read_count(std::string_view text, std::int64_t lowest,
                                              std::int64_t highest);

} // namespace libsplice
