// The lists of `splice list`, as text and as JSON.
#pragma once

#include "cli/list/listings.h"

namespace libsplice::cli {

/// Construction, fibre and diameter, as a job may describe it.
[[nodiscard]] std::string description_of(const Rope& rope);
/// The ropes that are asked for: by id, or described; all of the tables if none is.
[[nodiscard]] std::vector<Rope> chosen_ropes(const ListSource& source, const Chosen& chosen);

void ropes_as_text(const ListSource& source, const Chosen& chosen, Output& output);
/// A kind in one line; with all its fields if it is asked for by name.
void kinds_as_text(const ListSource& source, const Chosen& chosen, Output& output);
void constructions_as_text(const ListSource& source, const Chosen& chosen, Output& output);
void sources_as_text(const ListSource& source, const Chosen& chosen, Output& output);
void columns_as_text(const ListSource& source, const Chosen& chosen, Output& output);
/// Each option that may be set, its value, and where the value comes from.
void settings_as_text(const ListSource& source, const Chosen& chosen, Output& output);
/// An error in one line; with its cause and its remedy if it is asked for by its code.
void errors_as_text(const ListSource& source, const Chosen& chosen, Output& output);
void tables_as_text(const ListSource& source, const Chosen& chosen, Output& output);
void plug_ins_as_text(const ListSource& source, const Chosen& chosen, Output& output);

void ropes_as_json(const ListSource& source, const Chosen& chosen, Output& output);
void kinds_as_json(const ListSource& source, const Chosen& chosen, Output& output);
void constructions_as_json(const ListSource& source, const Chosen& chosen, Output& output);
void sources_as_json(const ListSource& source, const Chosen& chosen, Output& output);
void columns_as_json(const ListSource& source, const Chosen& chosen, Output& output);
void settings_as_json(const ListSource& source, const Chosen& chosen, Output& output);
void errors_as_json(const ListSource& source, const Chosen& chosen, Output& output);
void tables_as_json(const ListSource& source, const Chosen& chosen, Output& output);
void plug_ins_as_json(const ListSource& source, const Chosen& chosen, Output& output);

} // namespace libsplice::cli
