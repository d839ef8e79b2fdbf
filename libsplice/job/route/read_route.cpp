// Reads each sort of route from its table: points, lacing, purchase.
#include "libsplice/job/route/read_route.h"

#include "libsplice/base/text.h"
#include "libsplice/job/cell_text.h"
#include "libsplice/job/route/points_file.h"
#include "libsplice/job/route/route_table.h"
#include "libsplice/job/route/route_values.h"

#include <gsl/assert>

#include <filesystem>
#include <utility>

namespace libsplice {

namespace {

using Pattern = LacingRoute::Pattern;
constexpr std::array<std::string_view, 5> patterns{"zigzag", "rail", "criss-cross", "straight",
                                                   "spiral"};
constexpr double most_degrees = 3600.0;

/// `[x, y]` or `[x, y, z]`.
std::array<Length, 3> read_place(RouteTable& table, const Node& value) {
    std::array<Length, 3> at{};
    const auto* items = value.array();
    if (items == nullptr || items->size() < 2 || items->size() > at.size()) {
        table.add({Code::route_not_readable,
                   "a place is two or three lengths, such as [\"3 m\", \"0 m\"]"},
                  value);
        return at;
    }
    for (std::size_t i = 0; i < items->size(); ++i) {
        const Node& item = (*items)[i];
        const auto length = read_route_length(item.scalar_text(), -farthest);
        if (length) {
            at[i] = *length;
        } else {
            table.add(length.error(), item);
        }
    }
    return at;
}

std::vector<RoutePoint> read_points(RouteTable& table, std::vector<Fault>& faults) {
    constexpr std::array<std::string_view, 2> keys{"at", "sheave"};
    std::vector<RoutePoint> points;
    for (const Node& node : table.need_array("points", 2)) {
        if (node.array() != nullptr) {
            points.push_back({read_place(table, node), {}, node.at()});
            continue;
        }
        RouteTable point(node, faults);
        point.allow_only(keys);
        const Node* at = node.find("at");
        if (at == nullptr) {
            point.add({Code::route_not_readable, "a point needs its place: at = [x, y, z]"}, node);
            continue;
        }
        points.push_back({read_place(point, *at), point.length("sheave"), node.at()});
    }
    return points;
}

/// A name in a job is looked for beside the job's own file.
std::string beside(const Place& job, const std::string& name) {
    return (std::filesystem::path(job.file).parent_path() / name).string();
}

PointRoute read_point_route(RouteTable& table, std::vector<Fault>& faults) {
    constexpr std::array<std::string_view, 2> keys{"points", "points_file"};
    table.allow_only(keys);
    if (table.has("points") && table.has("points_file")) {
        table.add({Code::route_not_readable, "give points or a points_file, not both"},
                  table.node());
        return {};
    }
    if (const Node* file = table.node().find("points_file")) {
        return {read_points_file(beside(file->at(), file->scalar_text()), faults)};
    }
    return {read_points(table, faults)};
}

std::vector<EyeletRow> read_rows(RouteTable& table, std::size_t least, std::vector<Fault>& faults) {
    constexpr std::array<std::string_view, 2> keys{"points", "count"};
    std::vector<EyeletRow> rows;
    for (const Node& node : table.need_array("rows", least)) {
        RouteTable row(node, faults);
        row.allow_only(keys);
        EyeletRow& read = rows.emplace_back();
        read.place = node.at();
        read.points = read_points(row, faults);
        if (row.has("count")) {
            read.count = row.need_count("count", 2);
        }
    }
    if (rows.size() > least) {
        table.add({Code::route_not_readable,
                   "this lacing takes " + std::to_string(least) + (least == 1 ? " row" : " rows")},
                  *table.node().find("rows"));
    }
    return rows;
}

/// What a pattern is made of: the key of its count and of its pitch, and what it goes round.
struct PatternKeys {
    std::string_view count;
    std::string_view pitch;
    std::string_view around; ///< empty: eyelets without thickness
    std::size_t least_count;
    std::size_t rows;
};
constexpr std::array<PatternKeys, 4> pattern_keys{{
    {"legs", "advance", "edge", 1, 2},
    {"loops", "pitch", "rail", 1, 1},
    {"pairs", "pitch", {}, 2, 2},
    {"pairs", "pitch", {}, 2, 2},
}};

LacingRoute read_spiral(RouteTable& table) {
    constexpr std::array<std::string_view, 4> keys{"lacing", "turns", "rail", "pitch"};
    table.allow_only(keys);
    LacingRoute lacing;
    lacing.pattern = Pattern::spiral;
    lacing.turns = table.need_number("turns");
    lacing.around = table.need_length("rail");
    lacing.pitch = table.need_length("pitch");
    return lacing;
}

/// Rows that are given as counts and a pitch, or as lines that may be curved.
LacingRoute read_lacing(RouteTable& table, std::vector<Fault>& faults) {
    const auto choice = table.need_choice("lacing", patterns);
    if (!choice) {
        return {};
    }
    const auto pattern = static_cast<Pattern>(*choice);
    if (pattern == Pattern::spiral) {
        return read_spiral(table);
    }
    const PatternKeys& names = pattern_keys[static_cast<std::size_t>(pattern)];
    LacingRoute lacing;
    lacing.pattern = pattern;
    std::vector<std::string_view> keys{"lacing"};
    if (!names.around.empty()) {
        keys.push_back(names.around);
        lacing.around = table.length(names.around).value_or(Length());
    }
    const bool rail = pattern == Pattern::rail;
    if (rail && !(lacing.around > Length())) {
        lacing.around = table.need_length(names.around);
    }
    if (table.has("rows")) {
        keys.emplace_back("rows");
        lacing.rows = read_rows(table, names.rows, faults);
    } else {
        keys.insert(keys.end(), {names.count, names.pitch});
        lacing.count = table.need_count(names.count, names.least_count);
        lacing.pitch = table.need_length(names.pitch);
    }
    if (rail || lacing.rows.empty()) {
        keys.emplace_back("gap");
        lacing.gap = table.need_length("gap");
    }
    table.allow_only(keys);
    return lacing;
}

std::vector<PurchaseSheave> read_sheaves(RouteTable& table, std::vector<Fault>& faults) {
    constexpr std::array<std::string_view, 2> keys{"size", "turn"};
    std::vector<PurchaseSheave> sheaves;
    for (const Node& node : table.need_array("sheaves", 1)) {
        RouteTable sheave(node, faults);
        sheave.allow_only(keys);
        const double turn = sheave.need_number("turn");
        if (turn > most_degrees) {
            sheave.add({Code::value_out_of_range,
                        "a turn is given in degrees, over 0 to 3600: half a turn is 180"},
                       node);
        }
        sheaves.push_back({sheave.need_length("size"), degrees(turn)});
    }
    return sheaves;
}

/// The other block's place when hauled: given, or from how far a purchase that this one hauls on
/// travels.
std::optional<Length> read_hauled(RouteTable& table, Length run) {
    if (!table.has("travel")) {
        return table.length("hauled");
    }
    const Length travel = table.need_length("travel");
    const double parts_hauled =
        table.has("hauls") ? static_cast<double>(table.need_count("hauls", 1)) : 1.0;
    return run - parts_hauled * travel;
}

PurchaseRoute read_purchase(RouteTable& table, std::vector<Fault>& faults) {
    constexpr std::array<std::string_view, 10> keys{"purchase", "run",    "hauled", "travel",
                                                    "hauls",    "becket", "sheave", "sheaves",
                                                    "lead",     "tail"};
    table.allow_only(keys);
    PurchaseRoute purchase;
    purchase.parts = table.need_count("purchase", 1);
    purchase.run = table.need_length("run");
    purchase.hauled = read_hauled(table, purchase.run);
    purchase.becket = table.length("becket").value_or(Length());
    purchase.lead = table.length("lead").value_or(Length());
    purchase.tail = table.length("tail").value_or(Length());
    if (table.has("hauled") && table.has("travel")) {
        table.add({Code::route_not_readable, "give hauled or travel, not both"}, table.node());
    }
    if (table.has("sheave") == table.has("sheaves")) {
        table.add({Code::route_not_readable,
                   "give sheave, one size for all, or sheaves, each with its size and turn"},
                  table.node());
    } else if (table.has("sheaves")) {
        purchase.sheaves = read_sheaves(table, faults);
    } else {
        purchase.sheave = table.need_length("sheave");
    }
    return purchase;
}

std::optional<Route> read_table(const Node& node, std::vector<Fault>& faults) {
    const std::size_t before = faults.size();
    RouteTable table(node, faults);
    Route route{{}, node.at()};
    if (table.has("lacing")) {
        route.way = read_lacing(table, faults);
    } else if (table.has("purchase")) {
        route.way = read_purchase(table, faults);
    } else if (table.has("points") || table.has("points_file")) {
        route.way = read_point_route(table, faults);
    } else {
        table.add(
            {Code::route_not_readable, "a route has points, a points_file, a lacing or a purchase"},
            node);
    }
    return faults.size() == before ? std::optional(std::move(route)) : std::nullopt;
}

/// Only then is a file opened.
bool names_file_alone(const Node& table) {
    return table.find("points_file") != nullptr && table.find("points") == nullptr;
}

GivenRoute read_node(const Node& table) {
    GivenRoute given;
    given.route = read_table(table, given.faults);
    return given;
}

GivenRoute read_file(std::string_view name, const Place& at) {
    GivenRoute given;
    PointRoute route{read_points_file(beside(at, std::string(name)), given.faults)};
    if (given.faults.empty()) {
        given.route = Route{std::move(route), at};
    }
    return given;
}

GivenRoute without_file(const Place& at) {
    return {std::nullopt,
            {Fault{Code::route_not_readable,
                   "a job that is not a file of its own reads no points file; give the points in "
                   "the route",
                   at, "route"}}};
}

} // namespace

const GivenRoute* RouteReader::route_of(const JobLine& line) {
    const Cell& cell = line.cell(Column::route);
    if (cell.node != nullptr) {
        const auto [found, is_new] = of_tables_.try_emplace(cell.node);
        if (is_new) {
            found->second = opens_files_ || !names_file_alone(*cell.node)
                                ? read_node(*cell.node)
                                : without_file(cell.node->at());
        }
        return &found->second;
    }
    if (cell.text.empty()) {
        return nullptr;
    }
    const auto known = of_files_.find(cell.text);
    if (known != of_files_.end()) {
        return &known->second;
    }
    const Place at = line.place(cell);
    return &of_files_.emplace(cell.text, opens_files_ ? read_file(cell.text, at) : without_file(at))
                .first->second;
}

} // namespace libsplice
