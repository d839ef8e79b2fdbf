// What plug-ins bring to a book.
#pragma once

#include "libsplice/allowance/kind.h"
#include "libsplice/allowance/name_table.h"

#include <string>
#include <vector>

namespace libsplice {

/// A plug-in that a book was opened with.
struct PlugIn {
    std::string name;
    std::string version;
    std::string title;
    std::string path;               ///< absolute
    std::vector<std::string> kinds; ///< that it brings
    std::vector<std::string> ropes; ///< ids of those that it brings
};

/// Kinds from elsewhere and the words of their rows, marks and values. A kind's texts live at least
/// as long as its function, which keeps the plug-in loaded.
struct PluggedIn {
    std::vector<Kind> kinds = {};
    Names names = {};
    std::vector<PlugIn> plug_ins = {};
};

} // namespace libsplice
