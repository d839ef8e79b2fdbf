// A choice of ropes, for whoever ropes the boat.
#pragma once

#include "libsplice/catalogue/citation.h"
#include "libsplice/choose/choice.h"
#include "libsplice/sheet/panel/page.h"
#include "libsplice/units/show.h"

#include <string>

namespace libsplice {

/// What is written: the choice, with the citations that its needs rest on.
struct ChoiceSheet {
    const JobChoice& choice;
    const Citations& citations;
};

/// Every line with its needs and its ropes, and what the cheaper one gives up.
void write_choice(Page& page, const ChoiceSheet& sheet, UnitSystem units);

/// One plain sentence: what the cheapest rope that was tried gives up against the chosen one, in
/// millimetres and money; empty where the chosen one is the cheapest, or there is nothing to say.
[[nodiscard]] std::string what_cheaper_gives_up(const LineChoice& line, UnitSystem units);

/// The need's word with its value and its source: `most_give 30 mm (job)`.
[[nodiscard]] std::string need_in_words(const Needs& needs, std::size_t need, UnitSystem units);

} // namespace libsplice
