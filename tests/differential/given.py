"""Random fields of one end, most of them in range: what each kind's page lists."""

import re

from parts import COVERED

RULES = {"12-strand HMPE": ["60-diameters", "100-diameters", "45-diameters", "72-diameters"],
         "polyester": ["24-diameters", "two-fids"],
         "any": ["three-fids-lock-stitched", "two-and-a-half-fids", "three-fids"]}
OWN_RULES = {
    "core-eye": ["two-fids", "two-fids-and-short-section", "two-fids-and-taper"],
    "cover-core-eye": ["one-and-a-third-fids", "long-section-out"],
    "tucked-eye": ["four-tucks", "four-tucks-natural"],
    "short-splice": ["four-tucks"],
    "sewn-join": ["short-overlap"],
    "core-to-core": ["two-fids"],
    "cover-over-join": ["40-diameters"],
    "stopper-ball": ["figure-eight-behind", "overhand-behind"],
    "double-overhand": ["barrel-form"],
    "stevedore": ["other-form"],
    "clove-hitch": ["short-tail", "strength-compiled"],
    "bowline": ["yosemite-finish"],
    "round-turn-two-half-hitches": ["strength-on-post"],
    "sheet-bend": ["strength-manual", "strength-tested"],
}
BURIED = {"buried-eye", "locked-eye", "stripped-eye", "larked-eye", "ring-eye", "endless-loop", "two-eye-strop"}
TAPERED = BURIED | {"core-eye", "core-to-core"}
STOPPERS = {"figure-eight", "overhand", "double-overhand", "stevedore", "stopper-ball"}
LOOPS = {"bowline", "double-bowline", "figure-eight-loop", "overhand-loop", "barrel-noose"}
ROUND_A_PIN = {"halyard-hitch", "buntline-hitch"}
ROUND_A_SPAR = {"clove-hitch", "cow-hitch", "rolling-hitch", "round-turn-two-half-hitches", "lashing"}
KNOTTED = STOPPERS | LOOPS | ROUND_A_PIN | (ROUND_A_SPAR - {"lashing"}) | {"sheet-bend", "double-fisherman"}
LEAST_TURNS = {"halyard-hitch": 2, "buntline-hitch": 1, "clove-hitch": 2, "rolling-hitch": 3, "lashing": 1,
               "round-turn-two-half-hitches": 1}
TURNS = {"halyard-hitch": 5, "sheet-bend": 2}  # the most, where it is not many


def mm(chance, low, high):
    return f"{round(chance.uniform(low, high), 2)} mm"


def diameter(rope):
    """Near enough for a value in range: the last number of the name, in millimetres."""
    *_, last = re.findall(r"(\d+)[-/](\d+)[- ]in$|([\d.]+) in$|([\d.]+)(?: mm)?$", rope)
    over, under, inches, mms = last
    return float(mms) if mms else 25.4 * (float(inches) if inches else int(over) / int(under))


def end_fields(chance, kind, rope, construction):
    """Fields of the kind, and those that every end has."""
    fields = {}
    seldom = lambda share: chance.random() < share
    for make in (eye_fields, bury_fields, knot_fields, turn_fields, strand_fields, covered_fields, fitting_fields,
                 join_fields):
        make(chance, seldom, kind, rope, construction, fields)
    if kind in OWN_RULES and seldom(0.12):
        fields["rule"] = chance.choice(OWN_RULES[kind])
    if seldom(0.15):
        fields |= {"fitting": "ring", "fitting_length": mm(chance, 10, 120)}
        if seldom(0.4):
            fields["captive"] = chance.choice(["yes", "yes", "no"])
    if kind == "locked-eye" and seldom(0.4):
        fields["far_end"] = chance.choice(["free", "fixed"])
    if seldom(0.06):
        fields["made"] = chance.choice(["bench", "aboard"])
    return fields


