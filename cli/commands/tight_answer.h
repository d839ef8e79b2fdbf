// What `splice tighten` answers, and how it is written.
#pragma once

#include "libsplice/mechanics/knots/tighten_on_pin.h"
#include "libsplice/sheet/writer.h"

#include <cstdint>
#include <optional>
#include <string>

namespace libsplice::cli {

/// A knot drawn up. Lengths in rope diameters.
struct TightAnswer {
    std::string knot;
    double consumed = 0.0;
    double mesh = 0.0;
    double clearance = 0.0;
    std::int64_t determinant_before = 0;
    std::int64_t determinant_after = 0;
    /// Of a knot round a pin.
    struct Pin {
        double diameter = 0.0;
        PinHold hold{};
        double turns = 0.0;
    };
    std::optional<Pin> pin = {};

    /// Rope in a hitch besides its turns; below 0 where it does not go all the way round with them.
    [[nodiscard]] std::optional<double> beyond_turns() const;
};

[[nodiscard]] TightAnswer answer_of(const TightKnot& tight);
[[nodiscard]] TightAnswer answer_of(const TightPinKnot& tight, const PinShape& shape);

/// As text, CSV or JSON.
void write_answer(const TightAnswer& answer, Format format, Output& output);

} // namespace libsplice::cli
