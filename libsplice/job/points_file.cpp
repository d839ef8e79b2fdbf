#include "libsplice/job/points_file.h"

#include "libsplice/base/text.h"
#include "libsplice/job/cell_text.h"
#include "libsplice/job/csv_heading.h"
#include "libsplice/job/route_values.h"

#include <algorithm>
#include <array>
#include <optional>
#include <utility>

namespace libsplice {

namespace {

constexpr std::array<std::string_view, 4> point_columns{"x", "y", "z", "sheave"};
constexpr std::size_t sheave_column = 3;
constexpr std::size_t needed_columns = 2;

/// Where a column stands in the file, and the unit that its heading gives.
struct PointColumn {
    std::uint32_t index = 0;
    std::optional<LengthUnit> unit;
};

class PointRecords {
  public:
    PointRecords(Input& input, std::vector<Fault>& faults)
        : records_(input), name_(input.name()), faults_(faults) {}

    std::vector<RoutePoint> read() {
        std::vector<RoutePoint> points;
        if (!next()) {
            add({Code::no_heading, "the points file is empty; its first line must name the columns "
                                   "x, y and, where wanted, z and sheave"},
                Place{name_});
            return points;
        }
        if (!read_heading()) {
            return points;
        }
        while (next()) {
            points.push_back(read_point());
        }
        return points;
    }

  private:
    /// Goes on to the next record; false at the end, or where nothing can be read beyond.
    bool next() {
        auto more = records_.next();
        if (!more) {
            faults_.push_back(std::move(more).error());
            return false;
        }
        faults_.insert(faults_.end(), records_.faults().begin(), records_.faults().end());
        return *more;
    }

    bool read_heading() {
        const std::size_t before = faults_.size();
        for (std::uint32_t i = 0; i < records_.size(); ++i) {
            if (!records_.cell(i).empty()) {
                take_heading(i);
            }
        }
        for (std::size_t column = 0; column < needed_columns; ++column) {
            if (!found_[column]) {
                add({Code::route_not_readable,
                     "the points file has no column " + in_quotes(point_columns[column])},
                    records_.place_of(0));
            }
        }
        return faults_.size() == before;
    }

    void take_heading(std::uint32_t index) {
        const HeadingText heading = split_unit(records_.cell(index));
        const auto known = std::ranges::find(point_columns, heading.name);
        const auto unit = heading.unit ? read_length_unit(*heading.unit) : std::nullopt;
        if (known == point_columns.end()) {
            add({Code::unknown_column, "the column " + in_quotes(heading.name) +
                                           " is not known; a points file has " +
                                           listed(point_columns)},
                records_.place_of(index));
            return;
        }
        auto& place = found_[static_cast<std::size_t>(known - point_columns.begin())];
        if (place) {
            add({Code::duplicate_column,
                 "the column " + in_quotes(heading.name) + " stands twice; take one out"},
                records_.place_of(index));
        } else if (heading.unit && !unit) {
            add(unknown_unit(heading), records_.place_of(index));
        }
        place = PointColumn{index, unit};
    }

    RoutePoint read_point() {
        RoutePoint point;
        point.place = records_.place_of(0);
        for (std::size_t column = 0; column < point_columns.size(); ++column) {
            const auto value = read_cell(column);
            if (column == sheave_column) {
                point.sheave = value;
            } else {
                point.at[column] = value.value_or(Length());
            }
        }
        return point;
    }

    std::optional<Length> read_cell(std::size_t column) {
        const auto& place = found_[column];
        const auto text = place ? records_.cell(place->index) : std::string_view();
        if (text.empty()) {
            if (column < needed_columns) {
                add({Code::cell_missing, "a point needs its " + std::string(point_columns[column])},
                    records_.place_of(place->index));
            }
            return std::nullopt;
        }
        const auto value =
            read_route_length(text, column == sheave_column ? Length() : -farthest, place->unit);
        if (!value) {
            add(value.error(), records_.place_of(place->index));
            return std::nullopt;
        }
        return *value;
    }

    void add(Fault fault, Place at) {
        fault.at = std::move(at);
        fault.field = "route";
        faults_.push_back(std::move(fault));
    }

    CsvRecords records_;
    std::string name_;
    std::vector<Fault>& faults_;
    std::array<std::optional<PointColumn>, point_columns.size()> found_{};
};

} // namespace

std::vector<RoutePoint> read_points_file(const std::string& path, std::vector<Fault>& faults) {
    auto input = Input::open(path);
    if (!input) {
        faults.push_back(input.error());
        return {};
    }
    return PointRecords(*input, faults).read();
}

} // namespace libsplice
