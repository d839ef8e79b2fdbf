"""Random lines of a job, the same for the same seed, and a few ropes that the tables do not have."""

import csv
import re

OVERLAY = {
    "tables.toml": 'version = "differential"\ntitle = "Ropes of the differential test"\n',
    "sources.toml": '[[source]]\nkey = "differential"\ntitle = "Invented for a test"\nterms = "none"\n',
    "ropes/measured.toml": "".join(
        f'[[rope]]\nid = "{name}"\ntitle = "{name}"\nconstruction = "{construction}"\n'
        f'fibre = "{fibre}"\ndiameter = "{size} mm"\n'
        f'source = "differential"\nlocator = "none"\nstatus = "demo"\n'
        f'measured_diameter = {{ value = {measured}, unit = "mm" }}\n'
        'breaking = { value = 17, unit = "kN" }\n'
        'stretch = { value = 1.7, unit = "%", at = "25 %" }\n'
        + (f'braid_constant = {{ value = {braid}, spread = "measured" }}\n' if braid else "")
        + (f'core_diameter = {{ value = {core}, unit = "mm" }}\n' if core else "") + "\n"
        for name, construction, fibre, size, measured, core, braid in (
            ("odd-b12-hmpe-5", "12-strand", "HMPE", 5, 5.4, None, "0.21, sd = 0.012"),
            ("odd-b12-poly-6", "12-strand", "polyester", 6, 5.7, None, "0.19, low = 0.17, high = 0.22"),
            ("odd-cd-hmpe-6", "core-dependent", "HMPE", 6, 6.3, 4.1, "0.1, sd = 0.02"),
            ("odd-db-poly-10", "double-braid", "polyester", 10, 10.6, None, None),
        )),
}

ROPES = {
    "12-strand": ["demo-b12-hmpe-2.5", "demo-b12-hmpe-4", "demo-b12-hmpe-5", "odd-b12-hmpe-5", "odd-b12-poly-6",
                 "12-strand polyester 8 mm", "12-strand HMPE 1/4 in", "12-strand aramid 4 mm",
                 "12-strand polypropylene 6 mm", "12-strand nylon 5 mm"],
    "double-braid": ["demo-db-poly-5", "demo-db-poly-10", "odd-db-poly-10", "double-braid nylon 12 mm"],
    "core-dependent": ["demo-cd-hmpe-5", "demo-cd-hmpe-8", "odd-cd-hmpe-6", "core-dependent aramid 6 mm"],
    "3-strand": ["demo-laid-poly-12", "demo-laid-manila-14", "3-strand nylon 10 mm", "3-strand polyester 28 mm",
               "3-strand nylon 1 in"],
    "8-plait": ["demo-plait-nylon-14", "demo-plait-poly-14", "8-plait polypropylene 30 mm"],
    "solid-braid": ["demo-sb-poly-3", "demo-sb-poly-4"],
    "shock-cord": ["demo-shock-5", "demo-shock-8"],
    "wire": ["demo-wire-1-8-in", "demo-wire-4", "wire galvanised-steel 1/4 in",
             "wire stainless-steel 3/4 in"],
}
KNOTS = ["figure-eight", "bowline", "bare", "whipped"]
KINDS = {
    "12-strand": ["locked-eye", "buried-eye"] * 2 + KNOTS,
    "double-braid": ["stripped-eye"] * 2 + KNOTS,
    "core-dependent": ["stripped-eye"] * 2 + KNOTS,
    "3-strand": ["tucked-eye"] * 2 + KNOTS,
    "8-plait": ["tucked-eye"] * 2 + KNOTS,
    "solid-braid": KNOTS,
    "shock-cord": ["figure-eight", "bare", "whipped"],
    "wire": ["clipped-eye", "clipped-eye", "bare"],
}
RULES = {"12-strand HMPE": ["60-diameters", "100-diameters", "45-diameters", "72-diameters"],
         "polyester": ["24-diameters", "two-fids"],
         "any": ["three-fids-lock-stitched", "two-and-a-half-fids", "three-fids"]}


def mm(chance, low, high):
    return f"{round(chance.uniform(low, high), 2)} mm"


def bury_fields(chance, rope):
    fields = {}
    if chance.random() < 0.3:
        sort = "polyester" if "poly" in rope and "polyp" not in rope else "any"
        fields["rule"] = chance.choice(RULES["12-strand HMPE" if "hmpe" in rope.lower() else sort])
    if chance.random() < 0.4:
        fields["tail"] = chance.choice([f"{chance.randint(40, 110)} D", mm(chance, 250, 600)])
    if chance.random() < 0.3:
        fields["taper"] = chance.choice(["0 mm", f"{chance.randint(5, 30)} D"])
    if chance.random() < 0.3:
        fields["pairs"] = str(chance.choice([0] + [1, 2, 3, 4, 5] * 3 + [6]))
    if chance.random() < 0.2:
        fields["exit"] = f"{chance.randint(120, 150)} D"
    if chance.random() < 0.3:
        fields["settled"] = chance.choice(["yes", "no"])
    return fields


