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
from dataclasses import replace
from statistics import NormalDist

from ends import make_end
from line import Bench, Line
from order import check_made, check_order, check_person, check_room
from strength import check_load, design_factor, retained
from values import Refused, Tables, length, nanometres, refuse_if
from way import loaded_path


def answer(line):
    row, construction = line.row, line.rope.construction
    refuse_if("tolerance" in row and line.fit != "exact", 406)
    refuse_if("tension" in row and construction == "wire" and not line.purchase, 405)
    refuse_if("stretch" in row and construction != "shock-cord", 407)
    refuse_if(line.slack and line.fit == "exact", 404)
    ends = made_ends(line)
    path = loaded_path(line, max(end.further_parts for end in ends.values()))
    check_made(line)
    check_order(line, ends)
    check_room(ends, path)
    check_person(line, ends)
    check_load(line, ends)
    for e in (line.first, line.last):
        line.rows += [replace(row, end=e) for row in ends[e].rows]
    milk = {e: milk_out(line, ends, e) for e in "ab"}
    kept = keep(line, ends)
    over = {line.first: 0.0, line.last: spare_and_rounding(line)}
    return {"cut": sum(row.nm for row in line.rows), "rows": line.rows,
            "marks": marks(line, ends, kept, {e: milk[e] + over[e] for e in "ab"}),
            "check": check(line, ends, path),
            "retained": retained(line, ends), "factor": design_factor(line, ends)}


def made_ends(line):
    """Both ends; a join or an item made whole accounts for the other end too."""
    kinds = {e: line.row.get(f"end_{e}") for e in "ab"}
    ends = {e: make_end(line.tables, line.rope, kinds[e] or "bare", line.fields(e)) for e in "ab" if kinds[e]}
    whole = [e for e in ends if ends[e].sides == 2]
    line.closed = bool(whole)
    if whole:
        refuse_if(any(kind and kind != "bare" for e, kind in kinds.items() if e != whole[0]), 407)
        line.first, line.last = whole[0], "b" if whole[0] == "a" else "a"
        return ends | {line.last: replace(ends[line.first], rows=[])}
    return ends | {e: make_end(line.tables, line.rope, "bare", {}) for e in "ab" if not kinds[e]}


def marks(line, ends, kept, over):
    """Nearest the cut end what is trimmed, then what is kept, then the end itself. None lies on the very end."""
    marks = []
    for e in "ab":
        outside = over[e] + kept[e]
        marks += [(e, name, nanometres(outside + at)) for name, at in ends[e].marks]
        if nanometres(outside):
            marks.append((e, "tail end", nanometres(outside)))
        if kept[e] and nanometres(over[e]) and ends[e].keeps == "yes":
            marks.append((e, "trim", nanometres(over[e])))
    return marks


def check(line, ends, path):
    """From the bearing point of the end made first to the far mark of the other; every exact line has one."""
    first, last = ends[line.first], ends[line.last]
    if first.sides == 2 or line.fit != "exact" and "cut" in (first.keeps, last.keeps):
        return None
    loaded = path + last.allowance() - last.far
    return nanometres(loaded + first.early), nanometres(loaded)


def milk_out(line, ends, end):
    """Cover pushed along by a covered splice comes out at the other end, if that is not one itself."""
    other = "b" if end == "a" else "a"
    if not ends[other].milks or ends[end].milks:
        return 0
    share = line.tables.figure("milk_out", line.rope)
    least = line.tables.figure("minimum_milk_out", line.rope).value
    path = line.asked_path
    return line.add("milk-out", end, max(share.value * path, least), share.sd * path)


def keep(line, ends):
    """Extra and wear lie at the end made last if it can keep them, else at the first."""
    kept = dict.fromkeys("ab", 0.0)
    wanted = {item: length(line.row[item]) for item in ("extra", "wear") if item in line.row}
    able = [e for e in (line.last, line.first)
            if ends[e].keeps == "yes" or ends[e].keeps == "cut" and line.fit != "exact"]
    refuse_if(any(wanted.values()) and not able, 407)
    for item, metres in wanted.items():
        if metres:
            kept[able[0]] += line.add(item, able[0], metres)
    return kept


def spare_and_rounding(line):
    """Spare and rounding lie outside the tail of the end made last."""
    groups, own = {}, 0.0
    for row in line.rows:
        if row.group == "own":
            own += row.sd ** 2
        else:
            groups[row.group] = groups.get(row.group, 0) + row.sd
    sd = math.sqrt(own + sum(s * s for s in groups.values()))
    spare = length(line.row["spare"]) if "spare" in line.row else (
        NormalDist().inv_cdf(1 - line.bench.risk / 100) * sd)
    outside = line.add("spare", line.last, spare)
    step = nanometres(line.bench.step or (0.001 if line.fit == "exact" else 0.005))
    over = -sum(row.nm for row in line.rows) % step
    return outside + line.add("rounding", line.last, over / 1e9)


def fold(tables, bench, row):
    """`{"cut", "rows", "marks", "check", ...}` in nanometres, or `{"refused": code}`."""
    try:
        return answer(Line(tables, bench, row))
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
