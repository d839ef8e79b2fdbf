// What an end comes to.
#include "libsplice/allowance/end.h"

#include <algorithm>

namespace libsplice {

Nanometres End::total() const {
    Nanometres sum = 0;
    for (const Row& row : rows) {
        sum += row.length;
    }
    return sum;
}

void End::finish() {
    std::ranges::stable_sort(marks, {}, &Mark::from_tail_end);
}

} // namespace libsplice
