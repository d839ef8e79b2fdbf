"""Random lines of a job, the same for the same seed: every kind at either end, made first and last, in every rope."""

import csv
import json

from ends import KINDS
from given import diameter, end_fields, mm
from joins import KINDS as JOINS
from parts import COVERED
from ways import random_route
from whole import KINDS as WHOLE

ROPES = {
    "12-strand": ["demo-b12-hmpe-2.5", "demo-b12-hmpe-4", "demo-b12-hmpe-5", "odd-b12-hmpe-5", "odd-b12-poly-6",
                 "12-strand polyester 8 mm", "12-strand HMPE 1/4 in", "12-strand aramid 4 mm", "12-strand LCP 5 mm",
                 "12-strand polypropylene 6 mm", "12-strand nylon 5 mm"],
    "double-braid": ["demo-db-poly-5", "demo-db-poly-10", "odd-db-poly-10", "double-braid nylon 12 mm",
                     "double-braid HMPE 8 mm"],
    "core-dependent": ["demo-cd-hmpe-5", "demo-cd-hmpe-8", "odd-cd-hmpe-6", "core-dependent aramid 6 mm",
                       "core-dependent polyester 8 mm"],
    "parallel-core": ["parallel-core polyester 8 mm", "parallel-core HMPE 6 mm", "parallel-core aramid 10 mm"],
    "laid-core": ["laid-core polyester 8 mm", "laid-core HMPE 6 mm", "laid-core polyester 1/2 in"],
    "3-strand": ["demo-laid-poly-12", "demo-laid-manila-14", "3-strand nylon 10 mm", "3-strand polyester 28 mm",
               "3-strand nylon 1 in", "3-strand HMPE 8 mm", "3-strand polyester-polyolefin 12 mm"],
    "8-plait": ["demo-plait-nylon-14", "demo-plait-poly-14", "8-plait polypropylene 30 mm", "8-plait HMPE 10 mm"],
    "solid-braid": ["demo-sb-poly-3", "demo-sb-poly-4", "solid-braid HMPE 4 mm", "solid-braid nylon 6 mm"],
    "shock-cord": ["demo-shock-5", "demo-shock-8", "shock-cord rubber 6 mm"],
    "wire": ["demo-wire-1-8-in", "demo-wire-4", "wire galvanised-steel 1/4 in",
             "wire stainless-steel 3/4 in"],
}
BOTH_ENDS = {*JOINS, *WHOLE} - {"cover-over-join"}


PAIRS = [(kind, construction) for kind, (_, made_in) in KINDS.items() for construction in sorted(made_in)]


def random_ends(chance, number):
    """A kind, a construction that it is made in, and what lies at the other end. Every other line takes the next pair
    of kind and construction, so that none is left out."""
    kind = chance.choice(list(KINDS))
    construction = chance.choice(sorted(KINDS[kind][1]))
    if number % 2:
        kind, construction = PAIRS[number // 2 % len(PAIRS)]
    if kind in BOTH_ENDS:
        return construction, chance.choice([(kind, ""), (kind, "bare"), ("", kind)])
    others = [k for k in KINDS if construction in KINDS[k][1] and k not in BOTH_ENDS]
    other = chance.choice([kind, *others]) if chance.random() < 0.98 else chance.choice(list(KINDS))
    return construction, chance.choice([(kind, other), (other, kind)])


def random_line(chance, number):
    construction, kinds = random_ends(chance, number)
    rope = chance.choice(ROPES[construction])
    row = {"name": f"line {number}", "rope": rope}
    row["length"] = chance.choice([f"{round(chance.uniform(0.4, 3), 3)} m",
                                   f"{round(chance.uniform(3, 40), 4)} m",
                                   f"{chance.randint(3, 60)} ft {chance.randint(1, 11)} in"])
    if chance.random() < 0.12 and construction != "shock-cord" and not BOTH_ENDS & set(kinds):
        row["route"] = random_route(chance)
        del row["length"]
    row["fit"] = chance.choice(["exact", "trim-aboard", "at-least"])
    if row["fit"] == "exact" and chance.random() < 0.5:
        row["tolerance"] = mm(chance, 2, 20)
    if chance.random() < 0.3:
        row["tension"] = chance.choice([f"{chance.randint(1, 35)} %", f"{chance.randint(50, 900)} N"])
    if construction == "shock-cord":
        elastic_columns(chance, row)
    elif chance.random() < 0.02:
        row["stretch"] = f"{chance.randint(0, 85)} %"
    row["first_end"] = chance.choice("ab")
    row["prestretched"] = chance.choice(["yes", "no"])
    if chance.random() < 0.1:
        row["carries_person"] = "yes"
    if chance.random() < 0.15:
        row["load"] = f"{chance.randint(1, 80) * 200} N"
    reel_columns(chance, row, construction)
    if chance.random() < 0.1:
        row["wash"] = chance.choice(["yes", "yes", "no"])
    seldom = 0.03 if BOTH_ENDS & set(kinds) else 0.15  # no spliced end keeps them
    for column, share in (("extra", seldom), ("wear", seldom), ("spare", 0.15)):
        if chance.random() < share:
            row[column] = mm(chance, 0, 400)
    for end, kind in zip("ab", kinds):
        if kind:
            row[f"end_{end}"] = kind
            row |= {f"end_{end}.{name}": text for name, text in end_fields(chance, kind, rope, construction).items()}
    return row


def reel_columns(chance, row, construction):
    """What the reel in hand says."""
    size = diameter(row["rope"])
    if chance.random() < 0.1:
        row["rope_measured"] = mm(chance, 0.9 * size, 1.1 * size)
    if chance.random() < 0.1 and construction in COVERED:
        row["rope_core"] = mm(chance, 0.5 * size, 0.85 * size)
    if chance.random() < 0.1:
        row["rope_breaking"] = f"{round(chance.uniform(3, 40), 1)} kN"
    if chance.random() < 0.1 and construction not in ("wire", "shock-cord"):
        row["rope_stretch"] = f"{round(chance.uniform(0.4, 5), 2)} % at {chance.choice([10, 20, 30])} %"
    if chance.random() < 0.1:
        row["rope_prestretched"] = chance.choice(["yes", "no"])
        row.pop("prestretched")


def elastic_columns(chance, row):
    if "tension" in row:
        row["tension"] = f"{chance.randint(5, 90)} N"
    if chance.random() < 0.6:
        row["stretch"] = f"{chance.randint(0, 85)} %"
    if chance.random() < 0.4:
        row["travel"] = mm(chance, 10, 3000)


def random_lines(chance, count, before=0):
    return [random_line(chance, number) for number in range(before + 1, before + count + 1)]


def write_csv(path, rows):
    columns = list(dict.fromkeys(name for row in rows for name in row))
    with open(path, "w", newline="", encoding="utf-8") as job:
        writer = csv.DictWriter(job, columns)
        writer.writeheader()
        writer.writerows(rows)


def write_toml(path, rows):
    """An end with fields is a table with its kind; a route is a table too."""
    with open(path, "w", encoding="utf-8") as job:
        for row in rows:
            job.write("[[line]]\n")
            for name, text in row.items():
                if "." not in name and name not in ("end_a", "end_b"):
                    job.write(f"{name} = {text if name == 'route' else json.dumps(text)}\n")
            for end in ("end_a", "end_b"):
                fields = {n[6:]: t for n, t in row.items() if n.startswith(end + ".")}
                if end in row:
                    job.write(f"{end} = {{ " + ", ".join(f"{n} = {json.dumps(t)}" for n, t in
                                                       ({"kind": row[end]} | fields).items()) + " }\n")
