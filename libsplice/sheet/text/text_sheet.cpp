// A cut sheet as text: one table of the job, or the cards of its lines.
#include "libsplice/sheet/panel/office.h"
#include "libsplice/sheet/panel/panel_piece.h"
#include "libsplice/sheet/text/text_card.h"
#include "libsplice/sheet/text/text_format.h"
#include "libsplice/sheet/text/text_page.h"
#include "libsplice/sheet/text/text_table.h"

namespace libsplice {

namespace {

class TextSheet : public SheetWriter {
  public:
    TextSheet(Output& output, Credits credits, const SheetOptions& options)
        : output_(output), credits_(credits), citing_(credits), options_(options) {}

    void begin() override {}

    void piece(const Piece& piece) override { lines_.add(piece); }

    void end(const Counts& counts) override {
        TextPage page(output_);
        if (!options_.full) {
            write_table(output_, lines_.entries(), options_.units, citing_);
            if (options_.ledger) {
                write_ledgers(page);
            }
            page.blank();
            write_foot(page, counts, options_, credits_, citing_);
            return;
        }
        std::vector<const LikeLines*> cards;
        for (const LikeLines& lines : lines_.entries()) {
            cards.push_back(&lines);
            write_card(page, card_of(lines, Methods(), options_.units, citing_), cards.size(),
                       options_.units);
        }
        page.blank();
        page.rule('=');
        page.paragraph("FOR THE OFFICE", 0);
        write_office(page, lines_.entries(), counts, options_, credits_, citing_);
    }

  private:
    void write_ledgers(Page& page) {
        for (const LikeLines& lines : lines_.entries()) {
            const Piece& piece = lines.piece();
            if (piece.fault == nullptr) {
                page.blank();
                page.title(std::string(piece.name));
                write_ledger_of_piece(page, piece, options_, citing_);
            }
        }
    }

    Output& output_;
    Credits credits_;
    CitationLog citing_;
    SheetOptions options_;
    Gathered lines_;
};

} // namespace

std::unique_ptr<SheetWriter> text_sheet(Output& output, Credits credits,
                                        const SheetOptions& options) {
    return std::make_unique<TextSheet>(output, credits, options);
}

} // namespace libsplice
