// One end for people: its allowance, row by row, and how it is made.
#include "libsplice/sheet/panel/end_panel.h"

#include "libsplice/allowance/values.h"
#include "libsplice/sheet/panel/panel_facts.h"
#include "libsplice/sheet/panel/panel_marks.h"
#include "libsplice/sheet/panel/panel_stretch.h"
#include "libsplice/sheet/words/ledger_group.h"
#include "libsplice/sheet/words/piece_text.h"

#include <array>

namespace libsplice {

namespace {

void write_values(Page& page, const End& allowance, const Names& names, UnitSystem units) {
    constexpr std::array columns{PageColumn{26}, PageColumn{20, true}};
    for (const Value& value : values_of(allowance)) {
        page.row(columns, std::array<std::string, 2>{show_name(names.of(value.name)),
                                                     show_value(value, names, units)});
    }
}

/// What is left of a buried tail after each pair, and what that makes of the rope over it.
void write_taper(Page& page, const End& allowance, const Names& names, UnitSystem units) {
    constexpr std::array columns{PageColumn{18}, PageColumn{15, true}, PageColumn{11, true},
                                 PageColumn{14, true}, PageColumn{10, true}};
    page.head(columns, std::array<std::string, 5>{"mark", "strands left", "section", "rope over it",
                                                  "thinner by"});
    for (const Thinning& pair : allowance.taper) {
        page.row(columns,
                 std::array<std::string, 5>{
                     std::string(names.of(pair.mark)), std::to_string(pair.strands_left),
                     show_number(pair.section, 2), show_fine(from_nanometres(pair.outside), units),
                     show_fine(from_nanometres(pair.step), units)});
    }
}

void write_cautions(Page& page, const End& allowance, UnitSystem units, CitationLog& citing) {
    for (const Caution& caution : allowance.cautions) {
        std::string text;
        append_filled(text, caution.text, {allowance, citing.names(), 0, units});
        append_rule(text, caution.rule, citing);
        page.fact("CAUTION", text);
    }
}

} // namespace

void EndPanel::title() const {
    const auto& declaration = sheet.kind;
    page.title(std::string(declaration.name) + ", " + std::string(declaration.title));
    page.large("ALLOWANCE", show_length(sheet.allowance.total(), units));
    page.fact("Rope", sheet.rope.title == sheet.rope.id ? sheet.rope.id
                                                        : sheet.rope.id + ", " + sheet.rope.title);
    page.fact("Marks are for",
              "rope " + show_fine(sheet.rope.counting_diameter(), units) + " in diameter");
    page.fact("Beyond", declaration.datum);
}

void EndPanel::ledger() const {
    page.section("LEDGER");
    write_ledger(page, ledger_of(sheet.allowance), "allowance", units, citing);
}

void EndPanel::marks() const {
    page.section("MARKS");
    write_marks(page, marks_of(sheet.allowance), credits.names(), units);
}

void EndPanel::figures() const {
    if (!sheet.allowance.taper.empty()) {
        page.section("TAPER");
        write_taper(page, sheet.allowance, credits.names(), units);
    }
    if (!values_of(sheet.allowance).empty()) {
        page.section("FIGURES");
        write_values(page, sheet.allowance, credits.names(), units);
    }
}

void EndPanel::work() const {
    page.section("STEPS IN ORDER");
    write_steps(page, {sheet.allowance, credits.names(), 0, units});
    page.blank();
    write_cautions(page, sheet.allowance, units, citing);
    page.fact("Strength", sheet.allowance.retained
                              ? show_retained(*sheet.allowance.retained, citing)
                              : std::string("no source says what this end retains"));
    page.fact("Stretch", show_printed_stretch(sheet.stretch, citing));
}

void EndPanel::foot() const {
    page.blank();
    page.rule('=');
    write_care(page);
    page.blank();
    write_origin(page, credits, citing);
}

} // namespace libsplice
