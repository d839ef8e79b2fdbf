// Hands the words of a load to the formula that they ask for.
#include "libsplice/cut/bind/load.h"

#include "libsplice/job/load/read_load.h"
#include "libsplice/mechanics/loads/loads.h"

#include <string_view>
#include <variant>
#include <vector>

namespace libsplice {

namespace {

/// A force that was worked out, and the record that says how.
struct WorkedOut {
    std::string_view record;
    std::optional<Force> force; ///< none where the words are impossible
};

struct Formulas {
    WorkedOut operator()(const SheetLoad& load) const {
        return {"sheet", sheet_load(load.sail, load.wind)};
    }
    WorkedOut operator()(const MainsheetLoad& load) const {
        const auto tackle = mainsheet_load({load.foot, load.luff, load.from_end}, load.wind);
        return {"mainsheet", tackle ? std::optional(*tackle / load.parts) : std::nullopt};
    }
    WorkedOut operator()(const BlockLoad& load) const {
        return {"block", block_load(load.pull, load.turn)};
    }
    WorkedOut operator()(const RightingLoad& load) const {
        return {"righting", pull_at(righting_moment({load.boat, load.beam, load.crew}), load.arm)};
    }
};

std::optional<StatedLoad> work_out(const Catalogue& catalogue, const Node& table,
                                   CellReader& cells) {
    std::vector<Fault> faults;
    const auto words = read_load_words(table, faults);
    for (Fault& fault : faults) {
        cells.add_placed(std::move(fault));
    }
    if (!words) {
        return std::nullopt;
    }
    const WorkedOut made = std::visit(Formulas{}, *words);
    if (!made.force) {
        cells.add(Fault{Code::value_out_of_range,
                        "the sheet is taken at or ahead of the mast: from_end must be less than "
                        "the foot"},
                  Column::load);
        return std::nullopt;
    }
    StatedLoad load{*made.force, cited_computed, std::nullopt};
    for (const CitedRecord& record : catalogue.place_records()) {
        const CitedCell* says =
            record.sort == "load" && record.id == made.record ? record.find("says") : nullptr;
        if (says != nullptr) {
            load.source = says->source;
            load.note = PieceCaution{{says->text, says->source}, std::nullopt, {}};
            load.note->amounts.push_back(amount_of(load.force));
        }
    }
    return load;
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
    return StatedLoad{Force(load->value), cited_job, std::nullopt};
}

} // namespace libsplice
