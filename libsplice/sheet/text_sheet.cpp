// A cut sheet as text, to be read at a bench: one panel a piece.
#include "libsplice/sheet/person_rules.h"
#include "libsplice/sheet/piece_text.h"
#include "libsplice/sheet/text_end.h"
#include "libsplice/sheet/text_facts.h"
#include "libsplice/sheet/text_heading.h"
#include "libsplice/sheet/text_page.h"
#include "libsplice/sheet/text_stretch.h"
#include "libsplice/sheet/words.h"
#include "libsplice/sheet/working.h"
#include "libsplice/sheet/writers.h"

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
        write_line_cautions(piece);
        write_strength(piece);
        write_person_rules(page_, piece, options_.units, citing_);
        write_rows(piece);
    }

    void end(const Counts& counts) override {
        page_.blank();
        page_.rule('=');
        page_.fact("On this sheet", "lines: " + std::to_string(counts.lines) +
                                        "; pieces to cut: " + std::to_string(counts.pieces) +
                                        "; lines not cut: " + std::to_string(counts.refused));
        page_.blank();
        write_care(page_);
        page_.blank();
        page_.fact("Spare", "for a risk of " + show_share(options_.risk));
        write_origin(page_, book_, citing_);
    }

  private:
    /// What is done, in the order in which it is done.
    void write_work(const Piece& piece) {
        if (!piece.thread.empty()) {
            page_.blank();
            page_.fact("THREAD NOW", piece.thread);
        }
        const End first = piece.plan->made_first;
        write_end_of_piece(page_, piece, first, options_.units, citing_);
        write_check(page_, piece, options_.units);
        write_end_of_piece(page_, piece, other(first), options_.units, citing_);
        write_over(page_, piece, options_.units);
        page_.blank();
    }

    void write_line_cautions(const Piece& piece) {
        for (const PieceCaution& caution : piece.cautions) {
            if (!caution.end) {
                std::string text;
                append_caution(text, piece, caution, options_.units, citing_);
                page_.fact("CAUTION", text);
            }
        }
    }

    /// The ends of which no source says what they lose.
    static std::string uncounted(const Piece& piece) {
        std::string text;
        for (const End end : {End::a, End::b}) {
            const Allowance& allowance = *piece.plan->end(end).allowance;
            if (piece.plan->counts(end) && allowance.made && !allowance.retained) {
                text += (text.empty() ? "; not counted, for no source gives it: end " : ", end ") +
                        std::string(letter_of(end));
            }
        }
        return text;
    }

    void write_strength(const Piece& piece) {
        if (piece.retained && piece.weaker) {
            page_.fact("Strength",
                       "end " + std::string(letter_of(*piece.weaker)) + " retains " +
                           show_retained(*piece.retained, citing_) +
                           ", the least that a source gives; pins, bends and fittings are "
                           "not counted");
        } else {
            page_.fact("Strength", "no source says what these ends retain");
        }
        if (piece.design_factor) {
            page_.fact("Design factor",
                       std::string(uncounted(piece).empty() ? "" : "at most ") +
                           show_number(*piece.design_factor, 1) +
                           ", breaking strength that is retained over the stated load of " +
                           show_force(*piece.plan->load, options_.units) + uncounted(piece));
        } else if (piece.plan->person) {
            page_.fact("Design factor", "not known: it needs the load and the rope's breaking "
                                        "strength");
        }
    }

    /// The ledger, if it is asked for; its documents count as used either way.
    void write_rows(const Piece& piece) {
        for (const LedgerRow& entry : piece.ledger) {
            citing_.use(entry.row.source);
        }
        if (options_.working) {
            page_.section("LEDGER, WORKED OUT");
            write_working(page_, piece, options_.units, citing_);
            write_lengths_at_pulls(page_, piece, options_.units, citing_);
        } else if (options_.ledger) {
            page_.section("LEDGER");
            write_ledger(page_, piece.ledger, "cut length", options_.units, citing_);
        }
    }

    TextPage page_;
    const Book& book_;
    Citing citing_;
    SheetOptions options_;
};

} // namespace

std::unique_ptr<SheetWriter> text_sheet(Output& output, const Book& book,
                                        const SheetOptions& options) {
    return std::make_unique<TextSheet>(output, book, options);
}

} // namespace libsplice
