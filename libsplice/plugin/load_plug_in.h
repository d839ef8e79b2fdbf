// Other people's kinds and ropes, from a file to a book.
#pragma once

#include "libsplice/allowance/plugged_in.h"
#include "libsplice/base/result.h"
#include "libsplice/catalogue/catalogue.h"

#include <optional>
#include <string>

namespace libsplice {

/// Loads the plug-in in `file`, checks all that it declares, and adds its sources and ropes to
/// `catalogue` and its kinds to `plugged_in`, from which a book is opened then. Faults are of the
/// 6xx family and name the plug-in; after one, both are as they were. The code in `file` runs with
/// our rights: load what you trust.
[[nodiscard]] std::optional<Fault> load_plug_in(const std::string& file, Catalogue& catalogue,
                                                PluggedIn& plugged_in);

} // namespace libsplice
