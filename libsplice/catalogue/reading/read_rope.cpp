// A rope from its record.
#include "libsplice/catalogue/reading/read_rope.h"

#include "libsplice/base/text.h"
#include "libsplice/catalogue/reading/read_figure.h"
#include "libsplice/catalogue/reading/read_stretch.h"
#include "libsplice/units/read.h"

#include <algorithm>
#include <array>
#include <utility>

namespace libsplice {

namespace {

constexpr std::array price_units{Unit{"per m", 1.0}};

constexpr std::array<std::string_view, 20> rope_keys{"id",
                                                     "prestretched",
                                                     "cover",
                                                     "title",
                                                     "construction",
                                                     "fibre",
                                                     "diameter",
                                                     "measured_diameter",
                                                     "core_diameter",
                                                     "breaking",
                                                     "stretch",
                                                     "braid_constant",
                                                     "mass",
                                                     "colour",
                                                     "price",
                                                     "generic",
                                                     "note",
                                                     "source",
                                                     "locator",
                                                     "status"};

/// The values of one record, each with its source.
class RopeValueReader {
  public:
    RopeValueReader(TableContext& context, const Node& record)
        : context_(context), record_(record), inherited_(read_record_citation(context, record)) {}

    /// The value under `key` in SI units; nothing where the key is absent or after a fault.
    std::optional<Sourced<double>> read(std::string_view key, std::span<const Unit> units) {
        const Node* node = record_.find(key);
        if (node == nullptr) {
            return std::nullopt;
        }
        if (node->table() == nullptr) {
            push_fault(context_, Code::table_value_wrong, *node, std::string(key),
                       '"' + std::string(key) + "\" must be like { value = 12.5, unit = \"" +
                           std::string(units.front().word) + "\", source = ... }");
            return std::nullopt;
        }
        constexpr std::array<std::string_view, 5> keys{"value", "unit", "source", "locator",
                                                       "status"};
        check_keys(context_, *node, keys);
        const auto value = read_printed_number(context_, *node, "value");
        const auto unit = read_unit(*node, units);
        const auto source = read_citation(context_, *node, inherited_);
        if (!value || !unit || !source) {
            return std::nullopt;
        }
        if (*value <= 0.0) {
            push_fault(context_, Code::table_value_wrong, *node->find("value"), "value",
                       "the value must be greater than 0");
            return std::nullopt;
        }
        return Sourced<double>{*value * *unit, *source};
    }

    template <class T>
    std::optional<Sourced<T>> read_as(std::string_view key, std::span<const Unit> units) {
        const auto value = read(key, units);
        return value ? std::optional(Sourced<T>{T(value->value), value->source}) : std::nullopt;
    }

    std::optional<RopeStretch> read_stretch_of_rope() {
        const Node* node = record_.find("stretch");
        return node == nullptr ? std::nullopt : read_stretch(context_, *node, inherited_);
    }

    /// A figure with its spread, as rules hold them.
    std::optional<Figure> read_figure_of(FigureId id) {
        const Node* node = record_.find(name_of(id));
        return node == nullptr ? std::nullopt : read_figure(context_, id, *node, inherited_);
    }

  private:
    std::optional<double> read_unit(const Node& node, std::span<const Unit> units) {
        const std::string text = require_text(context_, node, "unit");
        if (const Unit* unit = find_unit(units, text)) {
            return unit->si;
        }
        if (!text.empty()) {
            push_fault(context_, Code::table_value_wrong, *node.find("unit"), "unit",
                       '"' + text + "\" is no unit here; it is one of " + listed_units(units) +
                           did_you_mean(text, words_of(units)));
        }
        return std::nullopt;
    }

    TableContext& context_;
    const Node& record_;
    std::optional<CitationId> inherited_;
};

void read_diameter(TableContext& context, const Node& table, Rope& rope) {
    const std::string text = require_text(context, table, "diameter");
    if (text.empty()) {
        return;
    }
    const auto diameter = read_rope_diameter(text);
    if (!diameter) {
        push_fault(context, Code::table_value_wrong, *table.find("diameter"), "diameter",
                   diameter.error().text);
        return;
    }
    rope.diameter = diameter->length;
    rope.imperial = diameter->imperial;
}

/// A rope that lacks what a value is of has no such value.
bool check_suits(TableContext& context, const Node& table, std::string_view key, bool suits,
                 Construction construction, std::string_view lack) {
    const Node* node = table.find(key);
    if (node == nullptr || suits) {
        return true;
    }
    push_fault(context, Code::table_value_wrong, *node, std::string(key),
               "a rope of construction " + std::string(name_of(construction)) + " has " +
                   std::string(lack) + "; leave this out");
    return false;
}

} // namespace

std::optional<Sourced<double>> read_rope_value(TableContext& context, const Node& table,
                                               std::string_view key, std::span<const Unit> units) {
    return RopeValueReader(context, table).read(key, units);
}

std::optional<Rope> read_rope(TableContext& context, const Node& table) {
    const std::size_t faults_before = context.faults.count();
    check_keys(context, table, rope_keys);
    Rope rope;
    rope.id = require_text(context, table, "id");
    rope.title = require_text(context, table, "title");
    rope.construction =
        read_word(context, table, "construction", read_construction, construction_names())
            .value_or(Construction{});
    rope.fibre = read_word(context, table, "fibre", read_fibre, fibre_names()).value_or(Fibre{});
    read_diameter(context, table, rope);
    rope.colour = optional_text(context, table, "colour");
    rope.cover = optional_text(context, table, "cover");
    rope.prestretched = optional_flag(context, table, "prestretched");
    rope.generic = optional_flag(context, table, "generic");
    static_cast<void>(optional_text(context, table, "note"));

    RopeValueReader values(context, table);
    rope.measured_diameter = values.read_as<Length>("measured_diameter", length_units);
    rope.core_diameter = values.read_as<Length>("core_diameter", length_units);
    rope.breaking = values.read_as<Force>("breaking", force_units);
    rope.mass = values.read_as<LineMass>("mass", mass_units);
    rope.stretch = values.read_stretch_of_rope();
    rope.price = values.read("price", price_units);
    rope.braid_constant = values.read_figure_of(FigureId::braid_constant);
    if (context.faults.count() != faults_before) {
        return std::nullopt;
    }
    const bool fits = check_suits(context, table, "core_diameter", has_cover(rope.construction),
                                  rope.construction, "no core") &&
                      check_suits(context, table, "braid_constant", has_hollow(rope.construction),
                                  rope.construction, "no hollow braid");
    return fits ? std::optional(std::move(rope)) : std::nullopt;
}

} // namespace libsplice
