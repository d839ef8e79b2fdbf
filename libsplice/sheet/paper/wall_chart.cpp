// A wall chart: what each boat is roped with.
#include "libsplice/sheet/html/html_page.h"
#include "libsplice/sheet/html/html_text.h"
#include "libsplice/sheet/paper/paper.h"

#include <algorithm>
#include <map>
#include <vector>

namespace libsplice {

namespace {

/// A boat has one page; one with many lines is set smaller.
std::string size_on_paper(std::string_view rows) {
    const auto lines = std::ranges::count(rows, '\n');
    return lines > 26 ? " longest" : lines > 18 ? " long" : "";
}

class WallChart : public SheetWriter {
  public:
    WallChart(Output& output, const SheetOptions& options) : output_(output), options_(options) {}

    void begin() override {}

    void piece(const Piece& piece) override {
        const std::string boat(piece.boat.empty() ? "(no boat)" : piece.boat);
        const auto [at, is_new] = rows_.try_emplace(boat);
        if (is_new) {
            boats_.push_back(boat);
        }
        at->second += row_of(piece);
    }

    void end(const Counts& /*counts*/) override {
        output_.write(html_start("Wall chart"));
        output_.write("<style>@page { size: landscape; }</style>\n");
        std::vector<std::string> alike; // boats that are done
        for (const std::string& boat : boats_) {
            if (std::ranges::find(alike, boat) != alike.end()) {
                continue;
            }
            std::string title;
            for (const std::string& other : boats_) {
                if (rows_.at(other) == rows_.at(boat)) {
                    title += (title.empty() ? "" : ", ") + html_text(other);
                    alike.push_back(other);
                }
            }
            output_.write("<section class=\"chart" + size_on_paper(rows_.at(boat)) + "\"><h2>" +
                          title + "</h2>\n<table><thead><tr>");
            for (const std::string_view heading : {"line", "rope", "diameter"}) {
                output_.write("<th scope=\"col\">" + std::string(heading) + "</th>");
            }
            for (const std::string_view heading : {"finished", "cut"}) {
                output_.write("<th scope=\"col\" class=\"r\">" + std::string(heading) + "</th>");
            }
            output_.write("<th scope=\"col\">ends</th></tr></thead><tbody>\n");
            output_.write(rows_.at(boat));
            output_.write("</tbody></table></section>\n");
        }
        output_.write(html_finish());
    }

  private:
    std::string row_of(const Piece& piece) const {
        std::string row =
            "<tr><th scope=\"row\">" + html_text(piece.name.empty() ? "(no name)" : piece.name);
        if (piece.quantity != 1) {
            row += " &#215;&#160;" + std::to_string(piece.quantity);
        }
        row += "</th><td>" + html_text(piece.rope) + "</td>";
        if (piece.fault != nullptr) {
            return row + "<td></td><td class=\"r\"></td><td class=\"r\">not cut</td><td>" +
                   html_text(piece.fault->text) + "</td></tr>\n";
        }
        row += "<td>" +
               html_text(show_fine(piece.line->rope->counting_diameter(), options_.units)) +
               "</td><td class=\"r\">" +
               html_text(show_length(piece.finished.value_or(0), options_.units)) +
               "</td><td class=\"r\">" + html_text(show_length(piece.cut, options_.units)) +
               "</td><td>";
        row += html_text(piece.line->end(LineEnd::a).kind->declaration.name);
        if (!piece.line->ends.closing) {
            row += " / ";
            row += html_text(piece.line->end(LineEnd::b).kind->declaration.name);
        }
        return row + "</td></tr>\n";
    }

    Output& output_;
    SheetOptions options_;
    std::vector<std::string> boats_; ///< in the order of the job
    std::map<std::string, std::string, std::less<>> rows_;
};

} // namespace

std::unique_ptr<SheetWriter> wall_chart(Output& output, const SheetOptions& options) {
    return std::make_unique<WallChart>(output, options);
}

} // namespace libsplice
