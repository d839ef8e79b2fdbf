// Gathers ropes, each once, and finds the sizes beside one of them.
#include "libsplice/choose/candidates.h"

#include <functional>
#include <utility>

namespace libsplice {

Candidates::Candidates(const Book& book, std::span<const std::string> described) : book_(book) {
    for (const Rope& rope : book.catalogue().ropes()) {
        if (!rope.generic) {
            add(rope);
        }
    }
    for (const std::string& text : described) {
        static_cast<void>(find(text));
    }
}

std::size_t Candidates::add(const Rope& rope) {
    const auto [at, is_new] = by_id_.emplace(rope.id, all_.size());
    if (!is_new) {
        return at->second;
    }
    const Rules rules = book_.common_rules(rope);
    Candidate candidate;
    candidate.rope = &rope;
    candidate.stretch = stretch_of(rope, rules);
    if (const Figure* share = rules.find(FigureId::working_share)) {
        candidate.working_share = {share->number(), share->source};
    }
    if (const Figure* sheave = rules.find(FigureId::advised_sheave)) {
        candidate.advised_sheave = {sheave->length(rope.diameter), sheave->source};
    }
    all_.push_back(std::move(candidate));
    return all_.size() - 1;
}

std::optional<std::size_t> Candidates::find(std::string_view text) {
    const auto known = by_id_.find(std::string(text));
    if (known != by_id_.end()) {
        return known->second;
    }
    auto rope = book_.catalogue().rope(text);
    if (!rope) {
        return std::nullopt;
    }
    const auto same = by_id_.find(rope->id);
    if (same != by_id_.end()) {
        return same->second;
    }
    return add(described_.emplace_back(*std::move(rope)));
}

template <class Fits, class Nearer>
std::optional<std::size_t> Candidates::nearest(Fits fits, Nearer nearer) const {
    std::optional<std::size_t> found;
    for (std::size_t i = 0; i < all_.size(); ++i) {
        const Rope& rope = *all_[i].rope;
        if (fits(rope) && (!found || nearer(rope.diameter, all_[*found].rope->diameter))) {
            found = i;
        }
    }
    return found;
}

std::optional<std::size_t> Candidates::next_up(std::size_t index) const {
    const Rope& of = *all_[index].rope;
    return nearest(
        [&](const Rope& rope) {
            return rope.construction == of.construction && rope.fibre == of.fibre &&
                   rope.diameter > of.diameter;
        },
        std::less());
}

std::optional<std::size_t> Candidates::next_down(std::size_t index) const {
    const Rope& of = *all_[index].rope;
    return nearest(
        [&](const Rope& rope) {
            return rope.construction == of.construction && rope.fibre == of.fibre &&
                   rope.diameter < of.diameter;
        },
        std::greater());
}

std::optional<std::size_t> Candidates::polyester_up(std::size_t index) const {
    const Rope& of = *all_[index].rope;
    return nearest(
        [&](const Rope& rope) {
            return rope.construction == Construction::double_braid &&
                   rope.fibre == Fibre::polyester && rope.diameter > of.diameter;
        },
        std::less());
}

} // namespace libsplice
