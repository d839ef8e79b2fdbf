// One choice for all lines, against every choice that there is, each cut in every way there is.
#include "libsplice/choose/together/together.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <deque>
#include <functional>
#include <limits>
#include <random>
#include <set>

namespace libsplice::testing {
namespace {

constexpr double none = std::numeric_limits<double>::infinity();

/// A reel that can be ordered as often as is wanted.
struct Reel {
    int metres = 0;
    double price = 0.0;
};

/// One sort of rope: by the metre, or on reels only.
struct Sort {
    std::optional<double> per_metre;
    std::vector<Reel> reels;
};

/// A small job: by line and sort, the whole metres of one piece; nothing: the rope does not serve.
struct SmallJob {
    std::vector<Sort> sorts;
    std::vector<std::vector<std::optional<int>>> lines;
};

/// The least that pieces of one sort cost: each in what is left of a reel, or in a new one.
double cost_of(const Sort& sort, std::vector<int> pieces) {
    if (sort.per_metre) {
        double sum = 0.0;
        for (const int piece : pieces) {
            sum += *sort.per_metre * piece;
        }
        return sum;
    }
    std::vector<int> left;
    std::function<double(std::size_t)> place = [&](std::size_t at) -> double {
        if (at == pieces.size()) {
            return 0.0;
        }
        double best = none;
        for (std::size_t i = 0; i < left.size(); ++i) {
            if (left[i] >= pieces[at]) {
                left[i] -= pieces[at];
                best = std::min(best, place(at + 1));
                left[i] += pieces[at];
            }
        }
        for (const Reel& reel : sort.reels) {
            if (reel.metres >= pieces[at]) {
                left.push_back(reel.metres - pieces[at]);
                best = std::min(best, reel.price + place(at + 1));
                left.pop_back();
            }
        }
        return best;
    };
    return place(0);
}

/// The least cost of all choices with at most so many sorts.
double brute_force(const SmallJob& job, std::size_t most_sorts) {
    std::vector<std::vector<int>> pieces(job.sorts.size());
    double best = none;
    std::function<void(std::size_t)> choose = [&](std::size_t line) {
        if (line == job.lines.size()) {
            double sum = 0.0;
            std::size_t used = 0;
            for (std::size_t s = 0; s < job.sorts.size(); ++s) {
                sum += cost_of(job.sorts[s], pieces[s]);
                used += pieces[s].empty() ? 0U : 1U;
            }
            best = used <= most_sorts ? std::min(best, sum) : best;
            return;
        }
        for (std::size_t s = 0; s < job.sorts.size(); ++s) {
            if (const auto& metres = job.lines[line][s]) {
                pieces[s].push_back(*metres);
                choose(line + 1);
                pieces[s].pop_back();
            }
        }
    };
    choose(0);
    return best;
}

/// The same job as the library has it.
class AskedOfAll {
  public:
    explicit AskedOfAll(const SmallJob& job) {
        for (std::size_t s = 0; s < job.sorts.size(); ++s) {
            add_sort(job.sorts[s], "sort " + std::to_string(s));
        }
        for (const auto& line : job.lines) {
            LineChoice choice;
            choice.name = "line " + std::to_string(lines_.size());
            for (std::size_t s = 0; s < line.size(); ++s) {
                if (line[s]) {
                    TriedRope tried;
                    tried.rope = &ropes_[s];
                    tried.verdict.buy = *line[s] * nanometres_per_metre;
                    // What is shown comes first, further ropes behind it.
                    (choice.ropes.size() < 2 ? choice.ropes : choice.others).push_back(tried);
                }
            }
            choice.chosen = 0;
            lines_.push_back(std::move(choice));
        }
    }

    [[nodiscard]] std::optional<Together> answer() const {
        return choose_together({lines_, stock_, 0}, {});
    }
    [[nodiscard]] std::vector<LineChoice>& lines() { return lines_; }

  private:
    void add_sort(const Sort& sort, const std::string& id) {
        Rope rope;
        rope.id = id;
        rope.title = "rope of " + id;
        if (sort.per_metre) {
            rope.price = {*sort.per_metre, cited_job};
        }
        ropes_.push_back(rope);
        for (const Reel& reel : sort.reels) {
            ReelStock row;
            row.id = id + " reel " + std::to_string(reel.metres);
            row.rope = id;
            row.length = reel.metres * nanometres_per_metre;
            row.kind = StockKind::order;
            row.per_reel = std::llround(reel.price * static_cast<double>(money_unit));
            stock_.push_back(row);
        }
    }

