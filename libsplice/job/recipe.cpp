// Runs the deciding cells of a line together.
#include "libsplice/job/recipe.h"

#include "libsplice/base/document.h"

#include <array>

namespace libsplice {

namespace {

constexpr char separator = '\x1f';

constexpr std::array deciding{
    Column::rope,     Column::route,     Column::tension,    Column::end_a,  Column::end_b,
    Column::fit,      Column::tolerance, Column::made_first, Column::bedded, Column::person,
    Column::load,     Column::spare,     Column::extra,      Column::wear,   Column::strip,
    Column::sleeve,   Column::headroom,  Column::travel,     Column::cleat,  Column::passes,
    Column::turnable, Column::wash,      Column::stretch,
};

/// Seven bits a byte, the lowest first; the last byte has its high bit clear.
void append_size(std::string& recipe, std::size_t size) {
    for (; size > 0x7F; size >>= 7U) {
        recipe += static_cast<char>(0x80U | (size & 0x7FU));
    }
    recipe += static_cast<char>(size);
}

void append_text(std::string& recipe, std::string_view text) {
    append_size(recipe, text.size());
    recipe += text;
}

void append_cell(std::string& recipe, char what, const Cell& cell) {
    const char unit = cell.unit ? static_cast<char>(1 + static_cast<int>(*cell.unit)) : '\0';
    const std::array start{separator, what, unit};
    recipe.append(start.data(), start.size());
    append_text(recipe, cell.text);
}

void append_node(std::string& recipe, const Node& node) {
    if (const auto* table = node.table()) {
        recipe += '{';
        append_size(recipe, table->size());
        for (const auto& [key, value] : *table) {
            append_text(recipe, key);
            append_node(recipe, value);
        }
    } else if (const auto* array = node.array()) {
        recipe += '[';
        append_size(recipe, array->size());
        for (const auto& item : *array) {
            append_node(recipe, item);
        }
    } else {
        recipe += '=';
        append_text(recipe, node.scalar_text());
    }
}

} // namespace

void write_recipe(const JobLine& line, std::string& recipe) {
    recipe.clear();
    for (const Column column : deciding) {
        if (const Cell& cell = line.cell(column); !cell.text.empty()) {
            append_cell(recipe, static_cast<char>(column), cell);
        }
    }
    for (const auto& [end, field, cell] : line.fields) {
        append_cell(recipe, end == End::a ? 'a' : 'b', cell);
        append_text(recipe, field);
    }
    if (line.route != nullptr) {
        recipe += separator;
        recipe += 'r';
        append_node(recipe, *line.route);
    }
}

} // namespace libsplice
