// How much a rope stretches under a load, and which size of another sort stretches no more.
#pragma once

#include "libsplice/allowance/book.h"
#include "libsplice/base/result.h"
#include "libsplice/units/tension.h"

#include <optional>
#include <string_view>
#include <vector>

namespace libsplice {

/// A rope under a load.
struct RopeUnderLoad {
    Rope rope;
    double strain = 0.0; ///< from no load
    Length longer;       ///< of the length that was asked about
    Length sd;
    CitationId source{};
};

/// `length` of `rope` under `load`. Code::stretch_missing, Code::strength_missing,
/// Code::beyond_stretch.
[[nodiscard]] Result<RopeUnderLoad> under_load(const Book& book, const Rope& rope,
                                               const Tension& load, Length length);

/// What stretches no more than a rope does.
struct EqualStretch {
    RopeUnderLoad known; ///< the rope that is to be replaced
    RopeUnderLoad base;  ///< the rope of the other sort that the size is reckoned from
    double softer = 0.0; ///< how many times more the base stretches: the ratio of EA
    /// The diameter that stretches just as much; nothing where print stops below that stretch.
    std::optional<Length> size;
    std::vector<RopeUnderLoad> sizes; ///< of that sort in the tables, by diameter
    /// The smallest of them that stretches no more, and the first that is larger than the rope
    /// replaced; indices into `sizes`.
    std::optional<std::size_t> no_more;
    std::optional<std::size_t> one_size_up;
};

/// `against` is a construction and a fibre, such as `double-braid polyester`, of which the table's
/// rope nearest in size is the base, or a rope, which is the base itself. Faults as for
/// under_load(), and Code::rope_not_understood.
[[nodiscard]] Result<EqualStretch> size_for_equal_stretch(const Book& book, const Rope& rope,
                                                          const Tension& load, Length length,
                                                          std::string_view against);

} // namespace libsplice
