// splice choose: which rope each line of the jobs may be made of, and what each gives up.
#include "libsplice/choose/chooser.h"
#include "libsplice/choose/together/together.h"
#include "libsplice/job/fill/fill_ropes.h"
#include "libsplice/sheet/choice/choice_sheet.h"

#include "cli/declared/command.h"
#include "cli/declared/options.h"
#include "cli/declared/reel_options.h"
#include "cli/declared/sheet_options.h"
#include "cli/messages.h"
#include "cli/progress.h"
#include "cli/reel/reel_question.h"
#include "cli/reel/search_interrupt.h"
#include "cli/reel/stock_file.h"
#include "cli/tables.h"
#include "cli/write_out.h"

#include <algorithm>
#include <chrono>
#include <cstdint>
#include <functional>
#include <iterator>
#include <map>
#include <optional>
#include <span>
#include <string>
#include <utility>
#include <vector>

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

/// What the ropes are taken from; empty if no stock is named. Nothing if it cannot be used.
std::optional<std::vector<StockRow>> read_stock_rows(const std::string& name) {
    if (name.empty()) {
        return std::vector<StockRow>();
    }
    FaultSink faults = printing_sink();
    const auto stock = StockFile::open(name, false, faults);
    say_rest(faults);
    if (!stock) {
        return std::nullopt;
    }
    return std::vector<StockRow>(stock->rows().begin(), stock->rows().end());
}

std::optional<double> price_of_metre(const StockRow& row) {
    if (!row.price) {
        return std::nullopt;
    }
    if (!row.price->whole) {
        return row.price->value;
    }
    return row.length ? std::optional(row.price->value / from_nanometres(*row.length).si())
                      : std::nullopt;
}

std::vector<StockedRope> ropes_of(std::span<const StockRow> stock) {
    std::vector<StockedRope> ropes(stock.size());
    std::ranges::transform(stock, ropes.begin(), [](const StockRow& row) {
        return StockedRope{row.rope, price_of_metre(row)};
    });
    return ropes;
}

/// Jobs that may be read more than once, standard input among them.
class Jobs {
  public:
    explicit Jobs(const Book& book) : book_(book) {}

    /// Hands every row of a job on; false if the job cannot be used.
    bool read(const std::string& job, FaultSink& faults, const OnRow& on_row) {
        auto input = open(job);
        if (!input) {
            faults.push(input.error());
            return false;
        }
        return read_job(*input, book_.field_names(), faults, on_row).has_value();
    }

  private:
    Result<Input> open(const std::string& job) {
        if (job != "-") {
            return Input::open(job);
        }
        if (!standard_input_) {
            auto input = Input::open(job);
            auto text = input ? input->read_all() : Result<std::string>(Unexpected(input.error()));
            if (!text) {
                return Unexpected(text.error());
            }
            name_ = input->name();
            standard_input_ = *std::move(text);
        }
        return Input::of_text(*standard_input_, name_);
    }

    const Book& book_;
    std::optional<std::string> standard_input_;
    std::string name_;
};

/// Candidates that the stock has, and of those that lines could have at a known price the ones that
/// most lines could have.
std::vector<std::size_t> shared_candidates(const Candidates& candidates,
                                           std::span<const LineChoice> lines) {
    constexpr std::size_t most_others = 40;
    std::map<std::size_t, std::size_t> lines_of; // by candidate
    for (const LineChoice& line : lines) {
        for (const TriedRope& tried : line.ropes) {
            const auto index = candidates.find(tried.rope->id);
            if (index && !candidates.at(*index).at_hand && !tried.verdict.fails &&
                tried.verdict.price && tried.shown_as != ShownAs::hybrid) {
                ++lines_of[*index];
            }
        }
    }
    std::vector<std::pair<std::size_t, std::size_t>> others(lines_of.begin(), lines_of.end());
    std::ranges::stable_sort(others, std::ranges::greater(),
                             &std::pair<std::size_t, std::size_t>::second);
    others.resize(std::min(others.size(), most_others));
    std::vector<std::size_t> shared;
    for (std::size_t i = 0; i < candidates.size(); ++i) {
        if (candidates.at(i).at_hand) {
            shared.push_back(i);
        }
    }
    std::ranges::transform(others, std::back_inserter(shared),
                           &std::pair<std::size_t, std::size_t>::first);
    return shared;
}

