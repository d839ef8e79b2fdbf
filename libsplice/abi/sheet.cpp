// Cuts the lines that a host adds, and hands each piece to the host's writer.
#include "libsplice/abi/sheet.h"

#include "libsplice/sheet/words/piece_text.h"

#include <vector>

namespace libsplice::abi {

namespace {

double metres_or_unknown(std::optional<Nanometres> length) {
    return length ? from_nanometres(*length).si() : not_known;
}

/// The figures of a piece that is cut.
void put_figures(const Piece& piece, splice_piece& record) {
    const BoundLine& plan = *piece.line;
    record.cut_nm = piece.cut;
    record.cut_m = from_nanometres(piece.cut).si();
    record.between_marks_m = from_nanometres(piece.between_marks).si();
    record.check_reads_m = piece.check ? from_nanometres(piece.check->reads).si() : not_known;
    record.marking_tension_n =
        plan.states.marking_tension > Force() ? plan.states.marking_tension.si() : not_known;
    record.retained_strength = piece.strength.retained ? piece.strength.retained->share : not_known;
    record.design_factor = piece.strength.design_factor.value_or(not_known);
    record.outside_tolerance = piece.chance_outside.value_or(not_known);
    record.first_end = number_of(plan.ends.first_end);
}

/// Those of a piece that is refused.
void put_no_figures(splice_piece& record) {
    for (double splice_piece::*figure :
         {&splice_piece::cut_m, &splice_piece::between_marks_m, &splice_piece::check_reads_m,
          &splice_piece::marking_tension_n, &splice_piece::retained_strength,
          &splice_piece::design_factor, &splice_piece::outside_tolerance}) {
        record.*figure = not_known;
    }
}

/// The cells as a job reads them.
Result<std::vector<NamedCell>> named_cells(std::span<const splice_cell> cells) {
    std::vector<NamedCell> named;
    named.reserve(cells.size());
    for (const splice_cell& cell : cells) {
        if (cell.name == nullptr || *cell.name == '\0') {
            return Unexpected(
                Fault{Code::wrong_call, "a cell has no name; it must be a column of a job file"});
        }
        named.push_back({cell.name, text_of(cell.text)});
    }
    return named;
}

} // namespace

OnRow Sheet::cut_into(FaultSink& faults) {
    return [this, &faults](const JobRow& row) {
        keep(cutter_.cut(row, faults));
        return true;
    };
}

std::optional<Fault> Sheet::cut_all(Reader read, Input input, FaultSink& faults) {
    const auto whole = read(input, book_.book.field_names(), faults, cut_into(faults));
    return whole ? std::nullopt : std::optional(whole.error());
}

std::optional<Fault> Sheet::add(Reader read, std::string_view text, std::string name) {
    return cut_all(read, Input::of_text(text, std::move(name)), faults_);
}

std::optional<Fault> Sheet::add_line(std::span<const splice_cell> cells) {
    const auto named = named_cells(cells);
    if (!named) {
        return named.error();
    }
    const std::size_t pieces_before = pieces_.size();
    FaultSink faults;
    const auto whole =
        read_line_of_cells(*named, book_.book.field_names(), faults, cut_into(faults));
    for (const Fault& fault : faults.kept()) {
        faults_.push(fault);
    }
    if (!whole) {
        return whole.error();
    }
    if (pieces_.size() == pieces_before) {
        return Fault{Code::cell_missing, "every cell of the line is empty"};
    }
    return std::nullopt;
}

void Sheet::clear() {
    faults_ = FaultSink();
    texts_.clear();
    parts_.clear();
    pieces_.clear();
    refusals_.clear();
}

void Sheet::keep(const Piece& piece) {
    KeptPiece kept{
        {}, parts_.rows.size(), parts_.marks.size(), parts_.cautions.size(), parts_.steps.size(),
        {}};
    keep_texts(piece, kept.record);
    kept.record.quantity = piece.quantity;
    kept.record.finished_m = metres_or_unknown(piece.finished);
    if (piece.fault != nullptr) {
        put_no_figures(kept.record);
        kept.record.fault_code = static_cast<std::int32_t>(piece.fault->code);
        kept.fault = refusals_.size();
        refusals_.push_back(*piece.fault);
    } else {
        put_figures(piece, kept.record);
        PartsWriter writer(book_, texts_, parts_);
        keep_parts(piece, writer);
    }
    const auto added = [](const auto& parts, std::size_t first) {
        return static_cast<std::uint32_t>(parts.size() - first);
    };
    kept.record.row_count = added(parts_.rows, kept.first_row);
    kept.record.mark_count = added(parts_.marks, kept.first_mark);
    kept.record.caution_count = added(parts_.cautions, kept.first_caution);
    kept.record.step_count = added(parts_.steps, kept.first_step);
    pieces_.push_back(kept);
}

void Sheet::keep_texts(const Piece& piece, splice_piece& record) {
    record.name = texts_.keep(piece.name);
    record.boat = texts_.keep(piece.boat);
    record.rope = texts_.keep(piece.rope);
    record.end_a = texts_.keep(piece.end_a);
    record.end_b = texts_.keep(piece.end_b);
    record.state = texts_.keep(piece.state);
    record.pair = texts_.keep(piece.pair);
    record.fit_first = texts_.keep(piece.fit_first);
    record.lot = texts_.keep(piece.lot);
    record.colour = texts_.keep(piece.colour);
    record.note = texts_.keep(piece.note);
}

void Sheet::keep_parts(const Piece& piece, PartsWriter& writer) {
    writer.add_ledger(piece.ledger, "line");
    for (const PieceMark& mark : piece.marks) {
        writer.add_mark(mark.end, mark.name, mark.from_end);
    }
    for (const auto& [caution, end, amounts] : piece.cautions) {
        if (end) {
            TemplateContext filling = filling_of(piece, *end, UnitSystem::metric);
            filling.amounts = amounts;
            writer.add_caution(caution, end, &filling);
        } else {
            std::string text;
            append_amounts(text, caution.text, amounts, UnitSystem::metric);
            writer.add_caution({text, caution.rule, caution.weight}, end, nullptr);
        }
    }
    if (with_steps_) {
        for (const PieceStep& step : piece.steps) {
            std::string text;
            append_step(text, piece, step, UnitSystem::metric);
            writer.add_step(step.end, text);
        }
    }
}

} // namespace libsplice::abi
