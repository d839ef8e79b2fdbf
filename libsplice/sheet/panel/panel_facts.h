// Facts in the words of the bench, shared by the text sheets.
#pragma once

#include "libsplice/cut/piece.h"
#include "libsplice/sheet/panel/page.h"
#include "libsplice/sheet/words/citation_log.h"
#include "libsplice/sheet/words/fill_text.h"
#include "libsplice/sheet/words/show_amounts.h"
#include "libsplice/units/show.h"

#include <string>

namespace libsplice {

/// `90 % of the rope's strength (source)`.
[[nodiscard]] std::string show_retained(const Retained& retained, CitationLog& citing);

/// The ledger as a table, each row's source below it, and the sum last.
void write_ledger(Page& page, std::span<const LedgerRow> ledger, std::string_view sum_name,
                  UnitSystem units, CitationLog& citing);

/// The end's steps, numbered.
void write_steps(Page& page, const TemplateContext& filling);

/// What every sheet says, whatever is on it; then the versions and the documents used.
void write_care(Page& page);
void write_origin(Page& page, Credits credits, const CitationLog& citing);

} // namespace libsplice
