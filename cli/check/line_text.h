// A line of a case file, written again as a job of its own.
#pragma once

#include "libsplice/base/document.h"

#include <string>

namespace libsplice::cli {

/// The text of a TOML job that holds just `line`, a table of job columns. It is called `name`
/// unless it has a name of its own.
[[nodiscard]] std::string one_line_job(const Node& line, const std::string& name);

} // namespace libsplice::cli
