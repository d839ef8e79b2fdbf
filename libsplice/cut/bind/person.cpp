#include "libsplice/cut/bind/person.h"

#include <algorithm>

namespace libsplice {

void bind_person_rules(const Book& book, LinePlan& plan) {
    if (!plan.person) {
        return;
    }
    for (const Rule& rule : book.catalogue().rules()) {
        if (std::ranges::find(rule.kinds, kind_of_person_rules) != rule.kinds.end() &&
            rule.applies_to(*plan.rope)) {
            plan.person_rules.push_back(&rule);
        }
    }
}

} // namespace libsplice
