// The C library: from the length a line must finish at to the length of rope to cut.
//
// Units. Every number is in the SI unit that its name ends in: `_m` metres, `_n` newtons, `_nm`
// nanometres. A figure that is not known is NaN. Texts are UTF-8 and end in a zero byte.
//
// Errors. A call that can fail returns 0, or the code of a fault that it describes in the caller's
// record (`splice_base.h`); that record may be null, and is left alone by a call that succeeds.
// Code 801 says that the call itself is wrong: a null pointer where none may be, a record without
// its size, an index past the end. A pointer that may be null says so.
//
// Records. The caller owns every record and sets its first member, `size`, to its `sizeof`. Records
// grow at their end only. In a record that is read, members beyond `size` count as 0, and 0 or null
// means: as usual. Of a record that is filled, only what lies within `size` is written.
//
// Ownership. What an `_open` call hands out is closed by its `_close` call, once; to close null
// does nothing. Texts that a record points to are not the caller's: each call says how long they
// live. Nothing that the caller passes in is kept beyond the call, unless the call says so.
//
// Threads. There is no global state. A book may be used by any number of threads at once. A sheet
// or an end is used by one thread at a time; different ones may be used at once.
#ifndef SPLICE_H
#define SPLICE_H

#include "splice_book.h"

#ifdef __cplusplus
extern "C" {
#endif

// --- Parts of an answer --------------------------------------------------------------------------

/// Which end of a line something belongs to.
enum { SPLICE_END_WHOLE_LINE = 0, SPLICE_END_A = 1, SPLICE_END_B = 2 };

/// A row of a ledger. `length_nm` is exact: the rows of a ledger add up to the last nanometre.
typedef struct splice_row {
    uint32_t size;
    uint32_t end;       ///< SPLICE_END_A, SPLICE_END_B or SPLICE_END_WHOLE_LINE
    const char* item;   ///< what it is, such as `tail`
    const char* group;  ///< rows of one group err together
    const char* source; ///< where the figure comes from
    double length_m;    ///< signed
    double sd_m;        ///< standard deviation; below 0: takes off what its group errs
    int64_t length_nm;
} splice_row;

/// A place to mark on the rope before work starts.
typedef struct splice_mark {
    uint32_t size;
    uint32_t end;      ///< SPLICE_END_A or SPLICE_END_B: the cut end that it is measured from
    const char* name;  ///< such as `far throat`
    double from_end_m; ///< 0 or more
} splice_mark;

/// Something to be careful of.
typedef struct splice_caution {
    uint32_t size;
    uint32_t end;     ///< SPLICE_END_WHOLE_LINE where it belongs to no end
    const char* text; ///< in sentences
    const char* rule; ///< the source of the rule that it rests on; may be empty
} splice_caution;

/// A step of the work at the bench.
typedef struct splice_step {
    uint32_t size;
    uint32_t end;
    const char* text;
} splice_step;

/// A figure of an end.
typedef struct splice_value {
    uint32_t size;
    uint32_t reserved;
    const char* name; ///< ends in its unit, such as `tail_m`, or is a plain number
    double value;
} splice_value;

// --- Sheets: lines in, pieces out ----------------------------------------------------------------

/// Pieces that were cut, in the order of their lines.
typedef struct splice_sheet splice_sheet;

/// How a shop cuts.
typedef struct splice_settings {
    uint32_t size;
    uint32_t steps; ///< 1: keep the steps of the work at each piece's ends
    double risk;    ///< accepted chance that a rope is short: over 0 to 0.5; 0: 0.01
    double step_m;  ///< cut lengths are rounded up to it: 1e-9 to 1; 0: 5 mm, for `exact` 1
                    ///< mm
    const char*
        marking_tension; ///< `reference`, `slack` or a force such as `3 kgf`; null: `reference`
} splice_settings;

/// One cell of a line. This record never grows, since arrays are made of it.
typedef struct splice_cell {
    const char* name; ///< a column of a job file, such as `rope`, `length`, `end_a.eye`, or with
                      ///< the unit of a bare number, `length [m]`
    const char* text; ///< as it stands in a job file; null or empty: not given
} splice_cell;

/// What a sheet came to since it was opened.
typedef struct splice_counts {
    uint32_t size;
    uint32_t reserved;
    uint64_t lines;   ///< lines taken
    uint64_t pieces;  ///< lines times their quantities, without those that are refused
    uint64_t refused; ///< lines that cannot be cut
} splice_counts;

/// A piece. Its texts are the line's own and live until the sheet is cleared or closed.
typedef struct splice_piece {
    uint32_t size;
    int32_t fault_code; ///< 0; or why the line is refused: splice_sheet_piece_fault() tells more
    const char* name;
    const char* boat;
    const char* rope;
    const char* end_a; ///< kind of end
    const char* end_b;
    const char* state;
    const char* pair;
    const char* fit_first;
    const char* lot;
    const char* colour;
    const char* note;
    int64_t quantity;         ///< 1 to 1,000,000
    int64_t cut_nm;           ///< the cut length, exact; 0 in a refused piece
    double cut_m;             ///< NaN in a refused piece
    double finished_m;        ///< NaN where it could not be read
    double between_marks_m;   ///< last mark of end a to last mark of end b; NaN if refused
    double check_reads_m;     ///< bearing point of the end made first to the last mark of the other
                              ///< end's legs, at the marking tension; NaN: no check
    double marking_tension_n; ///< NaN: marked slack, or relaxed and straight
    double retained_strength; ///< share of the rope's strength; NaN: no source gives it
    double design_factor;     ///< breaking strength over the stated load; NaN: not known
    double outside_tolerance; ///< chance of it; NaN: no tolerance
    uint32_t first_end;       ///< SPLICE_END_A or SPLICE_END_B; SPLICE_END_WHOLE_LINE if refused
    uint32_t row_count;       ///< rows of the ledger; 0 in a refused piece
    uint32_t mark_count;      ///< marks of end a, then of end b, ascending
    uint32_t caution_count;
    uint32_t step_count; ///< steps of end a, then of end b; 0 unless the settings keep them
    uint32_t reserved;
} splice_piece;

/// Opens an empty sheet. `settings` may be null. The book must stay open until the sheet is closed.
/// Faults: 113 and 117 for settings.
SPLICE_API splice_status splice_sheet_open(const splice_book* book, const splice_settings* settings,
                                           splice_sheet** sheet, splice_fault* fault);
SPLICE_API void splice_sheet_close(splice_sheet* sheet);

/// Forgets pieces and faults, and keeps what it has learnt of ropes and ends: for jobs that are cut
/// a part at a time. Counts, and the lines that a `pair` is held against, go on.
SPLICE_API splice_status splice_sheet_clear(splice_sheet* sheet, splice_fault* fault);

/// Cuts a job file that is in memory. `text` holds `text_size` bytes, and may be null where that is
/// 0; `name` stands as the file in the places of faults and may be null. A line that cannot be cut
/// becomes a piece with its fault, and the call succeeds. A job that cannot be read as a whole is a
/// fault of the call (101 to 110); the sheet then holds every fault of the file, and the pieces
/// that came before it. No file is opened that a job names: a line whose route is a points file
/// is refused (118).
SPLICE_API splice_status splice_sheet_add_csv(splice_sheet* sheet, const char* text,
                                              uint64_t text_size, const char* name,
                                              splice_fault* fault);
SPLICE_API splice_status splice_sheet_add_toml(splice_sheet* sheet, const char* text,
                                               uint64_t text_size, const char* name,
                                               splice_fault* fault);

/// Cuts one line, given cell by cell. Fault 107 for a name that no job file knows, 104 for one that
/// stands twice; no piece is added then. A line that cannot be cut becomes a piece with its fault.
SPLICE_API splice_status splice_sheet_add_line(splice_sheet* sheet, const splice_cell* cells,
                                               uint32_t cell_count, splice_fault* fault);

/// Pieces on the sheet; 0 where `sheet` is null.
SPLICE_API uint64_t splice_sheet_piece_count(const splice_sheet* sheet);
SPLICE_API splice_status splice_sheet_counts(const splice_sheet* sheet, splice_counts* counts,
                                             splice_fault* fault);

/// Fills the record of the piece at `index`, counted from 0.
SPLICE_API splice_status splice_sheet_piece(const splice_sheet* sheet, uint64_t index,
                                            splice_piece* piece, splice_fault* fault);

/// Why the piece at `index` is refused, written to `why`. A piece that is cut leaves it as it was.
SPLICE_API splice_status splice_sheet_piece_fault(const splice_sheet* sheet, uint64_t index,
                                                  splice_fault* why, splice_fault* fault);

/// Parts of the piece at `piece_index`; `index` is under the count that its record gives. Texts
/// live until the sheet is cleared or closed.
SPLICE_API splice_status splice_sheet_row(const splice_sheet* sheet, uint64_t piece_index,
                                          uint32_t index, splice_row* row, splice_fault* fault);
SPLICE_API splice_status splice_sheet_mark(const splice_sheet* sheet, uint64_t piece_index,
                                           uint32_t index, splice_mark* mark, splice_fault* fault);
SPLICE_API splice_status splice_sheet_caution(const splice_sheet* sheet, uint64_t piece_index,
                                              uint32_t index, splice_caution* caution,
                                              splice_fault* fault);
SPLICE_API splice_status splice_sheet_step(const splice_sheet* sheet, uint64_t piece_index,
                                           uint32_t index, splice_step* step, splice_fault* fault);

/// Lengths of `count` pieces from `first` on, into arrays of the caller's that hold `count` each;
/// any array may be null. `codes` gets 0 or the code of the piece's fault; lengths are NaN as in
/// splice_piece.
SPLICE_API splice_status splice_sheet_lengths(const splice_sheet* sheet, uint64_t first,
                                              uint64_t count, double* cut_m, double* finished_m,
                                              int32_t* codes, splice_fault* fault);

/// Faults of the jobs, those of refused lines among them. The first 200 are kept; 0 where `sheet`
/// is null.
SPLICE_API uint64_t splice_sheet_fault_count(const splice_sheet* sheet);
/// Writes the fault at `index` to `found`.
SPLICE_API splice_status splice_sheet_fault(const splice_sheet* sheet, uint64_t index,
                                            splice_fault* found, splice_fault* fault);

// --- One end -------------------------------------------------------------------------------------

/// One end worked out.
typedef struct splice_end splice_end;

/// What an end comes to.
typedef struct splice_end_facts {
    uint32_t size;
    uint32_t row_count;
    int64_t allowance_nm; ///< rope beyond the bearing point, the exact sum of the rows
    double allowance_m;
    double retained_strength; ///< share of the rope's strength; NaN: no source gives it
    uint32_t mark_count;
    uint32_t value_count;
    uint32_t step_count;
    uint32_t caution_count;
} splice_end_facts;

/// Works out one end. `rope` is an id of the tables or a description such as `12-strand HMPE 5 mm`;
/// the cells are fields of the kind, and `rule`. Faults: 2xx where kind or rope is not known, 3xx
/// where the end cannot be made. The book must stay open until the end is closed.
SPLICE_API splice_status splice_end_open(const splice_book* book, const char* kind,
                                         const char* rope, const splice_cell* fields,
                                         uint32_t field_count, splice_end** end,
                                         splice_fault* fault);
SPLICE_API void splice_end_close(splice_end* end);

SPLICE_API splice_status splice_end_describe(const splice_end* end, splice_end_facts* facts,
                                             splice_fault* fault);

/// Parts of an end; `index` is under the count that its facts give. The member `end` of each is
/// SPLICE_END_A. Texts live until the end is closed.
SPLICE_API splice_status splice_end_row(const splice_end* end, uint32_t index, splice_row* row,
                                        splice_fault* fault);
SPLICE_API splice_status splice_end_mark(const splice_end* end, uint32_t index, splice_mark* mark,
                                         splice_fault* fault);
SPLICE_API splice_status splice_end_value(const splice_end* end, uint32_t index,
                                          splice_value* value, splice_fault* fault);
SPLICE_API splice_status splice_end_step(const splice_end* end, uint32_t index, splice_step* step,
                                         splice_fault* fault);
SPLICE_API splice_status splice_end_caution(const splice_end* end, uint32_t index,
                                            splice_caution* caution, splice_fault* fault);

// --- Many ends at once ---------------------------------------------------------------------------

/// Values of one field, an end each. This record never grows.
typedef struct splice_field_column {
    const char* field;    ///< a field of the kind's own
    const double* values; ///< `count` numbers in SI units, or indices of a choice's words; NaN: not
                          ///< given
} splice_field_column;

/// Values of one sort that are wanted, an end each. This record never grows.
typedef struct splice_value_column {
    const char* name; ///< such as `tail_m`
    double* values;   ///< room for `count` numbers; NaN where an end has no such value
} splice_value_column;

/// Ends of one kind in one rope, which differ in their fields.
typedef struct splice_batch {
    uint32_t size;
    uint32_t field_count;
    const char* kind;
    const char* rope;
    const char* rule;                  ///< a named rule of the tables; null: the kind's default
    const splice_field_column* fields; ///< `field_count` of them; may be null where that is 0
    uint64_t count;                    ///< ends to work out
    double* allowances_m; ///< room for `count`; NaN where an end cannot be made; may be
                          ///< null
    int32_t* codes;       ///< room for `count`: 0, or why an end cannot be made; may be
                          ///< null
    const splice_value_column* values; ///< `value_count` of them; may be null where that is 0
    uint32_t value_count;
    uint32_t reserved;
} splice_batch;

/// Works out the ends of a batch. An end that cannot be made does not stop the others. Faults: 2xx
/// where kind or rope is not known, 302 for a field that the kind does not have, 311 for a rule,
/// 801 for a value that no end has. Several threads may share one book, each with its own batch.
SPLICE_API splice_status splice_work_out_batch(const splice_book* book, const splice_batch* batch,
                                               splice_fault* fault);

#ifdef __cplusplus
}
#endif

#endif
