"""Where the program is held to be wrong: such lines are kept out of the random jobs until it is mended, each for
one reason. Every entry turns a row into one that says the same without the fault."""

from ends import KINDS
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
    if row.get("tension", "").endswith("%") and tables.rope(row["rope"]).breaking is None:
        del row["tension"]


EXCEPTIONS = [exact_from_a_cut_end, core_kept_with_a_short_tail, share_of_an_unknown_strength]


def keep_out(row, tables):
    for exception in EXCEPTIONS:
        exception(row, tables)
    return row
