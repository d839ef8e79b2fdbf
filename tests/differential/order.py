"""What fits on the line, and in which order it can be made: docs/errors.md, 401 to 413."""

from values import nanometres, refuse_if


def check_room(ends, path):
    between = path - sum(end.to_throat for end in ends.values())
    refuse_if(between <= 0, 402)
    host = sum(end.host for end in ends.values())
    taken = sum(end.allowance() - end.far + end.to_throat for end in ends.values() if end.host)
    refuse_if(host and between + taken < host, 401)


def check_person(line, ends):
    if line.yes("carries_person"):
        refuse_if(any(end.unfit_for_person for end in ends.values()), 403)
        refuse_if(any(nanometres(e.tail) < nanometres(e.person_tail) for e in ends.values()), 403)


def made(line, end):
    """Where an end is made; the last of a line that is cut to fit aboard is made there."""
    last_aboard = end == line.last and line.fit == "trim-aboard"
    return "aboard" if last_aboard else line.fields(end).get("made", "bench")


def check_made(line):
    """The end made first is made at the bench, unless both are made aboard. A closed line has no end that is first."""
    if line.closed:
        return
    refuse_if(made(line, line.first) == "aboard" and made(line, line.last) != "aboard", 407)


def check_order(line, ends):
    """What cannot be drawn through or hung, whatever the order: an end with a closed fitting, or one made before."""
    refuse_if(all(end.kind == "larked-eye" for end in ends.values()), 413)
    for e, other in ("ab", "ba"):
        fields, late = line.fields(e), e == line.last and not line.closed
        closed_ring = fields.get("captive") == "yes"
        refuse_if(closed_ring and "fitting" not in fields, 305)
        refuse_if(closed_ring and ends[e].keeps == "cut", 413)  # no eye holds it
        # The other end does not pass once it is made, carries something, or is rove.
        passes = not (late and (ends[other].keeps != "cut" or "fitting" in line.fields(other)
                                or made(line, e) == "aboard"))
        free = fields.get("far_end", "free" if passes else "fixed") == "free"
        if ends[e].kind == "locked-eye":
            refuse_if(free and not passes, 413)
            refuse_if(closed_ring and not free, 413)
        refuse_if(ends[e].kind == "two-eye-strop" and closed_ring, 413)
        refuse_if(ends[e].kind == "larked-eye" and late and (
            line.fields(other).get("captive") == "yes"
                or "route" in line.row and ends[other].keeps != "cut"), 413)