def tuck_fields(chance, rope):
    fields = {}
    if chance.random() < 0.4:
        fields["tucks"] = str(chance.randint(3, 8))
    if chance.random() < 0.3:
        fields["end_left"] = f"{chance.randint(5, 12)} D"
    if "plait" in rope and chance.random() < 0.4:
        fields["pick"] = mm(chance, 10, 18)
    return fields


def end_fields(chance, kind, rope):
    """Fields of one end, most of them in range."""
    fields = {}
    if kind.endswith("-eye") or kind == "bowline":
        pin = chance.choice([None, "0 mm", "0 mm", mm(chance, 3, 25)])
        if pin:
            fields["pin"] = pin
        if chance.random() < 0.8:
            least = 2.4 * float(pin.split()[0]) if pin else 0
            fields["loop" if kind == "bowline" else "eye"] = mm(chance, max(20, least), 200)
        if chance.random() < 0.2:
            fields["measured"] = chance.choice(["bearing", "pin-centre"])
    if kind in ("buried-eye", "locked-eye", "stripped-eye"):
        fields |= bury_fields(chance, rope)
    if kind == "stripped-eye":
        if chance.random() < 0.3:
            size = float(re.search(r"(\d+)(?: mm)?$", rope)[1])
            fields["core"] = mm(chance, 0.55 * size, 0.8 * size)
        if chance.random() < 0.5:
            fields["strands"] = str(chance.choice([8, 12, 16, 24] * 3 + [13]))
        if chance.random() < 0.3:
            fields["cover_tail"] = mm(chance, 80, 200)
        if chance.random() < 0.2:
            fields["cover_end"] = mm(chance, 500, 1500)
    if kind == "tucked-eye":
        fields |= tuck_fields(chance, rope)
    if kind == "clipped-eye" and chance.random() < 0.4:
        fields["clips"] = str(chance.randint(2, 6))
    if kind == "clipped-eye" and chance.random() < 0.2:
        fields["turn_back"] = mm(chance, 80, 700)
    if kind == "figure-eight" and chance.random() < 0.4:
        fields["set"] = str(round(chance.uniform(0.8, 1.6), 3))
    if kind in ("figure-eight", "bowline") and chance.random() < 0.3:
        fields["tail"] = mm(chance, 0, 150)
    if kind == "whipped" and chance.random() < 0.3:
        fields["length"] = mm(chance, 5, 30)
    if chance.random() < 0.15:
        fields |= {"fitting": "ring", "fitting_length": mm(chance, 10, 120)}
    return fields


def random_line(chance, number):
    construction = chance.choice(list(ROPES))
    rope = chance.choice(ROPES[construction])
    row = {"name": f"line {number}", "rope": rope}
    row["length"] = chance.choice([f"{round(chance.uniform(0.4, 3), 3)} m",
                                   f"{round(chance.uniform(3, 40), 4)} m",
                                   f"{chance.randint(3, 60)} ft {chance.randint(1, 11)} in"])
    row["fit"] = chance.choice(["exact", "trim-aboard", "at-least"])
    if row["fit"] == "exact" and chance.random() < 0.5:
        row["tolerance"] = mm(chance, 2, 20)
    if chance.random() < 0.3:
        row["tension"] = chance.choice([f"{chance.randint(1, 35)} %", f"{chance.randint(50, 900)} N"])
    if construction == "shock-cord" and "tension" in row:
        row["tension"] = f"{chance.randint(5, 90)} N"
    if chance.random() < (0.6 if construction == "shock-cord" else 0.02):
        row["stretch"] = f"{chance.randint(0, 85)} %"
    if construction == "shock-cord" and chance.random() < 0.4:
        row["travel"] = mm(chance, 10, 3000)
    row["first_end"] = chance.choice("ab")
    row["prestretched"] = chance.choice(["yes", "no"])
    if chance.random() < 0.1:
        row["carries_person"] = "yes"
    for column in ("extra", "wear", "spare"):
        if chance.random() < 0.15:
            row[column] = mm(chance, 0, 400)
    for end in "ab":
        kind = chance.choice(KINDS[construction]) if chance.random() < 0.98 else "tucked-eye"
        row[f"end_{end}"] = kind
        row |= {f"end_{end}.{name}": text for name, text in end_fields(chance, kind, rope).items()}
    return row


def random_lines(chance, count):
    return [random_line(chance, number) for number in range(1, count + 1)]


def write_job(path, rows):
    columns = list(dict.fromkeys(name for row in rows for name in row))
    with open(path, "w", newline="", encoding="utf-8") as job:
        writer = csv.DictWriter(job, columns)
        writer.writeheader()
        writer.writerows(rows)
