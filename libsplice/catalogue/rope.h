// A rope as a table or a job describes it.
#pragma once

#include "libsplice/catalogue/citation.h"
#include "libsplice/catalogue/figure.h"
#include "libsplice/catalogue/rope_stretch.h"
#include "libsplice/catalogue/vocabulary.h"
#include "libsplice/catalogue/words/rope_words.h"
#include "libsplice/units/quantity.h"

#include <optional>
#include <string>

namespace libsplice {

/// A value of a rope's record with its source.
template <class T>
struct Sourced {
    T value{};
    CitationId source{};
};

/// A rope. What no source gives is absent.
struct Rope {
    std::string id;    ///< the table's id, or construction, fibre and diameter in our own words
    std::string title; ///< for people; may equal the id
    Construction construction{};
    Fibre fibre{}; ///< of what bears the load
    FibreGrade grade = FibreGrade::unknown;
    Length diameter;       ///< nominal
    bool imperial = false; ///< sized in inches, which decides the fid rule
    std::optional<Sourced<Length>>
        measured_diameter; ///< replaces the nominal one in counting diameters
    std::optional<Sourced<Length>> core_diameter;
    std::optional<Sourced<Force>> breaking; ///< minimum breaking strength
    /// The strength is a cautious one for any rope of the sort. It never says what a rope that
    /// carries a person holds.
    bool generic_breaking = false;
    std::optional<RopeStretch> stretch;
    std::optional<Figure> braid_constant; ///< K of its own braid, or its core's
    std::optional<Sourced<LineMass>> mass;
    bool generic_mass = false;            ///< likewise of its mass
    std::optional<Sourced<double>> price; ///< of one metre, in the shop's own money
    bool prestretched = false;            ///< sold so
    std::string colour;                   ///< as the table has it; may be empty
    std::string cover;                    ///< likewise
    std::string lot;                      ///< likewise
    bool generic = false; ///< its figures hold for any rope of this construction, fibre and size

    /// The diameter that tails and knots are counted in.
    [[nodiscard]] Length counting_diameter() const {
        return measured_diameter ? measured_diameter->value : diameter;
    }
};

} // namespace libsplice
