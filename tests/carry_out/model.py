"""The piece on the bench: what has been cut off, what lies inside, what is closed, hung, threaded or rove."""

from sheet import CLOSE, other


class Refused(Exception):
    """What cannot be done, in words."""


def refuse_if(wrong, why):
    if wrong:
        raise Refused(why)


class Part:
    """One rope at one end: the whole, or its cover, or its core. Places are counted from the cut end."""

    def __init__(self):
        self.gone = 0      # cut off up to here
        self.inside = []   # spans that lie inside another part
        self.bare = []     # spans that another part has been taken off
        self.led = None    # (entry, exit) while its end still hangs out there
        self.thinned = None
        self.opened = None  # strands unlaid up to here

    def lies_inside(self, at):
        return any(start <= at < stop for start, stop in self.inside)


class EndOfLine:
    def __init__(self):
        self.parts = {"rope": Part(), "cover": Part(), "core": Part()}
        self.marked = set()     # numbers of the marks that are on
        self.cuts = []          # (from, to, text)
        self.loop = False       # nothing closed can be put into it any more
        self.closed = False     # its end is inside, tied, tucked, pressed or bound
        self.holds = set()      # what cannot leave it
        self.hung = False
        self.loaded = False
        self.meets = []         # (tail mark, host mark) that were brought together
        self.loops = []         # the same, and of which part
        self.core_out = None    # where the core left the cover
        self.core_led = []      # spans of the cover that the core runs through again
        self.squared = False    # the cutting loss is off
        self.dressed = False    # its raw end is taped, pointed or thinned
        self.bound = False      # whipped, or melted together
        self.anchored = set()   # parts whose end is held in the standing part


class Model:
    def __init__(self, sheet):
        self.sheet = sheet
        self.ends = {"a": EndOfLine(), "b": EndOfLine()}
        self.bench = list(sheet.listed())        # not yet on the line
        self.threaded = []
        self.rove = False
        self.readings = []
        self.aboard = set()     # ends of which the last cut has been made
        self.pull = "marking"

    def place(self, end, number):
        """Where a mark lies, if it can be used."""
        found = self.sheet.mark(end, number)
        refuse_if(not found, f"mark {number} of end {end} is not on the sheet")
        return found[0]

    def usable(self, mark, part="rope", inside_allowed=False):
        """The mark's place: on rope that is there, marked, and in reach."""
        end = self.ends[mark.end]
        refuse_if(mark.at < end.parts["rope"].gone - CLOSE or mark.at < end.parts[part].gone - CLOSE,
                  f"{mark} lies on rope that has been cut off")
        refuse_if(mark.number not in end.marked, f"{mark} has not been marked")
        inside = any(end.parts[p].lies_inside(mark.at) for p in {"rope", part})
        refuse_if(inside and not inside_allowed, f"{mark} lies inside another part")
        return mark.at

    def free(self, end):
        """Whether rope, blocks or rings can still be led over this end."""
        state = self.ends[end]
        return not (state.loop or state.closed or state.hung)

    def close_loop(self, end):
        """From here on the eye, the knot or the seizing holds what is in it, and lets nothing in."""
        state = self.ends[end]
        if state.loop:
            return
        captive = self.sheet.captive(end)
        refuse_if(captive and captive not in state.holds,
                  f"end {end} is closed while its {captive} lies on the bench")
        if not self.free(other(end)):
            refuse_if(self.bench, f"end {end} is closed while {', '.join(self.bench)} lies on the bench")
            refuse_if(self.sheet.rove() and not self.rove, f"end {end} is closed before the line is rove")
        state.loop = True

    def close(self, end):
        self.close_loop(end)
        self.ends[end].closed = True

    def passes_through(self, end):
        """The line's whole other end goes through something of this end."""
        far = other(end)
        state = self.ends[far]
        refuse_if(state.hung, f"the other end cannot pass: end {far} is hung")
        refuse_if(state.loop or state.closed, f"the other end cannot pass: end {far} is made")
        refuse_if(state.holds, f"the other end cannot pass: it holds {', '.join(sorted(state.holds))}")
        refuse_if(self.threaded, f"the line cannot pass: {', '.join(self.threaded)} is on it")
        refuse_if(self.rove, "the line cannot pass: it is rove")

    def passes_eye(self, end):
        """The line's other end, with what is on it, goes through the eye of this end."""
        state = self.ends[other(end)]
        refuse_if(state.hung, f"the other end cannot pass through the eye: end {other(end)} is hung")
        refuse_if(state.holds, f"the other end cannot pass through the eye: it holds {', '.join(sorted(state.holds))}")
        refuse_if(self.rove, "the line cannot pass through the eye: it is rove")
