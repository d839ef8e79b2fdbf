// Reads the points of a curve, one a row.
#include "libsplice/job/route/curve_file.h"

#include "libsplice/base/text.h"
#include "libsplice/job/csv/named_columns.h"
#include "libsplice/units/read.h"

#include <cmath>

namespace libsplice {

namespace {

constexpr std::array<std::string_view, 3> axes{"x", "y", "z"};
/// Farther out, squares of coordinates would lose their last digits to no use.
constexpr double farthest_coordinate = 1e6;

double read_coordinate(NamedColumns& columns, std::size_t axis) {
    const auto text = columns.cell(axis);
    if (text.empty()) {
        columns.add({Code::cell_missing, "a point needs its " + std::string(axes[axis])}, axis);
        return 0.0;
    }
    const auto number = read_number(text);
    if (!number) {
        columns.add(number.error(), axis);
        return 0.0;
    }
    if (std::abs(*number) > farthest_coordinate) {
        columns.add({Code::value_out_of_range,
                     "a coordinate is a count of rope diameters, from -1,000,000 to 1,000,000"},
                    axis);
        return 0.0;
    }
    return *number;
}

bool heading_is_complete(NamedColumns& columns) {
    bool complete = true;
    for (std::size_t axis = 0; axis < axes.size(); ++axis) {
        if (!columns.has(axis)) {
            columns.add({Code::no_heading, "the knot's file has no column " +
                                               in_quotes(axes[axis]) + "; its heading is x,y,z"},
                        axis);
            complete = false;
        } else if (columns.unit(axis)) {
            columns.add({Code::unknown_column,
                         "a knot's points are counted in rope diameters; leave the unit out"},
                        axis);
            complete = false;
        }
    }
    return complete;
}

} // namespace

std::vector<std::array<double, 3>> read_curve_file(const std::string& path,
                                                   std::vector<Fault>& faults) {
    std::vector<std::array<double, 3>> points;
    auto input = Input::open(path);
    if (!input) {
        faults.push_back(input.error());
        return points;
    }
    NamedColumns columns(*input, "a knot's file", axes, faults);
    const bool sound = columns.read_heading();
    const bool complete = columns.has_heading() && heading_is_complete(columns);
    if (!sound || !complete) {
        return points;
    }
    while (columns.next()) {
        if (points.size() == most_curve_points) {
            columns.add({Code::value_out_of_range, "a knot's file holds 20,000 points at most"}, 0);
            break;
        }
        auto& point = points.emplace_back();
        for (std::size_t axis = 0; axis < axes.size(); ++axis) {
            point[axis] = read_coordinate(columns, axis);
        }
    }
    return points;
}

} // namespace libsplice
