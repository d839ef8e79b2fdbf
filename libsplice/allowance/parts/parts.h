// Parts that several kinds are built from: a value from its field or its rule, and the cut itself.
#pragma once

#include "libsplice/allowance/kind.h"

#include <optional>

namespace libsplice {

namespace field {
inline constexpr FieldDeclaration knot_tail{.name = "tail",
                                            .meaning = "what is left sticking out beyond the knot",
                                            .dimension = Dimension::length,
                                            .lowest = 0.0,
                                            .highest = 5.0,
                                            .default_text =
                                                "the table's multiple of D for the rope"};
} // namespace field

/// Ropes that are knotted: all but shock cord and wire.
inline constexpr Constructions fibre_ropes(Construction::three_strand, Construction::eight_plait,
                                           Construction::twelve_strand, Construction::double_braid,
                                           Construction::core_dependent,
                                           Construction::parallel_core, Construction::laid_core,
                                           Construction::solid_braid);
/// All that are knotted, shock cord too.
inline constexpr Constructions ropes_and_shock_cord(
    Construction::three_strand, Construction::eight_plait, Construction::twelve_strand,
    Construction::double_braid, Construction::core_dependent, Construction::parallel_core,
    Construction::laid_core, Construction::solid_braid, Construction::shock_cord);

/// A length with its spread, its source and its working: from the job's field, or from a figure of
/// the tables.
struct SourcedLength {
    Length length;
    Length sd;
    SpreadOrigin origin = SpreadOrigin::none;
    CitationId source = cited_job;
    Working working = {};
};

/// A length that the job states.
[[nodiscard]] SourcedLength from_job(Length length);
/// A length that the job states and that is taken off.
[[nodiscard]] SourcedLength taken_off_by_job(Length length);

/// A length that follows from the shape of things alone.
[[nodiscard]] SourcedLength from_geometry(Length length, const Working& working);

/// A length of a figure on rope of diameter `diameter`.
[[nodiscard]] SourcedLength from_figure(const Figure& figure, Length diameter);

/// `count` such lengths, made by one hand: their spreads are added.
[[nodiscard]] SourcedLength times(double count, const SourcedLength& each);

/// Gathers what a part needs of the tables. Each call hands out a figure, an empty one where it is
/// missing; failed() says whether one was, and fault() which one came first.
class Figures {
  public:
    explicit Figures(const Request& request) : request_(request) {}

    [[nodiscard]] Figure figure(FigureId id);
    [[nodiscard]] double number(FigureId id) { return figure(id).number(); }
    [[nodiscard]] SourcedLength length(FigureId id, Length diameter) {
        return from_figure(figure(id), diameter);
    }
    /// The field's length if it is given, else the figure's.
    [[nodiscard]] SourcedLength field_or(std::size_t field, FigureId id, Length diameter);
    /// The field's count if it is given, else the figure's.
    [[nodiscard]] double field_or(std::optional<std::size_t> field, FigureId id);
    /// What another part has worked out; a fault of it is kept as a missing figure is.
    template <class Part>
    [[nodiscard]] Part part(Result<Part> result) {
        if (result) {
            return *std::move(result);
        }
        keep(std::move(result).error());
        return Part{};
    }
    /// Keeps a fault where there is one.
    void check(std::optional<Fault> fault) {
        if (fault) {
            keep(*std::move(fault));
        }
    }

    [[nodiscard]] bool failed() const { return fault_.has_value(); }
    /// The first fault; only where failed() holds.
    [[nodiscard]] Unexpected fault() const {
        Expects(failed());
        return Unexpected(*fault_);
    }

  private:
    void keep(Fault fault) {
        if (!fault_) {
            fault_ = std::move(fault);
        }
    }

    const Request& request_;
    std::optional<Fault> fault_;
};

/// A row of the ledger of one end.
[[nodiscard]] Row row_of(Item item, const SourcedLength& length, Group group = Group::own);

/// Whether a fibre melts to a clean edge in heat; others char, shrink back or do not melt.
[[nodiscard]] bool melts_clean(Fibre fibre);

/// How an end's rope is cut. Heat is for fibres that melt clean and for ends that are not tapered.
enum class Cut : std::uint8_t { heat, shears };
[[nodiscard]] Cut usual_cut(const Rope& rope);

/// Consecutive fields of a kind: from `first` up to, but without, `last`.
struct FieldRange {
    std::size_t first;
    std::size_t last;
};
/// For a kind that is made in more ways than one: Code::unknown_field for the first given field
/// that belongs to another way. `made` says how this one is made, as the fault's text begins.
[[nodiscard]] std::optional<Fault> find_foreign_field(const Request& request,
                                                      std::span<const FieldDeclaration> fields,
                                                      FieldRange foreign, std::string_view made);

/// Adds the row `cutting loss` and returns its length, from which all marks of the end start. Wire
/// has none.
[[nodiscard]] Nanometres add_cutting_loss(End& allowance, const Request& request, Cut cut);

/// Shows, just before `at`, that the tail passes over or through other parts, `count` times, a
/// diameter each.
void add_crossing(End& end, double count, Nanometres at, Length diameter);

/// Sets the strength that the end retains where a source gives it.
void add_retained(End& allowance, const Request& request);

/// Where the core alone of a double braid is joined: the strength kept is the core's share at the
/// most, and a caution says so; refused for a person.
void add_core_alone(End& allowance, const Request& request);

/// On rope in which a kind of knot is known to slip: a caution, and a refusal for a person.
void add_slip_caution(End& allowance, const Request& request);

/// Checks a length of `field` against a published minimum: nothing where it is kept or none is
/// printed, else Code::below_published_minimum with the rule's name.
[[nodiscard]] std::optional<Fault> check_minimum(const Request& request, FigureId minimum,
                                                 std::string_view field, Length chosen,
                                                 Length diameter);

/// Doubles every row of an item whose two sides are made alike. One hand makes both in one braid,
/// so that their spreads are added up. Marks and facts stay those of one side.
void count_both_sides(End& end);

} // namespace libsplice
