// The needs of a line that is put together in memory, against the shipped tables.
#pragma once

#include "libsplice/choose/needs.h"
#include "libsplice/job/read_job.h"

#include "tests/support/tables.h"

#include <string>
#include <vector>

namespace libsplice::testing {

inline const ChoiceTables& shipped_places() {
    static const ChoiceTables tables = [] {
        FaultSink faults;
        auto opened = ChoiceTables::open(shipped_book().catalogue(), faults);
        for (const Fault& fault : faults.kept()) {
            ADD_FAILURE() << to_text(fault);
        }
        return opened ? *std::move(opened) : ChoiceTables();
    }();
    return tables;
}

/// What a line asks, and what is wrong with how it asks.
struct Asked {
    Needs needs;
    std::vector<Fault> faults;
};

inline Asked asked_by(const std::vector<NamedCell>& cells) {
    Asked asked;
    FaultSink unheard;
    const auto read =
        read_line_of_cells(cells, shipped_book().field_names(), unheard, [&](const JobRow& row) {
            CellReader of_job(row.line, asked.faults);
            const PlacedLine placed = with_place(row.line, shipped_places(), of_job);
            CellReader of_place(placed.line, asked.faults);
            asked.needs = read_needs(placed, shipped_book().catalogue(), of_place);
            return true;
        });
    EXPECT_TRUE(read);
    return asked;
}

inline const std::optional<Citation>& source_of(const Needs& needs, Column column) {
    for (std::size_t i = 0; i < need_columns.size(); ++i) {
        if (need_columns.at(i) == column) {
            return needs.sources.at(i);
        }
    }
    static const std::optional<Citation> none;
    ADD_FAILURE() << "no need";
    return none;
}

} // namespace libsplice::testing
