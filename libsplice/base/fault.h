// What can be wrong with the world: a code, a sentence, a place and, where a rule is broken, the
// rule.
#pragma once

#include "libsplice/base/place.h"

#include <cstdint>
#include <span>
#include <string>
#include <string_view>

namespace libsplice {

/// Codes are promised for ever: a number is never used again for something else. The hundreds name
/// the stage: 1 job, 2 catalogue, 3 allowance, 4 cut, 5 reel, 6 plug-in, 7 writing, 8 the calls of
/// the C library.
/// `docs/errors.md` lists them all; a test compares.
enum class Code : std::uint16_t {
    file_unreadable = 101,
    not_utf8 = 102,
    no_heading = 103,
    duplicate_column = 104,
    bad_quotes = 105,
    broken_toml = 106,
    unknown_column = 107,
    too_many_columns = 108,
    too_many_cells = 109,
    cell_too_long = 110,
    cell_missing = 111,
    not_a_length = 112,
    not_a_tension = 113,
    not_a_number = 114,
    not_a_choice = 115,
    length_or_route = 116,
    value_out_of_range = 117,
    route_not_readable = 118,
    not_a_rope = 119,
    foreign_file = 120,

    tables_missing = 201,
    table_unreadable = 202,
    table_key_missing = 203,
    table_value_wrong = 204,
    source_unknown = 205,
    duplicate_record = 206,
    unknown_rope = 207,
    rope_not_understood = 208,
    unknown_kind = 209,
    strength_missing = 210,
    stretch_missing = 211,
    case_file_empty = 212,
    beyond_stretch = 213,
    nothing_to_learn = 214,

    wrong_construction = 301,
    unknown_field = 302,
    field_unreadable = 303,
    field_out_of_range = 304,
    field_missing = 305,
    eye_too_small = 306,
    below_published_minimum = 307,
    size_not_printed = 308,
    throat_too_wide = 309,
    taper_longer_than_tail = 310,
    unknown_rule = 311,
    figure_missing = 312,

    buries_overlap = 401,
    nothing_left = 402,
    refused_for_person = 403,
    slack_for_exact = 404,
    measured_relaxed = 405,
    tolerance_without_exact = 406,
    cannot_be_both = 407,
    strip_does_not_fit = 408,
    pair_unlike = 409,
    route_impassable = 410,
    overloaded = 412,
    order_impossible = 413,

    piece_longer_than_reels = 501,
    rope_not_on_stock = 502,
    stock_runs_out = 503,
    lot_cannot_hold = 504,
    duplicate_stock = 505,
    stock_changed = 506,
    stock_locked = 507,
    rope_unbalanced = 508,

    plug_in_unreadable = 601,
    plug_in_foreign = 602,
    plug_in_epoch = 603,
    plug_in_size = 604,
    plug_in_text = 605,
    plug_in_declaration = 606,
    plug_in_kind_exists = 607,
    plug_in_function_missing = 608,
    plug_in_source = 609,
    plug_in_tables = 610,
    plug_in_threw = 611,
    plug_in_refused = 612,
    plug_in_number = 613,
    plug_in_row_without_source = 614,
    plug_in_answer = 615,
    plug_in_twice = 616,

    cannot_write = 701,

    wrong_call = 801,
    out_of_memory = 802,
};

/// One line of `docs/errors.md`.
struct CodeTitle {
    Code code;
    std::string_view title;
};

/// Every code with its short title, in order.
[[nodiscard]] std::span<const CodeTitle> all_codes();

/// A fault: what is wrong and what to do, in one sentence or two, with the place it stands at.
struct Fault {
    Code code;
    std::string text;       ///< a sentence in plain words, numbers included
    Place at = {};          ///< where, if known
    std::string field = {}; ///< the job field or table key at fault, e.g. `end_a.eye`; may be empty
    std::string rule = {};  ///< the source of the broken rule, if one was broken; may be empty
};

/// `file:line:column: error CODE: sentence`, with what could drive a terminal shown escaped.
[[nodiscard]] std::string to_text(const Fault& fault);

} // namespace libsplice
