// The ropes that a line may be made of, with what is known of each before it is cut.
#pragma once

#include "libsplice/allowance/book.h"
#include "libsplice/catalogue/rope.h"

#include <cstddef>
#include <deque>
#include <optional>
#include <span>
#include <string>
#include <unordered_map>
#include <vector>

namespace libsplice {

/// A rope that may be chosen.
struct Candidate {
    const Rope* rope = nullptr;
    std::optional<RopeStretch> stretch;           ///< if a source gives one
    std::optional<Sourced<double>> working_share; ///< of what it holds, in use
    std::optional<Sourced<Length>> advised_sheave;
    /// Its strength is that of the reel in the job, or of a rope with a record of its own. What any
    /// rope of a sort has never counts for a person.
    bool strength_is_its_own = false;
    bool invented = false;             ///< for the demo: nobody can buy it
    bool at_hand = false;              ///< the stock names it
    std::optional<double> stock_price; ///< of a metre, as the stock has it

    /// Of a metre.
    [[nodiscard]] std::optional<double> price() const {
        return stock_price   ? stock_price
               : rope->price ? std::optional(rope->price->value)
                             : std::nullopt;
    }
};

/// A rope that a stock names or describes.
struct StockedRope {
    std::string rope;
    std::optional<double> price; ///< of a metre
};

/// What the book knows of the rope, which outlives the result.
[[nodiscard]] Candidate candidate_of(const Book& book, const Rope& rope);

/// Every rope of the tables and lists; every rope in words whose least strength was read, in the
/// sizes of the trade; wire and elastic in these sizes, of which nothing is known; and those that a
/// stock names.
class Candidates {
  public:
    /// The ropes of the book, which outlives this, and those of a stock; what it does not know of
    /// these is left out.
    Candidates(const Book& book, std::span<const StockedRope> stock);

    [[nodiscard]] std::size_t size() const { return all_.size(); }
    [[nodiscard]] const Candidate& at(std::size_t index) const { return all_[index]; }

    /// The rope of that id; nothing if it is none of them.
    [[nodiscard]] std::optional<std::size_t> find(const std::string& id) const;

    /// The next size up or down of the same construction and fibre; nothing: there is none. If the
    /// rope is one of the tables or lists, so is the result, unless they have none.
    [[nodiscard]] std::optional<std::size_t> next_up(const Rope& of) const;
    [[nodiscard]] std::optional<std::size_t> next_down(const Rope& of) const;
    /// The next size up in polyester double braid.
    [[nodiscard]] std::optional<std::size_t> polyester_up(const Rope& of) const;

  private:
    void add(const Rope& rope);
    [[nodiscard]] bool is_listed(const Rope& rope) const;
    void add_described(Rope rope);
    void add_generic_sizes(const GenericRope& generic);
    void add_unknown_sizes();
    void add_stocked(const StockedRope& stocked);
    template <class Fits, class Nearer>
    [[nodiscard]] std::optional<std::size_t> nearest(bool listed, Fits fits, Nearer nearer) const;

    const Book& book_;
    std::deque<Rope> described_; ///< ropes that no table has
    std::vector<Candidate> all_;
    std::size_t listed_ = 0; ///< so many, the first ones, are of tables and lists
    std::unordered_map<std::string, std::size_t> by_id_;
};

} // namespace libsplice
