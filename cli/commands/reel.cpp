// splice reel: which reel or offcut each piece of the jobs comes from, and what to order.
#include "libsplice/reel/plan.h"
#include "libsplice/sheet/formats.h"

#include "cli/declared/command.h"
#include "cli/declared/reel_options.h"
#include "cli/declared/sheet_options.h"
#include "cli/messages.h"
#include "cli/reel/reel_question.h"
#include "cli/reel/stock_file.h"
#include "cli/tables.h"

#include <atomic>
#include <csignal>

namespace libsplice::cli {

namespace {

std::atomic<bool> told_to_stop = false;
static_assert(std::atomic<bool>::is_always_lock_free, "a signal handler sets it");

/// While it lives, Ctrl-C ends the search and not the program.
class SearchInterrupt {
  public:
    SearchInterrupt() {
        struct sigaction action {};
        if (::sigaction(SIGINT, nullptr, &before_) == 0 && before_.sa_handler != SIG_IGN) {
            action.sa_handler = [](int /*signal*/) {
                told_to_stop = true;
            };
            set_ = ::sigaction(SIGINT, &action, nullptr) == 0;
        }
    }
    SearchInterrupt(const SearchInterrupt&) = delete;
    SearchInterrupt& operator=(const SearchInterrupt&) = delete;
    ~SearchInterrupt() {
        if (set_) {
            static_cast<void>(::sigaction(SIGINT, &before_, nullptr));
        }
    }

  private:
    struct sigaction before_ {};
    bool set_ = false;
};

ReelPlan search(const ReelQuestion& question, const ReelOptions& options) {
    using Clock = std::chrono::steady_clock;
    const SearchInterrupt interrupt;
    const auto begun = Clock::now();
    auto shown = begun;
    SearchLimits limits;
    limits.deadline =
        begun + std::chrono::milliseconds(static_cast<std::int64_t>(options.seconds * 1000.0));
    limits.stop = &told_to_stop;
    if (has_terminal()) {
        limits.on_progress = [&](const SearchProgress& progress) {
            const auto now = Clock::now();
            if (now - shown < std::chrono::milliseconds(200)) {
                return;
            }
            shown = now;
            const std::chrono::duration<double> since = now - begun;
            show_status(
                progress_of(question.objective, progress.bound, progress.value, since.count()));
        };
    }
    ReelPlan plan = plan_reels(question, limits);
    clear_status();
    return plan;
}

/// The question of jobs and stock; nothing where a file cannot be used.
std::optional<ReelQuestion> ask(const CommandLine& line, const Book& book, const CutSettings& cut,
                                const ReelOptions& options, const StockFile& stock,
                                std::vector<RefusedLine>& refused, bool& priced) {
    FaultSink faults = printing_sink();
    ReelQuestion question;
    question.cut_loss = options.cut_loss;
    question.objective = options.objective;
    question.stock = stock_of(stock.rows(), book, priced, faults);
    bool usable = faults.empty();
    PieceGatherer pieces(book, cut);
    cli::Progress progress("cutting", "lines", "");
    for (const std::string& job : line.words) {
        usable = pieces.gather(job, faults, progress) && usable;
    }
    say_rest(faults);
    question.demands = std::move(pieces.demands);
    refused = std::move(pieces.refused);
    return usable ? std::optional(std::move(question)) : std::nullopt;
}

void say_unplaced(const ReelQuestion& question, const ReelPlan& plan) {
    FaultSink faults = printing_sink();
    for (const Unplaced& unplaced : plan.unplaced) {
        const Demand& demand = question.demands[unplaced.demand];
        Fault fault = unplaced.fault;
        fault.text =
            demand.name + (demand.boat.empty() ? "" : ", " + demand.boat) + ": " + fault.text;
        faults.push(std::move(fault));
    }
    say_rest(faults);
}

Exit write_sheet(const ReelSheet& sheet, const Answer& answer) {
    auto output = Output::open(answer.output);
    if (!output) {
        say(output.error());
        return Exit::unusable_file;
    }
    row_of(answer.format).reel(sheet, *output, answer.sheet.units);
    if (const auto committed = output->commit(); !committed) {
        say(committed.error());
        return Exit::unusable_file;
    }
    return Exit::done;
}

/// Writes the stock, if the plan is whole.
Exit commit(const StockFile& stock, const ReelPlan& plan, bool whole) {
    if (!whole) {
        say("the stock is left as it was: not every piece is placed");
        return Exit::refused;
    }
    if (told_to_stop) {
        say("the stock is left as it was: the search was stopped");
        return Exit::done;
    }
    if (const auto written = stock.write_after(plan); !written) {
        say(written.error());
        return Exit::unusable_file;
    }
    return Exit::done;
}

Exit plan_and_write(const ReelQuestion& question, const std::vector<RefusedLine>& refused,
                    bool priced, const Answer& answer, const ReelOptions& options,
                    const StockFile& stock) {
    const ReelPlan plan = search(question, options);
    if (const auto fault = check_balance(question, plan)) {
        say(*fault);
        return Exit::unusable_file;
    }
    say_unplaced(question, plan);
    const auto objective = objective_names()[static_cast<std::size_t>(options.objective)];
    const Exit written =
        write_sheet({question, plan, refused, objective, told_to_stop, priced}, answer);
    if (written != Exit::done) {
        return written;
    }
    const bool whole = plan.unplaced.empty() && refused.empty();
    const Exit committed = options.commit ? commit(stock, plan, whole) : Exit::done;
    return committed == Exit::done && !whole ? Exit::refused : committed;
}

} // namespace

Exit run_reel(const CommandLine& line) {
    const auto answer = read_answer(line);
    if (!answer) {
        return wrong_command(answer.error().text);
    }
    const auto options = read_reel_options(line);
    if (!options) {
        return wrong_command(options.error().text);
    }
    if (line.words.empty()) {
        return wrong_command("reel needs a job file; - is standard input");
    }
    const auto book = open_book(line);
    if (!book) {
        return Exit::unusable_file;
    }
    FaultSink faults = printing_sink();
    const auto stock = StockFile::open(options->stock, options->commit, faults);
    say_rest(faults);
    if (!stock) {
        return Exit::unusable_file;
    }
    std::vector<RefusedLine> refused;
    bool priced = true;
    const auto question = ask(line, *book, answer->cut, *options, *stock, refused, priced);
    return question ? plan_and_write(*question, refused, priced, *answer, *options, *stock)
                    : Exit::unusable_file;
}

} // namespace libsplice::cli
