// Where the tables are, and the book that they make with the plug-ins.
#pragma once

#include "libsplice/allowance/book.h"

#include "cli/declared/command_line.h"

#include <optional>
#include <string>
#include <vector>

namespace libsplice::cli {

/// The folders in order of precedence from the lowest. First the program's own: those of
/// LIBSPLICE_TABLES (separated by colons), else share/libsplice/tables beside the program, else the
/// built-in path; without that variable then `tables` in the user's folder of data. Those of
/// --tables lie on top, or replace all if the first of them stands alone.
[[nodiscard]] std::vector<std::string> table_folders(const CommandLine& command);

/// Opens the book; if there are faults, each is said on standard error and there is no book.
[[nodiscard]] std::optional<Book> open_book(const CommandLine& command);

} // namespace libsplice::cli
