// A plug-in as the first layout of the headers had it. The records stand here in full and are never
// brought up to date: they show that such a plug-in goes on working.
#include <stdint.h>

typedef struct old_texts {
    uint32_t count;
    const char* const* texts;
} old_texts;

typedef struct old_citation {
    uint32_t size;
    uint32_t status;
    const char* key;
    const char* locator;
} old_citation;

typedef struct old_field {
    uint32_t size;
    uint32_t dimension;
    const char* name;
    const char* meaning;
    double lowest;
    double highest;
    const char* default_text;
    uint32_t required;
    old_texts choices;
} old_field;

typedef struct old_kind {
    uint32_t size;
    uint32_t reach;
    const char* name;
    const char* title;
    const char* datum;
    old_texts constructions;
    uint32_t field_count;
    const old_field* fields;
    old_texts items;
    old_texts marks;
    old_texts values;
    uint32_t caution_count;
    const void* cautions;
    uint32_t way_count;
    const old_texts* ways;
} old_kind;

typedef struct old_value {
    uint32_t given;
    uint32_t choice;
    double value;
} old_value;

typedef struct old_request {
    uint32_t size;
    uint32_t kind;
    const char* construction;
    const char* fibre;
    uint32_t imperial;
    uint32_t field_count;
    const old_value* fields;
    double diameter_m;
} old_request;

typedef struct old_row {
    uint32_t size;
    uint32_t item;
    double length_m;
    double sd_m;
    uint32_t origin;
    uint32_t group;
    uint32_t citation;
} old_row;

typedef struct old_span {
    uint32_t size;
    uint32_t form;
    double from_m;
    double to_m;
    double width_m;
} old_span;

typedef struct old_answer {
    uint32_t size;
    uint32_t way;
    double standing_m;
} old_answer;

typedef struct old_sink {
    void* host;
    void (*row)(void* host, const old_row* row);
    void (*mark)(void* host, uint32_t mark, double from_tail_end_m);
    void (*value)(void* host, uint32_t value, double figure);
    void (*caution)(void* host, uint32_t caution);
    void (*span)(void* host, const old_span* span);
} old_sink;

typedef struct old_functions {
    const char* id;
    const void* functions;
} old_functions;

typedef struct old_plugin {
    uint32_t size;
    uint32_t epoch;
    const char* name;
    const char* version;
    const char* title;
    uint32_t function_count;
    const old_functions* functions;
    uint32_t source_count;
    const void* sources;
    uint32_t citation_count;
    const old_citation* citations;
    uint32_t kind_count;
    const old_kind* kinds;
} old_plugin;

static const old_citation citations[] = {{sizeof(old_citation), 3, 0, "ten diameters"}};
static const old_field fields[] = {
    {sizeof(old_field), 2, "turns", "turns of the end", 1, 20, "2 turns", 0, {0, 0}},
    {sizeof(old_field), 1, "tail", "what is left over", 0.01, 1, "none", 1, {0, 0}}};
static const char* const items[] = {"turns", "tail"};
static const char* const marks[] = {"turns end here"};
static const char* const steps[] = {"Lay the turns on."};
static const old_texts ways[] = {{1, steps}};
static const old_kind kinds[] = {
    {sizeof(old_kind),
     0,
     "old-end",
     "an end of the first layout",
     "the first turn",
     {0, 0},
     2,
     fields,
     {2, items},
     {1, marks},
     {0, 0},
     0,
     0,
     1,
     ways},
    {sizeof(old_kind),
     0,
     "old-end-2",
     "another",
     "the first turn",
     {0, 0},
     2,
     fields,
     {2, items},
     {1, marks},
     {0, 0},
     0,
     0,
     1,
     ways},
};

// Ten diameters a turn.
static int32_t work_out(const old_request* request, old_answer* answer, const old_sink* sink,
                        void* fault) {
    const double turns = request->fields[0].given ? request->fields[0].value : 2;
    const old_row round = {sizeof(old_row), 0, turns * 10 * request->diameter_m, 0, 0, 0, 16};
    const old_row tail = {sizeof(old_row), 1, request->fields[1].value, 0, 0, 0, 1};
    (void)fault;
    sink->row(sink->host, &round);
    sink->row(sink->host, &tail);
    sink->mark(sink->host, 0, round.length_m + tail.length_m);
    answer->standing_m = round.length_m + tail.length_m;
    const old_span laid = {sizeof(old_span), 1, tail.length_m, answer->standing_m,
                           request->diameter_m};
    sink->span(sink->host, &laid);
    return 0;
}

typedef struct old_allowance {
    int32_t (*work_out)(const old_request*, old_answer*, const old_sink*, void*);
} old_allowance;
static const old_allowance allowance = {work_out};
static const old_functions functions[] = {{"splice.allowance/1", &allowance}};

extern __attribute__((visibility("default"))) const old_plugin splice_plugin_entry;
const old_plugin splice_plugin_entry = {
    sizeof(old_plugin), 1, "old-layout", "0.1", "ends of the first layout", 1, functions, 0, 0, 1,
    citations,          2, kinds};
