"""What a line keeps of its rope's strength, and whether it holds its load: docs/strength.md."""

from values import refuse_if


def retained(ends):
    """The weakest of what is known; None if nothing is."""
    known = [share for end in ends.values() for share in (end.retained, end.bend) if share is not None]
    return min(known, default=None)


def holds(line, ends):
    """The most that the line holds in newtons, or None. A strength that any such rope has at least says nothing of
    a rope that carries a person."""
    if line.rope.breaking is None or line.rope.cautious and line.yes("carries_person"):
        return None
    kept = retained(ends)
    return line.rope.breaking * (1.0 if kept is None else kept)


def check_load(line, ends):
    most = holds(line, ends)
    refuse_if("load" in line.row and most is not None and line.force(line.row["load"]) > most, 412)


def design_factor(line, ends):
    most = holds(line, ends)
    return most / line.force(line.row["load"]) if "load" in line.row and most is not None else None
