// Facts that all sheets for people share, in the words of the bench.
#include "libsplice/sheet/panel/panel_facts.h"

#include "libsplice/base/version.h"
#include "libsplice/sheet/words/words.h"

#include <array>

namespace libsplice {

namespace {

constexpr std::array ledger_columns{PageColumn{29}, PageColumn{4}, PageColumn{17, true},
                                    PageColumn{9, true}, PageColumn{7}};
constexpr std::size_t indent_of_source = 8;

constexpr std::array<std::string_view, 5> care{
    "Follow the rope maker's own splicing instructions first.", "Test every line before use.",
    "Have a competent person inspect what carries a person.",   "Local rules come first.",
    "Nothing on this sheet says that a line is fit for use.",
};

} // namespace

std::string show_retained(const Retained& retained, CitationLog& citing) {
    return show_share(retained.share) + " of the rope's strength (" +
           std::string(citing.text(retained.source)) + ")";
}

void write_ledger(Page& page, std::span<const LedgerRow> ledger, std::string_view sum_name,
                  UnitSystem units, CitationLog& citing) {
    page.head(ledger_columns, std::array<std::string, 5>{"item", "end", "length", "sd", "group"});
    Nanometres sum = 0;
    for (const auto& [row, end] : ledger) {
        sum += row.length;
        page.row(ledger_columns,
                 std::array<std::string, 5>{
                     std::string(citing.names().of(row.item)),
                     std::string(end ? letter_of(*end) : "-"), show_length(row.length, units),
                     show_fine(Length(row.sd), units),
                     std::string(group_names()[static_cast<std::size_t>(row.group)])});
        page.row_note(citing.text(row.source), indent_of_source);
    }
    page.row(ledger_columns, std::array<std::string, 5>{std::string(sum_name), "",
                                                        show_length(sum, units), "", ""});
    page.paragraph("sd: standard deviation. Rows of one group err together: their sd add up with "
                   "their signs. Rows of group own err each on its own. The rows add up exactly "
                   "before they are rounded for this page.",
                   4);
}

void write_steps(Page& page, const TemplateContext& filling) {
    std::size_t number = 0;
    for (const Step& step : filling.allowance.steps) {
        std::string text;
        append_filled(text, step.text, filling);
        page.step(++number, text);
    }
}

void write_care(Page& page) {
    for (const std::string_view sentence : care) {
        page.paragraph(sentence, 2);
    }
}

void write_origin(Page& page, Credits credits, const CitationLog& citing) {
    page.fact("Made by",
              "libsplice " + std::string(version()) + ", tables " + credits.tables_version());
    for (const auto& plug_in : credits.plug_ins()) {
        page.fact("Plug-in", plug_in.name + ' ' + plug_in.version + ", " + plug_in.title);
    }
    if (citing.used().empty()) {
        return;
    }
    page.paragraph("Sources of the figures:", 2);
    for (const Source* source : citing.used()) {
        page.paragraph(source->title + " [" + source->key + "]", 4, 2);
    }
}

} // namespace libsplice
