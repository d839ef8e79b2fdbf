// Gathers ropes, each once, and finds the sizes beside one of them.
#include "libsplice/choose/candidates.h"

#include <array>
#include <functional>
#include <string_view>
#include <utility>

namespace libsplice {

namespace {

/// The metric sizes that rope is sold in. Common practice.
constexpr std::array<std::string_view, 12> sizes_of_the_trade{
    "2 mm", "2.5 mm", "3 mm",  "4 mm",  "5 mm",  "6 mm",
    "8 mm", "10 mm",  "12 mm", "14 mm", "16 mm", "18 mm",
};

} // namespace

Candidate candidate_of(const Book& book, const Rope& rope) {
    const Rules rules = book.common_rules(rope);
    Candidate candidate;
    candidate.rope = &rope;
    candidate.stretch = stretch_of(rope, rules);
    if (rope.breaking && !rope.generic_breaking) {
        const Status status = book.citation(rope.breaking->source).status;
        const Rope* record = book.catalogue().find_rope(rope.id);
        candidate.invented = status == Status::demo;
        candidate.strength_is_its_own =
            status == Status::job || (record != nullptr && !record->generic);
    }
    if (const Figure* share = rules.find(FigureId::working_share)) {
        candidate.working_share = {share->number(), share->source};
    }
    if (const Figure* sheave = rules.find(FigureId::advised_sheave)) {
        candidate.advised_sheave = {sheave->length(rope.diameter), sheave->source};
    }
    return candidate;
}

Candidates::Candidates(const Book& book, std::span<const StockedRope> stock) : book_(book) {
    for (const Rope& rope : book.catalogue().ropes()) {
        if (!rope.generic) {
            add(rope);
        }
    }
    listed_ = all_.size();
    for (const GenericRope& generic : book.catalogue().generics()) {
        add_generic_sizes(generic);
    }
    add_unknown_sizes();
    for (const StockedRope& stocked : stock) {
        add_stocked(stocked);
    }
}

/// The first row that says a price counts.
void Candidates::add_stocked(const StockedRope& stocked) {
    auto rope = book_.catalogue().rope(stocked.rope);
    if (!rope) {
        return;
    }
    const std::string id = rope->id;
    add_described(*std::move(rope));
    Candidate& candidate = all_.at(by_id_.at(id));
    candidate.at_hand = true;
    if (!candidate.stock_price) {
        candidate.stock_price = stocked.price;
    }
}

/// Wire and elastic have no strength in general, and still end in what only they can be made in.
void Candidates::add_unknown_sizes() {
    constexpr std::array sorts{std::pair(Construction::wire, Fibre::stainless_steel),
                               std::pair(Construction::shock_cord, Fibre::rubber)};
    for (const auto& [construction, fibre] : sorts) {
        for (const std::string_view size : sizes_of_the_trade) {
            if (const auto diameter = read_rope_diameter(size)) {
                add_described(book_.catalogue().rope_of({.construction = construction,
                                                         .fibre = fibre,
                                                         .diameter = *diameter,
                                                         .size = std::string(size)}));
            }
        }
    }
}

void Candidates::add(const Rope& rope) {
    if (by_id_.emplace(rope.id, all_.size()).second) {
        all_.push_back(candidate_of(book_, rope));
    }
}

void Candidates::add_described(Rope rope) {
    if (!by_id_.contains(rope.id)) {
        add(described_.emplace_back(std::move(rope)));
    }
}

/// Whoever names a rope in words does not say its grade, so only ropes of an unknown one are added.
void Candidates::add_generic_sizes(const GenericRope& generic) {
    if (generic.grade != FibreGrade::unknown) {
        return;
    }
    for (const std::string_view size : sizes_of_the_trade) {
        const auto diameter = read_rope_diameter(size);
        if (!diameter) {
            continue;
        }
        Rope rope = book_.catalogue().rope_of({.construction = generic.construction,
                                               .fibre = generic.fibre,
                                               .diameter = *diameter,
                                               .size = std::string(size)});
        if (rope.breaking) {
            add_described(std::move(rope));
        }
    }
}

std::optional<std::size_t> Candidates::find(const std::string& id) const {
    const auto known = by_id_.find(id);
    return known == by_id_.end() ? std::nullopt : std::optional(known->second);
}

template <class Fits, class Nearer>
std::optional<std::size_t> Candidates::nearest(bool listed, Fits fits, Nearer nearer) const {
    const auto among = [&](std::size_t from, std::size_t up_to) {
        std::optional<std::size_t> found;
        for (std::size_t i = from; i < up_to; ++i) {
            const Rope& rope = *all_[i].rope;
            if (fits(rope) && (!found || nearer(rope.diameter, all_[*found].rope->diameter))) {
                found = i;
            }
        }
        return found;
    };
    const auto first = listed ? among(0, listed_) : among(listed_, all_.size());
    return first ? first : among(0, all_.size());
}

bool Candidates::is_listed(const Rope& rope) const {
    const auto known = find(rope.id);
    return known && *known < listed_;
}

std::optional<std::size_t> Candidates::next_up(const Rope& of) const {
    return nearest(
        is_listed(of),
        [&](const Rope& rope) {
            return rope.construction == of.construction && rope.fibre == of.fibre &&
                   rope.diameter > of.diameter;
        },
        std::less());
}

std::optional<std::size_t> Candidates::next_down(const Rope& of) const {
    return nearest(
        is_listed(of),
        [&](const Rope& rope) {
            return rope.construction == of.construction && rope.fibre == of.fibre &&
                   rope.diameter < of.diameter;
        },
        std::greater());
}

std::optional<std::size_t> Candidates::polyester_up(const Rope& of) const {
    return nearest(
        is_listed(of),
        [&](const Rope& rope) {
            return rope.construction == Construction::double_braid &&
                   rope.fibre == Fibre::polyester && rope.diameter > of.diameter;
        },
        std::less());
}

} // namespace libsplice
