"""Lengths, ropes and rules, read as docs/job-files.md and docs/tables.md say."""

import math
import re
import tomllib
from dataclasses import dataclass, replace
from fractions import Fraction
from pathlib import Path

UNITS = {"mm": "0.001", "cm": "0.01", "m": "1", "in": "0.0254", "ft": "0.3048"}
PULLS = {"N": 1, "kN": 1000, "kgf": 9.80665, "lbf": 4.4482216152605}


class Refused(Exception):
    """The line cannot be cut; the code is that of docs/faults.md."""


def refuse_if(wrong, code):
    if wrong:
        raise Refused(code)


def number(text):
    """`7`, `3.5`, `3/8`, `1 1/2`."""
    return sum((Fraction(part) for part in str(text).split()), Fraction(0))


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
class Rope:
    construction: str
    fibre: str
    nominal: float
    diameter: float
    core: float | None
    breaking: float | None
    stretch: tuple | None  # elongation, at this share of the breaking strength


class Tables:
    def __init__(self, *folders):
        ropes, self.rules = {}, {}
        for folder in map(Path, folders):
            names = [folder / "constructions.toml", folder / "bench.toml"]
            for path in names + sorted(folder.glob("terminations/*.toml")):
                if path.exists():
                    for rule in tomllib.loads(path.read_text()).get("rule", []):
                        self.rules[rule["id"]] = rule
            for path in sorted(folder.glob("ropes/*.toml")):
                for rope in tomllib.loads(path.read_text()).get("rope", []):
                    ropes[rope["id"]] = rope
        self.ropes = {name: self.read_rope(record) for name, record in ropes.items()}
        self.generic = [self.ropes[name] for name, record in ropes.items() if record.get("generic")]

    def read_rope(self, record):
        nominal = length(record["diameter"])
        measured, core = record.get("measured_diameter"), record.get("core_diameter")
        metres = lambda r: r["value"] * float(Fraction(UNITS[r["unit"]]))
        breaking, stretch = record.get("breaking"), record.get("stretch")
        return Rope(
            record["construction"], record["fibre"], nominal,
            metres(measured) if measured else nominal, metres(core) if core else None,
            breaking and breaking["value"] * PULLS[breaking["unit"]],
            stretch and (stretch["value"] / 100, float(stretch["at"].rstrip(" %")) / 100))

    def rope(self, text):
        """An id, or `braid-12 HMPE 6 mm`."""
        if text in self.ropes:
            return self.ropes[text]
        construction, fibre, size = text.split(" ", 2)
        plain = Rope(construction, fibre, length(size), length(size), None, None, None)
        same = [r for r in self.generic if (r.construction, r.fibre, r.nominal) ==
                (construction, fibre, plain.nominal)]
        return same[0] if same else plain

    def applies(self, rule, kind, rope):
        if "kinds" in rule and kind not in rule["kinds"]:
            return False
        size = nanometres(rope.nominal)
        low, high = rule.get("from"), rule.get("up_to")
        return (rope.construction in rule.get("constructions", [rope.construction])
                and rope.fibre in rule.get("fibres", [rope.fibre])
                and not (low and size < nanometres(length(low)))
                and not (high and size > nanometres(length(high))))

    def figure(self, name, rope, kind=None, asked=None):
        """The rule asked for, then the kind's default rules, then the rules of every kind."""
        rules = [r for r in self.rules.values() if self.applies(r, kind, rope)]
        order = ([r for r in rules if "kinds" in r and r["name"] == asked]
                 + [r for r in rules if "kinds" in r and r.get("default")]
                 + [r for r in rules if "kinds" not in r])
        return next((figure_of(r[name]) for r in order if name in r), None)

    def has_rule(self, kind, rope, name):
        return any(r["name"] == name and "kinds" in r and self.applies(r, kind, rope)
                   for r in self.rules.values())
