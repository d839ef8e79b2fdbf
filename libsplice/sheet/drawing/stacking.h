// Texts side by side in rows, so that none lies on another.
#pragma once

#include <algorithm>
#include <cstddef>
#include <utility>
#include <vector>

namespace libsplice {

class Stacking {
  public:
    /// Between two texts of a row there is at least `gap`.
    explicit Stacking(double gap) : gap_(gap) {}

    /// The first row that is free for a text which starts at x and runs to the right, or to the
    /// left if `leftwards`; it is taken from then on. Texts placed earlier hang on posts where they
    /// start, and the row lies beyond every post that would stand in the text.
    std::size_t place(double x, double length, bool leftwards) {
        const double from = leftwards ? x - length : x;
        const double to = leftwards ? x : x + length;
        std::size_t row = 0;
        for (const auto& [post, row_of_post] : posts_) {
            if (from < post + 0.5 * gap_ && post < to + 0.5 * gap_) {
                row = std::max(row, row_of_post);
            }
        }
        while (row < taken_.size() && !free(row, from, to)) {
            ++row;
        }
        if (row == taken_.size()) {
            taken_.emplace_back();
        }
        taken_[row].emplace_back(from, to);
        posts_.emplace_back(x, row);
        return row;
    }

    [[nodiscard]] std::size_t rows() const { return taken_.size(); }

  private:
    [[nodiscard]] bool free(std::size_t row, double from, double to) const {
        return std::ranges::none_of(taken_[row], [&](const auto& other) {
            return from < other.second + gap_ && other.first < to + gap_;
        });
    }

    double gap_;
    std::vector<std::vector<std::pair<double, double>>> taken_; ///< of each row, from and to
    std::vector<std::pair<double, std::size_t>> posts_;         ///< where, and up to which row
};

} // namespace libsplice
