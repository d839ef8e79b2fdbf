// A sentence of a piece, with quantities that the sheet shows in its own units.
#pragma once

#include "libsplice/allowance/end.h"
#include "libsplice/base/short_list.h"
#include "libsplice/job/line.h"
#include "libsplice/units/quantity.h"

#include <optional>

namespace libsplice {

/// A quantity in a sentence.
struct TextAmount {
    enum class Sort : unsigned char { length, force, share };
    Sort sort{};
    double value = 0.0; ///< in SI units; a share as a part of one
};
[[nodiscard]] constexpr TextAmount amount_of(Length length) {
    return {TextAmount::Sort::length, length.si()};
}
[[nodiscard]] constexpr TextAmount amount_of(Force force) {
    return {TextAmount::Sort::force, force.si()};
}
[[nodiscard]] constexpr TextAmount share_amount(double share) {
    return {TextAmount::Sort::share, share};
}

/// The most marks of one end of a piece, the trim and the tail end included.
inline constexpr std::size_t most_piece_marks = 26;

/// The amounts of a sentence: `{1}` in its text stands for the first of them.
using TextAmounts = ShortList<TextAmount, 4>;

/// A caution of a piece: a text that may hold an end's values or amounts, and the rule it rests on.
struct PieceCaution {
    Caution caution;
    std::optional<LineEnd> end; ///< none for what concerns the whole line
    TextAmounts amounts = {};
};

} // namespace libsplice
