// Gives SQLite one row for each row of a piece's ledger.
#include "libsplice/abi/sqlite/ledger_table.h"

#include <new>
#include <sqlite3ext.h>
#include <string>
#include <vector>

SQLITE_EXTENSION_INIT3

namespace libsplice::sqlite {

namespace {

/// Columns of a row, in order; behind them the arguments, which SQLite takes as hidden columns.
enum Column : int { item, end_of, length_m, sd_m, row_group, source, first_argument };
constexpr int most_arguments = 80;

struct Table {
    sqlite3_vtab base; // SQLite's own part comes first
    SharedBook book;
};

struct Cursor {
    sqlite3_vtab_cursor base;
    CutLine line;
    std::uint32_t row;
};

std::string declaration() {
    std::string columns = "CREATE TABLE ledger(item TEXT, end TEXT, length_m REAL, sd_m REAL, "
                          "row_group TEXT, source TEXT";
    for (int i = 1; i <= most_arguments; ++i) {
        columns += ", argument_" + std::to_string(i) + " HIDDEN";
    }
    return columns + ")";
}

int connect(sqlite3* database, void* book, int /*argc*/, const char* const* /*argv*/,
            sqlite3_vtab** table, char** /*message*/) {
    const int status = sqlite3_declare_vtab(database, declaration().c_str());
    if (status != SQLITE_OK) {
        return status;
    }
    auto* made = new (std::nothrow) Table{{}, *static_cast<const SharedBook*>(book)};
    if (made == nullptr) {
        return SQLITE_NOMEM;
    }
    *table = &made->base;
    return SQLITE_OK;
}

int disconnect(sqlite3_vtab* table) {
    delete reinterpret_cast<Table*>(table);
    return SQLITE_OK;
}

/// Every argument has to be known before the line can be cut: hands them to filter() in order.
int plan(sqlite3_vtab* /*table*/, sqlite3_index_info* info) {
    std::vector<int> constraint_of(most_arguments, -1);
    int arguments = 0;
    for (int i = 0; i < info->nConstraint; ++i) {
        const auto& constraint = info->aConstraint[i];
        const int argument = constraint.iColumn - first_argument;
        if (argument < 0 || constraint.op != SQLITE_INDEX_CONSTRAINT_EQ) {
            continue;
        }
        if (constraint.usable == 0) {
            return SQLITE_CONSTRAINT;
        }
        constraint_of[static_cast<std::size_t>(argument)] = i;
        arguments = std::max(arguments, argument + 1);
    }
    for (int argument = 0; argument < arguments; ++argument) {
        const int constraint = constraint_of[static_cast<std::size_t>(argument)];
        if (constraint < 0) {
            return SQLITE_CONSTRAINT;
        }
        info->aConstraintUsage[constraint].argvIndex = argument + 1;
        info->aConstraintUsage[constraint].omit = 1;
    }
    info->estimatedCost = 1.0;
    info->estimatedRows = 12;
    return SQLITE_OK;
}

int open_cursor(sqlite3_vtab* /*table*/, sqlite3_vtab_cursor** cursor) {
    auto* made = new (std::nothrow) Cursor{};
    if (made == nullptr) {
        return SQLITE_NOMEM;
    }
    *cursor = &made->base;
    return SQLITE_OK;
}

Cursor& of(sqlite3_vtab_cursor* cursor) {
    return *reinterpret_cast<Cursor*>(cursor);
}

int close_cursor(sqlite3_vtab_cursor* cursor) {
    delete reinterpret_cast<Cursor*>(cursor);
    return SQLITE_OK;
}

int refuse(sqlite3_vtab_cursor* cursor, const std::string& why) {
    sqlite3_free(cursor->pVtab->zErrMsg);
    cursor->pVtab->zErrMsg = sqlite3_mprintf("splice_ledger: %s", why.c_str());
    return SQLITE_ERROR;
}

int filter(sqlite3_vtab_cursor* base, int /*plan*/, const char* /*name*/, int argc,
           sqlite3_value** argv) {
    Cursor& cursor = of(base);
    cursor.line = cut_line(*reinterpret_cast<Table*>(base->pVtab)->book, argc, argv);
    cursor.row = 0;
    if (!cursor.line.wrong.empty()) {
        return refuse(base, cursor.line.wrong);
    }
    return SQLITE_OK;
}

int next(sqlite3_vtab_cursor* cursor) {
    ++of(cursor).row;
    return SQLITE_OK;
}

int is_at_end(sqlite3_vtab_cursor* cursor) {
    return of(cursor).row >= of(cursor).line.piece.row_count ? 1 : 0;
}

void answer_text(sqlite3_context* context, const char* text) {
    sqlite3_result_text(context, text, -1, SQLITE_TRANSIENT);
}

int column(sqlite3_vtab_cursor* base, sqlite3_context* context, int index) {
    const Cursor& cursor = of(base);
    splice_row row{};
    row.size = sizeof row;
    splice_sheet_row(cursor.line.sheet.get(), 0, cursor.row, &row, nullptr);
    switch (index) {
    case item:
        answer_text(context, row.item);
        break;
    case end_of:
        if (row.end != SPLICE_END_WHOLE_LINE) {
            answer_text(context, row.end == SPLICE_END_A ? "a" : "b");
        }
        break;
    case length_m:
        sqlite3_result_double(context, row.length_m);
        break;
    case sd_m:
        sqlite3_result_double(context, row.sd_m);
        break;
    case row_group:
        answer_text(context, row.group);
        break;
    case source:
        answer_text(context, row.source);
        break;
    default: // an argument: it is not read back
        break;
    }
    return SQLITE_OK;
}

int row_number(sqlite3_vtab_cursor* cursor, sqlite3_int64* number) {
    *number = of(cursor).row;
    return SQLITE_OK;
}

sqlite3_module ledger_module() {
    sqlite3_module module{};
    module.xConnect = connect; // and no xCreate: it is a function, not a table to create
    module.xBestIndex = plan;
    module.xDisconnect = disconnect;
    module.xOpen = open_cursor;
    module.xClose = close_cursor;
    module.xFilter = filter;
    module.xNext = next;
    module.xEof = is_at_end;
    module.xColumn = column;
    module.xRowid = row_number;
    return module;
}

} // namespace

int register_ledger(sqlite3* database, const SharedBook& book) {
    static const sqlite3_module module = ledger_module();
    const auto forget = [](void* shared) {
        delete static_cast<SharedBook*>(shared);
    };
    return sqlite3_create_module_v2(database, "splice_ledger", &module, new SharedBook(book),
                                    forget);
}

} // namespace libsplice::sqlite
