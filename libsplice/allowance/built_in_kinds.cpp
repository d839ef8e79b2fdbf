#include "libsplice/allowance/built_in_kinds.h"

namespace libsplice {

std::vector<Kind> built_in_kinds() {
    std::vector<Kind> kinds;
    for (const auto make : {locked_eye, buried_eye, stripped_eye, tucked_eye, clipped_eye,
                            figure_eight, bowline, whipped, bare}) {
        kinds.push_back(make());
    }
    return kinds;
}

} // namespace libsplice
