// Hands the words of a load to the formula that they ask for, with its figure from the tables.
#include "libsplice/cut/bind/load/load.h"

#include "libsplice/job/load/read_load.h"
#include "libsplice/mechanics/loads/loads.h"

#include <numbers>
#include <string>
#include <utility>
#include <variant>
#include <vector>

namespace libsplice {

namespace {

using Worked = Result<StatedLoad>;

StatedLoad worked_out(Force force, Working working, CitationId source) {
    return {force, LoadWorking{working, source}};
}

/// One formula each, with the figure that it needs.
class Formulas {
  public:
    explicit Formulas(const Catalogue& catalogue) : catalogue_(catalogue) {}

    Worked operator()(const SheetLoad& load) const {
        const auto figure = need(FigureId::wind_pressure);
        if (!figure) {
            return Unexpected(figure.error());
        }
        const double pressure = figure->number();
        return worked_out(sheet_load(load.sail, load.wind, pressure),
                          {FormulaId::sheet_load, {pressure, load.sail.si(), load.wind.si()}},
                          figure->source);
    }

    Worked operator()(const MainsheetLoad& load) const {
        const auto figure = need(FigureId::boom_pressure);
        if (!figure) {
            return Unexpected(figure.error());
        }
        const double pressure = figure->number();
        const auto tackle =
            mainsheet_load({load.foot, load.luff, load.from_end}, load.wind, pressure);
        if (!tackle) {
            return Unexpected(Fault{Code::value_out_of_range,
                                    "the sheet is taken at or ahead of the mast: from_end must be "
                                    "less than the foot"});
        }
        return worked_out(*tackle / load.parts,
                          {FormulaId::mainsheet_load,
                           {pressure, load.foot.si(), load.luff.si(), load.from_end.si(),
                            load.wind.si(), static_cast<double>(load.parts)}},
                          figure->source);
    }

    Worked operator()(const BlockLoad& load) const {
        const double turn = load.turn.si() * 180.0 / std::numbers::pi;
        return worked_out(block_load(load.pull, load.turn),
                          {FormulaId::block_load, {load.pull.si(), turn}}, cited_geometry);
    }

    Worked operator()(const TackleLoad& load) const {
        const auto figure = need(FigureId::sheave_loss);
        if (!figure) {
            return Unexpected(figure.error());
        }
        const double loss = figure->number();
        return worked_out(tackle_pull(load.load, load.parts, load.sheaves, loss),
                          {FormulaId::tackle_load,
                           {load.load.si(), loss, static_cast<double>(load.sheaves),
                            static_cast<double>(load.parts)}},
                          figure->source);
    }

    Worked operator()(const RightingLoad& load) const {
        const auto figure = need(FigureId::crew_outside);
        if (!figure) {
            return Unexpected(figure.error());
        }
        const Length outside = figure->length(Length());
        const Moment moment = righting_moment({load.boat, load.beam, load.crew, outside});
        return worked_out(
            pull_at(moment, load.arm),
            {FormulaId::righting_load,
             {load.boat.si(), load.beam.si(), load.crew.si(), outside.si(), load.arm.si()}},
            figure->source);
    }

  private:
    /// Of the first rule that has it: none of these depends on a rope.
    [[nodiscard]] Result<Figure> need(FigureId id) const {
        for (const Rule& rule : catalogue_.rules()) {
            if (const Figure* figure = rule.find(id)) {
                return *figure;
            }
        }
        return Unexpected(Fault{Code::figure_missing, "the tables have no figure \"" +
                                                          std::string(name_of(id)) +
                                                          "\", which this load needs"});
    }

    const Catalogue& catalogue_;
};

std::optional<StatedLoad> work_out(const Catalogue& catalogue, const Node& given,
                                   CellReader& cells) {
    std::vector<Fault> faults;
    const auto words = read_load_words(given, faults);
    for (Fault& fault : faults) {
        cells.add_placed(std::move(fault));
    }
    if (!words) {
        return std::nullopt;
    }
    const Worked load = std::visit(Formulas(catalogue), *words);
    if (!load) {
        cells.add(load.error(), Column::load);
        return std::nullopt;
    }
    return *load;
}

} // namespace

std::optional<StatedLoad> read_load(const Catalogue& catalogue, CellReader& cells) {
    if (const Node* table = cells.job().cell(Column::load).node) {
        return work_out(catalogue, *table, cells);
    }
    const auto load = cells.tension(Column::load);
    if (!load) {
        return std::nullopt;
    }
    if (load->basis != Tension::Basis::force) {
        cells.add(Fault{Code::not_a_tension, "the load must be a force such as 1.2 kN"},
                  Column::load);
        return std::nullopt;
    }
    return StatedLoad{Force(load->value), std::nullopt};
}

} // namespace libsplice
