"""Items made whole whose two sides are alike: docs/splices/two-eye-strop.md, soft-shackle.md."""

import math

from eyes import locked_eye
from joins import both


def soft_shackle(m):
    """Four parts lie over the finished length; each end goes through the knot and back into its own leg."""
    m.cut(heat=False)
    pin, noose, knot = m.given("pin", 0.0), m.sized("noose"), m.sized("knot")
    m.left("end_left")
    left = m.at - m.end.rows[0].nm / 1e9
    m.mark("knot, far side")
    m.laid_on("knot", knot.value, knot.sd, "hand")
    m.mark("knot, face")
    m.mark("bury end", m.at + left)
    m.row("rope round the bearings", math.pi * (pin + m.d) - 2 * pin)
    m.row("noose", noose.value, noose.sd, "hand")
    m.end.further_parts = 3
    m.end.unfit_for_person = True


KINDS = {
    "two-eye-strop": (both(locked_eye), {"12-strand"}),
    "soft-shackle": (both(soft_shackle), {"12-strand"}),
}
