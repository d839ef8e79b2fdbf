// A cut sheet as CSV: one row a line, written from buffers that are used again.
#include "libsplice/sheet/csv/csv_cells.h"
#include "libsplice/sheet/csv/csv_format.h"
#include "libsplice/sheet/words/piece_text.h"

namespace libsplice {

namespace {

class CsvSheet : public SheetWriter {
  public:
    CsvSheet(Output& output, Credits credits, UnitSystem units)
        : output_(output), citing_(credits), units_(units) {}

    void begin() override {
        row_ = "name,boat,quantity,rope,finished";
        row_ += length_suffix(units_);
        row_ += ",cut";
        row_ += length_suffix(units_);
        row_ += ",end_a,end_b,retained_strength,cautions,error_code,error\n";
        output_.write(row_);
    }

    void piece(const Piece& piece) override {
        row_.clear();
        add(piece.name);
        add(piece.boat);
        append_number_cell(row_, piece.quantity);
        row_ += ',';
        add(piece.rope);
        if (piece.finished) {
            append_length_cell(row_, *piece.finished, units_);
        }
        row_ += ',';
        if (piece.fault == nullptr) {
            append_length_cell(row_, piece.cut, units_);
        }
        row_ += ',';
        add(piece.end_a);
        add(piece.end_b);
        if (piece.strength.retained) {
            append_number_cell(row_, piece.strength.retained->share);
        }
        row_ += ',';
        add_cautions(piece);
        if (piece.fault != nullptr) {
            append_number_cell(row_, static_cast<std::int64_t>(piece.fault->code));
            row_ += ',';
            append_text_cell(row_, piece.fault->text);
        } else {
            row_ += ',';
        }
        row_ += '\n';
        output_.write(row_);
    }

    void end(const Counts& /*counts*/) override {}

  private:
    void add(std::string_view text) {
        append_text_cell(row_, text);
        row_ += ',';
    }

    void add_cautions(const Piece& piece) {
        cautions_.clear();
        for (const PieceCaution& caution : piece.cautions) {
            if (!cautions_.empty()) {
                cautions_ += "; ";
            }
            append_caution_with_end(cautions_, piece, caution, units_, citing_);
        }
        add(cautions_);
    }

    Output& output_;
    CitationLog citing_;
    UnitSystem units_;
    std::string row_;
    std::string cautions_;
};

} // namespace

std::unique_ptr<SheetWriter> csv_sheet(Output& output, Credits credits,
                                       const SheetOptions& options) {
    return std::make_unique<CsvSheet>(output, credits, options.units);
}

} // namespace libsplice
