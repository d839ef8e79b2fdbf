// splice tighten: how much rope a knot uses, from its shape.
#include "libsplice/base/text.h"
#include "libsplice/job/curve_file.h"
#include "libsplice/mechanics/knot_shapes.h"
#include "libsplice/mechanics/loose_knot.h"
#include "libsplice/mechanics/tighten.h"
#include "libsplice/sheet/csv_cells.h"
#include "libsplice/sheet/json_text.h"
#include "libsplice/sheet/writer.h"

#include "cli/messages.h"
#include "cli/progress.h"
#include "cli/sheet_options.h"
#include "cli/verb.h"

#include <gsl/assert>

#include <algorithm>
#include <chrono>
#include <optional>

namespace libsplice::cli {

namespace {

/// What came out, as it is written.
struct TightAnswer {
    std::string knot;
    TightKnot tight;
    double seconds = 0.0;
};

Result<double> read_mesh(const CommandLine& line) {
    const std::string text = line.value("mesh", "0.1");
    const auto mesh = read_number(text);
    if (!mesh || *mesh < finest_mesh || *mesh > coarsest_mesh) {
        return Unexpected(Fault{Code::not_a_choice, "--mesh " + in_quotes(text) +
                                                        ": it must be a count of rope diameters "
                                                        "from 0.02 to 0.4"});
    }
    return *mesh;
}

const KnotShape* find_shape(std::string_view name) {
    const auto shapes = knot_shapes();
    const auto found = std::ranges::find(shapes, name, &KnotShape::name);
    return found == shapes.end() ? nullptr : &*found;
}

Exit unknown_knot(const std::string& word) {
    std::vector<std::string_view> names;
    names.reserve(knot_shapes().size());
    for (const KnotShape& shape : knot_shapes()) {
        names.push_back(shape.name);
    }
    return wrong_command(in_quotes(word) + " is no knot that is known by name; give " +
                         listed(names) + ", or a file such as knot.csv" +
                         did_you_mean(word, names));
}

std::string_view reason(LooseError error) {
    switch (error) {
    case LooseError::too_few:
        return "the line has fewer than two points that differ";
    case LooseError::strands_meet:
        return "two strands touch or cross, or an end leads on into the knot; draw them apart, and "
               "lead the ends out";
    case LooseError::too_tangled:
        return "its strands lie too close together for its length; draw it more openly";
    }
    return {};
}

std::string_view reason(TightError error) {
    switch (error) {
    case TightError::crossings_unclear:
        return "its crossings cannot be told apart, or are too many; draw it more openly";
    case TightError::knot_changed:
        return "it turned into another knot while it was pulled; draw it more openly";
    }
    return {};
}

Result<Curve> loose(std::vector<Point> points, const std::string& name) {
    auto rope = loose_rope(std::move(points));
    if (const auto* error = std::get_if<LooseError>(&rope)) {
        return Unexpected(Fault{Code::not_a_rope, std::string(reason(*error)), Place{name}});
    }
    return std::get<Curve>(std::move(rope));
}

std::optional<std::vector<Point>> read_points(const std::string& path) {
    std::vector<Fault> faults;
    const auto numbers = read_curve_file(path, faults);
    FaultSink printed = printing_sink();
    for (Fault& fault : faults) {
        printed.push(std::move(fault));
    }
    say_rest(printed);
    if (!faults.empty()) {
        return std::nullopt;
    }
    std::vector<Point> points;
    points.reserve(numbers.size());
    for (const auto& [x, y, z] : numbers) {
        points.push_back({x, y, z});
    }
    return points;
}

void write_text(const TightAnswer& answer, Output& output) {
    const TightRope& rope = answer.tight.rope;
    output.write(answer.knot + ": " + show_number(rope.consumed(), 3) +
                 " diameters of rope taken up at its tightest\n");
    output.write("  mesh          " + show_number(rope.mesh, 4) + " diameters between points\n");
    output.write("  clearance     " + show_number(rope.clearance, 5) +
                 " diameters between strands\n");
    output.write("  determinant   " + std::to_string(answer.tight.determinant_before) +
                 " before, " + std::to_string(answer.tight.determinant_after) +
                 " after: the knot is the same\n");
    output.write("  time          " + show_number(answer.seconds, 2) + " s\n");
    output.write("An ideal rope, flexible and without friction. A knot set by hand takes up more: "
                 "the table's figure `set` says how much.\n");
}

void write_csv(const TightAnswer& answer, Output& output) {
    output.write("knot,consumed_diameters,mesh,clearance,determinant_before,determinant_after,"
                 "seconds\n");
    std::string row;
    append_text_cell(row, answer.knot);
    const TightRope& rope = answer.tight.rope;
    for (const double value : {rope.consumed(), rope.mesh, rope.clearance}) {
        row += ',';
        append_number_cell(row, value);
    }
    for (const auto value : {answer.tight.determinant_before, answer.tight.determinant_after}) {
        row += ',';
        append_number_cell(row, value);
    }
    row += ',';
    append_number_cell(row, answer.seconds);
    output.write(row + '\n');
}

void write_json(const TightAnswer& answer, Output& output) {
    const TightRope& rope = answer.tight.rope;
    JsonText json(output);
    json.begin_object();
    json.text("knot", answer.knot);
    json.number("consumed_diameters", rope.consumed());
    json.number("mesh", rope.mesh);
    json.number("clearance", rope.clearance);
    json.key("determinant_before");
    json.whole(answer.tight.determinant_before);
    json.key("determinant_after");
    json.whole(answer.tight.determinant_after);
    json.number("seconds", answer.seconds);
    json.end_object();
    output.write('\n');
}

Exit write(const TightAnswer& answer, Format format, const std::string& path) {
    auto output = Output::open(path);
    if (!output) {
        say(output.error());
        return Exit::unusable_file;
    }
    switch (format) {
    case Format::text:
        write_text(answer, *output);
        break;
    case Format::csv:
        write_csv(answer, *output);
        break;
    case Format::json:
        write_json(answer, *output);
        break;
    case Format::html:
        Expects(false); // refused with the command line
    }
    if (const auto committed = output->commit(); !committed) {
        say(committed.error());
        return Exit::unusable_file;
    }
    return Exit::done;
}

Exit tighten_points(std::vector<Point> points, const CommandLine& line, Format format,
                    double mesh) {
    const std::string& name = line.words.front();
    const auto rope = loose(std::move(points), name);
    if (!rope) {
        say(rope.error());
        return Exit::refused;
    }
    const auto started = std::chrono::steady_clock::now();
    auto progress = std::make_optional<Progress>("tightening", "steps", line.value("output", "-"));
    std::size_t steps = 0;
    auto tight = tighten_knot(*rope, mesh, [&](double at_mesh, double taken_up) {
        progress->at(++steps, {},
                     "at mesh " + show_number(at_mesh, 3) + ": " + show_number(taken_up, 3) +
                         " diameters");
        return true;
    });
    progress.reset();
    if (const auto* error = std::get_if<TightError>(&tight)) {
        say(Fault{Code::not_a_rope, std::string(reason(*error)), Place{name}});
        return Exit::refused;
    }
    const std::chrono::duration<double> taken = std::chrono::steady_clock::now() - started;
    return write({name, std::get<TightKnot>(std::move(tight)), taken.count()}, format,
                 line.value("output", "-"));
}

} // namespace

std::vector<Word> knot_words() {
    std::vector<Word> words;
    for (const KnotShape& shape : knot_shapes()) {
        words.push_back({shape.name, {}});
    }
    return words;
}

Exit run_tighten(const CommandLine& line) {
    const auto format = read_format(line);
    const auto mesh = read_mesh(line);
    if (!format || !mesh) {
        return wrong_command(format ? mesh.error().text : format.error().text);
    }
    if (*format == Format::html) {
        return wrong_command("tighten writes text, csv or json");
    }
    if (line.words.size() != 1) {
        return wrong_command("tighten needs a knot's name, or one file of points");
    }
    const std::string& word = line.words.front();
    if (const KnotShape* shape = find_shape(word)) {
        return tighten_points(shape->points(), line, *format, *mesh);
    }
    if (word.find_first_of("./") == std::string::npos && word != "-") {
        return unknown_knot(word);
    }
    auto points = read_points(word);
    return points ? tighten_points(std::move(*points), line, *format, *mesh) : Exit::unusable_file;
}

} // namespace libsplice::cli
