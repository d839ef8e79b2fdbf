// What each row of a ledger errs together with, by name.
#pragma once

#include "libsplice/cut/piece.h"

#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace libsplice {

/// The rows of an end as a ledger of its own.
[[nodiscard]] std::vector<LedgerRow> ledger_of(const End& allowance);

/// Name of the group of `ledger[at]`. A row that errs on its own gets a name that no other row of
/// the ledger has, such as `a: tail`, or `line: stretch` where it belongs to no end and `whole` is
/// `line`: so whoever adds the spreads up group by group never adds independent ones.
[[nodiscard]] std::string group_of(std::span<const LedgerRow> ledger, std::size_t at,
                                   std::string_view whole, const Names& names);

} // namespace libsplice
