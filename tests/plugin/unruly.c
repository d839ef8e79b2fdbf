// A plug-in in order whose ends come out wrong: its field `does` says how. 0 is in order.
#include "splice_plugin.h"

#include <math.h>
#include <stddef.h>
#include <string.h>

enum {
    in_order,
    length_nan,
    length_infinite,
    length_negative,
    length_absurd,
    no_source,
    source_undeclared,
    spread_negative,
    spread_without_origin,
    too_many_rows,
    item_undeclared,
    marks_descend,
    no_standing_mark,
    way_undeclared,
    retained_over_one,
    retained_without_source,
    unknown_code,
    no_reason,
    reason_not_utf8,
    refuses,
    row_of_wrong_size,
    row_null,
    value_nan,
    sum_negative,
    value_twice,
    minimum_without_rule,
    group_unknown,
    span_backwards,
    span_form_unknown,
    span_count_negative,
    span_in_nothing,
    span_too_short,
    how_many
};

static const splice_plugin_citation citations[] = {
    {sizeof(splice_plugin_citation), SPLICE_STATUS_SHOP, 0, "three test pieces"},
};
static const splice_plugin_field fields[] = {{.size = sizeof(splice_plugin_field),
                                              .dimension = SPLICE_DIMENSION_COUNT,
                                              .name = "does",
                                              .meaning = "what it does wrong",
                                              .lowest = 0,
                                              .highest = how_many - 1,
                                              .default_text = "nothing"}};
static const char* const items[] = {"shop's own row", "throat to bearing point"};
static const char* const marks[] = {"shop's mark", "far throat"};
static const char* const values[] = {"shop_length_m"};
static const char* const steps[] = {"Mark {shop_length} at {@shop's mark}."};
static const splice_plugin_texts ways[] = {{1, steps}};
static const splice_plugin_kind kinds[] = {{.size = sizeof(splice_plugin_kind),
                                            .name = "unruly-end",
                                            .title = "an end that goes wrong as asked",
                                            .datum = "its throat",
                                            .field_count = 1,
                                            .fields = fields,
                                            .items = {2, items},
                                            .marks = {2, marks},
                                            .values = {1, values},
                                            .way_count = 1,
                                            .ways = ways,
                                            .cut = SPLICE_CUT_NO_LOSS}};

static splice_status refuse(splice_fault* fault, splice_status code, const char* text) {
    fault->code = code;
    strcpy(fault->text, text);
    return code;
}

static void spoil(splice_plugin_row* row, int does) {
    switch (does) {
    case length_nan:
        row->length_m = NAN;
        break;
    case length_infinite:
        row->length_m = INFINITY;
        break;
    case length_negative:
        row->length_m = -0.001;
        break;
    case length_absurd:
        row->length_m = 1000.0;
        break;
    case no_source:
        row->citation = 0;
        break;
    case source_undeclared:
        row->citation = SPLICE_CITED_OWN + 1;
        break;
    case spread_negative:
        row->sd_m = -0.001;
        break;
    case spread_without_origin:
        row->sd_m = 0.001;
        break;
    case item_undeclared:
        row->item = 2;
        break;
    case row_of_wrong_size:
        row->size = 8;
        break;
    case group_unknown:
        row->group = 6;
        break;
    case sum_negative:
        row->item = 1;
        row->length_m = -0.5;
        break;
    default:
        break;
    }
}

static splice_status work_out(const splice_plugin_request* request, splice_plugin_answer* answer,
                              const splice_plugin_sink_1* sink, splice_fault* fault) {
    const int does = (int)request->fields[0].value;
    splice_plugin_row row = {.size = sizeof(row), .length_m = 0.5, .citation = SPLICE_CITED_OWN};
    const splice_plugin_span span = {
        .size = does == span_too_short ? offsetof(splice_plugin_span, count) - 1 : sizeof(span),
        .form = does == span_form_unknown ? SPLICE_FORM_BALL + 1 : SPLICE_FORM_TURNS,
        .from_m = 0.5,
        .to_m = does == span_backwards ? 0.25 : 0.75,
        .count = does == span_count_negative ? -1 : 2,
        .around_m = does == span_in_nothing ? NAN : 0.01};

    spoil(&row, does);
    for (int i = 0; i < (does == too_many_rows ? 16 : 1); ++i) {
        sink->row(sink->host, does == row_null ? 0 : &row);
    }
    sink->mark(sink->host, 0, does == marks_descend ? 0.6 : 0.25);
    sink->mark(sink->host, 1, 0.5);
    for (int i = 0; i < (does == value_twice ? 2 : 1); ++i) {
        sink->value(sink->host, 0, does == value_nan ? NAN : 0.25);
    }
    sink->span(sink->host, &span);
    answer->standing_m = does == no_standing_mark ? 0.4 : 0.5;
    answer->way = does == way_undeclared ? 1 : 0;
    answer->retained = does == retained_over_one ? 1.5 : 0.9;
    answer->retained_citation = does == retained_without_source ? 0 : SPLICE_CITED_OWN;
    switch (does) {
    case unknown_code:
        return refuse(fault, 207, "no such rope");
    case no_reason:
        return refuse(fault, 612, "");
    case reason_not_utf8:
        return refuse(fault, 612, "\xff");
    case refuses:
        return refuse(fault, 612, "the shop does not make these on Sundays");
    case minimum_without_rule:
        return refuse(fault, 307, "too short");
    default:
        return 0;
    }
}

static const splice_plugin_allowance_1 allowance = {work_out};
static const splice_plugin_functions functions[] = {{SPLICE_ALLOWANCE_1, &allowance}};
const splice_plugin splice_plugin_entry = {.size = sizeof(splice_plugin),
                                           .epoch = SPLICE_PLUGIN_EPOCH,
                                           .name = "unruly",
                                           .version = "1",
                                           .title = "ends that go wrong as asked",
                                           .function_count = 1,
                                           .functions = functions,
                                           .citation_count = 1,
                                           .citations = citations,
                                           .kind_count = 1,
                                           .kinds = kinds};
