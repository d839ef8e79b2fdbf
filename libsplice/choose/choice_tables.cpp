// Reads the records of places.toml, each sort by its own words.
#include "libsplice/choose/choice_tables.h"

#include "libsplice/base/document.h"
#include "libsplice/base/input.h"
#include "libsplice/base/text.h"
#include "libsplice/choose/read_cited.h"
#include "libsplice/units/read.h"

#include <algorithm>
#include <filesystem>
#include <span>
#include <system_error>
#include <utility>

namespace libsplice {

std::optional<std::vector<Fibre>> read_fibres(std::string_view text) {
    std::vector<Fibre> fibres;
    while (!text.empty()) {
        const auto comma = std::min(text.find(','), text.size());
        const auto fibre = read_fibre(trimmed(text.substr(0, comma)));
        if (!fibre) {
            return std::nullopt;
        }
        fibres.push_back(*fibre);
        text.remove_prefix(std::min(comma + 1, text.size()));
    }
    return fibres;
}

Cited<std::vector<Fibre>> ChoiceTables::usual_at(const CitedRecord* place) const {
    const CitedCell* cell = place == nullptr ? nullptr : place->find("usual");
    const auto fibres = cell == nullptr ? std::nullopt : read_fibres(cell->text);
    return fibres ? Cited<std::vector<Fibre>>{*fibres, cell->source} : usual_;
}

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
        } else if (record.sort == "usual") {
            if (const CitedCell* cell = record.find("fibres");
                cell != nullptr && is_fibres(record, *cell)) {
                tables_.usual_ = {*read_fibres(cell->text), cell->source};
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

    std::optional<Cited<double>> number(const CitedRecord& record, std::string_view key) {
        const CitedCell* cell = record.find(key);
        if (cell == nullptr) {
            return std::nullopt;
        }
        const auto value = read_share(cell->text);
        if (!value) {
            refuse(record, std::string(key) + ": " + value.error().text);
            return std::nullopt;
        }
        return Cited<double>{*value, cell->source};
    }

    std::optional<Cited<Length>> length(const CitedRecord& record, std::string_view key) {
        const CitedCell* cell = record.find(key);
        if (cell == nullptr) {
            return std::nullopt;
        }
        const auto value = read_length(cell->text);
        if (!value) {
            refuse(record, std::string(key) + ": " + value.error().text);
            return std::nullopt;
        }
        return Cited<Length>{value->length, cell->source};
    }

    bool is_fibres(const CitedRecord& record, const CitedCell& cell) {
        const bool known = read_fibres(cell.text).has_value();
        if (!known) {
            refuse(record, in_quotes(cell.text) + " must be fibres, separated by commas");
        }
        return known;
    }

    /// Whether its words can be read is for the columns that they stand in for.
    void take_place(const CitedRecord& record) {
        for (const CitedCell& cell : record.cells) {
            const bool known = std::ranges::any_of(
                need_columns, [&](Column column) { return column_name(column) == cell.key; });
            if (cell.key == "usual") {
                static_cast<void>(is_fibres(record, cell));
            } else if (!known) {
                refuse(record, in_quotes(cell.key) + " is no need of a line");
            }
        }
        tables_.places_.push_back(record);
    }

    void take_fibre(const CitedRecord& record) {
        const auto fibre = read_fibre(record.id);
        if (!fibre) {
            refuse(record, "its id must be the name of a fibre");
            return;
        }
        tables_.fibres_.at(static_cast<std::size_t>(*fibre)) = {
            says_yes(record, "slippery"), says_yes(record, "dear"), number(record, "gravity"),
            number(record, "melts"), number(record, "steady_share")};
    }

    [[nodiscard]] static bool says_yes(const CitedRecord& record, std::string_view key) {
        const CitedCell* cell = record.find(key);
        return cell != nullptr && cell->text == "yes";
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

namespace {

/// The records of the catalogue's folders, those that a later folder replaces left out.
class PlaceFiles {
  public:
    PlaceFiles(const Catalogue& catalogue, FaultSink& faults)
        : sources_(catalogue.sources().begin(), catalogue.sources().end()),
          context_{sources_, catalogue.aliases(), citations_, faults} {}

    void read(const std::string& file) {
        std::error_code none;
        if (!std::filesystem::exists(file, none)) {
            return;
        }
        auto input = Input::open(file);
        const auto text =
            input ? input->read_all() : Result<std::string>(Unexpected(input.error()));
        const auto document =
            text ? parse_toml(*text, file) : Result<Node>(Unexpected(text.error()));
        if (!document) {
            context_.faults.push(document.error());
            return;
        }
        own_.clear();
        check_keys(context_, *document, cited_tables);
        for (const std::string_view sort : cited_tables) {
            if (const Node* list = document->find(sort)) {
                read_list(sort, *list);
            }
        }
    }

    [[nodiscard]] std::span<const CitedRecord> records() const { return records_; }

  private:
    void read_list(std::string_view sort, const Node& list) {
        const auto is_table = [](const Node& node) {
            return node.table() != nullptr;
        };
        if (list.array() == nullptr || !std::ranges::all_of(*list.array(), is_table)) {
            push_fault(context_, Code::table_value_wrong, list, std::string(sort),
                       "write records under [[" + std::string(sort) + "]], with two brackets");
            return;
        }
        for (const Node& node : *list.array()) {
            if (auto record = read_cited(context_, sort, node)) {
                keep(*std::move(record));
            }
        }
    }

    void keep(CitedRecord record) {
        if (std::ranges::find(own_, record.key) != own_.end()) {
            context_.faults.push(
                Fault{Code::duplicate_record,
                      in_quotes(record.id) + " occurs twice in this file; rename or remove one",
                      record.at});
            return;
        }
        own_.push_back(record.key);
        const auto earlier = std::ranges::find(records_, record.key, &CitedRecord::key);
        if (earlier != records_.end()) {
            *earlier = std::move(record);
        } else {
            records_.push_back(std::move(record));
        }
    }

    std::vector<Source> sources_;
    Citations citations_;
    TableContext context_;
    std::vector<std::string> own_; ///< keys that this file has given already
    std::vector<CitedRecord> records_;
};

} // namespace

std::optional<ChoiceTables> ChoiceTables::open(const Catalogue& catalogue, FaultSink& faults) {
    const std::size_t before = faults.count();
    PlaceFiles files(catalogue, faults);
    for (const TableFolder& folder : catalogue.folders()) {
        files.read(folder.path + "/places.toml");
    }
    ChoiceTables tables;
    ChoiceTablesReader reader(tables, faults);
    for (const CitedRecord& record : files.records()) {
        reader.read(record);
    }
    return faults.count() == before ? std::optional(std::move(tables)) : std::nullopt;
}

const CitedRecord* ChoiceTables::find_place(std::string_view name) const {
    const std::string wanted = in_small_letters(trimmed(name));
    const auto found = std::ranges::find_if(places_, [&](const CitedRecord& place) {
        return place.id == wanted || std::ranges::find(place.words, wanted) != place.words.end();
    });
    return found == places_.end() ? nullptr : &*found;
}

std::string ChoiceTables::places_near(std::string_view name) const {
    std::vector<std::string_view> ids;
    for (const CitedRecord& place : places_) {
        ids.push_back(place.id);
        ids.insert(ids.end(), place.words.begin(), place.words.end());
    }
    const std::string near = did_you_mean(in_small_letters(name), ids);
    return near.empty() ? "; leave it empty, or add it to a table of your own" : near;
}

} // namespace libsplice
