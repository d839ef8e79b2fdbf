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

#include <algorithm>
#include <iterator>
#include <span>

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
            pictures.strips_height += append_strip(pictures.strips, end, card.diameter);
        }
    }
    return pictures;
}

/// A card, or the sheet of a method, laid out: its blocks, and which of them lie together.
struct LaidOut {
    std::string id;   ///< `card-7`, `method-K2`
    std::string name; ///< `card 7 of 33`, `sheet K2`
    CardBlock head;
    CardBlock next_head; ///< of its further parts
    std::vector<CardBlock> blocks;
    std::vector<CardPart> parts{};
    std::vector<double> heights{}; ///< of the parts, in millimetres

    void divide() {
        std::vector<double> of_blocks;
        std::ranges::transform(blocks, std::back_inserter(of_blocks), &CardBlock::height);
        parts = parts_of_card(of_blocks, head.height + height_of_foot,
                              next_head.height + height_of_foot);
        std::span<const double> rest(of_blocks);
        for (const CardPart& part : parts) {
            heights.push_back((heights.empty() ? head.height : next_head.height) + height_of_foot +
                              height_of_columns(rest, part));
            rest = rest.subspan(part.left + part.right);
        }
    }
};

class HtmlSheet : public SheetWriter {
  public:
    HtmlSheet(Output& output, Credits credits, const SheetOptions& options)
        : output_(output), credits_(credits), citing_(credits), options_(options) {}

    void begin() override {}

    void piece(const Piece& piece) override { lines_.add(piece); }

    void end(const Counts& counts) override {
        const auto& entries = lines_.entries();
        if (!options_.full) {
            methods_ = Methods(entries);
            std::ranges::copy_if(methods_.all(), std::back_inserter(sheets_),
                                 [](const Method& method) { return !method.id.empty(); });
        }
        std::string style(card_style);
        style += entries.size() > very_many ? style_of_long_sheet : std::string_view();
        output_.write(html_start("Cut sheet", style));
        for (const std::size_t at : order()) {
            write(lay_out(at));
        }
        std::string office = "<section class=\"office\">\n<h2>For the office</h2>\n";
        {
            HtmlPage page(office);
            write_office(page, entries, counts, options_, credits_, citing_);
        }
        output_.write(office + "</section>\n");
        output_.write(html_finish());
    }

  private:
    /// Cards come first, then the sheets of methods.
    LaidOut lay_out(std::size_t at) {
        const auto& entries = lines_.entries();
        return at < entries.size() ? lay_out_card(entries[at], at + 1)
                                   : lay_out_method(sheets_[at - entries.size()]);
    }

    LaidOut lay_out_card(const LikeLines& lines, std::size_t number) {
        const Card card = card_of(lines, methods_, options_.units, citing_);
        const CardPictures pictures = pictures_of(lines.piece(), card, options_.units);
        LaidOut made{"card-" + std::to_string(number),
                     "card " + std::to_string(number) + " of " +
                         std::to_string(lines_.entries().size()),
                     head_of_card(card, pictures, number), short_head_of_card(card, number),
                     blocks_of(card, pictures, options_.units)};
        made.divide();
        return made;
    }

    static LaidOut lay_out_method(const Method& method) {
        std::string picture;
        append_bearing_sketch(picture, method.made_by->declaration, *method.example);
        const CardBlock head = head_of_method(method, picture);
        LaidOut made{"method-" + method.id, "sheet " + method.id, head, head, blocks_of(method)};
        made.divide();
        return made;
    }

    std::vector<std::size_t> order() {
        const std::size_t count = lines_.entries().size() + sheets_.size();
        std::vector<double> heights;
        for (std::size_t at = 0; at < count; ++at) {
            heights.push_back(count > very_many ? height_of_page : lay_out(at).heights.back());
        }
        return order_of_cards(heights);
    }

    void write(const LaidOut& made) {
        std::span<const CardBlock> rest(made.blocks);
        for (std::size_t at = 0; at < made.parts.size(); ++at) {
            const CardPart& part = made.parts[at];
            const bool last = at + 1 == made.parts.size();
            const std::string of_parts = made.parts.size() == 1
                                             ? std::string()
                                             : ", part " + std::to_string(at + 1) + " of " +
                                                   std::to_string(made.parts.size());
            output_.write("<article class=\"card\" id=\"" + made.id +
                          (at == 0 ? std::string() : "-" + std::to_string(at + 1)) +
                          "\" data-height=\"" + show_number(made.heights[at], 1) + "\">\n" +
                          (at == 0 ? made.head.html : made.next_head.html));
            output_.write(columns_html(rest.first(part.left + part.right), part.left));
            rest = rest.subspan(part.left + part.right);
            output_.write("<footer><p>" + made.name + of_parts + "</p><p>" +
                          (last ? "tables " + credits_.tables_version()
                                : std::string("goes on with the next part")) +
                          "</p></footer>\n</article>\n");
        }
    }

    Output& output_;
    Credits credits_;
    CitationLog citing_;
    SheetOptions options_;
    Gathered lines_;
    Methods methods_;
    std::vector<Method> sheets_; ///< the methods that have one
};

} // namespace

std::unique_ptr<SheetWriter> html_sheet(Output& output, Credits credits,
                                        const SheetOptions& options) {
    return std::make_unique<HtmlSheet>(output, credits, options);
}

} // namespace libsplice
