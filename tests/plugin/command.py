#!/usr/bin/python3
"""The command with plug-ins: what it lists, works out, cuts and prints, and how it ends.

    command.py SPLICE TABLES PLUG_INS
"""

import json
import os
import subprocess
import sys
import tempfile
from pathlib import Path

SPLICE, TABLES, PLUG_INS = sys.argv[1], sys.argv[2], Path(sys.argv[3])
WIRE, BRAID, UNRULY = (
    ["--plug-in", str(PLUG_INS / f"{name}.so")] for name in ("tucked-wire-eye", "tucked-braid-eye", "unruly")
)
wrong = []


def run(*words, status=0, text=None):
    done = subprocess.run(
        [SPLICE, *words], input=text, capture_output=True, text=True, check=False,
        env={**os.environ, "LIBSPLICE_TABLES": TABLES},
    )  # fmt: skip
    if done.returncode != status:
        wrong.append(f"{words}: ended with {done.returncode}, not {status}: {done.stderr}")
    return done


def expect(what, came, wanted):
    if came != wanted:
        wrong.append(f"{what}: {came!r}, not {wanted!r}")


def answer(*words, status=0, text=None):
    return json.loads(run(*words, "--format", "json", status=status, text=text).stdout)


def check_lists():
    expect("no plug-ins", answer("list", "plug-ins"), [])
    listed = answer("list", "plug-ins", *WIRE, *BRAID)
    expect("names", [one["name"] for one in listed], ["tucked-wire", "tucked-braid"])
    expect("versions", [one["version"] for one in listed], ["1.0", "1.0"])
    expect("kinds", [one["kinds"] for one in listed], [["tucked-wire-eye"], ["tucked-braid-eye"]])
    expect("ropes", listed[1]["ropes"], ["accessory-cord-4-mm", "accessory-cord-6-mm"])
    expect("paths", all(Path(one["path"]).is_absolute() for one in listed), True)
    expect("text", run("list", "plug-ins", *WIRE).stdout.split()[0], "tucked-wire")
    kinds = {kind["name"]: kind for kind in answer("list", "kinds", *BRAID)}
    fields = {field["name"]: field for field in kinds["tucked-braid-eye"]["fields"]}
    expect("constructions", kinds["tucked-braid-eye"]["constructions"], ["12-strand"])
    expect("choices", fields["after"]["choices"], ["merry", "ner"])
    expect("a source", "en-564-maker-page" in [one["key"] for one in answer("list", "sources", *BRAID)], True)
    expect("a rope", "accessory-cord-4-mm" in [one["id"] for one in answer("list", "ropes", *BRAID)], True)


# 8 in and 105 mm round the thimble, less its 40 mm: 203.2 + 105 - 40 = 268.2 mm.
def check_end():
    words = ("tucked-wire-eye", "--rope", "wire galvanised-steel 1/8 in", "eye=40mm", "round=105mm")
    end = answer("end", *words, *WIRE)
    expect("allowance", end["allowance_m"], 0.2682)
    expect("items", [row["item"] for row in end["ledger"]],
           ["free end for the tucks", "wire round the thimble", "throat to bearing point"])  # fmt: skip
    expect("source", end["ledger"][0]["source"].split()[0], "army-tm-1-1500-204-23-1")
    expect("marks", [(mark["name"], mark["from_end_m"]) for mark in end["marks"]],
           [("near throat", 0.2032), ("crown", 0.2557), ("far throat", 0.3082)])  # fmt: skip
    expect("values", end["values"], {"tail_m": 0.2032, "rope_round_eye_m": 0.105, "eye_m": 0.04, "tucks": 5})
    expect("step", end["steps"][0]["text"].startswith("Serve the wire at the near throat mark, 203 mm"), True)
    expect("plug-ins", end["plug_ins"], [{"name": "tucked-wire", "version": "1.0"}])
    page = run("end", *words, *WIRE, "--format", "html").stdout
    expect("drawn", ["5 tucks: 203 mm" in page, "round the eye: 105 mm" in page], [True, True])
    sheet = run("end", *words, *WIRE).stdout
    expect("footer", "Plug-in       tucked-wire 1.0, hand-tucked eyes in wire" in sheet, True)
    expect("footer's source", "[army-tm-1-1500-204-23-1]" in sheet, True)


# 2 m of wire between two eyes: 2000 + 2 x 268.2 = 2536.4 mm, marked relaxed, spare 0; up to 2540.
JOB = """name,rope,length,end_a,end_a.eye,end_a.round,end_a.tail,end_b,end_b.eye,end_b.round,end_b.tail
pendant,wire galvanised-steel 1/8 in,2 m,tucked-wire-eye,40 mm,105 mm,,tucked-wire-eye,40 mm,105 mm,
short,wire galvanised-steel 1/8 in,2 m,tucked-wire-eye,40 mm,105 mm,100 mm,bare,,,
"""


def check_cut():
    cut = answer("cut", "-", *WIRE, status=1, text=JOB)
    pendant, short = cut["pieces"]
    expect("cut", pendant["cut_m"], 2.54)
    expect("sum", round(sum(row["length_m"] for row in pendant["ledger"]) * 1e9), 2_540_000_000)
    expect("a row of its own", pendant["ledger"][1]["item"], "free end for the tucks")
    expect("refusal", (short["cut_m"], short["error"]["code"]), (None, 307))
    expect("plug-ins", cut["plug_ins"], [{"name": "tucked-wire", "version": "1.0"}])
    sheet = run("cut", "-", *WIRE, "--ledger", status=1, text=JOB).stdout
    expect("sheet", sheet.count("free end for the tucks") >= 2, True)
    expect("sheet's footer", "Plug-in       tucked-wire 1.0" in sheet, True)
    shown = run("show", "/dev/stdin", "pendant", *WIRE, text=JOB).stdout
    expect("working", "free end for the tucks" in shown, True)


def check_faults():
    job = "name,rope,length,end_a,end_a.does\ngood,3-strand manila 6 mm,2 m,unruly-end,0\nbad,3-strand manila 6 mm,2 m,unruly-end,1\n"
    pieces = answer("cut", "-", *UNRULY, status=1, text=job)["pieces"]
    expect("row faults", [piece["error"] and piece["error"]["code"] for piece in pieces], [None, 613])
    with tempfile.TemporaryDirectory() as folder:
        text = Path(folder) / "text.so"
        text.write_text("no library\n")
        for words in (["list", "kinds"], ["check"], ["cut", "-"], ["end", "bowline", "--rope", "3-strand manila 6 mm"]):
            said = run(*words, "--plug-in", str(text), *WIRE, status=3, text="name,rope,length\n").stderr
            expect("a text file", f"{text}: error 601: " in said, True)
    said = run("list", "kinds", *WIRE, *WIRE, status=3).stderr
    expect("named twice", "error 616: the plug-in \"tucked-wire\"" in said, True)
    bad = [word for n in (2, 9) for word in ("--plug-in", str(PLUG_INS / f"misbehaves-{n}.so"))]
    said = run("list", "kinds", *bad, status=3).stderr
    expect("every fault", ("error 603" in said, "error 607" in said), (True, True))
    run("new", "-", *WIRE, status=2)


for check in (check_lists, check_end, check_cut, check_faults):
    check()
print("\n".join(wrong) or "all as expected")
sys.exit(1 if wrong else 0)
