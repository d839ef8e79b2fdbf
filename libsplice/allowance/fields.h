// From fields as text to fields bound to a kind's declaration.
#pragma once

#include "libsplice/allowance/book.h"

namespace libsplice {

/// Reads one value to its declaration: a length may also be a count of rope diameters (`72 D`), a
/// ratio a percentage. Code::field_unreadable, Code::field_out_of_range (which names the limits).
[[nodiscard]] Result<double> read_field(const FieldDeclaration& declaration, const FieldText& field,
                                        Length diameter);

/// Binds all fields, `diameter` being what a `D` stands for. Code::unknown_field names the nearest
/// field of the kind; Code::field_missing.
[[nodiscard]] Result<Fields> bind_fields(const KindDeclaration& kind, Length diameter,
                                         std::span<const FieldText> fields);

/// The first field that is missing or out of range, if one is. Numbers are in SI units; a choice is
/// the index of its word.
[[nodiscard]] std::optional<Fault> check_fields(const KindDeclaration& kind, const Fields& fields);

} // namespace libsplice
