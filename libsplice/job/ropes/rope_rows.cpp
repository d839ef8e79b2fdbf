// Reads rope lists, CSV or TOML, into rows of texts.
#include "libsplice/job/ropes/rope_rows.h"

#include "libsplice/base/text.h"
#include "libsplice/job/cell_text.h"
#include "libsplice/job/csv/named_columns.h"
#include "libsplice/units/read.h"

#include <algorithm>
#include <deque>
#include <iterator>
#include <unordered_set>
#include <utility>

namespace libsplice {

namespace {

constexpr std::string_view rope_key = "rope";
constexpr std::array needed_rope_columns{RopeColumn::id, RopeColumn::construction,
                                         RopeColumn::fibre, RopeColumn::diameter};

std::vector<std::string_view> rope_column_names() {
    std::vector<std::string_view> names;
    std::ranges::transform(rope_columns, std::back_inserter(names), &FileColumn::name);
    return names;
}

/// Takes rows, and refuses those that lack something or whose id is taken.
class RopeRows {
  public:
    void take(RopeRow row) {
        for (const RopeColumn needed : needed_rope_columns) {
            if (row.text(needed).empty()) {
                faults.push_back({Code::cell_missing,
                                  "a rope needs its " + std::string(name_of(needed)),
                                  row.cell(needed).at, std::string(name_of(needed))});
            }
        }
        const auto& id = row.cell(RopeColumn::id);
        if (!id.text.empty() && !ids_.insert(id.text).second) {
            faults.push_back(
                {Code::duplicate_record,
                 "the rope " + in_quotes(id.text) + " is there twice; give each an id of its own",
                 id.at, std::string(name_of(RopeColumn::id))});
        }
        rows.push_back(std::move(row));
    }

    std::vector<RopeRow> rows;
    std::vector<Fault> faults;

  private:
    std::unordered_set<std::string> ids_;
};

/// The text of a cell with the unit of its heading behind a bare number.
std::string with_unit(std::string_view text, std::optional<LengthUnit> unit) {
    return unit && read_mixed_number(text) ? std::string(text) + ' ' + std::string(name_of(*unit))
                                           : std::string(text);
}

void read_csv(Input& input, RopeRows& ropes) {
    NamedColumns columns(input, "a rope list", rope_columns, ropes.faults);
    if (!columns.read_heading()) {
        return;
    }
    for (const RopeColumn needed : needed_rope_columns) {
        if (!columns.has(static_cast<std::size_t>(needed))) {
            columns.add({Code::no_heading, "the rope list has no column " +
                                               in_quotes(name_of(needed)) +
                                               "; it needs id, construction, fibre and diameter"},
                        static_cast<std::size_t>(needed));
        }
    }
    const bool complete = ropes.faults.empty();
    while (complete && columns.next()) {
        RopeRow row;
        for (std::size_t i = 0; i < rope_column_count; ++i) {
            row.cells.at(i) = {with_unit(columns.cell(i), columns.unit(i)), columns.place_of(i)};
        }
        ropes.take(std::move(row));
    }
}

/// The table of one rope.
RopeRow row_of(const Node& table, std::vector<Fault>& faults) {
    RopeRow row;
    for (RopeRow::Cell& cell : row.cells) {
        cell.at = table.at();
    }
    std::deque<std::string> made;
    for (const auto& [key, value] : *table.table()) {
        const auto known = std::ranges::find(rope_columns, key, &FileColumn::name);
        if (known == rope_columns.end()) {
            const auto names = rope_column_names();
            const std::string near = did_you_mean(key, names);
            faults.push_back({Code::unknown_column,
                              "the key " + in_quotes(key) + " of a rope is not known" +
                                  (near.empty() ? "; a rope has " + listed(names) : near),
                              value.at(), key});
        } else if (value.array() != nullptr || value.table() != nullptr) {
            faults.push_back(
                {Code::broken_toml, key + " must be text or a number", value.at(), key});
        } else {
            const std::string text = value.scalar_text();
            row.cells.at(static_cast<std::size_t>(known - rope_columns.begin())) = {
                std::string(settled(trimmed(text), {known->sort}, made)), value.at()};
        }
    }
    return row;
}

void take_tables(const Node& ropes, RopeRows& into) {
    if (ropes.array() == nullptr) {
        into.faults.push_back(
            {Code::broken_toml,
             "a rope must be a table: write [[rope]], with two brackets, above it", ropes.at(),
             std::string(rope_key)});
        return;
    }
    for (const Node& rope : *ropes.array()) {
        if (rope.table() == nullptr) {
            into.faults.push_back({Code::broken_toml,
                                   "a rope must be a table: write [[rope]] above it", rope.at(),
                                   std::string(rope_key)});
            continue;
        }
        into.take(row_of(rope, into.faults));
    }
}

void read_toml(Input& input, RopeRows& ropes) {
    const auto text = input.read_all();
    const auto document =
        text ? parse_toml(*text, input.name()) : Result<Node>(Unexpected(text.error()));
    if (!document) {
        ropes.faults.push_back(document.error());
        return;
    }
    for (const auto& [key, value] : *document->table()) {
        if (key == rope_key) {
            take_tables(value, ropes);
        } else {
            ropes.faults.push_back(
                {Code::unknown_column,
                 "the key " + in_quotes(key) + " is not known here; write [[rope]] above each rope",
                 value.at(), key});
        }
    }
}

} // namespace

Result<std::vector<RopeRow>> read_rope_list(Input& input, FaultSink& faults) {
    RopeRows ropes;
    if (input.name().ends_with(".toml")) {
        read_toml(input, ropes);
    } else {
        read_csv(input, ropes);
    }
    for (const Fault& fault : ropes.faults) {
        faults.push(fault);
    }
    if (!ropes.faults.empty()) {
        return Unexpected(ropes.faults.front());
    }
    return std::move(ropes.rows);
}

std::vector<RopeRow> read_rope_tables(const Node* ropes, FaultSink& faults) {
    RopeRows into;
    if (ropes != nullptr) {
        take_tables(*ropes, into);
    }
    for (const Fault& fault : into.faults) {
        faults.push(fault);
    }
    return std::move(into.rows);
}

} // namespace libsplice
