// One bit for each sum, shifted and joined for every piece; a sum is traced back through the
// rows.
#include "libsplice/reel/solver/fit/subset_sums.h"

#include <algorithm>

namespace libsplice {

namespace {

constexpr std::size_t word_bits = 64;
constexpr unsigned later_one_in = 8;

} // namespace

/// Like pieces are taken in doubling numbers, so that every count can be made up of few bundles.
void SubsetSums::set_bundles(std::span<const Piece> pieces) {
    bundles_.clear();
    for (std::size_t p = 0; p < pieces.size(); ++p) {
        std::int64_t most = std::min(pieces[p].most, capacity_ / pieces[p].size);
        for (std::int64_t bundle = 1; most > 0; bundle *= 2) {
            const std::int64_t count = std::min(bundle, most);
            bundles_.push_back({p, static_cast<std::int32_t>(count), count * pieces[p].size});
            most -= count;
        }
    }
}

void SubsetSums::make(std::span<const Piece> pieces, Amount capacity) {
    capacity_ = capacity;
    pieces_ = pieces.size();
    set_bundles(pieces);
    words_ = static_cast<std::size_t>(capacity) / word_bits + 1;
    work_ = 0;
    filled_ = 1;
    sums_.resize(std::max(sums_.size(), (bundles_.size() + 1) * words_));
    std::fill_n(sums_.begin(), words_, Word{0});
    sums_[0] = 1;
    for (std::size_t b = 0; b < bundles_.size(); ++b) {
        if (can_be_had(b, capacity)) {
            bundles_.resize(b);
            break;
        }
        add(b);
    }
}

/// The row with the bundle: that without it, and the same again shifted by the bundle's size.
void SubsetSums::add(std::size_t bundle) {
    const auto size = static_cast<std::size_t>(bundles_[bundle].size);
    const std::size_t whole = size / word_bits;
    const std::size_t part = size % word_bits;
    const Word* without = sums_.data() + bundle * words_;
    Word* with = sums_.data() + (bundle + 1) * words_;
    filled_ = std::min(words_, filled_ + whole + 1);
    std::copy_n(without, words_, with);
    if (part == 0) {
        for (std::size_t w = whole; w < filled_; ++w) {
            with[w] |= without[w - whole];
        }
    } else if (whole < filled_) {
        with[whole] |= without[0] << part;
        for (std::size_t w = whole + 1; w < filled_; ++w) {
            with[w] |= without[w - whole] << part | without[w - whole - 1] >> (word_bits - part);
        }
    }
    work_ += static_cast<std::int64_t>(words_);
}

bool SubsetSums::can_be_had(std::size_t bundles, Amount sum) const {
    const auto bit = static_cast<std::size_t>(sum);
    return (sums_[bundles * words_ + bit / word_bits] >> (bit % word_bits) & 1U) != 0;
}

Amount SubsetSums::largest() const {
    Amount sum = capacity_;
    while (!can_be_had(bundles_.size(), sum)) {
        --sum;
    }
    return sum;
}

std::vector<std::int32_t> SubsetSums::pieces_of(Amount sum, std::minstd_rand& random) const {
    std::vector<std::int32_t> counts(pieces_, 0);
    for (std::size_t b = bundles_.size(); b-- > 0;) {
        const Bundle& bundle = bundles_[b];
        if (bundle.size > sum || !can_be_had(b, sum - bundle.size)) {
            continue;
        }
        if (!can_be_had(b, sum) || random() % later_one_in == 0) {
            counts[bundle.piece] += bundle.count;
            sum -= bundle.size;
        }
    }
    return counts;
}

} // namespace libsplice
