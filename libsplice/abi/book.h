// What stands behind the host's `splice_book`.
#pragma once

#include "libsplice/abi/book_records.h"

#include <string>
#include <utility>

/// A book and its records. It stays where it is, for the records point into it.
struct splice_book { // NOLINT(readability-identifier-naming): named by the C header
    explicit splice_book(libsplice::Book opened) : book(std::move(opened)), records(book) {}

    const libsplice::Book book;
    const libsplice::abi::BookRecords records;
};

namespace libsplice::abi {

/// The path of the library that this code is part of.
[[nodiscard]] std::string library_path();

} // namespace libsplice::abi
