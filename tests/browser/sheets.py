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

WIDTHS = (380, 800, 1280)
PAPERS = {"A4": (8.27, 11.69), "Letter": (8.5, 11.0)}
# The rope laid straight is the same for these: only their turns cross in another order.
ALIKE_YET = {("buntline-hitch", "halyard-hitch")}
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
        for what in ("overlaps", "clipped", "faint", "struck"):
            check(not seen[what], f"{name}: {what}: {seen[what][:5]}")
        check(not complaints, f"{name}: {complaints[:3]}")
        check(not seen["wide"], f"{name}: it is wider than the window")
        check(seen["first"] == 1 and not seen["skips"], f"{name}: headings")
        check(seen["unscoped"] == 0, f"{name}: a table's heading without a scope")
        check(seen["nameless"] == 0, f"{name}: a drawing without a text")
        check(seen["language"] == "en", f"{name}: no language")
        check(seen["outside"] == 0 and seen["pwned"] == "undefined", f"{name}: it is not one plain file")
        return seen

    def pages_of_paper(self, path, size, script=""):
        """The text of each page of paper, after a script has run."""
        self.browser.open(path, 1000)
        self.browser.run(script)
        pdf = path + ".pdf"
        self.browser.print(pdf, *size)
        text = subprocess.run(["pdftotext", "-layout", pdf, "-"], capture_output=True, text=True,
                              check=True).stdout
        return text.split("\f")[:-1], pdf


def check_drawn(drawn, piece, name):
    """The marks stand in the drawing where the job's own answer puts them, to one scale."""
    scales = []
    for end in ("a", "b"):
        at = {mark["name"]: mark["from_end_m"] for mark in piece["marks"] if mark["end"] == end}
        here = sorted(((at[mark["name"]], mark) for mark in drawn if mark["end"] == end), key=lambda pair: pair[0])
        if len(here) < 2 or here[-1][0] - here[0][0] < 1e-3:
            continue
        (nearest, first), (farthest, last) = here[0], here[-1]
        scale = (last["x"] - first["x"]) / (farthest - nearest)
        scales.append((abs(scale), 0.012 / abs(last["x"] - first["x"])))
        for distance, mark in here:
            off = abs(mark["x"] - first["x"] - scale * (distance - nearest))
            check(off <= 0.005 * abs(scale) * (farthest - nearest) + 0.006,
                  f"{name}: {mark['name']} is off by {off:.3f}")
            seen_at = (mark["seen"] - mark["drawing"]) / mark["scale"]
            check(abs(seen_at - mark["x"]) < 0.6, f"{name}: {mark['name']} is not seen where it is")
    if len(scales) == 2:
        (of_a, coarse_a), (of_b, coarse_b) = scales
        check(abs(of_a / of_b - 1.0) < 0.005 + coarse_a + coarse_b, f"{name}: two scales")


def check_cards(seen, answer, name):
    """Every line has a card, every card is of a line, and its drawing has that line's marks."""
    wanted = {}
    for piece in answer["pieces"]:
        marks = sorted((mark["end"], mark["name"]) for mark in piece["marks"])
        wanted.setdefault((piece["name"] or "(no name)", str(marks)), []).append(piece)
    found = set()
    for card in seen["cards"]:
        if not re.fullmatch(r"card-\d+", card["id"]):
            check(re.fullmatch(r"(card-\d+|method-K\d+)(-\d+)?", card["id"]), f"{name}: id {card['id']}")
            continue
        drawn = [mark for mark in seen["marks"] if mark["card"] == card["id"]]
        key = (card["name"], str(sorted((mark["end"], mark["name"]) for mark in drawn)))
        check(key in wanted, f"{name}: {card['id']}: no line of the job has this name and these marks")
        found.add(key)
        # Lines with the same marks may differ in length; one of them is this card's.
        alike = [piece for piece in wanted.get(key, []) if length_in(card["cut"]) == piece["cut_m"]]
        check(alike, f"{name}: {card['id']}: no such line is cut at {card['cut']}")
        for piece in alike[:1]:
            if piece["error"] is None:
                check_drawn(drawn, piece, f"{name}: {card['id']}")
    check(found == set(wanted), f"{name}: no card for {sorted(set(wanted) - found)}")


def length_in(text):
    """The metres of a length as a card shows it; none of a line that is not cut."""
    if text is None:
        return None
    number, unit = text.split()
    return round(float(number) * {"m": 1.0, "mm": 0.001}[unit], 6)


