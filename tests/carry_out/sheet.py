"""One piece of a sheet as the bench gets it: marks, steps, ledger, and what its row of the job says."""

SURPLUS = ("milk-out", "spare", "rounding")  # may be cut off at the bench, by a step that says so
KEPT = ("extra", "wear")                     # may not
LINE = ("finished length", "stretch", "first stretch", "marked slack", "shrinkage in the wash", "fitting",
        "pin centre to bearing point", "further parts", "let-out for elastic")
# Rows of an end that are no rope between its cut end and its throat, its knot or its load side.
OFF_THE_TAPE = ("throat to bearing point", "knot to bearing point", "soft eye, pin not known", "take-up",
                "take-up as spliced", "take-up over the cover's tail", "settling", "setting", "crossing closes up",
                "crossing below the throat",
                "pin centre to the shank", "growth in the swage")
CLOSE = 8  # nanometres that the rounding of single rows may add up to


def nm(metres):
    return round(metres * 1e9)


def other(end):
    return "b" if end == "a" else "a"


def things(text):
    return [word.strip() for word in (text or "").split(",") if word.strip()]


def is_plain(sheet, end):
    """An end that is only cut, sealed or whipped: the line still goes through everything there."""
    return any(mark.end == end and mark.name == "bearing point" for mark in sheet.marks)


class Mark:
    def __init__(self, end, number, name, at):
        self.end, self.number, self.name, self.at = end, number, name, at

    def __repr__(self):
        return f"{self.name} ({self.end}{self.number})"


class Step:
    def __init__(self, said):
        self.end, self.action, self.at = said["end"], said["action"], said["at"]
        self.part, self.text = said.get("part", "rope"), said["text"]


class Sheet:
    """`row` holds the fields of the job's line, an end's fields as `end_a.eye`."""

    def __init__(self, piece, row):
        self.piece, self.row = piece, row
        self.name, self.cut = piece["name"], nm(piece["cut_m"])
        self.finished = nm(piece["finished_m"])
        self.ledger = [(r["item"], r["end"], nm(r["length_m"])) for r in piece["ledger"]]
        self.marks = [Mark(m["end"], m["number"], m["name"], nm(m["from_end_m"])) for m in piece["marks"]]
        self.steps = [Step(said) for said in piece["steps"]]
        self.check = piece["check"]
        self.first = row.get("first_end") or "a"
        self.last = other(self.first)
        self.fit = row.get("fit") or "at-least"
        self.joined = self.closing()
        self.sides = self.sides_of_a_join() if self.joined else {}

    def kind(self, end):
        return self.row.get(f"end_{end}", "")

    def closing(self):
        """The end whose kind closes the line on itself: then the other has neither a kind nor a cut end."""
        for end in "ab":
            plain = any(m.end == other(end) and m.name == "bearing point" for m in self.marks)
            if self.kind(end) and not self.kind(other(end)) and not plain:
                return end
        return None

    def sides_of_a_join(self):
        """Which sides each step works on: both at once, unless the same is done on the same marks twice; then one
        after the other. What is passed or turned through belongs to the side that was last in hand."""
        turns, sides, in_hand = {}, {}, None
        for step in self.steps:
            turns.setdefault((step.action, *step.at), []).append(step)
        for step in self.steps:
            same = turns[step.action, *step.at]
            if step.at and len(same) == 2:
                in_hand = [self.joined] if step is same[0] else [other(self.joined)]
                sides[id(step)] = in_hand
            elif in_hand and step.action in ("pass_line_through_tail", "turn_eye_through"):
                sides[id(step)] = in_hand
            else:
                sides[id(step)] = ["a", "b"]
        return sides

    def alike(self, mark, end):
        """The mark of the same name on the other side of a join."""
        return next((m for m in self.marks if m.end == end and m.name == mark.name), None)

    def mark(self, end, number):
        """The mark of that number; of several on one row, all that share it, outermost first."""
        found = [m for m in self.marks if m.end == end and m.number == number]
        return sorted(found, key=lambda m: m.at)

    def rows(self, end, items=None):
        return [(item, length) for item, of, length in self.ledger if of == end and (items is None or item in items)]

    def sum(self, end, items):
        return sum(length for _, length in self.rows(end, items))

    def own_rope(self, end):
        """Rope of an end between its cut end, the surplus off, and where its standing part begins."""
        outside = LINE + SURPLUS + KEPT + OFF_THE_TAPE
        return sum(length for item, length in self.rows(end) if item not in outside)

    def listed(self):
        """What must be on the line before its last end closes."""
        return things(self.row.get("fit_first"))

    def captive(self, end):
        """The closed fitting that lies in this end's eye, if there is one."""
        if self.row.get(f"end_{end}.captive") == "yes":
            return self.row.get(f"end_{end}.fitting")
        return None

    def rove(self):
        return "route" in self.row and "pattern" not in self.row["route"]

    def aboard(self, end):
        return self.row.get(f"end_{end}.made") == "aboard"
