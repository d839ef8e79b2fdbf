// A cut sheet for the printer and the browser: a card for each sort of line, then the office page.
#include "libsplice/sheet/drawing/bearing_sketch.h"
#include "libsplice/sheet/drawing/drawing.h"
#include "libsplice/sheet/drawing/strip.h"
#include "libsplice/sheet/html/card_pages.h"
#include "libsplice/sheet/html/card_style.h"
#include "libsplice/sheet/html/html_card.h"
#include "libsplice/sheet/html/html_format.h"
#include "libsplice/sheet/html/html_page.h"
#include "libsplice/sheet/html/html_style.h"
#include "libsplice/sheet/panel/office.h"

namespace libsplice {

namespace {

/// Above this, cards keep the job's order, for to look for neighbours takes longer than it saves.
constexpr std::size_t very_many = 300;

CardPictures pictures_of(const Piece& piece, const Card& card, UnitSystem units) {
    CardPictures pictures;
    if (piece.line == nullptr) {
        return pictures;
    }
    pictures.bar_shape = append_drawing(pictures.bar, piece, units);
    for (const CardEnd& end : card.ends) {
        std::string& sketch = pictures.ends.emplace_back();
        if (!piece.line->ends.closing) {
            const BoundEnd& bound = piece.line->end(end.end);
            append_bearing_sketch(sketch, bound.kind->declaration, *bound.allowance, end.end);
        }
        if (end.made) {
            const std::size_t before = pictures.strips.size();
            append_strip(pictures.strips, end, card.diameter);
            pictures.strip_count += pictures.strips.size() == before ? 0U : 1U;
        }
    }
    return pictures;
}

/// A card laid out: its blocks, and which of them lie together.
struct LaidOut {
    CardBlock head;
    std::vector<CardBlock> blocks;
    std::vector<std::size_t> parts; ///< how many blocks each has

    /// Of the last part, which shares its page with others.
    [[nodiscard]] double last_height(double next_head) const {
        double height = height_of_foot + (parts.size() == 1 ? head.height : next_head);
        for (std::size_t i = blocks.size() - parts.back(); i < blocks.size(); ++i) {
            height += blocks[i].height;
        }
        return height;
    }
};

class HtmlSheet : public SheetWriter {
  public:
    HtmlSheet(Output& output, const Book& book, const SheetOptions& options)
        : output_(output), book_(book), citing_(book), options_(options) {}

    void begin() override {}

    void piece(const Piece& piece) override { lines_.add(piece); }

    void end(const Counts& counts) override {
        const auto& entries = lines_.entries();
        std::string style(card_style);
        style += entries.size() > very_many ? style_of_long_sheet : std::string_view();
        output_.write(html_start("Cut sheet", style));
        for (const std::size_t at : order()) {
            write_card(entries[at], at + 1);
        }
        std::string office = "<section class=\"office\">\n<h2>For the office</h2>\n";
        {
            HtmlPage page(office);
            write_office(page, entries, counts, options_, book_, citing_);
        }
        output_.write(office + "</section>\n");
        output_.write(html_finish());
    }

  private:
    LaidOut lay_out(const LikeLines& lines, const Card& card, std::size_t number) const {
        LaidOut made{
            head_of_card(card, number),
            blocks_of(card, pictures_of(lines.piece(), card, options_.units), options_.units),
            {}};
        std::vector<double> heights;
        for (const CardBlock& block : made.blocks) {
            heights.push_back(block.height);
        }
        made.parts = parts_of_card(heights, made.head.height,
                                   short_head_of_card(card, number, 2, 2).height, height_of_foot);
        return made;
    }

    std::vector<std::size_t> order() {
        const auto& entries = lines_.entries();
        std::vector<double> heights;
        for (const LikeLines& lines : entries) {
            if (entries.size() > very_many) {
                heights.push_back(height_of_page);
                continue;
            }
            const Card card = card_of(lines, options_.units, citing_);
            heights.push_back(
                lay_out(lines, card, 1).last_height(short_head_of_card(card, 1, 2, 2).height));
        }
        return order_of_cards(heights);
    }

    void write_card(const LikeLines& lines, std::size_t number) {
        const Card card = card_of(lines, options_.units, citing_);
        const LaidOut made = lay_out(lines, card, number);
        const std::string of_all =
            "card " + std::to_string(number) + " of " + std::to_string(lines_.entries().size());
        std::size_t block = 0;
        for (std::size_t part = 0; part < made.parts.size(); ++part) {
            const bool first = part == 0;
            const bool last = part + 1 == made.parts.size();
            std::string html =
                "<article class=\"card\" id=\"card-" + std::to_string(number) +
                (first ? std::string() : "-" + std::to_string(part + 1)) + "\">\n" +
                (first ? made.head.html
                       : short_head_of_card(card, number, part + 1, made.parts.size()).html);
            for (std::size_t i = 0; i < made.parts[part]; ++i) {
                html += made.blocks[block++].html;
            }
            html += "<footer><p>" + of_all +
                    (made.parts.size() == 1 ? std::string()
                                            : ", part " + std::to_string(part + 1) + " of " +
                                                  std::to_string(made.parts.size())) +
                    "</p><p>" +
                    (last ? "tables " + book_.catalogue().version()
                          : std::string("goes on with the next part")) +
                    "</p></footer>\n</article>\n";
            output_.write(html);
        }
    }

    Output& output_;
    const Book& book_;
    CitationLog citing_;
    SheetOptions options_;
    Gathered lines_;
};

} // namespace

std::unique_ptr<SheetWriter> html_sheet(Output& output, const Book& book,
                                        const SheetOptions& options) {
    return std::make_unique<HtmlSheet>(output, book, options);
}

} // namespace libsplice
