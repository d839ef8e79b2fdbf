// Parts that the JSON of a cut sheet and of one end have in common.
#include "libsplice/sheet/json/json_parts.h"

#include "libsplice/sheet/panel/panel_marks.h"
#include "libsplice/sheet/panel/working.h"
#include "libsplice/sheet/words/ledger_group.h"
#include "libsplice/sheet/words/words.h"

namespace libsplice {

void write_ledger(JsonText& json, std::span<const LedgerRow> ledger, std::string_view whole,
                  CitationLog& citing, std::string_view along_route) {
    json.begin_array();
    for (std::size_t i = 0; i < ledger.size(); ++i) {
        const auto& [row, end] = ledger[i];
        json.begin_object();
        json.text("item", citing.names().of(row.item));
        json.key("end");
        end ? json.text(letter_of(*end)) : json.null();
        json.metres("length_m", row.length);
        json.number("sd_m", row.sd);
        json.text("group", group_of(ledger, i, whole, citing.names()));
        json.text("source", citing.text(row.source));
        const bool of_route = row.working.formula == FormulaId::from_route && !along_route.empty();
        json.text("working", of_route ? std::string(along_route)
                                      : show_working(row.working, UnitSystem::metric));
        json.end_object();
    }
    json.end_array();
}

void write_marks(JsonText& json, std::span<const PieceMark> marks, const Names& names,
                 bool with_end) {
    for (const PieceMark& mark : marks) {
        json.begin_object();
        if (with_end) {
            json.text("end", letter_of(mark.end));
        }
        json.key("number");
        json.whole(static_cast<long long>(mark.number));
        json.text("name", names.of(mark.name));
        json.metres("from_end_m", mark.from_end);
        json.end_object();
    }
}

void write_steps(JsonText& json, std::optional<LineEnd> end, std::span<const PieceMark> marks,
                 const TemplateContext& filling) {
    std::string text;
    for (const Step& step : filling.allowance.steps) {
        json.begin_object();
        json.key("end");
        end ? json.text(letter_of(*end)) : json.null();
        json.text("action", name_of(step.action));
        if (step.part != Part::rope) {
            json.text("part", name_of(step.part));
        }
        json.key("at");
        json.begin_array();
        for (const std::size_t number : numbers_of(step, marks)) {
            json.whole(static_cast<long long>(number));
        }
        json.end_array();
        text.clear();
        append_filled(text, step.text, filling);
        json.text("text", text);
        json.end_object();
    }
}

void write_step(JsonText& json, const PieceStep& step, std::string_view text) {
    json.begin_object();
    json.key("end");
    step.end ? json.text(letter_of(*step.end)) : json.null();
    json.text("action", name_of(step.action));
    if (step.part != Part::rope) {
        json.text("part", name_of(step.part));
    }
    json.key("at");
    json.begin_array();
    for (const std::uint8_t number : step.at) {
        json.whole(number);
    }
    json.end_array();
    json.text("text", text);
    json.end_object();
}

void write_error(JsonText& json, const Fault& fault) {
    json.begin_object();
    json.key("code");
    json.whole(static_cast<long long>(fault.code));
    json.text("text", fault.text);
    json.text("at", to_text(fault.at));
    json.text("field", fault.field);
    if (!fault.rule.empty()) {
        json.text("rule", fault.rule);
    }
    json.end_object();
}

void write_plug_ins(JsonText& json, Credits credits) {
    json.key("plug_ins");
    json.begin_array();
    for (const auto& plug_in : credits.plug_ins()) {
        json.begin_object();
        json.text("name", plug_in.name);
        json.text("version", plug_in.version);
        json.end_object();
    }
    json.end_array();
}

void write_sources(JsonText& json, const CitationLog& citing) {
    json.begin_array();
    for (const Source* source : citing.used()) {
        json.begin_object();
        json.text("key", source->key);
        json.text("title", source->title);
        json.end_object();
    }
    json.end_array();
}

} // namespace libsplice
