// Where the tables are, and the book that they make with the plug-ins.
#pragma once

#include "libsplice/allowance/book.h"

#include "cli/declared/command_line.h"

#include <optional>
#include <string>
#include <vector>

namespace libsplice::cli {

/// The folders in order of precedence from the lowest: those of --tables, else of LIBSPLICE_TABLES
/// (a list parted by colons), else share/libsplice/tables beside the program, else the built-in
/// path.
[[nodiscard]] std::vector<std::string> table_folders(const CommandLine& line);

/// Opens the book; every fault is said on standard error, and there is none then.
[[nodiscard]] std::optional<Book> open_book(const CommandLine& line);

} // namespace libsplice::cli
