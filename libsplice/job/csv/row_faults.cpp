// Tells a fault that many rows share once, with their count.
#include "libsplice/job/csv/row_faults.h"

#include <algorithm>
#include <string>

namespace libsplice {

namespace {

/// So many more of one sort are told one by one.
constexpr std::size_t few = 2;

} // namespace

void RowFaults::push(const Fault& fault) {
    const auto known = std::ranges::find(sorts_, fault.code, &Sort::code);
    if (known == sorts_.end()) {
        sorts_.push_back({fault.code, 0, {}});
        faults_.push(fault);
        return;
    }
    ++known->more;
    if (known->held.size() > few) {
        known->held.pop_back();
    }
    known->held.push_back(fault);
}

void RowFaults::finish() {
    for (const auto& [code, more, held] : sorts_) {
        if (more <= few) {
            std::ranges::for_each(held, [&](const Fault& fault) { faults_.push(fault); });
            continue;
        }
        Fault last = held.back();
        last.text = std::to_string(more) +
                    " more cells or rows have this error, the last of them here: " + last.text;
        faults_.push(std::move(last));
    }
    sorts_.clear();
}

} // namespace libsplice
