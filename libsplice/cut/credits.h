// What an answer names things by: the words, documents, versions and plug-ins of a book.
#pragma once

#include "libsplice/allowance/name_table.h"
#include "libsplice/allowance/plugged_in.h"
#include "libsplice/catalogue/citation.h"

#include <cstddef>
#include <span>
#include <string>

namespace libsplice {

class Book;
struct Source;

/// All that a sheet needs of a book to print what is already worked out. The book must outlive it;
/// a copy costs no more than a pointer.
class Credits {
  public:
    Credits(const Book& book) : book_(&book) {}

    /// The words of rows, marks and values.
    [[nodiscard]] const Names& names() const;
    [[nodiscard]] const Citation& citation(CitationId id) const;
    [[nodiscard]] std::size_t citation_count() const;
    /// The document that a citation names; null for one that names none, such as `job`.
    [[nodiscard]] const Source* document_of(const Citation& citation) const;
    /// Of all folders of tables, for a sheet's foot.
    [[nodiscard]] std::string tables_version() const;
    /// What was loaded, in the order in which it was named.
    [[nodiscard]] std::span<const PlugIn> plug_ins() const;

  private:
    const Book* book_;
};

} // namespace libsplice
