// splice tighten: how much rope a knot uses, from its shape.
#include "libsplice/base/text.h"
#include "libsplice/job/route/curve_file.h"
#include "libsplice/mechanics/knots/knot_shapes.h"
#include "libsplice/mechanics/knots/loose_knot.h"
#include "libsplice/mechanics/knots/tighten_on_pin.h"
#include "libsplice/sheet/writer.h"
#include "libsplice/units/read.h"
#include "libsplice/units/show.h"

#include "cli/commands/tight_answer.h"
#include "cli/declared/command.h"
#include "cli/declared/options.h"
#include "cli/declared/sheet_options.h"
#include "cli/messages.h"
#include "cli/progress.h"
#include "cli/write_out.h"

#include <algorithm>
#include <optional>

namespace libsplice::cli {

namespace {

/// A value counted in rope diameters; `otherwise` where the option is not given.
Result<double> read_diameters(const CommandLine& command, std::string_view option, double lowest,
                              double highest, double otherwise) {
    if (!command.has(option)) {
        return otherwise;
    }
    const std::string text = command.value(option, {});
    const auto count = read_number(text);
    if (!count || *count < lowest || *count > highest) {
        return wrong_value(option, text,
                           "it must be a count of rope diameters from " + show_number(lowest, 2) +
                               " to " + show_number(highest, 2));
    }
    return *count;
}

Result<double> read_mesh(const CommandLine& command) {
    constexpr double usual_mesh = 0.1;
    return read_diameters(command, "mesh", finest_mesh, coarsest_mesh, usual_mesh);
}

Result<double> read_pin(const CommandLine& command, const PinShape& shape) {
    return read_diameters(command, "pin", thinnest_pin, thickest_pin, shape.usual_pin);
}

template <typename Shape>
const Shape* find_shape(std::span<const Shape> shapes, std::string_view name) {
    const auto found = std::ranges::find(shapes, name, &Shape::name);
    return found == shapes.end() ? nullptr : &*found;
}

Exit unknown_knot(const std::string& word) {
    std::vector<std::string_view> names;
    for (const Word& known : knot_words()) {
        names.push_back(known.name);
    }
    return wrong_command(in_quotes(word) + " is no knot that is known by name; give " +
                         listed(names) + ", or a file such as knot.csv" +
                         did_you_mean(word, names));
}

std::string_view reason(LooseError error) {
    switch (error) {
    case LooseError::too_few:
        return "the line has fewer than two points that differ";
    case LooseError::too_many:
        return "the line has more than 4,000 points; give fewer, some ten to a rope diameter at "
               "most";
    case LooseError::too_short:
        return "the line is far shorter than its rope is thick; write x, y and z in rope diameters";
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

using Answered = std::variant<TightAnswer, TightError>;

/// Tightens with `work`, which is given what to tell of its progress, and writes what comes out.
/// `told` names the length that is shown on the way.
template <typename Work>
Exit tighten_and_write(const Work& work, const CommandLine& command, Format format,
                       std::string_view told) {
    const std::string& name = command.words.front();
    auto progress =
        std::make_optional<Progress>("tightening", "steps", command.value("output", "-"));
    std::size_t steps = 0;
    Answered answered = work([&](double at_mesh, double length) {
        progress->at(++steps, {},
                     "at mesh " + show_number(at_mesh, 3) + ": " + show_number(length, 3) +
                         std::string(told));
        return true;
    });
    progress.reset();
    if (const auto* error = std::get_if<TightError>(&answered)) {
        say(Fault{Code::not_a_rope, std::string(reason(*error)), Place{name}});
        return Exit::refused;
    }
    auto& answer = std::get<TightAnswer>(answered);
    answer.knot = name;
    return write_out(command.value("output", "-"), [&](Output& output) {
        write_answer(answer, format, output);
        return Exit::done;
    });
}

Exit tighten_points(std::vector<Point> points, const CommandLine& command, Format format,
                    double mesh) {
    const auto rope = loose(std::move(points), command.words.front());
    if (!rope) {
        say(rope.error());
        return Exit::refused;
    }
    const auto work = [&](const Telling& telling) -> Answered {
        const auto tight = tighten_knot(*rope, mesh, telling);
        const auto* knot = std::get_if<TightKnot>(&tight);
        return knot != nullptr ? Answered(answer_of(*knot)) : std::get<TightError>(tight);
    };
    return tighten_and_write(work, command, format, " diameters");
}

Exit tighten_shape(const PinShape& shape, const CommandLine& command, Format format, double mesh) {
    const auto pin = read_pin(command, shape);
    if (!pin) {
        return wrong_option(command, pin.error());
    }
    const Curve rope{shape.points(*pin), false};
    const auto work = [&](const Telling& telling) -> Answered {
        const auto tight = tighten_pin_knot(rope, *pin, shape.hold, mesh, telling);
        const auto* knot = std::get_if<TightPinKnot>(&tight);
        return knot != nullptr ? Answered(answer_of(*knot, shape)) : std::get<TightError>(tight);
    };
    return tighten_and_write(work, command, format, " diameters in all");
}

} // namespace

std::vector<Word> knot_words() {
    std::vector<Word> words;
    for (const KnotShape& shape : knot_shapes()) {
        words.push_back({shape.name, "a knot in one line"});
    }
    for (const PinShape& shape : pin_shapes()) {
        words.push_back({shape.name, shape.hold == PinHold::loop ? "a loop that bears on a pin"
                                                                 : "a hitch round a spar"});
    }
    return words;
}

Exit run_tighten(const CommandLine& command) {
    const auto format = read_format(command);
    const auto mesh = read_mesh(command);
    if (!format || !mesh) {
        return wrong_option(command, format ? mesh.error() : format.error());
    }
    if (command.words.size() != 1) {
        return wrong_command("tighten needs a knot's name, or one file of points");
    }
    const std::string& word = command.words.front();
    if (const PinShape* shape = find_shape(pin_shapes(), word)) {
        return tighten_shape(*shape, command, *format, *mesh);
    }
    if (command.has("pin")) {
        return wrong_command("--pin is for knots round a pin: a loop, or a hitch");
    }
    if (const KnotShape* shape = find_shape(knot_shapes(), word)) {
        return tighten_points(shape->points(), command, *format, *mesh);
    }
    if (word.find_first_of("./") == std::string::npos && word != "-") {
        return unknown_knot(word);
    }
    auto points = read_points(word);
    return points ? tighten_points(std::move(*points), command, *format, *mesh)
                  : Exit::unusable_file;
}

} // namespace libsplice::cli
