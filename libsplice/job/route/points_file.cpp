// Reads the points of a route, one a row, each with its sheave.
#include "libsplice/job/route/points_file.h"

#include "libsplice/base/text.h"
#include "libsplice/job/csv/named_columns.h"
#include "libsplice/job/route/route_values.h"

#include <array>
#include <optional>
#include <utility>

namespace libsplice {

namespace {

constexpr std::array<std::string_view, 4> point_columns{"x", "y", "z", "sheave"};
constexpr std::size_t sheave_column = 3;
constexpr std::size_t needed_columns = 2;

Fault of_route(Code code, std::string text) {
    return {code, std::move(text), {}, "route", {}};
}

std::optional<Length> read_cell(NamedColumns& columns, std::size_t column) {
    const auto text = columns.cell(column);
    if (text.empty()) {
        if (column < needed_columns) {
            columns.add(of_route(Code::cell_missing,
                                 "a point needs its " + std::string(point_columns[column])),
                        column);
        }
        return std::nullopt;
    }
    const auto value = read_route_length(text, column == sheave_column ? Length() : -farthest,
                                         columns.unit(column));
    if (!value) {
        columns.add(of_route(value.error().code, value.error().text), column);
        return std::nullopt;
    }
    return *value;
}

RoutePoint read_point(NamedColumns& columns) {
    RoutePoint point;
    point.place = columns.place_of_record();
    for (std::size_t column = 0; column < point_columns.size(); ++column) {
        const auto value = read_cell(columns, column);
        if (column == sheave_column) {
            point.sheave = value;
        } else {
            point.at[column] = value.value_or(Length());
        }
    }
    return point;
}

bool has_needed_columns(NamedColumns& columns) {
    bool complete = true;
    for (std::size_t column = 0; column < needed_columns; ++column) {
        if (!columns.has(column)) {
            columns.add(of_route(Code::route_not_readable, "the points file has no column " +
                                                               in_quotes(point_columns[column])),
                        column);
            complete = false;
        }
    }
    return complete;
}

} // namespace

std::vector<RoutePoint> read_points_file(const std::string& path, std::vector<Fault>& faults) {
    std::vector<RoutePoint> points;
    auto input = Input::open(path);
    if (!input) {
        faults.push_back(input.error());
        return points;
    }
    NamedColumns columns(*input, "a points file", point_columns, faults, "route");
    const bool sound = columns.read_heading();
    const bool complete = columns.has_heading() && has_needed_columns(columns);
    if (!sound || !complete) {
        return points;
    }
    while (columns.next()) {
        points.push_back(read_point(columns));
    }
    return points;
}

} // namespace libsplice
