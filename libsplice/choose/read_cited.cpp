// Every key of a record but its id and its other names is a cell with a source of its own.
#include "libsplice/choose/read_cited.h"

#include "libsplice/base/text.h"

#include <array>
#include <utility>

namespace libsplice {

std::optional<CitedRecord> read_cited(TableContext& context, std::string_view sort,
                                      const Node& table) {
    constexpr std::array<std::string_view, 4> keys{"is", "source", "locator", "status"};
    const std::size_t faults_before = context.faults.count();
    CitedRecord record;
    record.sort = sort;
    record.at = table.at();
    record.id = require_text(context, table, "id");
    record.key = record.sort + ' ' + record.id;
    for (const std::string& word : optional_texts(context, table, "words")) {
        record.words.push_back(in_small_letters(word));
    }
    for (const auto& [key, node] : *table.table()) {
        if (key == "id" || key == "words") {
            continue;
        }
        if (node.table() == nullptr) {
            push_fault(context, Code::table_value_wrong, node, key,
                       in_quotes(key) + " must be a table with its source: { is = ..., source = "
                                        "..., locator = ..., status = ... }");
            continue;
        }
        check_keys(context, node, keys);
        CitedCell cell{key, require_text(context, node, "is"), {}};
        if (const auto source = read_citation(context, node, std::nullopt)) {
            cell.source = context.citations.at(*source);
        }
        record.cells.push_back(std::move(cell));
    }
    return context.faults.count() == faults_before ? std::optional(std::move(record))
                                                   : std::nullopt;
}

} // namespace libsplice
