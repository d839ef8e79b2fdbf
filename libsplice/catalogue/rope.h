// A rope as a table or a job describes it.
#pragma once

#include "libsplice/base/result.h"
#include "libsplice/catalogue/citation.h"
#include "libsplice/catalogue/figure.h"
#include "libsplice/catalogue/rope_stretch.h"
#include "libsplice/catalogue/vocabulary.h"
#include "libsplice/units/quantity.h"
#include "libsplice/units/read.h"

#include <optional>
#include <string>
#include <string_view>

namespace libsplice {

/// A value of a rope's record with its source.
template <class T>
struct Sourced {
    T value{};
    CitationId source{};
};

/// A rope. What no source gives is absent.
struct Rope {
    std::string id;    ///< the table's id, or construction, fibre and diameter as they were written
    std::string title; ///< for people; may equal the id
    Construction construction{};
    Fibre fibre{};         ///< of what bears the load
    Length diameter;       ///< nominal
    bool imperial = false; ///< sized in inches, which decides the fid rule
    std::optional<Sourced<Length>>
        measured_diameter; ///< replaces the nominal one in counting diameters
    std::optional<Sourced<Length>> core_diameter;
    std::optional<Sourced<Force>> breaking; ///< minimum breaking strength
    std::optional<RopeStretch> stretch;
    std::optional<Figure> braid_constant; ///< K of its own braid, or its core's
    std::optional<Sourced<LineMass>> mass;
    std::optional<Sourced<double>> price; ///< of one metre, in the shop's own money
    std::string colour;                   ///< as the table has it; may be empty
    bool generic = false; ///< its figures hold for any rope of this construction, fibre and size

    /// The diameter that tails and knots are counted in.
    [[nodiscard]] Length counting_diameter() const {
        return measured_diameter ? measured_diameter->value : diameter;
    }
};

/// A rope described in place: construction, fibre and diameter.
struct RopeDescription {
    Construction construction{};
    Fibre fibre{};
    WrittenLength diameter;
};

/// Whether `text` begins with a construction's name, so that it describes a rope rather than names
/// one.
[[nodiscard]] bool describes_rope(std::string_view text);

/// Reads a rope's size: a length from 0.5 mm to 200 mm with its unit. Code::rope_not_understood.
[[nodiscard]] Result<WrittenLength> read_rope_diameter(std::string_view text);

/// Reads `12-strand HMPE 6 mm`, `3-strand polyester 1/2 in`. Diameters from 0.5 mm to 200 mm.
/// Code::rope_not_understood names the nearest word.
[[nodiscard]] Result<RopeDescription> read_rope_description(std::string_view text);

} // namespace libsplice
