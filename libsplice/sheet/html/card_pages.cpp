// Two even columns, the pages that they fill, and which cards share a page.
#include "libsplice/sheet/html/card_pages.h"

#include <algorithm>
#include <numeric>

namespace libsplice {

namespace {

double sum_of(std::span<const double> blocks) {
    return std::accumulate(blocks.begin(), blocks.end(), 0.0);
}

/// How many of the blocks go into a column of that height, from the first.
std::size_t that_fit(std::span<const double> blocks, double room) {
    std::size_t count = 0;
    while (count < blocks.size() && blocks[count] <= room) {
        room -= blocks[count++];
    }
    return count;
}

} // namespace

std::size_t even_columns(std::span<const double> blocks) {
    double left = 0.0;
    double right = sum_of(blocks);
    std::size_t best = 0;
    double lowest = right;
    for (std::size_t count = 1; count <= blocks.size(); ++count) {
        left += blocks[count - 1];
        right -= blocks[count - 1];
        if (std::max(left, right) < lowest) {
            lowest = std::max(left, right);
            best = count;
        }
    }
    return best;
}

double height_of_columns(std::span<const double> blocks, CardPart part) {
    return std::max(sum_of(blocks.first(part.left)), sum_of(blocks.subspan(part.left, part.right)));
}

std::vector<CardPart> parts_of_card(std::span<const double> blocks, double head, double next_head) {
    std::vector<CardPart> parts;
    double room = height_of_page - head;
    while (true) {
        const std::size_t even = even_columns(blocks);
        const CardPart rest{even, blocks.size() - even};
        if (height_of_columns(blocks, rest) <= room) {
            parts.push_back(rest);
            return parts;
        }
        CardPart part;
        part.left = that_fit(blocks, room);
        if (part.left == 0 && !parts.empty()) {
            part.left = 1; // higher than a page
        }
        part.right = that_fit(blocks.subspan(part.left), room);
        parts.push_back(part);
        blocks = blocks.subspan(part.left + part.right);
        if (blocks.empty()) {
            return parts;
        }
        room = height_of_page - next_head;
    }
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
