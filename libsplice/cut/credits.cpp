// Hands on what a book knows of its words, documents, versions and plug-ins.
#include "libsplice/cut/credits.h"

#include "libsplice/allowance/book.h"

namespace libsplice {

const Names& Credits::names() const {
    return book_->names();
}

const Citation& Credits::citation(CitationId id) const {
    return book_->citation(id);
}

std::size_t Credits::citation_count() const {
    return book_->catalogue().citations().size();
}

const Source* Credits::document_of(const Citation& citation) const {
    return book_->catalogue().find_source(citation.key);
}

std::string Credits::tables_version() const {
    return book_->catalogue().version();
}

std::span<const PlugIn> Credits::plug_ins() const {
    return book_->plug_ins();
}

} // namespace libsplice