/// One choice for all lines: each is tried in every rope that another might have.
void choose_all_together(const CommandLine& command, const ReelOptions& options, Chooser& chooser,
                         const Candidates& candidates, std::vector<ReelStock> stock, Jobs& jobs,
                         JobChoice& choice) {
    const auto shared = shared_candidates(candidates, choice.lines);
    std::size_t at = 0;
    for (const std::string& job : command.words) {
        FaultSink said_before;
        jobs.read(job, said_before, [&](const JobRow& row) {
            chooser.add_others(row, shared, choice.lines.at(at));
            ++at;
            return true;
        });
    }
    const SearchInterrupt interrupt;
    SearchLimits limits;
    limits.deadline =
        std::chrono::steady_clock::now() +
        std::chrono::milliseconds(static_cast<std::int64_t>(options.seconds * 1000.0));
    limits.stop = &told_to_stop();
    choice.together = choose_together({choice.lines, std::move(stock), options.cut_loss}, limits);
    take_together(choice);
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

Exit write_choice(const Answer& answer, const JobChoice& choice) {
    return write_out("-", [&](Output& output) {
        const auto index = static_cast<std::size_t>(answer.format);
        choice_writers.at(index)(choice, output, answer.sheet.units);
        const bool all = std::ranges::all_of(
            choice.lines, [](const LineChoice& line) { return line.chosen.has_value(); });
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

/// What the command line asks.
struct Asked {
    Answer answer;
    Preference preference{};
    ReelOptions options;
};

Result<Asked> read_asked(const CommandLine& command) {
    const auto answer = read_answer(command);
    if (!answer) {
        return Unexpected(answer.error());
    }
    const auto preference = read_preference(command);
    if (!preference) {
        return Unexpected(preference.error());
    }
    const auto options = read_reel_options(command);
    if (!options) {
        return Unexpected(options.error());
    }
    return Asked{*answer, *preference, *options};
}

Exit write_answers(const CommandLine& command, const Answer& answer, const JobChoice& choice) {
    const Exit chosen = write_choice(answer, choice);
    const bool fills = answer.output != "-";
    const Exit filled =
        fills ? write_job(command.words.front(), answer.output, choice.lines) : Exit::done;
    if (filled != Exit::done) {
        return filled;
    }
    return told_to_stop() ? Exit::interrupted : chosen;
}

/// Chooses for all lines and writes what was chosen.
Exit choose_for_jobs(const CommandLine& command, const Asked& asked, const Book& book) {
    const auto rows = read_stock_rows(asked.options.stock);
    FaultSink faults = printing_sink();
    const auto tables = rows ? ChoiceTables::open(book.catalogue(), faults) : std::nullopt;
    auto stock = tables ? stock_of(*rows, book, faults) : std::vector<ReelStock>();
    if (!tables || !faults.empty()) {
        say_rest(faults);
        return Exit::unusable_file;
    }
    const Candidates candidates(book, ropes_of(*rows));
    Chooser chooser(book, *tables, candidates, asked.answer.cut, asked.preference);
    Jobs jobs(book);
    JobChoice choice;
    choice.preference = asked.preference;
    choice.asked_together = command.has("together");
    Progress progress("choosing", "lines", "");
    bool usable = true;
    for (const std::string& job : command.words) {
        const auto choose_row = [&](const JobRow& row) {
            choice.lines.push_back(chooser.choose(row, faults));
            progress.at(choice.lines.size());
            return true;
        };
        usable = jobs.read(job, faults, choose_row) && usable;
    }
    say_rest(faults);
    if (!usable) {
        return Exit::unusable_file;
    }
    if (choice.asked_together) {
        choose_all_together(command, asked.options, chooser, candidates, std::move(stock), jobs,
                            choice);
    }
    return write_answers(command, asked.answer, choice);
}

} // namespace

Exit run_choose(const CommandLine& command) {
    const auto asked = read_asked(command);
    if (!asked) {
        return wrong_option(command, asked.error());
    }
    const bool fills = asked->answer.output != "-";
    if (const auto wrong = wrong_jobs(command, fills); !wrong.empty()) {
        return wrong_command(wrong);
    }
    const auto book = open_book(command);
    return book ? choose_for_jobs(command, *asked, *book) : Exit::unusable_file;
}

} // namespace libsplice::cli
