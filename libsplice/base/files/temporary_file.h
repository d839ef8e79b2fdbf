// A new file beside the one that it is to replace.
#pragma once

#include "libsplice/base/files/unfinished_file.h"

#include <optional>
#include <string>

struct stat;

namespace libsplice {

/// A file that nobody else has. As long as it is open the system's lock lies on it, so that other
/// runs see that it is not left over.
struct TemporaryFile {
    int descriptor = -1;
    std::string path;                         ///< empty: there is none
    std::optional<UnfinishedFile> unfinished; ///< for whoever is interrupted
};

/// Creates a file in the folder of `path` under a name of its own; the system takes the umask off
/// its mode. Files that dead runs have left in that folder are removed first. False, with `errno`
/// set, if it cannot be created.
[[nodiscard]] bool create_beside(const std::string& path, TemporaryFile& file);

/// Gives an open file the owner, the group and the permissions of `old`, never setuid. The owner
/// is kept only if the system allows that; if the group cannot be kept, others' rights are all that
/// the group gets. False, with `errno` set, if the permissions cannot be set.
[[nodiscard]] bool take_rights_of(const struct stat& old, int descriptor);

} // namespace libsplice
