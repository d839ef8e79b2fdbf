// A bench card as blocks of HTML, each with the height that it has on paper.
#pragma once

#include "libsplice/sheet/panel/card/card.h"

#include <cstddef>
#include <string>
#include <vector>

namespace libsplice {

/// A part of a card that is not broken between two pages.
struct CardBlock {
    std::string html;
    double height = 0.0; ///< on paper, in millimetres, on the safe side
};

/// What is drawn of a card; each may be empty.
struct CardPictures {
    std::string bar;                ///< the rope laid straight, every mark on it
    double bar_shape = 0.0;         ///< its height over its width
    std::vector<std::string> ends;  ///< each end as finished, in the order of the card's ends
    std::vector<std::string> steps; ///< of each step
    std::string strips;             ///< the first of each end at true size
    std::size_t strip_count = 0;
};

/// The head: number, name, boats, rope and cut length. `number` is the card's.
[[nodiscard]] CardBlock head_of_card(const Card& card, std::size_t number);
/// The head of a further part of the same card.
[[nodiscard]] CardBlock short_head_of_card(const Card& card, std::size_t number);
/// All below the head, in order.
[[nodiscard]] std::vector<CardBlock> blocks_of(const Card& card, const CardPictures& pictures,
                                               UnitSystem units);

/// The same of a sheet that says how a kind of end is made. Of its pictures, `bar` is the finished
/// end and `bar_shape` its height in millimetres.
[[nodiscard]] CardBlock head_of_method(const Method& method);
[[nodiscard]] std::vector<CardBlock> blocks_of(const Method& method, const CardPictures& pictures);

/// The foot's height.
inline constexpr double height_of_foot = 5.5;

} // namespace libsplice
