"""Cover and core as two ropes: does the part that carries the load run round the eye, and back into the rope?"""

from sheet import CLOSE

CARRIES = {"core-dependent": {"core"}, "laid-core": {"core"}, "parallel-core": {"core"}, "double-braid": {"core", "cover"}}


def carrying(rope):
    for construction, parts in CARRIES.items():
        if construction in rope:
            return parts
    return set()


def eye_span(sheet, end):
    """The rope of the eye on the tape: as long as the ledger has it, up to the far throat."""
    rope = sheet.sum(end, ("rope round the eye",))
    if rope <= 0:
        return None
    for far in (mark for mark in sheet.marks if mark.end == end and mark.name == "far throat"):
        return far.at - rope, far.at
    return None


def runs_round(state, span, part):
    start, stop = span
    if part == "cover":  # one that is cut off was never meant to: the sheet says what is lost
        return state.parts["cover"].gone <= start + CLOSE or state.parts["cover"].gone >= stop - CLOSE
    if any(of == "core" and (tail, host) == span for tail, host, of in state.loops):
        return True  # the loop is of the bare core itself
    if state.core_out is None or state.core_out <= start + CLOSE:
        return True
    covered = start
    for entry, out in sorted(state.core_led):
        if entry <= covered + CLOSE:
            covered = max(covered, out)
    return covered >= stop - CLOSE


def broken(model):
    """Covered eyes round which the load does not run."""
    parts = carrying(model.sheet.piece["rope"])
    for end in "ab":
        state = model.ends[end]
        if not parts or state.core_out is None or not state.closed:
            continue
        span = eye_span(model.sheet, end)
        for part in sorted(parts if span else ()):
            if not runs_round(state, span, part):
                yield f"the {part} carries the load and does not run round the eye of end {end}"
        for part in sorted(parts):
            if part == "cover" and state.parts["cover"].gone > CLOSE:
                continue
            if part not in state.anchored and "rope" not in state.anchored:
                yield f"the {part} carries the load and its tail is not held in the standing part of end {end}"
