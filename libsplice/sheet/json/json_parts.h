// Parts that the JSON of a cut sheet and of one end have in common.
#pragma once

#include "libsplice/sheet/json/json_text.h"
#include "libsplice/sheet/panel/citation_log.h"
#include "libsplice/sheet/panel/fill_text.h"

namespace libsplice {

/// The rows as an array; `whole` names what a row without an end belongs to, as in group_of().
void write_ledger(JsonText& json, std::span<const LedgerRow> ledger, std::string_view whole,
                  Citing& citing);

/// The steps as an array of texts, filled in.
void write_steps(JsonText& json, const Filling& filling);

/// A fault as an object: code, text, place, field and, where there is one, the rule.
void write_fault(JsonText& json, const Fault& fault);

/// The key `plug_ins`: name and version of each that the book was opened with.
void write_plug_ins(JsonText& json, const Book& book);

/// The documents used so far, as an array of key and title.
void write_sources(JsonText& json, const Citing& citing);

} // namespace libsplice
