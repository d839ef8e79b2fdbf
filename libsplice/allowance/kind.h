// What a kind of end says of itself, and how it is worked out.
#pragma once

#include "libsplice/allowance/end.h"
#include "libsplice/base/result.h"
#include "libsplice/catalogue/rope.h"
#include "libsplice/catalogue/rule.h"
#include "libsplice/catalogue/vocabulary.h"

#include <array>
#include <cstddef>
#include <cstdint>
#include <functional>
#include <optional>
#include <span>
#include <string>
#include <string_view>

namespace libsplice {

/// What sort of value a field takes.
enum class Dimension : std::uint8_t {
    length, ///< a length, or a count of rope diameters such as `72 D`
    count,  ///< a whole number
    ratio,  ///< a plain number, or a percentage such as `2 %`
    choice, ///< one of the field's words
};
[[nodiscard]] std::string_view name_of(Dimension dimension);

/// The part that a field plays for a later stage, which finds it by this and not by its name.
enum class FieldRole : std::uint8_t {
    none,
    far_end,   ///< a choice whose second word says that the line's other end is fixed
    cover_end, ///< where the cover ends on the finished line, from the bearing point
    core,      ///< diameter of the core
    pin,       ///< diameter of what the bearing point lies on
};

/// One field of a kind: what a job, a form or a help text needs to know of it.
struct FieldDeclaration {
    std::string_view name;
    std::string_view meaning;
    Dimension dimension = Dimension::length;
    double lowest = 0.0;           ///< in SI units, inclusive
    double highest = 0.0;          ///< in SI units, inclusive
    std::string_view default_text; ///< what holds where the field is not given, in words
    bool required = false;
    std::span<const std::string_view> choices = {}; ///< for Dimension::choice
    std::string_view also = {}; ///< another word for the same field; may be empty
    FieldRole role = FieldRole::none;
};

/// Where a field of that name is in a declaration, if it is there.
[[nodiscard]] constexpr std::optional<std::size_t>
find_field(std::span<const FieldDeclaration> fields, std::string_view name) {
    for (std::size_t i = 0; i < fields.size(); ++i) {
        if (fields[i].name == name) {
            return i;
        }
    }
    return std::nullopt;
}

/// Where the field that plays a part is in a declaration, if one does.
[[nodiscard]] constexpr std::optional<std::size_t>
find_field(std::span<const FieldDeclaration> fields, FieldRole role) {
    for (std::size_t i = 0; i < fields.size(); ++i) {
        if (fields[i].role == role) {
            return i;
        }
    }
    return std::nullopt;
}

/// The most fields that a kind may have.
inline constexpr std::size_t most_fields = 16;

/// How much of a line a kind accounts for.
enum class Reach : std::uint8_t {
    one_end,   ///< an end that is spliced, knotted or fitted
    plain,     ///< an end that is only cut, sealed or whipped
    both_ends, ///< a join, or an item made whole: the line has no other end, and the allowance is
               ///< for both sides together; its marks hold from either cut end
};

/// A kind's own description: command help, completion, forms and the binding of job fields read it.
struct KindDeclaration {
    std::string_view name;  ///< the trade's term, e.g. `buried-eye`
    std::string_view title; ///< for people, one line
    std::string_view datum; ///< the bearing point that lengths are measured to
    Constructions constructions;
    std::span<const FieldDeclaration> fields;
    Reach reach = Reach::one_end;
    bool counts_in_core =
        false; ///< a field given in D counts diameters of the core; a field has that role
    /// Names by which rules of the tables name several kinds together; empty where there is none.
    std::array<std::string_view, 2> families = {};

    /// Whether a rule that names `word` is one of this kind.
    [[nodiscard]] bool is_named_by(std::string_view word) const;
};

/// The fields of one end, bound to its kind's declaration and in range, by the declaration's order.
class Fields {
  public:
    void set(std::size_t field, double value) {
        values_.at(field) = value;
        given_ |= 1U << field;
    }
    [[nodiscard]] bool has(std::size_t field) const { return (given_ & (1U << field)) != 0; }
    /// SI units; for a choice, its index. Only where has() holds.
    [[nodiscard]] double at(std::size_t field) const {
        Expects(has(field));
        return values_.at(field);
    }
    [[nodiscard]] std::optional<Length> length(std::size_t field) const {
        return has(field) ? std::optional(Length(values_.at(field))) : std::nullopt;
    }

  private:
    std::array<double, most_fields> values_{};
    std::uint32_t given_ = 0;
};

/// All that an end's allowance depends on.
struct Request {
    const Rope& rope;
    const Rules& rules;
    const Fields& fields;
    const Citations& citations; ///< to name the rule that a fault breaks
};

/// A kind of end: its declaration and a pure function. Built-in kinds and plugged-in ones are the
/// same.
struct Kind {
    KindDeclaration declaration;
    std::function<Result<End>(const Request&)> work_out;
};

} // namespace libsplice
