// A parsed TOML file as a plain tree whose every node knows its place.
#pragma once

#include "libsplice/base/place.h"
#include "libsplice/base/result.h"

#include <cstdint>
#include <string>
#include <string_view>
#include <utility>
#include <variant>
#include <vector>

namespace libsplice {

/// One value of a document. A table keeps its keys in the order of the file.
class Node {
  public:
    using Array = std::vector<Node>;
    using Table = std::vector<std::pair<std::string, Node>>;
    using Value = std::variant<std::string, std::int64_t, double, bool, Array, Table>;

    Node(Value value, Place at) : value_(std::move(value)), at_(std::move(at)) {}

    [[nodiscard]] const Place& at() const { return at_; }
    /// Null unless the node is of that sort.
    [[nodiscard]] const std::string* text() const { return std::get_if<std::string>(&value_); }
    [[nodiscard]] const bool* boolean() const { return std::get_if<bool>(&value_); }
    [[nodiscard]] const Array* array() const { return std::get_if<Array>(&value_); }
    [[nodiscard]] const Table* table() const { return std::get_if<Table>(&value_); }
    [[nodiscard]] bool is_number() const;
    [[nodiscard]] bool is_whole() const { return std::holds_alternative<std::int64_t>(value_); }
    /// The number, whole or not; call it only where is_number() holds.
    [[nodiscard]] double number() const;
    /// The node under `key`, or null: not a table, or no such key.
    [[nodiscard]] const Node* find(std::string_view key) const;
    /// A scalar as text, as a cell of a CSV file would hold it (`true` reads `yes`, `false` `no`);
    /// empty for arrays and tables.
    [[nodiscard]] std::string scalar_text() const;

  private:
    Value value_;
    Place at_;
};

/// Parses TOML text. `name` stands as the file in every place. Broken TOML is Code::broken_toml,
/// text that is not UTF-8 is Code::not_utf8. Dates and times are kept as their text.
[[nodiscard]] Result<Node> parse_toml(std::string_view text, const std::string& name);

} // namespace libsplice
