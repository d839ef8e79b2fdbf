// A cut sheet for the browser and the printer: a summary, then a panel a piece with its drawing.
#include "libsplice/sheet/drawing/bearing_sketch.h"
#include "libsplice/sheet/drawing/drawing.h"
#include "libsplice/sheet/html/html_format.h"
#include "libsplice/sheet/html/html_page.h"
#include "libsplice/sheet/html/html_style.h"
#include "libsplice/sheet/html/html_text.h"
#include "libsplice/sheet/html/page_fit.h"
#include "libsplice/sheet/panel/panel_end.h"
#include "libsplice/sheet/panel/panel_heading.h"
#include "libsplice/sheet/panel/panel_person.h"
#include "libsplice/sheet/panel/panel_piece.h"
#include "libsplice/sheet/panel/panel_stretch.h"

namespace libsplice {

namespace {

/// The panels wait until the summary, which stands before them, is known.
class HtmlSheet : public SheetWriter {
  public:
    HtmlSheet(Output& output, const Book& book, const SheetOptions& options)
        : output_(output), book_(book), citing_(book), options_(options) {}

    void begin() override {}

    void piece(const Piece& piece) override {
        ++lines_;
        add_to_summary(piece);
        std::string drawing;
        const double shape =
            piece.fault != nullptr ? 0.0 : append_drawing(drawing, piece, options_.units);
        const PageFit fit = fit_on_page(piece, shape);
        panels_ += "<article id=\"line-" + std::to_string(lines_) + "\"" +
                   (fit.abreast ? " class=\"abreast\"" : "") +
                   " style=\"--size:" + show_number(fit.size, 2) + "\">\n";
        HtmlPage page(panels_);
        write_title(page, piece);
        page.close();
        panels_ += "<p class=\"short\">Line " + std::to_string(lines_) + " of this job</p>\n";
        if (piece.fault != nullptr) {
            write_refusal(page, piece, options_.units);
        } else {
            write_panel(page, piece, drawing);
        }
        page.close();
        panels_ += "</article>\n";
    }

    void end(const Counts& counts) override {
        output_.write(html_start("Cut sheet"));
        if (lines_ > 1) {
            output_.write("<section><h2>Summary</h2>\n<table><thead><tr><th scope=\"col\">line</th>"
                          "<th scope=\"col\">boat</th><th scope=\"col\">rope</th>"
                          "<th scope=\"col\" class=\"r\">make</th>"
                          "<th scope=\"col\" class=\"r\">cut</th></tr></thead><tbody>\n");
            output_.write(summary_);
            output_.write("</tbody></table></section>\n");
        }
        constexpr std::size_t very_many = 300;
        if (lines_ > very_many) {
            output_.write(style_of_long_sheet);
        }
        output_.write(panels_);
        std::string foot = "<footer>\n";
        {
            HtmlPage page(foot);
            page.section("About this sheet");
            write_foot(page, counts, options_, book_, citing_);
        }
        output_.write(foot + "</footer>\n");
        output_.write(html_finish());
    }

  private:
    void add_to_summary(const Piece& piece) {
        summary_ += "<tr><th scope=\"row\"><a href=\"#line-" + std::to_string(lines_) + "\">" +
                    std::to_string(lines_) + "&#160;" +
                    html_text(piece.name.empty() ? "(no name)" : piece.name) + "</a></th><td>" +
                    html_text(piece.boat) + "</td><td>" + html_text(piece.rope) +
                    "</td><td class=\"r\">" + std::to_string(piece.quantity) +
                    "</td><td class=\"r\">" +
                    (piece.fault != nullptr ? std::string("not cut")
                                            : html_text(show_length(piece.cut, options_.units))) +
                    "</td></tr>\n";
    }

    void write_panel(HtmlPage& page, const Piece& piece, const std::string& drawing) {
        write_heading(page, piece, options_.units);
        write_stretch_facts(page, piece, options_.units, citing_);
        page.close();
        panels_ += "<div class=\"draw\">" + drawing + "</div>\n";
        page.fact("THREAD NOW", piece.fit_first);
        write_work(page, piece);
        page.write_in({"Finished length read"});
        write_line_cautions(page, piece, options_.units, citing_);
        write_strength(page, piece, options_.units, citing_);
        write_person_rules(page, piece, options_.units, citing_);
        use_sources_of(piece, citing_);
        page.close();
        panels_ += options_.ledger || options_.working ? "<details open>" : "<details>";
        panels_ += "<summary>Ledger: where every millimetre comes from</summary>\n";
        write_ledger_of_piece(page, piece, options_, citing_);
        page.close();
        panels_ += "</details>\n";
    }

    /// End by end, the first one's check below it.
    void write_work(HtmlPage& page, const Piece& piece) {
        const LineEnd first = piece.line->ends.first_end;
        panels_ += "<div class=\"ends\">\n<section>\n";
        append_sketch(piece, first);
        write_end_of_piece(page, piece, first, options_.units, citing_);
        write_check(page, piece, options_.units);
        page.close();
        panels_ += "</section>\n<section>\n";
        append_sketch(piece, other(first));
        write_end_of_piece(page, piece, other(first), options_.units, citing_);
        write_over(page, piece, options_.units);
        page.close();
        panels_ += "</section>\n</div>\n";
    }

    /// Of an end that the finished length is measured to; a closed line is measured round.
    void append_sketch(const Piece& piece, LineEnd end) {
        if (!piece.line->ends.closing) {
            const BoundEnd& plan = piece.line->end(end);
            append_bearing_sketch(panels_, plan.kind->declaration, *plan.allowance, end);
        }
    }

    Output& output_;
    const Book& book_;
    CitationLog citing_;
    SheetOptions options_;
    std::size_t lines_ = 0;
    std::string summary_;
    std::string panels_;
};

} // namespace

std::unique_ptr<SheetWriter> html_sheet(Output& output, const Book& book,
                                        const SheetOptions& options) {
    return std::make_unique<HtmlSheet>(output, book, options);
}

} // namespace libsplice