    std::deque<Rope> ropes_;
    std::vector<LineChoice> lines_;
    std::vector<ReelStock> stock_;
};

SmallJob random_job(std::minstd_rand& random) {
    const auto any = [&](int low, int high) {
        return low + static_cast<int>(random() % static_cast<unsigned>(high - low + 1));
    };
    SmallJob job;
    for (int s = 0; s < 3; ++s) {
        Sort sort;
        if (any(0, 3) == 0) {
            sort.per_metre = any(1, 5);
        } else {
            for (int r = any(1, 2); r > 0; --r) {
                const int metres = any(10, 24);
                sort.reels.push_back({metres, static_cast<double>(metres * any(1, 4))});
            }
        }
        job.sorts.push_back(sort);
    }
    for (int l = any(2, 5); l > 0; --l) {
        std::vector<std::optional<int>> line(3);
        for (auto& metres : line) {
            metres = any(0, 4) == 0 ? std::nullopt : std::optional(any(2, 10));
        }
        if (std::ranges::none_of(line, [](const auto& metres) { return metres.has_value(); })) {
            line[0] = 3;
        }
        job.lines.push_back(line);
    }
    return job;
}

TEST(Together, CostsWhatTheBestOfAllChoicesDoes) {
    std::minstd_rand random(7);
    for (int round = 0; round < 40; ++round) {
        const SmallJob job = random_job(random);
        const auto together = AskedOfAll(job).answer();
        ASSERT_TRUE(together);
        EXPECT_NEAR(together->cost, brute_force(job, 3), 0.01) << "round " << round;
        EXPECT_TRUE(together->proved) << "round " << round;
        EXPECT_LE(together->cost, *together->line_by_line + 1e-9);
        EXPECT_LE(together->bound, together->cost + 1e-9);
        for (const FewerSorts& fewer : together->fewer) {
            EXPECT_LT(fewer.sorts, together->sorts);
            EXPECT_NEAR(fewer.cost, brute_force(job, fewer.sorts), 0.01) << "round " << round;
        }
    }
}

TEST(Together, SharesAReel) {
    // Each alone is cheapest by the metre or on the small reel; one reel of 20 m holds all three.
    const SmallJob job{{{2.0, {}}, {std::nullopt, {{20, 30.0}}}}, {{7, 6}, {7, 6}, {7, 6}}};
    const auto together = AskedOfAll(job).answer();
    ASSERT_TRUE(together);
    EXPECT_NEAR(*together->line_by_line, 42.0, 1e-9); // 3 x 7 m at 2
    EXPECT_NEAR(together->cost, 30.0, 1e-9);
    EXPECT_EQ(together->sorts, 1U);
}

TEST(Together, APairHasOneRope) {
    const SmallJob job{{{1.0, {}}, {3.0, {}}}, {{5, 5}, {std::nullopt, 5}}};
    AskedOfAll asked(job);
    EXPECT_NEAR(asked.answer()->cost, 20.0, 1e-9);
    for (LineChoice& line : asked.lines()) {
        line.pair = "sheets";
    }
    const auto together = asked.answer();
    ASSERT_TRUE(together);
    EXPECT_NEAR(together->cost, 30.0, 1e-9);
    EXPECT_EQ(together->sorts, 1U);
}

TEST(Together, WhatIsChosenIsShown) {
    // The third rope is a further one and much the cheapest.
    const SmallJob job{{{3.0, {}}, {2.0, {}}, {1.0, {}}}, {{5, 5, 5}}};
    AskedOfAll asked(job);
    JobChoice choice;
    choice.together = asked.answer();
    choice.lines = asked.lines();
    ASSERT_EQ(choice.lines.front().others.size(), 1U);
    take_together(choice);
    const LineChoice& line = choice.lines.front();
    ASSERT_TRUE(line.chosen);
    EXPECT_EQ(line.ropes.at(*line.chosen).rope->id, "sort 2");
    EXPECT_EQ(line.ropes.at(*line.chosen).shown_as, ShownAs::together);
}

TEST(Together, ALineWithoutAPriceIsLeftOut) {
    SmallJob job{{{1.0, {}}, {std::nullopt, {}}}, {{5, std::nullopt}, {std::nullopt, 5}}};
    const auto together = AskedOfAll(job).answer();
    ASSERT_TRUE(together);
    EXPECT_EQ(together->left_out, (std::vector<std::size_t>{1}));
    EXPECT_FALSE(together->chosen.at(1));
    job.lines = {{std::nullopt, 5}};
    EXPECT_FALSE(AskedOfAll(job).answer());
}

} // namespace
} // namespace libsplice::testing
