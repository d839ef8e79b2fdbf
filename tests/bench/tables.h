// The shipped tables as a book, or the end of the program.
#pragma once

#include "libsplice/allowance/book.h"

#include <cstdio>
#include <cstdlib>
#include <string>
#include <utility>
#include <vector>

namespace libsplice::bench {

inline Book open_book() {
    FaultSink faults;
    auto catalogue = Catalogue::load(std::vector<std::string>{LIBSPLICE_TABLES_DIR}, faults);
    for (const Fault& fault : faults.kept()) {
        std::fprintf(stderr, "%s\n", to_text(fault).c_str());
    }
    if (!catalogue) {
        std::exit(EXIT_FAILURE);
    }
    auto book = Book::open(*std::move(catalogue));
    return *std::move(book);
}

} // namespace libsplice::bench
