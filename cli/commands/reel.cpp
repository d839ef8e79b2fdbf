// splice reel: which reel or offcut each piece of the jobs comes from, and what to order.
#include "libsplice/reel/plan.h"
#include "libsplice/sheet/formats.h"

#include "cli/declared/command.h"
#include "cli/declared/reel_options.h"
#include "cli/declared/sheet_options.h"
#include "cli/messages.h"
#include "cli/reel/reel_question.h"
#include "cli/reel/search_interrupt.h"
#include "cli/reel/stock_file.h"
#include "cli/tables.h"
#include "cli/write_out.h"

#include <chrono>
#include <cstdint>

namespace libsplice::cli {

namespace {

ReelPlan search(const ReelQuestion& question, const ReelOptions& options) {
    using Clock = std::chrono::steady_clock;
    const SearchInterrupt interrupt;
    const auto begun = Clock::now();
    auto shown = begun;
    SearchLimits limits;
    limits.deadline =
        begun + std::chrono::milliseconds(static_cast<std::int64_t>(options.seconds * 1000.0));
    limits.stop = &told_to_stop();
    if (shows_progress()) {
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

/// What is asked, and the lines that no piece could be cut for.
struct AskedPlan {
    ReelQuestion question;
    std::vector<RefusedLine> refused;
};

/// The question of jobs and stock; nothing where a file cannot be used.
std::optional<AskedPlan> ask(const CommandLine& command, const Book& book, const CutSettings& cut,
                             const ReelOptions& options, std::span<const StockRow> stock) {
    FaultSink faults = printing_sink();
    AskedPlan asked;
    asked.question.cut_loss = options.cut_loss;
    asked.question.objective = options.objective;
    asked.question.stock = stock_of(stock, book, faults);
    bool usable = faults.empty();
    PieceGatherer pieces(book, cut);
    cli::Progress progress("cutting", "lines", "");
    for (const std::string& job : command.words) {
        usable = pieces.gather(job, faults, progress) && usable;
    }
    say_rest(faults);
    asked.question.demands = std::move(pieces.demands);
    asked.refused = std::move(pieces.refused);
    return usable ? std::optional(std::move(asked)) : std::nullopt;
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
    return write_out(answer.output, [&](Output& output) {
        row_of(answer.format).reel(sheet, output, answer.sheet.units);
        return Exit::done;
    });
}

/// Writes the stock, if the plan is whole.
Exit commit(const StockFile& stock, const ReelPlan& plan, bool whole) {
    if (!whole) {
        say("the stock is left as it was: not every piece is placed");
        return Exit::refused;
    }
    if (told_to_stop()) {
        say("the stock is left as it was: the search was stopped");
        return Exit::interrupted;
    }
    if (const auto written = stock.write_after(plan); !written) {
        say(written.error());
        return Exit::unusable_file;
    }
    return Exit::done;
}

Exit plan_and_write(const AskedPlan& asked, const Answer& answer, const ReelOptions& options,
                    const std::optional<StockFile>& stock) {
    const ReelPlan plan = search(asked.question, options);
    if (const auto fault = check_balance(asked.question, plan)) {
        say(*fault);
        return Exit::unusable_file;
    }
    say_unplaced(asked.question, plan);
    const Exit written = write_sheet({asked.question, plan, asked.refused, told_to_stop()}, answer);
    if (written != Exit::done) {
        return written;
    }
    const bool whole = plan.unplaced.empty() && asked.refused.empty();
    const Exit committed = options.commit ? commit(*stock, plan, whole) : Exit::done;
    if (told_to_stop() && committed != Exit::unusable_file) {
        return Exit::interrupted;
    }
    return committed == Exit::done && !whole ? Exit::refused : committed;
}

/// The stock, or nothing where none is named; a fault that has been said where it cannot be used.
Result<std::optional<StockFile>> open_stock(const ReelOptions& options) {
    if (options.stock.empty()) {
        return std::optional<StockFile>();
    }
    FaultSink faults = printing_sink();
    auto stock = StockFile::open(options.stock, options.commit, faults);
    say_rest(faults);
    if (!stock) {
        return Unexpected(stock.error());
    }
    return std::optional<StockFile>(*std::move(stock));
}

} // namespace

Exit run_reel(const CommandLine& command) {
    const auto answer = read_answer(command);
    if (!answer) {
        return wrong_option(command, answer.error());
    }
    const auto options = read_reel_options(command);
    if (!options) {
        return wrong_option(command, options.error());
    }
    if (command.words.empty()) {
        return wrong_command("reel needs a job file; - is standard input");
    }
    const auto book = open_book(command);
    if (!book) {
        return Exit::unusable_file;
    }
    const auto stock = open_stock(*options);
    if (!stock) {
        return Exit::unusable_file;
    }
    const auto rows = *stock ? (*stock)->rows() : std::span<const StockRow>();
    const auto asked = ask(command, *book, answer->cut, *options, rows);
    return asked ? plan_and_write(*asked, *answer, *options, *stock) : Exit::unusable_file;
}

} // namespace libsplice::cli
