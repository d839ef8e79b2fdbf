// splice choose: which rope each line of the jobs may be made of, and what each gives up.
#include "libsplice/choose/chooser.h"
#include "libsplice/job/fill/fill_ropes.h"
#include "libsplice/sheet/choice/choice_sheet.h"

#include "cli/declared/command.h"
#include "cli/declared/options.h"
#include "cli/declared/sheet_options.h"
#include "cli/messages.h"
#include "cli/progress.h"
#include "cli/reel/stock_file.h"
#include "cli/tables.h"
#include "cli/write_out.h"

#include <algorithm>
#include <optional>
#include <set>

namespace libsplice::cli {

namespace {

Result<Preference> read_preference(const CommandLine& command) {
    const std::string word = command.value("prefer", "cost");
    const auto known = std::ranges::find(preference_words, word);
    if (known == preference_words.end()) {
        return wrong_choice("prefer", word, command.command);
    }
    return static_cast<Preference>(known - preference_words.begin());
}

/// The ropes that the stock names, each once; nothing if it cannot be used.
std::optional<std::vector<std::string>> ropes_of_stock(const CommandLine& command) {
    const std::string name = command.value("stock", "");
    if (name.empty()) {
        return std::vector<std::string>();
    }
    FaultSink faults = printing_sink();
    const auto stock = StockFile::open(name, false, faults);
    say_rest(faults);
    if (!stock) {
        return std::nullopt;
    }
    std::set<std::string> ropes;
    for (const StockRow& row : stock->rows()) {
        ropes.insert(row.rope);
    }
    return std::vector<std::string>(ropes.begin(), ropes.end());
}

/// Chooses for every line of a job; false if the job cannot be used.
bool choose_for(const std::string& job, const Book& book, Chooser& chooser, FaultSink& faults,
                std::vector<LineChoice>& lines) {
    auto input = Input::open(job);
    if (!input) {
        faults.push(input.error());
        return false;
    }
    Progress progress("choosing", "lines", "");
    return read_job(*input, book.field_names(), faults,
                    [&](const JobRow& row) {
                        lines.push_back(chooser.choose(row, faults));
                        progress.at(lines.size());
                        return true;
                    })
        .has_value();
}

/// What is to be filled in for a line: nothing if it names its rope.
std::string rope_to_fill(const LineChoice& line) {
    return line.rope.empty() && line.chosen ? line.ropes[*line.chosen].rope->id : std::string();
}

/// Writes the job with its ropes filled in.
Exit write_job(const std::string& job, const std::string& path,
               const std::vector<LineChoice>& lines) {
    auto input = Input::open(job);
    const auto text = input ? input->read_all() : Result<std::string>(Unexpected(input.error()));
    if (!text) {
        return unusable_file(text.error());
    }
    std::vector<std::string> ropes(lines.size());
    std::ranges::transform(lines, ropes.begin(), rope_to_fill);
    const auto filled = job.ends_with(".toml") ? fill_toml(*text, ropes)
                                               : Result<std::string>(fill_csv(*text, ropes));
    if (!filled) {
        return unusable_file(filled.error());
    }
    return write_out(path, [&](Output& output) {
        output.write(*filled);
        return Exit::done;
    });
}

Exit write_choice(const Answer& answer, const std::vector<LineChoice>& lines) {
    return write_out("-", [&](Output& output) {
        const auto index = static_cast<std::size_t>(answer.format);
        choice_writers.at(index)(lines, output, answer.sheet.units);
        const bool all = std::ranges::all_of(
            lines, [](const LineChoice& line) { return line.chosen.has_value(); });
        return all ? Exit::done : Exit::refused;
    });
}

/// What is wrong with the jobs and the output together; empty: nothing.
std::string_view wrong_jobs(const CommandLine& command, bool fills) {
    if (command.words.empty()) {
        return "choose needs a job file; - is standard input";
    }
    if (fills && (command.words.size() != 1 || command.words.front() == "-")) {
        return "--output writes one job with its ropes filled in, so name one job file";
    }
    return {};
}

} // namespace

Exit run_choose(const CommandLine& command) {
    const auto answer = read_answer(command);
    if (!answer) {
        return wrong_option(command, answer.error());
    }
    const auto preference = read_preference(command);
    if (!preference) {
        return wrong_option(command, preference.error());
    }
    const bool fills = answer->output != "-";
    if (const auto wrong = wrong_jobs(command, fills); !wrong.empty()) {
        return wrong_command(wrong);
    }
    const auto book = open_book(command);
    const auto stock = book ? ropes_of_stock(command) : std::nullopt;
    if (!stock) {
        return Exit::unusable_file;
    }
    FaultSink faults = printing_sink();
    const auto tables = ChoiceTables::open(book->catalogue(), faults);
    if (!tables) {
        say_rest(faults);
        return Exit::unusable_file;
    }
    const Candidates candidates(*book, *stock);
    Chooser chooser(*book, *tables, candidates, answer->cut, *preference);
    std::vector<LineChoice> lines;
    bool usable = true;
    for (const std::string& job : command.words) {
        usable = choose_for(job, *book, chooser, faults, lines) && usable;
    }
    say_rest(faults);
    if (!usable) {
        return Exit::unusable_file;
    }
    const Exit chosen = write_choice(*answer, lines);
    const Exit filled =
        fills ? write_job(command.words.front(), answer->output, lines) : Exit::done;
    return filled == Exit::done ? chosen : filled;
}

} // namespace libsplice::cli
