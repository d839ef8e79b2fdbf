// splice show: one line of a job in full, each row of its ledger worked out.
#include "libsplice/base/text.h"
#include "libsplice/cut/cutter.h"
#include "libsplice/job/read_job.h"
#include "libsplice/sheet/formats.h"

#include "cli/declared/command.h"
#include "cli/declared/sheet_options.h"
#include "cli/messages.h"
#include "cli/tables.h"
#include "cli/write_out.h"

#include <algorithm>
#include <optional>
#include <vector>

namespace libsplice::cli {

namespace {

/// A line is asked for by its number among the job's lines, or by its name.
bool is_asked_for(const std::string& asked, const JobRow& row, std::size_t number) {
    return asked == std::to_string(number) || asked == row.line.text(Column::name);
}

/// What a job holds of the line that is asked for.
struct Shown {
    Counts counts;                   ///< of lines that were written: one, or none
    std::size_t lines = 0;           ///< in the job
    std::vector<std::size_t> others; ///< numbers of further lines of the same name
};

/// Writes the first line that is asked for; nothing if the job cannot be read, which is said.
std::optional<Shown> show_line(Input& input, const std::string& asked, const Book& book,
                               Cutter& cutter, SheetWriter& writer) {
    FaultSink faults = printing_sink();
    FaultSink of_other_lines(0);
    Shown shown;
    const auto read = read_job(input, book.field_names(), of_other_lines, [&](const JobRow& row) {
        if (!is_asked_for(asked, row, ++shown.lines)) {
            return true;
        }
        if (shown.counts.lines != 0) {
            shown.others.push_back(shown.lines);
            return true;
        }
        const Piece& piece = cutter.cut(row, faults);
        writer.piece(piece);
        ++shown.counts.lines;
        shown.counts.refused += piece.fault != nullptr ? 1U : 0U;
        shown.counts.pieces +=
            piece.fault == nullptr ? static_cast<std::size_t>(piece.quantity) : 0U;
        return true;
    });
    if (!read) {
        say(read.error());
        return std::nullopt;
    }
    return shown;
}

void remark_on_others(const std::vector<std::size_t>& others) {
    constexpr std::size_t most_named = 8;
    std::string numbers;
    for (std::size_t i = 0; i < std::min(others.size(), most_named); ++i) {
        numbers += (i == 0 ? " " : ", ") + std::to_string(others[i]);
    }
    numbers += others.size() > most_named ? " …" : "";
    if (others.size() == 1) {
        remark("line" + numbers + " has the same name; ask for it by its number");
    } else if (!others.empty()) {
        remark("lines" + numbers + " have the same name; ask for one by its number");
    }
}

} // namespace

Exit run_show(const CommandLine& command) {
    auto answer = read_answer(command);
    if (!answer) {
        return wrong_option(command, answer.error());
    }
    if (command.words.size() != 2) {
        return wrong_command(
            "show needs a job and a line, by name or by its number among the lines");
    }
    const auto book = open_book(command);
    if (!book) {
        return Exit::unusable_file;
    }
    auto input = Input::open(command.words.front());
    if (!input) {
        return unusable_file(input.error());
    }
    answer->sheet.full = true;
    answer->sheet.working = true;
    return write_out(answer->output, [&](Output& output) {
        const auto writer = row_of(answer->format).cut(output, *book, answer->sheet);
        Cutter cutter(*book, answer->cut);
        writer->begin();
        const auto& asked = command.words.back();
        const auto shown = show_line(*input, asked, *book, cutter, *writer);
        if (!shown) {
            return Exit::unusable_file;
        }
        if (shown->counts.lines == 0) {
            return wrong_command("the job has no line " + in_quotes(asked) + "; it has " +
                                 std::to_string(shown->lines) + " lines");
        }
        writer->end(shown->counts);
        remark_on_others(shown->others);
        return shown->counts.refused == 0 ? Exit::done : Exit::refused;
    });
}

} // namespace libsplice::cli
