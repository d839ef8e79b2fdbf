// Jobs put together in memory, cut against the shipped tables, and what tests look at in pieces.
#pragma once

#include "libsplice/cut/cutter.h"
#include "libsplice/job/read_job.h"

#include "tests/support/tables.h"

#include <algorithm>
#include <deque>
#include <limits>
#include <map>
#include <memory>
#include <optional>
#include <set>
#include <string>
#include <string_view>
#include <vector>

namespace libsplice::testing {

/// A line of a job: columns and their texts.
using Line = std::map<std::string, std::string>;

inline Line with(Line line, const Line& changes) {
    for (const auto& [column, text] : changes) {
        line[column] = text;
    }
    return line;
}

/// A cell in quotes, each quote inside it twice.
inline std::string in_csv(const std::string& cell) {
    std::string text = "\"";
    for (const char c : cell) {
        text += c == '"' ? "\"\"" : std::string(1, c);
    }
    return text + '"';
}

/// A CSV job of these lines, every cell in quotes.
inline std::string csv_of(const std::vector<Line>& lines) {
    std::set<std::string> columns;
    for (const Line& line : lines) {
        for (const auto& cell : line) {
            columns.insert(cell.first);
        }
    }
    std::string text;
    const auto add_row = [&](const auto& cell_of) {
        const char* between = "";
        for (const std::string& column : columns) {
            text += between;
            text += in_csv(cell_of(column));
            between = ",";
        }
        text += '\n';
    };
    add_row([](const std::string& column) { return column; });
    for (const Line& line : lines) {
        add_row([&](const std::string& column) {
            return line.contains(column) ? line.at(column) : std::string();
        });
    }
    return text;
}

/// A piece that outlives the row that it was cut for. Of its texts only the name is kept.
struct Made {
    Piece piece;
    std::string name;
    std::optional<Fault> fault;
    std::deque<std::string> quoted = {}; ///< what the steps quote of the job, which is gone
};

struct Run {
    std::unique_ptr<Cutter> cutter; ///< owns what the pieces' plans point to
    std::vector<Made> lines;
    std::vector<Fault> faults;
    Counts counts;
};

inline Run cut_input(Input& input, const CutSettings& settings, const Book& book) {
    Run run;
    run.cutter = std::make_unique<Cutter>(book, settings);
    FaultSink faults(1000);
    const auto whole = read_job(input, book.field_names(), faults, [&](const JobRow& row) {
        const Piece& piece = run.cutter->cut(row, faults);
        Made made{piece, std::string(piece.name), std::nullopt, {}};
        if (piece.fault != nullptr) {
            made.fault = *piece.fault;
        }
        made.piece.fault = nullptr;
        for (PieceStep& step : made.piece.steps) {
            step.named = made.quoted.emplace_back(step.named);
        }
        run.lines.push_back(std::move(made));
        return true;
    });
    EXPECT_TRUE(whole) << (whole ? "" : whole.error().text);
    run.faults = faults.kept();
    run.counts = run.cutter->counts();
    return run;
}

/// The file's name says whether the text is CSV or TOML.
inline Run cut_file(std::string_view text, const std::string& name, const CutSettings& settings,
                    const Book& book) {
    Input input = Input::of_text(text, name);
    return cut_input(input, settings, book);
}

inline Run cut_text(std::string_view csv, const CutSettings& settings = {},
                    const Book& book = shipped_book()) {
    return cut_file(csv, "job.csv", settings, book);
}

inline Run cut_toml(std::string_view toml) {
    return cut_file(toml, "job.toml", {}, shipped_book());
}

inline Run cut_lines(const std::vector<Line>& lines, const CutSettings& settings = {},
                     const Book& book = shipped_book()) {
    return cut_text(csv_of(lines), settings, book);
}

/// One line that can be cut; look at `.piece()`.
struct One {
    Run run;
    [[nodiscard]] const Piece& piece() const { return run.lines.front().piece; }
};

inline One cut_one(const Line& line, const CutSettings& settings = {},
                   const Book& book = shipped_book()) {
    One one{cut_lines({line}, settings, book)};
    for (const Fault& fault : one.run.faults) {
        ADD_FAILURE() << to_text(fault);
    }
    return one;
}

/// Why one line is refused.
inline Fault refuse_one(const Line& line, const CutSettings& settings = {},
                        const Book& book = shipped_book()) {
    const Run run = cut_lines({line}, settings, book);
    if (!run.lines.front().fault) {
        ADD_FAILURE() << "the line is not refused";
        return {};
    }
    return *run.lines.front().fault;
}

inline CutSettings step_of(Length step) {
    CutSettings settings;
    settings.step = step;
    return settings;
}

inline CutSettings at_risk(double risk) {
    CutSettings settings;
    settings.risk = risk;
    return settings;
}

inline double in_millimetres(Nanometres count) {
    return static_cast<double>(count) / 1e6;
}

inline constexpr double not_there = std::numeric_limits<double>::quiet_NaN();
/// Half a nanometre either way for each of a few rounded rows.
inline constexpr double near = 5e-6;

inline const Row* find_row(const Piece& piece, Item item, std::optional<LineEnd> end = {}) {
    const auto found = std::ranges::find_if(piece.ledger, [&](const LedgerRow& entry) {
        return entry.row.item == item && (!end || entry.end == end);
    });
    return found == piece.ledger.end() ? nullptr : &found->row;
}

inline double length_of(const Piece& piece, Item item, std::optional<LineEnd> end = {}) {
    const Row* row = find_row(piece, item, end);
    return row == nullptr ? not_there : in_millimetres(row->length);
}

/// As above; 0 where there is no such row.
inline double length_or_none(const Piece& piece, Item item, std::optional<LineEnd> end = {}) {
    const Row* row = find_row(piece, item, end);
    return row == nullptr ? 0.0 : in_millimetres(row->length);
}

inline double spread_of(const Piece& piece, Item item) {
    const Row* row = find_row(piece, item);
    return row == nullptr ? not_there : row->sd * 1000.0;
}

inline double mark_of(const Piece& piece, LineEnd end, MarkName name) {
    const auto found = std::ranges::find_if(
        piece.marks, [&](const PieceMark& mark) { return mark.end == end && mark.name == name; });
    return found == piece.marks.end() ? not_there : in_millimetres(found->from_end);
}

inline bool cautions_about(const Piece& piece, std::string_view words) {
    return std::ranges::any_of(piece.cautions, [&](const PieceCaution& caution) {
        return caution.caution.text.find(words) != std::string_view::npos;
    });
}

inline bool says(const Fault& fault, std::string_view words) {
    return fault.text.find(words) != std::string::npos;
}

/// A prestretched line of 4 m in HMPE of 5 mm with nothing made at either end.
inline const Line plain_line{
    {"name", "line"}, {"rope", "12-strand HMPE 5 mm"}, {"length", "4 m"}, {"prestretched", "yes"}};

/// The fields of an eye on a pin at one end.
inline Line eye_at(const std::string& end, const std::string& kind, const std::string& eye,
                   const std::string& pin) {
    return {{end, kind}, {end + ".eye", eye}, {end + ".pin", pin}};
}

/// Lines of many sorts, all of which can be cut.
inline std::vector<Line> many_sorts() {
    const Line hmpe = with(plain_line, {{"length", "6.4 m"}, {"prestretched", "no"}});
    const Line covered = with(plain_line, {{"rope", "demo-cd-hmpe-6"}, {"length", "12.3 m"}});
    const Line sheet{{"name", "sheet"}, {"rope", "demo-db-poly-8"}, {"length", "9.87 m"}};
    const auto one_eye = eye_at("end_a", "buried-eye", "36 mm", "12 mm");
    const auto two_eyes = with(one_eye, eye_at("end_b", "locked-eye", "60 mm", "12 mm"));
    return {
        plain_line,
        with(hmpe, one_eye),
        with(with(hmpe, one_eye), {{"first_end", "b"}, {"wear", "600 mm"}}),
        with(with(hmpe, two_eyes), {{"fit", "exact"}, {"tolerance", "10 mm"}}),
        with(with(hmpe, two_eyes),
             {{"fit", "trim-aboard"}, {"tension", "10 %"}, {"rope", "demo-b12-hmpe-5"}}),
        with(covered, {{"end_a", "stripped-eye"}, {"end_b", "whipped"}}),
        with(covered, {{"end_a", "stripped-eye"}, {"end_b", "stripped-eye"}, {"fit", "exact"}}),
        with(sheet, {{"end_a", "bowline"}, {"end_b", "figure-eight"}, {"extra", "300 mm"}}),
        with(sheet, {{"end_a", "bowline"}, {"tension", "1.2 kN"}, {"spare", "25 mm"}}),
        with(sheet, {{"rope", "3-strand polyester 12 mm"}, {"end_a", "tucked-eye"}}),
        with(sheet, {{"rope", "8-plait nylon 14 mm"}, {"end_b", "tucked-eye"}}),
        with(sheet, {{"rope", "demo-shock-5"}, {"end_a", "figure-eight"}}),
        with(sheet, {{"rope", "demo-wire-1-8-in"}, {"end_a", "clipped-eye"}}),
        with(with(hmpe, two_eyes), {{"end_a.fitting", "shackle"},
                                    {"end_a.fitting_length", "22 mm"},
                                    {"end_b.measured", "pin-centre"}}),
    };
}

} // namespace libsplice::testing
