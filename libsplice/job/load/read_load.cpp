// The key that names what pulls decides which other keys the table takes.
#include "libsplice/job/load/read_load.h"

#include "libsplice/base/text.h"
#include "libsplice/units/read.h"
#include "libsplice/units/tension.h"

#include <algorithm>
#include <array>
#include <cstdint>
#include <span>
#include <string>
#include <string_view>
#include <utility>

namespace libsplice {

namespace {

using Key = std::string_view;
constexpr std::array<Key, 5> what_pulls{"sheet_of", "mainsheet", "block", "tackle", "righting"};
constexpr std::int64_t most_parts = 20;

/// Values of one table; what is wrong is added to the faults.
class LoadTable {
  public:
    LoadTable(const Node& node, std::vector<Fault>& faults) : node_(node), faults_(faults) {}

    void add(Fault fault, const Node& at) {
        fault.text = "load: " + fault.text;
        fault.at = at.at();
        fault.field = "load";
        faults_.push_back(std::move(fault));
    }

    void allow_only(std::span<const Key> keys) {
        if (node_.table() == nullptr) {
            add({Code::not_a_choice, "this must be a table with " + listed(keys)}, node_);
            return;
        }
        for (const auto& [key, value] : *node_.table()) {
            if (std::ranges::find(keys, key) == keys.end()) {
                add({Code::not_a_choice, "the key " + in_quotes(key) +
                                             " is not known here; this load takes " + listed(keys) +
                                             did_you_mean(key, keys)},
                    value);
            }
        }
    }

    /// The value of a key that must be there, as `read` reads its text; a value of no use after a
    /// fault.
    template <class Read>
    auto need(Key key, Read read) {
        const Node* value = node_.find(key);
        auto result = read(value == nullptr ? std::string() : value->scalar_text());
        using Value = std::decay_t<decltype(*result)>;
        if (value == nullptr) {
            add({Code::cell_missing, "it needs its " + std::string(key)}, node_);
            return Value{};
        }
        if (!result) {
            Fault fault = std::move(result).error();
            fault.text = std::string(key) + ": " + fault.text;
            add(std::move(fault), *value);
            return Value{};
        }
        return *std::move(result);
    }

    [[nodiscard]] bool has(Key key) const { return node_.find(key) != nullptr; }
    /// The table under a key that is there.
    [[nodiscard]] LoadTable inner(Key key) const { return {*node_.find(key), faults_}; }

  private:
    const Node& node_;
    std::vector<Fault>& faults_;
};

Result<Length> read_any(std::string_view text) {
    const auto length = read_length(text);
    return length ? Result<Length>(length->length) : Result<Length>(Unexpected(length.error()));
}

Result<Length> read_positive(std::string_view text) {
    auto length = read_any(text);
    if (length && !(*length > Length())) {
        return Unexpected(Fault{Code::value_out_of_range, "it must be over 0"});
    }
    return length;
}

Result<Force> read_force(std::string_view text) {
    const auto tension = read_tension(text);
    if (!tension) {
        return Unexpected(tension.error());
    }
    if (tension->basis != Tension::Basis::force) {
        return Unexpected(Fault{Code::not_a_tension, "it must be a force such as 800 N"});
    }
    return Force(tension->value);
}

Result<int> read_parts(std::string_view text) {
    const auto parts = read_count(text, 1, most_parts);
    return parts ? Result<int>(static_cast<int>(*parts)) : Result<int>(Unexpected(parts.error()));
}

LoadWords read_sheet(LoadTable& table) {
    table.allow_only(std::array<Key, 2>{"sheet_of", "wind"});
    return SheetLoad{table.need("sheet_of", read_area), table.need("wind", read_speed)};
}

LoadWords read_mainsheet(LoadTable& table) {
    table.allow_only(std::array<Key, 2>{"mainsheet", "wind"});
    LoadTable sail = table.inner("mainsheet");
    sail.allow_only(std::array<Key, 4>{"foot", "luff", "from_end", "parts"});
    MainsheetLoad load;
    load.foot = sail.need("foot", read_positive);
    load.luff = sail.need("luff", read_positive);
    load.from_end = sail.has("from_end") ? sail.need("from_end", read_any) : Length();
    load.parts = sail.has("parts") ? sail.need("parts", read_parts) : 1;
    load.wind = table.need("wind", read_speed);
    return load;
}

LoadWords read_block(LoadTable& table) {
    table.allow_only(std::array<Key, 2>{"block", "angle"});
    return BlockLoad{table.need("block", read_force), table.need("angle", read_degrees)};
}

LoadWords read_tackle(LoadTable& table) {
    table.allow_only(std::array<Key, 3>{"tackle", "parts", "sheaves"});
    return TackleLoad{table.need("tackle", read_force), table.need("parts", read_parts),
                      table.need("sheaves", read_parts)};
}

LoadWords read_righting(LoadTable& table) {
    table.allow_only(std::array<Key, 2>{"righting", "arm"});
    LoadTable boat = table.inner("righting");
    boat.allow_only(std::array<Key, 3>{"boat_mass", "beam", "crew_mass"});
    return RightingLoad{boat.need("boat_mass", read_mass), boat.need("beam", read_positive),
                        boat.need("crew_mass", read_mass), table.need("arm", read_positive)};
}

/// By the place of its key in `what_pulls`.
constexpr std::array<LoadWords (*)(LoadTable&), what_pulls.size()> readers{
    read_sheet, read_mainsheet, read_block, read_tackle, read_righting};

Fault says_nothing(const Node& node) {
    const bool halyard = node.find("halyard") != nullptr || node.find("halyard_of") != nullptr;
    return {Code::not_a_choice,
            halyard ? "no document that was read gives the load of a halyard, because the luff's "
                      "tension makes it: state it as a force, such as 1.2 kN"
                    : "it must be a force such as 1.2 kN, or a table with one of " +
                          listed(what_pulls)};
}

} // namespace

std::optional<LoadWords> read_load_words(const Node& node, std::vector<Fault>& faults) {
    const std::size_t before = faults.size();
    LoadTable table(node, faults);
    const auto key = std::ranges::find_if(what_pulls, [&](Key pulls) { return table.has(pulls); });
    if (key == what_pulls.end()) {
        table.add(says_nothing(node), node);
        return std::nullopt;
    }
    const LoadWords words = readers.at(static_cast<std::size_t>(key - what_pulls.begin()))(table);
    return faults.size() == before ? std::optional(words) : std::nullopt;
}

} // namespace libsplice
