// Where a job's ropes and a shop's rope lists meet the tables.
#pragma once

#include "libsplice/catalogue/catalogue.h"
#include "libsplice/catalogue/rope_facts.h"
#include "libsplice/job/line.h"
#include "libsplice/job/ropes/rope_rows.h"

#include <functional>
#include <optional>

namespace libsplice {

/// Takes a fault of a row, with its place and field.
using OnRopeFault = std::function<void(Fault)>;

/// The rope of a row of a rope list, or of a job's `[[rope]]`; every figure has `source`. What the
/// row does not state it has from the tables, as a rope that is only described has it. Nothing
/// after a fault: Code::rope_not_understood, and those of state_facts().
[[nodiscard]] std::optional<Rope> rope_of_row(const RopeRow& row, const Catalogue& catalogue,
                                              CitationId source, const OnRopeFault& refuse);

/// Reads a rope list and adds its ropes to the catalogue, each figure with the list as its source.
/// False if there is any fault; every one is pushed.
[[nodiscard]] bool add_rope_list(Input& input, Catalogue& catalogue, FaultSink& faults);

/// What a line's cells say of its rope, in the order of RopeFact.
[[nodiscard]] FactTexts facts_of(const JobLine& line);
/// The column of a fact.
[[nodiscard]] Column column_of(RopeFact fact);

} // namespace libsplice
