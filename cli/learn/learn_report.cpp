// Writes what was learnt as a report, and as a table that can be used in place of ours.
#include "cli/learn/learn_report.h"

#include "libsplice/sheet/csv/csv_cells.h"
#include "libsplice/sheet/json/json_text.h"
#include "libsplice/sheet/text/text_page.h"

#include <gsl/assert>

namespace libsplice::cli {

namespace {

constexpr int places = 3;

std::string_view name_of(Learnable what) {
    switch (what) {
    case Learnable::knot:
        return "knot";
    case Learnable::beyond_loop:
        return "beyond_loop";
    case Learnable::beyond_turns:
        return "beyond_turns";
    case Learnable::take_up:
        return "braid_constant";
    }
    return {};
}

/// `7.083 D (35.4 mm)`.
std::string show(double diameters, const Rope& rope, UnitSystem units) {
    return show_number(diameters, places) + " D (" +
           show_fine(diameters * rope.counting_diameter(), units) + ")";
}

std::string in_percent(double share) {
    return show_number(share * 100.0, 4) + " %";
}

std::string about_outlier(const LearntPieces& pieces, UnitSystem units) {
    const std::size_t at = *pieces.learnt.outlier;
    const Sample& sample = pieces.learnt.sample;
    return "line " + std::to_string(pieces.places[at].line) + ", " +
           show(pieces.used[at], pieces.rope, units) + ", lies " +
           show_number(std::abs(pieces.used[at] - sample.mean) / sample.spread, places) +
           " sd from the mean, farther than the " +
           show_number(grubbs_limit(sample.count, 0.05), places) +
           " that Grubbs' test at 5 % lets pass. It is counted all the same; if it was a slip, "
           "take "
           "the row out and learn again.";
}

void write_pieces(Page& page, const LearntPieces& pieces, const LearntFile& file,
                  UnitSystem units) {
    const Learnt& learnt = pieces.learnt;
    const auto shown = [&](double diameters) {
        return show(diameters, pieces.rope, units);
    };
    page.section(std::string(pieces.kind->declaration.name) + " in " + pieces.rope.id);
    page.fact("Pieces", std::to_string(learnt.sample.count));
    page.fact("Used",
              shown(learnt.sample.mean) + (learnt.sample.count > 1
                                               ? " on average, sd " + shown(learnt.sample.spread)
                                               : std::string()));
    if (learnt.limit && learnt.own_spread) {
        page.fact("Next piece", "uses more than " + shown(*learnt.limit) + " with a chance of " +
                                    in_percent(file.risk));
    } else if (!learnt.limit) {
        page.fact("Next piece",
                  "one piece does not show how far the next will differ; measure two or three");
    }
    if (!learnt.own_spread) {
        page.fact("Spread",
                  (learnt.limit
                       ? "all pieces read the same, so the tape was too coarse to show a spread; it"
                       : std::string("it")) +
                      " stays that of the tables, sd " + shown(learnt.spread));
    }
    if (learnt.outlier) {
        page.fact("Look at", about_outlier(pieces, units));
    }
    constexpr double far_off = 4.0;
    const double off = std::abs(learnt.sample.mean - learnt.tables) / learnt.tables_spread;
    if (learnt.tables_spread > 0.0 && off > far_off) {
        page.fact("Far off", "this lies " + show_number(off, 1) +
                                 " sd from what the tables say: see that nothing else was measured "
                                 "with it before you cut by it");
    }
    page.fact("Tables said", shown(learnt.tables) + ", sd " + shown(learnt.tables_spread));
    page.fact("Learnt", std::string(name_of(learnt.what)) + " " + show_number(learnt.constant, 6) +
                            (learnt.what == Learnable::take_up ? "" : " D"));
}

void write_text(const LearntFile& file, UnitSystem units, Output& output) {
    TextPage page(output);
    page.paragraph("LEARNT FROM " + file.file, 0);
    page.fact("Rows", std::to_string(file.rows) + ", " + std::to_string(file.left_out) +
                          " left out for an error");
    for (const LearntPieces& pieces : file.all) {
        write_pieces(page, pieces, file, units);
    }
    page.blank();
    page.paragraph(file.table.empty()
                       ? std::string("No table was written") +
                             (file.all.empty() ? ": nothing was learnt." : "; --output names one.")
                       : "Written to " + file.table + "; cut with it by --tables " + file.table,
                   0);
}

void write_pieces(JsonText& json, const LearntPieces& pieces) {
    const Learnt& learnt = pieces.learnt;
    const double width = pieces.rope.counting_diameter().si();
    json.begin_object();
    json.text("kind", pieces.kind->declaration.name);
    json.text("rope", pieces.rope.id);
    json.key("count");
    json.whole(static_cast<long long>(learnt.sample.count));
    json.number("diameter_m", width);
    json.number("mean_diameters", learnt.sample.mean);
    json.number("sd_diameters",
                learnt.sample.count > 1 ? std::optional(learnt.sample.spread) : std::nullopt);
    json.number("limit_diameters", learnt.limit);
    json.number("mean_m", learnt.sample.mean * width);
    json.number("limit_m", learnt.limit ? std::optional(*learnt.limit * width) : std::nullopt);
    json.text("spread_from", learnt.own_spread ? "shop" : "tables");
    json.number("spread_diameters", learnt.spread);
    json.number("tables_diameters", learnt.tables);
    json.number("tables_sd_diameters", learnt.tables_spread);
    json.text("constant", name_of(learnt.what));
    json.number("constant_value", learnt.constant);
    json.number("constant_sd",
                learnt.own_spread ? std::optional(learnt.constant_spread) : std::nullopt);
    json.key("outliers");
    json.begin_array();
    if (learnt.outlier) {
        json.begin_object();
        json.key("line");
        json.whole(pieces.places[*learnt.outlier].line);
        json.number("used_diameters", pieces.used[*learnt.outlier]);
        json.number("from_mean_sd", std::abs(pieces.used[*learnt.outlier] - learnt.sample.mean) /
                                        learnt.sample.spread);
        json.number("grubbs_limit", grubbs_limit(learnt.sample.count, 0.05));
        json.end_object();
    }
    json.end_array();
    json.end_object();
}

void write_json(const LearntFile& file, UnitSystem /*units*/, Output& output) {
    JsonText json(output);
    json.begin_answer();
    json.text("file", file.file);
    json.number("risk", file.risk);
    json.key("learnt");
    json.begin_array();
    for (const LearntPieces& pieces : file.all) {
        json.new_line();
        write_pieces(json, pieces);
    }
    json.end_array();
    json.key("counts");
    json.begin_object();
    json.key("rows");
    json.whole(static_cast<long long>(file.rows));
    json.key("left_out");
    json.whole(static_cast<long long>(file.left_out));
    json.end_object();
    json.key("table");
    file.table.empty() ? json.null() : json.text(file.table);
    json.end_object();
    output.write('\n');
}

void write_csv(const LearntFile& file, UnitSystem /*units*/, Output& output) {
    output.write("kind,rope,count,mean_diameters,sd_diameters,limit_diameters,spread_diameters,"
                 "spread_from,tables_diameters,tables_sd_diameters,constant,constant_value,"
                 "outlier_line\n");
    for (const LearntPieces& pieces : file.all) {
        const Learnt& learnt = pieces.learnt;
        std::string row;
        const auto number = [&](std::optional<double> value) {
            row += ',';
            if (value) {
                append_number_cell(row, *value);
            }
        };
        const auto text = [&](std::string_view value) {
            row += ',';
            append_text_cell(row, value);
        };
        append_text_cell(row, pieces.kind->declaration.name);
        text(pieces.rope.id);
        row += ',' + std::to_string(learnt.sample.count);
        number(learnt.sample.mean);
        number(learnt.sample.count > 1 ? std::optional(learnt.sample.spread) : std::nullopt);
        number(learnt.limit);
        number(learnt.spread);
        text(learnt.own_spread ? "shop" : "tables");
        number(learnt.tables);
        number(learnt.tables_spread);
        text(name_of(learnt.what));
        number(learnt.constant);
        row += ',';
        row += learnt.outlier ? std::to_string(pieces.places[*learnt.outlier].line) : "";
        output.write(row + '\n');
    }
}

} // namespace

void write_learnt(const LearntFile& learnt, Format format, UnitSystem units, Output& output) {
    constexpr ByFormat<void(const LearntFile&, UnitSystem, Output&)> writers{write_text, write_csv,
                                                                             write_json, nullptr};
    const auto write = writers.at(static_cast<std::size_t>(format));
    Expects(write != nullptr); // refused with the command line
    write(learnt, units, output);
}

} // namespace libsplice::cli
