"""From the finished length to the length between the bearing points as this bench marks it: docs/stretch.md."""

import math

from line import NO_LOAD
from routes import way_of
from values import PULLS, length, refuse_if


def loaded_path(line, further):
    tape_fixed = line.tables.figure("tape_fixed", line.rope).value
    tape_share = line.tables.figure("tape_share", line.rope).value
    finished, slack_tail = length(line.row.get("length", "0 m")), 0.0
    if "route" in line.row:
        finished, carries = way_of(line.row["route"], line.rope.diameter)
        slack_tail = finished - carries
    path = line.add("finished length", None, finished,
                    (tape_fixed + tape_share * finished) / math.sqrt(3), "tape")
    for e in "ab":
        fields = line.fields(e)
        if "fitting_length" in fields:
            fitting = length(fields["fitting_length"])
            path += line.add("fitting", e, -fitting, (tape_fixed + tape_share * fitting) / math.sqrt(3), "tape")
        fields = line.fields(line.first) if line.closed else fields  # both its eyes are alike
        if fields.get("measured") == "pin-centre":
            pin = length(fields.get("pin", "0 mm"), line.rope.diameter)
            refuse_if(pin == 0, 305)
            path += line.add("pin centre to bearing point", e, pin / 2)
    refuse_if(path <= 0, 402)
    line.asked_path = path
    if further:
        path += line.add("further parts", "a" if "end_a" in line.row else "b", further * path)
    if line.rope.construction == "shock-cord":
        return elastic(line, path)
    if line.rope.construction in NO_LOAD:
        return path
    path -= slack_tail  # what the hand holds is never stretched
    path += stretch(line, path)
    first_stretch = line.tables.figure("first_stretch", line.rope)
    new = not line.yes("prestretched", line.row.get("rope_prestretched", "no"))
    if first_stretch and new:
        path += line.add("first stretch", None, path / (1 + first_stretch.value) - path, first_stretch.sd * path)
    path += slack_tail
    if line.slack:
        share = line.tables.figure("slack", line.rope)
        path += line.add("marked slack", None, path / (1 + share.value) - path, share.sd * path)
    shrinkage = line.tables.figure("shrinkage", line.rope)
    if shrinkage and line.yes("wash"):
        path += line.add("shrinkage in the wash", None, path / (1 - shrinkage.value) - path, shrinkage.sd * path)
    return path


def stretch(line, path):
    """From the pull of the length to the pull of the marks; PHYSICS E, along the rope's curve."""
    asked = None if line.purchase else line.row.get("tension")  # eased, a purchase carries no load
    at = line.bench.marking_tension
    marked = None if at in ("reference", "slack") else at
    if marked == asked or line.rope.breaking and pull_in_newtons(line, marked) == pull_in_newtons(line, asked):
        return 0
    curve = line.tables.stretch(line.rope)
    refuse_if(curve is None, 211)
    m, w = (curve.at(share_of_strength(line, pull)) for pull in (marked, asked))
    change = path * ((1 + m) / (1 + w) - 1)
    return line.add("stretch", None, change, curve.spread * abs(change) / (1 + w))


def pull_in_newtons(line, pull):
    return line.force(pull) if pull else (line.rope.nominal * 1e3) ** 2 / 8 * PULLS["kgf"]


def share_of_strength(line, pull):
    """stretch.md: a reference tension counts as half a per cent of a strength that is not known."""
    if line.rope.breaking is None and pull is None:
        return 0.005
    if pull and pull.endswith("%"):
        return float(pull.rstrip(" %")) / 100
    refuse_if(line.rope.breaking is None, 210)
    return pull_in_newtons(line, pull) / line.rope.breaking


def elastic(line, path):
    """Shock cord is pulled out where its way is shortest, and farther at the end of its travel."""
    asked, tension = line.row.get("stretch"), line.row.get("tension")
    refuse_if(asked and tension, 407)
    if not asked and not tension:
        return path
    ratio, spread = (float(asked.rstrip(" %")) / 100, 0.0) if asked else pulled_out(line, tension)
    change = path / (1 + ratio) - path
    return path + line.add("stretch", None, change, spread * abs(change) / (1 + ratio))


def pulled_out(line, tension):
    curve = line.tables.stretch(line.rope)
    refuse_if(curve is None, 211)
    pull = line.force(tension)
    return curve.at(pull if curve.by_force else pull / line.rope.breaking), curve.spread
