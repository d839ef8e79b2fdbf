#include "libsplice/allowance/parts/turned_back_part.h"

#include "libsplice/allowance/parts/bend_part.h"

namespace libsplice {

void add_turned_back(End& allowance, const TurnedBackPart& part) {
    const Nanometres start = to_nanometres(part.turned.length);
    add_eye_rows(allowance, part.eye);
    allowance.add(row_of(Item::turn_back, part.turned));
    add_eye_marks(allowance, part.eye, start, {.near = MarkName::turn_back});
    allowance.add(Value{ValueName::turn_back_m, part.turned.length.si()});
    allowance.add(Span{part.held, 0, start, to_nanometres(part.eye.rope), part.count});
}

void add_turned_back_facts(End& allowance, const TurnedBackPart& part, const Request& request) {
    add_eye_facts(allowance, part.eye, request, to_nanometres(part.turned.length));
    add_bend(allowance, request);
    add_retained(allowance, request);
}

} // namespace libsplice
