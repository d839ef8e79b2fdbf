// Collects the documents of the citations that are written, each once, in the order of first use.
#include "libsplice/sheet/words/citation_log.h"

#include <algorithm>

namespace libsplice {

CitationLog::CitationLog(Credits credits) : credits_(credits), texts_(credits.citation_count()) {}

std::string_view CitationLog::text(CitationId id) {
    std::string& text = texts_.at(static_cast<std::size_t>(id));
    if (!text.empty()) {
        return text;
    }
    const Citation& citation = credits_.citation(id);
    text = to_text(citation);
    const Source* source = credits_.document_of(citation);
    if (source != nullptr && std::ranges::find(used_, source) == used_.end()) {
        used_.push_back(source);
    }
    return text;
}

std::string_view CitationLog::rule(CitationId id) {
    const Citation& citation = credits_.citation(id);
    const bool says_more = !citation.key.empty() || !citation.locator.empty();
    return says_more ? text(id) : std::string_view();
}

} // namespace libsplice
