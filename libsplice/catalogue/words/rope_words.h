// Ropes described in words: construction, fibre and diameter, as the trade writes them.
#pragma once

#include "libsplice/base/result.h"
#include "libsplice/catalogue/vocabulary.h"
#include "libsplice/catalogue/words/aliases.h"
#include "libsplice/units/written_length.h"

#include <string>
#include <string_view>

namespace libsplice {

/// How strong the fibre of a rope is said to be by the reel or its sheet.
enum class FibreGrade : std::uint8_t { unknown, lower, higher };

/// A rope described in place: construction, fibre and diameter.
struct RopeDescription {
    Construction construction{};
    Fibre fibre{}; ///< of what bears the load
    WrittenLength diameter;
    std::string size;          ///< the diameter as it was written: `6 mm`, `1/2 in`
    bool prestretched = false; ///< sold so
    FibreGrade grade = FibreGrade::unknown;

    /// The one way in which such a rope is written here: `double-braid polyester 6 mm`.
    [[nodiscard]] std::string text() const;
};

/// Whether `text` begins with a construction's own name, so that it describes a rope rather than
/// names one.
[[nodiscard]] bool describes_rope(std::string_view text);

/// Reads a rope's size: a length from 0.5 mm to 200 mm with its unit. Code::rope_not_understood.
[[nodiscard]] Result<WrittenLength> read_rope_diameter(std::string_view text);

/// Reads `12-strand HMPE 6 mm`, `1/2 in three-strand polyester`, `HMPE core, polyester cover, 8
/// mm`: in any order and case, with the words of `aliases`. Code::unknown_rope where not one word
/// tells of a construction or a fibre, as in a maker's name; else Code::rope_not_understood, which
/// says what is missing, what could mean two things, or which word is not known.
[[nodiscard]] Result<RopeDescription> read_rope_description(std::string_view text,
                                                            const Aliases& aliases);

/// The construction, or fibre, that a cell of a rope list says, with the words of `aliases`.
/// Code::rope_not_understood.
[[nodiscard]] Result<Construction> read_construction_words(std::string_view text,
                                                           const Aliases& aliases);
[[nodiscard]] Result<Fibre> read_fibre_words(std::string_view text, const Aliases& aliases);

} // namespace libsplice
