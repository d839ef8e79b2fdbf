// Takes the headings of a CSV job apart and finds all that is wrong with them.
#include "libsplice/job/csv/csv_heading.h"

#include "libsplice/base/text.h"
#include "libsplice/job/cell_text.h"

#include <algorithm>
#include <set>
#include <string>
#include <utility>

namespace libsplice {

namespace {

class HeadingReader {
  public:
    HeadingReader(const CsvRecords& records, std::span<const std::string_view> end_fields,
                  FaultSink& faults)
        : records_(records), end_fields_(end_fields), faults_(faults) {}

    Result<std::vector<CsvColumn>> read() {
        for (const Fault& fault : records_.faults()) {
            refuse(fault);
        }
        if (records_.size() > most_cells) {
            refuse({Code::too_many_columns,
                    "the heading has more than 1,000 columns; take out those "
                    "that are not needed",
                    records_.place_of(most_cells)});
        }
        std::vector<CsvColumn> columns;
        for (std::uint32_t i = 0; i < std::min(records_.size(), most_cells); ++i) {
            columns.push_back(column(i));
        }
        if (first_) {
            return Unexpected(std::move(*first_));
        }
        return columns;
    }

  private:
    CsvColumn column(std::uint32_t index) {
        const HeadingText heading = split_unit(records_.cell(index));
        if (heading.name.empty() && !heading.unit) {
            return {};
        }
        const Place at = records_.place_of(index);
        CsvColumn column = named(heading.name, at);
        if (std::holds_alternative<std::monostate>(column.what)) {
            return {};
        }
        if (!seen_.insert(heading.name).second) {
            refuse({Code::duplicate_column,
                    "the column " + in_quotes(heading.name) + " stands twice; take one out", at,
                    std::string(heading.name)});
        }
        if (heading.unit) {
            column.unit = unit(heading, column, at);
        }
        return column;
    }

    CsvColumn named(std::string_view name, const Place& at) {
        if (const auto column = find_column(name)) {
            return {*column};
        }
        const auto end_field = split_end_field(name);
        if (!end_field) {
            refuse(unknown_column("column", name, at));
            return {};
        }
        const auto field = find_field(end_field->field, end_fields_);
        if (!field) {
            refuse(unknown_end_field("column", *end_field, end_fields_, at));
            return {};
        }
        return {EndFieldName{end_field->end, *field}};
    }

    std::optional<LengthUnit> unit(const HeadingText& heading, const CsvColumn& column,
                                   const Place& at) {
        const auto* fixed = std::get_if<Column>(&column.what);
        if (fixed != nullptr && !takes_unit(*fixed)) {
            refuse({Code::unknown_column,
                    "the column " + in_quotes(heading.name) +
                        " holds no length, so its heading takes no unit; write the name alone",
                    at, std::string(heading.name)});
            return std::nullopt;
        }
        const auto unit = read_length_unit(*heading.unit);
        if (!unit) {
            Fault fault = unknown_unit(heading);
            fault.at = at;
            refuse(std::move(fault));
        }
        return unit;
    }

    void refuse(Fault fault) {
        if (!first_) {
            first_ = fault;
        }
        faults_.push(std::move(fault));
    }

    const CsvRecords& records_;
    std::span<const std::string_view> end_fields_;
    FaultSink& faults_;
    std::set<std::string_view> seen_;
    std::optional<Fault> first_;
};

} // namespace

HeadingText split_unit(std::string_view heading) {
    const std::size_t open = heading.find('[');
    if (open == std::string_view::npos || !heading.ends_with(']')) {
        return {heading};
    }
    return {trimmed(heading.substr(0, open)),
            trimmed(heading.substr(open + 1, heading.size() - open - 2))};
}

Fault unknown_unit(const HeadingText& heading) {
    return {Code::unknown_column,
            "the unit " + in_quotes(heading.unit.value_or("")) + " of the column " +
                in_quotes(heading.name) + " is not known; write mm, cm, m, in or ft",
            {},
            std::string(heading.name)};
}

Result<std::vector<CsvColumn>> read_heading(const CsvRecords& records,
                                            std::span<const std::string_view> end_fields,
                                            FaultSink& faults) {
    return HeadingReader(records, end_fields, faults).read();
}

} // namespace libsplice
