#include "libsplice/job/named_columns.h"

#include "libsplice/base/text.h"
#include "libsplice/job/csv/csv_heading.h"

#include <algorithm>
#include <utility>

namespace libsplice {

NamedColumns::NamedColumns(Input& input, std::string_view what,
                           std::span<const std::string_view> names, std::vector<Fault>& faults,
                           std::string_view field)
    : records_(input),
      file_(input.name()),
      what_(what),
      names_(names),
      faults_(faults),
      field_(field),
      found_(names.size()) {}

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
    if (records_.size() > width_) {
        add_at({Code::too_many_cells,
                "this row has more cells than the heading; put quotes round a "
                "cell that holds a comma"},
               records_.place_of(static_cast<std::uint32_t>(width_)));
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
    const HeadingText heading = split_unit(records_.cell(index));
    const auto known = std::ranges::find(names_, heading.name);
    if (known == names_.end()) {
        add_at({Code::unknown_column, "the column " + in_quotes(heading.name) + " is not known; " +
                                          std::string(what_) + " has " + listed(names_) +
                                          did_you_mean(heading.name, names_)},
               records_.place_of(index));
        return;
    }
    auto& found = found_[static_cast<std::size_t>(known - names_.begin())];
    const auto unit = heading.unit ? read_length_unit(*heading.unit) : std::nullopt;
    if (found) {
        add_at({Code::duplicate_column,
                "the column " + in_quotes(heading.name) + " stands twice; take one out"},
               records_.place_of(index));
    } else if (heading.unit && !unit) {
        add_at(unknown_unit(heading), records_.place_of(index));
    }
    found = Found{index, unit};
}

std::string_view NamedColumns::cell(std::size_t column) const {
    return has(column) ? records_.cell(found_[column]->index) : std::string_view();
}

std::optional<LengthUnit> NamedColumns::unit(std::size_t column) const {
    return has(column) ? found_[column]->unit : std::nullopt;
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
