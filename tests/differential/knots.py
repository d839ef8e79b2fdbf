"""Stoppers, a ball with a knot behind it, and loop knots: docs/splices."""

from parts import CORDS, FIBRE_ROPES


def stopper(m):
    """The knot itself, whose tail ends here: rope in the tight knot times the hand, and its body."""
    knot, usual, body = m.sized("knot"), m.needed("set"), m.sized("body")
    set_ = float(m.fields.get("set", usual.value))
    m.mark("knot, far side")
    m.laid_on("knot", set_ * knot.value, usual.sd * knot.value, "hand")
    m.laid_on("knot's body", body.value, body.sd, "rope")
    m.mark("knot, face")


def stopper_knot(m):
    m.cut()
    m.left("tail")
    stopper(m)
    m.end.far, m.end.keeps = m.at, "yes"


def stopper_ball(m):
    ball = m.required("ball")
    stopper_knot(m)
    m.laid_on("ball", ball)
    m.mark("ball, bearing face")
    m.end.far = m.at


def loop_knot(m):
    """Rope beyond the loop's legs lies on the tail's side of the loop, but for the turn in the standing part."""
    m.cut()
    m.left("tail")
    knot, turn = m.sized("beyond_loop"), STANDING_SHARE.get(m.kind)
    standing = m.sized("standing_side").value if turn is None else turn * knot.value
    m.row("knot", knot.value, knot.sd, "hand")
    m.at += knot.value - standing
    m.teardrop("loop", "loop, tail side", "loop, standing side")
    if standing:
        m.at += standing
        m.mark("knot, standing side")
        m.end.far = m.at
    m.end.keeps = "yes"


# Half of a knot in doubled rope lies on either side of its loop; a noose's barrel lies on the tail's side.
STANDING_SHARE = {"figure-eight-loop": 0.5, "overhand-loop": 0.5, "barrel-noose": 0.0}

KINDS = {
    **{kind: (stopper_knot, CORDS) for kind in ("figure-eight", "overhand", "double-overhand")},
    "stevedore": (stopper_knot, FIBRE_ROPES),
    "stopper-ball": (stopper_ball, CORDS),
    **{kind: (loop_knot, FIBRE_ROPES) for kind in ("bowline", "double-bowline", "figure-eight-loop")},
    **{kind: (loop_knot, CORDS) for kind in ("overhand-loop", "barrel-noose")},
}
