"""Lengths, ropes and rules, read as docs/job-files.md and docs/tables.md say."""

import math
import re
import tomllib
from dataclasses import dataclass, replace
from fractions import Fraction
from functools import cache
from pathlib import Path

UNITS = {"mm": "0.001", "cm": "0.01", "m": "1", "in": "0.0254", "ft": "0.3048"}
PULLS = {"N": 1, "kN": 1000, "kgf": 9.80665, "lbf": 4.4482216152605}


class Refused(Exception):
    """The line cannot be cut; the code is that of docs/errors.md."""


def refuse_if(wrong, code):
    if wrong:
        raise Refused(code)


@cache
def number(text):
    """`7`, `3.5`, `3/8`, `1 1/2`."""
    return sum((Fraction(part) for part in str(text).split()), Fraction(0))


@cache
def length(text, diameter=None):
    """`6.4 m`, `12 ft 6 in`, `72 D`."""
    total = 0
    for value, unit in re.findall(r"([\d./ ]+?)\s*(mm|cm|m|in|ft|D)\b", text):
        total += float(number(value) * Fraction(UNITS[unit])) if unit != "D" else float(value) * diameter
    return total


def nanometres(metres):
    return math.floor(metres * 1e9 + 0.5)


@dataclass
class Figure:
    value: float
    sd: float
    unit: str

    def of(self, diameter):
        """Counts of diameters become lengths."""
        return replace(self, value=self.value * diameter, sd=self.sd * diameter) if self.unit == "D" else self


def figure_of(record):
    low, high = record.get("low"), record.get("high")
    value = record["value"] if "value" in record else (low + high) / 2
    half = record.get("plus_minus", (high - low) / 2 if low is not None else 0)
    sd = record.get("sd", half / math.sqrt(3))
    unit = record.get("unit", "")
    scale = 0.01 if unit == "%" else float(Fraction(UNITS.get(unit, "1")))
    return Figure(float(number(value)) * scale, sd * scale, unit)


@dataclass
class Curve:
    """Load against elongation; docs/stretch.md."""

    points: list  # (load, elongation); loads in newtons or as a share of the breaking strength
    by_force: bool
    power: bool
    spread: float | None  # of an elongation, as a share of it

    def at(self, load):
        (x1, y1), (x2, y2) = self.points[0], self.points[-1]
        if len(self.points) == 1:
            return y1 * load / x1
        if self.power:
            return y1 * (load / x1) ** (math.log(y2 / y1) / math.log(x2 / x1))
        refuse_if(load > x2, 213)
        return self.between(load)

    def between(self, load):
        """Cubics through the points whose slopes are weighted harmonic means of the chords'."""
        points = [(0.0, 0.0), *self.points]
        chords = [(b[1] - a[1]) / (b[0] - a[0]) for a, b in zip(points, points[1:])]
        steps = [b[0] - a[0] for a, b in zip(points, points[1:])]
        slopes = [chords[0]]
        for before, after, left, right in zip(chords, chords[1:], steps, steps[1:]):
            slopes.append((3 * left + 3 * right) /
                          ((2 * right + left) / before + (right + 2 * left) / after))
        slopes.append(chords[-1])
        k = next(k for k, step in enumerate(steps) if load <= points[k + 1][0])
        (x, y), h, chord = points[k], steps[k], chords[k]
        t = (load - x) / h
        bend = (slopes[k] - chord) * t * (1 - t) ** 2 - (slopes[k + 1] - chord) * t * t * (1 - t)
        return y + h * (chord * t + bend)


def curve_of(record):
    if not record:
        return None
    printed = record.get("points", [record])
    figures = [figure_of(p) for p in printed]
    loads = [p["at"].split() for p in printed]
    spreads = [f.sd / f.value for f in figures if f.sd]
    return Curve([(float(v) * (0.01 if u == "%" else PULLS[u]), f.value) for (v, u), f in zip(loads, figures)],
                 loads[0][1] != "%", record.get("form") == "power", max(spreads) if spreads else None)


def curve_said(text):
    """`2.4 % at 20 %`, from a reel; two or more of them, separated by commas, make a curve."""
    points = []
    for point in text.split(","):
        value, at = point.split(" at ")
        load, unit = at.split()
        points.append((float(load) * (0.01 if unit == "%" else PULLS[unit]), float(value.strip(" %")) / 100))
    return Curve(points, not text.rstrip().endswith("%"), False, None)


@dataclass
class Rope:
    construction: str
    fibre: str
    nominal: float
    diameter: float
    core: float | None
    breaking: float | None
    braid: tuple | None  # K of its own braid and its standard deviation
    stretch: "Curve | None"
    cautious: bool = False  # its strength is what any such rope holds at least


# Kinds that rules name together: docs/kinds.md.
FAMILIES = {
    "stopper-knots": ("figure-eight", "overhand", "double-overhand", "stevedore"),
    "loop-knots": ("bowline", "figure-eight-loop", "overhand-loop", "barrel-noose", "double-bowline"),
    "hitches": ("halyard-hitch", "buntline-hitch", "clove-hitch", "round-turn-two-half-hitches", "cow-hitch",
                "rolling-hitch"),
    "bends": ("sheet-bend", "double-fisherman"),
    "buried-eyes": ("buried-eye", "locked-eye", "stripped-eye", "larked-eye", "ring-eye", "adjustable-eye",
                    "endless-loop", "two-eye-strop"),
}
FAMILIES["buries"] = (*FAMILIES["buried-eyes"], "core-to-core", "core-eye")


