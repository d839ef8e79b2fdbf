// The constructions and fibres that the trade knows, each with its name and its meaning.
#pragma once

#include <array>
#include <cstdint>
#include <optional>
#include <span>
#include <string_view>

namespace libsplice {

/// How a rope is made.
enum class Construction : std::uint8_t {
    three_strand,
    eight_plait,
    twelve_strand,
    double_braid,
    core_dependent,
    parallel_core,
    laid_core,
    solid_braid,
    shock_cord,
    wire,
};

/// What bears the load: the core's fibre where the core bears it.
enum class Fibre : std::uint8_t {
    hmpe,
    aramid,
    lcp,
    polyester,
    nylon,
    polypropylene,
    polyester_polyolefin,
    manila,
    rubber,
    galvanised_steel,
    stainless_steel,
};

/// A word of one of these vocabularies.
template <class Word>
struct RopeWord {
    Word id;
    std::string_view name;
    std::string_view meaning;
};

inline constexpr auto construction_table = std::to_array<RopeWord<Construction>>({
    {Construction::three_strand, "3-strand", "three strands laid up"},
    {Construction::eight_plait, "8-plait", "eight strands in four pairs, square plait"},
    {Construction::twelve_strand, "12-strand", "hollow single braid"},
    {Construction::double_braid, "double-braid",
     "braided cover and braided core, which share the load"},
    {Construction::core_dependent, "core-dependent",
     "braided core that bears the load, under a protective cover"},
    {Construction::parallel_core, "parallel-core",
     "core of parallel yarns or strands that bears the load, under a cover"},
    {Construction::laid_core, "laid-core", "laid core under a braided cover"},
    {Construction::solid_braid, "solid-braid", "braid without a hollow middle"},
    {Construction::shock_cord, "shock-cord", "rubber strands under a cover"},
    {Construction::wire, "wire", "wire rope"},
});
inline constexpr std::size_t construction_count = construction_table.size();

inline constexpr auto fibre_table = std::to_array<RopeWord<Fibre>>({
    {Fibre::hmpe, "HMPE", "high-modulus polyethylene"},
    {Fibre::aramid, "aramid", "aromatic polyamide"},
    {Fibre::lcp, "LCP", "liquid-crystal polymer"},
    {Fibre::polyester, "polyester", "polyester"},
    {Fibre::nylon, "nylon", "polyamide"},
    {Fibre::polypropylene, "polypropylene", "polypropylene; it floats"},
    {Fibre::polyester_polyolefin, "polyester-polyolefin",
     "polyester laid up with polyolefin; weaker than polyester alone"},
    {Fibre::manila, "manila", "abaca"},
    {Fibre::rubber, "rubber", "rubber, in shock cord"},
    {Fibre::galvanised_steel, "galvanised-steel", "galvanised steel wire"},
    {Fibre::stainless_steel, "stainless-steel", "stainless steel wire"},
});
inline constexpr std::size_t fibre_count = fibre_table.size();

namespace detail {
template <class Table>
consteval bool words_are_in_order(const Table& table) {
    for (std::size_t i = 0; i < table.size(); ++i) {
        if (static_cast<std::size_t>(table[i].id) != i || table[i].name.empty()) {
            return false;
        }
    }
    return true;
}
template <class Word, std::size_t N>
consteval std::array<std::string_view, N>
names_in_order(const std::array<RopeWord<Word>, N>& table) {
    std::array<std::string_view, N> names;
    for (std::size_t i = 0; i < N; ++i) {
        names.at(i) = table.at(i).name;
    }
    return names;
}
inline constexpr auto construction_words = names_in_order(construction_table);
inline constexpr auto fibre_words = names_in_order(fibre_table);
} // namespace detail
static_assert(detail::words_are_in_order(construction_table) &&
              construction_count == static_cast<std::size_t>(Construction::wire) + 1);
static_assert(detail::words_are_in_order(fibre_table) &&
              fibre_count == static_cast<std::size_t>(Fibre::stainless_steel) + 1);

[[nodiscard]] constexpr std::span<const std::string_view, construction_count> construction_names() {
    return detail::construction_words;
}
[[nodiscard]] constexpr std::span<const std::string_view, fibre_count> fibre_names() {
    return detail::fibre_words;
}
[[nodiscard]] constexpr std::string_view name_of(Construction construction) {
    return construction_table.at(static_cast<std::size_t>(construction)).name;
}
[[nodiscard]] constexpr std::string_view name_of(Fibre fibre) {
    return fibre_table.at(static_cast<std::size_t>(fibre)).name;
}
/// A few words on how it is made, or what it is.
[[nodiscard]] constexpr std::string_view meaning_of(Construction construction) {
    return construction_table.at(static_cast<std::size_t>(construction)).meaning;
}
[[nodiscard]] constexpr std::string_view meaning_of(Fibre fibre) {
    return fibre_table.at(static_cast<std::size_t>(fibre)).meaning;
}
/// The word of that very name, or nothing; other spellings are for words/aliases.h.
[[nodiscard]] std::optional<Construction> read_construction(std::string_view name);
[[nodiscard]] std::optional<Fibre> read_fibre(std::string_view name);

/// A core under a cover.
[[nodiscard]] constexpr bool has_cover(Construction construction) {
    return construction == Construction::double_braid ||
           construction == Construction::core_dependent ||
           construction == Construction::parallel_core || construction == Construction::laid_core;
}

/// A hollow braid, or a core that is one, into which a tail can be led.
[[nodiscard]] constexpr bool has_hollow(Construction construction) {
    return construction == Construction::twelve_strand ||
           construction == Construction::double_braid ||
           construction == Construction::core_dependent;
}

/// Measured relaxed and straight, never at a reference tension.
[[nodiscard]] constexpr bool measured_relaxed(Construction construction) {
    return construction == Construction::shock_cord || construction == Construction::wire;
}

/// A set of constructions or of fibres; empty means all of them.
template <class Word>
class WordSet {
  public:
    constexpr void add(Word word) { bits_ |= bit(word); }
    [[nodiscard]] constexpr bool empty() const { return bits_ == 0; }
    [[nodiscard]] constexpr bool allows(Word word) const {
        return bits_ == 0 || (bits_ & bit(word)) != 0;
    }

    constexpr WordSet() = default;
    template <class... Words>
    explicit constexpr WordSet(Word first, Words... rest) {
        add(first);
        (add(rest), ...);
    }

  private:
    static constexpr std::uint32_t bit(Word word) { return 1U << static_cast<unsigned>(word); }
    std::uint32_t bits_ = 0;
};
using Constructions = WordSet<Construction>;
using Fibres = WordSet<Fibre>;

} // namespace libsplice
