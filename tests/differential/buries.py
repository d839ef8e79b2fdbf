"""Tails led inside a hollow braid: their taper, their take-up, what settles later. docs/eyes.md, docs/grip.md."""

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
    """grip.md: how many pairs are dropped, and what is left at the end of an even taper."""
    usual = m.figure("strands")
    strands = int(m.fields.get("strands", usual.value if usual else 0))
    refuse_if(strands % 2, 304)
    given = int(m.fields["pairs"]) if "pairs" in m.fields else None
    refuse_if(given and taper == 0, 304)
    refuse_if(given == 0 and taper > 0 and "taper" in m.fields, 304)
    if given == 0 or taper == 0:
        m.thick_end = 1.0
        return 0.0, 0
    refuse_if(given and not strands, 305)
    most = strands // 2 - 1 if strands else 0
    refuse_if(given and given > most, 304)
    drops = most if given is None else given
    m.thick_end = 1 - drops / most if strands else 0.0
    return taper, drops


def braid(m):
    """K, and its own standard deviation where the rope's record has one."""
    return m.rope.braid or (m.needed("braid_constant").value, 0.0)


def take_up(m, diameter):
    """Host that the bury uses beyond its tail's own length, and its standard deviation."""
    tail_, (k, sd) = m.end.tail, braid(m)
    over = lambda constant: host_over(tail_ - m.taper, m.taper, constant, m.thick_end) - tail_
    taken = over(k)
    spread = taken - over(max(0, k - sd)) if sd else m.needed("take_up_spread").of(diameter).value
    m.row("take-up as spliced", taken, spread, "take-up")
    return taken


def bury(m, diameter=None, beyond=0.0):
    """The bury's end and the fid's exit, counted from `beyond` the throat, and what settles."""
    bury_end(m, diameter or m.d, beyond)
    fid_exit(m, beyond + m.exit)
    settle(m)


def bury_end(m, diameter, beyond=0.0):
    taken = take_up(m, diameter)
    m.end.host = beyond + m.end.tail + taken
    m.mark("bury end", m.at + m.end.host)
    return taken


def fid_exit(m, exit_):
    """The fid has to come out beyond the bury."""
    refuse_if(nanometres(exit_) < nanometres(m.end.host), 304)
    m.mark("exit", m.at + exit_)


def settle(m):
    """What a new bury draws out at its first load; nothing where the bench has loaded it."""
    usual = m.figure("setting")
    if usual and not settled(m):
        m.row("settling", -usual.value * m.end.tail, usual.sd * m.end.tail, "settling")
        m.end.early -= usual.value * m.end.tail


def settled(m):
    return m.fields.get("settled") == "yes"


def crossing(m):
    """A locked crossing closes up at its first load."""
    if not settled(m):
        closes = m.sized("crossing")
        m.row("crossing closes up", -closes.value, closes.sd, "settling")
        m.end.early -= closes.value
