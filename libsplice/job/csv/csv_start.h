// What the first bytes of a CSV file give away: another kind of file, and what separates its cells.
#pragma once

#include "libsplice/base/fault.h"

#include <cstddef>
#include <optional>
#include <string_view>

namespace libsplice {

/// How a CSV file is written, seen from its first line.
struct CsvStart {
    char separator = ',';
    std::size_t skip = 0; ///< bytes of a first line such as `sep=;`, which some spreadsheets write
};

/// `start` holds the first line at least. The separator is the one of comma, semicolon and tab that
/// stands most often outside quotes in the first line that is not blank; a comma where none does.
[[nodiscard]] CsvStart csv_start(std::string_view start);

/// The fault of a file that is no CSV at all: a spreadsheet's own file, UTF-16, TOML, JSON, a web
/// page, a PDF (Code::foreign_file); nothing where it may be CSV. It has no place.
[[nodiscard]] std::optional<Fault> foreign_file(std::string_view start);

} // namespace libsplice
