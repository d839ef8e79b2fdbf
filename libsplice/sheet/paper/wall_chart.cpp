// A wall chart, read from a metre away: what each boat is roped with.
#include "libsplice/sheet/html/html_page.h"
#include "libsplice/sheet/html/html_text.h"
#include "libsplice/sheet/panel/like_lines.h"
#include "libsplice/sheet/paper/paper.h"
#include "libsplice/sheet/paper/paper_style.h"
#include "libsplice/sheet/words/column_length.h"
#include "libsplice/sheet/words/rope_words.h"

#include <algorithm>
#include <array>
#include <map>
#include <vector>

namespace libsplice {

namespace {

std::string with_unit(std::string_view heading, UnitSystem units) {
    const std::string_view unit = metre_unit(units);
    return std::string(heading) + (unit.empty() ? "" : ", " + std::string(unit));
}

std::string ends_of(const Piece& piece) {
    const BoundLine& line = *piece.line;
    if (line.ends.closing) {
        return std::string(line.end(*line.ends.closing).kind->declaration.name);
    }
    return std::string(line.end(LineEnd::a).kind->declaration.name) + " / " +
           std::string(line.end(LineEnd::b).kind->declaration.name);
}

std::string cell(std::string_view css, std::string_view text) {
    return "<td class=\"" + std::string(css) + "\">" + html_text(text) + "</td>";
}

/// A chart of few rows is set larger, so that it fills its paper.
std::string size_on_paper(std::string_view rows) {
    const auto lines = std::ranges::count(rows, '\n');
    return lines <= 6 ? " few" : lines <= 10 ? " some" : " many";
}

class WallChart : public SheetWriter {
  public:
    WallChart(Output& output, const SheetOptions& options) : output_(output), options_(options) {}

    void begin() override {}

    void piece(const Piece& piece) override {
        const std::size_t number = lines_.add(piece);
        const std::string boat(piece.boat.empty() ? "(no boat)" : piece.boat);
        const auto [at, is_new] = rows_.try_emplace(boat);
        if (is_new) {
            boats_.push_back({boat, 1});
        }
        at->second += row_of(piece, number);
    }

    void end(const Counts& /*counts*/) override {
        output_.write(html_start("Wall chart", paper_style));
        output_.write("<style>@page { size: landscape; }</style>\n");
        std::vector<std::string> done;
        for (const BoatCount& boat : boats_) {
            const std::string& rows = rows_.at(boat.boat);
            if (std::ranges::find(done, rows) != done.end()) {
                continue;
            }
            done.push_back(rows);
            std::vector<BoatCount> alike;
            std::ranges::copy_if(boats_, std::back_inserter(alike), [&](const BoatCount& other) {
                return rows_.at(other.boat) == rows;
            });
            write_chart(boats_in_words(alike), rows);
        }
        output_.write(html_finish());
    }

  private:
    void write_chart(const std::string& title, const std::string& rows) {
        output_.write("<section class=\"chart" + size_on_paper(rows) + "\"><h2>" +
                      html_text(title) +
                      "</h2>\n<table><thead><tr><th scope=\"col\">line</th>"
                      "<th scope=\"col\">rope</th><th scope=\"col\" class=\"r\">thick</th>"
                      "<th scope=\"col\">colour</th>");
        for (const std::string_view heading : {"finished", "cut"}) {
            output_.write("<th scope=\"col\" class=\"r\">" + with_unit(heading, options_.units) +
                          "</th>");
        }
        output_.write("<th scope=\"col\">ends</th><th scope=\"col\" class=\"r\">card</th>"
                      "</tr></thead><tbody>\n");
        output_.write(rows);
        output_.write("</tbody></table></section>\n");
    }

    std::string row_of(const Piece& piece, std::size_t number) const {
        std::string row =
            "<tr><th scope=\"row\">" + html_text(piece.name.empty() ? "(no name)" : piece.name);
        if (piece.quantity != 1) {
            row += " &#215;&#160;" + std::to_string(piece.quantity);
        }
        row += "</th>";
        if (piece.fault != nullptr) {
            return row + cell("c-rope", piece.rope) +
                   "<td></td><td></td><td></td><td class=\"r c-cut\">not cut</td>" +
                   cell("c-ends", "see its card") + "<td class=\"r\">" + std::to_string(number) +
                   "</td></tr>\n";
        }
        const Rope& rope = *piece.line->rope;
        const UnitSystem units = options_.units;
        return row + cell("c-rope", make_of_rope(rope)) +
               cell("r c-thick", size_of_rope(rope, units)) +
               cell("c-colour",
                    piece.colour.empty() ? std::string_view(rope.colour) : piece.colour) +
               cell("r c-finished", metre_cell(piece.finished.value_or(0), units)) +
               cell("r c-cut", metre_cell(piece.cut, units)) + cell("c-ends", ends_of(piece)) +
               "<td class=\"r\">" + std::to_string(number) + "</td></tr>\n";
    }

    Output& output_;
    SheetOptions options_;
    Gathered lines_;               ///< numbers them as their cards are numbered
    std::vector<BoatCount> boats_; ///< in the order of the job
    std::map<std::string, std::string, std::less<>> rows_;
};

} // namespace

std::unique_ptr<SheetWriter> wall_chart(Output& output, const SheetOptions& options) {
    return std::make_unique<WallChart>(output, options);
}

} // namespace libsplice
