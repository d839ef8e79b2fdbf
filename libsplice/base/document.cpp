// From the TOML library's tree to ours; the only file that knows that library.
#include "libsplice/base/document.h"

#include "libsplice/base/text.h"

#include <gsl/assert>
#include <toml++/toml.h>

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>
#include <optional>
#include <sstream>

namespace libsplice {

namespace {

/// Keys and values within one another may go as deep as this. A job needs six.
constexpr int deepest_nesting = 64;

Unexpected broken(const std::string& what, Place at) {
    return Unexpected(Fault{Code::broken_toml, what, std::move(at)});
}

/// The place of byte `offset`, by counting.
Place place_in(std::string_view text, std::size_t offset, const std::string& name) {
    const std::string_view before = text.substr(0, offset);
    const auto line_start = before.rfind('\n') + 1; // npos + 1 is 0
    return Place{name, static_cast<std::uint32_t>(std::ranges::count(before, '\n') + 1),
                 static_cast<std::uint32_t>(character_count(before.substr(line_start)) + 1)};
}

/// Offset just past the quoted part that starts at `open`, or past the quote alone where the line
/// holds no second one.
std::size_t after_quotes(std::string_view text, std::size_t open) {
    for (std::size_t i = open + 1; i < text.size() && text[i] != '\n'; ++i) {
        if (text[i] == '\\' && text[open] == '"') {
            ++i;
        } else if (text[i] == text[open]) {
            return i + 1;
        }
    }
    return open + 1;
}

/// Where a dotted key has more parts than any document of ours, if one does. The TOML library takes
/// its tree apart by recursion, so a key of many thousand parts would exhaust the stack.
std::optional<std::size_t> find_endless_key(std::string_view text) {
    int dots = 0;
    for (std::size_t i = 0; i < text.size();) {
        const char c = text[i];
        if (c == '"' || c == '\'') {
            i = after_quotes(text, i);
            continue;
        }
        if (c == '#') {
            i = std::min(text.find('\n', i), text.size());
            continue;
        }
        if (c == '\n' || c == '=' || c == ',' || c == '[' || c == '{') {
            dots = 0;
        } else if (c == '.' && ++dots > deepest_nesting) {
            return i;
        }
        ++i;
    }
    return std::nullopt;
}

/// Copies the library's tree. It stops at the first thing that a document of ours may not hold.
class Copier {
  public:
    explicit Copier(const std::string& name) : name_(name) {}

    Result<Node> copy(const toml::node& from, const Place& at, int depth) const;
    [[nodiscard]] Place place(const toml::source_region& source) const {
        return Place{name_, source.begin.line, source.begin.column};
    }

  private:
    Result<Node> copy_table(const toml::table& from, const Place& at, int depth) const;
    Result<Node> copy_array(const toml::array& from, const Place& at, int depth) const;

    const std::string& name_;
};

template <class T>
std::string streamed(const T& value) {
    std::ostringstream text;
    text << value;
    return std::move(text).str();
}

Result<Node> Copier::copy(const toml::node& from, const Place& at, int depth) const {
    if (depth > deepest_nesting) {
        return broken("tables or arrays lie too deep within one another", at);
    }
    switch (from.type()) {
    case toml::node_type::table:
        return copy_table(*from.as_table(), at, depth);
    case toml::node_type::array:
        return copy_array(*from.as_array(), at, depth);
    case toml::node_type::string:
        return Node(from.as_string()->get(), at);
    case toml::node_type::integer:
        return Node(from.as_integer()->get(), at);
    case toml::node_type::floating_point:
        if (!std::isfinite(from.as_floating_point()->get())) {
            return broken("a number must be finite, not inf or nan", at);
        }
        return Node(from.as_floating_point()->get(), at);
    case toml::node_type::boolean:
        return Node(from.as_boolean()->get(), at);
    case toml::node_type::date:
        return Node(streamed(from.as_date()->get()), at);
    case toml::node_type::time:
        return Node(streamed(from.as_time()->get()), at);
    case toml::node_type::date_time:
        return Node(streamed(from.as_date_time()->get()), at);
    case toml::node_type::none:
        break;
    }
    return broken("a value of no known sort", at);
}

Result<Node> Copier::copy_table(const toml::table& from, const Place& at, int depth) const {
    Node::Table table;
    table.reserve(from.size());
    for (const auto& [key, value] : from) {
        auto node = copy(value, place(key.source()), depth + 1);
        if (!node) {
            return node;
        }
        table.emplace_back(std::string(key.str()), *std::move(node));
    }
    std::ranges::stable_sort(table, {}, [](const auto& entry) {
        return std::pair(entry.second.at().line, entry.second.at().column);
    });
    return Node(std::move(table), at);
}

Result<Node> Copier::copy_array(const toml::array& from, const Place& at, int depth) const {
    Node::Array array;
    array.reserve(from.size());
    for (const auto& value : from) {
        auto node = copy(value, place(value.source()), depth + 1);
        if (!node) {
            return node;
        }
        array.push_back(*std::move(node));
    }
    return Node(std::move(array), at);
}

std::string shortest(double value) {
    std::array<char, 32> digits;
    const auto [end, error] = std::to_chars(digits.data(), digits.data() + digits.size(), value);
    Ensures(error == std::errc());
    return std::string(digits.data(), end);
}

} // namespace

bool Node::is_number() const {
    return is_whole() || std::holds_alternative<double>(value_);
}

double Node::number() const {
    Expects(is_number());
    if (const auto* whole = std::get_if<std::int64_t>(&value_)) {
        return static_cast<double>(*whole);
    }
    return *std::get_if<double>(&value_);
}

const Node* Node::find(std::string_view key) const {
    const Table* entries = table();
    if (entries == nullptr) {
        return nullptr;
    }
    const auto found = std::ranges::find(*entries, key, &Table::value_type::first);
    return found == entries->end() ? nullptr : &found->second;
}

std::string Node::scalar_text() const {
    if (const auto* words = text()) {
        return *words;
    }
    if (const auto* whole = std::get_if<std::int64_t>(&value_)) {
        return std::to_string(*whole);
    }
    if (const auto* fractional = std::get_if<double>(&value_)) {
        return shortest(*fractional);
    }
    if (const auto* yes = boolean()) {
        return *yes ? "yes" : "no";
    }
    return {};
}

Result<Node> parse_toml(std::string_view text, const std::string& name) {
    if (const auto bad = first_bad_utf8(text)) {
        return Unexpected(Fault{Code::not_utf8, "the text is not UTF-8; save the file as UTF-8",
                                place_in(text, *bad, name)});
    }
    if (const auto endless = find_endless_key(text)) {
        return broken("a key has too many parts", place_in(text, *endless, name));
    }
    const Copier copier(name);
    try {
        const toml::table tree = toml::parse(text, name);
        return copier.copy(tree, Place{name, 1, 1}, 0);
    } catch (const toml::parse_error& error) {
        return broken("the TOML is broken: " + std::string(error.description()),
                      copier.place(error.source()));
    }
}

} // namespace libsplice
