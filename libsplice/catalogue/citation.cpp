// The words for what a number is worth.
#include "libsplice/catalogue/citation.h"

#include <gsl/assert>

#include <algorithm>
#include <array>
#include <limits>

namespace libsplice {

std::string_view name_of(Status status) {
    constexpr std::array<std::string_view, 9> names{"printed",  "derived",     "common practice",
                                                    "computed", "from memory", "shop",
                                                    "demo",     "job",         "geometry"};
    return names[static_cast<std::size_t>(status)];
}

std::string to_text(const Citation& citation) {
    if (citation.status == Status::printed) {
        return citation.key + ' ' + citation.locator;
    }
    std::string text(name_of(citation.status));
    // Only what was worked out from a document names it; the other origins have none.
    if (citation.status == Status::derived && !citation.key.empty()) {
        return text + " from " + citation.key + ' ' + citation.locator;
    }
    if (!citation.locator.empty()) {
        text += ": " + citation.locator;
    }
    return text;
}

Citations::Citations() {
    all_ = {Citation{Status::job, {}, {}}, Citation{Status::geometry, {}, {}},
            Citation{Status::computed, {}, {}}, Citation{Status::derived, {}, {}}};
}

CitationId Citations::intern(Citation citation) {
    const auto same = [&](const Citation& known) {
        return known.status == citation.status && known.key == citation.key &&
               known.locator == citation.locator;
    };
    const auto found = std::ranges::find_if(all_, same);
    if (found != all_.end()) {
        return CitationId(static_cast<std::uint16_t>(found - all_.begin()));
    }
    Expects(all_.size() < std::numeric_limits<std::uint16_t>::max());
    all_.push_back(std::move(citation));
    return CitationId(static_cast<std::uint16_t>(all_.size() - 1));
}

} // namespace libsplice
