// Every kind of the one list is made, in its order.
#include "libsplice/allowance/built_in_kinds.h"

#include <iterator>
#include <utility>

namespace libsplice {

namespace {

void add(Kinds& kinds, Kind kind) {
    kinds.push_back(std::move(kind));
}

void add(Kinds& kinds, Kinds more) {
    kinds.insert(kinds.end(), std::make_move_iterator(more.begin()),
                 std::make_move_iterator(more.end()));
}

} // namespace

Kinds built_in_kinds() {
    Kinds kinds;
#define LIBSPLICE_ADD(type, name) add(kinds, name());
    LIBSPLICE_BUILT_IN_KINDS(LIBSPLICE_ADD)
#undef LIBSPLICE_ADD
    return kinds;
}

} // namespace libsplice
