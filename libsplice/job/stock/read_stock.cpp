// Stock files, CSV or TOML, and the same written again.
#include "libsplice/base/document.h"
#include "libsplice/base/text.h"
#include "libsplice/job/cell_text.h"
#include "libsplice/job/csv/named_columns.h"
#include "libsplice/job/stock/stock.h"
#include "libsplice/job/stock/stock_cells.h"

#include <algorithm>
#include <deque>
#include <set>

namespace libsplice {

namespace {

constexpr std::string_view stock_key = "stock";

std::vector<std::string_view> stock_column_names() {
    std::vector<std::string_view> names;
    std::ranges::transform(stock_columns, std::back_inserter(names), &FileColumn::name);
    return names;
}

Fault unknown_key(std::string_view name) {
    const auto names = stock_column_names();
    const std::string near = did_you_mean(name, names);
    return {Code::unknown_column,
            "the key " + in_quotes(name) + " is not known" +
                (near.empty() ? "; a stock has " + listed(names) : near),
            {},
            std::string(name)};
}

class StockReader {
  public:
    explicit StockReader(Input& input) : input_(input) {}

    void read_csv();
    void read_toml();
    std::vector<StockRow> rows;
    std::vector<Fault> faults;

  private:
    void read_record(const NamedColumns& columns);
    void read_stock(const Node& stock);
    void take(const StockCells& cells);
    void add(Fault fault, Place at) {
        fault.at = std::move(at);
        faults.push_back(std::move(fault));
    }
    Input& input_;
    std::set<std::string> ids_;
};

void StockReader::read_csv() {
    NamedColumns columns(input_, "the stock", stock_columns, faults);
    if (!columns.read_heading()) {
        return;
    }
    for (const StockColumn needed :
         {StockColumn::id, StockColumn::rope, StockColumn::length, StockColumn::kind}) {
        const auto column = static_cast<std::size_t>(needed);
        if (!columns.has(column)) {
            columns.add({Code::no_heading, "the stock has no column " + in_quotes(name_of(needed))},
                        column);
        }
    }
    const bool complete = faults.empty();
    while (complete && columns.next()) {
        read_record(columns);
    }
}

void StockReader::read_record(const NamedColumns& columns) {
    StockCells cells;
    for (std::size_t column = 0; column < stock_column_count; ++column) {
        cells.at(column) = {columns.cell(column), columns.unit(column), columns.place_of(column)};
    }
    take(cells);
}

void StockReader::take(const StockCells& cells) {
    StockRow row = read_stock_row(cells, faults);
    if (!row.id.empty() && !ids_.insert(row.id).second) {
        add({Code::duplicate_stock,
             "the id " + in_quotes(row.id) +
                 " occurs twice; give each row of the stock an id of its own"},
            row.place);
    }
    rows.push_back(std::move(row));
}

void StockReader::read_toml() {
    const auto text = input_.read_all();
    if (!text) {
        faults.push_back(text.error());
        return;
    }
    const auto document = parse_toml(*text, input_.name());
    if (!document) {
        faults.push_back(document.error());
        return;
    }
    for (const auto& [key, value] : *document->table()) {
        if (key != stock_key || value.array() == nullptr) {
            add(key == stock_key ? Fault{Code::broken_toml, "write [[stock]] above each row"}
                                 : Fault{Code::unknown_column, "the key " + in_quotes(key) +
                                                                   " is not known here; write "
                                                                   "[[stock]] above each row"},
                value.at());
            continue;
        }
        for (const Node& stock : *value.array()) {
            read_stock(stock);
        }
    }
}

void StockReader::read_stock(const Node& stock) {
    if (stock.table() == nullptr) {
        add({Code::broken_toml, "a row of the stock must be a table: write [[stock]] above it"},
            stock.at());
        return;
    }
    StockCells cells;
    for (StockCell& cell : cells) {
        cell.place = stock.at();
    }
    std::deque<std::string> texts;
    for (const auto& [key, value] : *stock.table()) {
        const auto known = std::ranges::find(stock_columns, key, &FileColumn::name);
        if (known == stock_columns.end()) {
            add(unknown_key(key), value.at());
        } else if (value.array() != nullptr || value.table() != nullptr) {
            add({Code::broken_toml, key + " must be text or a number"}, value.at());
        } else {
            const std::string& text = texts.emplace_back(value.scalar_text());
            cells.at(static_cast<std::size_t>(known - stock_columns.begin())) = {
                settled(trimmed(text), {known->sort}, texts), {}, value.at()};
        }
    }
    take(cells);
}

/// Quoted where it must be (RFC 4180).
std::string csv_cell(const std::string& text) {
    if (text.find_first_of(",\"\r\n") == std::string::npos) {
        return text;
    }
    std::string quoted = "\"";
    for (const char c : text) {
        quoted += c == '"' ? "\"\"" : std::string(1, c);
    }
    return quoted + '"';
}

std::string toml_text(const std::string& text) {
    constexpr std::string_view digits = "0123456789abcdef";
    std::string quoted = "\"";
    for (const char c : text) {
        const auto byte = static_cast<unsigned char>(c);
        if (byte < 0x20U || byte == 0x7fU) {
            quoted += "\\u00";
            quoted += digits[byte >> 4U];
            quoted += digits[byte & 0xfU];
        } else {
            quoted += c == '"' || c == '\\' ? std::string("\\") + c : std::string(1, c);
        }
    }
    return quoted + '"';
}

std::string csv_stock(std::span<const StockRow> rows) {
    std::string text;
    for (const FileColumn& column : stock_columns) {
        text += (text.empty() ? "" : ",") + std::string(column.name);
    }
    text += '\n';
    for (const StockRow& row : rows) {
        for (std::size_t i = 0; i < stock_column_count; ++i) {
            text += (i == 0 ? "" : ",") + csv_cell(row.texts.at(i));
        }
        text += '\n';
    }
    return text;
}

std::string toml_stock(std::span<const StockRow> rows) {
    std::string text;
    for (const StockRow& row : rows) {
        text += (text.empty() ? "[[" : "\n[[") + std::string(stock_key) + "]]\n";
        for (std::size_t i = 0; i < stock_column_count; ++i) {
            if (!row.texts.at(i).empty()) {
                text += std::string(stock_columns.at(i).name) + " = " + toml_text(row.texts.at(i)) +
                        '\n';
            }
        }
    }
    return text;
}

} // namespace

bool is_toml_stock(std::string_view name) {
    return name.ends_with(".toml");
}

Result<std::vector<StockRow>> read_stock(Input& input, FaultSink& faults) {
    StockReader reader(input);
    if (is_toml_stock(input.name())) {
        reader.read_toml();
    } else {
        reader.read_csv();
    }
    for (const Fault& fault : reader.faults) {
        faults.push(fault);
    }
    if (!reader.faults.empty()) {
        return Unexpected(reader.faults.front());
    }
    return std::move(reader.rows);
}

std::string write_stock(std::span<const StockRow> rows, bool toml) {
    return toml ? toml_stock(rows) : csv_stock(rows);
}

} // namespace libsplice
