#include "libsplice/allowance/end.h"

namespace libsplice {

Nanometres Allowance::total() const {
    Nanometres sum = 0;
    for (const Row& row : rows) {
        sum += row.length;
    }
    return sum;
}

std::optional<double> Allowance::find(ValueName name) const {
    for (const Value& value : values) {
        if (value.name == name) {
            return value.value;
        }
    }
    return std::nullopt;
}

} // namespace libsplice
