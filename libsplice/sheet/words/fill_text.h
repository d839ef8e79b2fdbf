// Steps and cautions with their figures filled in.
#pragma once

#include "libsplice/cut/piece.h"
#include "libsplice/units/show.h"

#include <string>
#include <string_view>

namespace libsplice {

/// Where the figures of a text come from.
struct TemplateContext {
    const End& allowance;
    const Names& names;  ///< of its marks and values
    Nanometres over = 0; ///< rope outside the end's own tail end, which its marks are shifted by
    UnitSystem units = UnitSystem::metric;
    TextAmounts amounts = {};    ///< what `{1}` and so on stand for
    std::string_view named = {}; ///< what `{named}` stands for
};

/// A value as a bench reads it: a length in the unit system, an angle in degrees, a plain number.
[[nodiscard]] std::string show_value(const Value& value, const Names& names, UnitSystem units);

/// A value's name without its unit, in words: `take_up_m` is `take up`.
[[nodiscard]] std::string show_name(std::string_view name);

/// Appends `text` with `{tail}` replaced by the value `tail_m`, `{tucks}` by a plain count,
/// `{throat_angle}` by degrees, and `{@far throat}` by the distance of that mark from the piece's
/// cut end; `{1}` by the first amount. A figure that the end does not have stands as `(no figure)`.
void append_filled(std::string& into, std::string_view text, const TemplateContext& filling);

/// The same for a text that belongs to no end: only `{named}`, `{1}` and so on are replaced.
void append_amounts(std::string& into, std::string_view text, const TextAmounts& amounts,
                    UnitSystem units, std::string_view named = {});

} // namespace libsplice
