// The checks of a TOML job's keys and of the shapes of their values.
#include "libsplice/job/toml/toml_shape.h"

#include "libsplice/base/text.h"
#include "libsplice/job/cell_text.h"
#include "libsplice/job/vocabulary.h"

#include <algorithm>
#include <array>
#include <string>
#include <utility>

namespace libsplice {

namespace {

bool is_scalar(const Node& node) {
    return node.table() == nullptr && node.array() == nullptr;
}

bool is_list(const Node& node) {
    return node.array() != nullptr && std::ranges::all_of(*node.array(), is_scalar);
}

bool is_end(Column column) {
    return column == Column::end_a || column == Column::end_b;
}

bool is_list_of_tables(const Node& node) {
    return node.array() != nullptr &&
           std::ranges::all_of(*node.array(), [](const Node& item) { return item.table(); });
}

/// What a column's value may be besides a scalar, for the message.
std::string_view shape_words(CellShape shape) {
    switch (shape) {
    case CellShape::list:
        return ", or an array of these";
    case CellShape::table:
        return ", or a table";
    case CellShape::tables:
        return ", or an array of tables";
    case CellShape::plain:
        break;
    }
    return "";
}

bool has_shape(const Node& node, CellShape shape) {
    switch (shape) {
    case CellShape::list:
        return is_list(node);
    case CellShape::table:
        return node.table() != nullptr;
    case CellShape::tables:
        return is_list_of_tables(node);
    case CellShape::plain:
        break;
    }
    return false;
}

class ShapeCheck {
  public:
    ShapeCheck(std::span<const std::string_view> end_fields, FaultSink& faults)
        : end_fields_(end_fields), faults_(faults) {}

    std::optional<Fault> check(const Node& document) {
        for (const auto& [key, value] : *document.table()) {
            if (key == toml_defaults_key) {
                check_line(value, "defaults must be a table: write [defaults] above them");
            } else if (key == toml_line_key) {
                check_lines(value);
            } else if (key != toml_rope_key) { // ropes are checked where they are read
                refuse_key(key, value);
            }
        }
        if (document.find(toml_line_key) == nullptr) {
            refuse({Code::no_heading, "the file has no line; write [[line]] above each",
                    Place{document.at().file}});
        }
        return std::move(first_);
    }

    std::optional<Fault> check_one(const Node& line) {
        check_line(line, "a line must be a table of columns");
        return std::move(first_);
    }

  private:
    void check_lines(const Node& lines) {
        constexpr std::string_view hint = "write [[line]], with two brackets, above each line";
        if (lines.array() == nullptr) {
            refuse_shape(std::string(hint), lines, toml_line_key);
            return;
        }
        for (const Node& line : *lines.array()) {
            check_line(line, std::string(hint));
        }
    }

    void check_line(const Node& line, const std::string& hint) {
        if (line.table() == nullptr) {
            refuse_shape(hint, line, {});
            return;
        }
        for (const auto& [key, value] : *line.table()) {
            if (const auto column = find_column(key)) {
                check_value(*column, value);
            } else if (const auto field = split_end_field(key)) {
                const std::string end(key, 0, key.size() - field->field.size() - 1);
                refuse({Code::unknown_column,
                        "the key " + in_quotes(key) +
                            " is not known; write it without quotes, or as " + end +
                            " = { kind = ..., " + std::string(field->field) + " = ... }",
                        value.at(), key});
            } else {
                refuse(unknown_column("key", key, value.at()));
            }
        }
    }

    void check_value(Column column, const Node& value) {
        const CellShape shape = declaration_of(column).shape;
        if (!is_scalar(value) && !has_shape(value, shape)) {
            const std::string name(column_name(column));
            refuse_shape(name + " must be text, a number, true or false" +
                             std::string(shape_words(shape)),
                         value, name);
        } else if (is_end(column) && value.table() != nullptr) {
            check_end(column, *value.table()); // what other tables hold is for those who use them
        }
    }

    void check_end(Column column, const Node::Table& table) {
        const LineEnd end = column == Column::end_a ? LineEnd::a : LineEnd::b;
        for (const auto& [key, value] : table) {
            if (key != end_kind_key && !find_field(key, end_fields_)) {
                refuse(unknown_end_field("key", {end, key}, end_fields_, value.at()));
            } else if (!is_scalar(value)) {
                const std::string name = std::string(column_name(column)) + '.' + key;
                refuse_shape(name + " must be text, a number, true or false", value, name);
            }
        }
    }

    void refuse_key(const std::string& key, const Node& value) {
        constexpr std::array known{toml_defaults_key, toml_line_key, toml_rope_key};
        const std::string near = did_you_mean(key, known);
        refuse({Code::unknown_column,
                "the key " + in_quotes(key) + " is not known here" +
                    (near.empty() ? "; put it under [defaults] or [[line]]" : near),
                value.at(), key});
    }

    void refuse_shape(std::string text, const Node& value, std::string_view field) {
        refuse({Code::broken_toml, std::move(text), value.at(), std::string(field)});
    }

    void refuse(Fault fault) {
        if (!first_) {
            first_ = fault;
        }
        faults_.push(std::move(fault));
    }

    std::span<const std::string_view> end_fields_;
    FaultSink& faults_;
    std::optional<Fault> first_;
};

} // namespace

std::optional<Fault> check_toml_job(const Node& document,
                                    std::span<const std::string_view> end_fields,
                                    FaultSink& faults) {
    return ShapeCheck(end_fields, faults).check(document);
}

std::optional<Fault> check_toml_line(const Node& line, std::span<const std::string_view> end_fields,
                                     FaultSink& faults) {
    return ShapeCheck(end_fields, faults).check_one(line);
}

} // namespace libsplice
