// One number of a record, read as it is printed.
#pragma once

#include "libsplice/catalogue/figure.h"
#include "libsplice/catalogue/reading/read_record.h"

#include <optional>
#include <string_view>

namespace libsplice {

/// Reads a number, or a text with a fraction as inches are printed (`11 1/2`). It must be finite
/// and not negative; otherwise Code::table_value_wrong.
[[nodiscard]] std::optional<double> read_printed_number(TableContext& context, const Node& table,
                                                        std::string_view key);

/// Reads `{ value = 72, unit = "D", source = "...", locator = "...", status = "printed" }`, with a
/// spread as `sd`, as `low` and `high` (then `value` may be left out: the middle) or as
/// `plus_minus` and with `spread` as the spread's origin. Limits become the standard deviation of a
/// value that may lie anywhere between them. The unit must suit the figure. Faults are pushed.
/// `besides` is a key of the record that the caller reads itself.
[[nodiscard]] std::optional<Figure> read_figure(TableContext& context, FigureId id,
                                                const Node& table,
                                                std::optional<CitationId> inherited,
                                                std::string_view besides = {});

} // namespace libsplice
