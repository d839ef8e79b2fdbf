"""Strength that wire keeps in a bend: docs/splices/ferrule-eye.md. Of fibre rope no source gives it."""

import math

PRINTED = (1, 2, 4, 6, 10, 15, 30, 40)  # what it is bent round, over the wire


def share_in_bend(tables, rope, diameter):
    """Between the printed ratios it runs with the ratio's logarithm; of a thinner pin nothing is said."""
    ratio = diameter / rope.diameter
    figures = [tables.figure(f"bend_{n}", rope) for n in PRINTED]
    if ratio < PRINTED[0] or not figures[0]:
        return None
    shares = [figure.value for figure in figures]
    for low, high, left, right in zip(PRINTED, PRINTED[1:], shares, shares[1:]):
        if ratio < high:
            return left + (right - left) * math.log(ratio / low) / math.log(high / low)
    return shares[-1]
