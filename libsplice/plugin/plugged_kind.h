// A kind of end from a plug-in: its declaration, and its function behind our own seam.
#pragma once

#include "libsplice/abi/include/splice_plugin.h"
#include "libsplice/allowance/kind.h"
#include "libsplice/plugin/library.h"

#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace libsplice {

/// A kind as its plug-in declares it, checked. Texts are views into the library, which it holds.
struct PluggedKind {
    std::shared_ptr<const Library> library;
    const splice_plugin_allowance_1* functions = nullptr;
    std::string plug_in;     ///< its name, for faults
    std::uint32_t index = 0; ///< in the plug-in's list

    KindDeclaration declaration;
    std::vector<FieldDeclaration> fields;               ///< that the declaration shows
    std::vector<std::vector<std::string_view>> choices; ///< that the fields show, field by field
    std::vector<Item> items;
    std::vector<MarkName> marks;
    std::vector<ValueName> values;
    std::vector<Caution> cautions;
    std::vector<std::vector<Step>> ways; ///< lists of steps
    std::vector<CitationId> citations;   ///< of the plug-in, by its own index
    std::uint32_t cut = SPLICE_CUT_USUAL;
};

/// Works out one end. Whatever the plug-in does wrong is a Fault of the 6xx family that names it;
/// what it refuses carries the code and the reason that it gives.
[[nodiscard]] Result<End> work_out(const PluggedKind& kind, const Request& request);

} // namespace libsplice
