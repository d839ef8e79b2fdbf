// tucked-wire-eye: wire laid round a thimble and tucked back into itself by hand, five tucks.
#include "splice_plugin.h"

#include <stdio.h>
#include <string.h>

#define COUNT(list) ((uint32_t)(sizeof(list) / sizeof((list)[0])))

// The published figures. The manual prints the free end as 8 in or more.
static const double free_end_m = 8 * 0.0254;
static const double tucks = 5;
static const double retained_carbon = 0.86;
static const double retained_stainless = 0.76;

// --- Sources ---

static const splice_plugin_source sources[] = {
    {sizeof(splice_plugin_source), "army-tm-1-1500-204-23-1",
     "TM 1-1500-204-23-1, five-tuck cable splice", "public domain (US Army)"},
};

enum { cited_free_end, cited_carbon, cited_stainless, cited_fairlead };
static const splice_plugin_citation citations[] = {
    {sizeof(splice_plugin_citation), SPLICE_STATUS_PRINTED, "army-tm-1-1500-204-23-1",
     "five-tuck splice: free end of 8 in or more"},
    {sizeof(splice_plugin_citation), SPLICE_STATUS_PRINTED, "army-tm-5-3810-305-10",
     "Table 4: hand-tucked thimble splice, carbon steel, 1/2 in"},
    {sizeof(splice_plugin_citation), SPLICE_STATUS_PRINTED, "army-tm-5-3810-305-10",
     "Table 4: hand-tucked thimble splice, stainless steel, 1/2 in"},
    {sizeof(splice_plugin_citation), SPLICE_STATUS_PRINTED, "faa-ac-43-13-1b",
     "para 7-147: no splice within 2 in of a fairlead or pulley"},
};

// --- The kind ---

enum { field_eye, field_round, field_tail };
static const splice_plugin_field fields[] = {
    {.size = sizeof(splice_plugin_field),
     .dimension = SPLICE_DIMENSION_LENGTH,
     .name = "eye",
     .meaning = "inside of the thimble's crown (the bearing point) to the throat",
     .lowest = 0.005,
     .highest = 1.0,
     .default_text = "none: from the thimble",
     .required = 1},
    {.size = sizeof(splice_plugin_field),
     .dimension = SPLICE_DIMENSION_LENGTH,
     .name = "round",
     .meaning = "wire round the thimble from throat to throat, taped on the thimble itself",
     .lowest = 0.01,
     .highest = 3.0,
     .default_text = "none: from the thimble",
     .required = 1},
    {.size = sizeof(splice_plugin_field),
     .dimension = SPLICE_DIMENSION_LENGTH,
     .name = "tail",
     .meaning = "free end that is unlaid for the tucks",
     .lowest = 0.05,
     .highest = 2.0,
     .default_text = "the printed 8 in"},
};

static const char* const constructions[] = {"wire"};

enum { item_free_end, item_round, item_to_bearing };
static const char* const items[] = {"free end for the tucks", "wire round the thimble",
                                    "throat to bearing point"};

enum { mark_near_throat, mark_crown, mark_far_throat };
static const char* const marks[] = {"near throat", "crown", "far throat"};

enum { value_tail, value_round, value_eye, value_tucks };
static const char* const values[] = {"tail_m", "rope_round_eye_m", "eye_m", "tucks"};

enum { caution_fairlead };
static const splice_plugin_caution cautions[] = {
    {sizeof(splice_plugin_caution), SPLICE_WEIGHT_ADVICE,
     "lead the line so that no part of this splice comes within 51 mm of a fairlead or a pulley",
     SPLICE_CITED_OWN + cited_fairlead},
};

static const char* const steps[] = {
    "Serve the wire at the near throat mark, {@near throat} from the cut end, and serve each "
    "strand's end.",
    "Bend it round the thimble until the far throat mark meets the serving: {rope_round_eye} lies "
    "in the groove. Clamp both parts at the throat and unlay the strands.",
    "Tuck every strand under one strand of the standing part and draw it down: one full tuck. "
    "Make three.",
    "Halve the wires of each strand and make the fourth tuck with one half. Halve those again and "
    "make the fifth.",
    "Break off what stands out close to the splice, tap it round, and serve over the last tucks.",
    "Load the eye, then measure it again.",
};
static const splice_plugin_texts ways[] = {{COUNT(steps), steps}};

