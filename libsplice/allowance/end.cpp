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
    const Mark* before = nullptr;
    for (Mark& mark : marks) {
        const bool shared = before != nullptr && drops_pair(before->name) && drops_pair(mark.name);
        const std::size_t last = before == nullptr ? 0 : before->number;
        mark.number = shared ? last : last + 1;
        before = &mark;
    }
}

} // namespace libsplice
