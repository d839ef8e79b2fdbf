// Kinds of stock: what lies in the shop, and what it can buy.
#pragma once

#include <array>
#include <cstddef>
#include <cstdint>
#include <string_view>

namespace libsplice {

enum class StockKind : std::uint8_t {
    reel,   ///< in the shop, as it came or what is left on it
    offcut, ///< in the shop, a piece that was taken from a reel
    order,  ///< not in the shop: what it can order
};

inline constexpr std::array<std::string_view, 3> stock_kind_names{"reel", "offcut", "order"};
static_assert(stock_kind_names.size() == static_cast<std::size_t>(StockKind::order) + 1);

[[nodiscard]] constexpr std::string_view name_of(StockKind kind) {
    return stock_kind_names.at(static_cast<std::size_t>(kind));
}

} // namespace libsplice
