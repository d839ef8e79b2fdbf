#!/usr/bin/python3
"""A second cut length, worked from the documents and the tables alone.

    fold.py TABLES JOB.csv     prints cut, rows, marks and check of each line in millimetres

It shares no line with the library, and must not: written from docs/*.md and the tables, it is what the
program is held against. Lengths are metres until they become rows, which are whole nanometres.
"""

import csv
import math
import re
import sys
from dataclasses import dataclass, replace
from statistics import NormalDist

from ends import make_end
from parts import Row
from values import PULLS, Refused, Tables, length, nanometres, refuse_if

NO_LOAD = {"wire", "shock-cord"}


@dataclass
class Bench:
    risk: float = 1.0
    step: float | None = None
    marking_tension: str = "reference"


class Line:
    """One row of a job."""

    def __init__(self, tables, bench, row):
        self.tables, self.bench = tables, bench
        self.row = {name: text.strip() for name, text in row.items() if text and text.strip()}
        self.rope = tables.rope(self.row["rope"])
        self.fit = self.row.get("fit", "at-least")
        self.first = self.row.get("first_end", "a")
        self.last = "b" if self.first == "a" else "a"
        self.rows = []

    def add(self, item, end, metres, sd=0.0, group="own"):
        self.rows.append(Row(item, end, nanometres(metres), sd, group))
        return self.rows[-1].nm / 1e9

    def fields(self, end):
        head = f"end_{end}."
        return {n[len(head):]: t for n, t in self.row.items() if n.startswith(head)}

    def answer(self):
        refuse_if("tolerance" in self.row and self.fit != "exact", 406)
        refuse_if("tension" in self.row and self.rope.construction == "wire", 405)
        refuse_if("stretch" in self.row and self.rope.construction != "shock-cord", 407)
        slack = self.bench.marking_tension == "slack" and self.rope.construction not in NO_LOAD
        refuse_if(slack and self.fit == "exact", 404)
        ends = self.made_ends()
        path = self.loaded_path(slack, max(end.further_parts for end in ends.values()))
        self.check_made()
        self.check_order(ends)
        self.check_room(ends, path)
        self.check_load(ends)
        for e in (self.first, self.last):
            self.rows += [replace(row, end=e) for row in ends[e].rows]
        milk = {e: self.milk_out(ends, e) for e in "ab"}
        kept = self.keep(ends)
        over = {self.first: 0.0, self.last: self.spare_and_rounding()}
        return {"cut": sum(row.nm for row in self.rows), "rows": self.rows,
                "marks": self.marks(ends, kept, {e: milk[e] + over[e] for e in "ab"}),
                "check": self.check(ends, path)}

    def made_ends(self):
        """Both ends; a join or an item made whole accounts for the other end too."""
        kinds = {e: self.row.get(f"end_{e}") for e in "ab"}
        ends = {e: make_end(self.tables, self.rope, kinds[e] or "bare", self.fields(e)) for e in "ab" if kinds[e]}
        whole = [e for e in ends if ends[e].sides == 2]
        self.closed = bool(whole)
        if whole:
            refuse_if(any(kind and kind != "bare" for e, kind in kinds.items() if e != whole[0]), 407)
            self.first, self.last = whole[0], "b" if whole[0] == "a" else "a"
            return ends | {self.last: replace(ends[self.first], rows=[])}
        return ends | {e: make_end(self.tables, self.rope, "bare", {}) for e in "ab" if not kinds[e]}

    def marks(self, ends, kept, over):
        """Nearest the cut end what is trimmed, then what is kept, then the end itself."""
        marks = []
        for e in "ab":
            outside = over[e] + kept[e]
            marks += [(e, name, nanometres(outside + at)) for name, at in ends[e].marks]
            if outside or e == self.last:
                marks.append((e, "tail end", nanometres(outside)))
            if kept[e] and ends[e].keeps == "yes":
                marks.append((e, "trim", nanometres(over[e])))
        return marks

    def check(self, ends, path):
        """From the bearing point of the end made first to the far mark of the other; every exact line has one."""
        first, last = ends[self.first], ends[self.last]
        if first.sides == 2 or self.fit != "exact" and "cut" in (first.keeps, last.keeps):
            return None
        loaded = path + last.allowance() - last.far
        return nanometres(loaded + first.early), nanometres(loaded)

    def loaded_path(self, slack, further):
        tape_fixed = self.tables.figure("tape_fixed", self.rope).value
        tape_share = self.tables.figure("tape_share", self.rope).value
        finished = length(self.row["length"])
        path = self.add("finished length", None, finished,
                        (tape_fixed + tape_share * finished) / math.sqrt(3), "tape")
        for e in "ab":
            fields = self.fields(e)
            if "fitting_length" in fields:
                fitting = length(fields["fitting_length"])
                path += self.add("fitting", e, -fitting, (tape_fixed + tape_share * fitting) / math.sqrt(3), "tape")
            fields = fields or (self.fields("b" if e == "a" else "a") if self.closed else {})  # both its eyes are alike
            if fields.get("measured") == "pin-centre":
                pin = length(fields.get("pin", "0 mm"), self.rope.diameter)
                refuse_if(pin == 0, 305)
                path += self.add("pin centre to bearing point", e, pin / 2)
        refuse_if(path <= 0, 402)
        self.asked_path = path
        if further:
            path += self.add("further parts", "a" if "end_a" in self.row else "b", further * path)
        if self.rope.construction == "shock-cord":
            return self.elastic(path)
        if self.rope.construction in NO_LOAD:
            return path
        path += self.stretch(path)
        first_stretch = self.tables.figure("first_stretch", self.rope)
        if first_stretch and self.row.get("prestretched", "no") == "no":
            path += self.add("first stretch", None, path / (1 + first_stretch.value) - path, first_stretch.sd * path)
        if slack:
            share = self.tables.figure("slack", self.rope)
            path += self.add("marked slack", None, path / (1 + share.value) - path, share.sd * path)
        return path

    def stretch(self, path):
        """From the pull of the length to the pull of the marks; PHYSICS E, along the rope's curve."""
        reference = (self.rope.nominal * 1e3) ** 2 / 8 * PULLS["kgf"]
        asked = self.row.get("tension")
        at = self.bench.marking_tension
        marked = reference if at in ("reference", "slack") else self.force(at)
        working = self.force(asked) if asked else reference
        if working == marked:
            return 0
        curve = self.tables.stretch(self.rope)
        refuse_if(curve is None, 211)
        refuse_if(self.rope.breaking is None, 210)
        m, w = (curve.at(pull / self.rope.breaking) for pull in (marked, working))
        change = path * ((1 + m) / (1 + w) - 1)
        return self.add("stretch", None, change, curve.spread * abs(change) / (1 + w))

    def elastic(self, path):
        """Shock cord is pulled out where its way is shortest, and farther at the end of its travel."""
        asked, tension = self.row.get("stretch"), self.row.get("tension")
        refuse_if(asked and tension, 407)
        if not asked and not tension:
            return path
        ratio, spread = (float(asked.rstrip(" %")) / 100, 0.0) if asked else self.pulled_out(tension)
        change = path / (1 + ratio) - path
        return path + self.add("stretch", None, change, spread * abs(change) / (1 + ratio))

    def pulled_out(self, tension):
        curve = self.tables.stretch(self.rope)
        refuse_if(curve is None, 211)
        pull = self.force(tension)
        return curve.at(pull if curve.by_force else pull / self.rope.breaking), curve.spread

    def force(self, text):
        value, unit = text.split()
        if unit == "%":
            refuse_if(self.rope.breaking is None, 210)
            return float(value) / 100 * self.rope.breaking
        return float(value) * PULLS[unit]

    def check_room(self, ends, path):
        between = path - sum(end.to_throat for end in ends.values())
        refuse_if(between <= 0, 402)
        host = sum(end.host for end in ends.values())
        taken = sum(end.allowance() - end.far + end.to_throat for end in ends.values() if end.host)
        refuse_if(host and between + taken < host, 401)
        if self.row.get("carries_person") == "yes":
            refuse_if(any(end.unfit_for_person for end in ends.values()), 403)
            refuse_if(any(nanometres(e.tail) < nanometres(e.person_tail) for e in ends.values()), 403)

    def check_order(self, ends):
        """What cannot be drawn through or hung, whatever the order: an end with a closed fitting, or one made before."""
        refuse_if(all(end.kind == "larked-eye" for end in ends.values()), 413)
        for e, other in ("ab", "ba"):
            fields, late = self.fields(e), e == self.last and not self.closed
            closed_ring = fields.get("captive") == "yes"
            refuse_if(closed_ring and "fitting" not in fields, 305)
            refuse_if(closed_ring and ends[e].keeps == "cut", 413)  # no eye holds it
            # The other end does not pass once it is made, carries something, or is rove.
            passes = not (late and (ends[other].keeps != "cut" or "fitting" in self.fields(other)
                                    or self.made(e) == "aboard"))
            free = fields.get("far_end", "free" if passes else "fixed") == "free"
            if ends[e].kind == "locked-eye":
                refuse_if(free and not passes, 413)
                refuse_if(closed_ring and not free, 413)
            refuse_if(ends[e].kind == "two-eye-strop" and closed_ring, 413)
            refuse_if(ends[e].kind == "larked-eye" and late and self.fields(other).get("captive") == "yes", 413)

    def made(self, end):
        """Where an end is made; the last of a line that is cut to fit aboard is made there."""
        last_aboard = end == self.last and self.fit == "trim-aboard"
        return "aboard" if last_aboard else self.fields(end).get("made", "bench")

    def check_made(self):
        """The end made first is made at the bench, unless both are made aboard."""
        refuse_if(self.made(self.first) == "aboard" and self.made(self.last) != "aboard", 407)

    def check_load(self, ends):
        """strength.md: what the line holds is the rope's strength, less what its weakest end loses."""
        if "load" in self.row and self.rope.breaking is not None:
            kept = min(end.retained if end.retained is not None else 1.0 for end in ends.values())
            refuse_if(self.force(self.row["load"]) > kept * self.rope.breaking, 412)

    def milk_out(self, ends, end):
        """Cover pushed along by a covered splice comes out at the other end, if that is not one itself."""
        other = "b" if end == "a" else "a"
        if not ends[other].milks or ends[end].milks:
            return 0
        share = self.tables.figure("milk_out", self.rope)
        least = self.tables.figure("minimum_milk_out", self.rope).value
        path = self.asked_path
        return self.add("milk-out", end, max(share.value * path, least), share.sd * path)

    def keep(self, ends):
        """Extra and wear lie at the end made last if it can keep them, else at the first."""
        kept = dict.fromkeys("ab", 0.0)
        wanted = {item: length(self.row[item]) for item in ("extra", "wear") if item in self.row}
        able = [e for e in (self.last, self.first)
                if ends[e].keeps == "yes" or ends[e].keeps == "cut" and self.fit != "exact"]
        refuse_if(any(wanted.values()) and not able, 407)
        for item, metres in wanted.items():
            if metres:
                kept[able[0]] += self.add(item, able[0], metres)
        return kept

    def spare_and_rounding(self):
        """Spare and rounding lie outside the tail of the end made last."""
        groups, own = {}, 0.0
        for row in self.rows:
            if row.group == "own":
                own += row.sd ** 2
            else:
                groups[row.group] = groups.get(row.group, 0) + row.sd
        sd = math.sqrt(own + sum(s * s for s in groups.values()))
        spare = length(self.row["spare"]) if "spare" in self.row else (
            NormalDist().inv_cdf(1 - self.bench.risk / 100) * sd)
        outside = self.add("spare", self.last, spare)
        step = nanometres(self.bench.step or (0.001 if self.fit == "exact" else 0.005))
        over = -sum(row.nm for row in self.rows) % step
        return outside + self.add("rounding", self.last, over / 1e9)


