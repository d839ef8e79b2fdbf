// The lists of `splice list`, as text and as JSON.
#pragma once

#include "cli/list/listings.h"

namespace libsplice::cli {

/// Construction, fibre and diameter, as a job may describe it.
[[nodiscard]] std::string description_of(const Rope& rope);

void ropes_as_text(const Book& book, const Chosen& chosen, Output& output);
void kinds_as_text(const Book& book, const Chosen& chosen, Output& output);
void sources_as_text(const Book& book, const Chosen& chosen, Output& output);
void columns_as_text(const Book& book, const Chosen& chosen, Output& output);
void faults_as_text(const Book& book, const Chosen& chosen, Output& output);
void tables_as_text(const Book& book, const Chosen& chosen, Output& output);
void plug_ins_as_text(const Book& book, const Chosen& chosen, Output& output);

void ropes_as_json(const Book& book, const Chosen& chosen, Output& output);
void kinds_as_json(const Book& book, const Chosen& chosen, Output& output);
void sources_as_json(const Book& book, const Chosen& chosen, Output& output);
void columns_as_json(const Book& book, const Chosen& chosen, Output& output);
void faults_as_json(const Book& book, const Chosen& chosen, Output& output);
void tables_as_json(const Book& book, const Chosen& chosen, Output& output);
void plug_ins_as_json(const Book& book, const Chosen& chosen, Output& output);

} // namespace libsplice::cli
