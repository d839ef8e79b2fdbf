// Reads a job into owned rows, so that tests can look at all of them together.
#pragma once

#include "libsplice/job/read_job.h"

#include <array>
#include <map>
#include <string>
#include <string_view>
#include <vector>

namespace libsplice::testing {

inline constexpr std::array<std::string_view, 5> known_fields{"eye", "bury", "loop", "tail", "pin"};

struct OwnedRow {
    std::map<std::string, std::string> cells; ///< by column, `end_a.eye` for fields; no blank ones
    std::map<std::string, Place> places;      ///< of the same
    std::string plan_key;
    bool has_route_table = false;
    std::vector<Fault> fault; ///< none or one
};

struct ReadJob {
    std::vector<OwnedRow> rows;
    std::vector<Fault> faults; ///< all that were pushed
    std::vector<Fault> error;  ///< none or one: the fault of the file
    bool whole = false;        ///< read to the end
};

inline OwnedRow owned(const JobRow& row) {
    OwnedRow own;
    const auto add = [&](const std::string& name, const Cell& cell) {
        own.cells[name] = std::string(cell.text);
        own.places[name] = row.line.place(cell);
    };
    for (std::size_t i = 0; i < column_count; ++i) {
        const Cell& cell = row.line.cells.at(i);
        if (!cell.text.empty()) {
            add(std::string(column_names[i]), cell);
        }
    }
    for (const auto& [end, field, cell] : row.line.fields) {
        add((end == LineEnd::a ? "end_a." : "end_b.") + std::string(field), cell);
    }
    own.plan_key = std::string(row.line.plan_key);
    own.has_route_table = row.line.route != nullptr;
    if (row.fault != nullptr) {
        own.fault.push_back(*row.fault);
    }
    return own;
}

inline ReadJob read(Input input) {
    ReadJob job;
    FaultSink faults;
    const auto result = read_job(input, known_fields, faults, [&](const JobRow& row) {
        job.rows.push_back(owned(row));
        return true;
    });
    job.faults = faults.kept();
    if (result) {
        job.whole = *result;
    } else {
        job.error.push_back(result.error());
    }
    return job;
}

inline ReadJob read_csv(std::string_view text) {
    return read(Input::of_text(text, "job.csv"));
}

inline ReadJob read_toml(std::string_view text) {
    return read(Input::of_text(text, "job.toml"));
}

inline Place csv_place(std::uint32_t line, std::uint32_t column) {
    return {"job.csv", line, column};
}

} // namespace libsplice::testing
