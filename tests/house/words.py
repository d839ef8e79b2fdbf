#!/usr/bin/python3
"""Words that have no place in the project: paths of one machine, hosts that packages come from.

    words.py [ROOT]       prints `file:line: word`; 1 if any text file of the project holds one
"""

import subprocess
import sys
from pathlib import Path

# Written in halves, so that this file passes its own check.
FORBIDDEN = [
    left + right
    for left, right in (
        ("/wo", "rk/"),
        (".lib", "rary"),
        ("../sha", "red"),
        ("cla", "ude"),
        ("anth", "ropic"),
        ("deb.deb", "ian.org"),
        ("registry.npm", "js.org"),
        ("py", "pi.org"),
        ("codeload.git", "hub.com"),
        ("githubuser", "content.com"),
        ("/releases/", "download/"),
    )
]


def files_of_project(root):
    """What git tracks or would track; without git, every file outside hidden folders and build."""
    listed = subprocess.run(
        ["git", "-C", str(root), "ls-files", "-z", "--cached", "--others", "--exclude-standard"],
        capture_output=True,
        check=False,
    )
    if listed.returncode == 0 and listed.stdout:
        return [root / name for name in listed.stdout.decode().split("\0") if name]
    outside = {".git", "build"}
    return [path for path in root.rglob("*") if path.relative_to(root).parts[0] not in outside]


def check(path):
    """(line, word) of every forbidden word; a file with a zero byte is not text."""
    content = path.read_bytes()
    if b"\0" in content:
        return
    for number, line in enumerate(content.decode(errors="replace").lower().splitlines(), 1):
        for word in FORBIDDEN:
            if word in line:
                yield number, word


def main(arguments):
    root = Path(arguments[0]) if arguments else Path(__file__).resolve().parents[2]
    found = 0
    for path in sorted(files_of_project(root)):
        if path.is_file():
            for line, word in check(path):
                print(f"{path.relative_to(root)}:{line}: {word}")
                found += 1
    return 1 if found else 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
