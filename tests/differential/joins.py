"""Joins of two ends, and a thin line in a thick one: docs/splices. A join in one row makes both of its sides."""

from buries import braid, bury, tail, taken
from eyes import tuck_row
from parts import COVERED, host_over
from values import nanometres, refuse_if


def cover_over_join(m):
    side = m.chosen("side", None)
    refuse_if(side is None, 305)
    (thin_side if side == "thin" else thick_side)(m)


def inside(m, thin):
    """What of the thin line lies inside, and its nose, both in its own diameters."""
    usual = m.sized("tail", thin)
    led = m.given("tail", usual.value)
    nose = m.given("taper", m.sized("taper", thin).value * led / usual.value)
    refuse_if(nose > led, 310)
    refuse_if(nanometres(led) < nanometres(m.least("minimum_tail", thin)), 307)
    return led, nose


def thin_side(m):
    m.cut(heat=False)
    thin = m.given("thin", m.d)
    led, nose = inside(m, thin)
    m.mark("nose end")
    m.mark("taper start", m.at + nose)
    m.laid_on("tail", led)
    m.mark("first stitch", m.at - m.sized("stitch_start", thin).value)
    m.mark("cover end")
    m.end.far = m.at


def thick_side(m):
    """A hollow braid shortens over the line; a cover without its core may come out longer or shorter."""
    thin = m.required("thin")
    m.cut()
    led, nose = inside(m, thin)
    m.mark("cover end")
    m.end.far = m.at
    m.mark("first stitch", m.at + m.sized("stitch_start", thin).value)
    host = led
    if m.rope.construction in COVERED:
        m.row("take-up as spliced", 0.0, m.sized("take_up_spread").value, "take-up")
    else:
        section = (thin / m.d) ** 2
        over, sd = taken(lambda k: host_over(led - nose, nose, k * section) - led, braid(m).settled)
        m.row("take-up as spliced", over, sd, "take-up")
        host += over
    m.mark("nose end", m.at + host)
    m.end.host = host
    m.end.unfit_for_person = m.rope.construction in COVERED


def sewn_join(m):
    butt = m.chosen("way", "overlap") == "butt"
    m.end.unfit_for_person = True
    refuse_if("core" in m.fields and not (butt and m.rope.construction in COVERED), 302)
    if butt:
        refuse_if(m.rope.construction in ("solid-braid", "parallel-core"), 301)
        m.cut(heat=False)
        tail(m)
        m.mark("join")
        m.end.far = m.at
        bury(m)
        m.core_alone()
        return
    m.cut()
    overlap = m.given("overlap", m.sized("overlap").value)
    m.row("overlap", overlap / 2)
    m.mark("join", m.at + overlap / 2)
    m.mark("overlap end", m.at + overlap)


def core_to_core(m):
    core = m.core()
    m.core_spread = 0.0
    m.cut(heat=False)
    tail(m, least_in=core)
    m.mark("join")
    m.end.far = m.at
    bury(m)
    m.core_alone()


def end_for_end(m):
    (crossing_join if m.rope.construction == "double-braid" else tucked_join)(m)


def crossing_join(m):
    m.cut(heat=False)
    usual, section, used = m.sized("tail"), m.sized("short_section").value, m.sized("shortening")
    fid = m.given("tail", usual.value)
    taper = m.given("taper", m.sized("taper").value * fid / usual.value)
    refuse_if(taper > fid, 310)
    if taper:
        m.mark("taper start", m.at + taper)
    m.laid_on("tail", fid)
    m.mark("reference")
    m.laid_on("short section of the fid", section)
    m.mark("extraction")
    m.end.far = m.at
    m.end.host = section + fid + used.value
    m.mark("core, entry", m.at + section)
    exit_ = m.given("exit", m.sized("exit").value * fid / usual.value)
    refuse_if(exit_ < section + fid, 304)  # the fid has to come out beyond the tail's end
    m.mark("core, exit", m.at + exit_)
    m.row("take-up as spliced", used.value, used.sd, "take-up")


def tucked_join(m):
    m.cut(heat=False)
    tucks = m.count("tucks")
    refuse_if(tucks < m.least("minimum_tucks"), 307)
    m.left("end_left")
    further = [m.figure(name) for name in ("tucks_single", "tucks_half")]
    tuck_row(m, tucks + sum(int(figure.value) for figure in further if figure))
    m.mark("unlay to here")


def long_splice(m):
    m.cut(heat=False)
    crown, crowns = m.sized("crown"), m.count("crowns")
    refuse_if(crowns < m.needed("crowns").value, 307)
    each, sd = m.given("crown", crown.value), 0.0 if "crown" in m.fields else crown.sd
    m.laid_on("unlaid strands", crowns * each, crowns * sd)
    m.mark("unlay to here")
    m.end.far = m.at
    m.end.host = m.needed("strand_crowns").value * each
    m.mark("unlay one strand to here", m.at + m.end.host)


def endless_loop(m):
    m.cut(heat=False)
    tail(m)
    m.mark("crossing")
    m.end.far = m.at
    bury(m)


def both(make):
    """One row of a job makes both sides; one hand makes both, so their spreads are added up."""
    def made(m):
        make(m)
        m.end.sides = 2
        for row in m.end.rows:
            row.nm, row.sd = 2 * row.nm, 2 * row.sd
    return made


KINDS = {
    "cover-over-join": (cover_over_join, {"12-strand", "double-braid", "core-dependent", "parallel-core"}),
    "sewn-join": (both(sewn_join), {"12-strand", "double-braid", "core-dependent", "parallel-core", "solid-braid"}),
    "core-to-core": (both(core_to_core), {"double-braid", "core-dependent"}),
    "end-for-end": (both(end_for_end), {"8-plait", "double-braid"}),
    "short-splice": (both(tucked_join), {"3-strand"}),
    "long-splice": (both(long_splice), {"3-strand"}),
    "endless-loop": (both(endless_loop), {"12-strand"}),
}
