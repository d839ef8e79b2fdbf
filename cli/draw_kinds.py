#!/usr/bin/env python3
"""Draws every kind of end for its page, from the first job that stands on the page.

    draw_kinds.py PROGRAM PAGES_FOLDER OUT_FOLDER

The program draws; this takes the drawing out of the sheet and puts it into a file of its own.
"""

import pathlib
import re
import subprocess
import sys
import tempfile

JOB = re.compile(r"<!-- runs -->\n```(csv|toml)\n(.*?)```", re.DOTALL)
DRAWING = re.compile(r'<svg class="rope" viewBox="0 0 ([\d.]+) ([\d.]+)"(.*?)</svg>', re.DOTALL)
PATTERNS = re.compile(r"<defs>.*?</defs>", re.DOTALL)
STYLE = re.compile(r"^\.rope (\S+ \{[^}]*\})$", re.MULTILINE)


def drawing_of(program, page):
    """The first drawing of the page's first job, as a whole SVG file."""
    form, job = JOB.search(page.read_text(encoding="utf-8")).groups()
    with tempfile.NamedTemporaryFile("w", suffix="." + form, encoding="utf-8") as file:
        file.write(job)
        file.flush()
        sheet = subprocess.run([program, "cut", file.name, "--format", "html"], check=True,
                               capture_output=True, text=True).stdout
    width, height, rest = DRAWING.search(sheet).groups()
    style = "\n".join(STYLE.findall(sheet))
    return (f'<svg xmlns="http://www.w3.org/2000/svg" width="{width}" height="{height}" '
            f'viewBox="0 0 {width} {height}"{rest.replace("<title>", f"<style>{style}</style>{PATTERNS.search(sheet)[0]}<title>", 1)}</svg>\n')


def main():
    program, pages, out = sys.argv[1], pathlib.Path(sys.argv[2]), pathlib.Path(sys.argv[3])
    out.mkdir(parents=True, exist_ok=True)
    for page in sorted(pages.glob("*.md")):
        (out / (page.stem + ".svg")).write_text(drawing_of(program, page), encoding="utf-8")


if __name__ == "__main__":
    main()
