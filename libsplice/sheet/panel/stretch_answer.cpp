#include "libsplice/sheet/panel/stretch_answer.h"

#include "libsplice/sheet/csv/csv_cells.h"
#include "libsplice/sheet/html/html_page.h"
#include "libsplice/sheet/json/json_parts.h"
#include "libsplice/sheet/panel/panel_facts.h"
#include "libsplice/sheet/text/text_page.h"

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

void write_sizes(Page& page, const EqualStretch& equal, UnitSystem units, Citing& citing) {
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

void write_equal(Page& page, const EqualStretch& equal, UnitSystem units, Citing& citing) {
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

void write_on(Page& page, const StretchAnswer& answer, const Book& book, UnitSystem units) {
    Citing citing(book);
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
    write_origin(page, book, citing);
}

void write_text(const StretchAnswer& answer, Output& output, const Book& book, UnitSystem units) {
    TextPage page(output);
    write_on(page, answer, book, units);
}

void write_html(const StretchAnswer& answer, Output& output, const Book& book, UnitSystem units) {
    std::string text = html_start("Stretch");
    {
        HtmlPage page(text);
        write_on(page, answer, book, units);
    }
    output.write(text);
    output.write(html_finish());
}

void write_csv(const StretchAnswer& answer, Output& output, UnitSystem units) {
    const bool metric = units == UnitSystem::metric;
    output.write(metric ? "rope,diameter_m,stretch_m,sd_m\n"
                        : "rope,diameter_in,stretch_in,sd_in\n");
    std::string row;
    const auto write_row = [&](const RopeUnderLoad& loaded) {
        row.clear();
        append_text_cell(row, loaded.rope.id);
        for (const Length length : {loaded.rope.diameter, loaded.longer}) {
            row += ',';
            append_length_cell(row, to_nanometres(length), units);
        }
        row += ',';
        append_number_cell(row, metric ? loaded.sd.si() : loaded.sd.si() / metres_per_inch);
        row += '\n';
        output.write(row);
    };
    write_row(answer.known);
    if (answer.equal) {
        for (const RopeUnderLoad& size : answer.equal->sizes) {
            write_row(size);
        }
    }
}

void write_rope(JsonText& json, const RopeUnderLoad& loaded, Citing& citing) {
    json.begin_object();
    json.text("rope", loaded.rope.id);
    json.metres("diameter_m", to_nanometres(loaded.rope.diameter));
    json.number("breaking_n", loaded.rope.breaking ? std::optional(loaded.rope.breaking->value.si())
                                                   : std::nullopt);
    json.number("strain", loaded.strain);
    json.metres("stretch_m", to_nanometres(loaded.longer));
    json.number("sd_m", loaded.sd.si());
    json.text("source", citing.text(loaded.source));
    json.end_object();
}

void write_choice(JsonText& json, std::string_view name, const EqualStretch& equal,
                  const std::optional<std::size_t>& choice) {
    json.key(name);
    choice ? json.text(equal.sizes[*choice].rope.id) : json.null();
}

void write_json(const StretchAnswer& answer, Output& output, const Book& book) {
    JsonText json(output);
    Citing citing(book);
    json.begin_object();
    const auto force = pull_of(answer.load, answer.known.rope);
    json.number("load_n", force ? std::optional(force->si()) : std::nullopt);
    json.metres("length_m", to_nanometres(answer.length));
    json.key("stretch");
    write_rope(json, answer.known, citing);
    json.key("against");
    if (answer.equal) {
        const EqualStretch& equal = *answer.equal;
        json.begin_object();
        json.key("base");
        write_rope(json, equal.base, citing);
        json.number("stiffness_ratio", equal.softer);
        json.metres("equal_size_m",
                    equal.size ? std::optional(to_nanometres(*equal.size)) : std::nullopt);
        write_choice(json, "no_more", equal, equal.no_more);
        write_choice(json, "one_size_up", equal, equal.one_size_up);
        json.key("sizes");
        json.begin_array();
        for (const RopeUnderLoad& size : equal.sizes) {
            write_rope(json, size, citing);
        }
        json.end_array();
        json.end_object();
    } else {
        json.null();
    }
    json.key("sources");
    write_sources(json, citing);
    json.end_object();
    output.write('\n');
}

} // namespace

void write_stretch(const StretchAnswer& answer, Format format, Output& output, const Book& book,
                   const SheetOptions& options) {
    switch (format) {
    case Format::text:
        return write_text(answer, output, book, options.units);
    case Format::csv:
        return write_csv(answer, output, options.units);
    case Format::json:
        return write_json(answer, output, book);
    case Format::html:
        return write_html(answer, output, book, options.units);
    }
}

} // namespace libsplice