def eye_fields(chance, seldom, kind, rope, construction, fields):
    if kind == "larked-eye":
        if seldom(0.7):
            fields["pin"] = mm(chance, 0, 40)
        if seldom(0.4):
            fields["eye"] = mm(chance, 80, 250)
    elif kind == "ring-eye":
        groove = round(chance.uniform(8, 40), 2)
        fields |= {"groove": f"{groove} mm", "bore": mm(chance, 0.4 * groove, 0.98 * groove)}
        if seldom(0.4):
            fields["closing"] = chance.choice(["seized", "stitched"])
        if seldom(0.4):
            fields["eye"] = mm(chance, 60, 200)
    elif kind.endswith("-eye") or kind in LOOPS or kind == "two-eye-strop":
        pin = chance.choice([None, "0 mm", "0 mm", mm(chance, 3, 25)])
        if pin:
            fields["pin"] = pin
        if seldom(0.8):
            least = 2.4 * float(pin.split()[0]) if pin else 0
            fields["loop" if kind in LOOPS else "eye"] = mm(chance, max(20, least), 200)
        if seldom(0.2):
            fields["measured"] = chance.choice(["bearing", "pin-centre"])
    elif kind == "soft-shackle" and seldom(0.6):
        fields["pin"] = mm(chance, 0, 30)


def bury_fields(chance, seldom, kind, rope, construction, fields):
    if kind in BURIED and seldom(0.3) or kind == "adjustable-eye" and seldom(0.2):
        sort = "polyester" if "poly" in rope and "polyp" not in rope else "any"
        fields["rule"] = chance.choice(RULES["12-strand HMPE" if "hmpe" in rope.lower() else sort])
    butt = kind == "sewn-join" and fields.setdefault("way", chance.choice(["overlap", "overlap", "butt"])) == "butt"
    if kind not in TAPERED and not butt:
        return
    if seldom(0.4):
        fields["tail"] = chance.choice([f"{chance.randint(40, 110)} D", mm(chance, 250, 600)])
    if seldom(0.3):
        fields["taper"] = chance.choice(["0 mm", f"{chance.randint(5, 30)} D"])
    if seldom(0.3):
        fields["pairs"] = str(chance.choice([0] + [1, 2, 3, 4, 5] * 3 + [6]))
    if seldom(0.2):
        fields["exit"] = f"{chance.randint(120, 150)} D"
    if seldom(0.3):
        fields["settled"] = chance.choice(["yes", "no"])
    if kind in ("stripped-eye", "core-eye", "core-to-core", "sewn-join") and seldom(0.5):
        fields["strands"] = str(chance.choice([8, 12, 16, 24] * 3 + [13]))
    if butt and seldom(0.2):
        fields["core"] = mm(chance, 1, 4)


def knot_fields(chance, seldom, kind, rope, construction, fields):
    if (kind in STOPPERS or kind == "adjustable-eye") and seldom(0.4):
        fields["set"] = str(round(chance.uniform(0.8, 1.6), 3))
    if kind in KNOTTED and seldom(0.3):
        fields["tail"] = mm(chance, 0, 150)
    if kind == "stopper-ball":
        fields["ball"] = mm(chance, 5, 60)
    if kind == "adjustable-eye":
        if seldom(0.3):
            fields["bury"] = f"{chance.randint(20, 110)} D"
        if seldom(0.4):
            fields["travel"] = mm(chance, 0, 300)
    if kind in ("adjustable-eye", "soft-shackle") and seldom(0.3):
        fields["end_left"] = mm(chance, 10, 150)


def turn_fields(chance, seldom, kind, rope, construction, fields):
    if kind in ROUND_A_PIN:
        fields["pin"] = mm(chance, 3, 25)
    if kind in ROUND_A_SPAR:
        fields["spar"] = mm(chance, 3, 90)
    if kind in LEAST_TURNS and seldom(0.3):
        fields["turns"] = str(chance.randint(LEAST_TURNS[kind], TURNS.get(kind, 8)))
    if kind == "clove-hitch" and seldom(0.5):
        fields["stitched"] = chance.choice(["yes", "yes", "no"])
    if kind == "lashing" and seldom(0.5):
        fields["gap"] = mm(chance, 0, 150)
        if seldom(0.5):
            fields["pin"] = mm(chance, 3, 90)
    if kind == "lashing" and seldom(0.3):
        fields["hitches"] = str(chance.randint(1, 6))
    if kind == "sheet-bend":
        if seldom(0.7):
            fields["other"] = mm(chance, 2, 20)
        if seldom(0.3):
            fields["turns"] = chance.choice("12")


