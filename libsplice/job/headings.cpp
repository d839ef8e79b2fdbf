// Takes the headings of a job apart and finds all that is wrong with them.
#include "libsplice/job/headings.h"

#include "libsplice/base/text.h"

#include <algorithm>
#include <set>
#include <utility>

namespace libsplice {

namespace {

/// In small letters; blanks, hyphens and `_` between words become one `_`, and none stands beside
/// the point of an end's field.
std::string column_word(std::string_view text) {
    std::string word;
    for (const char c : in_small_letters(trimmed(text))) {
        const bool gap = c == ' ' || c == '\t' || c == '_' || c == '-';
        if (!gap) {
            if (c == '.' && word.ends_with('_')) {
                word.pop_back();
            }
            word += c;
        } else if (!word.empty() && word.back() != '_' && word.back() != '.') {
            word += '_';
        }
    }
    if (word.ends_with('_')) {
        word.pop_back();
    }
    return word;
}

class HeadingReader {
  public:
    HeadingReader(std::span<const std::string_view> end_fields, FaultSink& faults)
        : end_fields_(end_fields), faults_(faults) {}

    Result<std::vector<JobColumn>> read(std::span<const WrittenHeading> headings) {
        if (auto fault = no_heading(headings)) {
            refuse(*std::move(fault));
            return Unexpected(std::move(*first_));
        }
        std::vector<JobColumn> columns;
        columns.reserve(headings.size());
        for (const WrittenHeading& heading : headings) {
            columns.push_back(column(heading));
        }
        if (first_) {
            return Unexpected(std::move(*first_));
        }
        return columns;
    }

  private:
    /// What a heading names; nothing where it names no column.
    [[nodiscard]] std::variant<std::monostate, Column, EndFieldName>
    found(std::string_view name) const {
        if (const auto column = find_column(name)) {
            return *column;
        }
        if (const auto end_field = split_end_field(name)) {
            if (const auto field = find_field(end_field->field, end_fields_)) {
                return EndFieldName{end_field->end, *field};
            }
        }
        return {};
    }

    [[nodiscard]] bool may_be_meant(std::string_view name) const {
        return !std::holds_alternative<std::monostate>(found(name)) || split_end_field(name) ||
               nearest(name, column_names);
    }

    /// The fault of a first line that says nothing of columns: a title, or a row of values.
    [[nodiscard]] std::optional<Fault> no_heading(std::span<const WrittenHeading> headings) const {
        const WrittenHeading* first = nullptr;
        for (const WrittenHeading& heading : headings) {
            const HeadingText text = split_heading(heading.text);
            if (text.name.empty() && !text.unit) {
                continue;
            }
            if (may_be_meant(text.name)) {
                return std::nullopt;
            }
            first = first == nullptr ? &heading : first;
        }
        if (first == nullptr) {
            return std::nullopt;
        }
        return Fault{Code::no_heading,
                     "the first line names no column of a job, it begins with " +
                         in_quotes(first->text) +
                         "; take a title out, and name the columns in the first line, for example "
                         "name,rope,length,end_a,end_b",
                     first->at};
    }

    JobColumn column(const WrittenHeading& written) {
        const HeadingText heading = split_heading(written.text);
        if (heading.name.empty() && !heading.unit) {
            return {};
        }
        JobColumn column{found(heading.name)};
        if (std::holds_alternative<std::monostate>(column.what)) {
            refuse_unknown(heading.name, written);
            return {};
        }
        if (!seen_.insert(heading.name).second) {
            refuse({Code::duplicate_column,
                    "the column " + in_quotes(heading.name) + " is there twice; take one out",
                    written.at, heading.name});
        }
        if (heading.unit) {
            read_unit(heading, written.at, column);
        }
        return column;
    }

    void refuse_unknown(std::string_view name, const WrittenHeading& written) {
        const auto end_field = split_end_field(name);
        refuse(end_field ? unknown_end_field("column", *end_field, end_fields_, written.at)
                         : unknown_column("column", name, written.at));
    }

    void read_unit(const HeadingText& heading, const Place& at, JobColumn& column) {
        const CellSort sort = form_of(column, false).sort;
        if (const auto unit = read_heading_unit(*heading.unit, sort)) {
            column.unit = *unit;
            return;
        }
        Fault fault = unknown_unit(heading, sort);
        fault.at = at;
        refuse(std::move(fault));
    }

    void refuse(Fault fault) {
        if (!first_) {
            first_ = fault;
        }
        faults_.push(std::move(fault));
    }

    std::span<const std::string_view> end_fields_;
    FaultSink& faults_;
    std::set<std::string> seen_;
    std::optional<Fault> first_;
};

} // namespace

HeadingText split_heading(std::string_view heading) {
    const std::string_view text = trimmed(heading);
    if (text.ends_with(']') || text.ends_with(')')) {
        const std::size_t open = text.rfind(text.back() == ']' ? '[' : '(');
        if (open != std::string_view::npos) {
            return {column_word(text.substr(0, open)),
                    trimmed(text.substr(open + 1, text.size() - open - 2))};
        }
    }
    return {column_word(text)};
}

Fault unknown_unit(const HeadingText& heading, CellSort sort) {
    const std::string units = units_for(sort);
    std::string text = units.empty() && sort != CellSort::price
                           ? "the column " + in_quotes(heading.name) +
                                 " takes no unit in its heading; write the name alone"
                           : "the unit " + in_quotes(heading.unit.value_or("")) +
                                 " of the column " + in_quotes(heading.name) +
                                 " is not known; write one of " +
                                 (units.empty() ? std::string("/m and /reel") : units);
    return {Code::unknown_column, std::move(text), {}, heading.name};
}

CellForm form_of(const JobColumn& column, bool comma_is_decimal) {
    CellForm form{CellSort::text, comma_is_decimal, column.unit.words};
    if (const auto* fixed = std::get_if<Column>(&column.what)) {
        form.sort = declaration_of(*fixed).sort;
    } else if (std::holds_alternative<EndFieldName>(column.what)) {
        form.sort = CellSort::length; // a field's own dimension is for its kind to say
    }
    return form;
}

Result<std::vector<JobColumn>> read_headings(std::span<const WrittenHeading> headings,
                                             std::span<const std::string_view> end_fields,
                                             FaultSink& faults) {
    return HeadingReader(end_fields, faults).read(headings);
}

} // namespace libsplice
