// Which parts of a card lie on which page, in which of two columns, and which cards share a page.
#pragma once

#include <cstddef>
#include <span>
#include <vector>

namespace libsplice {

/// What a page of A4 and of Letter both hold, in millimetres.
inline constexpr double height_of_page = 262.0;

/// What one page holds of a card: how many of its blocks are in the left column and, after them, in
/// the right one.
struct CardPart {
    std::size_t left = 0;
    std::size_t right = 0;

    friend bool operator==(const CardPart&, const CardPart&) = default;
};

/// How many blocks to put in the left of two columns, so that the higher one is as low as their
/// order allows.
[[nodiscard]] std::size_t even_columns(std::span<const double> blocks);

/// The height of two columns: of the higher one.
[[nodiscard]] double height_of_columns(std::span<const double> blocks, CardPart part);

/// A card's blocks in two columns, page by page, in order. A card that fits a page is one part.
/// `head` is what the first part has besides its columns, `next_head` what each further one has.
[[nodiscard]] std::vector<CardPart> parts_of_card(std::span<const double> blocks, double head,
                                                  double next_head);

/// The order in which cards are printed: each page takes the next card and then those after it that
/// still fit, so that few pages stay half empty. Heights are in millimetres, a card's last part in
/// place of the whole where it has several.
[[nodiscard]] std::vector<std::size_t> order_of_cards(std::span<const double> heights);

} // namespace libsplice
