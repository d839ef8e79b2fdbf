// Finds or makes the rope of a line; what the job says of the reel goes before any table.
#include "libsplice/cut/ropes/line_ropes.h"

#include "libsplice/cut/ropes/listed_rope.h"

#include <optional>
#include <utility>

namespace libsplice {

namespace {

constexpr char separator = '\x1f';

void append(std::string& key, std::string_view text) {
    key += std::to_string(text.size());
    key += separator;
    key += text;
}

/// Everything that makes the rope of one line another than that of the next.
std::string key_of(const JobLine& job) {
    std::string key;
    append(key, job.text(Column::rope));
    for (const auto& [text, unit] : facts_of(job)) {
        append(key, text);
        key += unit ? static_cast<char>('0' + static_cast<int>(*unit)) : ' ';
    }
    if (job.own_rope != nullptr) {
        for (const RopeRow::Cell& cell : job.own_rope->cells) {
            append(key, cell.text);
        }
    }
    return key;
}

} // namespace

const Rope* LineRopes::find(CellReader& cells) {
    if (cells.text(Column::rope).empty()) {
        cells.add(Fault{Code::cell_missing, "a line needs its rope"}, Column::rope);
        return nullptr;
    }
    std::string key = key_of(cells.job());
    const auto known = by_key_.find(key);
    if (known != by_key_.end()) {
        return known->second;
    }
    auto rope = make(cells);
    if (!rope) {
        return nullptr;
    }
    ropes_.push_back(*std::move(rope));
    by_key_.emplace(std::move(key), &ropes_.back());
    return &ropes_.back();
}

std::optional<Rope> LineRopes::make(CellReader& cells) const {
    const JobLine& job = cells.job();
    std::optional<Rope> rope;
    if (job.own_rope != nullptr) {
        rope = rope_of_row(*job.own_rope, catalogue_, cited_job,
                           [&](Fault fault) { cells.add_placed(std::move(fault)); });
    } else if (auto named = catalogue_.rope(cells.text(Column::rope))) {
        rope = *std::move(named);
    } else {
        cells.add(named.error(), Column::rope);
    }
    if (!rope) {
        return std::nullopt;
    }
    const std::size_t faults_before = cells.fault_count();
    state_facts(*rope, facts_of(job), cited_job,
                [&](RopeFact fact, Fault fault) { cells.add(std::move(fault), column_of(fact)); });
    if (rope->generic_breaking || rope->generic_mass) {
        catalogue_.add_generic_figures(*rope); // the measured diameter may be another
    }
    return cells.fault_count() == faults_before ? std::move(rope) : std::nullopt;
}

} // namespace libsplice
