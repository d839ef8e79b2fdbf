// Parts that the JSON of a cut sheet and of one end have in common.
#pragma once

#include "libsplice/sheet/json/json_text.h"
#include "libsplice/sheet/words/citation_log.h"
#include "libsplice/sheet/words/fill_text.h"

namespace libsplice {

/// The rows as an array; `whole` names what a row without an end belongs to, as in group_of(),
/// and `along_route` is the working of a length that follows from a route.
void write_ledger(JsonText& json, std::span<const LedgerRow> ledger, std::string_view whole,
                  CitationLog& citing, std::string_view along_route = {});

/// Marks as the elements of an array that is open. `end` is left out where there is only one.
void write_marks(JsonText& json, std::span<const PieceMark> marks, const Names& names,
                 bool with_end);

/// One step of a piece, `text` its sentence.
void write_step(JsonText& json, const PieceStep& step, std::string_view text);

/// The steps of one end as the elements of an array that is open: action, numbers of the marks that
/// it names and the text, filled in. `end` is null where there is only one.
void write_steps(JsonText& json, std::optional<LineEnd> end, std::span<const PieceMark> marks,
                 const TemplateContext& filling);

/// A fault as an object: code, text, place, field and, where there is one, the rule.
void write_error(JsonText& json, const Fault& fault);

/// The key `plug_ins`: name and version of each that the book was opened with.
void write_plug_ins(JsonText& json, Credits credits);

/// The documents used so far, as an array of key and title.
void write_sources(JsonText& json, const CitationLog& citing);

} // namespace libsplice
