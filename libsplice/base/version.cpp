// The version is that of the build.
#include "libsplice/base/version.h"

namespace libsplice {

std::string_view version() {
    return LIBSPLICE_VERSION;
}

} // namespace libsplice
