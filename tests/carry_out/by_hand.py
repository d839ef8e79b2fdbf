"""Sheets written by hand, which must pass.

The sums are done by hand, in millimetres. Rope of 5 mm: tail 360, 140 round an eye of 60 mm, cutting loss 2.
Spliced, the rope over a tail is 30 shorter; settled, 20. A new rope gets 20 longer at its first loads.
"""

EYE = [("rope round the eye", 140), ("throat to bearing point", -60), ("tail", 360), ("take-up as spliced", 30),
       ("settling", -10), ("cutting loss", 2)]
EYE_MARKS = [("taper start", 122), ("near throat", 362), ("far throat", 502), ("bury end", 832), ("exit", 1042)]


def written(name, rope, finished, ledger, marks, steps, **more):
    """A piece as JSON, from names in place of numbers."""
    rows = [("finished length", None, finished)] + ledger
    cut = sum(length for _, _, length in rows)
    placed = [{"end": end, "number": number, "name": mark, "from_end_m": at / 1e3}
              for end in "ab" for number, (mark, at) in enumerate(marks.get(end, []), 1)]
    def numbers(end, names):
        of = {m["name"]: m["number"] for m in placed if m["end"] == end}
        return [of[mark] for mark in names]
    said = []
    for step in steps:
        end, action, names, text = step[:4]
        said.append({"end": end, "action": action, "at": numbers(end, names), "text": text})
        if len(step) > 4:
            said[-1]["part"] = step[4]
    piece = {"name": name, "rope": rope, "finished_m": finished / 1e3, "cut_m": cut / 1e3, "marks": placed,
             "ledger": [{"item": item, "end": end, "length_m": length / 1e3} for item, end, length in rows],
             "steps": said, "check": more.pop("check", None)}
    return piece, more


def eye_rows(end):
    return [(item, end, length) for item, length in EYE]


def moved(marks, by):
    return [("tail end", by)] + [(name, at + by) for name, at in marks]


def buried(end, trim=None):
    steps = [(end, "mark", [], "Put the marks on.")]
    if trim:
        steps.append((end, "trim", ["tail end"], f"Cut off what is over: {trim}."))
    return steps + [
        (end, "cut", [], "Tape the end and cut it square."),
        (end, "lead_in", ["far throat", "exit"], "Lead the tail in."),
        (end, "bring_together", ["near throat", "far throat"], "Draw it through until they meet."),
        (end, "taper", ["taper start"], "Thin what hangs out."),
        (end, "bury", ["far throat", "bury end"], "Smooth the rope over it."),
        (end, "stitch", ["far throat"], "Lock-stitch."),
        (end, "load", [], "Load the eye.")]


def plain_end():
    """Its last cut is made aboard, and only then is its end known, and whipped."""
    return [("b", "mark", ["tail end", "bearing point"], "Put these marks on."),
            ("b", "cut", [], "Tape and cut square."),
            ("b", "cut_aboard", ["bearing point"], "Cut aboard once it has been tried."),
            ("b", "mark", ["whipping"], "Mark it 12 from the new cut."), ("b", "whip", ["whipping"], "Whip the end.")]


def strop(**more):
    """Two buried eyes, exact. 2000 - 20 + 2 x 462 + 41 = 2945; throats 2945 - 502 - 543 = 1900 apart, and
    1900 + 2 x (60 - 20) = 1980 from bearing point to bearing point before the first loads."""
    ledger = [("first stretch", None, -20), *eye_rows("a"), *eye_rows("b"), ("spare", "b", 40.5),
              ("rounding", "b", 0.5)]
    steps = buried("a") + [(None, "measure", [], "It must read 1930, loaded 1940.")] + buried("b", "spare and rounding")
    return written("strop", "12-strand HMPE 5 mm", 2000, ledger,
                   {"a": EYE_MARKS, "b": moved(EYE_MARKS, 41)}, steps,
                   check={"from": "a", "to": "b", "reads_m": 1.930, "reads_loaded_m": 1.940},
                   fit="exact", end_a="buried-eye", end_b="buried-eye", **more)


def halyard():
    """A ring in the eye, a ball on the line, the other end whipped; wear and extra stay."""
    ledger = [("first stretch", None, -20), *eye_rows("a"), ("cutting loss", "b", 4), ("extra", "b", 200),
              ("wear", "b", 300), ("spare", "b", 40), ("rounding", "b", 4)]
    marks = {"a": EYE_MARKS, "b": [("tail end", 544), ("bearing point", 548), ("whipping", 560)]}
    first = buried("a")
    first.insert(2, ("a", "fit_first", [], "Thread now: ring."))
    first.insert(2, (None, "fit_first", [], "Thread now: ball."))
    steps = first + plain_end()
    return written("halyard", "12-strand HMPE 5 mm", 9000, ledger, marks, steps, fit="at-least", end_a="buried-eye",
                   end_b="whipped", fit_first="ball", **{"end_a.fitting": "ring", "end_a.captive": "yes"})


