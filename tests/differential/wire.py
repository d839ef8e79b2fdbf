"""Ends of wire and of elastic: docs/splices/clipped-eye.md, ferrule-eye.md, swaged-fitting.md, crimped-end.md."""

from strength import share_in_bend
from values import nanometres, refuse_if

def clipped_eye(m):
    """Clips and turn-back as printed for the size; other sizes only from the clip maker's own sheet."""
    printed, usual = m.figure("clips"), m.figure("turn_back")
    own = "clips" in m.fields and "turn_back" in m.fields
    refuse_if(printed is None and not own, 308)
    clips = int(m.fields.get("clips", printed.value if printed else 0))
    least = usual.value * clips / printed.value if printed else 0
    turn_back = m.given("turn_back", least)
    refuse_if(printed and (clips < printed.value or nanometres(turn_back) < nanometres(least)), 307)
    if "base" in m.fields:
        mark_clips(m, clips, m.given("base"), turn_back)
    m.laid_on("turn-back", turn_back)
    m.teardrop(near="turn back to here")
    m.end.bend = share_in_bend(m.tables, m.rope, m.given("pin", 0.0))
    m.end.unfit_for_person = True


def mark_clips(m, clips, base, turn_back):
    """A clip's base stays free at the wire's end; then clips in even steps, the last against the throat."""
    refuse_if(base * (clips + 1) > turn_back, 304)
    step = (turn_back - 2 * base) / (clips - 1)
    for i in range(clips):
        m.mark(f"clip {i + 1}", m.at + 1.5 * base + i * step)


def ferrule_eye(m):
    turn_back = m.required("turn_back")
    m.laid_on("turn-back", turn_back)
    m.teardrop(near="turn back to here")
    m.end.bend = share_in_bend(m.tables, m.rope, m.given("pin", 0.0))
    m.end.unfit_for_person = True


def swaged_fitting(m):
    shank, wire, growth = (m.required(name) for name in ("shank", "insertion", "growth"))
    m.row("pin centre to the shank", -shank)
    m.laid_on("wire in the shank", wire)
    m.row("growth in the swage", -growth)
    m.mark("shank's mouth")
    m.end.far = m.at
    m.end.to_throat = shank + growth


def crimped_end(m):
    m.cut()
    held = m.required("length")
    m.left("end_left")
    m.laid_on("cord in the fitting", held)
    if m.chosen("form", "ring") == "loop":
        m.teardrop()
    else:
        m.mark("fitting's mouth")
        m.end.far = m.at


KINDS = {
    "clipped-eye": (clipped_eye, {"wire"}),
    "ferrule-eye": (ferrule_eye, {"wire"}),
    "swaged-fitting": (swaged_fitting, {"wire"}),
    "crimped-end": (crimped_end, {"shock-cord"}),
}
