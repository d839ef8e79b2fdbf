#include "libsplice/sheet/json/json_parts.h"

#include "libsplice/sheet/panel/ledger_group.h"
#include "libsplice/sheet/panel/words.h"

namespace libsplice {

void write_ledger(JsonText& json, std::span<const LedgerRow> ledger, std::string_view whole,
                  Citing& citing) {
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
        json.end_object();
    }
    json.end_array();
}

void write_steps(JsonText& json, const Filling& filling) {
    std::string text;
    json.begin_array();
    for (const std::string_view step : filling.allowance.steps) {
        text.clear();
        append_filled(text, step, filling);
        json.text(text);
    }
    json.end_array();
}

void write_fault(JsonText& json, const Fault& fault) {
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

void write_plug_ins(JsonText& json, const Book& book) {
    json.key("plug_ins");
    json.begin_array();
    for (const PlugIn& plug_in : book.plug_ins()) {
        json.begin_object();
        json.text("name", plug_in.name);
        json.text("version", plug_in.version);
        json.end_object();
    }
    json.end_array();
}

void write_sources(JsonText& json, const Citing& citing) {
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
