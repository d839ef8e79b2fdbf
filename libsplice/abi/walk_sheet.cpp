// Looking through a sheet.
#include "libsplice/abi/records.h"
#include "libsplice/abi/sheet.h"

using namespace libsplice;
using namespace libsplice::abi;

namespace {

Result<const KeptPiece*> find_piece(const splice_sheet* sheet, std::uint64_t index) {
    if (sheet == nullptr) {
        return Unexpected(no_sheet());
    }
    const auto& pieces = sheet->sheet.pieces();
    if (index >= pieces.size()) {
        return Unexpected(wrong_call("there is no piece " + std::to_string(index) +
                                     ": the sheet has " + std::to_string(pieces.size())));
    }
    return &pieces[index];
}

/// One part of one piece: `first` and `count` say which stretch of `list` is the piece's.
template <class Record>
splice_status part_of(const splice_sheet* sheet, std::uint64_t piece_index, std::uint32_t index,
                      std::vector<Record> Parts::*list, std::size_t KeptPiece::*first,
                      std::uint32_t splice_piece::*count, Record* into, splice_fault* fault) {
    return guarded(fault, [&]() -> Outcome {
        const auto piece = find_piece(sheet, piece_index);
        if (!piece) {
            return piece.error();
        }
        const auto& all = sheet->sheet.parts().*list;
        const std::span own(all.data() + (*piece)->*first, (*piece)->record.*count);
        return hand_out_at(own, index, into);
    });
}

Outcome write_to(splice_fault* into, const Fault& fault) {
    if (into == nullptr) {
        return wrong_call("the record to fill is null");
    }
    report(fault, into);
    return std::nullopt;
}

} // namespace

std::uint64_t splice_sheet_piece_count(const splice_sheet* sheet) {
    return sheet == nullptr ? 0 : sheet->sheet.pieces().size();
}

splice_status splice_sheet_counts(const splice_sheet* sheet, splice_counts* counts,
                                  splice_fault* fault) {
    return guarded(fault, [&]() -> Outcome {
        if (sheet == nullptr) {
            return no_sheet();
        }
        const Counts& all = sheet->sheet.counts();
        return hand_out({0, 0, all.lines, all.pieces, all.refused}, counts);
    });
}

splice_status splice_sheet_piece(const splice_sheet* sheet, std::uint64_t index,
                                 splice_piece* piece, splice_fault* fault) {
    return guarded(fault, [&]() -> Outcome {
        const auto found = find_piece(sheet, index);
        return found ? hand_out((*found)->record, piece) : Outcome(found.error());
    });
}

splice_status splice_sheet_piece_fault(const splice_sheet* sheet, std::uint64_t index,
                                       splice_fault* why, splice_fault* fault) {
    return guarded(fault, [&]() -> Outcome {
        const auto found = find_piece(sheet, index);
        if (!found) {
            return found.error();
        }
        const auto refusal = (*found)->fault;
        return refusal ? write_to(why, sheet->sheet.refusals()[*refusal]) : std::nullopt;
    });
}

splice_status splice_sheet_row(const splice_sheet* sheet, std::uint64_t piece_index,
                               std::uint32_t index, splice_row* row, splice_fault* fault) {
    return part_of(sheet, piece_index, index, &Parts::rows, &KeptPiece::first_row,
                   &splice_piece::row_count, row, fault);
}

splice_status splice_sheet_mark(const splice_sheet* sheet, std::uint64_t piece_index,
                                std::uint32_t index, splice_mark* mark, splice_fault* fault) {
    return part_of(sheet, piece_index, index, &Parts::marks, &KeptPiece::first_mark,
                   &splice_piece::mark_count, mark, fault);
}

splice_status splice_sheet_caution(const splice_sheet* sheet, std::uint64_t piece_index,
                                   std::uint32_t index, splice_caution* caution,
                                   splice_fault* fault) {
    return part_of(sheet, piece_index, index, &Parts::cautions, &KeptPiece::first_caution,
                   &splice_piece::caution_count, caution, fault);
}

splice_status splice_sheet_step(const splice_sheet* sheet, std::uint64_t piece_index,
                                std::uint32_t index, splice_step* step, splice_fault* fault) {
    return part_of(sheet, piece_index, index, &Parts::steps, &KeptPiece::first_step,
                   &splice_piece::step_count, step, fault);
}

splice_status splice_sheet_lengths(const splice_sheet* sheet, std::uint64_t first,
                                   std::uint64_t count, double* cut_m, double* finished_m,
                                   std::int32_t* codes, splice_fault* fault) {
    return guarded(fault, [&]() -> Outcome {
        if (sheet == nullptr) {
            return no_sheet();
        }
        const auto& pieces = sheet->sheet.pieces();
        if (first > pieces.size() || count > pieces.size() - first) {
            return wrong_call("the sheet has " + std::to_string(pieces.size()) +
                              " pieces, fewer than are asked for");
        }
        for (std::uint64_t i = 0; i < count; ++i) {
            const splice_piece& piece = pieces[first + i].record;
            const auto put = [i](auto* into, auto value) {
                if (into != nullptr) {
                    into[i] = value;
                }
            };
            put(cut_m, piece.cut_m);
            put(finished_m, piece.finished_m);
            put(codes, piece.fault_code);
        }
        return std::nullopt;
    });
}

std::uint64_t splice_sheet_fault_count(const splice_sheet* sheet) {
    return sheet == nullptr ? 0 : sheet->sheet.faults().size();
}

splice_status splice_sheet_fault(const splice_sheet* sheet, std::uint64_t index,
                                 splice_fault* found, splice_fault* fault) {
    return guarded(fault, [&]() -> Outcome {
        if (sheet == nullptr) {
            return no_sheet();
        }
        const auto& faults = sheet->sheet.faults();
        if (index >= faults.size()) {
            return wrong_call("there is no fault " + std::to_string(index));
        }
        return write_to(found, faults[index]);
    });
}
