// A shared library, loaded for as long as somebody holds it.
#pragma once

#include "libsplice/base/result.h"

#include <memory>
#include <string>

namespace libsplice {

/// A loaded library. Its names are bound at once and stay its own: they neither meet those of other
/// plug-ins nor ours.
class Library {
  public:
    /// Loads the file at an absolute path. Code::plug_in_unreadable with the loader's own words.
    [[nodiscard]] static Result<std::shared_ptr<const Library>> open(const std::string& path);

    Library(const Library&) = delete;
    Library& operator=(const Library&) = delete;
    ~Library();

    /// Where the exported name stands; null if there is none.
    [[nodiscard]] const void* find(const char* name) const;

  private:
    explicit Library(void* handle) : handle_(handle) {}

    void* handle_;
};

} // namespace libsplice
