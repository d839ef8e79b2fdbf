#!/usr/bin/python3
"""Laid back along the piece, do the marks give the ledger? Every kind, in every rope it is made in.

    marks.py SPLICE TABLES LINES SEED     LINES for each kind and rope

Reads nothing but the program's JSON, so a kind needs no word here to be tested. 1 if a law is broken,
or if a kind never gets a line.
"""

import json
import random
import subprocess
import sys
import tempfile
from pathlib import Path

from given import mm
from jobs import write_csv

STEP = 5_000_000
SIZES = {"wire": "1/8 in", "shock-cord": "8 mm", "8-plait": "16 mm", "3-strand": "12 mm"}
FIBRES = {"12-strand": ["HMPE", "polyester", "aramid"], "double-braid": ["polyester", "nylon"],
          "core-dependent": ["HMPE", "aramid"], "parallel-core": ["HMPE"], "laid-core": ["polyester"], "3-strand": ["nylon", "manila"],
          "8-plait": ["nylon", "polyester"], "solid-braid": ["polyester"], "shock-cord": ["rubber"],
          "wire": ["stainless-steel"]}
PATH = {"finished length", "fitting", "pin centre to bearing point", "stretch", "marked slack", "first stretch"}
OUTSIDE = {"extra", "wear", "spare", "rounding", "milk-out"}
HIGHEST = {"core": 0.006}  # metres: of what would seldom go into the ropes that are used here
SHOWN = 8


def told(splice, tables, *words):
    done = subprocess.run([splice, *words, "--format", "json", "--tables", tables],
                          capture_output=True, text=True, check=False)
    if done.returncode not in (0, 1):
        sys.exit(f"{' '.join(words)}: exit {done.returncode}: {done.stderr[:2000]}")
    return json.loads(done.stdout)


def random_value(chance, field):
    """A value of one field within its limits, or nothing where the field has none to draw from."""
    if field["choices"]:
        return chance.choice(field["choices"])
    low, high = field.get("lowest"), field.get("highest")
    if low is None or high is None:
        return None
    if field["dimension"] == "length":
        high = HIGHEST.get(field["name"], high)
        return mm(chance, max(low * 1e3, 0), min(high * 1e3, 400))
    if field["dimension"] == "count":
        return str(chance.randint(int(low), int(min(high, 12))))
    if field["dimension"] == "ratio":
        return str(round(chance.uniform(low, min(high, 2)), 4))
    return None


def random_line(chance, name, kind, rope):
    """This kind at one end; the same kind, a cut or a stopper at the other."""
    row = {"name": name, "rope": rope, "length": mm(chance, 3000, 30000), "prestretched": chance.choice(["yes", "no"]),
           "fit": chance.choice(["trim-aboard", "at-least"]), "first_end": chance.choice("ab")}
    for column in ("extra", "wear"):
        if chance.random() < 0.3:
            row[column] = mm(chance, 1, 300)
    end, other = chance.choice(["ab", "ba"])
    stopper = "bare" if rope.startswith("wire") else "figure-eight"
    row[f"end_{end}"] = kind["name"]
    row[f"end_{other}"] = chance.choice([kind["name"], "bare", stopper, ""])
    for field in kind["fields"]:
        if field["name"] in ("rule", "measured", "fitting", "made", "captive"):
            continue
        for at in (end, other):
            wanted = field["required"] or chance.random() < 0.25
            if row[f"end_{at}"] == kind["name"] and wanted and (value := random_value(chance, field)):
                row[f"end_{at}.{field['name']}"] = value
                if field["name"] == "fitting_length":
                    row[f"end_{at}.fitting"] = "ring"
    return row


def nm(metres):
    return round(metres * 1e9)


def broken_laws(piece):
    """What does not add up in one piece; a few nanometres are the rounding of single rows."""
    cut, rows = nm(piece["cut_m"]), piece["ledger"]
    total = sum(nm(row["length_m"]) for row in rows)
    if total != cut:
        yield f"the rows add up to {total}, not {cut}"
    rounding = sum(nm(row["length_m"]) for row in rows if row["item"] == "rounding")
    if not 0 <= rounding < STEP or cut % STEP:
        yield f"rounding {rounding}, cut {cut}"
    marks = {end: [(m["name"], nm(m["from_end_m"])) for m in piece["marks"] if m["end"] == end] for end in "ab"}
    for end, found in marks.items():
        if any(not 0 <= at <= cut for _, at in found):
            yield f"a mark of end {end} lies off the piece: {found}"
        if len({name for name, _ in found}) != len(found):
            yield f"two marks of end {end} have one name: {found}"
    last = {end: max((at for _, at in found), default=0) for end, found in marks.items()}
    if abs(last["a"] + nm(piece["between_marks_m"]) + last["b"] - cut) > 1:
        yield f"last marks {last} and {piece['between_marks_m']} between them are not {cut}"
    yield from broken_check(piece, cut, marks)
    yield from broken_sides(piece, cut)


def broken_check(piece, cut, marks):
    """The check reads from the first end's bearing point to the far mark of the last: the rest of the
    piece is what the first end needs beyond its bearing point, and the last end up to that mark."""
    if not piece["check"]:
        return
    first, to = piece["check"]["from"], piece["check"]["to"]
    beyond = sum(nm(row["length_m"]) for row in piece["ledger"] if row["end"] == first and row["item"] not in PATH)
    far = cut - beyond - nm(piece["check"]["reads_loaded_m"])
    if all(abs(at - far) > 8 for _, at in marks[to]):
        yield f"the check points to {far} from end {to}, where no mark is: {marks[to]}"


def broken_sides(piece, cut):
    """All that lies outside the tail of the end made last is where its tail ends."""
    last = "b" if piece["first_end"] == "a" else "a"
    outside = sum(nm(r["length_m"]) for r in piece["ledger"] if r["end"] == last and r["item"] in OUTSIDE)
    tail_end = [nm(m["from_end_m"]) for m in piece["marks"] if (m["end"], m["name"]) == (last, "tail end")]
    if tail_end and abs(tail_end[0] - outside) > 2:
        yield f"the tail of end {last} ends at {tail_end[0]}, and {outside} lie outside it, of {cut}"


def main():
    splice, tables, count, seed = sys.argv[1], sys.argv[2], int(sys.argv[3]), int(sys.argv[4])
    chance = random.Random(seed)
    kinds = told(splice, tables, "list", "kinds")
    rows = [random_line(chance, kind["name"], kind, f"{construction} {fibre} {SIZES.get(construction, '6 mm')}")
            for kind in kinds for construction in kind["constructions"] for fibre in FIBRES[construction]
            for _ in range(count)]
    with tempfile.TemporaryDirectory() as folder:
        job = Path(folder) / "job.csv"
        write_csv(job, rows)
        pieces = told(splice, tables, "cut", str(job))["pieces"]
    bad, cut = 0, dict.fromkeys((kind["name"] for kind in kinds), 0)
    for row, piece in zip(rows, pieces, strict=True):
        if piece["error"]:
            continue
        cut[row["name"]] += 1
        broken = list(broken_laws(piece))
        bad += bool(broken)
        if broken and bad <= SHOWN:
            print(", ".join(f"{k}={v}" for k, v in row.items()), "".join(f"\n    {b}" for b in broken))
    never = [name for name, times in cut.items() if not times]
    print(f"{sum(cut.values())} of {len(rows)} lines cut, {bad} break a law; never cut: {never or 'none'}")
    return bool(bad or never)


if __name__ == "__main__":
    sys.exit(main())
