// Facts in the words of the bench, shared by the text sheets.
#pragma once

#include "libsplice/cut/piece.h"
#include "libsplice/sheet/panel/page.h"
#include "libsplice/sheet/words/citation_log.h"
#include "libsplice/sheet/words/fill_text.h"
#include "libsplice/units/show.h"

#include <string>

namespace libsplice {

/// A pull as it is read off a spring balance: `4.5 kg` or `10 lb`.
[[nodiscard]] std::string show_pull(Force force, UnitSystem units);
/// A share as a percentage: `90 %`.
[[nodiscard]] std::string show_share(double share);

/// `90 % of the rope's strength (source)`.
[[nodiscard]] std::string show_retained(const Retained& retained, CitationLog& citing);

/// The ledger as a table, each row's source below it, and the sum last.
void write_ledger(Page& page, std::span<const LedgerRow> ledger, std::string_view sum_name,
                  UnitSystem units, CitationLog& citing);

/// What a bury is, beside the smallest that is published, and how thick the rope is over it.
/// Nothing is written for an end without a bury.
void write_bury(Page& page, const End& allowance, UnitSystem units);

/// Room for what a shop learns its own hand from: the rope over a bury before and after, between
/// the same two marks, or the rope in a knot. Nothing is written for other ends.
void write_measuring(Page& page, const End& allowance);

/// The end's steps, numbered.
void write_steps(Page& page, const TemplateContext& filling);

/// What every sheet says, whatever is on it; then the versions and the documents used.
void write_care(Page& page);
void write_origin(Page& page, const Book& book, const CitationLog& citing);

} // namespace libsplice