def strand_fields(chance, seldom, kind, rope, construction, fields):
    plait = construction == "8-plait"
    if kind in ("tucked-eye", "short-splice") or kind == "end-for-end" and plait:
        if seldom(0.4):
            fields["tucks"] = str(chance.randint(3, 8))
        if seldom(0.3):
            fields["end_left"] = f"{chance.randint(5, 12)} D"
        if plait and seldom(0.4):
            fields["pick"] = mm(chance, 10, 18)
    if kind == "long-splice":
        if seldom(0.4):
            fields["crowns"] = str(chance.randint(34, 60))
        if seldom(0.4):
            fields["crown"] = mm(chance, 8, 20)


def covered_fields(chance, seldom, kind, rope, construction, fields):
    size = diameter(rope)
    if kind in ("stripped-eye", "core-eye", "core-to-core") and seldom(0.3):
        fields["core"] = mm(chance, 0.55 * size, 0.8 * size)
    if kind == "stripped-eye":
        if seldom(0.3):
            fields["cover_tail"] = mm(chance, 80, 200)
        if seldom(0.2):
            fields["cover_end"] = mm(chance, 500, 1500)
    if kind == "core-eye" and seldom(0.5):
        fields["way"] = chance.choice(["through-the-eye", "core-kept"])
    if kind in ("cover-core-eye", "parallel-core-eye", "end-for-end") and construction != "8-plait":
        if seldom(0.3):
            fields["tail"] = f"{chance.randint(12, 30)} D"
        if seldom(0.3):
            fields["exit"] = f"{chance.randint(25, 45)} D"
    if kind == "cover-core-eye" and seldom(0.3):
        fields["core_out"] = f"{chance.randint(3, 16)} D"
    if kind == "end-for-end" and construction != "8-plait" and seldom(0.3):
        fields["taper"] = f"{chance.randint(3, 11)} D"


def fitting_fields(chance, seldom, kind, rope, construction, fields):
    if kind == "clipped-eye":
        if seldom(0.4):
            fields["clips"] = str(chance.randint(2, 6))
        if seldom(0.2):
            fields["turn_back"] = mm(chance, 80, 700)
        if seldom(0.4):
            fields["base"] = mm(chance, 8, 50)
    if kind == "ferrule-eye":
        fields["turn_back"] = mm(chance, 20, 200)
    if kind == "swaged-fitting":
        fields |= {"shank": mm(chance, 50, 120), "insertion": mm(chance, 20, 49), "growth": mm(chance, 0, 6)}
    if kind == "crimped-end":
        fields["length"] = mm(chance, 8, 60)
        if seldom(0.5):
            fields["form"] = chance.choice(["ring", "hook", "clamp", "loop"])
        if seldom(0.3):
            fields["end_left"] = mm(chance, 0, 40)
        if fields.get("form") == "loop":
            fields |= {"eye": mm(chance, 60, 150), "pin": chance.choice(["0 mm", mm(chance, 3, 20)])}
    if kind == "whipped" and seldom(0.3):
        fields["length"] = mm(chance, 5, 30)
    if kind == "heat-sealed" and seldom(0.3) and construction in COVERED:
        fields["core_back"] = mm(chance, 3, 30)


def join_fields(chance, seldom, kind, rope, construction, fields):
    if kind == "cover-over-join":
        size = diameter(rope)
        fields["side"] = chance.choice(["thin", "thick"])
        if fields["side"] == "thick":
            fields["thin"] = mm(chance, 0.3 * size, 0.95 * size)
        if seldom(0.3):
            fields["tail"] = mm(chance, 200, 500)
        if seldom(0.3):
            fields["taper"] = mm(chance, 20, 190)
    if kind == "sewn-join" and fields["way"] == "overlap" and seldom(0.4):
        fields["overlap"] = mm(chance, 30, 200)
    if kind == "stitched-eye" and seldom(0.6):
        fields["overlap"] = mm(chance, 30, 200)
    if kind == "seized-eye":
        if seldom(0.4):
            fields["tail"] = mm(chance, 60, 300)
        if seldom(0.4):
            fields["seizing"] = mm(chance, 5, 28)
