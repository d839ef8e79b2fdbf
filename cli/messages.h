// Messages on standard error, and the line that shows how far the work has come.
#pragma once

#include "libsplice/base/fault_sink.h"

#include <cstdint>
#include <string_view>

namespace libsplice::cli {

/// Whether messages are coloured; `automatic`: on a terminal, unless `NO_COLOR` is set to anything.
enum class Colour : std::uint8_t { automatic, always, never };

/// From now on messages are like this. A quiet program says errors only: no remarks, no progress.
void set_messages(Colour colour, bool quiet);

/// Prints `splice: text`: why a command cannot be done.
void say(std::string_view text);
/// Prints an error as `file:line:column: error CODE: sentence`; its first words stand out in
/// colour.
void say(const Fault& fault);
/// Prints `splice: text`: what is worth knowing though all is well. A quiet program does not.
void remark(std::string_view text);

/// The most errors that are printed one by one.
inline constexpr std::size_t most_printed = 200;
/// A sink that prints the first errors as they come.
[[nodiscard]] FaultSink printing_sink();
/// Says how many errors were not printed, if any.
void say_rest(const FaultSink& faults);

/// Whether progress may be shown: standard error is a terminal that can take a line back, and the
/// program is not quiet.
[[nodiscard]] bool shows_progress();
/// Shows `text` in place of the last status, on a line that the next message takes away.
void show_status(std::string_view text);
void clear_status();
/// As clear_status(), for signal handlers.
void wipe_status() noexcept;

} // namespace libsplice::cli
