// Labels to tie to the coils.
#include "libsplice/base/text.h"
#include "libsplice/sheet/html/html_page.h"
#include "libsplice/sheet/html/html_text.h"
#include "libsplice/sheet/paper/paper.h"
#include "libsplice/sheet/paper/qr_code.h"

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

/// The size, in points, at which a text of so many letters still fits: smaller if there are more
/// than `letters` of them.
std::string size_for(std::string_view text, double points, double letters) {
    constexpr double smallest = 5.5;
    const double count = static_cast<double>(std::max<std::size_t>(1, character_count(text)));
    return " style=\"font-size: " +
           show_number(std::clamp(points * letters / count, smallest, points), 1) + "pt\"";
}

class Labels : public SheetWriter {
  public:
    Labels(Output& output, const SheetOptions& options, const LabelSheet& sheet)
        : output_(output), options_(options), sheet_(sheet) {}

    void begin() override {
        output_.write(html_start("Labels"));
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
        const std::string number =
            "line " + std::to_string(line_) +
            (piece.quantity == 1
                 ? std::string()
                 : ", " + std::to_string(of_quantity) + " of " + std::to_string(piece.quantity));
        const std::string cut = show_length(piece.cut, options_.units);
        const std::string record =
            "name: " + beginning(piece.name) + "\nboat: " + beginning(piece.boat) +
            "\nrope: " + beginning(piece.rope) + "\ncut: " + cut + "\n" + number + "\n";
        output_.write("<div class=\"label\"><div><p class=\"l-name\"" +
                      size_for(piece.name, 10.5, 22.0) + ">" + html_text(piece.name) + "</p><p>" +
                      html_text(piece.boat) + "</p><p>" + html_text(piece.rope) +
                      "</p><p class=\"l-cut\"" + size_for(cut, 15.0, 8.0) + ">" + html_text(cut) +
                      "</p><p>" + html_text(number) + "</p></div>" + qr_code(record) + "</div>\n");
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
