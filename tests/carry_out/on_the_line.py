"""Actions on the line as a whole: what is threaded, rove, passed through, hung, loaded and measured."""

from model import refuse_if
from on_the_rope import ends_of, marks_of
from sheet import CLOSE, KEPT, SURPLUS, is_plain


def bring_together(model, step):
    for end in ends_of(model, step):
        marks = marks_of(model, step, end)
        for mark in marks:
            model.usable(mark, step.part, inside_allowed=True)
        model.close_loop(end)
        if len(marks) == 2:
            tail, host = sorted(marks, key=lambda m: m.at)
            model.ends[end].meets.append((tail.at, host.at))
            model.ends[end].loops.append((tail.at, host.at, step.part))


def pass_tail_through(model, step):
    for end in ends_of(model, step):
        marks = marks_of(model, step, end)
        for mark in marks:
            model.usable(mark, step.part)
        part = model.ends[end].parts["rope"]
        refuse_if(part.lies_inside(part.gone), "the tail that is passed through lies inside")
        model.close_loop(end)
        if len(marks) == 2:
            tail, host = sorted(marks, key=lambda m: m.at)
            model.ends[end].meets.append((tail.at, host.at))


def pass_line_through(model, step):
    for end in ends_of(model, step):
        for mark in marks_of(model, step, end):
            model.usable(mark, step.part)
        model.passes_through(end)


def turn_eye_through(model, step):
    for end in ends_of(model, step):
        state = model.ends[end]
        for mark in marks_of(model, step, end):
            model.usable(mark, step.part)
        refuse_if(not state.meets, f"end {end} has no eye to turn yet")
        refuse_if(state.holds, f"the eye of end {end} cannot be turned through the rope: it holds "
                  f"{', '.join(sorted(state.holds))}")
        refuse_if(state.hung, f"the eye of end {end} is hung and cannot be turned through the rope")


def tie(model, step):
    for end in ends_of(model, step):
        marks = marks_of(model, step, end)
        for mark in marks:
            model.usable(mark, step.part)
        state = model.ends[end]
        state.anchored.add("rope")
        for part in state.parts.values():
            part.led = None  # the knot holds what hangs out
        model.close(end)


def draw_up(model, step):
    for end in ends_of(model, step):
        refuse_if(not model.ends[end].loop, f"nothing of end {end} is tied or passed that could be drawn up")


def press(model, step):
    for end in ends_of(model, step):
        for mark in marks_of(model, step, end):
            model.usable(mark, step.part, inside_allowed=True)
        model.ends[end].anchored.add("rope")
        model.close(end)


def fit_first(model, step):
    """What the words name goes on, over an end that is still open."""
    ends = [step.end] if step.end else ["a", "b"]
    named = [thing for thing in model.bench if thing in step.text]
    captive = [(end, model.sheet.captive(end)) for end in ends
               if model.sheet.captive(end) and model.sheet.captive(end) in step.text]
    if named:
        refuse_if(not any(model.free(end) for end in "ab"), f"{named[0]} cannot be threaded: both ends are closed")
        model.bench = [thing for thing in model.bench if thing not in named]
        model.threaded += named
    for end, fitting in captive:
        refuse_if(not model.free(end), f"{fitting} cannot be put into end {end}: it is closed")
        model.ends[end].holds.add(fitting)


def thread(model, step):
    for end in ends_of(model, step):
        refuse_if(model.ends[end].closed, f"a ball or sleeve is put on end {end} when it is closed")


def reeve(model, step):
    """Some end must still go through the blocks. A knot's own hole is led through likewise."""
    if step.end:
        refuse_if(not model.free(step.end), f"end {step.end} cannot be rove: it is made")
    else:
        refuse_if(not any(model.free(end) for end in "ab"), "the line cannot be rove: both ends are made")
    if "hole" not in step.text:
        model.rove = True


def hang(model, step):
    """With a mark the eye is hung on itself: the line's other end goes through it."""
    for end in ends_of(model, step):
        state = model.ends[end]
        refuse_if(not state.closed, f"end {end} is hung before it is made")
        if step.at:
            model.passes_eye(end)
        state.hung = True


def load(model, step):
    for end in ends_of(model, step):
        state = model.ends[end]
        refuse_if(not state.closed, f"end {end} is loaded before it is made")
        refuse_if(state.parts["rope"].led, f"end {end} is loaded while its tail hangs out")
        state.loaded = True


def measure(model, step):
    """A reading of the whole line starts from the end made first, which must be there."""
    sheet, check = model.sheet, model.sheet.check
    whole = step.end is None
    if whole and check:
        refuse_if(not model.ends[check["from"]].closed and not is_plain(sheet, check["from"]),
                  f"the check is read before end {check['from']}, from which it starts, is made")
        model.readings.append((len(model.readings), model.ends[check["from"]].loaded, step.text))
    if step.end and not whole and not is_plain(sheet, step.end):
        refuse_if(not model.ends[step.end].loop, f"end {step.end} is measured before it is there")


def cut_aboard(model, step):
    for end in ends_of(model, step):
        state = model.ends[end]
        refuse_if(model.sheet.fit == "exact", "a line of exact length is cut to fit aboard")
        refuse_if(state.closed and not model.sheet.aboard(end), f"end {end} is cut aboard when it is made")
        refuse_if(state.parts["rope"].gone > CLOSE and not model.sheet.sum(end, KEPT + SURPLUS),
                  f"end {end} is cut aboard and has nothing left for it")
        refuse_if(end in model.aboard, f"end {end} is cut aboard twice")
        refuse_if(state.bound, f"the whipping of end {end} is cut off with its last cut")
        model.aboard.add(end)
        state.marked.clear()  # they were counted from an end that is gone


def nothing(model, step):
    for end in ends_of(model, step):
        for mark in marks_of(model, step, end):
            model.usable(mark, inside_allowed=True)


ACTIONS = {"bring_together": bring_together, "pass_tail_through_host": pass_tail_through,
           "pass_line_through_tail": pass_line_through, "turn_eye_through": turn_eye_through, "tie": tie,
           "draw_up": draw_up, "press": press, "fit_first": fit_first, "thread": thread, "reeve": reeve, "hang": hang,
           "load": load, "measure": measure, "cut_aboard": cut_aboard, "slip_knot": nothing, "plain": nothing}
