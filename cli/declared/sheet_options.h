// The options that say how an answer is written, read and checked.
#pragma once

#include "libsplice/cut/settings.h"
#include "libsplice/sheet/writer.h"

#include "cli/declared/command_line.h"

#include <optional>

namespace libsplice::cli {

/// How to write, and for a cut, how to cut.
struct Answer {
    Format format = Format::text;
    SheetOptions sheet;
    CutSettings cut;
    std::string output;
};

/// Reads --format, as far as the command writes it. The fault names the nearest.
[[nodiscard]] Result<Format> read_format(const CommandLine& command);
/// Reads --format, --units, --output, --ledger, --risk, --step and --marking-tension. The fault
/// says what is wrong with which option.
[[nodiscard]] Result<Answer> read_answer(const CommandLine& command);

} // namespace libsplice::cli
