// A choice of ropes, for whoever ropes the boat.
#pragma once

#include "libsplice/base/output.h"
#include "libsplice/choose/choice.h"
#include "libsplice/sheet/panel/page.h"
#include "libsplice/sheet/writer.h"
#include "libsplice/units/show.h"

#include <cstddef>
#include <string>
#include <string_view>

namespace libsplice {

/// Every line with its needs and its ropes, and what the cheaper one gives up; then what all lines
/// come to together.
void write_choice(Page& page, const JobChoice& choice, UnitSystem units);

/// One plain sentence: what the cheapest rope that was tried gives up against the chosen one, in
/// millimetres and money; empty if the chosen one is the cheapest, or there is nothing to say.
[[nodiscard]] std::string what_cheaper_gives_up(const LineChoice& line, UnitSystem units);

/// What is not known, and what the choice rests on instead: prices, and how thick it must be; empty
/// if there is nothing to say.
[[nodiscard]] std::string what_is_not_known(const LineChoice& line, Preference preference);

/// `ends 12, load 31`: how many ropes were not shown, by what they fail first.
[[nodiscard]] std::string ropes_that_are_out(const LineChoice& line);

/// The fibres that such a place usually has: `HMPE, polyester`.
[[nodiscard]] std::string usual_in_words(const Needs& needs);

/// The value of a need, by its place in `need_columns`: `30 mm`; empty if it is not asked for.
[[nodiscard]] std::string need_in_words(const Needs& needs, std::size_t need, UnitSystem units);

/// What is said of every line that carries a person.
inline constexpr std::string_view no_rule_for_a_person =
    "The line carries a person. No rule that was read says what such a line must hold, and a "
    "factor is no answer to that. Follow the rope maker's instructions and the rules of the class, "
    "and have the line looked at by somebody who is competent.";

void write_choice_as_text(const JobChoice& choice, Output& output, UnitSystem units);
void write_choice_as_json(const JobChoice& choice, Output& output, UnitSystem units);
void write_choice_as_html(const JobChoice& choice, Output& output, UnitSystem units);

/// By `Format`; there is no CSV of a choice.
inline constexpr ByFormat<void(const JobChoice&, Output&, UnitSystem)> choice_writers{
    write_choice_as_text, nullptr, write_choice_as_json, write_choice_as_html};

} // namespace libsplice
