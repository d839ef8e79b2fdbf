// Opens a shared library and finds its entry by name.
#include "libsplice/plugin/library.h"

#include <dlfcn.h>

namespace libsplice {

Result<std::shared_ptr<const Library>> Library::open(const std::string& path) {
    Expects(path.starts_with('/'));
    void* handle = ::dlopen(path.c_str(), RTLD_NOW | RTLD_LOCAL);
    if (handle == nullptr) {
        const char* why = ::dlerror();
        return Unexpected(Fault{Code::plug_in_unreadable,
                                "this is no shared library that can be loaded (" +
                                    std::string(why == nullptr ? "no reason given" : why) +
                                    "); name the file that the plug-in was built to",
                                Place{path}});
    }
    return std::shared_ptr<const Library>(new Library(handle));
}

Library::~Library() {
    ::dlclose(handle_);
}

const void* Library::find(const char* name) const {
    return ::dlsym(handle_, name);
}

} // namespace libsplice
