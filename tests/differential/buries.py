"""Tails led inside a hollow braid: their taper, their take-up, what settles later. docs/eyes.md, docs/grip.md."""

import math
from dataclasses import dataclass

from parts import host_over
from values import nanometres, refuse_if


def tail(m, least_in=None):
    """The tail, tapered, with a mark for each pair that is dropped. Minima may be counted in a core."""
    usual = m.sized("tail")
    tail_ = m.given("tail", usual.value)
    refuse_if(nanometres(tail_) < nanometres(m.least("minimum_tail", least_in)), 307)
    taper = m.given("taper", m.sized("taper").value * tail_ / usual.value)
    refuse_if(taper > tail_, 310)
    m.taper, drops = pairs(m, taper)
    m.exit = m.given("exit", m.sized("exit").value * tail_ / usual.value)
    m.end.person_tail = m.least("person_tail", least_in)
    m.end.tail = tail_
    m.row("tail", tail_)
    for j in range(drops, 0, -1):
        m.mark(f"drop pair {j}", m.at + m.taper * (1 - j / (drops + 1)))
    if m.taper > 0:
        m.mark("taper start", m.at + m.taper)
    m.at += tail_


def pairs(m, taper):
    """grip.md: how many pairs are dropped, and the section that is left after each; none where they are not set out."""
    usual = m.figure("strands")
    strands = int(m.fields.get("strands", usual.value if usual else 0))
    refuse_if(strands % 2, 304)
    given = int(m.fields["pairs"]) if "pairs" in m.fields else None
    refuse_if(given and taper == 0, 304)
    refuse_if(given == 0 and taper > 0 and "taper" in m.fields, 304)
    m.sections = []
    if given == 0 or taper == 0:
        return 0.0, 0
    refuse_if(given and not strands, 305)
    most = strands // 2 - 1 if strands else 0
    refuse_if(given and given > most, 304)
    drops = most if given is None else given
    if strands:
        m.sections = [1 - 2 * j / strands for j in range(drops + 1)]
    return taper, drops


def host(m, k):
    """Host over the tail: its taper by the steps that are really cut, evenly where they are not set out."""
    if not m.sections:
        return host_over(m.end.tail - m.taper, m.taper, k)
    step = m.taper / len(m.sections)
    return host_over(m.end.tail - m.taper, 0, k) + sum(step / math.sqrt(1 - k * a) for a in m.sections)


@dataclass
class Braid:
    """K and its standard deviation, settled and as it is spliced by hand."""
    settled: tuple
    spliced: tuple

    def settles(self):
        return self.spliced[0] > self.settled[0]


def braid(m):
    """BENCH 1.3: two values of one constant. What the rope's record holds was measured settled. The geometry of the
    braid, where it is asked for by name, is both."""
    angle = m.figure("take_up_angle")
    if angle:
        k = lambda degrees: 2 * math.tan(math.radians(degrees)) ** 2
        geometry = k(angle.value), k(angle.value) - k(angle.value - angle.sd)
        return Braid(geometry, geometry)
    both = [m.needed(name) for name in ("braid_constant", "spliced_constant")]
    settled_, spliced = ((figure.value, figure.sd) for figure in both)
    settled_ = m.rope.braid or settled_
    return Braid(settled_, max(spliced, settled_))


def taken(over, constant):
    """Take-up at one constant, and what one standard deviation of it does."""
    k, sd = constant
    return over(k), over(k) - over(max(0, k - sd))


def take_up(m):
    """Rows of a bury: as spliced, and what settles, whose spread makes the net that of the settled one. What the bench
    has loaded is settled. Marks for the hand are as spliced."""
    over, both = lambda k: host(m, k) - m.end.tail, braid(m)
    settled_, net = taken(over, both.settled)
    spliced, spread = taken(over, both.spliced)
    if settled(m) or not both.settles():
        m.row("take-up as spliced", settled_, net, "take-up")
    else:
        m.row("take-up as spliced", spliced, spread, "take-up")
        m.row("settling", settled_ - spliced, net - spread, "take-up")
        m.end.early += settled_ - spliced
    return spliced


def bury(m, beyond=0.0):
    """The bury's end and the fid's exit, counted from `beyond` the throat."""
    bury_end(m, beyond)
    fid_exit(m, beyond + m.exit)


def bury_end(m, beyond=0.0):
    m.end.host = beyond + m.end.tail + take_up(m)
    m.mark("bury end", m.at + m.end.host)


def fid_exit(m, exit_):
    """The fid has to come out beyond the bury."""
    refuse_if(nanometres(exit_) < nanometres(m.end.host), 304)
    m.mark("exit", m.at + exit_)


def settled(m):
    return m.fields.get("settled") == "yes"


def crossing(m):
    """A locked crossing closes up at its first load."""
    if not settled(m):
        closes = m.sized("crossing")
        m.row("crossing closes up", -closes.value, closes.sd, "settling")
        m.end.early -= closes.value
