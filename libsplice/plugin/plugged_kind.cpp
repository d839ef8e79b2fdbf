// Calls a plug-in's function with the bound fields, and takes its answer in.
#include "libsplice/plugin/plugged_kind.h"

#include "libsplice/allowance/parts/parts.h"
#include "libsplice/base/text.h"
#include "libsplice/plugin/answer.h"

#include <algorithm>
#include <array>
#include <cstring>

namespace libsplice {

namespace {

/// The bound fields as the plug-in sees them.
std::array<splice_plugin_value, most_fields> bound_fields(const PluggedKind& kind,
                                                          const Fields& fields) {
    std::array<splice_plugin_value, most_fields> values{};
    for (std::size_t i = 0; i < kind.fields.size(); ++i) {
        if (!fields.has(i)) {
            continue;
        }
        values.at(i).given = 1;
        if (kind.fields[i].dimension == Dimension::choice) {
            values.at(i).choice = static_cast<std::uint32_t>(fields.at(i));
        } else {
            values.at(i).value = fields.at(i);
        }
    }
    return values;
}

splice_plugin_request request_for(const PluggedKind& kind, const Rope& rope,
                                  std::span<const splice_plugin_value> fields) {
    splice_plugin_request request{};
    request.size = sizeof(request);
    request.kind = kind.index;
    request.construction = name_of(rope.construction).data(); // whole literals: they end in a zero
    request.fibre = name_of(rope.fibre).data();
    request.imperial = rope.imperial ? 1 : 0;
    request.field_count = static_cast<std::uint32_t>(kind.fields.size());
    request.fields = fields.data();
    request.diameter_m = rope.counting_diameter().si();
    request.nominal_diameter_m = rope.diameter.si();
    request.core_diameter_m = rope.core_diameter ? rope.core_diameter->value.si() : 0.0;
    request.breaking_n = rope.breaking ? rope.breaking->value.si() : 0.0;
    return request;
}

Fault fault_of(const PluggedKind& kind, Code code, const std::string& text) {
    return Fault{code, "the plug-in \"" + kind.plug_in + "\", working out " +
                           std::string(kind.declaration.name) + ": " + text};
}

/// A text of a fault's record; nothing if it is not UTF-8 or has no end.
std::optional<std::string> text_of(std::span<const char> text) {
    const std::string_view view(text.data(), ::strnlen(text.data(), text.size()));
    return view.size() < text.size() && !first_bad_utf8(view) ? std::optional(std::string(view))
                                                              : std::nullopt;
}

/// What a plug-in may refuse with: its own code, or one of the allowance's.
std::optional<Code> refusal_code(splice_status status) {
    const auto known = std::ranges::find_if(all_codes(), [status](const CodeTitle& title) {
        return static_cast<splice_status>(title.code) == status;
    });
    if (known == all_codes().end()) {
        return std::nullopt;
    }
    const bool may_refuse = status / 100 == 3 || known->code == Code::plug_in_refused;
    return may_refuse ? std::optional(known->code) : std::nullopt;
}

Fault refusal(const PluggedKind& kind, splice_status status, const splice_fault& said) {
    const auto text = text_of(said.text);
    const auto field = text_of(said.field);
    const auto rule = text_of(said.rule);
    if (!text || !field || !rule) {
        return fault_of(kind, Code::plug_in_text, "the reason of its refusal is not UTF-8");
    }
    const auto code = refusal_code(status);
    if (!code) {
        return fault_of(kind, Code::plug_in_answer,
                        "it returned " + std::to_string(status) +
                            ", which no plug-in may refuse an end with");
    }
    if (trimmed(*text).empty() || (*code == Code::below_published_minimum && rule->empty())) {
        return fault_of(kind, Code::plug_in_answer,
                        "it refuses the end without a reason, or without the rule that it rests "
                        "on");
    }
    Fault fault = fault_of(kind, *code, *text);
    fault.field = *field;
    fault.rule = *rule;
    return fault;
}

Nanometres add_loss_of(std::uint32_t cut, End& allowance, const Request& request) {
    switch (cut) {
    case SPLICE_CUT_HEAT:
        return add_cutting_loss(allowance, request, Cut::heat);
    case SPLICE_CUT_SHEARS:
        return add_cutting_loss(allowance, request, Cut::shears);
    case SPLICE_CUT_NO_LOSS:
        return 0;
    default:
        return add_cutting_loss(allowance, request, usual_cut(request.rope));
    }
}

} // namespace

Result<End> work_out(const PluggedKind& kind, const Request& request) {
    End allowance;
    allowance.made = kind.declaration.reach != Reach::plain;
    AnswerReader reader(kind, allowance, add_loss_of(kind.cut, allowance, request));
    const auto fields = bound_fields(kind, request.fields);
    const auto asked = request_for(kind, request.rope, fields);
    const auto sink = reader.sink();
    splice_plugin_answer answer{};
    answer.size = sizeof(answer);
    splice_fault said{};
    said.size = sizeof(said);
    splice_status status = 0;
    try {
        status = kind.functions->work_out(&asked, &answer, &sink, &said);
    } catch (...) {
        return Unexpected(fault_of(kind, Code::plug_in_threw,
                                   "an exception came out of it, which must not leave a plug-in"));
    }
    if (status != 0) {
        return Unexpected(refusal(kind, status, said));
    }
    reader.finish(answer);
    if (reader.fault()) {
        return Unexpected(*reader.fault());
    }
    return allowance;
}

} // namespace libsplice
