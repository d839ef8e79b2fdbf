// splice show: one line of a job in full, each row of its ledger worked out.
#include "libsplice/cut/cutter.h"
#include "libsplice/job/read_job.h"
#include "libsplice/sheet/formats.h"

#include "cli/commands/stretch.h"
#include "cli/declared/command.h"
#include "cli/declared/sheet_options.h"
#include "cli/messages.h"
#include "cli/tables.h"

namespace libsplice::cli {

namespace {

/// A line is asked for by its number among the job's lines, or by its name.
bool is_asked_for(const std::string& asked, const JobRow& row, std::size_t number) {
    return asked == std::to_string(number) || asked == row.line.text(Column::name);
}

} // namespace

Exit run_show(const CommandLine& line) {
    if (asks_for_stretch(line)) {
        return run_show_stretch(line);
    }
    auto answer = read_answer(line);
    if (!answer) {
        return wrong_command(answer.error().text);
    }
    if (line.words.size() != 2) {
        return wrong_command(
            "show needs a job and a line, by name or by its number among the lines; or the word "
            "stretch, a rope and a load");
    }
    const auto book = open_book(line);
    auto input = Input::open(line.words.front());
    if (!book || !input) {
        if (!input) {
            say(input.error());
        }
        return Exit::unusable_file;
    }
    auto output = Output::open(answer->output);
    if (!output) {
        say(output.error());
        return Exit::unusable_file;
    }
    answer->sheet.working = true;
    const auto writer = row_of(answer->format).cut(*output, *book, answer->sheet);
    Cutter cutter(*book, answer->cut);
    FaultSink faults = printing_sink();
    FaultSink ignored(0);
    Counts shown;
    std::size_t number = 0;
    std::size_t others = 0; // further lines of the same name
    writer->begin();
    const auto read = read_job(*input, book->field_names(), ignored, [&](const JobRow& row) {
        if (!is_asked_for(line.words.back(), row, ++number)) {
            return true;
        }
        if (shown.lines != 0) {
            ++others;
        } else {
            const Piece& piece = cutter.cut(row, faults);
            writer->piece(piece);
            ++shown.lines;
            shown.refused += piece.fault != nullptr ? 1U : 0U;
            shown.pieces += piece.fault == nullptr ? static_cast<std::size_t>(piece.quantity) : 0U;
        }
        return true;
    });
    if (!read) {
        say(read.error());
        return Exit::unusable_file;
    }
    if (shown.lines == 0) {
        return wrong_command("the job has no line \"" + line.words.back() + "\"; it has " +
                             std::to_string(number) + " lines");
    }
    writer->end(shown);
    if (others != 0) {
        say(std::to_string(others) + " more lines are called so; ask for one by its number");
    }
    if (const auto committed = output->commit(); !committed) {
        say(committed.error());
        return Exit::unusable_file;
    }
    return shown.refused == 0 ? Exit::done : Exit::refused;
}

} // namespace libsplice::cli