class Tables:
    def __init__(self, *folders):
        ropes, self.rules, self.found = {}, {}, {}
        for folder in map(Path, folders):
            names = [folder / "constructions.toml", folder / "bench.toml"]
            for path in names + sorted(folder.glob("terminations/*.toml")):
                if path.exists():
                    for rule in tomllib.loads(path.read_text()).get("rule", []):
                        self.rules[rule["id"]] = rule
            for path in sorted(folder.glob("ropes/*.toml")):
                for rope in tomllib.loads(path.read_text()).get("rope", []):
                    ropes[rope["id"]] = rope
        self.sorts = [g for folder in map(Path, folders) if (folder / "generic.toml").exists()
                      for g in tomllib.loads((folder / "generic.toml").read_text())["generic"]]
        self.ropes = {name: self.read_rope(record) for name, record in ropes.items()}
        self.generic = [self.ropes[name] for name, record in ropes.items() if record.get("generic")]

    def read_rope(self, record):
        nominal = length(record["diameter"])
        measured, core = record.get("measured_diameter"), record.get("core_diameter")
        metres = lambda r: r["value"] * float(Fraction(UNITS[r["unit"]]))
        breaking, stretch = record.get("breaking"), record.get("stretch")
        braid = "braid_constant" in record and figure_of(record["braid_constant"])
        return Rope(
            record["construction"], record["fibre"], nominal,
            metres(measured) if measured else nominal, metres(core) if core else None,
            breaking and breaking["value"] * PULLS[breaking["unit"]],
            (braid.value, braid.sd) if braid else None,
            curve_of(stretch))

    def rope(self, text, measured=None):
        """An id, or `12-strand HMPE 6 mm`; its diameter as the reel in hand has it."""
        rope = self.named(text)
        if measured is None:
            return rope
        rope = replace(rope, diameter=measured)
        return replace(rope, breaking=self.cautious(rope)) if rope.cautious else rope

    def named(self, text):
        if text in self.ropes:
            return self.ropes[text]
        construction, fibre, size = text.split(" ", 2)
        plain = Rope(construction, fibre, length(size), length(size), None, None, None, None)
        same = [r for r in self.generic if (r.construction, r.fibre, r.nominal) ==
                (construction, fibre, plain.nominal)]
        return same[0] if same else replace(plain, breaking=self.cautious(plain), cautious=True)

    def cautious(self, rope):
        """k d^2 inside the sizes read; of 5 and 10 mm that nobody measured, the less of that and of 3/16 and 3/8 in."""
        def at(diameter):
            return next((g["breaking"]["value"] * (diameter * 1000) ** 2 * 1000 for g in self.sorts
                         if (g["construction"], g["fibre"]) == (rope.construction, rope.fibre)
                         and "grade" not in g and "breaking" in g
                         and nanometres(length(g["from"])) <= nanometres(diameter) <= nanometres(length(g["up_to"]))), None)
        inches = {5_000_000: length("3/16 in"), 10_000_000: length("3/8 in")}.get(nanometres(rope.nominal))
        found = at(rope.diameter)
        thinner = at(inches) if inches and found and rope.diameter == rope.nominal else None
        return min(found, thinner) if thinner else found

    def applying(self, kind, rope):
        """The rules of this kind in this sort and size of rope, in the order of the tables."""
        key = kind, rope.construction, rope.fibre, rope.nominal
        if key not in self.found:
            self.found[key] = [r for r in self.rules.values() if self.applies(r, kind, rope)]
        return self.found[key]

    def applies(self, rule, kind, rope):
        if "kinds" in rule and not any(kind == name or kind in FAMILIES.get(name, ()) for name in rule["kinds"]):
            return False
        size = nanometres(rope.nominal)
        low, high = rule.get("from"), rule.get("up_to")
        return (rope.construction in rule.get("constructions", [rope.construction])
                and rope.fibre in rule.get("fibres", [rope.fibre])
                and not (low and size < nanometres(length(low)))
                and not (high and size > nanometres(length(high))))

    def figure(self, name, rope, kind=None, asked=None):
        """The rule asked for, then the kind's default rules, then the rules of every kind."""
        key = name, kind, asked, rope.construction, rope.fibre, rope.nominal
        if key not in self.found:
            self.found[key] = self.look_up(name, rope, kind, asked)
        return self.found[key]

    def look_up(self, name, rope, kind, asked):
        rules = self.applying(kind, rope)
        order = ([r for r in rules if "kinds" in r and r["name"] == asked]
                 + [r for r in rules if "kinds" in r and r.get("default")]
                 + [r for r in rules if "kinds" not in r])
        return next((figure_of(r[name]) for r in order if name in r), None)

    def cautions(self, kind, rope):
        """Weights of the cautions that every end of this kind in this rope carries."""
        return {r["caution"].get("weight", "advice") for r in self.applying(kind, rope)
                if "caution" in r and ("kinds" not in r or r.get("default"))}

    def stretch(self, rope):
        """The rope's own curve, else the first of the rules of every kind; and its spread."""
        rules = [r for r in self.applying(None, rope) if "kinds" not in r]
        curve = rope.stretch or next((curve_of(r["stretch"]) for r in rules if "stretch" in r), None)
        if curve is None or curve.spread is not None:
            return curve
        general = self.figure("stretch_spread", rope)
        return replace(curve, spread=general.value if general else 0.0)

    def has_rule(self, kind, rope, name):
        return any(r["name"] == name and "kinds" in r for r in self.applying(kind, rope))
