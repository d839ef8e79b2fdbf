// The key that names what pulls decides which other keys the table takes.
#include "libsplice/job/load/read_load.h"

#include "libsplice/base/text.h"
#include "libsplice/units/read.h"

#include <algorithm>
#include <array>
#include <initializer_list>
#include <string>
#include <string_view>

namespace libsplice {

namespace {

/// Values of one table; what is wrong is added to the faults.
class LoadTable {
  public:
    LoadTable(const Node& node, std::vector<Fault>& faults) : node_(node), faults_(faults) {}

    void add(Fault fault, const Node& at) {
        fault.at = at.at();
        fault.field = "load";
        faults_.push_back(std::move(fault));
    }

    void allow_only(std::span<const std::string_view> keys) {
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
    auto need(std::string_view key, Read read) -> typename decltype(read(""))::value_type {
        using Value = typename decltype(read(""))::value_type;
        const Node* value = node_.find(key);
        if (value == nullptr) {
            add({Code::cell_missing, "this load needs its " + std::string(key)}, node_);
            return Value{};
        }
        auto result = read(value->scalar_text());
        if (!result) {
            Fault fault = std::move(result).error();
            fault.text = std::string(key) + ": " + fault.text;
            add(std::move(fault), *value);
            return Value{};
        }
        return *std::move(result);
    }

    [[nodiscard]] const Node* find(std::string_view key) const { return node_.find(key); }

  private:
    const Node& node_;
    std::vector<Fault>& faults_;
};

/// `least`: the length must be over it.
Result<Length> read_size(std::string_view text, Length least) {
    const auto length = read_length(text);
    if (!length) {
        return Unexpected(length.error());
    }
    if (!(length->length > least)) {
        return Unexpected(Fault{Code::value_out_of_range, "it must be over 0"});
    }
    return length->length;
}

Result<Length> read_positive(std::string_view text) {
    return read_size(text, Length());
}

Result<Length> read_any(std::string_view text) {
    return read_size(text, metres(-1000.0));
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
    const auto parts = read_count(text, 1, 20);
    return parts ? Result<int>(static_cast<int>(*parts)) : Result<int>(Unexpected(parts.error()));
}

LoadWords read_sheet(LoadTable table) {
    table.allow_only(std::array<std::string_view, 2>{"sheet_of", "wind"});
    return SheetLoad{table.need("sheet_of", read_area), table.need("wind", read_speed)};
}

LoadWords read_mainsheet(LoadTable table, std::vector<Fault>& faults) {
    table.allow_only(std::array<std::string_view, 2>{"mainsheet", "wind"});
    LoadTable sail(*table.find("mainsheet"), faults);
    sail.allow_only(std::array<std::string_view, 4>{"foot", "luff", "from_end", "parts"});
    MainsheetLoad load;
    load.foot = sail.need("foot", read_positive);
    load.luff = sail.need("luff", read_positive);
    load.from_end = sail.find("from_end") == nullptr ? Length() : sail.need("from_end", read_any);
    load.parts = sail.find("parts") == nullptr ? 1 : sail.need("parts", read_parts);
    load.wind = table.need("wind", read_speed);
    return load;
}

LoadWords read_block(LoadTable table) {
    table.allow_only(std::array<std::string_view, 2>{"block", "angle"});
    return BlockLoad{table.need("block", read_force), table.need("angle", read_degrees)};
}

LoadWords read_righting(LoadTable table, std::vector<Fault>& faults) {
    table.allow_only(std::array<std::string_view, 2>{"righting", "arm"});
    LoadTable boat(*table.find("righting"), faults);
    boat.allow_only(std::array<std::string_view, 3>{"boat_mass", "beam", "crew_mass"});
    RightingLoad load;
    load.boat = boat.need("boat_mass", read_mass);
    load.beam = boat.need("beam", read_positive);
    load.crew = boat.need("crew_mass", read_mass);
    load.arm = table.need("arm", read_positive);
    return load;
}

} // namespace

std::optional<LoadWords> read_load_words(const Node& node, std::vector<Fault>& faults) {
    const std::size_t before = faults.size();
    LoadTable table(node, faults);
    std::optional<LoadWords> words;
    if (node.find("sheet_of") != nullptr) {
        words = read_sheet(table);
    } else if (node.find("mainsheet") != nullptr) {
        words = read_mainsheet(table, faults);
    } else if (node.find("block") != nullptr) {
        words = read_block(table);
    } else if (node.find("righting") != nullptr) {
        words = read_righting(table, faults);
    } else {
        const bool halyard = node.find("halyard") != nullptr;
        table.add({Code::not_a_choice,
                   halyard ? "no document gives the load of a halyard: state it as a force, such "
                             "as 1.2 kN"
                           : "a load is a force such as 1.2 kN, or a table with sheet_of, "
                             "mainsheet, block or righting"},
                  node);
    }
    return faults.size() == before ? words : std::nullopt;
}

} // namespace libsplice
