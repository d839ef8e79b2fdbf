// Runs the deciding cells of a line together.
#include "libsplice/job/plan_key.h"

#include "libsplice/base/document.h"

#include <array>

namespace libsplice {

namespace {

constexpr char separator = '\x1f';

constexpr std::array deciding{
    Column::rope,           Column::route,         Column::tension,
    Column::end_a,          Column::end_b,         Column::fit,
    Column::tolerance,      Column::first_end,     Column::prestretched,
    Column::carries_person, Column::load,          Column::spare,
    Column::extra,          Column::wear,          Column::strip,
    Column::sleeve,         Column::headroom,      Column::travel,
    Column::cleat,          Column::smallest_hole, Column::reversible,
    Column::wash,           Column::stretch,
};

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
        if (const Cell& cell = line.cell(column); !cell.text.empty()) {
            append_cell(plan_key, static_cast<char>(column), cell);
        }
    }
    for (const auto& [end, field, cell] : line.fields) {
        append_cell(plan_key, end == LineEnd::a ? 'a' : 'b', cell);
        append_text(plan_key, field);
    }
    if (line.route != nullptr) {
        plan_key += separator;
        plan_key += 'r';
        append_node(plan_key, *line.route);
    }
}

} // namespace libsplice