def locked():
    """Two locked eyes: the second is turned through itself, because the first is made."""
    piece, row = strop()
    for end in "ab":
        lead = next(i for i, s in enumerate(piece["steps"]) if s["end"] == end and s["action"] == "lead_in")
        near, far = [next(m["number"] for m in piece["marks"] if m["end"] == end and m["name"] == name)
                     for name in ("near throat", "far throat")]
        crossing = [{"end": end, "action": "pass_tail_through_host", "at": [far, near], "text": "Pass the tail."},
                    {"end": end, "action": "pass_line_through_tail" if end == "a" else "turn_eye_through",
                     "at": [near], "text": "Pass the other part."}]
        piece["steps"][lead:lead] = crossing
    return piece, row


def larked():
    """One larked eye, hung once it is made and the check is read; the other end is whipped."""
    piece, row = halyard()
    row.pop("end_a.captive")
    piece["steps"] = [s for s in piece["steps"] if "ring" not in s["text"]]
    far = next(m["number"] for m in piece["marks"] if m["end"] == "a" and m["name"] == "far throat")
    piece["steps"].append({"end": "a", "action": "hang", "at": [far], "text": "Round the bar, the other end through."})
    return piece, row


def rove():
    """The strop of above, led through its blocks before its second eye is made aboard."""
    piece, row = strop(route="purchase", **{"end_b.made": "aboard"})
    place = next(i for i, s in enumerate(piece["steps"]) if s["end"] == "b")
    piece["steps"].insert(place, {"end": None, "action": "reeve", "at": [], "text": "Reeve now: 4 blocks."})
    return piece, row


def covered(way, steps):
    """An eye in covered rope of 10 mm. The mark far throat is the cover's and the core's."""
    marks = [("taper start", 72), ("near throat", 212), ("far throat", 352), ("core, entry", 422), ("exit", 642)]
    ledger = [("rope round the eye", "a", 140), ("throat to bearing point", "a", -60), ("tail", "a", 210),
              ("take-up as spliced", "a", 150), ("cutting loss", "a", 2), ("cutting loss", "b", 4),
              ("spare", "b", 40), ("rounding", "b", 4)]
    return written("covered eye", way, 9000, ledger,
                   {"a": marks, "b": [("tail end", 44), ("bearing point", 48), ("whipping", 60)]}, steps + plain_end(),
                   fit="at-least", end_a="covered", end_b="whipped")


def core_through_the_eye():
    """The core comes out at the far throat, goes back round the eye, and into the standing core."""
    return covered("core-dependent HMPE 10 mm", [
        ("a", "slip_knot", [], "Tie a slip knot."), ("a", "mark", [], "Put the marks on."),
        ("a", "draw_core", ["far throat"], "Take the core out."),
        ("a", "lead_in", ["near throat", "far throat"], "Back round the eye.", "core"),
        ("a", "bring_together", ["near throat", "far throat"], "Draw it through.", "cover"),
        ("a", "lead_in", ["core, entry", "exit"], "Into the standing core.", "core"),
        ("a", "bring_together", ["near throat", "core, entry"], "Until they meet.", "core"),
        ("a", "taper", ["taper start"], "Thin what hangs out.", "core"),
        ("a", "bury", ["core, entry", "exit"], "Smooth it over.", "core"), ("a", "load", [], "Load it.")])


def cover_and_core():
    """Double braid: the cover's tail into the core, the core's tail round the eye and out beyond it."""
    return covered("double-braid polyester 10 mm", [
        ("a", "slip_knot", [], "Tie a slip knot."), ("a", "mark", [], "Put the marks on."),
        ("a", "draw_core", ["far throat"], "Take the core out."),
        ("a", "taper", ["taper start"], "Thin the cover's tail.", "cover"),
        ("a", "lead_in", ["core, entry", "exit"], "Cover into core.", "cover"),
        ("a", "bring_together", ["near throat", "core, entry"], "The crossing.", "cover"),
        ("a", "lead_in", ["near throat", "core, entry"], "Round the eye and out beyond.", "core"),
        ("a", "bury", ["core, entry", "exit"], "Smooth the core.", "cover"),
        ("a", "bury", ["near throat", "core, entry"], "Smooth the eye's cover.", "core"), ("a", "load", [], "Load it.")])


SHEETS = {"core through the eye": core_through_the_eye, "cover and core": cover_and_core, "strop": strop,
          "halyard": halyard, "locked": locked, "larked": larked, "rove": rove}
