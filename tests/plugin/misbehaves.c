// A plug-in with one thing wrong in what it declares: number MISBEHAVIOUR. Number 0 is in order.
#include "splice_plugin.h"

#include <math.h>

#define COUNT(list) ((uint32_t)(sizeof(list) / sizeof((list)[0])))
#define WRONG(number, bad, good) (MISBEHAVIOUR == (number) ? (bad) : (good))

static const splice_plugin_source sources[] = {
    {sizeof(splice_plugin_source), WRONG(19, "ashley-1944", "shop-notes"), "Notes of a shop",
     "no document"},
};

static const splice_plugin_citation citations[] = {
    {sizeof(splice_plugin_citation), SPLICE_STATUS_PRINTED,
     WRONG(12, "no-such-book", WRONG(13, 0, "shop-notes")), "page 1"},
};

// A record that knows more than the host does: a field with a member behind the last.
typedef struct longer_field {
    splice_plugin_field known;
    uint64_t more;
} longer_field;

static const longer_field fields[] = {
    {{.size = sizeof(longer_field),
      .dimension = SPLICE_DIMENSION_LENGTH,
      .name = WRONG(20, "rule", "tail"),
      .meaning = "the end beyond the throat",
      .lowest = WRONG(6, 2.0, WRONG(24, NAN, 0.0)),
      .highest = 1.0,
      .default_text = "1 m"},
     WRONG(17, 1, 0)},
    {{.size = WRONG(18, sizeof(splice_plugin_field), sizeof(longer_field)),
      .dimension = SPLICE_DIMENSION_CHOICE,
      .name = "make",
      .meaning = "how it is made",
      .default_text = "plain",
      .choices = {WRONG(25, 0, 1), (const char* const[]){"plain"}}},
     0},
};

static const char* const constructions[] = {WRONG(7, "12-strnd", "12-strand")};
static const char* const items[] = {WRONG(16, "cutting loss", "tail")};
static const char* const marks[] = {"far throat"};
static const char* const values[] = {"tail_m"};
static const char* const steps[] = {WRONG(15, "Tuck {tucks} times.",
                                          "Bury the tail, {tail} of it, "
                                          "to {@far throat}.")};
static const splice_plugin_texts ways[] = {{1, steps}};
static const splice_plugin_caution cautions[] = {
    {sizeof(splice_plugin_caution), SPLICE_WEIGHT_ADVICE, "mind your fingers",
     WRONG(14, 0, SPLICE_CITED_OWN)},
};

#define KIND(kind_name)                                                                            \
    {                                                                                              \
        .size = sizeof(splice_plugin_kind), .name = kind_name, .title = "an end of a shop",        \
        .datum = "its throat", .constructions = {1, constructions},                                \
        .field_count = WRONG(8, 17, 2), .fields = &fields[0].known, .items = {1, items},           \
        .marks = {1, WRONG(22, 0, marks)}, .values = {1, values}, .caution_count = 1,              \
        .cautions = cautions, .way_count = 1, .ways = ways                                         \
    }

static const splice_plugin_kind kinds[] = {
    KIND(WRONG(9, "bowline", WRONG(26, "Shop Eye", "shop-eye"))),
    KIND(WRONG(21, "shop-eye", "shop-end")),
};

static splice_status work_out(const splice_plugin_request* request, splice_plugin_answer* answer,
                              const splice_plugin_sink_1* sink, splice_fault* fault) {
    const splice_plugin_row row = {
        .size = sizeof(row), .length_m = 1, .citation = SPLICE_CITED_OWN};
    (void)request;
    (void)fault;
    sink->row(sink->host, &row);
    sink->mark(sink->host, 0, 1);
    answer->standing_m = 1;
    return 0;
}

static const splice_plugin_allowance_1 allowance = {WRONG(11, 0, work_out)};
static const splice_plugin_functions functions[] = {
    {WRONG(10, "splice.allowance/2", SPLICE_ALLOWANCE_1), &allowance}};

static const char ropes[] = "[[rope]]\n"
                            "id = \"" ROPE "\"\n"
                            "title = \"cord of a shop\"\n"
                            "construction = \"12-strand\"\n"
                            "fibre = \"nylon\"\n"
                            "diameter = \"3 mm\"\n";

#if MISBEHAVIOUR == 1
extern SPLICE_API const splice_plugin shop_entry;
#define splice_plugin_entry shop_entry
#endif
const splice_plugin splice_plugin_entry = {
    .size = WRONG(3, 16, sizeof(splice_plugin)),
    .epoch = WRONG(2, 2, SPLICE_PLUGIN_EPOCH),
    .name = WRONG(4, 0, "shop"),
    .version = "1",
    .title = WRONG(5, "a title in Latin-1: \xe9", WRONG(23, "a\ttitle", "ends of a shop")),
    .function_count = COUNT(functions),
    .functions = functions,
    .source_count = COUNT(sources),
    .sources = sources,
    .citation_count = COUNT(citations),
    .citations = citations,
    .kind_count = COUNT(kinds),
    .kinds = kinds,
    .ropes = ropes,
};