def check_print(bench, path, name):
    """What a page of paper shows: sizes of type, heights, and nothing that lies on something else."""
    bench.browser.call("Emulation.setEmulatedMedia", media="print")
    for paper, (width, height) in PAPERS.items():
        of = f"{name} on {paper}"
        bench.browser.open(path, round((width * 25.4 - 20) / 25.4 * 96))
        seen = bench.browser.run(bench.measure)
        for what in ("overlaps", "clipped", "struck", "small"):
            check(not seen[what], f"{of}: {what}: {seen[what][:5]}")
        for card in seen["cards"]:
            which = f"{of}: {card['id']}"
            check(card["height"] <= card["reckoned"] + 1,
                  f"{which} is {card['height']:.1f} mm high, reckoned with {card['reckoned']} mm")
            check(card["height"] < height * 25.4 - 16, f"{which} is {card['height']:.0f} mm high")
            check(card["cut"] is None or card["cut_pt"] >= 30, f"{which}: cut length at {card['cut_pt']} pt")
            check((card["number_pt"] or 14) >= 14, f"{which}: marks at {card['number_pt']} pt")
            check((card["step_pt"] or 12) >= 12, f"{which}: steps at {card['step_pt']} pt")
            check(all(abs(strip - 190) < 0.2 for strip in card["strips"]), f"{which}: strip {card['strips']}")
        real, reckoned = (sum(card[which] for card in seen["cards"]) for which in ("height", "reckoned"))
        check(abs(reckoned / real - 1) < 0.05, f"{of}: reckoned {reckoned:.0f} mm, measured {real:.0f} mm")
    bench.browser.call("Emulation.setEmulatedMedia", media="")


def check_paper(bench, path, name):
    """No page splits a part of a card; how many pages of each paper it takes."""
    check_print(bench, path, name)
    taken = {}
    for paper, size in PAPERS.items():
        pages, _ = bench.pages_of_paper(path, size, """
            for (const card of document.querySelectorAll("article.card")) {
              card.style.position = "relative";
              for (const [where, word] of [["top", "begins"], ["bottom", "ends"]]) {
                const tag = card.appendChild(document.createElement("span"));
                tag.textContent = `${word}:${card.id}:`;
                tag.style.cssText = `position:absolute;left:60mm;${where}:1mm;font-size:4pt;line-height:1`;
              }
            }""")
        begun = {}
        for page, text in enumerate(pages):
            for word, card in re.findall(r"(begins|ends):([\w-]+):", text):
                check(begun.setdefault(card, page) == page, f"{name} on {paper}: {card} is split")
        check(begun, f"{name} on {paper}: no card is found")
        taken[paper] = len(pages)
    return taken


def check_cut_sheets(bench):
    jobs = {"routes": "docs/examples/routes.toml", "boat": "docs/examples/boat.csv",
            "fleet": "docs/examples/fleet.csv", "hostile": os.path.join(bench.folder, "hostile.csv")}
    with open(jobs["hostile"], "w", encoding="utf-8") as file:
        file.write(HOSTILE)
    for name, job in jobs.items():
        path = bench.page("cut-" + name, "cut", job, "--format", "html")
        answer = json.loads(bench.splice("cut", job, "--format", "json"))
        for width in WIDTHS:
            check_cards(bench.look(path, width), answer, name)
        taken = check_paper(bench, path, name)
        print(name, "takes", taken, "pages")


def check_long_sheet(bench):
    """A sheet of some thousand cards opens, and its last card can be gone to."""
    with open(os.path.join(bench.source, "docs/examples/fleet.csv"), encoding="utf-8") as file:
        head, *lines = file.read().splitlines(keepends=True)
    job = os.path.join(bench.folder, "long.csv")
    with open(job, "w", encoding="utf-8") as file:
        file.write(head + "".join(f"{number} {line}" for number in range(9) for line in lines))
    path = bench.page("long", "cut", job, "--format", "html")
    check(not bench.browser.open(path, 1280), "long: complaints")
    shown = bench.browser.run("""(() => {
        const cards = [...document.querySelectorAll("article.card")].filter((card) => /^card-\\d+$/.test(card.id));
        location.hash = "#card-" + cards.length;
        return [cards.length, document.getElementById("card-" + cards.length).getBoundingClientRect().top];
        })()""")
    check(shown[0] >= 9 * 25 and -1 < shown[1] < 2000, f"long: the last card is not gone to: {shown}")


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
        check(len(alike) == 1 or tuple(sorted(alike)) in ALIKE_YET, f"drawn alike: {', '.join(alike)}")
    path = bench.page("end", "end", "stripped-eye", "--rope", "demo-db-poly-6", "eye=40mm",
                      "--format", "html")
    for width in WIDTHS:
        check(bench.look(path, width)["marks"], "splice end: no marks")


def check_chart(bench):
    path = bench.page("chart", "chart", "docs/examples/fleet.csv")
    for width in WIDTHS:
        bench.look(path, width)
    with open(path, encoding="utf-8") as file:
        boats = file.read().count('class="chart')
    for paper, (short, long) in PAPERS.items():
        pages, _ = bench.pages_of_paper(path, (long, short))
        check(len(pages) == boats, f"chart on {paper}: {len(pages)} pages for {boats} boats")


def check_labels(bench):
    job = "docs/examples/fleet.csv"
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
    check("name: throat halyard\nboat: Dunlin\nrope: demo-laid-poly-12\ncut: " in read, "labels: a code's text")


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
