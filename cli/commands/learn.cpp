// splice learn: a shop's own constants from a few measured pieces.
#include "libsplice/job/measured/measured_file.h"

#include "cli/declared/command.h"
#include "cli/declared/sheet_options.h"
#include "cli/learn/learn_report.h"
#include "cli/messages.h"
#include "cli/tables.h"
#include "cli/write_out.h"

#include <algorithm>
#include <filesystem>
#include <fstream>

namespace libsplice::cli {

namespace {

bool is_same(const Rope& a, const Rope& b) {
    const bool described = describes_rope(a.id) && describes_rope(b.id);
    return described ? a.construction == b.construction && a.fibre == b.fibre &&
                           to_nanometres(a.diameter) == to_nanometres(b.diameter)
                     : a.id == b.id;
}

/// Sorts pieces by kind and rope, in the order in which they first stand in the file.
class Sorter {
  public:
    Sorter(const Book& book, FaultSink& faults) : book_(book), faults_(faults) {}

    /// False where its kind or rope is not known.
    bool add(const MeasuredPiece& piece) {
        const auto kind = book_.kind(piece.kind);
        const auto rope = book_.catalogue().rope(piece.rope);
        if (!kind) {
            refuse(kind.error(), piece.kind_at, "kind");
        }
        if (!rope) {
            refuse(rope.error(), piece.rope_at, "rope");
        }
        if (!kind || !rope) {
            return false;
        }
        LearntPieces& pieces = of(*kind, *rope);
        pieces.used.push_back(piece.diameters.value_or(piece.used / rope->counting_diameter()));
        pieces.places.push_back(piece.used_at);
        return true;
    }

    /// Fits all of them; those that cannot be are dropped with a fault, and the number of their
    /// rows is returned.
    std::size_t learn_all(double risk) {
        std::size_t left_out = 0;
        for (LearntPieces& pieces : all_) {
            auto learnt = learn(book_, *pieces.kind, pieces.rope, pieces.used, risk);
            if (!learnt) {
                left_out += leave_out_singly(pieces, risk);
                learnt = pieces.used.empty()
                             ? learnt
                             : learn(book_, *pieces.kind, pieces.rope, pieces.used, risk);
            }
            if (learnt) {
                pieces.learnt = *learnt;
            } else if (!pieces.used.empty()) {
                left_out += pieces.used.size();
                refuse(learnt.error(), pieces.places.front(), "kind");
                pieces.used.clear();
            }
        }
        std::erase_if(all_, [](const LearntPieces& pieces) { return pieces.used.empty(); });
        return left_out;
    }

    [[nodiscard]] std::vector<LearntPieces> take() { return std::move(all_); }

  private:
    /// Leaves out the pieces from which nothing could be learnt by themselves, each at its own
    /// place; their number.
    std::size_t leave_out_singly(LearntPieces& pieces, double risk) {
        LearntPieces kept{pieces.kind, pieces.rope, {}, {}, {}};
        for (std::size_t i = 0; i < pieces.used.size(); ++i) {
            const auto alone =
                learn(book_, *pieces.kind, pieces.rope, std::span(&pieces.used[i], 1), risk);
            if (alone) {
                kept.used.push_back(pieces.used[i]);
                kept.places.push_back(pieces.places[i]);
            } else {
                refuse(alone.error(), pieces.places[i], "used");
            }
        }
        const std::size_t left_out = pieces.used.size() - kept.used.size();
        pieces = std::move(kept);
        return left_out;
    }

    LearntPieces& of(const Kind* kind, const Rope& rope) {
        const auto found = std::ranges::find_if(all_, [&](const LearntPieces& pieces) {
            return pieces.kind == kind && is_same(pieces.rope, rope);
        });
        return found != all_.end() ? *found
                                   : all_.emplace_back(LearntPieces{kind, rope, {}, {}, {}});
    }

    void refuse(Fault fault, const Place& at, std::string_view field) {
        fault.at = at;
        fault.field = field;
        faults_.push(std::move(fault));
    }

    const Book& book_;
    FaultSink& faults_;
    std::vector<LearntPieces> all_;
};

/// A file as it is named; into a folder, its tables.toml.
Result<std::string> table_file(const std::string& named) {
    if (named == "-" || named.ends_with(".toml")) {
        return named;
    }
    std::error_code error;
    std::filesystem::create_directories(named, error);
    if (error) {
        return Unexpected(Fault{Code::cannot_write, "the folder cannot be made: " + error.message(),
                                Place{named}});
    }
    return named + "/tables.toml";
}

/// Only what learning wrote itself is written over.
std::optional<Fault> check_is_ours(const std::string& file) {
    std::ifstream in(file);
    std::string line;
    if (!in || (std::getline(in, line) && line == first_line_of_shop_table)) {
        return std::nullopt;
    }
    return Fault{Code::cannot_write,
                 "the file is there already and is no table that learn wrote; nothing was written: "
                 "name another, or move it away",
                 Place{file}};
}

Exit write_table(const LearntFile& learnt, const std::string& named) {
    const auto file = table_file(named);
    if (!file) {
        return unusable_file(file.error());
    }
    if (const auto fault = check_is_ours(*file)) {
        return unusable_file(*fault);
    }
    return write_out(*file, [&](Output& output) {
        write_shop_table(learnt, output);
        return Exit::done;
    });
}

/// Writes the table if one is asked for, and shows what was learnt.
Exit write_all(LearntFile& learnt, const Answer& answer) {
    if (answer.output != "-" && !learnt.all.empty()) {
        if (const Exit written = write_table(learnt, answer.output); written != Exit::done) {
            return written;
        }
        learnt.table = answer.output;
    }
    return write_out("-", [&](Output& output) {
        write_learnt(learnt, answer.format, answer.sheet.units, output);
        return learnt.left_out == 0 ? Exit::done : Exit::refused;
    });
}

} // namespace

Exit run_learn(const CommandLine& command) {
    const auto answer = read_answer(command);
    if (!answer) {
        return wrong_option(command, answer.error());
    }
    if (command.words.size() != 1) {
        return wrong_command("learn needs one file of measured pieces");
    }
    const auto book = open_book(command);
    if (!book) {
        return Exit::unusable_file;
    }
    const auto measured = read_measured_file(command.words.front());
    FaultSink faults = printing_sink();
    for (const auto* some : {&measured.file_faults, &measured.row_faults}) {
        std::ranges::for_each(*some, [&](const Fault& fault) { faults.push(fault); });
    }
    if (!measured.file_faults.empty()) {
        say_rest(faults);
        return Exit::unusable_file;
    }
    Sorter sorter(*book, faults);
    std::size_t used = 0;
    for (const MeasuredPiece& piece : measured.pieces) {
        used += sorter.add(piece) ? 1U : 0U;
    }
    used -= sorter.learn_all(answer->cut.risk);
    say_rest(faults);
    LearntFile learnt{command.words.front(), answer->cut.risk,     sorter.take(),
                      measured.rows,         measured.rows - used, {}};
    return write_all(learnt, *answer);
}

} // namespace libsplice::cli
