#include "libsplice/allowance/parts/both_sides_part.h"

namespace libsplice {

void count_both_sides(End& allowance) {
    for (Row& row : allowance.rows) {
        row.length *= 2;
        row.sd *= 2.0;
    }
}

} // namespace libsplice
