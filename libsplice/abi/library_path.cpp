// Where the library lies, so that it finds its tables beside itself.
#include "libsplice/abi/book.h"

#include <dlfcn.h>

namespace libsplice::abi {

std::string library_path() {
    static const char inside = 0; // any address of ours will do
    Dl_info info{};
    const bool found = dladdr(&inside, &info) != 0 && info.dli_fname != nullptr;
    return found ? info.dli_fname : std::string();
}

} // namespace libsplice::abi
