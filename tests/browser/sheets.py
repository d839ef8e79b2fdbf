#!/usr/bin/env python3
"""Sheets, charts and labels in a real browser, on screen and on paper.

    sheets.py PROGRAM SOURCE_FOLDER [SHOTS]

With a folder SHOTS it leaves a picture of every page there, to be looked at.
"""

import base64
import json
import os
import re
import subprocess
import sys
import tempfile

from browser import Browser

WIDTHS = (360, 800, 1280)
PAPERS = {"A4": (8.27, 11.69), "Letter": (8.5, 11.0)}
HOSTILE = (
    'name,boat,rope,length,prestretched,note,end_a,end_a.eye,end_a.pin,end_b\n'
    '<script>window.pwned=1</script>,"""><img src=x onerror=window.pwned=1>",demo-b12-hmpe-4,2.4 m,'
    'yes,<b>&amp;</b>,buried-eye,40 mm,8 mm,bare\n'
    '"a name that goes on and on, for a shop names its lines by boat, place, side and year, and '
    'withoutanyblankwheretheycouldbebrokenforaverylongway","Boat ""1""",demo-db-poly-6,5.8 m,yes,,'
    'bowline,,8 mm,figure-eight\n'
    'no such rope,Boat 2,no-such-rope,5.8 m,yes,,bare,,,bare\n')

failures = []


def check(holds, what):
    if not holds:
        failures.append(what)
        print("FAILED:", what)


class Bench:
    def __init__(self, program, source, folder, shots, browser):
        self.program, self.source, self.folder = program, source, folder
        self.shots, self.browser = shots, browser
        with open(os.path.join(os.path.dirname(__file__), "measure.js"), encoding="utf-8") as file:
            self.measure = file.read()

    def splice(self, *words):
        run = subprocess.run([self.program, *words], cwd=self.source, capture_output=True, text=True)
        check(run.returncode in (0, 1), f"splice {' '.join(words)}: {run.stderr}")
        return run.stdout

    def page(self, name, *words):
        """Writes what the command prints into a page; its path."""
        path = os.path.join(self.folder, name + ".html")
        with open(path, "w", encoding="utf-8") as file:
            file.write(self.splice(*words))
        return path

    def look(self, path, width):
        """Opens a page and checks what holds of every page; what was measured."""
        name = f"{os.path.basename(path)} at {width} px"
        complaints = self.browser.open(path, width)
        seen = self.browser.run(self.measure)
        if self.shots:
            shot = self.browser.call("Page.captureScreenshot", captureBeyondViewport=True)
            with open(os.path.join(self.shots, f"{os.path.basename(path)}.{width}.png"), "wb") as file:
                file.write(base64.b64decode(shot["data"]))
        check(seen["texts"] > 10, f"{name}: there is nothing to read")
        for what in ("overlaps", "clipped", "faint"):
            check(not seen[what], f"{name}: {what}: {seen[what][:5]}")
        check(not complaints, f"{name}: {complaints[:3]}")
        check(not seen["wide"], f"{name}: it is wider than the window")
        check(seen["first"] == 1 and not seen["skips"], f"{name}: headings")
        check(seen["unscoped"] == 0, f"{name}: a table's heading without a scope")
        check(seen["nameless"] == 0, f"{name}: a drawing without a text")
        check(seen["language"] == "en", f"{name}: no language")
        check(seen["outside"] == 0 and seen["pwned"] == "undefined", f"{name}: it is not one plain file")
        return seen

    def pages_of_paper(self, path, size):
        """The text of each page of paper."""
        self.browser.open(path, 1000)
        pdf = path + ".pdf"
        self.browser.print(pdf, *size)
        text = subprocess.run(["pdftotext", "-layout", pdf, "-"], capture_output=True, text=True,
                              check=True).stdout
        return text.split("\f")[:-1], pdf


