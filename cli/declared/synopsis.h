// A command's synopsis taken apart: what may stand at which place after the command.
#pragma once

#include <cstddef>
#include <string_view>
#include <vector>

namespace libsplice::cli {

/// One place of a form.
struct Slot {
    std::vector<std::string_view> texts; ///< a placeholder, or the words that may stand here
    bool repeats = false;                ///< may be given again
};

/// One way to write the words after the command, options left out.
using Form = std::vector<Slot>;

/// The forms of a synopsis such as `JOB LINE | stretch ROPE load=PULL [length=LENGTH]`.
[[nodiscard]] std::vector<Form> forms_of(std::string_view synopsis);

/// The placeholder that a synopsis begins with.
[[nodiscard]] std::string_view first_placeholder(std::string_view synopsis);
/// Whether a text of a slot is a placeholder, in capitals.
[[nodiscard]] bool is_placeholder(std::string_view text);
/// Whether it is `name=VALUE` with a name of its own, which may stand in any order.
[[nodiscard]] bool is_assignment(std::string_view text);

} // namespace libsplice::cli
