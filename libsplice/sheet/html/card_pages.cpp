// Which cards share a page, and which take more than one.
#include "libsplice/sheet/html/card_pages.h"

#include <algorithm>

namespace libsplice {

std::vector<std::size_t> parts_of_card(std::span<const double> blocks, double head,
                                       double next_head, double foot) {
    std::vector<std::size_t> parts{0};
    double height = head + foot;
    for (const double block : blocks) {
        if (parts.back() != 0 && height + block > height_of_page) {
            parts.push_back(0);
            height = next_head + foot;
        }
        ++parts.back();
        height += block;
    }
    return parts;
}

std::vector<std::size_t> order_of_cards(std::span<const double> heights) {
    constexpr std::size_t looked_at = 40; // of the cards that follow, so that few change places
    std::vector<std::size_t> order;
    std::vector<bool> placed(heights.size(), false);
    for (std::size_t next = 0; next < heights.size(); ++next) {
        if (placed[next]) {
            continue;
        }
        double room = height_of_page - heights[next];
        order.push_back(next);
        placed[next] = true;
        const std::size_t last = std::min(heights.size(), next + looked_at);
        for (std::size_t other = next + 1; other < last; ++other) {
            if (!placed[other] && heights[other] <= room) {
                order.push_back(other);
                placed[other] = true;
                room -= heights[other];
            }
        }
    }
    return order;
}

} // namespace libsplice
