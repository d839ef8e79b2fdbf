// Sheets of jobs that are cut, and of ends that are worked out, against the shipped tables.
#pragma once

#include "libsplice/sheet/formats.h"

#include "tests/cut/jobs.h"

#include <gtest/gtest.h>

#include <string>
#include <string_view>
#include <vector>

namespace libsplice::testing {

/// Millimetres.
inline Nanometres mm(std::int64_t count) {
    return count * 1'000'000;
}

/// A line between two eyes, in a pair with itself: everything that a card can show.
inline Line two_eyes() {
    return {{"name", "trapeze line"},    {"boat", "No 1"},
            {"quantity", "2"},           {"rope", "12-strand HMPE 5 mm"},
            {"length", "2 m"},           {"fit", "exact"},
            {"tolerance", "10 mm"},      {"prestretched", "yes"},
            {"fit_first", "ball, ring"}, {"colour", "blue"},
            {"end_a", "locked-eye"},     {"end_a.eye", "40 mm"},
            {"end_a.pin", "8 mm"},       {"end_b", "buried-eye"},
            {"end_b.eye", "50 mm"},      {"end_b.pin", "8 mm"}};
}

/// Buries that have no room between them.
inline Line refused_line() {
    return with(two_eyes(), {{"length", "300 mm"}});
}

/// Cuts the lines and writes each piece with the writer.
inline void write_lines(SheetWriter& writer, const std::vector<Line>& lines,
                        const CutSettings& settings = {}) {
    Cutter cutter(shipped_book(), settings);
    FaultSink faults(1000);
    const std::string csv = csv_of(lines);
    Input input = Input::of_text(csv, "job.csv");
    writer.begin();
    const auto whole =
        read_job(input, shipped_book().field_names(), faults, [&](const JobRow& row) {
            writer.piece(cutter.cut(row, faults));
            return true;
        });
    EXPECT_TRUE(whole) << (whole ? "" : whole.error().text);
    writer.end(cutter.counts());
}

inline std::string sheet_of(const std::vector<Line>& lines, Format format,
                            const SheetOptions& options = {}, const CutSettings& settings = {}) {
    std::string text;
    Output output = Output::to_string(text);
    const auto writer = row_of(format).cut(output, shipped_book(), options);
    write_lines(*writer, lines, settings);
    output.flush();
    return text;
}

inline SheetOptions in_full(UnitSystem units = UnitSystem::metric) {
    SheetOptions options;
    options.full = true;
    options.units = units;
    return options;
}

/// An end worked out by itself.
inline std::string end_sheet_of(std::string_view kind_name, std::string_view rope_text,
                                const std::vector<FieldText>& fields, Format format,
                                const SheetOptions& options = {}) {
    const Book& book = shipped_book();
    const auto kind = book.kind(kind_name);
    const auto rope = book.catalogue().rope(rope_text);
    EXPECT_TRUE(kind.has_value() && rope.has_value());
    const auto end = book.work_out(**kind, *rope, fields);
    EXPECT_TRUE(end.has_value());
    std::string text;
    Output output = Output::to_string(text);
    row_of(format).end(
        {(*kind)->declaration, *rope, *end, stretch_of(*rope, book.common_rules(*rope))}, output,
        book, options);
    output.flush();
    return text;
}

} // namespace libsplice::testing
