"""Eyes in rope with a cover: docs/splices/stripped-eye.md, core-eye.md, cover-core-eye.md, parallel-core-eye.md."""

from buries import braid, bury, bury_end, fid_exit, tail, taken
from parts import host_over
from values import length, nanometres, refuse_if


def stripped_eye(m):
    """The bare core is buried in itself, counted in its own diameters; the cover's tail lies in the core beyond."""
    m.d = m.core()
    m.cut(heat=False)
    tail(m)
    m.teardrop()
    lead_in_cover(m)
    m.core_alone()
    m.end.milks = True


def lead_in_cover(m):
    """The cover's section is (D / core)^2 - 1 of the core's, even over half of its tail and thinned over the rest."""
    section, both = (m.rope.nominal / m.d) ** 2 - 1, braid(m)
    usual, gap = m.needed("cover_tail").value * m.rope.nominal, m.sized("cover_gap").value
    cover = length(m.fields["cover_tail"], m.rope.nominal) if "cover_tail" in m.fields else usual
    over, sd = taken(lambda k: host_over(cover / 2, cover / 2, k * section) - cover, both.settled)
    least = m.end.to_throat + m.end.tail + gap + cover
    cover_end = m.given("cover_end", least)
    refuse_if(nanometres(cover_end) < nanometres(least), 408)
    bury_end(m)
    ends = cover_end - m.end.to_throat - m.end.tail + m.end.host + over
    # The fid that leads the core's tail comes out before it meets the cover's tail.
    fid_exit(m, min(m.exit, ends - cover - over))
    m.end.host = ends
    m.row("take-up over the cover's tail", over, sd, "take-up")
    m.mark("cover end", m.at + ends)
    if cover:
        m.mark("cover's tail, end", m.at + ends - cover)
        m.mark("cover's tail, taper start", m.at + ends - cover / 2)
        m.mark("cover's tail, exit", m.at + ends - cover * 4 / 3)


def core_eye(m):
    """Counted in the whole rope; what is buried lies in the core, so take-up and minima go by the core."""
    core = m.core()
    m.core_spread = 0.0  # the eye is the whole rope's
    m.cut(heat=False)
    tail(m, least_in=core)
    through = m.chosen("way", "through-the-eye") == "through-the-eye"
    if not through:
        m.mark("cover's tail, end", m.at - min(m.end.tail, m.needed("cover_tail").value))
    m.teardrop()
    entry = m.sized("short_section") if through else None
    if entry:
        m.mark("core, entry", m.at + entry.value)
        m.row("crossing below the throat", entry.value / 2, entry.sd / 2)
    bury(m, entry.value if entry else 0.0)
    m.end.milks = True


def cover_core_eye(m):
    """Cover into core and core into cover; all the standing part that is used up stands as one figure."""
    m.cut(heat=False)
    fid, entry, used = m.given("tail", m.sized("tail").value), m.sized("short_section").value, m.sized("shortening")
    m.mark("taper start", m.at + min(fid, m.sized("taper").value))
    m.laid_on("tail", fid)
    m.teardrop()
    m.row("take-up as spliced", used.value, used.sd, "take-up")
    m.mark("core, entry", m.at + entry)
    m.mark("core, out of the cover", m.at + m.given("core_out", m.sized("core_out").value))
    exit_ = m.given("exit", m.sized("exit").value)
    refuse_if(exit_ < fid, 304)  # the fid has to come out beyond the tail's end
    m.mark("exit", m.at + entry + exit_)
    m.end.host = fid + used.value
    m.end.milks = True


def parallel_core_eye(m):
    m.cut(heat=False)
    led, entry, used = m.given("tail", m.sized("tail").value), m.sized("short_section"), m.sized("shortening")
    m.mark("taper start", m.at + min(led, m.sized("taper").value))
    m.laid_on("tail", led)
    m.teardrop()
    m.row("take-up as spliced", used.value, used.sd, "take-up")
    m.row("crossing below the throat", entry.value, entry.sd)
    m.mark("core, entry", m.at + entry.value)
    m.mark("exit", m.at + m.given("exit", m.sized("exit").value))
    m.end.host = entry.value + led + used.value
    m.end.milks = True


KINDS = {
    "stripped-eye": (stripped_eye, {"double-braid", "core-dependent"}),
    "core-eye": (core_eye, {"core-dependent"}),
    "cover-core-eye": (cover_core_eye, {"double-braid"}),
    "parallel-core-eye": (parallel_core_eye, {"parallel-core"}),
}
