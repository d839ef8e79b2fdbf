// Books: tables and kinds of end, and all that a form needs to know of them. `splice.h` includes
// this, and says what holds for every call.
#ifndef SPLICE_BOOK_H
#define SPLICE_BOOK_H

#include "splice_base.h"

#ifdef __cplusplus
extern "C" {
#endif

/* The version of these headers. */
#define SPLICE_VERSION_MAJOR 0
#define SPLICE_VERSION_MINOR 1
#define SPLICE_VERSION_PATCH 0

/// The library's version, `major.minor.patch`. It lives as long as the library is loaded.
SPLICE_API const char* splice_version(void);

/// Tables and kinds of end. It does not change once it is open.
typedef struct splice_book splice_book;

/// What a book is made of.
typedef struct splice_book_options {
    uint32_t size;
    uint32_t folder_count;      ///< number of `folders`; 0: the library's own tables
    const char* const* folders; ///< folders of tables, the lowest in precedence first; a record of
                                ///< a later one replaces the record of the same id
    uint32_t plug_in_count;     ///< number of `plug_ins`
    uint32_t reserved;
    const char* const* plug_ins; ///< files of plug-ins to load, in this order
} splice_book_options;

/// Opens a book. `options` may be null. The library's own tables are those of the environment's
/// `LIBSPLICE_TABLES` (folders separated by colons), else `share/libsplice/tables` beside the
/// library, else where it was built to be installed. Folders given lie on top of them, unless the
/// first holds a `constructions.toml`, and so stands alone. Faults: 2xx for tables, of which the
/// first is reported, 6xx for plug-ins; `*book` is null then. It takes some milliseconds.
SPLICE_API splice_status splice_book_open(const splice_book_options* options, splice_book** book,
                                          splice_fault* fault);

/// Closes a book. Every sheet and end made with it must be closed before.
SPLICE_API void splice_book_close(splice_book* book);

/// The versions of all folders of tables, such as `2026.11 + shop 3`. It lives as long as the book.
/// Null where `book` is null.
SPLICE_API const char* splice_book_tables(const splice_book* book);

/// A kind of end. Its texts live as long as the book.
typedef struct splice_kind {
    uint32_t size;
    uint32_t field_count;             ///< fields of its own, then those that every end has
    const char* name;                 ///< the trade's term, such as `buried-eye`
    const char* title;                ///< one line for people
    const char* datum;                ///< the bearing point that lengths are measured to
    const char* const* constructions; ///< the constructions that it is made in
    uint32_t construction_count;
    uint32_t own_field_count; ///< those of `field_count` that splice_end_open() and the batch take
} splice_kind;

/// A field of a kind: all that a form needs. Its texts live as long as the book.
typedef struct splice_field {
    uint32_t size;
    uint32_t dimension;         ///< SPLICE_DIMENSION_LENGTH and so on
    const char* name;           ///< as in `end_a.NAME` of a line
    const char* also;           ///< another word for it; may be empty
    const char* meaning;        ///< one line for people
    const char* default_text;   ///< what holds where it is not given, in words
    const char* unit;           ///< `m` for a length, otherwise empty
    double lowest;              ///< in SI units, inclusive; NaN for a choice
    double highest;             ///< in SI units, inclusive; NaN for a choice
    uint32_t required;          ///< 1: it must be given
    uint32_t choice_count;      ///< number of `choices`
    const char* const* choices; ///< the words of a choice
} splice_field;

/// A rope of the tables. Its texts live as long as the book.
typedef struct splice_rope {
    uint32_t size;
    uint32_t generic;            ///< 1: it stands for any rope of its construction, fibre and size
    const char* id;              ///< what a line's `rope` names it by
    const char* title;           ///< for people
    const char* construction;    ///< such as `12-strand`
    const char* fibre;           ///< of what bears the load
    const char* breaking_source; ///< where `breaking_n` comes from; empty where that is NaN
    double diameter_m;           ///< nominal
    double breaking_n;           ///< minimum breaking strength; NaN: no source gives one
} splice_rope;

/// A document that figures come from. Its texts live as long as the book.
typedef struct splice_source {
    uint32_t size;
    uint32_t reserved;
    const char* key; ///< what a row's `source` starts with
    const char* title;
    const char* terms; ///< why it is cited for figures only
} splice_source;

/// How many kinds, ropes and sources a book has; 0 where `book` is null.
SPLICE_API uint64_t splice_book_kind_count(const splice_book* book);
SPLICE_API uint64_t splice_book_rope_count(const splice_book* book);
SPLICE_API uint64_t splice_book_source_count(const splice_book* book);

/// Fills the record of the kind, rope or source at `index`, counted from 0.
SPLICE_API splice_status splice_book_kind(const splice_book* book, uint64_t index,
                                          splice_kind* kind, splice_fault* fault);
SPLICE_API splice_status splice_book_rope(const splice_book* book, uint64_t index,
                                          splice_rope* rope, splice_fault* fault);
SPLICE_API splice_status splice_book_source(const splice_book* book, uint64_t index,
                                            splice_source* source, splice_fault* fault);

/// Fills the record of one field of the kind at `kind_index`; `field_index` is under its
/// `field_count`.
SPLICE_API splice_status splice_book_field(const splice_book* book, uint64_t kind_index,
                                           uint64_t field_index, splice_field* field,
                                           splice_fault* fault);

/// The index of the kind of that name. Fault 209 names the nearest.
SPLICE_API splice_status splice_book_find_kind(const splice_book* book, const char* name,
                                               uint64_t* index, splice_fault* fault);

#ifdef __cplusplus
}
#endif

#endif
