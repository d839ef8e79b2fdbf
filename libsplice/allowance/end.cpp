#include "libsplice/allowance/end.h"

namespace libsplice {

Nanometres End::total() const {
    Nanometres sum = 0;
    for (const Row& row : rows) {
        sum += row.length;
    }
    return sum;
}

std::optional<double> End::find(ValueName name) const {
    for (const Value& value : values) {
        if (value.name == name) {
            return value.value;
        }
    }
    return std::nullopt;
}

} // namespace libsplice
