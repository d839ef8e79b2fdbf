// Messages on standard error.
#pragma once

#include "libsplice/base/fault_sink.h"

#include <string_view>

namespace libsplice::cli {

/// Prints `splice: text`.
void say(std::string_view text);
/// Prints a fault as `file:line:column: error CODE: sentence`.
void say(const Fault& fault);

/// The most faults that are printed one by one.
inline constexpr std::size_t most_printed = 200;
/// A sink that prints the first faults as they come.
[[nodiscard]] FaultSink printing_sink();
/// Says how many faults were not printed, if any.
void say_rest(const FaultSink& faults);

} // namespace libsplice::cli
