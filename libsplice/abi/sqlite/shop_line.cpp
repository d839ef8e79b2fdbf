// Reads the arguments of an SQL function as the columns of a line, and cuts it.
#include "libsplice/abi/sqlite/shop_line.h"

#include <algorithm>
#include <new>
#include <sqlite3ext.h>
#include <string_view>
#include <vector>

SQLITE_EXTENSION_INIT3

namespace libsplice::sqlite {

namespace {

const char* text_of(sqlite3_value* value) {
    return reinterpret_cast<const char*>(sqlite3_value_text(value));
}

/// The texts are SQLite's own and live until the function returns.
std::vector<splice_cell> cells_of(int argc, sqlite3_value** argv) {
    std::vector<splice_cell> cells;
    for (int i = 0; i < argc; i += 2) {
        cells.push_back({text_of(argv[i]), text_of(argv[i + 1])});
    }
    const bool named = std::ranges::any_of(cells, [](const splice_cell& cell) {
        return cell.name != nullptr && std::string_view(cell.name) == "name";
    });
    if (!named) {
        cells.push_back({"name", "line"});
    }
    return cells;
}

CutLine wrong_line(std::string why) {
    return {nullptr, {}, std::move(why)};
}

} // namespace

CutLine cut_line(const splice_book& book, int argc, sqlite3_value** argv) {
    if (argc == 0 || argc % 2 != 0) {
        return wrong_line("give columns and values by turns, such as 'rope', rope");
    }
    splice_fault fault{};
    fault.size = sizeof fault;
    splice_sheet* sheet = nullptr;
    if (splice_sheet_open(&book, nullptr, &sheet, &fault) != 0) {
        return wrong_line(fault.text);
    }
    CutLine line{std::unique_ptr<splice_sheet, CloseSheet>(sheet), {}, {}};
    line.piece.size = sizeof line.piece;
    const auto cells = cells_of(argc, argv);
    const auto count = static_cast<std::uint32_t>(cells.size());
    const bool cut = splice_sheet_add_line(sheet, cells.data(), count, &fault) == 0 &&
                     splice_sheet_piece(sheet, 0, &line.piece, &fault) == 0;
    return cut ? std::move(line) : wrong_line(fault.text);
}

} // namespace libsplice::sqlite
