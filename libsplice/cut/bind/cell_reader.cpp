// Reads one cell at a time and says what is wrong with it.
#include "libsplice/cut/bind/cell_reader.h"

#include "libsplice/base/text.h"
#include "libsplice/units/read.h"
#include "libsplice/units/show.h"

#include <algorithm>
#include <array>

namespace libsplice {

namespace {

constexpr Nanometres longest = 100'000 * nanometres_per_metre;

} // namespace

void CellReader::add(Fault fault, const Cell& cell, std::string field) {
    fault.at = job_.place(cell);
    fault.field = std::move(field);
    faults_.push_back(std::move(fault));
}

void CellReader::add(Fault fault, Column column) {
    fault.text = std::string(column_name(column)) + ": " + fault.text;
    add(LineFault{std::move(fault), column});
}

void CellReader::add(LineFault fault) {
    add(std::move(fault.fault), job_.cell(fault.column), std::string(column_name(fault.column)));
}

std::optional<Nanometres> CellReader::length(Column column, Nanometres lowest) {
    const Cell& cell = job_.cell(column);
    if (cell.text.empty()) {
        return std::nullopt;
    }
    const auto length = read_length(cell.text, cell.unit);
    if (!length) {
        add(length.error(), column);
        return std::nullopt;
    }
    const bool absurd = length->length > from_nanometres(longest);
    const Nanometres count = absurd ? 0 : to_nanometres(length->length);
    if (absurd || count < lowest) {
        add(Fault{Code::value_out_of_range, "\"" + std::string(cell.text) +
                                                "\" is out of range; it may be " +
                                                (lowest > 0 ? "over 0" : "0") + " to 100,000 m"},
            column);
        return std::nullopt;
    }
    return count;
}

std::optional<std::size_t> CellReader::choice(Column column,
                                              std::span<const std::string_view> words) {
    const auto text = job_.text(column);
    if (text.empty()) {
        return std::nullopt;
    }
    const auto found = std::ranges::find(words, text);
    if (found == words.end()) {
        add(Fault{Code::not_a_choice,
                  "\"" + std::string(text) + "\" is not one of " + listed(words)},
            column);
        return std::nullopt;
    }
    return static_cast<std::size_t>(found - words.begin());
}

bool CellReader::yes(Column column) {
    constexpr std::array<std::string_view, 2> words{"no", "yes"};
    return choice(column, words).value_or(0) == 1;
}

std::optional<Tension> CellReader::tension(Column column) {
    const auto text = job_.text(column);
    if (text.empty()) {
        return std::nullopt;
    }
    const auto tension = read_tension(text);
    if (!tension) {
        add(tension.error(), column);
        return std::nullopt;
    }
    return *tension;
}

std::optional<double> CellReader::share(Column column) {
    const auto text = job_.text(column);
    if (text.empty()) {
        return std::nullopt;
    }
    const bool percent = text.ends_with('%');
    const auto number = read_number(percent ? trimmed(text.substr(0, text.size() - 1)) : text);
    if (!number) {
        add(Fault{Code::not_a_number,
                  "\"" + std::string(text) + "\" is no share; write it like 30 %"},
            column);
        return std::nullopt;
    }
    if (*number < 0.0) {
        add(Fault{Code::value_out_of_range, "\"" + std::string(text) + "\" must not be negative"},
            column);
        return std::nullopt;
    }
    return percent ? *number / 100.0 : *number;
}

std::int64_t CellReader::quantity() {
    const auto text = job_.text(Column::quantity);
    if (text.empty()) {
        return 1;
    }
    const auto count = read_count(text, 1, 1'000'000);
    if (!count) {
        add(count.error(), Column::quantity);
        return 1;
    }
    return *count;
}

} // namespace libsplice