def check_marks(seen, answer, name):
    """Every mark stands in the drawing where the job's own answer puts it, to one scale."""
    for number, piece in enumerate(answer["pieces"], 1):
        drawn = [mark for mark in seen["marks"] if mark["line"] == f"line-{number}"]
        check(len(drawn) == len(piece["marks"]), f"{name}: line {number}: marks drawn")
        scales = []
        for end in ("a", "b"):
            at = {mark["name"]: mark["from_end_m"] for mark in piece["marks"] if mark["end"] == end}
            here = [(at[mark["name"]], mark) for mark in drawn if mark["end"] == end]
            if len(here) < 2:
                continue
            here.sort(key=lambda pair: pair[0])
            (nearest, first), (farthest, last) = here[0], here[-1]
            if farthest - nearest < 1e-3:
                continue
            scale = (last["x"] - first["x"]) / (farthest - nearest)
            scales.append(abs(scale))
            for distance, mark in here:
                wanted = first["x"] + scale * (distance - nearest)
                off = abs(mark["x"] - wanted)
                check(off <= 0.005 * abs(scale) * (farthest - nearest) + 0.006,
                      f"{name}: line {number}: {mark['name']} is off by {off:.3f}")
                seen_at = (mark["seen"] - mark["drawing"]) / mark["scale"]
                check(abs(seen_at - mark["x"]) < 0.6, f"{name}: {mark['name']} is not seen where it is")
        if len(scales) == 2:
            check(abs(scales[0] / scales[1] - 1.0) < 0.005, f"{name}: line {number}: two scales")


def check_heights(bench, path, name):
    """Every piece is no higher than a page of Letter leaves room for."""
    bench.browser.call("Emulation.setEmulatedMedia", media="print")
    bench.browser.open(path, 707)  # 187 mm
    heights = bench.browser.run(
        "[...document.querySelectorAll('article')].map(a => a.getBoundingClientRect().height)")
    bench.browser.call("Emulation.setEmulatedMedia", media="")
    for line, height in enumerate(heights, 1):
        check(height * 25.4 / 96 < 265, f"{name}: line {line} is {height * 25.4 / 96:.0f} mm high on paper")


def check_paper(bench, path, name):
    """No page splits a piece: what ends a piece stands on the page on which it begins."""
    check_heights(bench, path, name)
    for paper, size in PAPERS.items():
        pages, _ = bench.pages_of_paper(path, size)
        line, begun = None, None
        for page, text in enumerate(pages):
            for found in re.finditer(r"Line (\d+) of this job|Finished length read", text):
                if found.group(1):
                    line, begun = found.group(1), page
                else:
                    check(begun == page, f"{name} on {paper}: line {line} is split")


def check_cut_sheets(bench):
    jobs = {"routes": "docs/examples/routes.toml"}
    for name, text in (("hostile.csv", HOSTILE), ("fleet.csv", first_boat(bench.source))):
        jobs[name] = os.path.join(bench.folder, name)
        with open(jobs[name], "w", encoding="utf-8") as file:
            file.write(text)
    for name, job in jobs.items():
        path = bench.page("cut-" + name, "cut", job, "--format", "html")
        answer = json.loads(bench.splice("cut", job, "--format", "json"))
        for width in WIDTHS:
            check_marks(bench.look(path, width), answer, name)
        check_paper(bench, path, name)


def first_boat(source):
    """The lines of the demo fleet's first boat, and one of a dinghy's."""
    with open(os.path.join(source, "docs/examples/sailing-school.csv"), encoding="utf-8") as file:
        lines = file.read().splitlines(keepends=True)
    return "".join(lines[:22] + lines[-3:])


def check_long_sheet(bench):
    """A sheet of some thousand pieces opens, and its summary leads to the last of them."""
    with open(os.path.join(bench.source, "docs/examples/sailing-school.csv"), encoding="utf-8") as file:
        head, *lines = file.read().splitlines(keepends=True)
    job = os.path.join(bench.folder, "long.csv")
    with open(job, "w", encoding="utf-8") as file:
        file.write(head + "".join(lines * 12))
    path = bench.page("long", "cut", job, "--format", "html")
    check(not bench.browser.open(path, 1280), "long: complaints")
    last = 12 * len(lines)
    shown = bench.browser.run(f"(location.hash = '#line-{last}', [document.querySelectorAll('article').length,"
                              f" document.getElementById('line-{last}').getBoundingClientRect().top])")
    check(shown[0] == last and 0 <= shown[1] < 2000, f"long: the last line is not led to: {shown}")


