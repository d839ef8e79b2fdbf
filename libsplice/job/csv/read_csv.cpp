// Turns the records of a CSV job into lines.
#include "libsplice/job/cell_text.h"
#include "libsplice/job/csv/csv_records.h"
#include "libsplice/job/csv/row_faults.h"
#include "libsplice/job/headings.h"
#include "libsplice/job/plan_key.h"
#include "libsplice/job/read_job.h"
#include "libsplice/job/route/read_route.h"

#include <algorithm>
#include <deque>
#include <string>
#include <utility>
#include <vector>

namespace libsplice {

namespace {

Fault pushed(Fault fault, FaultSink& faults) {
    faults.push(fault);
    return fault;
}

/// Turns records into lines, in memory that is used again for every row.
class CsvRows {
  public:
    CsvRows(const CsvRecords& records, std::span<const JobColumn> columns, bool opens_files,
            RowFaults& faults)
        : routes_(opens_files),
          records_(records),
          faults_(faults),
          heading_size_(static_cast<std::uint32_t>(columns.size())) {
        line_.places = &records;
        for (std::uint32_t i = 0; i < heading_size_; ++i) {
            const auto& [what, unit] = columns[i];
            const Cell cell{{}, unit.length, i};
            const CellForm form = form_of(columns[i], records.comma_is_decimal());
            if (const auto* column = std::get_if<Column>(&what)) {
                fixed_.push_back({static_cast<std::size_t>(*column), cell, form});
            } else if (const auto* name = std::get_if<EndFieldName>(&what)) {
                end_fields_.push_back({{name->end, name->field, cell}, form});
            } else {
                unnamed_.push_back(i);
            }
        }
    }

    /// Hands on the record that the reader stands at.
    bool hand_on(const OnRow& on_row) {
        gather();
        line_.route = routes_.route_of(line_);
        const std::optional<Fault> fault = first_fault();
        if (fault) {
            plan_key_.clear();
        } else {
            write_plan_key(line_, plan_key_);
        }
        line_.plan_key = plan_key_;
        return on_row({line_, fault ? &*fault : nullptr});
    }

  private:
    void gather() {
        made_texts_.clear();
        for (FixedCell& fixed : fixed_) {
            fixed.cell.text = settled(records_.cell(fixed.cell.index), fixed.form, made_texts_);
            line_.cells[fixed.slot] = fixed.cell;
        }
        fields_.clear();
        for (auto& [field, form] : end_fields_) {
            field.cell.text = settled(records_.cell(field.cell.index), form, made_texts_);
            if (!field.cell.text.empty()) {
                fields_.push_back(field);
            }
        }
        line_.fields = fields_;
    }

    /// Tells every fault of the record.
    std::optional<Fault> first_fault() {
        std::optional<Fault> first;
        for (const Fault& fault : records_.faults()) {
            faults_.push(fault);
        }
        if (!records_.faults().empty()) {
            first = records_.faults().front();
        }
        if (const auto surplus = first_surplus()) {
            Fault fault = surplus_fault(*surplus);
            faults_.push(fault);
            first = first ? std::move(first) : std::move(fault);
        }
        return first;
    }

    /// The first cell that no heading names and that has text, or stands past the greatest number.
    [[nodiscard]] std::optional<std::uint32_t> first_surplus() const {
        for (const std::uint32_t i : unnamed_) {
            if (!records_.cell(i).empty()) {
                return i;
            }
        }
        const auto size = static_cast<std::uint32_t>(records_.size());
        for (std::uint32_t i = heading_size_; i < size; ++i) {
            if (!records_.cell(i).empty() || i >= most_cells) {
                return i;
            }
        }
        return std::nullopt;
    }

    [[nodiscard]] Fault surplus_fault(std::uint32_t index) const {
        return {
            Code::too_many_cells,
            "this is cell " + std::to_string(index + 1) +
                " of the row, and the heading names no such column; put quotes round a cell that "
                "holds a comma, or take the cell out",
            records_.place_of(index)};
    }

    struct FixedCell {
        std::size_t slot; ///< in JobLine::cells
        Cell cell;
        CellForm form;
    };
    struct FieldCell {
        EndFieldCell field;
        CellForm form;
    };

    RouteReader routes_;
    const CsvRecords& records_;
    RowFaults& faults_;
    JobLine line_;
    std::uint32_t heading_size_;         ///< number of the heading's cells
    std::vector<FixedCell> fixed_;       ///< the fixed columns of the file
    std::vector<FieldCell> end_fields_;  ///< the end fields of the file
    std::vector<std::uint32_t> unnamed_; ///< the columns with a blank heading
    std::vector<EndFieldCell> fields_;   ///< those of this row that are not blank
    std::deque<std::string> made_texts_; ///< of this row, where a cell was not as we read it
    std::string plan_key_;
};

/// Reads the heading from the record that `records` stands at.
Result<std::vector<JobColumn>> read_heading(const CsvRecords& records,
                                            std::span<const std::string_view> end_fields,
                                            FaultSink& faults) {
    std::optional<Fault> first;
    const auto refuse = [&](Fault fault) {
        first = first ? std::move(first) : std::optional(fault);
        faults.push(std::move(fault));
    };
    std::ranges::for_each(records.faults(), refuse);
    if (records.size() > most_cells) {
        refuse({Code::too_many_columns,
                "the heading has more than 1,000 columns; take out those that are not needed",
                records.place_of(most_cells)});
    }
    std::vector<WrittenHeading> headings;
    for (std::uint32_t i = 0; i < std::min(records.size(), most_cells); ++i) {
        headings.push_back({records.cell(i), records.place_of(i)});
    }
    auto columns = read_headings(headings, end_fields, faults);
    if (first) {
        return Unexpected(*std::move(first));
    }
    return columns;
}

} // namespace

Result<bool> read_csv_job(Input& input, std::span<const std::string_view> end_fields,
                          FaultSink& faults, const OnRow& on_row) {
    CsvRecords records(input);
    auto more = records.next();
    if (more && !*more) {
        return Unexpected(
            pushed({Code::no_heading, "the file is empty; its first line must name the columns",
                    Place{input.name()}},
                   faults));
    }
    if (!more) {
        return Unexpected(pushed(std::move(more).error(), faults));
    }
    auto columns = read_heading(records, end_fields, faults);
    if (!columns) {
        return Unexpected(std::move(columns).error());
    }
    RowFaults row_faults(faults);
    CsvRows rows(records, *columns, input.is_file(), row_faults);
    for (more = records.next(); more && *more; more = records.next()) {
        if (!rows.hand_on(on_row)) {
            row_faults.finish();
            return false;
        }
    }
    row_faults.finish();
    if (!more) {
        return Unexpected(pushed(std::move(more).error(), faults));
    }
    return true;
}

} // namespace libsplice
