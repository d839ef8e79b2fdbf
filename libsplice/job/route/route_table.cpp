// Takes values out of a table by key, and keeps a fault for each that is missing, wrong or
// unknown.
#include "libsplice/job/route/route_table.h"

#include "libsplice/base/text.h"
#include "libsplice/job/cell_text.h"
#include "libsplice/job/route/route_values.h"
#include "libsplice/units/read.h"

#include <algorithm>

namespace libsplice {

namespace {

constexpr std::size_t most = 100'000;

std::string out_of_range(std::string_view key, std::string_view limits) {
    return "the " + std::string(key) + " is out of range; it may be " + std::string(limits) +
           " to 100,000";
}

} // namespace

RouteTable::RouteTable(const Node& node, std::vector<Fault>& faults)
    : node_(node), faults_(faults) {
    if (node.table() == nullptr) {
        add({Code::route_not_readable, "this must be a table: write { ... }"}, node);
    }
}

void RouteTable::add(Fault fault, const Node& at) {
    fault.at = at.at();
    fault.field = "route";
    faults_.push_back(std::move(fault));
}

void RouteTable::allow_only(std::span<const std::string_view> keys) {
    if (node_.table() == nullptr) {
        return;
    }
    for (const auto& [key, value] : *node_.table()) {
        if (std::ranges::find(keys, key) == keys.end()) {
            const std::string near = did_you_mean(key, keys);
            add({Code::route_not_readable,
                 "the key " + in_quotes(key) + " is not known here" +
                     (near.empty() ? "; this table takes " + listed(keys) : near)},
                value);
        }
    }
}

const Node* RouteTable::need(std::string_view key) {
    const Node* value = node_.find(key);
    if (value == nullptr && node_.table() != nullptr) {
        add({Code::route_not_readable, "this route needs its " + std::string(key)}, node_);
    }
    return value;
}

std::optional<Length> RouteTable::length(std::string_view key) {
    const Node* value = node_.find(key);
    if (value == nullptr) {
        return std::nullopt;
    }
    auto length = read_route_length(value->scalar_text(), Length());
    if (!length) {
        Fault fault = std::move(length).error();
        fault.text = std::string(key) + ": " + fault.text;
        add(std::move(fault), *value);
        return Length();
    }
    return *length;
}

Length RouteTable::need_length(std::string_view key) {
    const Node* value = need(key);
    if (value == nullptr) {
        return {};
    }
    const std::size_t before = faults_.size();
    const Length read = length(key).value_or(Length());
    if (faults_.size() == before && !(read > Length())) {
        add({Code::value_out_of_range, std::string(key) + " must be over 0"}, *value);
    }
    return read;
}

std::size_t RouteTable::need_count(std::string_view key, std::size_t lowest) {
    const Node* value = need(key);
    if (value == nullptr) {
        return lowest;
    }
    const auto count = read_count(value->scalar_text(), static_cast<std::int64_t>(lowest),
                                  static_cast<std::int64_t>(most));
    if (!count) {
        Fault fault = count.error();
        fault.text = std::string(key) + ": " + fault.text;
        add(std::move(fault), *value);
        return lowest;
    }
    return static_cast<std::size_t>(*count);
}

double RouteTable::need_number(std::string_view key) {
    const Node* value = need(key);
    if (value == nullptr) {
        return 0.0;
    }
    const auto number = read_number(value->scalar_text());
    if (!number) {
        add(number.error(), *value);
        return 0.0;
    }
    if (!(*number > 0.0) || *number > static_cast<double>(most)) {
        add({Code::value_out_of_range, out_of_range(key, "over 0")}, *value);
        return 0.0;
    }
    return *number;
}

std::optional<std::size_t> RouteTable::need_choice(std::string_view key,
                                                   std::span<const std::string_view> words) {
    const Node* value = need(key);
    if (value == nullptr) {
        return std::nullopt;
    }
    const std::string text = value->scalar_text();
    const auto found = std::ranges::find(words, text);
    if (found == words.end()) {
        add({Code::not_a_choice, in_quotes(text) + " is not one of " + listed(words)}, *value);
        return std::nullopt;
    }
    return static_cast<std::size_t>(found - words.begin());
}

std::span<const Node> RouteTable::need_array(std::string_view key, std::size_t least) {
    const Node* value = need(key);
    if (value == nullptr) {
        return {};
    }
    if (value->array() == nullptr || value->array()->size() < least) {
        add({Code::route_not_readable,
             std::string(key) + " must be an array of at least " + std::to_string(least)},
            *value);
        return {};
    }
    return *value->array();
}

} // namespace libsplice
