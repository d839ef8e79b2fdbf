// Keeps every citation once, and says it as a row does.
#include "libsplice/catalogue/citation.h"

#include <array>
#include <limits>

namespace libsplice {

namespace {

constexpr std::size_t most_with_key = std::numeric_limits<std::uint16_t>::max() - 100;
constexpr std::size_t most_with_locator = most_with_key - 5000;

} // namespace

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
    for (const Status status : {Status::job, Status::geometry, Status::computed, Status::derived}) {
        static_cast<void>(intern(Citation{status, {}, {}}));
    }
}

CitationId Citations::intern(Citation citation) {
    // A list of ropes may name more sources than there are numbers: then they get less exact.
    if (all_.size() >= most_with_locator) {
        citation.locator.clear();
    }
    if (all_.size() >= most_with_key) {
        citation.key.clear();
    }
    std::string text = std::to_string(static_cast<int>(citation.status)) + '\n' + citation.key +
                       '\n' + citation.locator;
    const auto next = static_cast<std::uint16_t>(all_.size());
    const auto [known, is_new] = by_text_.emplace(std::move(text), next);
    if (is_new) {
        all_.push_back(std::move(citation));
    }
    return CitationId(known->second);
}

} // namespace libsplice
