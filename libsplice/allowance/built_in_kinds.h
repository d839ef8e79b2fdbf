// The built-in kinds, in one list.
#pragma once

#include "libsplice/allowance/kind.h"

#include <vector>

namespace libsplice {

/// What a table of rows makes: knots that differ in data only.
using Kinds = std::vector<Kind>;

/// Every built-in kind, in the order in which the documentation lists them.
[[nodiscard]] Kinds built_in_kinds();

/// The one list. It declares the function that makes each kind, or the kinds of a table, and
/// `built_in_kinds` calls each of them, so that nothing can be declared and left out.
#define LIBSPLICE_BUILT_IN_KINDS(ENTRY)                                                            \
    ENTRY(Kind, locked_eye)                                                                        \
    ENTRY(Kind, buried_eye)                                                                        \
    ENTRY(Kind, stripped_eye)                                                                      \
    ENTRY(Kind, core_eye)                                                                          \
    ENTRY(Kind, larked_eye)                                                                        \
    ENTRY(Kind, ring_eye)                                                                          \
    ENTRY(Kind, adjustable_eye)                                                                    \
    ENTRY(Kind, stitched_eye)                                                                      \
    ENTRY(Kind, seized_eye)                                                                        \
    ENTRY(Kind, endless_loop)                                                                      \
    ENTRY(Kind, two_eye_strop)                                                                     \
    ENTRY(Kind, soft_shackle)                                                                      \
    ENTRY(Kind, tucked_eye)                                                                        \
    ENTRY(Kind, cover_core_eye)                                                                    \
    ENTRY(Kind, parallel_core_eye)                                                                 \
    ENTRY(Kind, clipped_eye)                                                                       \
    ENTRY(Kind, ferrule_eye)                                                                       \
    ENTRY(Kind, swaged_fitting)                                                                    \
    ENTRY(Kind, crimped_end)                                                                       \
    ENTRY(Kinds, stopper_knots)                                                                    \
    ENTRY(Kind, stopper_ball)                                                                      \
    ENTRY(Kinds, loop_knots)                                                                       \
    ENTRY(Kinds, hitches)                                                                          \
    ENTRY(Kind, lashing)                                                                           \
    ENTRY(Kind, sheet_bend)                                                                        \
    ENTRY(Kinds, bends)                                                                            \
    ENTRY(Kind, cover_over_join)                                                                   \
    ENTRY(Kind, sewn_join)                                                                         \
    ENTRY(Kind, core_to_core)                                                                      \
    ENTRY(Kind, end_for_end)                                                                       \
    ENTRY(Kind, short_splice)                                                                      \
    ENTRY(Kind, long_splice)                                                                       \
    ENTRY(Kind, whipped)                                                                           \
    ENTRY(Kind, heat_sealed)                                                                       \
    ENTRY(Kind, bare)

#define LIBSPLICE_DECLARE(type, name) type name();
LIBSPLICE_BUILT_IN_KINDS(LIBSPLICE_DECLARE)
#undef LIBSPLICE_DECLARE

} // namespace libsplice