def fold(tables, bench, row):
    """`{"cut", "rows", "marks", "check"}` in nanometres, or `{"refused": code}`."""
    try:
        return Line(tables, bench, row).answer()
    except Refused as refused:
        return {"refused": refused.args[0]}


def lines_of(path):
    """The rows of a CSV job. A heading with a unit gives it to its bare numbers."""
    with open(path, newline="", encoding="utf-8-sig") as job:
        for row in csv.DictReader(job):
            plain = {}
            for name, text in row.items():
                unit = re.fullmatch(r"(.*?)\s*\[(\w+)\]\s*", name)
                bare = unit and re.fullmatch(r"\s*[\d.]+\s*", text or "")
                plain[unit[1] if unit else name.strip()] = f"{text} {unit[2]}" if bare else text
            yield plain


def main():
    tables = Tables(sys.argv[1])
    for row in lines_of(sys.argv[2]):
        answer = fold(tables, Bench(), row)
        print(row["name"], answer.get("refused") and f"refused: {answer['refused']}" or answer["cut"] / 1e6)
        for line in answer.get("rows", []):
            print(f"  {line.end or ' '} {line.item:32} {line.nm / 1e6:14.6f} {line.sd * 1e3:10.4f} {line.group}")
        for end, name, at in answer.get("marks", []):
            print(f"  {end} {name:32} {at / 1e6:14.6f}")
        if answer.get("check") is not None:
            print(f"    {'check':32} {' and, loaded, '.join(str(nm / 1e6) for nm in answer['check'])}")


if __name__ == "__main__":
    main()
