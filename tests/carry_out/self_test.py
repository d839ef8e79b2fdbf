"""Sheets written by hand pass, each defect put back into one is found, and what is tested elsewhere is there."""

import copy
import re
import sys
from pathlib import Path

from by_hand import SHEETS
from carrying_out import carry_out
from defects import WENT_WRONG
from sheet import Sheet

TESTS = Path(__file__).resolve().parents[1]


def tests_there_are():
    found = set()
    for source in TESTS.glob("*/*_test.cpp"):
        found |= {".".join(names) for names in re.findall(r"^TEST(?:_[FP])?\((\w+), (\w+)\)", source.read_text(), re.M)}
    return found


def slips(make, defect, expected):
    piece, row = copy.deepcopy(make())
    defect(piece, row)
    found = carry_out(Sheet(piece, row))
    if not any(re.search(expected, wrong) for wrong in found):
        yield f"{make.__name__} with {defect.__name__}: not found; it says {found}"


def failures():
    for name, make in SHEETS.items():
        for wrong in carry_out(Sheet(*make())):
            yield f"{name}: a good sheet is refused: {wrong}"
    there = tests_there_are()
    for sentence, put_back, elsewhere in WENT_WRONG:
        if not put_back and not elsewhere:
            yield f"nothing holds: {sentence}"
        yield from (f"no such test: {name}" for name in elsewhere if name not in there)
        for case in put_back:
            yield from slips(*case)


def run():
    failed = list(failures())
    print(*failed, sep="\n", end="\n" if failed else "")
    cases = sum(len(put_back) for _, put_back, _ in WENT_WRONG)
    print(f"{len(SHEETS)} sheets, {len(WENT_WRONG)} paragraphs, {cases} defects put back, {len(failed)} failed")
    sys.exit(1 if failed else 0)
