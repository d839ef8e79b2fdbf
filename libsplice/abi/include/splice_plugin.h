// The plug-in side: kinds of end and ropes from elsewhere, in one constant that is read before any
// of their code runs.
#ifndef SPLICE_PLUGIN_H
#define SPLICE_PLUGIN_H

#include "splice_base.h"

#include <stdint.h>

#ifdef __cplusplus
extern "C" {
#endif

/* A plug-in is a shared library that exports one constant, `splice_plugin_entry`. It declares every
 * text that the plug-in will ever say: names, fields, items, marks, steps, cautions, sources. The
 * host checks all of them when it loads the file. What runs later, `work_out`, answers with numbers
 * and with indices into these lists, so that an end costs no text and no allocation.
 *
 * Data grows by size: a record begins with its own `size`, may gain members at its end, and what an
 * older plug-in does not have counts as 0. All records of one list have the same size. Behaviour
 * grows by name: a table of functions never changes; a new one gets a new id.
 *
 * Lengths are metres, forces newtons, shares of 1. Texts are UTF-8, end in a zero byte and hold no
 * control characters; they live as long as the library is loaded. Nobody frees the other's memory.
 * No C++ exception may leave a plug-in. The host's limits and its faults (6xx) stand in
 * `docs/plug-ins.md` and `docs/errors.md`. */

/// What a plug-in is built for. The host refuses any other.
#define SPLICE_PLUGIN_EPOCH 1u

/// A list of texts. This record does not grow.
typedef struct splice_plugin_texts {
    uint32_t count;
    const char* const* texts; ///< may be null where `count` is 0
} splice_plugin_texts;

/* --- Sources ---------------------------------------------------------------------------------- */

/// A document that the plug-in takes figures from. Keys of the host's own tables may be cited
/// without being declared here.
typedef struct splice_plugin_source {
    uint32_t size;
    const char* key;   ///< lower-case letters, digits and hyphens
    const char* title; ///< as a sheet's footer prints it
    const char* terms; ///< `public domain`, `(c) book` ...
} splice_plugin_source;

/// What a figure is worth.
enum {
    SPLICE_STATUS_PRINTED = 1,         ///< stands in the document
    SPLICE_STATUS_DERIVED = 2,         ///< arithmetic from figures in the document
    SPLICE_STATUS_COMMON_PRACTICE = 3, ///< a fact of the trade; no key
    SPLICE_STATUS_COMPUTED = 4,        ///< a calculation that can be run again; no key
    SPLICE_STATUS_FROM_MEMORY = 5,     ///< recalled, or a stated guess; no key
    SPLICE_STATUS_SHOP = 6             ///< measured by the shop; no key
};

/// A place in a document, which rows and cautions point to.
typedef struct splice_plugin_citation {
    uint32_t size;
    uint32_t status; ///< SPLICE_STATUS_PRINTED ...
    const char*
        key; ///< of a source; needed for SPLICE_STATUS_PRINTED and SPLICE_STATUS_DERIVED, else null
    const char* locator; ///< page, table, paragraph, or how it was worked out
} splice_plugin_citation;

/// How answers name a citation. 0 is none, which the host refuses in a row.
enum {
    SPLICE_CITED_JOB = 1,      ///< the job states it in a field
    SPLICE_CITED_GEOMETRY = 2, ///< it follows from the shape of things alone
    SPLICE_CITED_OWN = 16      ///< the first of the plug-in's own citations; the next is 17
};

/* --- Kinds ------------------------------------------------------------------------------------ */

/// A field of a kind. The host binds and checks it: `work_out` sees values in range only.
typedef struct splice_plugin_field {
    uint32_t size;
    uint32_t dimension;          ///< SPLICE_DIMENSION_LENGTH ...
    const char* name;            ///< as jobs write it: lower-case letters, digits and `_`
    const char* meaning;         ///< for people
    double lowest;               ///< inclusive, SI; not used for a choice
    double highest;              ///< inclusive, SI; not used for a choice
    const char* default_text;    ///< what holds where the field is not given, in words
    uint32_t required;           ///< 1: a job must give it
    splice_plugin_texts choices; ///< the words of a choice
    /* The first layout ended here. */
    const char* also; ///< another word for the same field; null: none
} splice_plugin_field;

/// How a caution weighs.
enum {
    SPLICE_WEIGHT_ADVICE = 0,             ///< the piece is cut
    SPLICE_WEIGHT_REFUSED_FOR_PERSON = 1, ///< on a line that carries a person the line is refused
    SPLICE_WEIGHT_PERSON_ONLY = 2         ///< likewise, and on other lines it is not said
};

/// Something to be careful of, and the rule that it rests on.
typedef struct splice_plugin_caution {
    uint32_t size;
    uint32_t weight;   ///< SPLICE_WEIGHT_ADVICE ...
    const char* text;  ///< may hold `{tail}` and `{@far throat}` as steps do
    uint32_t citation; ///< the rule: SPLICE_CITED_OWN + index
} splice_plugin_caution;

/// How much of a line a kind accounts for.
enum {
    SPLICE_REACH_ONE_END = 0,  ///< an end that is spliced, knotted or fitted
    SPLICE_REACH_PLAIN = 1,    ///< an end that is only cut, sealed or whipped
    SPLICE_REACH_BOTH_ENDS = 2 ///< a join, or an item made whole: the line has no other end
};

/// How the end is cut. The host adds what its tables say that the cut costs as the row `cutting
/// loss`, and moves the end's marks by it.
enum {
    SPLICE_CUT_USUAL = 0,  ///< with heat where the fibre melts clean, else with shears
    SPLICE_CUT_HEAT = 1,   ///< with heat
    SPLICE_CUT_SHEARS = 2, ///< with shears through tape
    SPLICE_CUT_NO_LOSS = 3 ///< nothing is lost
};

/// A kind of end, declared. Lists hold at most 16 fields, 64 items, marks, values, cautions and
/// ways, and 64 steps a way.
typedef struct splice_plugin_kind {
    uint32_t size;
    uint32_t reach;                    ///< SPLICE_REACH_ONE_END ...
    const char* name;                  ///< the trade's term: lower-case letters, digits and hyphens
    const char* title;                 ///< for people, one line
    const char* datum;                 ///< the bearing point that lengths are measured to
    splice_plugin_texts constructions; ///< `3-strand`, `12-strand` ...; none: all of them
    uint32_t field_count;
    const splice_plugin_field* fields;
    splice_plugin_texts items;  ///< names of its ledger rows, such as `tail`
    splice_plugin_texts marks;  ///< names of its marks, such as `far throat`
    splice_plugin_texts values; ///< names of its figures with their unit: `tail_m`, `tucks`
    uint32_t caution_count;
    const splice_plugin_caution* cautions;
    /// The steps at the bench, one list for each way in which the end is made. `{tail}` stands for
    /// the value `tail_m`, `{tucks}` for a plain number, `{@far throat}` for the distance of that
    /// mark from the cut end. Every such word must be declared.
    uint32_t way_count;
    const splice_plugin_texts* ways;
    /* The first layout ended here. */
    uint32_t cut; ///< SPLICE_CUT_USUAL ...
} splice_plugin_kind;

/* --- Working out an end: "splice.allowance/1" ------------------------------------------------- */

/// A field of an end, bound. This record does not grow.
typedef struct splice_plugin_value {
    uint32_t given;  ///< 0: the job does not give it, and the rest is 0
    uint32_t choice; ///< index of the word, for a choice
    double value;    ///< SI, for everything else
} splice_plugin_value;

/// What an end is worked out from. The host owns it; it lives for the length of the call.
typedef struct splice_plugin_request {
    uint32_t size;
    uint32_t kind;            ///< index in the plug-in's list
    const char* construction; ///< `3-strand`, `12-strand` ...
    const char* fibre;        ///< of what bears the load: `HMPE`, `polyester` ...
    uint32_t imperial;        ///< 1: rope sized in inches
    uint32_t field_count;
    const splice_plugin_value* fields; ///< in the order of the kind's declaration
    double diameter_m;                 ///< that tails and knots are counted in
    double nominal_diameter_m;
    double core_diameter_m; ///< 0: not known
    double breaking_n;      ///< minimum breaking strength; 0: not known
} splice_plugin_request;

/// Where a row's standard deviation comes from.
enum {
    SPLICE_ORIGIN_NONE = 0, ///< with an `sd_m` of 0 only
    SPLICE_ORIGIN_MEASURED = 1,
    SPLICE_ORIGIN_PRINTED_RANGE = 2,
    SPLICE_ORIGIN_STATED_GUESS = 3
};

/// Rows whose lengths err together.
enum {
    SPLICE_GROUP_OWN = 0,      ///< on its own
    SPLICE_GROUP_TAPE = 1,     ///< everything measured with the same tape
    SPLICE_GROUP_TAKE_UP = 2,  ///< the same braid over every bury of a line
    SPLICE_GROUP_SETTLING = 3, ///< the same hand draws every splice
    SPLICE_GROUP_HAND = 4,     ///< the same hand sets every knot
    SPLICE_GROUP_ROPE = 5      ///< the same measure of the rope
};

/// A signed length that the end needs beyond its bearing point.
typedef struct splice_plugin_row {
    uint32_t size;
    uint32_t item; ///< index in the kind's items
    /// At most 100 m. Below 0 only for the items `throat to bearing point`, `knot to bearing
    /// point`, `settling`, `crossing closes up`, `pin centre to the shank` and `growth in the
    /// swage`, which lie within the finished length or come back.
    double length_m;
    double sd_m;       ///< standard deviation, 0 to 10 m
    uint32_t origin;   ///< of the deviation: SPLICE_ORIGIN_MEASURED ...
    uint32_t group;    ///< SPLICE_GROUP_OWN ...
    uint32_t citation; ///< SPLICE_CITED_JOB ..., or SPLICE_CITED_OWN + index
} splice_plugin_row;

/// How a span of rope lies, so that a sheet can draw the end.
enum {
    SPLICE_FORM_STRAIGHT = 0, ///< laid alongside
    SPLICE_FORM_LOOP = 1,     ///< round an eye
    SPLICE_FORM_BURIED = 2,
    SPLICE_FORM_TAPERED = 3,
    SPLICE_FORM_KNOT = 4,    ///< counted in the crossings of its plainest picture
    SPLICE_FORM_WHIPPED = 5, ///< bound round
    SPLICE_FORM_COVERED = 6, ///< under a cover or in a fitting
    SPLICE_FORM_TURNS = 7,   ///< full turns round a spar, a pin or another part
    SPLICE_FORM_HALF_HITCHES = 8,
    SPLICE_FORM_CROSSED = 9,  ///< over or through another part
    SPLICE_FORM_TUCKED = 10,  ///< under other parts, or between strands
    SPLICE_FORM_NIPPED = 11,  ///< held in small turns of the standing part
    SPLICE_FORM_DOUBLED = 12, ///< a knot tied in doubled rope
    SPLICE_FORM_STITCHED = 13,
    SPLICE_FORM_SEIZED = 14,
    SPLICE_FORM_CLIPPED = 15,
    SPLICE_FORM_PRESSED = 16, ///< in a sleeve or shank that is swaged on
    SPLICE_FORM_CRIMPED = 17,
    SPLICE_FORM_SEALED = 18, ///< melted
    SPLICE_FORM_CORE = 19,   ///< the core without its cover
    SPLICE_FORM_BALL = 20    ///< inside a ball or bead
};

/// A span of the end, measured from the end's own tail end.
typedef struct splice_plugin_span {
    uint32_t size;
    uint32_t form; ///< SPLICE_FORM_STRAIGHT ...
    double from_m;
    double to_m;     ///< at least `from_m`
    double width_m;  ///< of what is seen there
    double count;    ///< of turns, tucks, hitches, clips or crossings, to 1000; 0: not counted
    double around_m; ///< diameter of what it goes round; 0: nothing, or not known
} splice_plugin_span;

/// What is said once of an end. The host sets `size` and the rest to 0 before the call; a plug-in
/// writes only what lies within `size`.
typedef struct splice_plugin_answer {
    uint32_t size;
    uint32_t way; ///< index of the list of steps
    /// From the tail end to where the standing part begins: the far throat, the knot's face. One of
    /// the marks lies just there.
    double standing_m;
    double bury_reach_m; ///< host beyond it that lies over a bury; 0: none
    double fid_reach_m;  ///< how far beyond it a fid comes out; 0: none
    double retained;     ///< share of the rope's strength that is retained; 0: no source says
    uint32_t retained_citation; ///< of that share
} splice_plugin_answer;

/// Where lists of the answer go. Each function takes `host` as it stands here. Order is kept; marks
/// ascend. At most 15 rows, 15 marks, 24 values, 8 cautions and 8 spans.
typedef struct splice_plugin_sink_1 {
    void* host;
    void (*row)(void* host, const splice_plugin_row* row);
    void (*mark)(void* host, uint32_t mark, double from_tail_end_m);
    void (*value)(void* host, uint32_t value, double figure);
    void (*caution)(void* host, uint32_t caution);
    void (*span)(void* host, const splice_plugin_span* span);
} splice_plugin_sink_1;

#define SPLICE_ALLOWANCE_1 "splice.allowance/1"

/// The functions of "splice.allowance/1".
typedef struct splice_plugin_allowance_1 {
    /// Works one end out: a pure function of its request, called by several threads at once. It
    /// returns 0, or refuses the end: it fills `fault` and returns its code, which is one of the
    /// 3xx of `docs/errors.md`, or 612. A refusal below a published minimum (307) names its rule.
    splice_status (*work_out)(const splice_plugin_request* request, splice_plugin_answer* answer,
                              const splice_plugin_sink_1* sink, splice_fault* fault);
} splice_plugin_allowance_1;

/* --- The entry -------------------------------------------------------------------------------- */

/// A table of functions under its id. This record does not grow.
typedef struct splice_plugin_functions {
    const char* id;        ///< SPLICE_ALLOWANCE_1; ids that the host does not know are left alone
    const void* functions; ///< a `const splice_plugin_allowance_1 *`
} splice_plugin_functions;

/// All that a plug-in is. Lists hold at most 256 records.
typedef struct splice_plugin {
    uint32_t size;
    uint32_t epoch;      ///< SPLICE_PLUGIN_EPOCH
    const char* name;    ///< lower-case letters, digits and hyphens
    const char* version; ///< its own
    const char* title;   ///< for people, one line
    uint32_t function_count;
    const splice_plugin_functions* functions;
    uint32_t source_count;
    const splice_plugin_source* sources;
    uint32_t citation_count;
    const splice_plugin_citation* citations;
    uint32_t kind_count;
    const splice_plugin_kind* kinds;
    /* The first layout ended here. */
    const char* ropes; ///< TOML with [[rope]] records, as in `tables/ropes`; null: none
} splice_plugin;

/// What every plug-in defines.
extern SPLICE_API const splice_plugin splice_plugin_entry;

#ifdef __cplusplus
}
#endif

#endif
