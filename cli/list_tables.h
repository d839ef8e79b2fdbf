// The lists of `splice list`, as text and as JSON.
#pragma once

#include "libsplice/allowance/book.h"
#include "libsplice/base/output.h"

namespace libsplice::cli {

void ropes_as_text(const Book& book, Output& output);
void kinds_as_text(const Book& book, Output& output);
void sources_as_text(const Book& book, Output& output);
void tables_as_text(const Book& book, Output& output);
void plug_ins_as_text(const Book& book, Output& output);

void ropes_as_json(const Book& book, Output& output);
void kinds_as_json(const Book& book, Output& output);
void sources_as_json(const Book& book, Output& output);
void tables_as_json(const Book& book, Output& output);
void plug_ins_as_json(const Book& book, Output& output);

} // namespace libsplice::cli
