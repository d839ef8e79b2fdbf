// One end as JSON.
#include "libsplice/allowance/values.h"
#include "libsplice/sheet/json/json_format.h"
#include "libsplice/sheet/json/json_parts.h"
#include "libsplice/sheet/panel/panel_marks.h"
#include "libsplice/sheet/words/ledger_group.h"
#include "libsplice/sheet/words/piece_text.h"

namespace libsplice {

namespace {

/// The pairs dropped from a buried tail; empty where its strands are not known.
void write_taper(JsonText& json, const End& allowance, const Names& names) {
    json.begin_array();
    for (const Thinning& pair : allowance.taper) {
        json.begin_object();
        json.text("mark", names.of(pair.mark));
        json.metres("from_end_m", pair.from_tail_end);
        json.number("strands_left", static_cast<double>(pair.strands_left));
        json.number("section", pair.section);
        json.metres("outside_m", pair.outside);
        json.metres("step_m", pair.step);
        json.end_object();
    }
    json.end_array();
}

void write_values(JsonText& json, const End& allowance, const Names& names) {
    json.begin_object();
    for (const Value& value : values_of(allowance)) {
        const std::string_view name = names.of(value.name);
        if (name.ends_with("_m")) {
            json.metres(name, to_nanometres(Length(value.value)));
        } else {
            json.number(name, value.value);
        }
    }
    json.end_object();
}

void write_cautions(JsonText& json, const End& allowance, CitationLog& citing) {
    json.begin_array();
    for (const Caution& caution : allowance.cautions) {
        std::string text;
        append_filled(text, caution.text, {allowance, citing.names()});
        append_rule(text, caution.rule, citing);
        json.text(text);
    }
    json.end_array();
}

/// The rope's stretch where it is printed, point by point.
void write_stretch(JsonText& json, const std::optional<RopeStretch>& stretch, CitationLog& citing) {
    if (!stretch) {
        json.null();
        return;
    }
    json.begin_object();
    json.key("points");
    json.begin_array();
    for (const StretchPoint& point : stretch->curve.points()) {
        json.begin_object();
        json.number(stretch->by_force ? "load_n" : "load_share", point.load);
        json.number("strain", point.strain);
        json.end_object();
    }
    json.end_array();
    json.number("sd_share", stretch->spread);
    json.text("source", citing.text(stretch->source));
    json.end_object();
}

} // namespace

void write_end_as_json(const EndSheet& sheet, Output& output, Credits credits,
                       const SheetOptions& /*options*/) {
    const End& allowance = sheet.allowance;
    JsonText json(output);
    CitationLog citing(credits);
    json.begin_answer();
    json.text("kind", sheet.kind.name);
    json.text("rope", sheet.rope.id);
    json.metres("allowance_m", allowance.total());
    json.key("ledger");
    write_ledger(json, ledger_of(allowance), "end", citing);
    json.key("marks");
    const std::vector<PieceMark> marks = marks_of(allowance);
    json.begin_array();
    write_marks(json, marks, credits.names(), false);
    json.end_array();
    json.key("taper");
    write_taper(json, allowance, credits.names());
    json.key("steps");
    json.begin_array();
    write_steps(json, std::nullopt, marks, {allowance, credits.names()});
    json.end_array();
    json.key("values");
    write_values(json, allowance, credits.names());
    json.key("retained_strength");
    if (allowance.retained) {
        citing.use(allowance.retained->source);
        json.number(allowance.retained->share);
    } else {
        json.null();
    }
    json.key("cautions");
    write_cautions(json, allowance, citing);
    json.key("stretch");
    write_stretch(json, sheet.stretch, citing);
    write_plug_ins(json, credits);
    json.key("sources");
    write_sources(json, citing);
    json.end_object();
    output.write('\n');
}

} // namespace libsplice
