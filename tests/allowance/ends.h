// Ends worked out through the book, and what tests look at in them, in millimetres.
#pragma once

#include "libsplice/allowance/values.h"

#include "tests/support/tables.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace libsplice::testing {

using FieldList = std::vector<FieldText>;

/// The rope that a text names or describes; one that is not understood fails the test.
inline Rope rope_of(std::string_view text) {
    auto rope = shipped_book().catalogue().rope(text);
    if (!rope) {
        ADD_FAILURE() << rope.error().text;
        return {};
    }
    return *std::move(rope);
}

inline Result<End> try_end(std::string_view kind, std::string_view rope,
                           const FieldList& fields = {}) {
    const auto found = shipped_book().kind(kind);
    if (!found) {
        return Unexpected(found.error());
    }
    return shipped_book().work_out(**found, rope_of(rope), fields);
}

/// An end that can be made.
inline End make_end(std::string_view kind, std::string_view rope, const FieldList& fields = {}) {
    auto allowance = try_end(kind, rope, fields);
    if (!allowance) {
        ADD_FAILURE() << kind << " in " << rope << ": " << allowance.error().text;
        return {};
    }
    return *std::move(allowance);
}

/// Why an end cannot be made.
inline Fault refuse_end(std::string_view kind, std::string_view rope,
                        const FieldList& fields = {}) {
    auto allowance = try_end(kind, rope, fields);
    if (allowance) {
        ADD_FAILURE() << kind << " in " << rope << " is not refused";
        return {};
    }
    return std::move(allowance).error();
}

inline constexpr double not_there = std::numeric_limits<double>::quiet_NaN();

inline double in_millimetres(Nanometres count) {
    return static_cast<double>(count) / 1e6;
}

inline const Row* find_row(const End& allowance, Item item) {
    const auto row = std::ranges::find(allowance.rows, item, &Row::item);
    return row == allowance.rows.end() ? nullptr : row;
}

inline double length_of(const End& allowance, Item item) {
    const Row* row = find_row(allowance, item);
    return row == nullptr ? not_there : in_millimetres(row->length);
}

inline double spread_of(const End& allowance, Item item) {
    const Row* row = find_row(allowance, item);
    return row == nullptr ? not_there : row->sd * 1000.0;
}

inline double mark_of(const End& allowance, MarkName name) {
    const auto mark = std::ranges::find(allowance.marks, name, &Mark::name);
    return mark == allowance.marks.end() ? not_there : in_millimetres(mark->from_tail_end);
}

/// A value that is a length.
inline double value_of(const End& allowance, ValueName name) {
    return find_value(allowance, name).value_or(not_there) * 1000.0;
}

inline std::string source_of(const End& allowance, Item item) {
    const Row* row = find_row(allowance, item);
    return row == nullptr ? std::string() : shipped_book().citation(row->source).key;
}

inline bool cautions_about(const End& allowance, std::string_view words) {
    return std::ranges::any_of(allowance.cautions, [&](const Caution& caution) {
        return caution.text.find(words) != std::string_view::npos;
    });
}

inline bool says(const Fault& fault, std::string_view words) {
    return fault.text.find(words) != std::string::npos;
}

/// Half a nanometre either way for each of a few rounded rows.
inline constexpr double near = 3e-6;

} // namespace libsplice::testing
