// Compares what ropes of two sorts stretch under a load.
#include "libsplice/cut/equal_stretch.h"

#include "libsplice/base/text.h"
#include "libsplice/mechanics/rope/equal_stretch.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace libsplice {

namespace {

/// What the ropes of one sort have in common.
struct Sort {
    Construction construction{};
    Fibre fibre{};

    [[nodiscard]] bool holds(const Rope& rope) const {
        return rope.construction == construction && rope.fibre == fibre;
    }
    [[nodiscard]] std::string text() const {
        return std::string(name_of(construction)) + ' ' + std::string(name_of(fibre));
    }
};

std::optional<Sort> read_sort(std::string_view text) {
    const auto blank = text.find(' ');
    if (blank == std::string_view::npos) {
        return std::nullopt;
    }
    const auto construction = read_construction(text.substr(0, blank));
    const auto fibre = read_fibre(trimmed(text.substr(blank)));
    return construction && fibre ? std::optional(Sort{*construction, *fibre}) : std::nullopt;
}

/// The ropes of the sort in the tables of which strength and stretch are known, by diameter.
std::vector<RopeUnderLoad> sizes_of(const Book& book, const Sort& sort, const Tension& load,
                                    Length length) {
    std::vector<RopeUnderLoad> sizes;
    for (const Rope& rope : book.catalogue().ropes()) {
        if (!sort.holds(rope) || !rope.breaking) {
            continue;
        }
        if (auto loaded = under_load(book, rope, load, length)) {
            sizes.push_back(*std::move(loaded));
        }
    }
    std::ranges::stable_sort(sizes, {}, [](const auto& size) { return size.rope.diameter; });
    return sizes;
}

Result<RopeUnderLoad> nearest(const std::vector<RopeUnderLoad>& sizes, const Sort& sort,
                              Length diameter) {
    if (sizes.empty()) {
        return Unexpected(Fault{Code::strength_missing,
                                "the tables hold no " + sort.text() +
                                    " of which both strength and stretch are known; name a rope "
                                    "that has them, or add one to a folder of tables"});
    }
    return *std::ranges::min_element(sizes, {}, [&](const auto& size) {
        return std::abs(std::log(size.rope.diameter / diameter));
    });
}

} // namespace

Result<RopeUnderLoad> under_load(const Book& book, const Rope& rope, const Tension& load,
                                 Length length) {
    const auto stretch = stretch_of(rope, book.common_rules(rope));
    if (!stretch) {
        return Unexpected(Fault{Code::stretch_missing, "no source gives the stretch of " + rope.id +
                                                           "; add it to a folder of tables"});
    }
    const auto strain = strain_at(*stretch, load, rope);
    if (!strain) {
        return Unexpected(strain.error());
    }
    const Length longer = length * *strain;
    return RopeUnderLoad{rope, *strain, longer, longer * stretch->spread, stretch->source};
}

Result<EqualStretch> size_for_equal_stretch(const Book& book, const Rope& rope, const Tension& load,
                                            Length length, std::string_view against) {
    const auto known = under_load(book, rope, load, length);
    if (!known) {
        return Unexpected(known.error());
    }
    // From here on the load is the same force on every rope.
    const auto force = pull_of(load, rope);
    if (!force || !(known->strain > 0.0)) {
        return Unexpected(Fault{Code::strength_missing,
                                "the load must be a force over 0, or a share of a breaking "
                                "strength that the tables give"});
    }
    const Tension pull{Tension::Basis::force, force->si()};
    const auto base_rope = book.catalogue().rope(against);
    const auto sort = base_rope ? std::optional(Sort{base_rope->construction, base_rope->fibre})
                                : read_sort(trimmed(against));
    if (!sort) {
        return Unexpected(Fault{Code::rope_not_understood,
                                "\"" + std::string(against) +
                                    "\" is neither a construction and a fibre, such as "
                                    "double-braid polyester, nor a rope of the tables"});
    }
    auto sizes = sizes_of(book, *sort, pull, length);
    const auto base = base_rope ? under_load(book, *base_rope, pull, length)
                                : nearest(sizes, *sort, rope.diameter);
    if (!base) {
        return Unexpected(base.error());
    }
    EqualStretch equal{*known, *base, 0.0, {}, std::move(sizes), {}, {}};
    equal.softer = stiffness(*force, known->strain) / stiffness(*force, base->strain);
    const auto curve = stretch_of(base->rope, book.common_rules(base->rope))->curve;
    const auto needed = strength_for_stretch(curve, *force, known->strain);
    if (needed && base->rope.breaking) {
        equal.size = size_for_strength(base->rope.diameter, base->rope.breaking->value, *needed);
    }
    for (std::size_t i = 0; i < equal.sizes.size(); ++i) {
        if (!equal.no_more && equal.sizes[i].longer <= known->longer) {
            equal.no_more = i;
        }
        if (!equal.one_size_up && equal.sizes[i].rope.diameter > rope.diameter) {
            equal.one_size_up = i;
        }
    }
    return equal;
}

} // namespace libsplice
