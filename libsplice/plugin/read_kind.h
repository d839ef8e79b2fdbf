// A kind from its plug-in's declaration.
#pragma once

#include "libsplice/allowance/name_table.h"
#include "libsplice/plugin/checker.h"
#include "libsplice/plugin/plugged_kind.h"

#include <span>

namespace libsplice {

/// Fills all of `into` that the record declares, and takes its words into `names`. `into.citations`
/// must stand already. Faults are kept by the checker.
void read_kind(const splice_plugin_kind& record, Checker& checker, Names& names, PluggedKind& into);

} // namespace libsplice
