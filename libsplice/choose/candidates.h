// The ropes that a line may be made of, with what is known of each before it is cut.
#pragma once

#include "libsplice/allowance/book.h"
#include "libsplice/catalogue/rope.h"

#include <cstddef>
#include <deque>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <unordered_map>
#include <vector>

namespace libsplice {

/// A rope that may be chosen.
struct Candidate {
    const Rope* rope = nullptr;
    std::optional<RopeStretch> stretch;           ///< where a source gives one
    std::optional<Sourced<double>> working_share; ///< of what it holds, in use
    std::optional<Sourced<Length>> advised_sheave;

    [[nodiscard]] std::optional<double> price() const {
        return rope->price ? std::optional(rope->price->value) : std::nullopt;
    }
};

/// Every rope of the tables and lists, and those that are only described.
class Candidates {
  public:
    /// The ropes of the book, which outlives this, and those that `described` names or describes;
    /// what it does not know of these is left out.
    Candidates(const Book& book, std::span<const std::string> described);

    [[nodiscard]] std::size_t size() const { return all_.size(); }
    [[nodiscard]] const Candidate& at(std::size_t index) const { return all_[index]; }

    /// The rope that a text names or describes, added if it is new; nothing if it is not known.
    [[nodiscard]] std::optional<std::size_t> find(std::string_view text);

    /// The next size up or down of the same construction and fibre; nothing: there is none.
    [[nodiscard]] std::optional<std::size_t> next_up(std::size_t index) const;
    [[nodiscard]] std::optional<std::size_t> next_down(std::size_t index) const;
    /// The next size up in polyester double braid.
    [[nodiscard]] std::optional<std::size_t> polyester_up(std::size_t index) const;

  private:
    std::size_t add(const Rope& rope);
    template <class Fits, class Nearer>
    [[nodiscard]] std::optional<std::size_t> nearest(Fits fits, Nearer nearer) const;

    const Book& book_;
    std::deque<Rope> described_; ///< ropes that no table has
    std::vector<Candidate> all_;
    std::unordered_map<std::string, std::size_t> by_id_;
};

} // namespace libsplice
