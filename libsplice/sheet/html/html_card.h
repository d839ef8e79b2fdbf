// A bench card as blocks of HTML, each with the height that it has on paper.
#pragma once

#include "libsplice/sheet/panel/card/card.h"

#include <cstddef>
#include <span>
#include <string>
#include <vector>

namespace libsplice {

/// A part of a card that is not broken between two columns or pages.
struct CardBlock {
    std::string html;
    double height = 0.0;         ///< on paper, in millimetres
    std::size_t step_number = 0; ///< of a step, which lies in a list with those next to it; else 0
};

/// What is drawn of a card; each may be empty.
struct CardPictures {
    std::string bar;               ///< the rope laid straight, every mark on it
    double bar_shape = 0.0;        ///< its height over its width
    std::vector<std::string> ends; ///< each end as finished, in the order of the card's ends
    std::string strips;            ///< the first of each end at true size
    double strips_height = 0.0;    ///< in millimetres
};

/// Across the card: number, name, boats, rope and cut length, then the facts and the pictures of
/// the rope laid straight. `number` is the card's.
[[nodiscard]] CardBlock head_of_card(const Card& card, const CardPictures& pictures,
                                     std::size_t number);
/// The head of a further part of the same card.
[[nodiscard]] CardBlock short_head_of_card(const Card& card, std::size_t number);
/// All below the head, in order, for columns half as wide as the card.
[[nodiscard]] std::vector<CardBlock> blocks_of(const Card& card, const CardPictures& pictures,
                                               UnitSystem units);

/// The same of a sheet that says how a kind of end is made. `picture` is the finished end.
[[nodiscard]] CardBlock head_of_method(const Method& method, const std::string& picture);
[[nodiscard]] std::vector<CardBlock> blocks_of(const Method& method);

/// Two columns side by side: of the blocks, the first `left` and the others.
[[nodiscard]] std::string columns_html(std::span<const CardBlock> blocks, std::size_t left);

/// Of every part: the foot, what separates it from the next, and 3 mm because a browser may break
/// one line more than the widths of the letters say.
inline constexpr double height_of_foot = 11.0;

} // namespace libsplice
