// The constructions and fibres that the trade knows.
#pragma once

#include <array>
#include <cstdint>
#include <optional>
#include <span>
#include <string_view>

namespace libsplice {

/// How a rope is made.
enum class Construction : std::uint8_t {
    three_strand,   ///< three strands laid up
    eight_plait,    ///< eight strands in four pairs, square plait
    twelve_strand,  ///< hollow single braid
    double_braid,   ///< braided cover and braided core share the load
    core_dependent, ///< load-bearing core under a protective cover
    parallel_core,  ///< load-bearing core of parallel yarns or strands under a cover
    solid_braid,    ///< braid without a hollow middle
    shock_cord,     ///< rubber strands under a cover
    wire,
};
inline constexpr std::size_t construction_count = 9;

/// What bears the load: the core's fibre where the core bears it.
enum class Fibre : std::uint8_t {
    hmpe,
    aramid,
    lcp,
    polyester,
    nylon,
    polypropylene,
    manila,
    rubber,
    galvanised_steel,
    stainless_steel,
};
inline constexpr std::size_t fibre_count = 10;

[[nodiscard]] std::span<const std::string_view, construction_count> construction_names();
[[nodiscard]] std::span<const std::string_view, fibre_count> fibre_names();
[[nodiscard]] std::string_view name_of(Construction construction);
[[nodiscard]] std::string_view name_of(Fibre fibre);
/// A few words on how it is made.
[[nodiscard]] std::string_view meaning_of(Construction construction);
[[nodiscard]] std::optional<Construction> read_construction(std::string_view name);
[[nodiscard]] std::optional<Fibre> read_fibre(std::string_view name);

/// A core under a cover, of which the core can be spliced alone.
[[nodiscard]] constexpr bool has_cover(Construction construction) {
    return construction == Construction::double_braid ||
           construction == Construction::core_dependent ||
           construction == Construction::parallel_core;
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
