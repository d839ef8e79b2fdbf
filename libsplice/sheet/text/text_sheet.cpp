// A cut sheet as text, to be read at a bench: one panel a piece.
#include "libsplice/sheet/panel/panel_end.h"
#include "libsplice/sheet/panel/panel_heading.h"
#include "libsplice/sheet/panel/panel_person.h"
#include "libsplice/sheet/panel/panel_piece.h"
#include "libsplice/sheet/panel/panel_stretch.h"
#include "libsplice/sheet/text/text_format.h"
#include "libsplice/sheet/text/text_page.h"

namespace libsplice {

namespace {

class TextSheet : public SheetWriter {
  public:
    TextSheet(Output& output, const Book& book, const SheetOptions& options)
        : page_(output), book_(book), citing_(book), options_(options) {}

    void begin() override { page_.paragraph("CUT SHEET", 0); }

    void piece(const Piece& piece) override {
        page_.blank();
        write_title(page_, piece);
        if (piece.fault != nullptr) {
            write_refusal(page_, piece, options_.units);
            return;
        }
        write_heading(page_, piece, options_.units);
        write_stretch_facts(page_, piece, options_.units, citing_);
        write_work(piece);
        write_line_cautions(page_, piece, options_.units, citing_);
        write_strength(page_, piece, options_.units, citing_);
        write_person_rules(page_, piece, options_.units, citing_);
        use_sources_of(piece, citing_);
        if (options_.ledger || options_.working) {
            write_ledger_of_piece(page_, piece, options_, citing_);
        }
    }

    void end(const Counts& counts) override {
        page_.blank();
        page_.rule('=');
        write_foot(page_, counts, options_, book_, citing_);
    }

  private:
    /// What is done, in the order in which it is done.
    void write_work(const Piece& piece) {
        if (!piece.fit_first.empty()) {
            page_.blank();
            page_.fact("THREAD NOW", piece.fit_first);
        }
        const LineEnd first = piece.line->ends.first_end;
        write_end_of_piece(page_, piece, first, options_.units, citing_);
        write_check(page_, piece, options_.units);
        write_end_of_piece(page_, piece, other(first), options_.units, citing_);
        write_over(page_, piece, options_.units);
        page_.blank();
    }

    TextPage page_;
    const Book& book_;
    CitationLog citing_;
    SheetOptions options_;
};

} // namespace

std::unique_ptr<SheetWriter> text_sheet(Output& output, const Book& book,
                                        const SheetOptions& options) {
    return std::make_unique<TextSheet>(output, book, options);
}

} // namespace libsplice
