#!/usr/bin/python3
"""Sheets carried out on a model of the piece, one action after the other: some thousands of lines over every kind.

    main.py SPLICE TABLES EACH SEED      EACH lines for every kind and rope
    main.py SPLICE TABLES EACH SEED --put-back      the same lines, with each defect put back where it can be
    main.py --self-test

Knows no kind. 1 if a sheet cannot be carried out, does not measure what it promises, or if a kind never gets a line.
"""

import json
import re
import subprocess
import sys
import tempfile
from collections import Counter, defaultdict
from pathlib import Path

import self_test
from put_back import DEFECTS, put_back
from carrying_out import carry_out
from lines import generate, toml
from sheet import Sheet

SHOWN = 4  # of one fault


def told(splice, tables, *words):
    done = subprocess.run([splice, *words, "--format", "json", "--tables", tables], capture_output=True, text=True,
                          check=False)
    if done.returncode not in (0, 1):
        sys.exit(f"{' '.join(words)}: exit {done.returncode}: {done.stderr[:3000]}")
    return json.loads(done.stdout)


def list_kinds(splice, tables):
    kinds = {kind["name"]: kind for kind in told(splice, tables, "list", "kinds")}
    for kind in kinds.values():
        kind["joins"] = kind["datum"].startswith("round") or "either e" in kind["datum"]
    return kinds


def cut(splice, tables, rows):
    with tempfile.TemporaryDirectory() as folder:
        job = Path(folder) / "job.toml"
        job.write_text(toml(rows), encoding="utf-8")
        return told(splice, tables, "cut", str(job))["pieces"]


def alike(wrong, row):
    """One name for a fault wherever it is found: the end's kind, without places and lengths."""
    end = re.search(r"\bend ([ab])\b", wrong)
    kind = row.get(f"end_{end[1]}", "closed") if end else "line"
    return kind + ": " + re.sub(r"\d+(\.\d+)?|\bend [ab]|\([ab]\d+\)|'.*'|\[.*?\]", "_", wrong)


def sheets(kinds):
    """Rows of a job, and the piece of each."""
    splice, tables, each, seed = sys.argv[1:5]
    rows = generate(kinds, int(each), int(seed))
    pieces = cut(splice, tables, rows)
    if len(pieces) != len(rows):
        sys.exit(f"{len(rows)} lines went in and {len(pieces)} pieces came out")
    return rows, pieces


def find_all_put_back():
    rows, pieces = sheets(list_kinds(*sys.argv[1:3]))
    tried, slipped = Counter(), defaultdict(list)
    for row, piece in zip(rows, pieces, strict=True):
        if piece["cut_m"] is None:
            continue
        for name, sheet, expected in put_back(piece, row):
            tried[name] += 1
            found = carry_out(sheet)
            if not any(re.search(expected, wrong) for wrong in found):
                slipped[name].append((found, row))
    for defect in DEFECTS:
        name = defect.__name__
        print(f"{tried[name]:6} sheets with {name}, {len(slipped[name])} not found")
        for found, row in slipped[name][:SHOWN if "-v" in sys.argv else 1]:
            print(f"    {found}\n    {row}")
    sys.exit(1 if any(slipped.values()) or any(not tried[defect.__name__] for defect in DEFECTS) else 0)


def main():
    kinds = list_kinds(*sys.argv[1:3])
    rows, pieces = sheets(kinds)
    faults, carried, refused = defaultdict(list), Counter(), Counter()
    for row, piece in zip(rows, pieces, strict=True):
        names = {row.get("end_a"), row.get("end_b")} - {None}
        if piece["cut_m"] is None:
            refused.update(names)
            continue
        carried.update(names)
        for wrong in carry_out(Sheet(piece, row)):
            faults[alike(wrong, row)].append((wrong, row))
    for name in kinds:
        if not carried[name]:
            print(f"{name}: no line of this kind is cut ({refused[name]} are refused)")
            faults[name].append(("no line", {}))
    for wrong, where in sorted(faults.items(), key=lambda item: -len(item[1]))[:60]:
        print(f"{len(where)} x {wrong}")
        for exactly, row in where[:SHOWN if "-v" in sys.argv else 1]:
            print(f"    {exactly}\n    {row}")
    print(f"{sum(1 for p in pieces if p['cut_m'] is not None)} sheets carried out, {len(rows)} lines, "
          f"{sum(map(len, faults.values()))} faults")
    sys.exit(1 if faults else 0)


if __name__ == "__main__":
    if sys.argv[1:] == ["--self-test"]:
        self_test.run()
    elif "--put-back" in sys.argv:
        find_all_put_back()
    else:
        main()
