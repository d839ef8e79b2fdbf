"""Where the program is held to be wrong: such lines are kept out of the random jobs until it is mended, each for
one reason. Every entry turns a row into one that says the same without the fault."""

from ends import KINDS
from jobs import BOTH_ENDS
from line import Bench, Line
from plain import KINDS as ONLY_CUT


def exact_from_a_cut_end(row, _tables=None):
    """An exact line whose end made first is only cut has no check, though every exact line is to have one: the
    made end is made first here."""
    first = row.get("first_end", "a")
    last = "b" if first == "a" else "a"
    kinds = {end: row.get(f"end_{end}", "bare") for end in "ab"}
    if row.get("fit") == "exact" and kinds[first] in ONLY_CUT and kinds[last] in KINDS and kinds[last] not in ONLY_CUT:
        row["first_end"] = last


def core_kept_with_a_short_tail(row, _tables=None):
    """A core-eye whose core is kept in has its cover's tail cut to 100 mm, also where the tail is shorter: that mark
    then lies off the rope. Such a tail is left to its rule here."""
    for end in "ab":
        tail = row.get(f"end_{end}.tail", "")
        if row.get(f"end_{end}.way") == "core-kept" and tail.endswith("mm") and float(tail.split()[0]) < 100:
            del row[f"end_{end}.tail"]


def share_of_an_unknown_strength(row, tables):
    """A length asked for at a share of a strength that is not known needs the reference tension as a share too. No
    document says which; the program takes half a per cent."""
    if row.get("tension", "").endswith("%") and Line(tables, Bench(), row).rope.breaking is None:
        del row["tension"]


def lap_without_its_length(row, _tables=None):
    """The lap of a stitched-eye has a spread unless the job gives it. The bench measures it off, so it has none."""
    for end in "ab":
        if row.get(f"end_{end}") == "stitched-eye":
            row.setdefault(f"end_{end}.overlap", "15 D")


def closed_line_made_last(row, _tables=None):
    """A line that one row closes is refused where `first_end` names its empty end and it is cut to fit aboard, though
    such a line has no order of ends."""
    for end in "ab":
        if row.get(f"end_{end}") in BOTH_ENDS:
            row["first_end"] = end


def load_on_a_rope_only_described(row, tables):
    """A load above the cautious strength of a rope that is only described is cut with a caution, though a line that
    does not hold its load is to be refused."""
    if Line(tables, Bench(), row).rope.cautious:
        row.pop("load", None)


def exit_before_the_tail_ends(row, _tables=None):
    """Where a cover's tail goes into a core, an exit nearer than the tail is long is not refused, or too late: the
    tail starts a short section beyond the join."""
    for end in "ab":
        if row.get(f"end_{end}") in ("cover-core-eye", "end-for-end"):
            row.pop(f"end_{end}.exit", None)
        tail = row.get(f"end_{end}.tail", "")
        if row.get(f"end_{end}") == "cover-core-eye" and tail and float(tail.split()[0]) > 28:
            row[f"end_{end}.tail"] = "28 D"


def person_on_a_lashing(row, tables):
    """Half hitches slip in bare HMPE, and a hitch that slips is refused for a person; a lashing is not."""
    if tables.rope(row["rope"]).fibre == "HMPE" and "lashing" in (row.get("end_a"), row.get("end_b")):
        row.pop("carries_person", None)


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


def measured_for_nothing(row, tables):
    """An eye in wire, and a route, are worked out for the nominal diameter also where the measured one is known."""
    rope = tables.rope(row["rope"])
    if rope.construction == "wire" or "route" in row:
        row.pop("rope_measured", None)
    if "route" in row and rope.diameter != rope.nominal:
        del row["route"]
        row["length"] = "5.2 m"



EXCEPTIONS = [exact_from_a_cut_end, core_kept_with_a_short_tail, share_of_an_unknown_strength, lap_without_its_length,
              closed_line_made_last, load_on_a_rope_only_described,
              exit_before_the_tail_ends, person_on_a_lashing, made_aboard_with_a_cut_end,
              captive_in_a_strops_second_eye, measured_for_nothing]


def keep_out(row, tables):
    for exception in EXCEPTIONS:
        exception(row, tables)
    return row
