// What a tight knot came to, as text, CSV or JSON.
#include "cli/commands/tight_answer.h"

#include "libsplice/sheet/csv/csv_cells.h"
#include "libsplice/sheet/json/json_text.h"
#include "libsplice/units/show.h"

#include <gsl/assert>

namespace libsplice::cli {

std::optional<double> TightAnswer::beyond_turns() const {
    if (!pin || pin->hold != PinHold::hitch) {
        return std::nullopt;
    }
    return consumed - rope_in_turns(pin->diameter, pin->turns);
}

TightAnswer answer_of(const TightKnot& tight) {
    return {.knot = {},
            .consumed = tight.rope.consumed(),
            .mesh = tight.rope.mesh,
            .clearance = tight.rope.clearance,
            .determinant_before = tight.determinant_before,
            .determinant_after = tight.determinant_after};
}

TightAnswer answer_of(const TightPinKnot& tight, const PinShape& shape) {
    return {.knot = {},
            .consumed = tight.rope.consumed(shape.hold).value_or(0.0),
            .mesh = tight.rope.mesh,
            .clearance = tight.rope.clearance,
            .determinant_before = tight.determinant_before,
            .determinant_after = tight.determinant_after,
            .pin = TightAnswer::Pin{tight.rope.pin, shape.hold, shape.turns}};
}

namespace {

std::string what_is_taken_up(const TightAnswer& answer) {
    if (!answer.pin) {
        return "of rope taken up at its tightest";
    }
    return answer.pin->hold == PinHold::loop
               ? "of rope in the knot at its tightest, beyond its loop's two legs"
               : "of rope at its tightest, from level with the spar's centre and back there";
}

void write_text(const TightAnswer& answer, Output& output) {
    output.write(answer.knot + ": " + show_number(answer.consumed, 3) + " diameters " +
                 what_is_taken_up(answer) + "\n");
    if (answer.pin) {
        output.write("  pin           " + show_number(answer.pin->diameter, 3) + " diameters\n");
    }
    if (const auto beyond = answer.beyond_turns()) {
        output.write("  beyond turns  " + show_number(*beyond, 3) + " diameters beyond " +
                     show_number(answer.pin->turns, 0) + " turns round it\n");
    }
    output.write("  mesh          " + show_number(answer.mesh, 4) + " diameters between points\n");
    output.write("  clearance     " + show_number(answer.clearance, 5) +
                 " diameters between strands\n");
    output.write("  determinant   " + std::to_string(answer.determinant_before) + " before, " +
                 std::to_string(answer.determinant_after) + " after: " +
                 (answer.determinant_before == 1 ? "no knot is seen in this line\n"
                                                 : "the knot is the same\n"));
    output.write("An ideal rope, flexible and without friction. A knot set by hand takes up more" +
                 std::string(answer.pin ? ".\n" : ": the table's figure `set` says how much.\n"));
}

void write_csv(const TightAnswer& answer, Output& output) {
    output.write("knot,consumed_diameters,mesh,clearance,determinant_before,determinant_after" +
                 std::string(answer.pin ? ",pin_diameters,beyond_turns_diameters\n" : "\n"));
    std::string row;
    append_text_cell(row, answer.knot);
    for (const double value : {answer.consumed, answer.mesh, answer.clearance}) {
        row += ',';
        append_number_cell(row, value);
    }
    for (const auto value : {answer.determinant_before, answer.determinant_after}) {
        row += ',';
        append_number_cell(row, value);
    }
    if (answer.pin) {
        row += ',';
        append_number_cell(row, answer.pin->diameter);
        row += ',';
        if (const auto beyond = answer.beyond_turns()) {
            append_number_cell(row, *beyond);
        }
    }
    output.write(row + '\n');
}

void write_json(const TightAnswer& answer, Output& output) {
    JsonText json(output);
    json.begin_answer();
    json.text("knot", answer.knot);
    json.number("consumed_diameters", answer.consumed);
    json.number("mesh", answer.mesh);
    json.number("clearance", answer.clearance);
    json.key("determinant_before");
    json.whole(answer.determinant_before);
    json.key("determinant_after");
    json.whole(answer.determinant_after);
    if (answer.pin) {
        json.number("pin_diameters", answer.pin->diameter);
    }
    if (const auto beyond = answer.beyond_turns()) {
        json.number("beyond_turns_diameters", *beyond);
    }
    json.end_object();
    output.write('\n');
}

} // namespace

void write_answer(const TightAnswer& answer, Format format, Output& output) {
    constexpr ByFormat<void(const TightAnswer&, Output&)> writers{write_text, write_csv, write_json,
                                                                  nullptr};
    const auto write = writers.at(static_cast<std::size_t>(format));
    Expects(write != nullptr); // refused with the command line
    write(answer, output);
}

} // namespace libsplice::cli
