// A named set of figures: what one source, or one practice, says of one kind of end.
#pragma once

#include "libsplice/base/result.h"
#include "libsplice/catalogue/figure.h"
#include "libsplice/catalogue/rope.h"
#include "libsplice/catalogue/vocabulary.h"

#include <cstdint>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace libsplice {

/// A size as a source prints it.
struct PrintedSize {
    Length length;
    std::string text; ///< `1/2 in`, for messages
};

/// A rope that a rule names: one of the tables by its id, or every one of a sort and size.
struct NamedRope {
    std::string id;                      ///< as it is written
    std::optional<RopeDescription> sort; ///< where it is described
    [[nodiscard]] bool is(const Rope& rope) const;
};

/// What a source says of a rope in which a kind of end is, or is not, to be made.
struct RuleCaution {
    enum class Weight : std::uint8_t {
        advice,             ///< the piece is cut
        refused_for_person, ///< on a line that carries a person, the line is refused
        person_only,        ///< likewise, and on other lines it is not said
        refused,            ///< the end is refused in this rope
    };
    std::string text; ///< a sentence for the sheet, without figures that have to be filled in
    Weight weight = Weight::advice;
    CitationId source{};
};
[[nodiscard]] std::optional<RuleCaution::Weight> read_caution_weight(std::string_view word);
[[nodiscard]] std::span<const std::string_view> caution_weights();

/// One record of `tables/terminations/*.toml` or `constructions.toml`, `bench.toml`.
struct Rule {
    std::string id;                   ///< e.g. `buried-eye/two-fids`; an overlay replaces by it
    std::string name;                 ///< what a user asks for: `rule=two-fids`
    std::vector<std::string> kinds;   ///< kinds, or families of them, it belongs to; empty: any
    bool is_default = false;          ///< used where no rule is asked for
    Constructions constructions;      ///< empty: all
    Fibres fibres;                    ///< empty: all
    std::vector<NamedRope> ropes;     ///< empty: all
    std::optional<PrintedSize> from;  ///< smallest nominal diameter it is printed for
    std::optional<PrintedSize> up_to; ///< largest
    std::vector<std::pair<FigureId, Figure>> figures;
    std::optional<RopeStretch> stretch; ///< of ropes of its construction and fibre
    std::optional<RuleCaution> caution;

    [[nodiscard]] bool applies_to(const Rope& rope) const;
    /// As above, whatever the rope's size.
    [[nodiscard]] bool applies_to_sort(const Rope& rope) const;
    [[nodiscard]] const Figure* find(FigureId figure) const;
};

/// The rules that bear on one end: the one asked for by name, if any, then the kind's defaults,
/// those that name their ropes first and otherwise in the order of the tables, then those of every
/// kind. A figure is taken from the first that has it.
class Rules {
  public:
    /// `of_kind` and `of_any` must outlive this; `chosen` is null where no rule was asked for.
    Rules(const Rope& rope, std::span<const Rule* const> of_kind,
          std::span<const Rule* const> of_any, const Rule* chosen)
        : rope_(&rope), of_kind_(of_kind), of_any_(of_any), chosen_(chosen) {}

    /// The figure, or null: no source that applies to this rope gives one.
    [[nodiscard]] const Figure* find(FigureId id) const;
    /// The figure, or Code::figure_missing, which says which figure is missing for which rope.
    /// Where other sizes are printed it is Code::size_not_printed, which names the sizes on either
    /// side.
    [[nodiscard]] Result<Figure> need(FigureId id) const;
    /// Every caution of the rule that was asked for and of the defaults that apply to this rope, in
    /// the order of the tables.
    [[nodiscard]] std::vector<const RuleCaution*> cautions() const;
    /// The stretch, or null: no source that applies to this rope gives one.
    [[nodiscard]] const RopeStretch* find_stretch() const;

  private:
    /// What the first rule that applies has to give; null where none has.
    template <class Find>
    [[nodiscard]] auto first(Find find) const -> decltype(find(std::declval<const Rule&>()));

    const Rope* rope_;
    std::span<const Rule* const> of_kind_;
    std::span<const Rule* const> of_any_;
    const Rule* chosen_;
};

} // namespace libsplice
