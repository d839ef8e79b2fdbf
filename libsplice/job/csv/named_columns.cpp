// Reads a CSV file by the names of its columns.
#include "libsplice/job/csv/named_columns.h"

#include "libsplice/base/text.h"
#include "libsplice/job/headings.h"

#include <algorithm>
#include <utility>

namespace libsplice {

NamedColumns::NamedColumns(Input& input, std::string_view what, std::span<const FileColumn> columns,
                           std::vector<Fault>& faults, std::string_view field)
    : records_(input),
      file_(input.name()),
      what_(what),
      faults_(faults),
      field_(field),
      found_(columns.size()),
      texts_(columns.size()) {
    for (const auto& [name, sort] : columns) {
        names_.push_back(name);
        sorts_.push_back(sort);
    }
}

NamedColumns::NamedColumns(Input& input, std::string_view what,
                           std::span<const std::string_view> names, std::vector<Fault>& faults,
                           std::string_view field)
    : records_(input),
      file_(input.name()),
      what_(what),
      names_(names.begin(), names.end()),
      sorts_(names.size(), CellSort::length),
      faults_(faults),
      field_(field),
      found_(names.size()),
      texts_(names.size()) {}

bool NamedColumns::read_heading() {
    const std::size_t before = faults_.size();
    if (!next_record()) {
        if (faults_.size() == before) {
            add_at({Code::no_heading, std::string(what_) +
                                          " is empty; its first line must name the columns " +
                                          listed(names_)},
                   Place{file_});
        }
        return false;
    }
    width_ = records_.size();
    for (std::uint32_t i = 0; i < width_; ++i) {
        if (!records_.cell(i).empty()) {
            take_heading(i);
        }
    }
    return faults_.size() == before;
}

bool NamedColumns::next() {
    if (!next_record()) {
        return false;
    }
    made_texts_.clear();
    for (std::size_t column = 0; column < names_.size(); ++column) {
        if (const auto& found = found_[column]) {
            const CellForm form{sorts_[column], records_.comma_is_decimal(), found->unit.words};
            texts_[column] = settled(records_.cell(found->index), form, made_texts_);
        }
    }
    for (auto i = static_cast<std::uint32_t>(width_); i < records_.size(); ++i) {
        if (!records_.cell(i).empty()) {
            add_at({Code::too_many_cells,
                    "this row has more cells than the heading; put quotes round a "
                    "cell that holds a comma"},
                   records_.place_of(i));
            break;
        }
    }
    return true;
}

bool NamedColumns::next_record() {
    auto more = records_.next();
    if (!more) {
        faults_.push_back(std::move(more).error());
        return false;
    }
    faults_.insert(faults_.end(), records_.faults().begin(), records_.faults().end());
    return *more;
}

void NamedColumns::take_heading(std::uint32_t index) {
    const HeadingText heading = split_heading(records_.cell(index));
    const auto known = std::ranges::find(names_, heading.name);
    if (known == names_.end()) {
        add_at({Code::unknown_column, "the column " + in_quotes(heading.name) + " is not known; " +
                                          std::string(what_) + " has " + listed(names_) +
                                          did_you_mean(heading.name, names_)},
               records_.place_of(index));
        return;
    }
    const auto column = static_cast<std::size_t>(known - names_.begin());
    const auto unit = heading.unit ? read_heading_unit(*heading.unit, sorts_[column])
                                   : std::optional(HeadingUnit{});
    if (found_[column]) {
        add_at({Code::duplicate_column,
                "the column " + in_quotes(heading.name) + " is there twice; take one out"},
               records_.place_of(index));
    } else if (!unit) {
        add_at(unknown_unit(heading, sorts_[column]), records_.place_of(index));
    }
    found_[column] = Found{index, unit.value_or(HeadingUnit{})};
}

std::optional<LengthUnit> NamedColumns::unit(std::size_t column) const {
    return has(column) ? found_[column]->unit.length : std::nullopt;
}

Place NamedColumns::place_of(std::size_t column) const {
    return records_.place_of(has(column) ? found_[column]->index : 0);
}

void NamedColumns::add(Fault fault, std::size_t column) {
    if (field_.empty()) {
        fault.field = names_[column];
    }
    add_at(std::move(fault), place_of(column));
}

void NamedColumns::add_at(Fault fault, Place at) {
    fault.at = std::move(at);
    if (fault.field.empty()) {
        fault.field = field_;
    }
    faults_.push_back(std::move(fault));
}

} // namespace libsplice
