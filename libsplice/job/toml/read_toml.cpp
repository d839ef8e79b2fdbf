// Turns the tables of a TOML job into lines.
#include "libsplice/base/document.h"
#include "libsplice/base/text.h"
#include "libsplice/job/cell_text.h"
#include "libsplice/job/plan_key.h"
#include "libsplice/job/read_job.h"
#include "libsplice/job/ropes/rope_rows.h"
#include "libsplice/job/route/read_route.h"
#include "libsplice/job/toml/toml_shape.h"

#include <algorithm>
#include <deque>
#include <optional>
#include <string>
#include <utility>
#include <vector>

namespace libsplice {

namespace {

/// Builds one line after another, in memory that is used again.
class TomlRows : public CellPlaces {
  public:
    /// `ropes` are those of the same job; both outlive the rows.
    TomlRows(const Node* defaults, std::span<const RopeRow> ropes, bool opens_files,
             FaultSink& faults)
        : routes_(opens_files), defaults_(defaults), ropes_(ropes), faults_(faults) {
        line_.places = this;
    }

    bool hand_on(const Node& table, const OnRow& on_row) {
        gather(table);
        line_.route = routes_.route_of(line_);
        if (fault_) {
            plan_key_.clear();
        } else {
            write_plan_key(line_, plan_key_);
        }
        line_.plan_key = plan_key_;
        return on_row({line_, fault_ ? &*fault_ : nullptr});
    }

    [[nodiscard]] Place place_of(std::uint32_t index) const override {
        return nodes_.at(index)->at();
    }

  private:
    void gather(const Node& table) {
        line_.cells = {};
        line_.own_rope = nullptr;
        nodes_.assign({&table});
        made_texts_.clear();
        fields_.clear();
        fault_.reset();
        for (std::size_t i = 0; i < column_count; ++i) {
            const auto column = static_cast<Column>(i);
            if (const Node* value = find(table, column)) {
                take(column, *value);
            }
        }
        line_.fields = fields_;
        const auto own =
            std::ranges::find(ropes_, line_.text(Column::rope),
                              [](const RopeRow& rope) { return rope.text(RopeColumn::id); });
        line_.own_rope = own == ropes_.end() ? nullptr : &*own;
    }

    /// The line's own value, or the default. A line that says one of length and route does not want
    /// the default of the other.
    [[nodiscard]] const Node* find(const Node& table, Column column) const {
        const Node* own = table.find(column_name(column));
        if (own != nullptr || defaults_ == nullptr) {
            return own;
        }
        if ((column == Column::length && table.find(column_name(Column::route)) != nullptr) ||
            (column == Column::route && table.find(column_name(Column::length)) != nullptr)) {
            return nullptr;
        }
        return defaults_->find(column_name(column));
    }

    void take(Column column, const Node& value) {
        Cell& cell = line_.cells[static_cast<std::size_t>(column)];
        const ColumnDeclaration& declared = declaration_of(column);
        if (declared.sort == CellSort::end && value.table() != nullptr) {
            cell.index = add_node(value);
            take_end(column == Column::end_a ? LineEnd::a : LineEnd::b, *value.table(), cell);
        } else if (value.table() != nullptr || declared.shape == CellShape::tables) {
            cell.index = add_node(value);
            cell.node = &value;
        } else {
            cell = make_cell(value, declared.sort);
        }
    }

    void take_end(LineEnd end, const Node::Table& table, Cell& kind) {
        for (const auto& [key, value] : table) {
            const bool is_kind = key == end_kind_key;
            const Cell cell = make_cell(value, is_kind ? CellSort::end : CellSort::length);
            if (is_kind) {
                kind = cell;
            } else if (!cell.text.empty()) {
                fields_.push_back({end, key, cell});
            }
        }
    }

    Cell make_cell(const Node& value, CellSort sort) {
        Cell cell{.text = settled(trimmed(text_of(value)), {sort}, made_texts_),
                  .index = add_node(value)};
        if (auto fault = text_fault(cell.text)) {
            fault->at = value.at();
            faults_.push(*fault);
            fault_ = fault_ ? std::move(fault_) : std::move(fault);
            cell.text = {};
        }
        return cell;
    }

    std::uint32_t add_node(const Node& node) {
        nodes_.push_back(&node);
        return static_cast<std::uint32_t>(nodes_.size() - 1);
    }

    std::string_view text_of(const Node& value) {
        if (const auto* text = value.text()) {
            return *text;
        }
        const auto* items = value.array();
        if (items == nullptr) {
            return made_texts_.emplace_back(value.scalar_text());
        }
        std::string& joined = made_texts_.emplace_back();
        for (const Node& item : *items) {
            joined += (joined.empty() ? "" : ", ") + item.scalar_text();
        }
        return joined;
    }

    RouteReader routes_;
    const Node* defaults_;
    std::span<const RopeRow> ropes_;
    FaultSink& faults_;
    JobLine line_;
    std::vector<const Node*> nodes_; ///< of the cells, by their index; the line itself at 0
    std::deque<std::string> made_texts_;
    std::vector<EndFieldCell> fields_;
    std::optional<Fault> fault_;
    std::string plan_key_;
};

/// The fault of `[line]` in place of `[[line]]`, which is what most often breaks a TOML job: the
/// second one of them defines a table again.
std::optional<Fault> single_bracket(std::string_view text, const std::string& file) {
    for (std::uint32_t number = 1; !text.empty(); ++number) {
        const std::size_t end = std::min(text.find('\n'), text.size());
        std::string_view line = trimmed(text.substr(0, end));
        line = trimmed(line.substr(0, line.find_first_of("#\r")));
        for (const std::string_view key : {toml_line_key, toml_rope_key}) {
            if (line == '[' + std::string(key) + ']') {
                return Fault{Code::broken_toml,
                             "write [[" + std::string(key) + "]], with two brackets, above each " +
                                 std::string(key),
                             Place{file, number, 1}, std::string(key)};
            }
        }
        text.remove_prefix(std::min(end + 1, text.size()));
    }
    return std::nullopt;
}

} // namespace

Result<bool> read_toml_job(Input& input, std::span<const std::string_view> end_fields,
                           FaultSink& faults, const OnRow& on_row) {
    const auto text = input.read_all();
    if (!text) {
        faults.push(text.error());
        return Unexpected(text.error());
    }
    const auto document = parse_toml(*text, input.name());
    if (!document) {
        Fault fault = single_bracket(*text, input.name()).value_or(document.error());
        faults.push(fault);
        return Unexpected(std::move(fault));
    }
    if (auto fault = check_toml_job(*document, end_fields, faults)) {
        return Unexpected(std::move(*fault));
    }
    FaultSink rope_faults;
    const auto ropes = read_rope_tables(document->find(toml_rope_key), rope_faults);
    for (const Fault& fault : rope_faults.kept()) {
        faults.push(fault);
    }
    if (!rope_faults.empty()) {
        return Unexpected(rope_faults.kept().front());
    }
    TomlRows rows(document->find(toml_defaults_key), ropes, input.is_file(), faults);
    for (const Node& line : *document->find(toml_line_key)->array()) {
        if (!rows.hand_on(line, on_row)) {
            return false;
        }
    }
    return true;
}

Result<bool> read_toml_line(const Node& line, std::span<const std::string_view> end_fields,
                            FaultSink& faults, const OnRow& on_row) {
    if (auto fault = check_toml_line(line, end_fields, faults)) {
        return Unexpected(std::move(*fault));
    }
    return TomlRows(nullptr, {}, true, faults).hand_on(line, on_row);
}

} // namespace libsplice
