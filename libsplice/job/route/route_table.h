// One table of a route, read key by key; every fault is kept, none stops the next.
#pragma once

#include "libsplice/base/document.h"
#include "libsplice/base/fault.h"
#include "libsplice/units/quantity.h"

#include <cstddef>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace libsplice {

/// Reads values out of a TOML table. A key that is wanted and absent, or whose value cannot be
/// read, is a fault and gives a value of no use.
class RouteTable {
  public:
    /// `node` is of any shape; one that is no table is a fault, and has no keys.
    RouteTable(const Node& node, std::vector<Fault>& faults);

    [[nodiscard]] const Node& node() const { return node_; }
    [[nodiscard]] bool has(std::string_view key) const { return node_.find(key) != nullptr; }

    /// Every other key is a fault that names the nearest: Code::route_not_readable.
    void allow_only(std::span<const std::string_view> keys);

    /// A length of 0 or more; nothing where the key is absent.
    std::optional<Length> length(std::string_view key);
    /// A length over 0.
    Length need_length(std::string_view key);
    /// A whole number from `lowest` to 100,000.
    std::size_t need_count(std::string_view key, std::size_t lowest);
    /// A number over 0, up to 100,000.
    double need_number(std::string_view key);
    /// One of the words, as its index; nothing where it is none of them.
    std::optional<std::size_t> need_choice(std::string_view key,
                                           std::span<const std::string_view> words);
    /// The items of an array of at least `at-least`; empty where there are none.
    std::span<const Node> need_array(std::string_view key, std::size_t least);

    void add(Fault fault, const Node& at);

  private:
    const Node* need(std::string_view key);

    const Node& node_;
    std::vector<Fault>& faults_;
};

} // namespace libsplice
