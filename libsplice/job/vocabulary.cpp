// Looking up the words of a job file, and the faults of those that are not known.
#include "libsplice/job/vocabulary.h"

#include "libsplice/base/text.h"
#include "libsplice/job/cell_text.h"

#include <algorithm>
#include <array>

namespace libsplice {

namespace {

/// `end_a.` or `end_b.`.
std::string prefix_of(LineEnd end) {
    return std::string(column_name(end == LineEnd::a ? Column::end_a : Column::end_b)) + '.';
}

} // namespace

std::optional<Column> find_column(std::string_view name) {
    const auto found = std::ranges::find(job_columns, name, &ColumnDeclaration::name);
    return found == job_columns.end() ? std::nullopt : std::optional(found->id);
}

std::optional<EndFieldName> split_end_field(std::string_view name) {
    for (const LineEnd end : {LineEnd::a, LineEnd::b}) {
        const std::string prefix = prefix_of(end);
        if (name.starts_with(prefix)) {
            return EndFieldName{end, name.substr(prefix.size())};
        }
    }
    return std::nullopt;
}

std::optional<std::string_view> find_field(std::string_view field,
                                           std::span<const std::string_view> end_fields) {
    const auto found = std::ranges::find(end_fields, field);
    if (found == end_fields.end()) {
        return std::nullopt;
    }
    return *found;
}

Fault unknown_column(std::string_view what, std::string_view name, Place at) {
    std::string text = "the " + std::string(what) + ' ' + in_quotes(name) + " is not known";
    const std::string near = did_you_mean(name, column_names);
    text +=
        near.empty() ? "; the nearest are " + listed(nearest_words(name, column_names, 3)) : near;
    return Fault{Code::unknown_column, std::move(text), std::move(at), std::string(name)};
}

Fault unknown_end_field(std::string_view what, EndFieldName name,
                        std::span<const std::string_view> end_fields, Place at) {
    const std::string prefix = prefix_of(name.end);
    const std::string whole = prefix + std::string(name.field);
    std::string text = "the " + std::string(what) + ' ' + in_quotes(whole) +
                       " is not known: no kind of end has such a field";
    if (const auto near = nearest(name.field, end_fields)) {
        text += "; did you mean \"" + prefix + std::string(*near) + "\"?";
    } else if (!end_fields.empty()) {
        text += "; the nearest are " + listed(nearest_words(name.field, end_fields, 3));
    }
    return Fault{Code::unknown_column, std::move(text), std::move(at), whole};
}

} // namespace libsplice
