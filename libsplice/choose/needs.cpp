// Puts the words of a place under those of the line, and reads both as one.
#include "libsplice/choose/needs.h"

#include "libsplice/base/text.h"
#include "libsplice/cut/bind/load/load.h"
#include "libsplice/units/read.h"

#include <algorithm>
#include <span>

namespace libsplice {

namespace {

template <class Word>
std::optional<Word> read_word(CellReader& cells, Column column,
                              std::span<const std::string_view> words) {
    const auto index = cells.choice(column, words);
    return index ? std::optional(static_cast<Word>(*index)) : std::nullopt;
}

/// `cleat` or `cleat, winch`.
std::vector<Holder> read_holders(CellReader& cells) {
    std::vector<Holder> holders;
    std::string_view rest = trimmed(cells.text(Column::held_by));
    while (!rest.empty()) {
        const auto comma = std::min(rest.find(','), rest.size());
        std::string word = in_small_letters(trimmed(rest.substr(0, comma)));
        word.erase(0, std::min(word.find_first_not_of('-'), word.size())); // it was a blank
        const auto known = std::ranges::find(holder_words, word);
        if (known != holder_words.end()) {
            holders.push_back(static_cast<Holder>(known - holder_words.begin()));
        } else {
            cells.add(Fault{Code::not_a_choice, in_quotes(word) + " is none of " +
                                                    listed(holder_words) +
                                                    did_you_mean(word, holder_words)},
                      Column::held_by);
        }
        rest = trimmed(rest.substr(std::min(comma + 1, rest.size())));
    }
    return holders;
}

/// `4-8 mm`, `4 mm - 8 mm`, `4 to 8 mm`.
std::optional<DiameterRange> read_range(CellReader& cells) {
    const std::string_view text = trimmed(cells.text(Column::held_range));
    if (text.empty()) {
        return std::nullopt;
    }
    const auto to = text.find(" to ");
    const auto dash = to == std::string_view::npos ? text.find('-', 1) : to;
    const auto behind = dash + (to == std::string_view::npos ? 1U : 4U);
    const auto last = dash == std::string_view::npos ? Result<WrittenLength>(Unexpected(Fault{}))
                                                     : read_length(trimmed(text.substr(behind)));
    if (last) {
        const std::string_view first = trimmed(text.substr(0, dash));
        auto from = read_length(first);
        if (!from) { // the unit stands behind the second number only
            const auto unit = text.find_last_of("0123456789.");
            from = read_length(std::string(first) + std::string(text.substr(unit + 1)));
        }
        if (from && from->length > Length() && from->length <= last->length) {
            return DiameterRange{from->length, last->length};
        }
    }
    cells.add(Fault{Code::not_a_length, in_quotes(text) + " must be two diameters, such as 4-8 mm"},
              Column::held_range);
    return std::nullopt;
}

std::optional<double> read_price(CellReader& cells) {
    std::string_view text = trimmed(cells.text(Column::price_limit));
    if (text.empty()) {
        return std::nullopt;
    }
    if (text.ends_with("/m")) {
        text = trimmed(text.substr(0, text.size() - 2));
    }
    const auto price = read_number(text);
    if (!price || !(*price >= 0.0)) {
        cells.add(Fault{Code::not_a_number,
                        in_quotes(text) + " must be the price of a metre, such as 2.40"},
                  Column::price_limit);
        return std::nullopt;
    }
    return *price;
}

std::optional<Length> read_size(CellReader& cells, Column column) {
    const auto length = cells.length(column, 1);
    return length ? std::optional(from_nanometres(*length)) : std::nullopt;
}

/// A load that is worked out rests on its formula's source.
void take_load(const Catalogue& catalogue, CellReader& cells, Needs& needs) {
    const auto load = read_load(catalogue, cells);
    if (!load) {
        return;
    }
    needs.load = load->force;
    needs.load_working = load->working;
    if (load->working) {
        const auto at = std::ranges::find(need_columns, Column::load) - need_columns.begin();
        needs.sources.at(static_cast<std::size_t>(at)) =
            catalogue.citations().at(load->working->source);
    }
}

} // namespace

PlacedLine with_place(const JobLine& line, const ChoiceTables& tables, CellReader& cells) {
    PlacedLine placed{line, nullptr, {}};
    const std::string_view named = line.text(Column::place);
    placed.place = named.empty() ? nullptr : tables.find_place(named);
    if (placed.place == nullptr && !named.empty()) {
        cells.add(Fault{Code::not_a_choice, in_quotes(named) + " is no place of the tables" +
                                                tables.places_near(named)},
                  Column::place);
    }
    for (std::size_t i = 0; i < need_columns.size(); ++i) {
        Cell& cell = placed.line.cells.at(static_cast<std::size_t>(need_columns.at(i)));
        if (!cell.empty()) {
            placed.sources.at(i) = Citation{Status::job, {}, {}};
            continue;
        }
        const CitedCell* given =
            placed.place == nullptr ? nullptr : placed.place->find(column_name(need_columns.at(i)));
        if (given != nullptr) {
            cell.text = given->text;
            cell.unit.reset(); // that of the heading is the job's own
            placed.sources.at(i) = given->source;
        }
    }
    return placed;
}

Needs read_needs(const PlacedLine& placed, const Catalogue& catalogue, CellReader& cells) {
    Needs needs;
    needs.place = placed.place == nullptr ? std::string() : placed.place->id;
    needs.sources = placed.sources;
    needs.carries_person = cells.yes(Column::carries_person);
    take_load(catalogue, cells, needs);
    needs.set = cells.tension(Column::set_tension);
    needs.most_give = read_size(cells, Column::most_give);
    needs.standing = read_word<Standing>(cells, Column::standing, standing_words);
    needs.held_by = read_holders(cells);
    needs.held_range = read_range(cells);
    needs.sheave = read_size(cells, Column::sheave);
    needs.smallest_hole = read_size(cells, Column::smallest_hole);
    needs.hand = read_word<Handling>(cells, Column::hand, handling_words);
    needs.runs = read_word<Running>(cells, Column::runs, running_words);
    needs.floats = cells.yes(Column::floats);
    needs.price_limit = read_price(cells);
    return needs;
}

std::string source_of_need(const Needs& needs, std::size_t need) {
    const auto& source = needs.sources.at(need);
    return source ? to_text(*source) : std::string();
}

} // namespace libsplice
