// A group has the word of its table; a row that errs alone is named for its end and its item.
#include "libsplice/sheet/words/ledger_group.h"

#include "libsplice/sheet/words/words.h"

#include <gsl/assert>

#include <algorithm>

namespace libsplice {

std::vector<LedgerRow> ledger_of(const End& allowance) {
    std::vector<LedgerRow> ledger;
    for (const Row& row : allowance.rows) {
        ledger.push_back({row, std::nullopt});
    }
    return ledger;
}

std::string group_of(std::span<const LedgerRow> ledger, std::size_t at, std::string_view whole,
                     const Names& names) {
    Expects(at < ledger.size());
    const LedgerRow& entry = ledger[at];
    if (entry.row.group != Group::own) {
        return std::string(group_names()[static_cast<std::size_t>(entry.row.group)]);
    }
    std::string name(entry.end ? letter_of(*entry.end) : whole);
    name += ": ";
    name += names.of(entry.row.item);
    const auto alike_before = std::ranges::count_if(ledger.first(at), [&](const LedgerRow& other) {
        return other.row.group == Group::own && other.row.item == entry.row.item &&
               other.end == entry.end;
    });
    if (alike_before != 0) {
        name += ' ' + std::to_string(alike_before + 1);
    }
    return name;
}

} // namespace libsplice
