"""What each kind of end needs beyond its bearing point: docs/splices/*.md and docs/eyes.md."""

import math
from dataclasses import dataclass, field

from values import length, nanometres, number, refuse_if

COVERED = {"double-braid", "core-dependent", "parallel-core"}
HEAT_CUT = {"polyester", "nylon", "polypropylene", "rubber"}
EYES = {"locked-eye", "buried-eye", "stripped-eye", "tucked-eye", "clipped-eye", "bowline"}
BURIED = {"locked-eye", "buried-eye", "stripped-eye"}
PLAIN = {"bare", "whipped"}
MADE_IN = {
    "locked-eye": {"12-strand"}, "buried-eye": {"12-strand"},
    "stripped-eye": {"double-braid", "core-dependent"},
    "tucked-eye": {"3-strand", "8-plait"}, "clipped-eye": {"wire"},
}  # the knots and whippings: every rope but wire; bowline also not in shock cord
TAIL_MARKS = {"tucked-eye": "unlay to here", "clipped-eye": "turn back to here",
              "bowline": "loop, tail side"}


def rope_round(pin, diameter, eye):
    """Rope from throat to throat and the throat's angle: docs/eyes.md."""
    r, h, w = (pin + diameter) / 2, eye - pin / 2, diameter / 2
    refuse_if(h <= r, 306)
    rho = math.hypot(h, w)
    beta = math.asin(r / rho) - math.atan(w / h)
    return r * (math.pi + 2 * beta) + 2 * math.sqrt(rho * rho - r * r), 2 * math.degrees(beta)


def eye_on(pin, diameter, rope):
    """The eye that this much rope makes on a pin."""
    low, high = pin + diameter / 2 + 1e-9, rope
    for _ in range(100):
        middle = (low + high) / 2
        low, high = (middle, high) if rope_round(pin, diameter, middle)[0] < rope else (low, middle)
    return low


def host_over(full, taper, k, end=0.0):
    """Host over a part in full section and one thinned evenly to `end` of it: docs/eyes.md."""
    refuse_if(k >= 1, 304)
    root = math.sqrt(1 - k)
    return full / root + 2 * taper / (root + math.sqrt(1 - k * end))


@dataclass
class Row:
    item: str
    end: str | None
    nm: int
    sd: float = 0.0
    group: str = "own"


@dataclass
class End:
    """What one end needs beyond its bearing point, and where its marks lie from its cut end."""
    kind: str
    rows: list = field(default_factory=list)
    marks: list = field(default_factory=list)
    to_throat: float = 0.0  # bearing point to far throat mark
    tail: float = 0.0  # of a bury
    host: float = 0.0  # standing part that the end takes up beyond its far throat
    person_tail: float = 0.0  # the least where the line carries a person
    slips: bool = False
    shift: float = 0.0  # take-up and settling between bearing point and far throat mark

    def row(self, item, metres, sd=0.0, group="own"):
        self.rows.append(Row(item, None, nanometres(metres), sd, group))


