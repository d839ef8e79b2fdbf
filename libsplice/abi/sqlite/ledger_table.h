// The table-valued function `splice_ledger`.
#pragma once

#include "libsplice/abi/sqlite/shop_line.h"

struct sqlite3;

namespace libsplice::sqlite {

/// Registers it; an SQLite status.
[[nodiscard]] int register_ledger(sqlite3* database, const SharedBook& book);

} // namespace libsplice::sqlite
