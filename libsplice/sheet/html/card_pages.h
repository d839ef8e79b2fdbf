// Which cards share a page, and which take more than one.
#pragma once

#include <cstddef>
#include <span>
#include <vector>

namespace libsplice {

/// What a page of A4 and of Letter both hold, in millimetres.
inline constexpr double height_of_page = 262.0;

/// Which of a card's blocks lie together, from the first: how many in each part. A card that fits a
/// page is one part; `head`, `next_head` and `foot` are the heights of what each part has besides.
[[nodiscard]] std::vector<std::size_t> parts_of_card(std::span<const double> blocks, double head,
                                                     double next_head, double foot);

/// The order in which cards are printed: each page takes the next card and then those after it that
/// still fit, so that few pages stay half empty. Heights are in millimetres, a card's last part in
/// place of the whole where it has several.
[[nodiscard]] std::vector<std::size_t> order_of_cards(std::span<const double> heights);

} // namespace libsplice
