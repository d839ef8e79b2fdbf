#!/usr/bin/python3
"""Random lines through the program and through the second fold: do they say the same?

    compare.py SPLICE TABLES LINES SEED

Prints the first lines that differ, each with its job row; 1 if any does, or if a kind was never cut at an end, first,
last, or in a construction that it is made in.
"""

import json
import random
import subprocess
import sys
import tempfile
from pathlib import Path

from ends import KINDS
from fold import fold
from line import Bench
from jobs import BOTH_ENDS, random_lines, write_toml
from overlay import OVERLAY
from parts import Row
from values import Tables

SHOWN = 8
BENCHES = [
    (Bench(), []),
    (Bench(marking_tension="200 N"), ["--marking-tension", "200 N"]),
    (Bench(marking_tension="slack"), ["--marking-tension", "slack"]),
    (Bench(risk=5, step=0.010), ["--risk", "5", "--step", "10 mm"]),
    (Bench(risk=50), ["--risk", "50"]),
]


def pieces_of(splice, tables, overlay, job, options):
    command = [splice, "cut", job, "--format", "json", "--tables", tables, "--tables", overlay, *options]
    done = subprocess.run(command, capture_output=True, text=True, check=False)
    if done.returncode not in (0, 1):
        sys.exit(f"{' '.join(command)}\nexit {done.returncode}: {done.stderr[:2000]}")
    return json.loads(done.stdout)["pieces"]


def nm(metres):
    return round(metres * 1e9)


def far(a, b):
    """Farther apart than single rows are rounded."""
    return abs(a - b) > 3


def rows_of(rows):
    """What a piece's rows say, by end, item and count; those that say nothing are left out on both sides."""
    found = {}
    for row in sorted(rows, key=lambda row: row.nm):
        if row.nm or row.sd:
            count = sum(key[:2] == (row.end, row.item) for key in found)
            found[row.end, row.item, count] = (row.nm, row.sd, row.group)
    return found


def program_rows(piece):
    """A row that errs alone has a group of its own name there."""
    return [Row(r["item"], r["end"], nm(r["length_m"]), r["sd_m"], "own" if ": " in r["group"] else r["group"])
            for r in piece["ledger"]]


def differences(piece, answer):
    """One sentence for each thing that the two say differently."""
    fault = piece["error"] and piece["error"]["code"]
    if fault or "refused" in answer:
        if not fault or "refused" not in answer:
            text = piece["error"] and piece["error"]["text"]
            yield f"fault: program {fault} ({text}), fold {answer.get('refused')}"
        return
    theirs, ours = rows_of(program_rows(piece)), rows_of(answer["rows"])
    for key in sorted(theirs.keys() | ours.keys(), key=str):
        left, right = theirs.get(key), ours.get(key)
        if left is None or right is None:
            yield f"row {key}: program {left}, fold {right}"
        elif key[1] not in ("spare", "rounding") and (
                far(left[0], right[0]) or abs(left[1] - right[1]) > 1e-8 or
                (left[1] and left[2] != right[2])):
            yield f"row {key}: program {left}, fold {right}"
    for name, ours_ in (("retained_strength", "retained"), ("design_factor", "factor")):
        left, right = piece[name], answer[ours_]
        if (left is None) != (right is None) or left is not None and abs(left - right) > 1e-6 * right:
            yield f"{name}: program {left}, fold {right}"
    yield from spare_differences(theirs, ours, piece, answer)
    marks = {(m["end"], m["name"]): nm(m["from_end_m"]) for m in piece["marks"]}
    folded = {(e, n): at for e, n, at in answer["marks"]}
    for key in sorted(marks.keys() | folded.keys()):
        left, right = marks.get(key), folded.get(key)
        if left is None or right is None or far(left, right):
            yield f"mark {key}: program {left}, fold {right}"
    check = piece["check"] and tuple(nm(piece["check"][name]) for name in ("reads_m", "reads_loaded_m"))
    if (check is None) != (answer["check"] is None) or check and any(map(far, check, answer["check"])):
        yield f"check: program {check}, fold {answer['check']}"


def spare_differences(theirs, ours, piece, answer):
    for item in ("spare", "rounding"):
        left = sum(row[0] for key, row in theirs.items() if key[1] == item)
        right = sum(row[0] for key, row in ours.items() if key[1] == item)
        if abs(left - right) > 20:  # the spreads may differ by what single rows are rounded
            yield f"{item}: program {left}, fold {right}"
    if nm(piece["cut_m"]) != answer["cut"]:
        yield f"cut: program {nm(piece['cut_m'])}, fold {answer['cut']}"


def places_of(row, construction):
    """Each kind that this line was cut with: in which construction, at which end, made first or last."""
    for end in "ab":
        kind = row.get(f"end_{end}")
        if kind:
            yield kind, construction
            yield kind, end
            yield kind, "first" if end == row["first_end"] else "last"


def wanted_places():
    """Every kind in every construction, at either end, made first and last; a closed line has no order of its ends."""
    for kind, (_, constructions) in KINDS.items():
        yield from ((kind, place) for place in (*constructions, "a", "b"))
        if kind not in BOTH_ENDS:
            yield from ((kind, place) for place in ("first", "last"))


def main():
    splice, tables, count, seed = sys.argv[1], sys.argv[2], int(sys.argv[3]), int(sys.argv[4])
    chance = random.Random(seed)
    bad = refused = total = 0
    missing = set(wanted_places())
    with tempfile.TemporaryDirectory() as folder:
        overlay = Path(folder) / "tables"
        for name, text in OVERLAY.items():
            (overlay / name).parent.mkdir(parents=True, exist_ok=True)
            (overlay / name).write_text(text)
        known = Tables(tables, overlay)
        for bench, options in BENCHES:
            rows = random_lines(chance, count // len(BENCHES), total)
            job = Path(folder) / "job.toml"
            write_toml(job, rows)
            pieces = pieces_of(splice, tables, str(overlay), str(job), options)
            for row, piece in zip(rows, pieces, strict=True):
                answer = fold(known, bench, row)
                total, refused = total + 1, refused + ("refused" in answer)
                wrong = list(differences(piece, answer))
                bad += bool(wrong)
                if not piece["error"]:
                    missing -= set(places_of(row, known.rope(row["rope"]).construction))
                if wrong and bad <= SHOWN:
                    print(" ".join(options), ", ".join(f"{k}={v}" for k, v in row.items()))
                    print("".join(f"    {sentence}\n" for sentence in wrong))
    never = ", ".join(sorted(" ".join(place) for place in missing)) or "nothing"
    print(f"{total} lines, {refused} refused by the fold, {bad} differ; never cut: {never}")
    return bool(bad or missing)


if __name__ == "__main__":
    sys.exit(main())
