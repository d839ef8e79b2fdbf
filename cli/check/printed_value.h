// A value as print gives it: what it is, and how exactly it is stated.
#pragma once

#include "libsplice/base/result.h"

#include <cstdint>
#include <string>
#include <string_view>

namespace libsplice::cli {

/// What sort of value an answer is. Inside it is a number in SI units; an angle is in degrees, a
/// share is 0.434 for 43.4 %.
enum class Measure : std::uint8_t { length, force, degrees, share, number };

/// A printed value.
struct PrintedValue {
    double value = 0.0;
    double half_digit = 0.0; ///< half of the last printed digit, in the same unit as the value
};

/// Reads `360 mm`, `10 1/2 in`, `25.2 kN`, `23.27 deg`, `43.4 %` or `3`, as the measure asks.
/// Code::not_a_length, Code::not_a_tension or Code::not_a_number.
[[nodiscard]] Result<PrintedValue> read_printed_value(std::string_view text, Measure measure);

/// How far an answer may lie from `printed`: `1 %` is a share of the printed value, anything else a
/// value of the same sort. Faults as above, and Code::value_out_of_range for less than nothing.
[[nodiscard]] Result<double> read_tolerance(std::string_view text, Measure measure,
                                            const PrintedValue& printed);

/// The answer in the units of print, with enough digits to see the difference.
[[nodiscard]] std::string show_answer(double value, Measure measure);

} // namespace libsplice::cli
