// Reads the records of places.toml, each sort by its own words.
#include "libsplice/choose/choice_tables.h"

#include "libsplice/base/text.h"
#include "libsplice/units/read.h"

#include <algorithm>
#include <span>

namespace libsplice {

/// Reads one record after the other; what cannot be read is pushed.
class ChoiceTablesReader {
  public:
    ChoiceTablesReader(ChoiceTables& tables, FaultSink& faults)
        : tables_(tables), faults_(faults) {}

    void read(const CitedRecord& record) {
        if (record.sort == "place") {
            take_place(record);
        } else if (record.sort == "fibre") {
            take_fibre(record);
        } else if (record.sort == "hand") {
            if (const auto index = word(record, handling_words)) {
                tables_.hands_.at(*index) = length(record, "least");
            }
        } else if (record.sort == "holder") {
            take_holder(record);
        } else if (record.sort == "running") {
            if (const auto index = word(record, running_words)) {
                tables_.melting_.at(*index) = number(record, "melts_over");
            }
        } else {
            tables_.sheave_ = number(record, "diameters");
        }
    }

  private:
    void refuse(const CitedRecord& record, const std::string& text) {
        faults_.push(Fault{Code::table_value_wrong,
                           "the record " + in_quotes(record.id) + " of places.toml: " + text,
                           record.at});
    }

    std::optional<std::size_t> word(const CitedRecord& record,
                                    std::span<const std::string_view> words) {
        const auto known = std::ranges::find(words, record.id);
        if (known == words.end()) {
            refuse(record, "its id must be one of " + listed(words));
            return std::nullopt;
        }
        return static_cast<std::size_t>(known - words.begin());
    }

    std::optional<Sourced<double>> number(const CitedRecord& record, std::string_view key) {
        const CitedCell* cell = record.find(key);
        if (cell == nullptr) {
            return std::nullopt;
        }
        const auto value = read_share(cell->text);
        if (!value) {
            refuse(record, std::string(key) + ": " + value.error().text);
            return std::nullopt;
        }
        return Sourced<double>{*value, cell->source};
    }

    std::optional<Sourced<Length>> length(const CitedRecord& record, std::string_view key) {
        const CitedCell* cell = record.find(key);
        if (cell == nullptr) {
            return std::nullopt;
        }
        const auto value = read_length(cell->text);
        if (!value) {
            refuse(record, std::string(key) + ": " + value.error().text);
            return std::nullopt;
        }
        return Sourced<Length>{value->length, cell->source};
    }

    /// Whether its words can be read is for the columns that they stand in for.
    void take_place(const CitedRecord& record) {
        for (const CitedCell& cell : record.cells) {
            const bool known = std::ranges::any_of(
                need_columns, [&](Column column) { return column_name(column) == cell.key; });
            if (!known) {
                refuse(record, in_quotes(cell.key) + " is no need of a line");
            }
        }
        tables_.places_.push_back(&record);
    }

    void take_fibre(const CitedRecord& record) {
        const auto fibre = read_fibre(record.id);
        if (!fibre) {
            refuse(record, "its id must be the name of a fibre");
            return;
        }
        const CitedCell* slippery = record.find("slippery");
        tables_.fibres_.at(static_cast<std::size_t>(*fibre)) = {
            slippery != nullptr && slippery->text == "yes", number(record, "gravity"),
            number(record, "melts"), number(record, "steady_share")};
    }

    void take_holder(const CitedRecord& record) {
        const auto index = word(record, holder_words);
        const CitedCell* slips = record.find("bare_slippery");
        if (index && slips != nullptr && slips->text == "no") {
            tables_.slips_.at(*index) = slips->source;
        }
    }

    ChoiceTables& tables_;
    FaultSink& faults_;
};

std::optional<ChoiceTables> ChoiceTables::open(const Catalogue& catalogue, FaultSink& faults) {
    ChoiceTables tables;
    const std::size_t before = faults.count();
    ChoiceTablesReader reader(tables, faults);
    for (const CitedRecord& record : catalogue.place_records()) {
        reader.read(record);
    }
    return faults.count() == before ? std::optional(std::move(tables)) : std::nullopt;
}

const Place* ChoiceTables::find_place(std::string_view name) const {
    const std::string wanted = in_small_letters(trimmed(name));
    const auto found = std::ranges::find_if(places_, [&](const Place* place) {
        return place->id == wanted || std::ranges::find(place->words, wanted) != place->words.end();
    });
    return found == places_.end() ? nullptr : *found;
}

std::string ChoiceTables::places_near(std::string_view name) const {
    std::vector<std::string_view> ids;
    for (const Place* place : places_) {
        ids.push_back(place->id);
        ids.insert(ids.end(), place->words.begin(), place->words.end());
    }
    const std::string near = did_you_mean(in_small_letters(name), ids);
    return near.empty() ? "; leave it empty, or add it to a table of your own" : near;
}

} // namespace libsplice
