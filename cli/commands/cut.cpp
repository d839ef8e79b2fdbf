// splice cut, chart and labels: jobs in, one sheet out.
#include "libsplice/base/text.h"
#include "libsplice/cut/cutter.h"
#include "libsplice/job/read_job.h"
#include "libsplice/sheet/formats.h"
#include "libsplice/sheet/paper/paper.h"

#include "cli/declared/command.h"
#include "cli/declared/options.h"
#include "cli/declared/sheet_options.h"
#include "cli/messages.h"
#include "cli/progress.h"
#include "cli/tables.h"
#include "cli/write_out.h"

#include <filesystem>
#include <functional>
#include <optional>
#include <system_error>

namespace libsplice::cli {

namespace {

/// Writes the sheet; its beginning waits for the first piece, so that a job whose heading is
/// unusable leaves nothing behind.
class Sheet {
  public:
    explicit Sheet(std::unique_ptr<SheetWriter> writer) : writer_(std::move(writer)) {}

    void piece(const Piece& piece) {
        begin();
        writer_->piece(piece);
    }
    void end(const Counts& counts) {
        begin();
        writer_->end(counts);
    }
    [[nodiscard]] bool begun() const { return begun_; }

  private:
    void begin() {
        if (!begun_) {
            writer_->begin();
            begun_ = true;
        }
    }

    std::unique_ptr<SheetWriter> writer_;
    bool begun_ = false;
};

/// How much of all the jobs has been read; nothing where one has no size, as standard input has
/// not.
class ShareRead {
  public:
    explicit ShareRead(const std::vector<std::string>& jobs) {
        for (const std::string& job : jobs) {
            std::error_code error;
            const auto size = std::filesystem::file_size(job, error);
            known_ = known_ && !error;
            whole_ += error ? 0.0 : static_cast<double>(size);
        }
    }
    /// `input` is read through; the next begins.
    void add(const Input& input) { before_ += static_cast<double>(input.consumed()); }
    [[nodiscard]] std::optional<double> with(const Input& input) const {
        return known_ && whole_ > 0.0
                   ? std::optional((before_ + static_cast<double>(input.consumed())) / whole_)
                   : std::nullopt;
    }

  private:
    bool known_ = true;
    double whole_ = 0.0;
    double before_ = 0.0;
};

/// Cuts every job in turn; false where a file cannot be used.
bool cut_jobs(const std::vector<std::string>& jobs, const Book& book, Cutter& cutter, Sheet& sheet,
              Output& output, FaultSink& faults, Progress& progress) {
    ShareRead share(jobs);
    for (const std::string& job : jobs) {
        auto input = Input::open(job);
        if (!input) {
            faults.push(input.error());
            return false;
        }
        const auto read = read_job(*input, book.field_names(), faults, [&](const JobRow& row) {
            sheet.piece(cutter.cut(row, faults));
            progress.at(cutter.counts().lines, share.with(*input));
            return !output.reader_gone();
        });
        if (!read) {
            return false;
        }
        share.add(*input);
    }
    return true;
}

using MakeWriter = std::function<std::unique_ptr<SheetWriter>(const Answer&, Output&, const Book&)>;

/// A sheet whose job broke off is shown as far as it goes; a file is not written.
void flush_to_standard_output(const Answer& answer, Output& output) {
    if (answer.output == "-") {
        output.flush();
    }
}

/// Cuts the jobs of a command line and writes what becomes of them.
Exit write_jobs(const CommandLine& command, const MakeWriter& make_writer) {
    const auto answer = read_answer(command);
    if (!answer) {
        return wrong_option(command, answer.error());
    }
    if (command.words.empty()) {
        return wrong_command(command.command + " needs a job file; - is standard input");
    }
    const auto book = open_book(command);
    if (!book) {
        return Exit::unusable_file;
    }
    return write_out(answer->output, [&](Output& output) {
        Cutter cutter(*book, answer->cut);
        Sheet sheet(make_writer(*answer, output, *book));
        FaultSink faults = printing_sink();
        Progress progress("cutting", "lines", answer->output);
        const bool usable = cut_jobs(command.words, *book, cutter, sheet, output, faults, progress);
        say_rest(faults);
        if (!usable && !sheet.begun()) {
            return Exit::unusable_file;
        }
        sheet.end(cutter.counts());
        if (!usable) {
            flush_to_standard_output(*answer, output);
            return Exit::unusable_file;
        }
        return cutter.counts().refused == 0 ? Exit::done : Exit::refused;
    });
}

} // namespace

Exit run_cut(const CommandLine& command) {
    return write_jobs(command, [](const Answer& answer, Output& output, const Book& book) {
        return row_of(answer.format).cut(output, book, answer.sheet);
    });
}

Exit run_chart(const CommandLine& command) {
    return write_jobs(command, [](const Answer& answer, Output& output, const Book& /*book*/) {
        return wall_chart(output, answer.sheet);
    });
}

Exit run_labels(const CommandLine& command) {
    const std::string name = command.value("sheet", std::string(label_sheets().front().name));
    const LabelSheet* sheet = find_label_sheet(name);
    if (sheet == nullptr) {
        return wrong_option(command, wrong_choice("sheet", name, command.command).error());
    }
    return write_jobs(command, [sheet](const Answer& answer, Output& output, const Book& /*book*/) {
        return label_sheet(output, answer.sheet, *sheet);
    });
}

} // namespace libsplice::cli