class EndMaker:
    """One kind of end in one rope, from the fields of one line."""

    def __init__(self, tables, rope, kind, fields):
        made_in = MADE_IN.get(kind)
        refuse_if(made_in is not None and rope.construction not in made_in, 301)
        refuse_if(rope.construction == "wire" and kind not in ("clipped-eye", "bare"), 301)
        refuse_if(rope.construction == "shock-cord" and kind == "bowline", 301)
        self.tables, self.rope, self.kind, self.fields = tables, rope, kind, fields
        rule = fields.get("rule")
        refuse_if(rule and not tables.has_rule(kind, rope, rule), 311)
        self.core_spread = 0.0
        self.d = self.core() if kind == "stripped-eye" else rope.diameter
        self.end = End(kind)
        self.at = 0.0

    def core(self):
        if "core" in self.fields:
            core = length(self.fields["core"], self.rope.diameter)
            refuse_if(core >= self.rope.diameter, 304)
            return core
        if self.rope.core:
            return self.rope.core
        share = self.figure("core_share")
        self.core_spread = share.sd * self.rope.nominal
        return share.value * self.rope.nominal

    def figure(self, name):
        return self.tables.figure(name, self.rope, self.kind, self.fields.get("rule"))

    def sized(self, name):
        found = self.figure(name)
        return found and found.of(self.d)

    def given(self, name, otherwise):
        return length(self.fields[name], self.d) if name in self.fields else otherwise

    def mark(self, name, at):
        self.end.marks.append((name, at))

    def make(self):
        self.cut()
        if self.kind in EYES:
            self.beyond_throat()
            self.eye()
        elif self.kind == "figure-eight":
            self.stopper()
        else:
            self.plain()
        if self.kind in BURIED:
            self.bury()
        return self.end

    def cut(self):
        """bare.md: which rope is cut with heat. An end that is tapered or tucked is cut with shears."""
        if self.rope.construction == "wire":
            return
        spliced = self.kind in BURIED or self.kind == "tucked-eye"
        heat = not spliced and (self.rope.construction in COVERED or self.rope.fibre in HEAT_CUT)
        loss = self.figure("heat_cut" if heat else "shear_cut")
        self.end.row("cutting loss", loss.value, loss.sd, "cut")
        self.at = loss.value

    def plain(self):
        self.mark("bearing point", self.at)
        if self.kind == "whipped":
            whipping = self.given("length", self.sized("whipping").value)
            self.mark("whipping", self.at + self.sized("whipping_offset").value + whipping)

    def stopper(self):
        knot, usual, body = self.sized("knot"), self.figure("set"), self.sized("body")
        set_ = float(self.fields.get("set", usual.value))
        self.left("tail")
        self.mark("knot, far side", self.at)
        self.end.row("knot", set_ * knot.value, usual.sd * knot.value, "hand")
        self.end.row("knot's body", body.value, body.sd, "rope")
        self.mark("knot, face", self.at + set_ * knot.value + body.value)

    def left(self, name):
        """What is left past a knot, which is its tail, or of strands past the last tuck."""
        left = self.given(name, self.sized(name).value)
        least = self.sized("minimum_end_left") if name == "end_left" else None
        refuse_if(least and nanometres(left) < nanometres(least.value), 307)
        self.end.row(name.replace("_", " "), left)
        self.at += left

    def beyond_throat(self):
        if self.kind in BURIED:
            self.tail()
        elif self.kind == "tucked-eye":
            self.left("end_left")
            self.tucks()
        elif self.kind == "bowline":
            self.left("tail")
            knot, turn = self.sized("beyond_loop"), self.sized("standing_side")
            self.end.row("knot", knot.value, knot.sd, "hand")
            self.beyond_loop = turn.value  # the turn in the standing part, beyond the loop
            self.at += knot.value - turn.value
            self.end.slips = self.figure("slip") is not None
        else:
            self.turn_back()

    def tail(self):
        usual = self.sized("tail")
        tail = self.given("tail", usual.value)
        least, person = self.sized("minimum_tail"), self.sized("person_tail")
        refuse_if(least and nanometres(tail) < nanometres(least.value), 307)
        self.taper = self.given("taper", self.sized("taper").value * tail / usual.value)
        refuse_if(self.taper > tail, 310)
        drops = self.pairs()
        self.exit = self.given("exit", self.sized("exit").value * tail / usual.value)
        self.end.person_tail = person.value if person else 0
        self.end.tail = tail
        self.end.row("tail", tail)
        for j in range(drops, 0, -1):
            self.mark(f"drop pair {j}", self.at + self.taper * (1 - j / (drops + 1)))
        if self.taper > 0:
            self.mark("taper start", self.at + self.taper)
        self.at += tail

    def pairs(self):
        """grip.md: how many pairs are dropped, and what is left at the end of an even taper."""
        usual = self.figure("strands")
        strands = int(self.fields.get("strands", usual.value if usual else 0))
        refuse_if(strands % 2, 304)
        given = int(self.fields["pairs"]) if "pairs" in self.fields else None
        refuse_if(given and self.taper == 0, 304)
        refuse_if(given == 0 and self.taper > 0 and "taper" in self.fields, 304)
        if given == 0 or self.taper == 0:
            self.taper, self.thick_end = 0.0, 1.0
            return 0
        refuse_if(given and not strands, 305)
        most = strands // 2 - 1 if strands else 0
        refuse_if(given and given > most, 304)
        drops = most if given is None else given
        self.thick_end = 1 - drops / most if strands else 0.0
        return drops

    def braid(self):
        """K, and its own standard deviation where the rope's record has one."""
        return self.rope.braid or (self.figure("braid_constant").value, 0.0)

    def tucks(self):
        tucks = int(self.fields.get("tucks", self.figure("tucks").value))
        refuse_if(tucks < self.figure("minimum_tucks").value, 307)
        if self.rope.construction == "3-strand":
            used, sd = tucks * self.sized("per_tuck").value, 0
        else:
            pick, picks = self.sized("pick"), tucks * self.figure("picks_per_tuck").value
            used = picks * self.given("pick", pick.value)
            sd = 0 if "pick" in self.fields else picks * pick.sd
        # The pick is a constant of the rope: both ends err together.
        self.end.row("tucks", used, sd, "rope")
        self.at += used

    def turn_back(self):
        printed, usual = self.figure("clips"), self.figure("turn_back")
        refuse_if(printed is None, 308)
        clips = int(self.fields.get("clips", printed.value))
        least = usual.value * clips / printed.value
        turn_back = self.given("turn_back", least)
        refuse_if(clips < printed.value or nanometres(turn_back) < nanometres(least), 307)
        self.end.row("turn-back", turn_back)
        self.at += turn_back

    def eye(self):
        loop = self.kind == "bowline"
        pin = self.given("pin", 0.0)
        least = self.sized("eye_diameters").value
        eye = self.given("loop" if loop else "eye", max(self.figure("eye_pins").value * pin, least))
        rope, angle = rope_round(pin, self.d, eye)
        limit = self.figure("throat_limit")
        refuse_if(limit and pin > 0 and angle > limit.value, 309)
        # An assumed core: what one sd of it does to the rope round the eye.
        sd = rope_round(pin, self.d + self.core_spread, eye)[0] - rope if self.core_spread else 0
        self.end.row("rope round the loop" if loop else "rope round the eye", rope, sd,
                     "rope" if sd else "own")
        self.end.row("knot to bearing point" if loop else "throat to bearing point", -eye)
        if pin == 0:
            pins = self.figure("advised_eye_pins") or self.figure("eye_pins")
            largest = eye / pins.value
            hung = eye_on(largest, self.d, rope)
            if hung > largest + self.d / 2 + 1e-6:  # else that pin does not go in
                self.end.row("soft eye, pin not known", 0, (eye - hung) / math.sqrt(3))
        self.mark(TAIL_MARKS.get(self.kind, "near throat"), self.at)
        self.mark("crown", self.at + rope / 2)
        self.mark("loop, standing side" if loop else "far throat", self.at + rope)
        self.end.to_throat = eye
        self.at += rope
        if loop:
            self.at += self.beyond_loop
            self.mark("knot, standing side", self.at)

    def bury(self):
        end, tail, (k, sd) = self.end, self.end.tail, self.braid()
        over = lambda constant: host_over(tail - self.taper, self.taper, constant, self.thick_end) - tail
        take_up = over(k)
        spread = take_up - over(max(0, k - sd)) if sd else self.sized("take_up_spread").value
        end.row("take-up as spliced", take_up, spread, "take-up")
        end.host = tail + take_up
        self.mark("bury end", self.at + end.host)
        refuse_if(nanometres(self.exit) < nanometres(end.host), 304)
        self.mark("exit", self.at + self.exit)
        settled = self.fields.get("settled") == "yes"  # loaded on the bench before it is measured
        settling = 0.0 if settled else self.settling(tail)
        crossing = 0.0
        if self.kind == "locked-eye" and not settled:
            closes = self.sized("crossing")
            crossing = -closes.value
            end.row("crossing closes up", crossing, closes.sd, "settling")
        over_cover = self.cover(k, sd, tail, take_up) if self.kind == "stripped-eye" else 0.0
        end.shift = take_up + settling + crossing + over_cover

    def settling(self, tail):
        usual = self.figure("setting")
        if usual is None:
            return 0.0
        share = float(usual.value)
        self.end.row("settling", -share * tail, usual.sd * tail, "settling")
        return -share * tail

    def cover(self, k, sd, tail, take_up):
        """stripped-eye.md: the cover's section is (D / core)^2 - 1 of the core's; a tail of it lies there."""
        section = (self.rope.nominal / self.d) ** 2 - 1
        usual, gap = self.figure("cover_tail").value * self.rope.nominal, self.sized("cover_gap").value
        cover = length(self.fields["cover_tail"], self.rope.nominal) if "cover_tail" in self.fields else usual
        over = host_over(cover / 2, cover / 2, k * section) - cover
        less = host_over(cover / 2, cover / 2, max(0, k - sd) * section) - cover
        stated = host_over(48, 24, k) - 72  # what the tables' spread of 2.5 D is stated for
        self.end.row("take-up over the cover's tail", over, over - less if sd else over * 2.5 / stated, "take-up")
        least = self.end.to_throat + tail + gap + cover
        cover_end = self.given("cover_end", least)
        refuse_if(nanometres(cover_end) < nanometres(least), 408)
        self.end.host = cover_end - self.end.to_throat + take_up + over
        self.mark("cover end", self.at + self.end.host)
        return over
