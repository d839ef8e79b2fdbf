// How every command hands out its answer.
#pragma once

#include "libsplice/base/output.h"

#include "cli/declared/command.h"

#include <functional>
#include <string>

namespace libsplice::cli {

/// Writes an answer to `path` (`-`: standard output), whole or not at all. `write` returns what the
/// answer comes to; after Exit::wrong_command or Exit::unusable_file nothing takes the path's name.
/// A failure to write is said, and is Exit::unusable_file.
Exit write_out(const std::string& path, const std::function<Exit(Output&)>& write);

/// A text on standard output; the same.
Exit print(std::string_view text);

} // namespace libsplice::cli
