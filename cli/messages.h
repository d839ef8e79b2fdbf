// Messages on standard error, and the line that shows how far the work has come.
#pragma once

#include "libsplice/base/fault_sink.h"

#include <string_view>

namespace libsplice::cli {

/// Prints `splice: text`.
void say(std::string_view text);
/// Prints a fault as `file:line:column: error CODE: sentence`; the error stands out on a terminal,
/// unless `NO_COLOR` is set to anything.
void say(const Fault& fault);

/// The most faults that are printed one by one.
inline constexpr std::size_t most_printed = 200;
/// A sink that prints the first faults as they come.
[[nodiscard]] FaultSink printing_sink();
/// Says how many faults were not printed, if any.
void say_rest(const FaultSink& faults);

/// Whether standard error is a terminal that can take a line back.
[[nodiscard]] bool has_terminal();
/// Shows `text` in place of the last status, on a line that the next message takes away.
void show_status(std::string_view text);
void clear_status();
/// As clear_status(), for signal handlers.
void wipe_status() noexcept;

} // namespace libsplice::cli
