"""The tape on the finished line: every row is in it or was cut off by a step that said so, and it reads true."""

from sheet import CLOSE, KEPT, LINE, OFF_THE_TAPE, SURPLUS, is_plain

SETTLING = ("settling", "setting", "crossing closes up")


def mm(length):
    return f"{length / 1e6:.3f} mm"


def unbalanced(sheet):
    total = sum(length for _, _, length in sheet.ledger)
    if total != sheet.cut:
        yield f"the rows add up to {mm(total)}, and {mm(sheet.cut)} is cut"


def ill_marked(sheet):
    """Marks that nobody can put on, or that would fill the sheet."""
    for end in "ab":
        marks = sorted((mark for mark in sheet.marks if mark.end == end), key=lambda mark: mark.at)
        for mark in marks:
            if mark.at <= 0 and mark.name != "bearing point":  # of a cut that costs nothing
                yield f"{mark} lies on the very end"
        for before, mark in zip(marks, marks[1:]):
            both_drop = before.name.startswith("drop pair") and mark.name.startswith("drop pair")
            if both_drop and before.number != mark.number:
                yield f"{before} and {mark} have a row each"


def broken(model):
    """What does not hold of the finished line, in words."""
    sheet = model.sheet
    if model.bench:
        yield f"{', '.join(model.bench)} was never put on the line"
    for end in "ab":
        if sheet.captive(end) and not is_plain(sheet, end) and sheet.captive(end) not in model.ends[end].holds:
            yield f"{sheet.captive(end)} was never put into end {end}"
    if sheet.joined:
        yield from unmade(model, sheet.joined)
        yield from left_over(model, sheet.joined)
        return
    for end in "ab":
        yield from unmade(model, end)
        yield from left_over(model, end)
    yield from misread(sheet)


def unmade(model, end):
    state = model.ends[end]
    if not is_plain(model.sheet, end) and not state.closed:
        yield f"end {end} is never made"
    hanging = [name for name, part in state.parts.items() if part.led]
    if hanging:
        yield f"the tail of end {end} still hangs out ({', '.join(hanging)})"


def left_over(model, end):
    """What was cut off at this end against the rows that may go, and the rows that may not."""
    sheet = model.sheet
    gone = model.ends[end].parts["rope"].gone
    surplus, kept = sheet.sum(end, SURPLUS), sheet.sum(end, KEPT)
    loss = sheet.sum(end, ("cutting loss",))
    if is_plain(sheet, end):
        if sheet.fit != "exact":
            if gone > loss + CLOSE:
                yield f"{mm(gone)} is cut off end {end} at the bench, and its last cut is made aboard"
            if surplus + kept > CLOSE and end == sheet.last and end not in model.aboard:
                yield f"no step says that end {end} gets its last cut aboard"
        elif gone < surplus - CLOSE:
            yield f"end {end} is {mm(surplus - gone)} too long: no step cuts off what is over"
    elif gone < surplus - CLOSE:
        yield f"{mm(surplus - gone)} outside the tail of end {end} was never cut off"
    elif kept > CLOSE and gone > surplus + loss + CLOSE:
        yield f"rope for wear and for cutting to fit was cut off at end {end}"


def standing(sheet, end):
    """From the cut end to where the standing part begins."""
    return sheet.sum(end, SURPLUS + KEPT) + sheet.own_rope(end)


def misread(sheet):
    """Bearing point to bearing point, over the marks and not over the rows."""
    marked = {}
    for end in "ab":
        wanted = standing(sheet, end)
        near = [mark for mark in sheet.marks if mark.end == end and abs(mark.at - wanted) <= CLOSE]
        if not near:
            yield f"no mark of end {end} lies at {mm(wanted)}, where its standing part begins"
            return
        marked[end] = near[0].at
    between = sheet.cut - marked["a"] - marked["b"]
    beyond = {end: sheet.sum(end, OFF_THE_TAPE) for end in "ab"}
    wanted = sum(length for item, _, length in sheet.ledger if item in LINE)
    reads = between - beyond["a"] - beyond["b"]
    if abs(reads - wanted) > CLOSE:
        yield f"from bearing point to bearing point it reads {mm(reads)}, and {mm(wanted)} is wanted"
    if sheet.check:
        yield from misread_check(sheet, between)


def misread_check(sheet, between):
    first = sheet.check["from"]
    settled = sheet.sum(first, OFF_THE_TAPE)
    spliced = settled - sheet.sum(first, SETTLING)
    for key, beyond in (("reads_m", spliced), ("reads_loaded_m", settled)):
        said = sheet.check.get(key)
        if said is not None and abs(round(said * 1e9) - (between - beyond)) > CLOSE:
            yield f"the check says {said * 1e3:.3f} mm ({key}), and the tape reads {mm(between - beyond)}"
