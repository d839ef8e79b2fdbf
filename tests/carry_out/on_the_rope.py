"""Actions on the rope itself: marks, cuts, thinning, and what goes inside what."""

from model import Refused, refuse_if
from sheet import CLOSE, KEPT, SURPLUS


def ends_of(model, step):
    """The ends that a step works on: its own, or both sides of a join."""
    if model.sheet.joined and (step.end in (None, model.sheet.joined)):
        return model.sheet.sides[id(step)]
    return [step.end] if step.end else ["a", "b"]


def marks_of(model, step, end):
    if step.end in (None, end) or not model.sheet.joined:
        return [model.place(end, number) for number in step.at]
    alike = [model.sheet.alike(model.place(step.end, number), end) for number in step.at]
    return [mark for mark in alike if mark]


def put_marks_on(model, step):
    for end in ends_of(model, step):
        state = model.ends[end]
        wanted = [mark.number for mark in marks_of(model, step, end)] if step.at else sorted(
            {m.number for m in model.sheet.marks if m.end == end} - state.marked)
        refuse_if(state.squared and end not in model.aboard,
                  f"marks of end {end} are counted from where it was before it was cut square")
        for number in wanted:
            for mark in model.sheet.mark(end, number):
                refuse_if(mark.at < state.parts["rope"].gone - CLOSE, f"{mark} is put on rope that has been cut off")
                refuse_if(any(p.lies_inside(mark.at) for n, p in state.parts.items() if n in ("rope", step.part)),
                          f"{mark} is put on a part that is inside")
            state.marked.add(number)


def tape(model, step):
    for end in ends_of(model, step):
        for mark in marks_of(model, step, end):
            part = model.ends[end].parts[step.part]
            refuse_if(mark.at < part.gone - CLOSE, f"{mark} lies on rope that has been cut off")
            refuse_if(part.lies_inside(mark.at), f"tape at {mark}, which is inside")
            model.ends[end].marked.add(mark.number)
        model.ends[end].dressed = model.ends[end].dressed or not step.at


def cut(model, step):
    """All outside the mark goes. Without a mark the raw end is cut square, and only the cutting loss goes."""
    for end in ends_of(model, step):
        state = model.ends[end]
        part = state.parts[step.part]
        marks = marks_of(model, step, end)
        refuse_if(not marks and (state.closed or state.loop), f"end {end} is cut when it is made")
        state.squared = state.squared or not marks
        for mark in marks:
            at = model.usable(mark, step.part)
            refuse_if(part.lies_inside(part.gone), f"the end that is cut at {mark} lies inside")
            if step.part == "rope":
                refuse_if(state.closed, f"end {end} is cut at {mark} when it is made")
                may_go(model, end, part.gone, at, step)
                state.cuts.append((part.gone, at, step.text))
            part.gone = max(part.gone, at)


def trim(model, step):
    """The same, measured and cut in one: the place is marked by this step itself."""
    for end in ends_of(model, step):
        state = model.ends[end]
        refuse_if(state.dressed or state.squared, f"end {end} was dressed or cut square, and that is trimmed off")
        for mark in marks_of(model, step, end):
            state.marked.add(mark.number)
    cut(model, step)


def may_go(model, end, start, stop, step):
    """What a cut takes off is spare, rounding, milked-out cover and the cutting loss, and nothing else."""
    sheet = model.sheet
    loss = sheet.sum(end, ("cutting loss",))
    surplus, kept = sheet.sum(end, SURPLUS), sheet.sum(end, KEPT)
    if stop > surplus + loss + CLOSE:
        held = ", ".join(item for item, length in sheet.rows(end, KEPT) if length > 0)
        refuse_if(held, f"the cut at {stop / 1e6:.1f} mm takes off {held}")
        raise Refused(f"the cut at {stop / 1e6:.1f} mm takes off {(stop - surplus - loss) / 1e6:.1f} mm of what "
                      f"end {end} is made from")
    refuse_if(stop > surplus + kept + loss + CLOSE, "the cut takes off rope that no row has added")
    if stop > start + loss + CLOSE:
        for item, length in sheet.rows(end, SURPLUS):
            refuse_if(length > 0 and not names(step.text, item), f"the step cuts off {item} and does not name it")


def names(text, item):
    words = {"milk-out": ("milk",), "spare": ("spare",), "rounding": ("rounding",)}
    return any(word in text for word in words[item])


def unlay(model, step):
    for end in ends_of(model, step):
        for mark in marks_of(model, step, end):
            model.usable(mark, step.part)
            part = model.ends[end].parts[step.part]
            refuse_if(part.lies_inside(part.gone), f"strands are opened at {mark} when the end lies inside")
            part.opened = max(part.opened or 0, mark.at)


def strip(model, step):
    for end in ends_of(model, step):
        places = [model.usable(mark, step.part) for mark in marks_of(model, step, end)]
        if step.part == "core":
            continue  # the wrapping of a core, which carries nothing
        refuse_if(not places, "a cover is taken off from nowhere")
        if len(places) == 1:
            model.ends[end].parts["cover"].gone = max(model.ends[end].parts["cover"].gone, places[0])
        else:
            model.ends[end].parts["cover"].bare.append((min(places), max(places)))


