"""What every end is made of: rows, marks, the rope's diameter, the cut. Kinds are put together from these."""

import math
from dataclasses import dataclass, field

from values import length, nanometres, refuse_if

COVERED = {"double-braid", "core-dependent", "parallel-core", "laid-core"}
HEAT_CUT = {"polyester", "nylon", "polypropylene", "polyester-polyolefin", "rubber"}
FIBRE_ROPES = {"3-strand", "8-plait", "12-strand", "double-braid", "core-dependent", "parallel-core",
               "laid-core", "solid-braid"}
CORDS = FIBRE_ROPES | {"shock-cord"}


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
    far: float = 0.0  # from the cut end to the mark that the check reads to
    to_throat: float = 0.0  # bearing point to far throat, on the finished line
    tail: float = 0.0  # of a bury
    host: float = 0.0  # standing part that the end takes up beyond its far throat
    person_tail: float = 0.0  # the least where the line carries a person
    unfit_for_person: bool = False
    early: float = 0.0  # what the first load draws out, negative
    keeps: str = "no"  # whether extra and wear can lie here: no, yes, cut
    retained: float | None = None  # share of the rope's strength that is left
    bend: float | None = None  # share of it that is left in the bend over the pin
    milks: bool = False  # pushes its cover along the rope
    sides: int = 1  # 2: one row of a job makes both ends
    further_parts: int = 0  # parts beyond the first that lie over the finished length

    def row(self, item, metres, sd=0.0, group="own"):
        self.rows.append(Row(item, None, nanometres(metres), sd, group))

    def allowance(self):
        return sum(row.nm for row in self.rows) / 1e9


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


def host_over(full, taper, k):
    """Host over a part in full section and one thinned evenly to nothing: docs/eyes.md."""
    refuse_if(k >= 1, 304)
    root = math.sqrt(1 - k)
    return full / root + 2 * taper / (root + 1)


class EndMaker:
    """One kind of end in one rope, from the fields of one line. `at` runs from the cut end inboard."""

    def __init__(self, tables, rope, kind, fields):
        self.tables, self.rope, self.kind, self.fields = tables, rope, kind, fields
        rule = fields.get("rule")
        refuse_if(rule and not tables.has_rule(kind, rope, rule), 311)
        self.d = rope.diameter  # what lengths are counted in
        self.core_spread = 0.0  # of a core that is only assumed
        self.end = End(kind)
        self.at = 0.0
        retained = self.figure("retained")
        self.end.retained = retained.value if retained else None
        weights = tables.cautions(kind, rope)
        refuse_if("refused" in weights, 301)
        self.end.unfit_for_person = bool({"refused-for-person", "person-only"} & weights) or bool(self.figure("slip"))

    def figure(self, name):
        return self.tables.figure(name, self.rope, self.kind, self.fields.get("rule"))

    def needed(self, name):
        found = self.figure(name)
        refuse_if(found is None, 312)
        return found

    def sized(self, name, diameter=None):
        """A figure that this end cannot do without, its diameters turned into lengths."""
        return self.needed(name).of(diameter or self.d)

    def least(self, name, diameter=None):
        """A published minimum in metres; 0 where there is none."""
        return self.sized(name, diameter).value if self.figure(name) else 0.0

    def given(self, name, otherwise=None):
        """A field, else what the page says for it."""
        return length(self.fields[name], self.d) if name in self.fields else otherwise

    def count(self, name, figure=None):
        return int(self.fields[name]) if name in self.fields else int(self.needed(figure or name).value)

    def required(self, name):
        refuse_if(name not in self.fields, 305)
        return self.given(name)

    def chosen(self, name, otherwise):
        return self.fields.get(name, otherwise)

    def row(self, item, metres, sd=0.0, group="own"):
        self.end.row(item, metres, sd, group)

    def mark(self, name, at=None):
        self.end.marks.append((name, self.at if at is None else at))

    def laid_on(self, item, metres, sd=0.0, group="own"):
        """A row whose rope lies next to what is there: the tape goes on."""
        self.row(item, metres, sd, group)
        self.at += metres

    def cut(self, heat=True):
        """bare.md: which rope is cut with heat. An end that is tapered or tucked is cut with shears."""
        if self.rope.construction == "wire":
            return
        hot = heat and (self.rope.construction in COVERED or self.rope.fibre in HEAT_CUT)
        loss = self.needed("heat_cut" if hot else "shear_cut")
        self.laid_on("cutting loss", loss.value, loss.sd, "cut")

    def left(self, name):
        """What is left past a knot, which is its tail, or of strands past the last tuck."""
        left = self.given(name) if name in self.fields else self.sized(name).value
        refuse_if(name == "end_left" and nanometres(left) < nanometres(self.least("minimum_end_left")), 307)
        self.laid_on(name.replace("_", " "), left)

    def core(self):
        """Diameter of the core: the job's, the rope's own, else a share of the nominal one."""
        if "core" in self.fields:
            core = length(self.fields["core"], self.rope.diameter)
            refuse_if(core >= self.rope.diameter, 304)
            return core
        if self.rope.core:
            return self.rope.core
        share = self.needed("core_share")
        self.core_spread = share.sd * self.rope.nominal
        return share.value * self.rope.nominal

    def core_alone(self):
        """stripped-eye.md: in double braid the cover carries about half, so what the core keeps is not more."""
        alone = self.figure("core_alone")
        if alone:
            self.end.retained = min(alone.value, self.end.retained or 1.0)
            self.end.unfit_for_person = True

    def teardrop(self, field_name="eye", near="near throat", far="far throat"):
        """The rope round an eye or a knotted loop, loaded on its pin; its near throat lies here."""
        loop = field_name == "loop"
        pin = self.given("pin", 0.0)
        eye = self.given(field_name, max(self.needed("eye_pins").value * pin, self.sized("eye_diameters").value))
        rope, angle = rope_round(pin, self.d, eye)
        limit = self.figure("throat_limit")
        refuse_if(limit and pin > 0 and angle > limit.value, 309)
        # An assumed core: what one sd of it does to the rope round the eye.
        sd = rope_round(pin, self.d + self.core_spread, eye)[0] - rope if self.core_spread else 0
        self.row("rope round the loop" if loop else "rope round the eye", rope, sd, "rope" if sd else "own")
        self.row("knot to bearing point" if loop else "throat to bearing point", -eye)
        if pin == 0:
            self.soft_eye(eye, rope)
        self.loop_of(rope, eye, near, far)

    def loop_of(self, rope, bearing, near="near throat", far="far throat"):
        """Marks of a loop of this much rope, whose near throat lies here and whose bearing point so far from it."""
        self.mark(near)
        self.mark("crown", self.at + rope / 2)
        self.at += rope
        self.mark(far)
        self.end.far = self.at
        self.end.to_throat = bearing

    def soft_eye(self, eye, rope):
        """eyes.md: the largest pin advised for the eye, put in later, brings the bearing point nearer."""
        pins = self.figure("advised_eye_pins") or self.needed("eye_pins")
        largest = eye / pins.value
        hung = eye_on(largest, self.d, rope)
        if hung > largest + self.d / 2 + 1e-6:  # else that pin does not go in
            self.row("soft eye, pin not known", 0, (eye - hung) / math.sqrt(3))
