// How much a rope stretches, and which size of another stretches no more, for people.
#include "libsplice/sheet/panel/stretch_answer.h"

#include "libsplice/sheet/panel/panel_facts.h"

#include <array>

namespace libsplice {

namespace {

constexpr std::string_view one_size_up_rule =
    "The common rule, to go up one size when a stiff core is given up, makes the stretch adequate "
    "at best, never equal.";

std::string show_load(const StretchAnswer& answer, UnitSystem units) {
    return answer.load.basis == Tension::Basis::share
               ? show_share(answer.load.value) + " of its breaking strength"
               : show_force(Force(answer.load.value), units);
}

std::string show_size(Length diameter, UnitSystem units) {
    return show_fine(diameter, units);
}

std::string show_longer(const RopeUnderLoad& rope, UnitSystem units) {
    return show_fine(rope.longer, units) + " longer, sd " + show_fine(rope.sd, units);
}

void write_sizes(Page& page, const EqualStretch& equal, UnitSystem units, CitationLog& citing) {
    constexpr std::array columns{PageColumn{30}, PageColumn{12, true}, PageColumn{16, true},
                                 PageColumn{16, true}};
    page.section("SIZES IN THE TABLES");
    page.head(columns, std::array<std::string, 4>{"rope", "diameter", "stretch", ""});
    for (const RopeUnderLoad& size : equal.sizes) {
        page.row(columns, std::array<std::string, 4>{
                              size.rope.id, show_size(size.rope.diameter, units),
                              show_fine(size.longer, units),
                              size.longer <= equal.known.longer ? "no more" : "more"});
        citing.use(size.source);
    }
}

void write_equal(Page& page, const EqualStretch& equal, UnitSystem units, CitationLog& citing) {
    page.section("A ROPE THAT STRETCHES NO MORE");
    page.fact("Reckoned from", equal.base.rope.id + ", which gets " +
                                   show_longer(equal.base, units) + ": " +
                                   show_number(equal.softer, 2) + " times as much (" +
                                   std::string(citing.text(equal.base.source)) + ")");
    page.fact("Equal stretch",
              equal.size ? show_size(*equal.size, units) +
                               " in diameter: strength, and with it stiffness, goes with the "
                               "square of the diameter"
                         : std::string("not known: print does not reach down to this stretch"));
    page.fact("In the tables", equal.no_more ? equal.sizes[*equal.no_more].rope.id +
                                                   " is the smallest that stretches no more"
                                             : std::string("no size stretches so little"));
    if (equal.one_size_up) {
        const RopeUnderLoad& up = equal.sizes[*equal.one_size_up];
        page.fact("One size up", up.rope.id + " gets " + show_longer(up, units) + ": " +
                                     show_number(up.longer / equal.known.longer, 2) +
                                     " times as much as " + equal.known.rope.id + ". " +
                                     std::string(one_size_up_rule));
    }
    if (!equal.sizes.empty()) {
        write_sizes(page, equal, units, citing);
    }
}

} // namespace

void write_stretch_answer(Page& page, const StretchAnswer& answer, Credits credits,
                          UnitSystem units) {
    CitationLog citing(credits);
    page.paragraph("STRETCH OF " + answer.known.rope.id, 0);
    page.fact("Load", show_load(answer, units));
    page.fact("Length", show_length(answer.length, units) + ", prestretched in, without load");
    page.fact("Gets", show_longer(answer.known, units) + " (" +
                          std::string(citing.text(answer.known.source)) + ")");
    if (answer.equal) {
        write_equal(page, *answer.equal, units, citing);
    }
    page.blank();
    page.rule('=');
    write_care(page);
    page.blank();
    write_origin(page, credits, citing);
}

} // namespace libsplice
