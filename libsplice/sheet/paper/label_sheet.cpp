// Labels to tie to the coils.
#include "libsplice/sheet/html/html_page.h"
#include "libsplice/sheet/html/html_text.h"
#include "libsplice/sheet/paper/paper.h"
#include "libsplice/sheet/paper/paper_style.h"
#include "libsplice/sheet/paper/qr_code.h"
#include "libsplice/sheet/words/rope_words.h"

#include <algorithm>

namespace libsplice {

namespace {

constexpr std::size_t most_letters = 60; // of a name in the code; the label has it in full

std::string millimetres(double length) {
    return show_number(length, 2) + "mm";
}

/// The beginning of a text, cut between two characters.
std::string beginning(std::string_view text) {
    std::size_t end = std::min(text.size(), most_letters);
    while (end < text.size() && end != 0 &&
           (static_cast<unsigned char>(text[end]) & 0xC0U) == 0x80U) {
        --end;
    }
    return std::string(text.substr(0, end));
}

/// What a label's large line is set at, in points, so that it fits a label of that width.
std::string size_of_large(std::size_t letters, double width) {
    constexpr double largest = 24.0;
    constexpr double smallest = 12.0;
    constexpr double width_of_letter = 0.21; // of bold figures, in millimetres for each point
    const double room = width - 9.0;
    return show_number(std::clamp(room / (width_of_letter * static_cast<double>(letters)), smallest,
                                  largest),
                       1) +
           "pt";
}

class Labels : public SheetWriter {
  public:
    Labels(Output& output, const SheetOptions& options, const LabelSheet& sheet)
        : output_(output), options_(options), sheet_(sheet) {}

    void begin() override {
        output_.write(html_start("Labels", paper_style));
        output_.write("<style>@page { size: " + std::string(sheet_.page) +
                      "; margin: 0; } .label { width: " + millimetres(sheet_.width) + "; height: " +
                      millimetres(sheet_.height) + "; } .sheet { grid-template-columns: repeat(" +
                      std::to_string(sheet_.columns) + ", " + millimetres(sheet_.across) +
                      "); grid-auto-rows: " + millimetres(sheet_.down) +
                      "; padding: " + millimetres(sheet_.top) + " 0 0 " + millimetres(sheet_.left) +
                      "; }</style>\n");
    }

    void piece(const Piece& piece) override {
        ++line_;
        if (piece.fault != nullptr) {
            return;
        }
        for (std::int64_t i = 1; i <= piece.quantity && !output_.reader_gone(); ++i) {
            write_label(piece, i);
        }
    }

    void end(const Counts& /*counts*/) override {
        if (on_sheet_ != 0) {
            output_.write("</section>\n");
        }
        if (any_ == 0) {
            output_.write("<p>No line of this job can be cut.</p>\n");
        }
        output_.write(html_finish());
    }

  private:
    void write_label(const Piece& piece, std::int64_t of_quantity) {
        if (on_sheet_ == sheet_.columns * sheet_.rows) {
            output_.write("</section>\n");
            on_sheet_ = 0;
        }
        if (on_sheet_ == 0) {
            output_.write("<section class=\"sheet\">\n");
        }
        ++on_sheet_;
        ++any_;
        const UnitSystem units = options_.units;
        const std::string number =
            "line " + std::to_string(line_) +
            (piece.quantity == 1
                 ? std::string()
                 : ", " + std::to_string(of_quantity) + " of " + std::to_string(piece.quantity));
        const std::string cut = show_length(piece.cut, units);
        const std::string thick = size_of_rope(*piece.line->rope, units);
        const std::string rope = rope_in_words(*piece.line->rope, piece.colour, units);
        const std::string record =
            "name: " + beginning(piece.name) + "\nboat: " + beginning(piece.boat) +
            "\nrope: " + beginning(piece.rope) + "\ncut: " + cut + "\n" + number + "\n";
        output_.write(
            "<div class=\"label\"><div class=\"l-top\"><p class=\"l-name\">" +
            html_text(piece.name) + "</p><p class=\"l-no\">" + html_text(number) + "</p></div><p>" +
            html_text(piece.boat) + "</p><p class=\"l-big\" style=\"font-size: " +
            size_of_large(thick.size() + cut.size() + 2, sheet_.width) + "\"><span>" +
            html_text(thick) + "</span><span>" + html_text(cut) +
            "</span></p><div class=\"l-bottom\"><div><p>" + html_text(rope) + "</p><p>finished " +
            html_text(show_length(piece.finished.value_or(0), units)) + "</p><p>" +
            html_text(std::string(piece.end_a.empty() ? "bare" : piece.end_a) + " / " +
                      std::string(piece.end_b.empty() ? "bare" : piece.end_b)) +
            "</p></div>" + qr_code(record) + "</div></div>\n");
    }

    Output& output_;
    SheetOptions options_;
    const LabelSheet& sheet_;
    std::size_t line_ = 0;
    std::size_t any_ = 0;
    int on_sheet_ = 0;
};

} // namespace

std::unique_ptr<SheetWriter> label_sheet(Output& output, const SheetOptions& options,
                                         const LabelSheet& sheet) {
    return std::make_unique<Labels>(output, options, sheet);
}

} // namespace libsplice
