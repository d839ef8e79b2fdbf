// A line of a job from cells that a host program gives, without a file between them.
#include "libsplice/base/text.h"
#include "libsplice/job/cell_text.h"
#include "libsplice/job/headings.h"
#include "libsplice/job/plan_key.h"
#include "libsplice/job/read_job.h"
#include "libsplice/job/route/read_route.h"

#include <algorithm>
#include <deque>
#include <string>
#include <vector>

namespace libsplice {

namespace {

/// Such a line stands nowhere.
class Nowhere : public CellPlaces {
  public:
    [[nodiscard]] Place place_of(std::uint32_t) const override { return {}; }
};

/// One line, and the memory that it borrows.
class LineOfCells {
  public:
    explicit LineOfCells(FaultSink& faults) : faults_(faults) { line_.places = &nowhere_; }

    void take(const NamedCell& given, const JobColumn& column) {
        const std::string_view text = usable(given.text);
        const Cell cell{settled(text, form_of(column, false), made_texts_), column.unit.length};
        if (const auto* fixed = std::get_if<Column>(&column.what)) {
            line_.cells.at(static_cast<std::size_t>(*fixed)) = cell;
        } else if (const auto* name = std::get_if<EndFieldName>(&column.what)) {
            if (!cell.text.empty()) {
                fields_.push_back({name->end, name->field, cell});
            }
        }
    }

    bool hand_on(const OnRow& on_row) {
        line_.fields = fields_;
        line_.route = routes_.route_of(line_);
        if (!fault_) {
            write_plan_key(line_, plan_key_);
        }
        line_.plan_key = plan_key_;
        return on_row({line_, fault_ ? &*fault_ : nullptr});
    }

  private:
    /// The text without blanks at its ends; nothing of one that no cell may hold.
    std::string_view usable(std::string_view text) {
        const std::string_view inside = trimmed(text);
        auto fault = text_fault(inside);
        if (!fault) {
            return inside;
        }
        faults_.push(*fault);
        fault_ = fault_ ? std::move(fault_) : std::move(fault);
        return {};
    }

    FaultSink& faults_;
    Nowhere nowhere_;
    JobLine line_;
    std::deque<std::string> made_texts_;
    std::vector<EndFieldCell> fields_;
    std::optional<Fault> fault_;
    RouteReader routes_{false};
    std::string plan_key_;
};

} // namespace

Result<bool> read_line_of_cells(std::span<const NamedCell> cells,
                                std::span<const std::string_view> end_fields, FaultSink& faults,
                                const OnRow& on_row) {
    std::vector<WrittenHeading> headings;
    std::ranges::transform(cells, std::back_inserter(headings), [](const NamedCell& cell) {
        return WrittenHeading{cell.heading, {}};
    });
    const auto columns = read_headings(headings, end_fields, faults);
    if (!columns) {
        return Unexpected(columns.error());
    }
    if (std::ranges::all_of(cells,
                            [](const NamedCell& cell) { return trimmed(cell.text).empty(); })) {
        return true;
    }
    LineOfCells line(faults);
    for (std::size_t i = 0; i < cells.size(); ++i) {
        line.take(cells[i], columns->at(i));
    }
    return line.hand_on(on_row);
}

} // namespace libsplice
