// What the C headers stand on: how a call reports what went wrong, and what a field takes.
#ifndef SPLICE_BASE_H
#define SPLICE_BASE_H

#include <stdint.h>

/* Marks what the shared library exports; everything else in it is hidden. */
#if defined(__GNUC__)
#define SPLICE_API __attribute__((visibility("default")))
#else
#define SPLICE_API
#endif

#ifdef __cplusplus
extern "C" {
#endif

/// What a call came to: 0, or the code of a fault, which is 100 or more. Codes are promised for
/// ever; `docs/errors.md` lists them.
typedef int32_t splice_status;

/// What sort of value a field of a kind takes.
enum {
    SPLICE_DIMENSION_LENGTH =
        1, ///< a length in metres; in a job `60 mm`, or a count of diameters: `72 D`
    SPLICE_DIMENSION_COUNT = 2, ///< a whole number
    SPLICE_DIMENSION_RATIO = 3, ///< a plain number; in a job also a percentage
    SPLICE_DIMENSION_CHOICE = 4 ///< one of the field's words, or a name where it lists none
};

/// A fault, in a record that the caller owns. Set `size` to `sizeof(splice_fault)` before the first
/// use; the record may then be used again and again, by one thread at a time. A call that fails
/// fills it, a call that succeeds leaves it as it was. Only the members that lie within `size` are
/// written, so that a program built against an older header goes on working. Texts are UTF-8 and
/// end in a zero byte; what does not fit is cut off between two characters.
typedef struct splice_fault {
    uint32_t size;  ///< bytes of this record as the caller knows it
    int32_t code;   ///< 100 or more
    char text[512]; ///< what is wrong and what to do, in a sentence or two
    char at[256];   ///< `file:line:column`, as far as it is known; may be empty
    char field[64]; ///< the job field or table key at fault, such as `end_a.eye`; may be empty
    char rule[128]; ///< the source of the rule that is broken, if one is; may be empty
} splice_fault;

#ifdef __cplusplus
}
#endif

#endif
