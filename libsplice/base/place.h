// Where in a file something stands.
#pragma once

#include <cstdint>
#include <string>

namespace libsplice {

/// A place in a text file: physical line and column, both counted from 1, the column in characters
/// (not bytes) where the cell or key starts. Line 0 means the file as a whole; an empty file name
/// means that the text came from the command line or a host program.
struct Place {
    std::string file;
    std::uint32_t line = 0;
    std::uint32_t column = 0;

    friend bool operator==(const Place&, const Place&) = default;
};

/// `file:line:column`, without the parts that are not known.
[[nodiscard]] std::string to_text(const Place& place);

} // namespace libsplice
