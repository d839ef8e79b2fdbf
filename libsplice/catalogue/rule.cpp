// Which rules bear on a rope, and the figure that they give for it.
#include "libsplice/catalogue/rule.h"

#include <algorithm>
#include <array>
#include <utility>

namespace libsplice {

namespace {

std::string describe(const Rope& rope) {
    return std::string(name_of(rope.construction)) + " in " + std::string(name_of(rope.fibre));
}

/// The printed sizes on either side of a rope's.
class Neighbours {
  public:
    explicit Neighbours(const Rope& rope) : size_(to_nanometres(rope.diameter)) {}

    void offer(const Rule& rule) {
        if (rule.up_to && to_nanometres(rule.up_to->length) < size_ &&
            (below_ == nullptr || rule.up_to->length > below_->length)) {
            below_ = &*rule.up_to;
        }
        if (rule.from && to_nanometres(rule.from->length) > size_ &&
            (above_ == nullptr || rule.from->length < above_->length)) {
            above_ = &*rule.from;
        }
    }

    [[nodiscard]] bool found() const { return below_ != nullptr || above_ != nullptr; }

    [[nodiscard]] std::string text() const {
        if (below_ != nullptr && above_ != nullptr) {
            return below_->text + " on one side and " + above_->text + " on the other";
        }
        return below_ != nullptr ? below_->text + " at the largest"
                                 : above_->text + " at the smallest";
    }

  private:
    Nanometres size_;
    const PrintedSize* below_ = nullptr;
    const PrintedSize* above_ = nullptr;
};

} // namespace

std::span<const std::string_view> caution_weights() {
    static constexpr std::array<std::string_view, 4> words{"advice", "refused-for-person",
                                                           "person-only", "refused"};
    return words;
}

std::optional<RuleCaution::Weight> read_caution_weight(std::string_view word) {
    const auto words = caution_weights();
    const auto found = std::ranges::find(words, word);
    return found == words.end()
               ? std::nullopt
               : std::optional(static_cast<RuleCaution::Weight>(found - words.begin()));
}

bool Rule::applies_to(const Rope& rope) const {
    const Nanometres size = to_nanometres(rope.diameter);
    return applies_to_sort(rope) && (!from || size >= to_nanometres(from->length)) &&
           (!up_to || size <= to_nanometres(up_to->length));
}

bool Rule::applies_to_sort(const Rope& rope) const {
    return constructions.allows(rope.construction) && fibres.allows(rope.fibre) &&
           (ropes.empty() ||
            std::ranges::any_of(ropes, [&](const NamedRope& named) { return named.is(rope); }));
}

bool NamedRope::is(const Rope& rope) const {
    if (!sort) {
        return id == rope.id;
    }
    return sort->construction == rope.construction && sort->fibre == rope.fibre &&
           to_nanometres(sort->diameter.length) == to_nanometres(rope.diameter);
}

const Figure* Rule::find(FigureId figure) const {
    const auto found = std::ranges::find(figures, figure, &std::pair<FigureId, Figure>::first);
    return found == figures.end() ? nullptr : &found->second;
}

template <class Find>
auto Rules::first(Find find) const -> decltype(find(std::declval<const Rule&>())) {
    using Found = decltype(find(std::declval<const Rule&>()));
    if (chosen_ != nullptr && chosen_->applies_to(*rope_)) {
        if (const Found found = find(*chosen_)) {
            return found;
        }
    }
    const auto first_of = [&](std::span<const Rule* const> rules, auto counts) -> Found {
        for (const Rule* rule : rules) {
            if (counts(*rule) && rule->applies_to(*rope_)) {
                if (const Found found = find(*rule)) {
                    return found;
                }
            }
        }
        return nullptr;
    };
    const auto names_rope = [](const Rule& rule) {
        return rule.is_default && !rule.ropes.empty();
    };
    if (const Found found = first_of(of_kind_, names_rope)) {
        return found;
    }
    if (const Found found = first_of(of_kind_, [](const Rule& rule) { return rule.is_default; })) {
        return found;
    }
    return first_of(of_any_, [](const Rule&) { return true; });
}

std::vector<const RuleCaution*> Rules::cautions() const {
    std::vector<const RuleCaution*> cautions;
    const auto take = [&](const Rule& rule) {
        if (rule.caution && rule.applies_to(*rope_)) {
            cautions.push_back(&*rule.caution);
        }
    };
    if (chosen_ != nullptr && !chosen_->is_default) {
        take(*chosen_);
    }
    for (const Rule* rule : of_kind_) {
        if (rule->is_default) {
            take(*rule);
        }
    }
    return cautions;
}

const Figure* Rules::find(FigureId id) const {
    return first([id](const Rule& rule) { return rule.find(id); });
}

const RopeStretch* Rules::find_stretch() const {
    return first([](const Rule& rule) { return rule.stretch ? &*rule.stretch : nullptr; });
}

Result<Figure> Rules::need(FigureId id) const {
    if (const Figure* figure = find(id)) {
        return *figure;
    }
    Neighbours neighbours(*rope_);
    const auto offer = [&](const Rule* rule) {
        if (rule != nullptr && rule->applies_to_sort(*rope_) && rule->find(id) != nullptr) {
            neighbours.offer(*rule);
        }
    };
    offer(chosen_);
    std::ranges::for_each(of_kind_, offer);
    std::ranges::for_each(of_any_, offer);
    const std::string figure = '"' + std::string(name_of(id)) + '"';
    if (neighbours.found()) {
        return Unexpected(
            Fault{Code::size_not_printed,
                  "no source gives " + figure + " for " + rope_->id +
                      ", and nothing is guessed between sizes; the nearest printed are " +
                      neighbours.text()});
    }
    return Unexpected(
        Fault{Code::figure_missing, "no source gives " + figure + " for " + describe(*rope_) +
                                        "; state it, or add it to a folder of tables"});
}

} // namespace libsplice
