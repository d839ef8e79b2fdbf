"""Each order of work that went wrong, put back into every sheet of the program in which it can be: each must be found.

A defect takes the JSON of a piece and the row of its job, and changes them; it says no where there is no such place.
"""

import copy

from sheet import KEPT, SURPLUS, Sheet, is_plain

CLOSES = ("lead_in", "pass_tail_through_host", "bring_together", "bury", "tuck", "tie", "press", "seize", "stitch")
SURPLUS_TOO_SMALL = 5e6  # nanometres: a cut in the wrong place that takes off less is the cutting loss


def at_of(steps, action, end=None):
    return next((i for i, s in enumerate(steps) if s["action"] == action and end in (None, s["end"])), None)


def outside(sheet, end, items):
    return sheet.sum(end, items)


def plain_cut_at_its_bearing_point(piece, sheet):
    for end in "ab":
        cut = at_of(piece["steps"], "cut", end)
        if is_plain(sheet, end) and cut is not None and not sheet.joined and \
                outside(sheet, end, KEPT) > SURPLUS_TOO_SMALL:
            number = next(m.number for m in sheet.marks if m.end == end and m.name == "bearing point")
            piece["steps"][cut]["at"] = [number]
            return "takes off"
    return None


def whipped_before_the_last_cut(piece, sheet):
    last = at_of(piece["steps"], "cut_aboard")
    if last is None:
        return None
    end = piece["steps"][last]["end"]
    whip = next((i for i, s in enumerate(piece["steps"]) if i > last and s["end"] == end and s["action"] in ("whip", "seal")),
                None)
    if whip is None:
        return None
    marks = [s for s in piece["steps"][last:whip] if s["end"] == end and s["action"] == "mark"]
    bench = piece["steps"][at_of(piece["steps"], "mark", end)]
    bench["at"] = bench["at"] + [n for s in marks for n in s["at"]]
    piece["steps"].insert(last, piece["steps"].pop(whip))
    return "is cut off with its last cut"


def trimmed_when_it_is_inside(piece, sheet):
    trim = at_of(piece["steps"], "trim")
    if trim is None or not any(s["action"] in CLOSES for s in piece["steps"][trim:]):
        return None
    piece["steps"].append(piece["steps"].pop(trim))
    return "still outside|are cut off|lies inside|when it is made|never cut off|trimmed off"


def never_trimmed(piece, sheet):
    trim = at_of(piece["steps"], "trim")
    if trim is None:
        return None
    piece["steps"].pop(trim)
    return "still outside|are cut off|never cut off|too long"


def trimmed_in_silence(piece, sheet):
    trim = at_of(piece["steps"], "trim")
    if trim is None:
        return None
    step = piece["steps"][trim]
    end = sheet.joined and ("b" if sheet.joined == "a" else "a") or step["end"]
    if sum(length for _, length in sheet.rows(end, SURPLUS)) <= sheet.sum(end, ("cutting loss",)) + SURPLUS_TOO_SMALL:
        return None
    step["text"] = "Trim what is over."
    return "does not name it"


def wear_trimmed_off(piece, sheet):
    for step in piece["steps"]:
        tail = next((m for m in sheet.marks if m.end == step["end"] and m.name == "tail end"), None)
        if step["action"] == "trim" and tail and step["end"] and sheet.sum(step["end"], KEPT) > SURPLUS_TOO_SMALL and \
                step["at"] != [tail.number]:
            step["at"], step["text"] = [tail.number], "Cut off spare, rounding, milk-out, extra and wear."
            return "takes off"
    return None


def fitting_forgotten(piece, sheet):
    for end in "ab":
        for step in [s for s in piece["steps"] if s["action"] == "fit_first" and s["end"] == end]:
            if sheet.captive(end) and sheet.captive(end) in step["text"]:
                piece["steps"].remove(step)
                return "lies on the bench"
    return None


def fitting_too_late(piece, sheet):
    for end in "ab":
        for step in [s for s in piece["steps"] if s["action"] == "fit_first" and s["end"] == end]:
            if sheet.captive(end) and sheet.captive(end) in step["text"]:
                piece["steps"].remove(step)
                piece["steps"].append(step)
                return "lies on the bench"
    return None


def threaded_too_late(piece, sheet):
    thread = next((i for i, s in enumerate(piece["steps"]) if s["action"] == "fit_first" and s["end"] is None), None)
    plain = any(is_plain(sheet, end) for end in "ab")
    if thread is None or not sheet.listed() or plain and not sheet.joined:
        return None
    piece["steps"].append(piece["steps"].pop(thread))
    return "lies on the bench"


