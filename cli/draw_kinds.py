#!/usr/bin/env python3
"""Draws the line of a page: the first job that stands on it. The program draws; this takes the
drawing out of the sheet and puts it into a file of its own.

    draw_kinds.py PROGRAM FOLDER OUT          every page of a folder, into a folder
    draw_kinds.py PROGRAM PAGE.md OUT.svg     one page
    draw_kinds.py --check PROGRAM PAGE.md OUT.svg     is the file what the program draws?
"""

import pathlib
import re
import subprocess
import sys
import tempfile

JOB = re.compile(r"<!-- runs -->\n```(csv|toml)\n(.*?)```", re.DOTALL)
DRAWING = re.compile(r'<svg class="rope" viewBox="0 0 ([\d.]+) ([\d.]+)"(.*?)</svg>', re.DOTALL)
PATTERNS = re.compile(r"<defs>.*?</defs>", re.DOTALL)
STYLE = re.compile(r"^\.rope \S+.*\}$", re.MULTILINE)


def drawing_of(program, page):
    """The first drawing of the page's first job, as a whole SVG file."""
    form, job = JOB.search(page.read_text(encoding="utf-8")).groups()
    with tempfile.NamedTemporaryFile("w", suffix="." + form, encoding="utf-8") as file:
        file.write(job)
        file.flush()
        sheet = subprocess.run([program, "cut", file.name, "--format", "html"], check=True,
                               capture_output=True, text=True).stdout
    width, height, rest = DRAWING.search(sheet).groups()
    style = "<style>" + re.sub(r"\.(rope|bearing) ", "", "\n".join(STYLE.findall(sheet))) + "</style>"
    paper = '<rect width="100%" height="100%" fill="#fff"/>'
    rest = rest.replace("<title>", style + PATTERNS.search(sheet)[0] + paper + "<title>", 1)
    return (f'<svg xmlns="http://www.w3.org/2000/svg" width="{width}" height="{height}" '
            f'viewBox="0 0 {width} {height}"{rest}</svg>\n')


def check(program, page, out):
    if out.read_text(encoding="utf-8") == drawing_of(program, page):
        return 0
    print(f"{out} is not what the program draws: cli/draw_kinds.py {program} {page} {out}")
    return 1


def main():
    words = sys.argv[1:]
    checks = words[0] == "--check"
    program, page, out = words[checks], *map(pathlib.Path, words[checks + 1:])
    if checks:
        return check(program, page, out)
    if page.is_file():
        out.write_text(drawing_of(program, page), encoding="utf-8")
        return 0
    out.mkdir(parents=True, exist_ok=True)
    for one in sorted(page.glob("*.md")):
        (out / (one.stem + ".svg")).write_text(drawing_of(program, one), encoding="utf-8")
    return 0


if __name__ == "__main__":
    sys.exit(main())
