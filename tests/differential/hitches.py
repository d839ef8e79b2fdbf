"""Hitches, lashings and bends, each this line's side only: docs/splices."""

import math

from parts import FIBRE_ROPES
from values import refuse_if


def begin(m):
    m.cut()
    m.left("tail")
    m.mark("knot, far side")
    m.end.keeps = "yes"


def knot(m, name="beyond_turns"):
    used = m.sized(name)
    m.laid_on("knot", used.value, used.sd, "hand")


def load_side(m):
    m.mark("hitch, load side")
    m.end.far = m.at


def hitch(m):
    """Full turns round a spar or a pin, and the knot that finishes them."""
    across = m.required("pin" if m.kind == "buntline-hitch" else "spar")
    turns = m.count("turns")
    begin(m)
    knot(m)
    m.mark("turns end here")
    m.laid_on("turns", turns * math.pi * (across + m.d))
    load_side(m)
    if m.kind == "clove-hitch" and m.figure("slip"):
        refuse_if(m.fields.get("stitched") != "yes", 304)


def halyard_hitch(m):
    """Once round the bow; the turns lie round the standing part, the first two of them in the knot's figure."""
    pin, turns = m.required("pin"), m.count("turns")
    begin(m)
    knot(m)
    if turns > 2:
        m.laid_on("turns", (turns - 2) * 2 * math.pi * m.d)
    m.mark("turns end here")
    m.laid_on("turns", math.pi * (pin + m.d))
    load_side(m)


def turn_through(spar, pin, gap, d):
    """One turn through two fittings: a belt round two rounds of unlike size."""
    r, s, apart = (spar + d) / 2, (pin + d) / 2, gap + (spar + pin) / 2
    refuse_if(apart <= abs(r - s), 304)
    return (2 * math.sqrt(apart * apart - (r - s) ** 2) + math.pi * (r + s)
            + 2 * (r - s) * math.asin((r - s) / apart))


def lashing(m):
    spar, turns = m.required("spar"), m.count("turns")
    one = math.pi * (spar + m.d)
    refuse_if("pin" in m.fields and "gap" not in m.fields, 305)
    if "gap" in m.fields:
        one = turn_through(spar, m.given("pin", spar), m.given("gap"), m.d)
    m.cut()
    hitches, each = m.count("hitches", "half_hitches"), m.sized("per_half_hitch")
    m.laid_on("half hitches", hitches * each.value, hitches * each.sd, "hand")
    m.mark("turns end here")
    m.laid_on("turns", turns * one)
    load_side(m)
    m.end.keeps = "yes"


def sheet_bend(m):
    """The thicker rope makes the bight: this one goes round it, or is its second leg."""
    other, turns = m.given("other", m.d), m.count("turns")
    begin(m)
    if other < m.d:
        knot(m, "bight")
    else:
        knot(m)
        m.mark("turns end here")
        m.laid_on("turns", turns * (math.pi * (other + m.d) + 2 * other))
    load_side(m)


def double_fisherman(m):
    begin(m)
    knot(m, "knot")
    m.mark("knot, face")
    m.end.far = m.at


KINDS = {
    **{kind: (hitch, FIBRE_ROPES) for kind in ("buntline-hitch", "clove-hitch", "cow-hitch", "rolling-hitch",
                                               "round-turn-two-half-hitches")},
    "halyard-hitch": (halyard_hitch, FIBRE_ROPES),
    "lashing": (lashing, FIBRE_ROPES),
    "sheet-bend": (sheet_bend, FIBRE_ROPES),
    "double-fisherman": (double_fisherman, FIBRE_ROPES),
}
