// The book: tables and kinds together. Immutable once open; threads may share it.
#pragma once

#include "libsplice/allowance/plugged_in.h"
#include "libsplice/catalogue/catalogue.h"
#include "libsplice/units/unit.h"

#include <span>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace libsplice {

/// A field as a job gives it: its name without `end_a.`, and its text.
struct FieldText {
    std::string_view name;
    std::string_view text;
    std::optional<LengthUnit> unit = {}; ///< from a column's heading
};

/// The word that stands in place of a kind in rules for rope that carries a person.
inline constexpr std::string_view kind_of_person_rules = "person";

/// Owns every name and resolves every id.
class Book {
  public:
    /// A book of the built-in kinds and `plugged_in`. Code::duplicate_record where a kind's name
    /// stands twice.
    [[nodiscard]] static Result<Book> open(Catalogue catalogue, PluggedIn plugged_in = {});

    [[nodiscard]] const Catalogue& catalogue() const { return catalogue_; }
    [[nodiscard]] std::span<const Kind> kinds() const { return kinds_; }
    /// The words of the rows, marks and values of all kinds.
    [[nodiscard]] const Names& names() const { return names_; }
    /// What was loaded besides, in the order in which it was named.
    [[nodiscard]] std::span<const PlugIn> plug_ins() const { return plug_ins_; }
    /// The kind of that name, or of that word of the trade; `construction` of the rope decides what
    /// a word such as `eye splice` means. Code::unknown_kind names the nearest, or the kinds that
    /// the word could mean.
    [[nodiscard]] Result<const Kind*>
    kind(std::string_view name, std::optional<Construction> construction = std::nullopt) const;
    /// Every field name that some kind has, the common ones included, for reading a heading.
    [[nodiscard]] std::span<const std::string_view> field_names() const { return field_names_; }

    /// Works out one end. `fields` may hold any of the kind's own fields and `rule`; the fields
    /// that every end has besides (`fitting`, `fitting_length`, `measured`) are the line's and not
    /// known here. Faults are of the 3xx family and name the field.
    [[nodiscard]] Result<End> work_out(const Kind& kind, const Rope& rope,
                                       std::span<const FieldText> fields) const;

    /// As above, for many ends of one kind and rope: `rules` are those that rules() gave for them,
    /// `fields` are in SI units and are checked against the kind's declaration.
    [[nodiscard]] Result<End> work_out(const Kind& kind, const Rope& rope, const Rules& rules,
                                       const Fields& fields) const;

    /// The rules that bear on an end of this kind, `chosen` by name if not empty
    /// (Code::unknown_rule).
    [[nodiscard]] Result<Rules> rules(const Kind& kind, const Rope& rope,
                                      std::string_view chosen) const;
    /// The rules of every kind, for what a line needs besides its ends.
    [[nodiscard]] Rules common_rules(const Rope& rope) const;

    [[nodiscard]] const Citation& citation(CitationId id) const {
        return catalogue_.citations().at(id);
    }

  private:
    Book() = default;
    /// The kind of that very name, or null.
    [[nodiscard]] const Kind* find_kind(std::string_view name) const;
    /// Kinds' rules by kind, in the order of the tables; the last entry holds those of any kind.
    [[nodiscard]] std::optional<Fault> index_rules();
    [[nodiscard]] std::span<const Rule* const> rules_of(const Kind& kind) const;
    /// The rule is one of every kind that the word names, itself or its family; false where it
    /// names none.
    [[nodiscard]] bool add_to_named(std::string_view name, const Rule& rule);

    Catalogue catalogue_;
    std::vector<Kind> kinds_;
    Names names_;
    std::vector<PlugIn> plug_ins_;
    std::vector<std::string_view> field_names_;
    std::vector<std::vector<const Rule*>> rules_by_kind_;
    std::vector<const Rule*> rules_of_any_;
};

/// Fields that every end has besides its kind's own; the line binds them.
[[nodiscard]] std::span<const FieldDeclaration> common_fields();

} // namespace libsplice
