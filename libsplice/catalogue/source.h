// A document that figures are taken from.
#pragma once

#include <string>

namespace libsplice {

/// A document, or another place that numbers come from: one record of `tables/sources.toml`.
struct Source {
    std::string key;
    std::string title;
    std::string terms;  ///< public domain, (c) book ...: why it is cited for figures only
    std::string folder; ///< the folder of tables that it was read from
};

} // namespace libsplice
