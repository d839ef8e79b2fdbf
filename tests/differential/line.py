"""One row of a job: its rope, with what the reel in hand says of it, its ends' fields, and the rows of its ledger."""

from dataclasses import dataclass, replace

from parts import Row
from values import PULLS, curve_said, length, nanometres, refuse_if

NO_LOAD = {"wire", "shock-cord"}  # measured straight, without load


@dataclass
class Bench:
    risk: float = 1.0
    step: float | None = None
    marking_tension: str = "reference"


class Line:
    def __init__(self, tables, bench, row):
        self.tables, self.bench = tables, bench
        self.row = {name: text.strip() for name, text in row.items() if text and text.strip()}
        measured = length(self.row["rope_measured"]) if "rope_measured" in self.row else None
        self.rope = reel_facts(tables.rope(self.row["rope"], measured), self.row)
        self.fit = self.row.get("fit", "at-least")
        self.first = self.row.get("first_end", "a")
        self.last = "b" if self.first == "a" else "a"
        self.closed = False  # one row makes both ends
        self.slack = bench.marking_tension == "slack" and self.rope.construction not in NO_LOAD
        self.purchase = "purchase" in self.row.get("route", "")  # its longest state is eased
        self.rows = []

    def add(self, item, end, metres, sd=0.0, group="own"):
        self.rows.append(Row(item, end, nanometres(metres), sd, group))
        return self.rows[-1].nm / 1e9

    def fields(self, end):
        head = f"end_{end}."
        return {n[len(head):]: t for n, t in self.row.items() if n.startswith(head)}

    def yes(self, column, otherwise="no"):
        return self.row.get(column, otherwise) == "yes"

    def force(self, text):
        value, unit = text.split()
        if unit == "%":
            refuse_if(self.rope.breaking is None, 210)
            return float(value) / 100 * self.rope.breaking
        return float(value) * PULLS[unit]


def reel_facts(rope, row):
    """job-files.md: what the reel in hand says goes before any table."""
    said = {}
    if "rope_core" in row:
        said["core"] = length(row["rope_core"])
    if "rope_breaking" in row:
        value, unit = row["rope_breaking"].split()
        said |= {"breaking": float(value) * PULLS[unit], "cautious": False}
    if "rope_stretch" in row:
        said["stretch"] = curve_said(row["rope_stretch"])
    return replace(rope, **said)