static const splice_plugin_kind kinds[] = {
    {.size = sizeof(splice_plugin_kind),
     .reach = SPLICE_REACH_ONE_END,
     .name = "tucked-wire-eye",
     .title = "wire tucked back by hand round a thimble, five tucks",
     .datum = "inside of the thimble's crown",
     .constructions = {COUNT(constructions), constructions},
     .field_count = COUNT(fields),
     .fields = fields,
     .items = {COUNT(items), items},
     .marks = {COUNT(marks), marks},
     .values = {COUNT(values), values},
     .caution_count = COUNT(cautions),
     .cautions = cautions,
     .way_count = COUNT(ways),
     .ways = ways,
     .cut = SPLICE_CUT_NO_LOSS},
};

// --- Working one out ---

static splice_status refuse(splice_fault* fault, splice_status code, const char* field,
                            const char* text, const char* rule) {
    fault->code = code;
    snprintf(fault->text, sizeof(fault->text), "%s", text);
    snprintf(fault->field, sizeof(fault->field), "%s", field);
    snprintf(fault->rule, sizeof(fault->rule), "%s", rule);
    return code;
}

static void add_row(const splice_plugin_sink_1* sink, uint32_t item, double length_m,
                    uint32_t citation) {
    const splice_plugin_row row = {
        .size = sizeof(row), .item = item, .length_m = length_m, .citation = citation};
    sink->row(sink->host, &row);
}

static void add_span(const splice_plugin_sink_1* sink, splice_plugin_span span) {
    span.size = sizeof(span);
    sink->span(sink->host, &span);
}

static splice_status work_out(const splice_plugin_request* request, splice_plugin_answer* answer,
                              const splice_plugin_sink_1* sink, splice_fault* fault) {
    const double eye_m = request->fields[field_eye].value;
    const double round_m = request->fields[field_round].value;
    const int tail_given = request->fields[field_tail].given != 0;
    const double tail_m = tail_given ? request->fields[field_tail].value : free_end_m;

    if (tail_m < free_end_m) {
        return refuse(fault, 307, "tail", "a free end under 203.2 mm is too short for five tucks",
                      "army-tm-1-1500-204-23-1 five-tuck splice");
    }
    if (round_m < 2 * eye_m) {
        return refuse(fault, 304, "round",
                      "the wire round the thimble must be twice the eye's length at least", "");
    }

    add_row(sink, item_free_end, tail_m,
            tail_given ? SPLICE_CITED_JOB : SPLICE_CITED_OWN + cited_free_end);
    add_row(sink, item_round, round_m, SPLICE_CITED_JOB);
    add_row(sink, item_to_bearing, -eye_m, SPLICE_CITED_JOB);

    sink->mark(sink->host, mark_near_throat, tail_m);
    sink->mark(sink->host, mark_crown, tail_m + round_m / 2);
    sink->mark(sink->host, mark_far_throat, tail_m + round_m);

    add_span(sink, (splice_plugin_span){.form = SPLICE_FORM_TUCKED,
                                        .to_m = tail_m,
                                        .width_m = request->diameter_m,
                                        .count = tucks});
    add_span(sink, (splice_plugin_span){.form = SPLICE_FORM_LOOP,
                                        .from_m = tail_m,
                                        .to_m = tail_m + round_m,
                                        .width_m = request->diameter_m});

    sink->value(sink->host, value_tail, tail_m);
    sink->value(sink->host, value_round, round_m);
    sink->value(sink->host, value_eye, eye_m);
    sink->value(sink->host, value_tucks, tucks);
    sink->caution(sink->host, caution_fairlead);

    const int stainless = strcmp(request->fibre, "stainless-steel") == 0;
    answer->standing_m = tail_m + round_m;
    answer->retained = stainless ? retained_stainless : retained_carbon;
    answer->retained_citation = SPLICE_CITED_OWN + (stainless ? cited_stainless : cited_carbon);
    return 0;
}

// --- The entry ---

static const splice_plugin_allowance_1 allowance = {work_out};
static const splice_plugin_functions functions[] = {{SPLICE_ALLOWANCE_1, &allowance}};

const splice_plugin splice_plugin_entry = {
    .size = sizeof(splice_plugin),
    .epoch = SPLICE_PLUGIN_EPOCH,
    .name = "tucked-wire",
    .version = "1.0",
    .title = "hand-tucked eyes in wire",
    .function_count = COUNT(functions),
    .functions = functions,
    .source_count = COUNT(sources),
    .sources = sources,
    .citation_count = COUNT(citations),
    .citations = citations,
    .kind_count = COUNT(kinds),
    .kinds = kinds,
};
