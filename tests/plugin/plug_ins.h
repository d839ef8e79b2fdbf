// Plug-ins that the tests build, loaded into books of the shipped tables.
#pragma once

#include "libsplice/allowance/book.h"
#include "libsplice/plugin/load_plug_in.h"

#include "../support/tables.h"

#include <gtest/gtest.h>

#include <string>
#include <utility>
#include <vector>

namespace libsplice::testing {

inline std::string plug_in_path(const std::string& name) {
    return std::string(LIBSPLICE_PLUG_INS_DIR) + '/' + name + ".so";
}

inline Catalogue shipped_catalogue() {
    FaultSink faults;
    auto catalogue = Catalogue::load(std::vector{tables_folder()}, faults);
    return *std::move(catalogue);
}

/// A book with plug-ins that must load without a fault.
inline Book book_with(const std::vector<std::string>& names) {
    Catalogue catalogue = shipped_catalogue();
    PluggedIn plugged_in;
    for (const std::string& name : names) {
        if (const auto fault = load_plug_in(plug_in_path(name), catalogue, plugged_in)) {
            ADD_FAILURE() << to_text(*fault);
        }
    }
    auto book = Book::open(std::move(catalogue), std::move(plugged_in));
    return *std::move(book);
}

/// An end of a rope that the book must know, by the names of its kind and its fields.
inline Result<End> work_out(const Book& book, std::string_view kind, std::string_view rope,
                            const std::vector<FieldText>& fields) {
    const auto known = book.catalogue().rope(rope);
    const auto found = book.kind(kind);
    EXPECT_TRUE(known && found) << kind << " in " << rope;
    return book.work_out(**found, *known, fields);
}

inline bool says(const Fault& fault, std::string_view words) {
    return fault.text.find(words) != std::string::npos;
}

} // namespace libsplice::testing
