// Runs the deciding cells of a line together into one key.
#include "libsplice/job/plan_key.h"

#include "libsplice/base/document.h"
#include "libsplice/job/ropes/rope_rows.h"

#include <algorithm>
#include <array>

namespace libsplice {

namespace {

static_assert(column_count < 'a', "a column's number is told from an end's letter");
constexpr char separator = '\x1f';

/// How many columns decide.
constexpr auto deciding_count =
    static_cast<std::size_t>(std::ranges::count(job_columns, true, &ColumnDeclaration::decides));

/// The columns that decide how a line is made, as their table says.
constexpr auto deciding = [] {
    std::array<Column, deciding_count> chosen{};
    std::size_t next = 0;
    for (const ColumnDeclaration& column : job_columns) {
        if (column.decides) {
            chosen.at(next++) = column.id;
        }
    }
    return chosen;
}();

/// Seven bits a byte, the lowest first; the last byte has its high bit clear.
void append_size(std::string& plan_key, std::size_t size) {
    for (; size > 0x7F; size >>= 7U) {
        plan_key += static_cast<char>(0x80U | (size & 0x7FU));
    }
    plan_key += static_cast<char>(size);
}

void append_text(std::string& plan_key, std::string_view text) {
    append_size(plan_key, text.size());
    plan_key += text;
}

void append_cell(std::string& plan_key, char what, const Cell& cell) {
    const char unit = cell.unit ? static_cast<char>(1 + static_cast<int>(*cell.unit)) : '\0';
    const std::array start{separator, what, unit};
    plan_key.append(start.data(), start.size());
    append_text(plan_key, cell.text);
}

/// A table or an array is said with its size, so that where it ends is known.
void append_node(std::string& plan_key, const Node& node) {
    if (const auto* table = node.table()) {
        plan_key += '{';
        append_size(plan_key, table->size());
        for (const auto& [key, value] : *table) {
            append_text(plan_key, key);
            append_node(plan_key, value);
        }
    } else if (const auto* array = node.array()) {
        plan_key += '[';
        append_size(plan_key, array->size());
        for (const auto& item : *array) {
            append_node(plan_key, item);
        }
    } else {
        plan_key += '=';
        append_text(plan_key, node.scalar_text());
    }
}

} // namespace

void write_plan_key(const JobLine& line, std::string& plan_key) {
    plan_key.clear();
    for (const Column column : deciding) {
        const Cell& cell = line.cell(column);
        if (cell.empty()) {
            continue;
        }
        append_cell(plan_key, static_cast<char>(column), cell);
        if (cell.node != nullptr) {
            append_node(plan_key, *cell.node);
        }
    }
    if (line.own_rope != nullptr) {
        for (const RopeRow::Cell& cell : line.own_rope->cells) {
            append_text(plan_key, cell.text);
        }
    }
    for (const auto& [end, field, cell] : line.fields) {
        append_cell(plan_key, end == LineEnd::a ? 'a' : 'b', cell);
        append_text(plan_key, field);
    }
}

} // namespace libsplice
