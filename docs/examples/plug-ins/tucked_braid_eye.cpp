// tucked-braid-eye: hollow braid whose strands are tucked back into it; and accessory cord.
#include "splice_plugin.h"

#include <array>
#include <cmath>
#include <cstdio>
#include <numbers>
#include <optional>
#include <string_view>

namespace {

template <class List>
constexpr auto count(const List& list) {
    return static_cast<uint32_t>(list.size());
}

// --- Sources ---

enum Cited : uint32_t { merry, ner, slippery, three_pins };
constexpr uint32_t own(uint32_t citation) {
    return SPLICE_CITED_OWN + citation;
}
constexpr std::array sources{
    splice_plugin_source{sizeof(splice_plugin_source), "en-564-maker-page",
                         "EN 564 minimum strengths of accessory cord, as a maker's page gives them",
                         "(c) maker; cited for figures only"},
};
constexpr std::array citations{
    splice_plugin_citation{sizeof(splice_plugin_citation), SPLICE_STATUS_DERIVED,
                           "merry-splicing-handbook",
                           "p. 126: 12-plait tucked eye, 7 times the circumference"},
    splice_plugin_citation{sizeof(splice_plugin_citation), SPLICE_STATUS_DERIVED,
                           "ner-splicing-guide", "tuck splice: one full fid, 21 D"},
    splice_plugin_citation{sizeof(splice_plugin_citation), SPLICE_STATUS_COMMON_PRACTICE, nullptr,
                           "tucks hold by friction, and HMPE has next to none"},
    splice_plugin_citation{sizeof(splice_plugin_citation), SPLICE_STATUS_COMMON_PRACTICE, nullptr,
                           "an eye three pins long where nothing else is asked for"},
};

// --- The kind ---

enum Field : uint32_t { field_eye, field_pin, field_after, field_tail };
constexpr std::array<const char*, 2> after_words{"merry", "ner"};
constexpr std::array fields{
    splice_plugin_field{.size = sizeof(splice_plugin_field),
                        .dimension = SPLICE_DIMENSION_LENGTH,
                        .name = "eye",
                        .meaning = "inside of the crown (the bearing point) to the throat",
                        .lowest = 0.001,
                        .highest = 10.0,
                        .default_text = "3 times the pin",
                        .required = 0,
                        .choices = {},
                        .also = nullptr},
    splice_plugin_field{.size = sizeof(splice_plugin_field),
                        .dimension = SPLICE_DIMENSION_LENGTH,
                        .name = "pin",
                        .meaning = "diameter of the pin or thimble groove in the eye",
                        .lowest = 0.001,
                        .highest = 1.0,
                        .default_text = "none",
                        .required = 1,
                        .choices = {},
                        .also = nullptr},
    splice_plugin_field{.size = sizeof(splice_plugin_field),
                        .dimension = SPLICE_DIMENSION_CHOICE,
                        .name = "after",
                        .meaning = "whose rule gives the tail",
                        .lowest = 0.0,
                        .highest = 0.0,
                        .default_text = "merry, the longer",
                        .required = 0,
                        .choices = {count(after_words), after_words.data()},
                        .also = nullptr},
    splice_plugin_field{.size = sizeof(splice_plugin_field),
                        .dimension = SPLICE_DIMENSION_LENGTH,
                        .name = "tail",
                        .meaning = "whole end beyond the throat, unbraided for the tucks",
                        .lowest = 0.01,
                        .highest = 10.0,
                        .default_text = "as the rule has it",
                        .required = 0,
                        .choices = {},
                        .also = nullptr},
};

constexpr std::array<const char*, 1> constructions{"12-strand"};

enum Item : uint32_t { item_tail, item_eye, item_to_bearing };
constexpr std::array<const char*, 3> items{"tail", "rope round the eye", "throat to bearing point"};

enum MarkName : uint32_t { mark_unbraid, mark_crown, mark_far_throat };
constexpr std::array<const char*, 3> marks{"unbraid to here", "crown", "far throat"};

enum ValueName : uint32_t { value_tail, value_eye, value_pin, value_round, value_angle };
constexpr std::array<const char*, 5> values{"tail_m", "eye_m", "pin_m", "rope_round_eye_m",
                                            "throat_angle_deg"};

enum Caution : uint32_t { caution_slippery };
constexpr std::array cautions{
    splice_plugin_caution{sizeof(splice_plugin_caution), SPLICE_WEIGHT_REFUSED_FOR_PERSON,
                          "tucks slip in HMPE long before it breaks: bury the tail instead",
                          own(slippery)},
};

constexpr std::array<const char*, 5> steps{
    "Tape the rope at the unbraiding mark, {@unbraid to here} from the cut end, unbraid it down to "
    "the tape and "
    "pair the strands: six pairs, three of each hand.",
    "Lay the eye so that the far throat mark meets the tape: {eye} from crown to throat.",
    "Tuck the three pairs of one hand under strands of the same hand, one pair in each gap.",
    "Turn the rope over and tuck the other three likewise. Draw all six up evenly, and go on, over "
    "one and under one, until the tail is used up.",
    "Drop one strand of each pair for the last tucks, trim, then load the eye and measure it "
    "again.",
};
constexpr std::array ways{splice_plugin_texts{count(steps), steps.data()}};

constexpr std::array kinds{
    splice_plugin_kind{.size = sizeof(splice_plugin_kind),
                       .reach = SPLICE_REACH_ONE_END,
                       .name = "tucked-braid-eye",
                       .title = "eye splice in hollow braid, strands tucked back",
                       .datum = "inside of the eye's crown",
                       .constructions = {count(constructions), constructions.data()},
                       .field_count = count(fields),
                       .fields = fields.data(),
                       .items = {count(items), items.data()},
                       .marks = {count(marks), marks.data()},
                       .values = {count(values), values.data()},
                       .caution_count = count(cautions),
                       .cautions = cautions.data(),
                       .way_count = count(ways),
                       .ways = ways.data(),
                       .cut = SPLICE_CUT_SHEARS},
};

// --- Working one out ---

/// Rope from throat to throat, and the angle of the legs there.
struct Eye {
    double rope_m;
    double angle;
};

/// Rope round a pin, closed by straight legs that lie side by side at the throat; nothing where the
/// throat would lie nearer the pin's centre than the rope's own way round it.
std::optional<Eye> eye_round(double pin_m, double inside_m, double rope_m) {
    const double radius = (pin_m + rope_m) / 2;
    const double h = inside_m - pin_m / 2;
    if (!(h > radius)) {
        return std::nullopt;
    }
    const double away = std::hypot(h, rope_m / 2);
    const double beta = std::asin(radius / away) - std::atan2(rope_m / 2, h);
    const double leg = std::sqrt(away * away - radius * radius);
    return Eye{radius * (std::numbers::pi + 2 * beta) + 2 * leg, 2 * beta};
}

splice_status refuse(splice_fault& fault, splice_status code, const char* field, const char* text,
                     const char* rule) {
    fault.code = code;
    std::snprintf(fault.text, sizeof(fault.text), "%s", text);
    std::snprintf(fault.field, sizeof(fault.field), "%s", field);
    std::snprintf(fault.rule, sizeof(fault.rule), "%s", rule);
    return code;
}

/// A length and where it comes from.
struct CitedLength {
    double length_m;
    uint32_t citation;
};

CitedLength tail_of(const splice_plugin_request& request) {
    const auto& given = request.fields[field_tail];
    if (given.given != 0) {
        return {given.value, SPLICE_CITED_JOB};
    }
    const uint32_t rule = request.fields[field_after].choice; // 0 where it is not given
    const double diameters = rule == ner ? 21.0 : 7 * std::numbers::pi;
    return {diameters * request.diameter_m, own(rule)};
}

splice_status work_out(const splice_plugin_request* request, splice_plugin_answer* answer,
                       const splice_plugin_sink_1* sink, splice_fault* fault) {
    const double pin = request->fields[field_pin].value;
    const bool eye_given = request->fields[field_eye].given != 0;
    const double inside = eye_given ? request->fields[field_eye].value : 3 * pin;
    const auto tail = tail_of(*request);
    const auto eye = eye_round(pin, inside, request->diameter_m);
    if (!eye) {
        return refuse(*fault, 306, "eye", "the eye is too small for its pin", "");
    }
    if (tail.length_m < 21.0 * request->diameter_m) {
        return refuse(*fault, 307, "tail", "a tail under 21 D is below every published rule",
                      "ner-splicing-guide tuck splice");
    }

    const auto add_row = [&](uint32_t item, double length_m, uint32_t citation) {
        splice_plugin_row row{};
        row.size = sizeof(row);
        row.item = item;
        row.length_m = length_m;
        row.citation = citation;
        sink->row(sink->host, &row);
    };
    add_row(item_tail, tail.length_m, tail.citation);
    add_row(item_eye, eye->rope_m, SPLICE_CITED_GEOMETRY);
    add_row(item_to_bearing, -inside, eye_given ? uint32_t{SPLICE_CITED_JOB} : own(three_pins));

    answer->standing_m = tail.length_m + eye->rope_m;
    sink->mark(sink->host, mark_unbraid, tail.length_m);
    sink->mark(sink->host, mark_crown, tail.length_m + eye->rope_m / 2);
    sink->mark(sink->host, mark_far_throat, answer->standing_m);

    const auto add_span = [&](uint32_t form, double from, double to, double around) {
        splice_plugin_span span{};
        span.size = sizeof(span);
        span.form = form;
        span.from_m = from;
        span.to_m = to;
        span.width_m = request->diameter_m;
        span.around_m = around;
        sink->span(sink->host, &span);
    };
    add_span(SPLICE_FORM_TUCKED, 0, tail.length_m, 0);
    add_span(SPLICE_FORM_LOOP, tail.length_m, answer->standing_m, pin);

    sink->value(sink->host, value_tail, tail.length_m);
    sink->value(sink->host, value_eye, inside);
    sink->value(sink->host, value_pin, pin);
    sink->value(sink->host, value_round, eye->rope_m);
    sink->value(sink->host, value_angle, eye->angle * 180 / std::numbers::pi);
    if (std::string_view(request->fibre) == "HMPE") {
        sink->caution(sink->host, caution_slippery);
    }
    return 0;
}

// --- Ropes ---

constexpr const char* ropes = R"(
[[rope]]
id = "accessory-cord-4-mm"
title = "accessory cord, the least that EN 564 allows, 4 mm"
construction = "core-dependent"
fibre = "nylon"
diameter = "4 mm"
breaking = { value = 3.2, unit = "kN", source = "en-564-maker-page", locator = "minimum, 4 mm", status = "printed" }

[[rope]]
id = "accessory-cord-6-mm"
title = "accessory cord, the least that EN 564 allows, 6 mm"
construction = "core-dependent"
fibre = "nylon"
diameter = "6 mm"
breaking = { value = 7.2, unit = "kN", source = "en-564-maker-page", locator = "minimum, 6 mm", status = "printed" }
)";

// --- The entry ---

constexpr splice_plugin_allowance_1 allowance{work_out};
constexpr std::array functions{splice_plugin_functions{SPLICE_ALLOWANCE_1, &allowance}};

} // namespace

constinit const splice_plugin splice_plugin_entry{
    .size = sizeof(splice_plugin),
    .epoch = SPLICE_PLUGIN_EPOCH,
    .name = "tucked-braid",
    .version = "1.0",
    .title = "tucked eyes in hollow braid, and accessory cord",
    .function_count = count(functions),
    .functions = functions.data(),
    .source_count = count(sources),
    .sources = sources.data(),
    .citation_count = count(citations),
    .citations = citations.data(),
    .kind_count = count(kinds),
    .kinds = kinds.data(),
    .ropes = ropes,
};
