// The tables that the library ships, as a book; the environment may name a changed copy of them.
#pragma once

#include "libsplice/allowance/book.h"

#include <gtest/gtest.h>

#include <cstdlib>
#include <string>
#include <utility>
#include <vector>

namespace libsplice::testing {

/// `LIBSPLICE_TABLES` where it is set, so that a changed copy can be put to the tests.
inline std::string tables_folder() {
    const char* named = std::getenv("LIBSPLICE_TABLES");
    return named == nullptr ? LIBSPLICE_TABLES_DIR : named;
}

/// The built-in kinds with tables that must load without a fault.
inline Book open_book(const std::vector<std::string>& folders) {
    FaultSink faults;
    auto catalogue = Catalogue::load(folders, faults);
    for (const Fault& fault : faults.kept()) {
        ADD_FAILURE() << to_text(fault);
    }
    auto book = Book::open(*std::move(catalogue));
    return *std::move(book);
}

inline const Book& shipped_book() {
    static const Book book = open_book({tables_folder()});
    return book;
}

} // namespace libsplice::testing
