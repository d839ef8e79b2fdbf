"""Eyes in bare rope, spliced, tucked, stitched or seized: docs/splices/*-eye.md."""

import math

from buries import braid, bury, crossing, tail, taken
from knots import stopper
from parts import FIBRE_ROPES, rope_round
from values import nanometres, refuse_if


def buried_eye(m):
    m.cut(heat=False)
    tail(m)
    m.teardrop()
    bury(m)


def locked_eye(m):
    buried_eye(m)
    crossing(m)


def larked_eye(m):
    """Passed round a bar: the eye is pressed flat, and most of what it is long goes round the bar."""
    m.cut(heat=False)
    tail(m)
    draw, known = m.sized("turn_draw"), "pin" in m.fields
    pin = m.given("pin", m.sized("bar_diameters").value)
    used = 2 * (pin + m.d) + draw.value
    eye = m.given("eye", m.sized("eye_diameters").value + used)
    bearing = eye - used
    refuse_if(nanometres(bearing) < nanometres(m.d), 306)
    rope, _ = rope_round(0.0, m.d, eye)
    m.row("rope round the eye", rope)
    m.row("throat to bearing point", -bearing, draw.sd)
    if not known:  # the bar may be anything up to twice the one taken
        m.row("soft eye, pin not known", 0, 2 * pin / math.sqrt(3))
    m.loop_of(rope, bearing)
    bury(m)


def ring_eye(m):
    """A teardrop round the groove up to the closing, and from there both legs side by side."""
    m.cut(heat=False)
    tail(m)
    groove, bore = m.required("groove"), m.required("bore")
    refuse_if(bore >= groove, 304)
    closing = m.sized("seizing" if m.chosen("closing", "seized") == "seized" else "stitch_length").value
    meet = groove + m.d / 2 + m.sized("ring_clearance").value
    eye = m.given("eye", meet + closing)
    refuse_if(nanometres(eye) < nanometres(meet + closing), 306)
    rope = rope_round(groove, m.d, meet)[0] + 2 * (eye - meet)
    bearing = eye - (groove - bore) / 2
    m.row("rope round the eye", rope)
    m.row("throat to bearing point", -bearing)
    m.loop_of(rope, bearing)
    bury(m)


def adjustable_eye(m):
    """The tail slides through the host, in full section, with a figure-eight behind it."""
    m.cut()
    m.left("end_left")
    stopper(m)
    usual = m.sized("tail")
    inside = m.given("bury", usual.value)
    refuse_if(nanometres(inside) < nanometres(m.least("minimum_tail")), 307)
    m.end.tail, m.end.person_tail = inside, m.least("person_tail")
    travel = m.given("travel", 0.0)
    m.laid_on("let-out", 2 * travel)
    m.laid_on("tail", inside)
    m.teardrop()
    over, both = lambda k: inside / math.sqrt(1 - k) - inside, braid(m)
    m.row("take-up as spliced", *taken(over, both.settled), "take-up")
    m.end.host = inside + over(both.spliced[0])
    m.mark("exit", m.at + m.end.host)


def stitched_eye(m):
    """Thin rope is basted, no longer than is published; what the stitches hold is known of one sort of rope."""
    m.cut()
    overlap, basted = m.sized("overlap").value, m.rope.nominal <= m.sized("basting_size").value
    if basted:
        overlap = min(overlap, m.sized("basting_limit").value)
        m.end.retained = m.end.retained and m.needed("retained_basted").value
    overlap = m.given("overlap", overlap)
    m.laid_on("tail", overlap)
    m.teardrop()
    m.mark("lap end", m.at + overlap)
    m.end.host = overlap
    m.end.unfit_for_person |= m.end.retained is None


def seized_eye(m):
    m.cut()
    lap, seizing = m.given("tail", m.sized("tail").value), m.given("seizing", m.sized("seizing").value)
    refuse_if(nanometres(lap) < nanometres(seizing), 304)
    m.laid_on("tail", lap)
    m.teardrop()
    m.mark("seizing end", m.at + seizing)
    m.mark("lap end", m.at + lap)
    m.end.host = lap
    m.end.unfit_for_person = True


def tuck_row(m, tucks):
    """Strand for the tucks of one side. The pick is a constant of the rope: both ends err together."""
    if m.rope.construction == "3-strand":
        m.laid_on("tucks", tucks * m.sized("per_tuck").value, 0.0, "rope")
        return
    pick, picks = m.sized("pick"), tucks * m.needed("picks_per_tuck").value
    m.laid_on("tucks", picks * m.given("pick", pick.value), 0 if "pick" in m.fields else picks * pick.sd, "rope")


def tucked_eye(m):
    m.cut(heat=False)
    tucks = m.count("tucks")
    refuse_if(tucks < m.least("minimum_tucks"), 307)
    m.left("end_left")
    tuck_row(m, tucks)
    m.teardrop(near="unlay to here")
    if m.rope.construction == "8-plait":  # six picks past the far throat are marked with a pen
        m.mark("pen lines to here", m.at + m.needed("exit").value * m.given("pick", m.sized("pick").value))


KINDS = {
    "buried-eye": (buried_eye, {"12-strand"}),
    "locked-eye": (locked_eye, {"12-strand"}),
    "larked-eye": (larked_eye, {"12-strand"}),
    "ring-eye": (ring_eye, {"12-strand"}),
    "adjustable-eye": (adjustable_eye, {"12-strand"}),
    "stitched-eye": (stitched_eye, FIBRE_ROPES),
    "seized-eye": (seized_eye, FIBRE_ROPES),
    "tucked-eye": (tucked_eye, {"3-strand", "8-plait"}),
}