def rove_too_late(piece, sheet):
    reeve = next((i for i, s in enumerate(piece["steps"]) if s["action"] == "reeve" and s["end"] is None), None)
    if reeve is None or not sheet.rove() or any(is_plain(sheet, end) for end in "ab"):
        return None
    piece["steps"].append(piece["steps"].pop(reeve))
    return "before the line is rove|it is rove|cannot be rove"


def hung_before_it_is_made(piece, sheet):
    hang = at_of(piece["steps"], "hang")
    if hang is None:
        return None
    step = piece["steps"].pop(hang)
    piece["steps"].insert(at_of(piece["steps"], "mark", step["end"]) + 1, step)
    return "hung before it is made|has not been marked"


def thinned_when_it_is_inside(piece, sheet):
    for i, step in enumerate(piece["steps"]):
        if step["action"] == "taper" and step["end"] and step["at"]:
            bury = next((j for j, s in enumerate(piece["steps"]) if j > i and s["action"] == "bury" and
                         s["end"] == step["end"] and s.get("part") == step.get("part")), None)
            if bury is not None and piece["steps"][bury + 1:bury + 2] and not sheet.joined:
                piece["steps"].insert(bury, piece["steps"].pop(i))
                return "inside"
    return None


def line_through_a_made_end(piece, sheet):
    turn = at_of(piece["steps"], "turn_eye_through")
    if turn is None or sheet.joined:
        return None
    other = "b" if piece["steps"][turn]["end"] == "a" else "a"
    if is_plain(sheet, other) or sheet.first != other:
        return None
    piece["steps"][turn]["action"] = "pass_line_through_tail"
    return "cannot pass"


def marked_from_the_squared_end(piece, sheet):
    for i, step in enumerate(piece["steps"]):
        if step["action"] == "cut" and not step["at"] and step["end"]:
            mark = at_of(piece["steps"], "mark", step["end"])
            if mark is not None and mark < i:
                piece["steps"].insert(mark, piece["steps"].pop(i))
                return "before it was cut square"
    return None


def dressed_before_the_trim(piece, sheet):
    trim = at_of(piece["steps"], "trim")
    dressing = next((i for i, s in enumerate(piece["steps"]) if trim is not None and i > trim and not s["at"] and
                     s["action"] in ("cut", "tape") and s["end"] == piece["steps"][trim]["end"]), None)
    if dressing is None or sheet.joined:
        return None
    piece["steps"].insert(trim, piece["steps"].pop(dressing))
    return "that is trimmed off"


def check_before_the_first_end(piece, sheet):
    check = next((i for i, s in enumerate(piece["steps"]) if s["action"] == "measure" and s["end"] is None), None)
    if check is None or not sheet.check or is_plain(sheet, sheet.check["from"]):
        return None
    piece["steps"].insert(0, piece["steps"].pop(check))
    return "from which it starts, is made"


def one_take_up_for_both_readings(piece, sheet):
    check = piece["check"]
    if not check or abs(check["reads_m"] - check["reads_loaded_m"]) < 1e-6:
        return None
    check["reads_m"] = check["reads_loaded_m"]
    return "the check says"


def take_up_left_to_the_spare(piece, sheet):
    settles = [r for r in piece["ledger"] if r["item"] == "settling" and abs(r["length_m"]) > 1e-6]
    if not settles:
        return None
    piece["ledger"] = [r for r in piece["ledger"] if r not in settles]
    return "the rows add up"


def mark_on_the_very_end(piece, sheet):
    piece["marks"].append({"end": "a", "number": 99, "name": "trim", "from_end_m": 0.0})
    return "on the very end"


def row_for_each_pair(piece, sheet):
    pairs = [m for m in piece["marks"] if m["name"].startswith("drop pair")]
    if len(pairs) < 2:
        return None
    for number, mark in enumerate(pairs, 50):
        mark["number"] = number
    return "have a row each"


DEFECTS = [plain_cut_at_its_bearing_point, whipped_before_the_last_cut, trimmed_when_it_is_inside, never_trimmed,
           trimmed_in_silence, wear_trimmed_off, fitting_forgotten, fitting_too_late, threaded_too_late, rove_too_late,
           hung_before_it_is_made, thinned_when_it_is_inside, line_through_a_made_end, marked_from_the_squared_end,
           dressed_before_the_trim,
           check_before_the_first_end, one_take_up_for_both_readings, take_up_left_to_the_spare, mark_on_the_very_end,
           row_for_each_pair]


def put_back(piece, row):
    """Each defect that this sheet can have: its name, the sheet with it, and what the bench should say."""
    for defect in DEFECTS:
        changed = copy.deepcopy(piece)
        if expected := defect(changed, Sheet(piece, row)):
            yield defect.__name__, Sheet(changed, row), expected
