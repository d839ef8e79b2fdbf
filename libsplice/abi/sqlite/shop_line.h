// One line of a job out of the arguments of an SQL function, cut.
#pragma once

#include "libsplice/abi/include/splice.h"

#include <memory>
#include <string>

struct sqlite3_value;

namespace libsplice::sqlite {

/// What the functions of a connection share: the last of them to go closes the book.
using SharedBook = std::shared_ptr<splice_book>;

struct CloseSheet {
    void operator()(splice_sheet* sheet) const { splice_sheet_close(sheet); }
};

/// What became of a line: a sheet of one piece, or the sentence that says why the call is wrong.
struct CutLine {
    std::unique_ptr<splice_sheet, CloseSheet> sheet;
    splice_piece piece; ///< null texts and no rows where the call is wrong
    std::string wrong;  ///< empty: the call is right
};

/// Cuts the line whose columns and values the arguments give by turns. A null value is a cell that
/// is not given; a line without a `name` is called `line`.
[[nodiscard]] CutLine cut_line(const splice_book& book, int argc, sqlite3_value** argv);

} // namespace libsplice::sqlite
