// Reads a rope's stretch as points, a rate or a name, and keeps every fault with its place.
#include "libsplice/catalogue/reading/read_stretch.h"

#include "libsplice/catalogue/reading/read_figure.h"
#include "libsplice/units/read.h"

#include <algorithm>
#include <array>
#include <utility>

namespace libsplice {

namespace {

/// A printed point with its spread.
struct PrintedPoint {
    Figure figure;
    Tension at;
};

std::optional<Tension> read_at(TableContext& context, const Node& node) {
    const std::string text = require_text(context, node, "at");
    const auto load = read_tension(text);
    if (load && load->value > 0.0) {
        return *load;
    }
    if (!text.empty()) {
        push_fault(context, Code::table_value_wrong, *node.find("at"), "at",
                   "\"at\" must be a share of the breaking strength, e.g. \"20 %\", or a force, "
                   "e.g. \"60 N\"");
    }
    return std::nullopt;
}

std::optional<PrintedPoint> read_point(TableContext& context, const Node& node,
                                       std::optional<CitationId> inherited) {
    const auto figure = read_figure(context, FigureId::stretch, node, inherited, "at");
    if (!figure) {
        return std::nullopt;
    }
    const auto at = read_at(context, node);
    return at ? std::optional(PrintedPoint{*figure, *at}) : std::nullopt;
}

/// The points of a curve; none after a fault.
std::vector<PrintedPoint> read_points(TableContext& context, const Node& node,
                                      std::optional<CitationId> inherited) {
    constexpr std::array<std::string_view, 5> keys{"points", "form", "source", "locator", "status"};
    check_keys(context, node, keys);
    const auto source = read_citation(context, node, inherited);
    const Node& list = *node.find("points");
    if (!source || list.array() == nullptr) {
        if (source) {
            push_fault(context, Code::table_value_wrong, list, "points",
                       "\"points\" must be a list like [{ value = 0.5, unit = \"%\", at = "
                       "\"10 %\" }, ...]");
        }
        return {};
    }
    std::vector<PrintedPoint> points;
    for (const Node& entry : *list.array()) {
        const auto point = read_point(context, entry, source);
        if (!point) {
            return {};
        }
        points.push_back(*point);
    }
    return points;
}

/// The curve that the points make; nothing after a fault.
std::optional<StretchCurve> curve_of(TableContext& context, const Node& node,
                                     std::vector<StretchPoint> points) {
    const auto refuse = [&](std::string_view field, std::string text) {
        const Node* at = node.find(field);
        push_fault(context, Code::table_value_wrong, at == nullptr ? node : *at, std::string(field),
                   std::move(text));
        return std::nullopt;
    };
    const std::string form = optional_text(context, node, "form");
    if (!form.empty() && form != "power") {
        return refuse("form", '"' + form +
                                  "\" is no form of a curve; it is \"power\", or leave it "
                                  "out");
    }
    if (!rises(points)) {
        return refuse("points", "the points must rise: more load and more stretch from each to the "
                                "next, and no stretch of 0");
    }
    if (node.find("points") == nullptr) {
        return StretchCurve::line(points.front());
    }
    if (form.empty() ? points.size() < 3 : points.size() != 2) {
        return refuse("points", "two points make a curve with form = \"power\", three or more "
                                "without; one stands as \"value\" and \"at\"");
    }
    return form.empty() ? StretchCurve::through(std::move(points))
                        : StretchCurve::power(points[0], points[1]);
}

} // namespace

std::optional<RopeStretch> read_stretch(TableContext& context, const Node& node,
                                        std::optional<CitationId> inherited) {
    std::vector<PrintedPoint> printed;
    if (node.find("points") != nullptr) {
        printed = read_points(context, node, inherited);
    } else if (const auto point = read_point(context, node, inherited)) {
        printed.push_back(*point);
    }
    if (printed.empty()) {
        return std::nullopt;
    }
    const Tension::Basis basis = printed.front().at.basis;
    std::vector<StretchPoint> points;
    double spread = 0.0;
    SpreadOrigin origin = SpreadOrigin::none;
    for (const auto& [figure, at] : printed) {
        if (at.basis != basis) {
            push_fault(context, Code::table_value_wrong, node, "points",
                       "the loads of one curve are all shares of breaking strength, or all forces");
            return std::nullopt;
        }
        points.push_back({at.value, figure.number()});
        if (figure.origin != SpreadOrigin::none && figure.sd / figure.value >= spread) {
            spread = figure.sd / figure.value;
            origin = figure.origin;
        }
    }
    auto curve = curve_of(context, node, std::move(points));
    if (!curve) {
        return std::nullopt;
    }
    return RopeStretch{*std::move(curve), basis == Tension::Basis::force, spread, origin,
                       printed.back().figure.source};
}

} // namespace libsplice
