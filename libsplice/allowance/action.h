// What is done at the bench, one action at a time, on named marks.
#pragma once

#include "libsplice/allowance/names.h"

#include <gsl/assert>

#include <array>
#include <cstddef>
#include <cstdint>
#include <initializer_list>
#include <span>
#include <string_view>

namespace libsplice {

/// What a step does to the rope.
enum class Action : std::uint8_t {
    mark,
    tape,
    cut,
    trim,
    whip,
    seal,
    stitch,
    seize,
    unlay,
    strip,
    draw_core,
    slip_knot,
    fit_first,
    taper,
    lead_in,
    pass_tail_through_host,
    pass_line_through_tail,
    turn_eye_through,
    bring_together,
    bury,
    smooth,
    tuck,
    tie,
    draw_up,
    press,
    thread,
    reeve,
    hang,
    load,
    measure,
    cut_aboard,
    plain,
};

/// An action's word in JSON, and what it does.
struct ActionDeclaration {
    Action id{};
    std::string_view name;
    std::string_view meaning;
};
/// All actions, in order of `Action`.
[[nodiscard]] std::span<const ActionDeclaration> actions();
[[nodiscard]] std::string_view name_of(Action action);

/// What part of the rope a step works on.
enum class Part : std::uint8_t { rope, core, cover };
[[nodiscard]] std::string_view name_of(Part part);

/// The marks that a step names, up to four, in the order that its action asks for.
class StepMarks {
  public:
    constexpr StepMarks() = default;
    constexpr StepMarks(std::initializer_list<MarkName> names) {
        Expects(names.size() <= names_.size());
        for (const MarkName name : names) {
            names_.at(size_++) = name;
        }
    }
    [[nodiscard]] constexpr std::size_t size() const { return size_; }
    [[nodiscard]] constexpr bool empty() const { return size_ == 0; }
    [[nodiscard]] const MarkName* begin() const { return names_.data(); }
    [[nodiscard]] const MarkName* end() const { return names_.data() + size_; }

  private:
    std::array<MarkName, 4> names_{};
    std::size_t size_ = 0;
};

/// One thing to do at the bench. `text` is a sentence in the imperative in which `{tail}` is
/// replaced by a length of the end's values (its name without the unit) and `{@far throat}` by the
/// distance of a mark from the cut end. A step of `Action::mark` that names no mark is about all
/// marks of its end.
struct Step {
    Action action = Action::plain;
    StepMarks marks;
    std::string_view text;
    Part part = Part::rope;
};

} // namespace libsplice
