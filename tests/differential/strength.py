"""What a line keeps of its rope's strength, and whether it holds its load: docs/strength.md."""

import math

from routes import smallest_sheave
from values import refuse_if

PRINTED = (1, 2, 4, 6, 10, 15, 30, 40)  # what it is bent round, over the wire


def share_in_bend(tables, rope, diameter):
    """Strength that wire keeps in a bend: docs/splices/ferrule-eye.md. Of fibre rope no source gives it. Between
    the printed ratios it runs with the ratio's logarithm; of a thinner pin nothing is said."""
    ratio = diameter / rope.diameter
    figures = [tables.figure(f"bend_{n}", rope) for n in PRINTED]
    if ratio < PRINTED[0] or not figures[0]:
        return None
    shares = [figure.value for figure in figures]
    for low, high, left, right in zip(PRINTED, PRINTED[1:], shares, shares[1:]):
        if ratio < high:
            return left + (right - left) * math.log(ratio / low) / math.log(high / low)
    return shares[-1]


def retained(line, ends):
    """The weakest of what is known: either end, the bend over its pin, over the smallest sheave; None if nothing is."""
    places = [share for end in ends.values() for share in (end.retained, end.bend)]
    sheave = smallest_sheave(line.row["route"]) if "route" in line.row else None
    if sheave:
        places.append(share_in_bend(line.tables, line.rope, sheave))
    return min((share for share in places if share is not None), default=None)


def holds(line, ends):
    """The most that the line holds in newtons, or None. A strength that any such rope has at least says nothing of
    a rope that carries a person."""
    if line.rope.breaking is None or line.rope.cautious and line.yes("carries_person"):
        return None
    kept = retained(line, ends)
    return line.rope.breaking * (1.0 if kept is None else kept)


def check_load(line, ends):
    most = holds(line, ends)
    refuse_if("load" in line.row and most is not None and line.force(line.row["load"]) > most, 412)


def design_factor(line, ends):
    most = holds(line, ends)
    return most / line.force(line.row["load"]) if "load" in line.row and most is not None else None