def draw_core(model, step):
    for end in ends_of(model, step):
        for mark in marks_of(model, step, end):
            at = model.usable(mark, "cover")
            state = model.ends[end]
            refuse_if(state.closed, f"the core is drawn out at {mark} when the end is made")
            refuse_if(state.parts["core"].inside, f"the core is drawn out at {mark} when it is buried")
            state.core_out = max(state.core_out or 0, at)
            state.core_led = [(start, stop) for start, stop in state.core_led if stop <= at]


def taper(model, step):
    for end in ends_of(model, step):
        model.ends[end].dressed = model.ends[end].dressed or not step.at
        for mark in marks_of(model, step, end)[:1]:
            at = model.usable(mark, step.part)
            part = model.ends[end].parts[step.part]
            refuse_if(part.lies_inside(part.gone), f"the tail is thinned from {mark} when its end lies inside")
            over = model.sheet.sum(end, SURPLUS + KEPT) - max(part.gone, model.ends[end].parts["rope"].gone)
            refuse_if(over > CLOSE, f"the tail is thinned from {mark} before {over / 1e6:.1f} mm outside its end "
                      "are cut off")
            part.thinned = at


def lead_in(model, step):
    """The tail goes in and hangs out at the exit; the eye that it closes holds what is in it."""
    for end in ends_of(model, step):
        state = model.ends[end]
        part = state.parts[step.part]
        places = [model.usable(mark, inside_allowed=False) for mark in marks_of(model, step, end)]
        refuse_if(len(places) != 2, "a tail is led in, and the step does not name where in and where out")
        refuse_if(part.lies_inside(part.gone), "the tail that is led in lies inside already")
        if step.part != "cover":
            model.close_loop(end)
        part.led = tuple(sorted(places))
        if step.part == "core" and state.core_out is not None and min(places) < state.core_out - CLOSE:
            state.core_led.append(part.led)  # into the cover, from which it was taken


def bury(model, step):
    for end in ends_of(model, step):
        state = model.ends[end]
        part = state.parts[step.part]
        marks = marks_of(model, step, end)
        refuse_if(len(marks) != 2, "a tail is buried, and the step does not name from where to where")
        for mark in marks:
            model.usable(mark, inside_allowed=True)
        refuse_if(part.led is None, "a tail is buried that has not been led in")
        refuse_if(part.lies_inside(part.gone), "a tail is buried that lies inside already")
        over = model.sheet.sum(end, SURPLUS + KEPT) - max(part.gone, state.parts["rope"].gone)
        refuse_if(over > CLOSE and step.part != "cover",
                  f"the tail is buried with {over / 1e6:.1f} mm still outside its end")
        beyond = [mark.at for mark in marks if mark.at > part.gone + CLOSE]
        tail = state.meets[-1][0] if state.meets and step.part != "cover" else min(beyond, default=part.gone)
        part.inside.append((part.gone, tail))
        part.led = None
        if step.part == "cover":
            state.anchored.add("cover")
            continue  # the core has its own way to go still
        if state.core_out is None or max(mark.at for mark in marks) > state.core_out + CLOSE:
            state.anchored.add(step.part)
        model.close(end)


def smooth(model, step):
    for end in ends_of(model, step):
        for mark in marks_of(model, step, end):
            model.usable(mark, inside_allowed=True)


def bind(model, step):
    """Stitching, whipping and seizing go over what lies inside; they need rope that is there."""
    for end in ends_of(model, step):
        for mark in marks_of(model, step, end):
            model.usable(mark, inside_allowed=True)


def whip(model, step):
    bind(model, step)
    for end in ends_of(model, step):
        model.ends[end].bound = True


def seize(model, step):
    """Seizing and stitching hold a tail that lies alongside; one that is led in must be buried first."""
    bind(model, step)
    for end in ends_of(model, step):
        state = model.ends[end]
        laid_together = state.meets or model.sheet.joined and state.loop
        if step.at and laid_together and not any(part.led for part in state.parts.values()):
            state.anchored.add("rope")
            model.close(end)


def seal(model, step):
    for end in ends_of(model, step):
        part = model.ends[end].parts[step.part]
        refuse_if(part.lies_inside(part.gone), f"end {end} is sealed when it lies inside")
        model.ends[end].bound = True


def tuck(model, step):
    for end in ends_of(model, step):
        marks = marks_of(model, step, end)
        state = model.ends[end]
        for mark in marks:
            model.usable(mark, inside_allowed=True)
        refuse_if(state.parts["rope"].opened is None, "strands are tucked that have not been opened")
        over = model.sheet.sum(end, SURPLUS + KEPT)
        refuse_if(state.parts["rope"].gone < over - CLOSE,
                  f"strands are tucked with {(over - state.parts['rope'].gone) / 1e6:.1f} mm still outside their ends")
        state.anchored.add("rope")
        model.close(end)


ACTIONS = {"mark": put_marks_on, "tape": tape, "cut": cut, "trim": trim, "unlay": unlay, "strip": strip,
           "draw_core": draw_core, "taper": taper, "lead_in": lead_in, "bury": bury, "smooth": smooth,
           "stitch": seize, "whip": whip, "seize": seize, "seal": seal, "tuck": tuck}
