"""Lines of a job, the same for the same seed: every kind in every rope, and all that decides the order of work."""

import random

ROPES = {"12-strand": ["12-strand HMPE 5 mm", "12-strand polyester 8 mm"],
         "double-braid": ["double-braid polyester 8 mm"], "core-dependent": ["core-dependent HMPE 8 mm"],
         "parallel-core": ["parallel-core HMPE 10 mm"], "3-strand": ["3-strand polyester 12 mm"],
         "8-plait": ["8-plait nylon 14 mm"], "solid-braid": ["solid-braid polyester 5 mm"],
         "shock-cord": ["shock-cord rubber 6 mm"], "wire": ["wire stainless-steel 1/4 in"], "laid-core": ["laid-core polyester 10 mm"]}
# What a field that must be given is given, and a range for those that may be.
GIVEN = {"groove": "24 mm", "bore": "14 mm", "shank": "60 mm", "insertion": "40 mm", "growth": "2 mm", "thin": "4 mm",
         "length": "20 mm", "side": "thin", "ball": "20 mm", "other": "8 mm", "spar": "40 mm", "hole": "10 mm",
         "bar": "12 mm"}
OFTEN = {"eye": (60, 120), "pin": (4, 12), "loop": (80, 200), "tail": None, "turns": None}
OTHERS = ["bare", "whipped", "figure-eight", "bowline", "same"]
PURCHASE = '{ purchase = 4, run = "1200 mm", sheave = "40 mm", tail = "900 mm" }'
CORNERS = ('{ points = [ { at = ["0 m", "0 m", "0 m"] }, { at = ["3 m", "0 m", "0 m"], sheave = "80 mm" }, '
           '{ at = ["3 m", "4 m", "0 m"] } ] }')
PATTERN = '{ pattern = { length = "7.93 m", tension = "slack" } }'


def fields_of(chance, kind):
    fields = {}
    for field in kind["fields"]:
        name = field["name"]
        if name in ("rule", "measured", "fitting", "fitting_length", "captive", "made"):
            continue
        if field["choices"] and (field["required"] or chance.random() < 0.5):
            fields[name] = chance.choice(field["choices"])
        elif field["required"] and name in GIVEN:
            fields[name] = GIVEN[name]
        elif OFTEN.get(name) and chance.random() < 0.6:
            fields[name] = f"{chance.randint(*OFTEN[name])} mm"
        elif field["required"] and field["dimension"] == "length":
            fields[name] = f"{chance.randint(20, 60)} mm"
    return fields


def end_of(chance, row, end, kind, rope):
    row[f"end_{end}"] = kind["name"]
    for name, value in fields_of(chance, kind).items():
        row[f"end_{end}.{name}"] = value
    fitting = chance.choice(["", "", "shackle", "ring"])
    if fitting and "rubber" not in rope:
        row[f"end_{end}.fitting"] = f"{fitting} {end}"
        row[f"end_{end}.fitting_length"] = "30 mm"
        if fitting == "ring":
            row[f"end_{end}.captive"] = "yes"


def line(chance, name, kind, rope, kinds):
    """This kind at one end, something that goes with it at the other."""
    row = {"name": name, "rope": rope, "fit": chance.choice(["exact", "trim-aboard", "at-least"]),
           "first_end": chance.choice("ab"), "prestretched": chance.choice(["yes", "no"])}
    route = chance.choice(["", "", "", PURCHASE, CORNERS, PATTERN])
    if route:
        row["route"] = route
    else:
        row["length"] = f"{chance.randint(3000, 20000)} mm"
    end, far = chance.choice(["ab", "ba"])
    end_of(chance, row, end, kind, rope)
    partner = chance.choice(OTHERS)
    if kind["joins"]:
        row.pop("route", None)
        row["length"] = f"{chance.randint(6000, 20000)} mm"
        row["first_end"] = end
    elif partner == "same":
        end_of(chance, row, far, kind, rope)
    else:
        row[f"end_{far}"] = partner if partner in kinds and rope.split()[0] in kinds[partner]["constructions"] else "bare"
    for column, share in (("wear", 0.3), ("extra", 0.25)):
        if chance.random() < share:
            row[column] = f"{chance.randint(100, 900)} mm"
    if chance.random() < 0.35:
        row["fit_first"] = chance.choice(["block", "block, cleat", "ball"])
    last = "b" if row["first_end"] == "a" else "a"
    if not kind["joins"] and chance.random() < 0.3:
        row[f"end_{last}.made"] = "aboard"
    if kind["joins"] and chance.random() < 0.2:
        row[f"end_{end}.made"] = "aboard"
    if kind["joins"] and chance.random() < 0.2:
        row |= {f"end_{far}.fitting": "ring far", f"end_{far}.fitting_length": "30 mm", f"end_{far}.captive": "yes"}
    if not kind["joins"] and (row["fit"] == "trim-aboard" or f"end_{last}.made" in row) and chance.random() < 0.3:
        row[f"end_{row['first_end']}.made"] = "aboard"
    return row


def generate(kinds, each, seed):
    """`each` lines for every kind and rope."""
    chance = random.Random(seed)
    rows = []
    for kind in kinds.values():
        for construction in kind["constructions"]:
            for rope in ROPES[construction]:
                for _ in range(each):
                    rows.append(line(chance, f"line {len(rows)}", kind, rope, kinds))
    return rows


def toml(rows):
    """Rows as a job file; an end's fields go into its table."""
    text = []
    for row in rows:
        text.append("[[line]]")
        ends = {"a": {}, "b": {}}
        for key, value in row.items():
            if key == "route":
                text.append(f"route = {value}")
            elif key.startswith("end_"):
                ends[key[4]][key[6:] or "kind"] = value
            else:
                text.append(f'{key} = "{value}"')
        for end, fields in ends.items():
            if fields:
                inner = ", ".join(f'{name} = "{value}"' for name, value in fields.items())
                text.append(f"end_{end} = {{ {inner} }}")
    return "\n".join(text) + "\n"
