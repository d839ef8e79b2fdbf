// Binds each line once, adds its pieces up one after the other, and counts.
#include "libsplice/cut/cutter.h"

#include "libsplice/cut/bind/route.h"
#include "libsplice/cut/judge/ways_out.h"
#include "libsplice/cut/work_out_piece.h"
#include "libsplice/job/vocabulary.h"

namespace libsplice {

namespace {

/// Lines, ropes and ends are kept for lines to come, up to this many; then all start over. It
/// bounds the memory of a job whose every line is different.
constexpr std::size_t most_kept = 20'000;

LineTexts texts_of(const JobLine& job) {
    const auto kind_at = [&](Column column) {
        return job.text(column).empty() ? std::string_view("bare") : job.text(column);
    };
    LineTexts texts;
    texts.name = job.text(Column::name);
    texts.boat = job.text(Column::boat);
    texts.rope = job.text(Column::rope);
    texts.end_a = kind_at(Column::end_a);
    texts.end_b = kind_at(Column::end_b);
    texts.state = job.text(Column::state);
    texts.pair = job.text(Column::pair);
    texts.fit_first = job.text(Column::fit_first);
    texts.lot = job.text(Column::lot);
    texts.colour = job.text(Column::colour);
    texts.note = job.text(Column::note);
    return texts;
}

/// A piece with nothing but its texts, in memory that is used again.
void start_over(Piece& piece, const LineTexts& texts) {
    Piece fresh;
    static_cast<LineTexts&>(fresh) = texts;
    fresh.ledger.swap(piece.ledger);
    fresh.marks.swap(piece.marks);
    fresh.lengths.swap(piece.lengths);
    fresh.steps.swap(piece.steps);
    fresh.cautions.swap(piece.cautions);
    fresh.ledger.clear();
    fresh.marks.clear();
    fresh.lengths.clear();
    fresh.steps.clear();
    fresh.cautions.clear();
    piece = std::move(fresh);
}

/// The length that the job gives; nothing where it gives a route.
std::optional<Nanometres> read_finished(CellReader& cells) {
    const bool has_length = !cells.text(Column::length).empty();
    const bool routed = has_route(cells.job());
    if (has_length == routed) {
        cells.add(
            Fault{Code::length_or_route, routed ? "give a length or a route, not both"
                                                : "a line needs its finished length, or a route"},
            Column::length);
        return std::nullopt;
    }
    return cells.length(Column::length, 1);
}

} // namespace

Cutter::Cutter(const Book& book, const CutSettings& settings)
    : book_(book),
      settings_(settings),
      binder_(std::make_unique<LineBinder>(book, settings)),
      pairs_(book) {}

const BoundLine* Cutter::find_line(CellReader& cells) {
    plan_key_.assign(cells.job().plan_key);
    const auto known = lines_.find(plan_key_);
    if (known != lines_.end()) {
        return known->second.get();
    }
    if (lines_.size() >= most_kept || binder_->size() >= most_kept) {
        lines_.clear();
        binder_ = std::make_unique<LineBinder>(book_, settings_);
    }
    auto line = binder_->bind(cells);
    return line == nullptr ? nullptr
                           : lines_.emplace(plan_key_, std::move(line)).first->second.get();
}

const Piece& Cutter::refuse(const Fault& fault) {
    ++counts_.refused;
    first_fault_ = fault;
    piece_ = Piece::refused(piece_, piece_.finished, first_fault_);
    return piece_;
}

/// Every fault of the line is added to `cells`.
void Cutter::work_out(CellReader& cells) {
    if (piece_.name.empty()) {
        cells.add(Fault{Code::cell_missing, "a line needs a name"}, Column::name);
    }
    piece_.quantity = cells.quantity();
    piece_.finished = read_finished(cells);
    const BoundLine* line = find_line(cells);
    if (line != nullptr && line->route) {
        piece_.finished = line->route->length();
    }
    if (cells.fault_count() != 0) {
        return;
    }
    auto fault = work_out_piece(*line, *piece_.finished, piece_);
    if (!fault) {
        if (!settings_.lengths_only) {
            lay_out_work(*line, piece_);
        }
        fault = pairs_.check(piece_);
        piece_.chance_apart = pairs_.chance_apart(piece_);
    } else if (fault->fault.code == Code::buries_overlap) {
        fault->fault.text += ways_out(book_, *binder_, cells.job(), *line, *piece_.finished);
    }
    if (fault) {
        cells.add(*std::move(fault));
    }
}

const Piece& Cutter::cut(const JobRow& row, FaultSink& faults) {
    ++counts_.lines;
    row_faults_.clear();
    start_over(piece_, texts_of(row.line));
    if (row.fault != nullptr) {
        return refuse(*row.fault); // the reader has pushed it already
    }
    CellReader cells(row.line, row_faults_);
    work_out(cells);
    if (!row_faults_.empty()) {
        for (const Fault& fault : row_faults_) {
            faults.push(fault);
        }
        return refuse(row_faults_.front());
    }
    counts_.pieces += static_cast<std::size_t>(piece_.quantity);
    return piece_;
}

} // namespace libsplice