def job_blocks(page):
    with open(page, encoding="utf-8") as file:
        return re.findall(r"<!-- runs -->\n```(csv|toml)\n(.*?)```", file.read(), re.S)


def shapes_of(drawing):
    """What is drawn without its words, its marks and where it stands: forms, and how many."""
    bare = re.sub(r'<text.*?</text>|<title>.*?</title>|<rect.*?/>|<path class="b".*?/>| aria-label=".*?"', "",
                  drawing, flags=re.S)
    return re.sub(r"-?\d+(\.\d+)?", "#", bare)


def check_every_kind(bench):
    """The job of each kind's page is drawn, and no two kinds' shapes are alike."""
    kinds = [kind["name"] for kind in json.loads(bench.splice("list", "kinds", "--format", "json"))]
    drawings = {}
    for kind in kinds:
        blocks = job_blocks(os.path.join(bench.source, "docs/splices", kind + ".md"))
        check(blocks, f"{kind}: its page has no job")
        form, text = blocks[0]
        job = os.path.join(bench.folder, f"{kind}.{form}")
        with open(job, "w", encoding="utf-8") as file:
            file.write(text)
        html = bench.splice("cut", job, "--format", "html")
        drawn = re.findall(r'<svg class="rope".*?</svg>', html, re.S)
        check(drawn, f"{kind}: no drawing")
        drawings.setdefault(shapes_of("".join(drawn)), []).append(kind)
    for alike in drawings.values():
        check(len(alike) == 1, f"drawn alike: {', '.join(alike)}")
    path = bench.page("end", "end", "stripped-eye", "--rope", "demo-db-poly-6", "eye=40mm",
                      "--format", "html")
    for width in WIDTHS:
        check(bench.look(path, width)["marks"], "splice end: no marks")


def check_chart(bench):
    path = bench.page("chart", "chart", "docs/examples/sailing-school.csv")
    for width in WIDTHS:
        bench.look(path, width)
    with open(path, encoding="utf-8") as file:
        boats = file.read().count('class="chart')
    for paper, (short, long) in PAPERS.items():
        pages, _ = bench.pages_of_paper(path, (long, short))
        check(len(pages) == boats, f"chart on {paper}: {len(pages)} pages for {boats} boats")


def check_labels(bench):
    job = os.path.join(bench.folder, "fleet.csv")
    pieces = json.loads(bench.splice("cut", job, "--format", "json"))["counts"]["pieces"]
    path = bench.page("labels", "labels", job)
    for width in WIDTHS[1:]:
        check(bench.look(path, width)["labels"] == pieces, "labels: one for each piece")
    _, pdf = bench.pages_of_paper(path, PAPERS["A4"])
    picture = os.path.join(bench.folder, "labels")
    subprocess.run(["pdftoppm", "-r", "300", "-f", "1", "-l", "1", "-png", pdf, picture], check=True)
    found = [name for name in os.listdir(bench.folder) if re.fullmatch(r"labels-\d+\.png", name)]
    read = subprocess.run(["zbarimg", "--quiet", "--raw", os.path.join(bench.folder, found[0])],
                          capture_output=True, text=True).stdout
    check(read.count("name: ") == 12, f"labels: {read.count('name: ')} codes are read of 12")
    check("name: main halyard\nboat: Cat 1\nrope: demo-cd-hmpe-5\ncut: " in read, "labels: a code's text")


def main():
    program, source = os.path.abspath(sys.argv[1]), sys.argv[2]
    shots = sys.argv[3] if len(sys.argv) > 3 else None
    with tempfile.TemporaryDirectory() as folder, Browser() as browser:
        bench = Bench(program, source, folder, shots, browser)
        check_cut_sheets(bench)
        check_every_kind(bench)
        check_long_sheet(bench)
        check_chart(bench)
        check_labels(bench)
    print(f"{len(failures)} failed")
    return 1 if failures else 0


if __name__ == "__main__":
    sys.exit(main())
