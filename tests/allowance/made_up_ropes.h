// A folder of tables over the shipped ones, with one hollow braid of our own.
#pragma once

#include "tests/support/tables.h"

#include <filesystem>
#include <fstream>
#include <unistd.h>

namespace libsplice::testing {

/// The shipped tables and `own-12-strand`, 10 mm HMPE, with these keys in its record; `bench` is a
/// source.
inline Book book_with_ropes(const std::string& keys) {
    const std::filesystem::path folder =
        std::filesystem::temp_directory_path() / ("own-ropes-" + std::to_string(::getpid()));
    std::filesystem::create_directories(folder / "ropes");
    std::ofstream(folder / "tables.toml") << "version = \"own\"\ntitle = \"made up\"\n";
    std::ofstream(folder / "sources.toml")
        << "[[source]]\nkey = \"bench\"\ntitle = \"A bench book\"\nterms = \"none\"\n";
    std::ofstream(folder / "ropes" / "own.toml")
        << "[[rope]]\nid = \"own-12-strand\"\ntitle = \"own\"\nconstruction = \"12-strand\"\n"
           "fibre = \"HMPE\"\ndiameter = \"10 mm\"\n"
        << keys << '\n';
    Book book = open_book({tables_folder(), folder.string()});
    std::filesystem::remove_all(folder);
    return book;
}

} // namespace libsplice::testing
