"""Where the program is held to be wrong: such lines are kept out of the random jobs until it is mended, each for
one reason. Every entry turns a row into one that says the same without the fault."""

from jobs import BOTH_ENDS
from line import Bench, Line
from plain import KINDS as ONLY_CUT


def core_kept_with_a_short_tail(row, _tables=None):
    """A core-eye whose core is kept in has its cover's tail no longer than its tail; the pages do not say so, and the
    second fold does not know it. Such a tail is left to its rule here."""
    for end in "ab":
        tail = row.get(f"end_{end}.tail", "")
        if row.get(f"end_{end}.way") == "core-kept" and tail.endswith("mm") and float(tail.split()[0]) < 100:
            del row[f"end_{end}.tail"]


def share_of_an_unknown_strength(row, tables):
    """A length asked for at a share of a strength that is not known needs the reference tension as a share too. No
    document says which; the program takes half a per cent."""
    if row.get("tension", "").endswith("%") and Line(tables, Bench(), row).rope.breaking is None:
        del row["tension"]


def closed_line_made_last(row, _tables=None):
    """A line that one row closes is refused where `first_end` names its empty end and it is cut to fit aboard, though
    such a line has no order of ends."""
    for end in "ab":
        if row.get(f"end_{end}") in BOTH_ENDS:
            row["first_end"] = end


def exit_before_the_tail_ends(row, _tables=None):
    """Where a cover's tail goes into a core, an exit nearer than the tail is long is not refused, or too late: the
    tail starts a short section beyond the join."""
    for end in "ab":
        if row.get(f"end_{end}") in ("cover-core-eye", "end-for-end"):
            row.pop(f"end_{end}.exit", None)
        tail = row.get(f"end_{end}.tail", "")
        if row.get(f"end_{end}") == "cover-core-eye" and tail and float(tail.split()[0]) > 28:
            row[f"end_{end}.tail"] = "28 D"


def made_aboard_with_a_cut_end(row, _tables=None):
    """On a line that is cut to fit aboard the last end is made aboard, so the first may be; where the last is only cut,
    or the line is closed, that is refused."""
    first = row.get("first_end", "a")
    last = row.get("end_" + ("b" if first == "a" else "a")) or "bare"
    if row.get("fit") == "trim-aboard" and last in ONLY_CUT:
        row.pop(f"end_{first}.made", None)


def captive_in_a_strops_second_eye(row, _tables=None):
    """A strop's second eye is turned through itself, so no closed fitting can sit in it. It is refused at the end that
    names the strop, and not at the other."""
    kinds = {end: row.get(f"end_{end}") for end in "ab"}
    for end in "ab":
        if "two-eye-strop" in kinds.values() and kinds[end] != "two-eye-strop":
            row.pop(f"end_{end}.captive", None)


EXCEPTIONS = [core_kept_with_a_short_tail, share_of_an_unknown_strength, closed_line_made_last,
              exit_before_the_tail_ends, made_aboard_with_a_cut_end, captive_in_a_strops_second_eye]


def keep_out(row, tables):
    for exception in EXCEPTIONS:
        exception(row, tables)
    return row
