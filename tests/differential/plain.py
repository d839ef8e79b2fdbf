"""Ends that are only cut, bound or melted: docs/splices/bare.md, whipped.md, heat-sealed.md."""

from parts import COVERED, CORDS
from values import refuse_if

MELTS = {"polyester", "nylon", "polypropylene", "polyester-polyolefin", "rubber"}


def bare(m):
    m.cut()
    m.mark("bearing point")
    m.end.far, m.end.keeps = m.at, "cut"


def whipped(m):
    bare(m)
    m.mark("whipping", m.at + m.sized("whipping_offset").value + m.given("length", m.sized("whipping").value))


def heat_sealed(m):
    """Of a covered rope whose core does not melt clean only the cover is sealed, and the core is cut back."""
    melts, covered = m.rope.fibre in MELTS, m.rope.construction in COVERED
    refuse_if(not melts and not covered, 301)
    bare(m)
    if not melts or "core_back" in m.fields:
        back = m.given("core_back") if "core_back" in m.fields else m.sized("core_back").value
        m.mark("cut the core back to here", m.at + back)


KINDS = {
    "bare": (bare, CORDS | {"wire"}),
    "whipped": (whipped, CORDS),
    "heat-sealed": (heat_sealed, CORDS),
}
