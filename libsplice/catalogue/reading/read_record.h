// What every record of a table has in common: its keys, its words and its source.
#pragma once

#include "libsplice/base/document.h"
#include "libsplice/base/fault_sink.h"
#include "libsplice/base/text.h"
#include "libsplice/catalogue/catalogue.h"

#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace libsplice {

/// What the readers of records share: the sources known so far, the book of citations and the place
/// for faults.
struct TableContext {
    const std::vector<Source>& sources;
    const Aliases& aliases;
    Citations& citations;
    FaultSink& faults;
};

/// Pushes a fault of the table at `at`.
void push_fault(TableContext& context, Code code, const Node& at, std::string field,
                std::string text);

/// Pushes a fault for each key of `table` that is not among `known`, with the nearest that is.
void check_keys(TableContext& context, const Node& table, std::span<const std::string_view> known);

/// The text under `key`, without blanks at its ends; empty after a fault: no such key, no text, or
/// a blank one.
[[nodiscard]] std::string require_text(TableContext& context, const Node& table,
                                       std::string_view key);
/// The same, where the key may be absent.
[[nodiscard]] std::string optional_text(TableContext& context, const Node& table,
                                        std::string_view key);
/// The texts of an array under `key`; none where the key is absent.
[[nodiscard]] std::vector<std::string> optional_texts(TableContext& context, const Node& table,
                                                      std::string_view key);
/// `true` or `false` under `key`; false where the key is absent.
[[nodiscard]] bool optional_flag(TableContext& context, const Node& table, std::string_view key);

/// The word of a vocabulary under `key`, as `read` knows it; nothing after a fault.
template <class Read>
auto read_word(TableContext& context, const Node& table, std::string_view key, Read read,
               std::span<const std::string_view> known) {
    const std::string text = require_text(context, table, key);
    const auto word = read(text);
    if (!word && !text.empty()) {
        push_fault(context, Code::table_value_wrong, *table.find(key), std::string(key),
                   '"' + text + "\" is none of " + listed(known) + did_you_mean(text, known));
    }
    return word;
}

/// The citation that `table` carries: `source`, `locator` and `status`, all three. Where it carries
/// none of them it is `inherited`, which holds for all figures of a record that state no own.
/// Code::source_unknown, Code::table_key_missing, Code::table_value_wrong.
[[nodiscard]] std::optional<CitationId> read_citation(TableContext& context, const Node& table,
                                                      std::optional<CitationId> inherited);

/// The citation that a record carries for all its figures, if it does. After a fault it stands for
/// one, so that the fault is not said again for every figure; the record is lost anyway.
[[nodiscard]] std::optional<CitationId> read_record_citation(TableContext& context,
                                                             const Node& record);

} // namespace libsplice
