// The SQLite extension: its entry, and the scalar functions.
#include "libsplice/abi/sqlite/ledger_table.h"

#include <sqlite3ext.h>

SQLITE_EXTENSION_INIT1

namespace libsplice::sqlite {

namespace {

using Function = void (*)(sqlite3_context*, int, sqlite3_value**);

CutLine cut_line_of(sqlite3_context* context, int argc, sqlite3_value** argv) {
    CutLine line = cut_line(**static_cast<SharedBook*>(sqlite3_user_data(context)), argc, argv);
    if (!line.wrong.empty()) {
        sqlite3_result_error(context, line.wrong.c_str(), -1);
    }
    return line;
}

/// The length to cut; null where the line is refused.
void cut_m(sqlite3_context* context, int argc, sqlite3_value** argv) {
    const CutLine line = cut_line_of(context, argc, argv);
    if (line.sheet && line.piece.fault_code == 0) {
        sqlite3_result_double(context, line.piece.cut_m);
    }
}

/// Why the line is refused; null where it can be cut.
void why_not(sqlite3_context* context, int argc, sqlite3_value** argv) {
    const CutLine line = cut_line_of(context, argc, argv);
    if (line.sheet && line.piece.fault_code != 0) {
        splice_fault why{};
        why.size = sizeof why;
        splice_sheet_piece_fault(line.sheet.get(), 0, &why, nullptr);
        sqlite3_result_text(context, why.text, -1, SQLITE_TRANSIENT);
    }
}

int register_function(sqlite3* database, const char* name, Function function,
                      const SharedBook& book) {
    const auto forget = [](void* shared) {
        delete static_cast<SharedBook*>(shared);
    };
    return sqlite3_create_function_v2(database, name, -1, SQLITE_UTF8 | SQLITE_DETERMINISTIC,
                                      new SharedBook(book), function, nullptr, nullptr, forget);
}

int register_all(sqlite3* database, const SharedBook& book) {
    for (const auto& [name, function] :
         {std::pair<const char*, Function>{"splice_cut_m", cut_m}, {"splice_why_not", why_not}}) {
        const int status = register_function(database, name, function, book);
        if (status != SQLITE_OK) {
            return status;
        }
    }
    return register_ledger(database, book);
}

} // namespace

} // namespace libsplice::sqlite

/// What SQLite calls when it loads the file `splice_sqlite`.
extern "C" SPLICE_API int sqlite3_splicesqlite_init(sqlite3* database, char** message,
                                                    const sqlite3_api_routines* api) {
    SQLITE_EXTENSION_INIT2(api)
    splice_fault fault{};
    fault.size = sizeof fault;
    splice_book* book = nullptr;
    if (splice_book_open(nullptr, &book, &fault) != 0) {
        *message = sqlite3_mprintf("splice: %s", fault.text);
        return SQLITE_ERROR;
    }
    return libsplice::sqlite::register_all(database,
                                           libsplice::sqlite::SharedBook(book, splice_book_close));
}
