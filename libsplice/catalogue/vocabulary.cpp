// The tables of constructions and fibres, and how a word is found in them.
#include "libsplice/catalogue/vocabulary.h"

#include <algorithm>

namespace libsplice {

namespace {

constexpr auto constructions = std::to_array<std::string_view>(
    {"3-strand", "8-plait", "12-strand", "double-braid", "core-dependent", "parallel-core",
     "solid-braid", "shock-cord", "wire"});

constexpr std::array<std::string_view, construction_count> meanings_of_constructions{
    "three strands laid up",
    "eight strands in four pairs, square plait",
    "hollow single braid",
    "braided cover and braided core share the load",
    "the core bears the load, the cover protects it",
    "a core of parallel yarns or strands bears the load, under a cover",
    "a braid without a hollow",
    "rubber strands under a cover",
    "strands of metal wire laid up",
};

constexpr auto fibres =
    std::to_array<std::string_view>({"HMPE", "aramid", "LCP", "polyester", "nylon", "polypropylene",
                                     "manila", "rubber", "galvanised-steel", "stainless-steel"});

template <class Word, std::size_t N>
std::optional<Word> read_word(const std::array<std::string_view, N>& names, std::string_view name) {
    const auto found = std::ranges::find(names, name);
    if (found == names.end()) {
        return std::nullopt;
    }
    return static_cast<Word>(found - names.begin());
}

} // namespace

std::span<const std::string_view, construction_count> construction_names() {
    return constructions;
}

std::span<const std::string_view, fibre_count> fibre_names() {
    return fibres;
}

std::string_view name_of(Construction construction) {
    return constructions[static_cast<std::size_t>(construction)];
}

std::string_view name_of(Fibre fibre) {
    return fibres[static_cast<std::size_t>(fibre)];
}

std::string_view meaning_of(Construction construction) {
    return meanings_of_constructions[static_cast<std::size_t>(construction)];
}

std::optional<Construction> read_construction(std::string_view name) {
    return read_word<Construction>(constructions, name);
}

std::optional<Fibre> read_fibre(std::string_view name) {
    return read_word<Fibre>(fibres, name);
}

} // namespace libsplice
