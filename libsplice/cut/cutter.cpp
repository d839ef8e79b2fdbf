#include "libsplice/cut/cutter.h"

#include "libsplice/cut/bind/route.h"
#include "libsplice/cut/ledger.h"
#include "libsplice/job/vocabulary.h"

namespace libsplice {

namespace {

/// Plans, ropes and ends are kept for lines to come, up to this many; then all start over. It
/// bounds the memory of a job whose every line is different.
constexpr std::size_t most_kept = 20'000;

} // namespace

Cutter::Cutter(const Book& book, const CutSettings& settings)
    : book_(book), settings_(settings), binder_(std::make_unique<LineBinder>(book, settings)) {}

void Cutter::read_names(const JobLine& line) {
    piece_.name = line.text(Column::name);
    piece_.boat = line.text(Column::boat);
    piece_.rope = line.text(Column::rope);
    piece_.end_a = line.text(Column::end_a).empty() ? "bare" : line.text(Column::end_a);
    piece_.end_b = line.text(Column::end_b).empty() ? "bare" : line.text(Column::end_b);
    piece_.state = line.text(Column::state);
    piece_.pair = line.text(Column::pair);
    piece_.fit_first = line.text(Column::fit_first);
    piece_.lot = line.text(Column::lot);
    piece_.colour = line.text(Column::colour);
    piece_.note = line.text(Column::note);
}

const LinePlan* Cutter::find_plan(const JobLine& line) {
    plan_key_.assign(line.plan_key);
    const auto known = plans_.find(plan_key_);
    if (known != plans_.end()) {
        return &known->second;
    }
    if (plans_.size() >= most_kept || binder_->size() >= most_kept) {
        plans_.clear();
        binder_ = std::make_unique<LineBinder>(book_, settings_);
    }
    auto plan = binder_->bind(line, row_faults_);
    if (!plan) {
        return nullptr;
    }
    return &plans_.emplace(plan_key_, *std::move(plan)).first->second;
}

std::optional<Nanometres> Cutter::read_finished(const JobLine& line) {
    LineFields fields(line, row_faults_);
    const bool has_length = !line.text(Column::length).empty();
    if (has_length && has_route(line)) {
        fields.add(Fault{Code::length_or_route, "give a length or a route, not both"},
                   Column::length);
        return std::nullopt;
    }
    if (!has_length && !has_route(line)) {
        fields.add(Fault{Code::length_or_route, "a line needs its finished length, or a route"},
                   Column::length);
        return std::nullopt;
    }
    return fields.length(Column::length, 1);
}

const Piece& Cutter::refuse(FaultSink& faults) {
    for (const Fault& fault : row_faults_) {
        faults.push(fault);
    }
    return refuse(row_faults_.front());
}

const Piece& Cutter::refuse(const Fault& fault) {
    ++counts_.refused;
    first_fault_ = fault;
    piece_.plan = nullptr;
    piece_.fault = &first_fault_;
    piece_.cut = 0;
    piece_.ledger.clear();
    piece_.marks.clear();
    piece_.cautions.clear();
    piece_.check.reset();
    piece_.outside.reset();
    piece_.retained.reset();
    piece_.weaker.reset();
    piece_.design_factor.reset();
    return piece_;
}

const Piece& Cutter::cut(const JobRow& row, FaultSink& faults) {
    const JobLine& line = row.line;
    ++counts_.lines;
    row_faults_.clear();
    read_names(line);
    piece_.fault = nullptr;
    piece_.finished.reset();
    piece_.quantity = 1;
    if (row.fault != nullptr) {
        return refuse(*row.fault); // the reader has pushed it already
    }
    LineFields fields(line, row_faults_);
    if (piece_.name.empty()) {
        fields.add(Fault{Code::cell_missing, "a line needs a name"}, Column::name);
    }
    piece_.quantity = fields.quantity();
    piece_.finished = read_finished(line);
    const LinePlan* plan = find_plan(line);
    if (plan != nullptr && plan->route) {
        piece_.finished = plan->route->length();
    }
    if (!row_faults_.empty()) {
        return refuse(faults);
    }
    if (auto fault = fold(*plan, *piece_.finished, piece_)) {
        const Column column = find_column(fault->field).value_or(Column::length);
        fault->at = line.place(line.cell(column));
        row_faults_.push_back(*std::move(fault));
        return refuse(faults);
    }
    if (auto fault = pairs_.check(piece_)) {
        fault->at = line.place(line.cell(Column::pair));
        row_faults_.push_back(*std::move(fault));
        return refuse(faults);
    }
    counts_.pieces += static_cast<std::size_t>(piece_.quantity);
    return piece_;
}

} // namespace libsplice
