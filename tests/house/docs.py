#!/usr/bin/python3
"""Do the pages say what the program does? Faults, kinds, words, job blocks, answers and links.

    docs.py SPLICE [ROOT]  checks the pages of ROOT against the program SPLICE and the sources;
                           prints `file:line: sentence`; 1 if anything is wrong
    docs.py --self-test    checks small bad pages and expects every sort of fault to be reported
"""

import json
import os
import re
import subprocess
import sys
import tempfile
from pathlib import Path
from typing import NamedTuple


class Finding(NamedTuple):
    path: str
    line: int
    sentence: str


def line_of(text, at):
    return text.count("\n", 0, at) + 1


def pages_of(root):
    """Every page of ours: at the top, and under docs."""
    return sorted(root.glob("*.md")) + sorted((root / "docs").rglob("*.md"))


# --- Faults --------------------------------------------------------------------------------------


def codes_in_source(header, titles):
    """{number: title} of the enumeration and its list of titles."""
    numbers = dict(re.findall(r"^\s+(\w+) = (\d+),", header, re.MULTILINE))
    named = dict(re.findall(r'CodeTitle\{\s*Code::(\w+),\s*"([^"]+)"\}', titles))
    return {int(number): named.get(name, "") for name, number in numbers.items()}


def check_faults(source, page, path="docs/errors.md"):
    rows = {}
    for row in re.finditer(r"^\| (\d+) \| ([^|]+) \|", page, re.MULTILINE):
        number, title, line = int(row[1]), row[2].strip(), line_of(page, row.start())
        if number in rows:
            yield Finding(path, line, f"code {number} stands twice")
        rows[number] = title
        if number not in source:
            yield Finding(path, line, f"there is no code {number}")
        elif title != source[number]:
            yield Finding(path, line, f'the title of {number} is "{source[number]}"')
    for number in sorted(source.keys() - rows.keys()):
        yield Finding(path, 1, f"code {number} is missing: {source[number]}")


# --- Kinds and words -----------------------------------------------------------------------------


ROW = r"^\| `{}` \| (\w+) \| ([\d.]+)( mm| m|) to ([\d.]+)( mm| m|)"


def check_field(field, page, path):
    """A field is mentioned; where it has a row of its own, that gives its sort and its limits."""
    name = field["name"]
    if f"`{name}`" not in page:
        yield Finding(path, 1, f"the field `{name}` is not mentioned")
    row = re.search(ROW.format(re.escape(name)), page, re.MULTILINE)
    if row is None:
        return
    scale = {" mm": 1e-3, " m": 1.0, "": 1.0}
    said = (row[1], float(row[2]) * scale[row[3]], float(row[4]) * scale[row[5]])
    declared = (field["dimension"], field["lowest"], field["highest"])
    same = said[0] == declared[0] and all(abs(a - b) < 1e-9 for a, b in zip(said[1:], declared[1:]))
    if not same:
        yield Finding(path, line_of(page, row.start()), f"`{name}` is declared as {declared}")


def check_kinds(kinds, pages):
    """`pages` is {kind: text}. Every kind has its page, which mentions each field, and no other has."""
    for kind in kinds:
        path = f"docs/splices/{kind['name']}.md"
        if kind["name"] not in pages:
            yield Finding(path, 1, "this kind has no page")
            continue
        for field in kind["fields"]:
            yield from check_field(field, pages[kind["name"]], path)
    for name in sorted(pages.keys() - {kind["name"] for kind in kinds}):
        yield Finding(f"docs/splices/{name}.md", 1, "there is no such kind")


def words_in_source(names):
    """Every text of the source that lists the names, in order."""
    return re.findall(r'"([^"]+)"', re.sub(r"^#include.*$", "", names, flags=re.MULTILINE))


def actions_in_source(source):
    """{name: meaning} of the table of actions."""
    return dict(re.findall(r'ActionDeclaration\{Action::\w+,\s*"(\w+)",\s*"([^"]+)"\}', source))


def check_words(words, actions, glossary, path="docs/glossary.md"):
    rows = set(re.findall(r"^\| `([^`]+)` \|", glossary, re.MULTILINE))
    for word in words:
        if word not in rows:
            yield Finding(path, 1, f"`{word}` has no row")
    for name, meaning in actions.items():
        if f"| `{name}` | {meaning} |" not in glossary:
            yield Finding(path, 1, f"`{name}` has no row that says: {meaning}")
    yield from check_said_once(glossary, path)


def check_said_once(glossary, path):
    """No word has two rows in one section; a row of plain words may hold several, between commas."""
    start = 0
    for part in re.split(r"(?=^## )", glossary, flags=re.MULTILINE):
        rows = re.findall(r"^\| ([^|]+?) \|", part, re.MULTILINE)
        words = [word for row in rows for word in ([row] if "`" in row else row.split(", "))]
        for word in sorted({word for word in words if words.count(word) > 1}):
            yield Finding(path, line_of(glossary, start), f"{word} is said twice here")
        start += len(part)


# --- Job blocks ----------------------------------------------------------------------------------

BLOCK = re.compile(
    r"^<!-- runs -->\n```(?P<sort>csv|toml)\n(?P<job>.*?)^```\n"
    r"(?:\n?<!-- cut: (?P<cut>[\d.]+) m -->)?",
    re.MULTILINE | re.DOTALL,
)


def check_block(splice, block, path, line):
    with tempfile.TemporaryDirectory() as folder:
        job = Path(folder) / f"job.{block['sort']}"
        job.write_text(block["job"], encoding="utf-8")
        run = subprocess.run(
            [*splice, "cut", str(job), "--format", "json"], capture_output=True, text=True, check=False
        )
    if run.returncode != 0:
        said = run.stderr.strip().replace(folder + "/", "")
        yield Finding(path, line, f"this job ends with {run.returncode}: {said}")
    elif block["cut"]:
        came = [piece["cut_m"] for piece in json.loads(run.stdout)["pieces"]]
        if [round(length * 1e9) for length in came] != [round(float(block["cut"]) * 1e9)]:
            yield Finding(path, line, f"the page says {block['cut']} m, the program {came}")


def check_blocks(splice, text, path):
    marked = len(re.findall(r"^<!-- runs -->$", text, re.MULTILINE))
    blocks = list(BLOCK.finditer(text))
    if marked != len(blocks):
        yield Finding(path, 1, f"{marked} blocks are marked to run, {len(blocks)} can be read")
    for block in blocks:
        yield from check_block(splice, block, path, line_of(text, block.start()))


PRINTS = re.compile(r"^<!-- prints: (?P<words>[^>]*) -->\n```\n(?P<said>.*?)^```\n", re.MULTILINE | re.DOTALL)


def check_prints(splice, text, path):
    """What a page shows as an answer is what the program prints for the job before it, line for line."""
    marked = len(re.findall(r"^<!-- prints: ", text, re.MULTILINE))
    answers = list(PRINTS.finditer(text))
    if marked != len(answers):
        yield Finding(path, 1, f"{marked} answers are marked as printed, {len(answers)} can be read")
    for answer in answers:
        line = line_of(text, answer.start())
        jobs = list(BLOCK.finditer(text, 0, answer.start()))
        if not jobs:
            yield Finding(path, line, "no job that runs comes before this answer")
            continue
        with tempfile.TemporaryDirectory() as folder:
            job = Path(folder) / f"job.{jobs[-1]['sort']}"
            job.write_text(jobs[-1]["job"], encoding="utf-8")
            words = [str(job) if word == "JOB" else word for word in answer["words"].split()]
            run = subprocess.run([*splice, *words], capture_output=True, text=True, check=False)
        if not answer["said"].strip() or answer["said"] not in run.stdout:
            yield Finding(path, line, f"the program prints something else:\n{run.stdout}{run.stderr}")


# --- Links and the README ------------------------------------------------------------------------

LINK = re.compile(r"\]\(([^)\s]+)\)")
CODE_BLOCK = re.compile(r"^```.*?^```", re.MULTILINE | re.DOTALL)
CODE = re.compile(r"^```.*?^```|`[^`\n]*`", re.MULTILINE | re.DOTALL)


def anchors_of(text):
    headings = re.findall(r"^#+ (.*)$", CODE.sub("", text), re.MULTILINE)
    return {re.sub(r"[^\w\- ]", "", heading.lower()).replace(" ", "-") for heading in headings}


def check_links(page, text, path):
    for link in LINK.finditer(CODE.sub(lambda code: re.sub(r"[^\n]", " ", code[0]), text)):
        target, _, anchor = link[1].partition("#")
        if re.match(r"[a-z]+:", target):
            continue
        to = (page.parent / target) if target else page
        line = line_of(text, link.start())
        if target.startswith("../drawings/"):  # made at build time, one for each kind's page
            if target != f"../drawings/{page.stem}.svg":
                yield Finding(path, line, f"{link[1]} is not this page's drawing")
            continue
        if not to.exists():
            yield Finding(path, line, f"the link {link[1]} leads nowhere")
        elif anchor and anchor not in anchors_of(to.read_text(encoding="utf-8") if target else text):
            yield Finding(path, line, f"the link {link[1]} finds no such heading")


LONGEST_README = 100  # lines


PATH = re.compile(r"`((?:[\w.-]+/)+[\w-]+\.(?:cpp|h|c|py|toml|md|csv|cmake|txt|svg|sh))`")
BELOW = ("", "libsplice", "cli", "docs", "tests")  # where a path of a page may count from
OF_THE_READER = {"build", "shop", "NAME"}  # folders that no page says are in the tree


def check_paths(root, text, path):
    """A file of the tree that a page names is there."""
    for found in PATH.finditer(CODE_BLOCK.sub(lambda code: re.sub(r"[^\n]", " ", code[0]), text)):
        if OF_THE_READER & set(found[1].split("/")[:-1]):
            continue
        if not any((root / folder / found[1]).exists() for folder in BELOW):
            yield Finding(path, line_of(text, found.start()), f"there is no file {found[1]}")


def check_readme(text, path="README.md"):
    """The title, a blank line, and a paragraph of running text; and no more than can be taken in at once."""
    if not re.match(r"# [^\n]+\n\n[A-Z][^\n]{40,}", text):
        yield Finding(path, 1, "the first paragraph must follow the title and say what this is for")
    if text.count("\n") > LONGEST_README:
        yield Finding(path, LONGEST_README, f"this page has {text.count(chr(10))} lines, {LONGEST_README} at the most")


# --- The whole -----------------------------------------------------------------------------------


def read(root, name):
    return (root / name).read_text(encoding="utf-8")


def listed_kinds(splice):
    run = subprocess.run(
        [*splice, "list", "kinds", "--format", "json"], capture_output=True, text=True, check=True
    )
    return json.loads(run.stdout)


def check_all(splice, root):
    source = codes_in_source(read(root, "libsplice/base/fault.h"), read(root, "libsplice/base/fault.cpp"))
    yield from check_faults(source, read(root, "docs/errors.md"))
    splices = {page.stem: page.read_text(encoding="utf-8") for page in (root / "docs/splices").glob("*.md")}
    yield from check_kinds(listed_kinds(splice), splices)
    words = words_in_source(read(root, "libsplice/allowance/names.cpp"))
    if not words:
        yield Finding("libsplice/allowance/names.cpp", 1, "no names were found here")
    actions = actions_in_source(read(root, "libsplice/allowance/action.cpp"))
    if not actions:
        yield Finding("libsplice/allowance/action.cpp", 1, "no actions were found here")
    yield from check_words(words, actions, read(root, "docs/glossary.md"))
    yield from check_readme(read(root, "README.md"))
    for page in pages_of(root):
        text, path = page.read_text(encoding="utf-8"), str(page.relative_to(root))
        yield from check_links(page, text, path)
        yield from check_paths(root, text, path)
        yield from check_blocks(splice, text, path)
        yield from check_prints(splice, text, path)


# --- Can it fail? --------------------------------------------------------------------------------

# Stands in for the program: refuses a job that says so, and cuts 2 m otherwise.
STAND_IN = """
import sys
text = open(sys.argv[2]).read()
if "refused" in text:
    sys.exit(1)
print('{"pieces": [{"cut_m": 2.0}]}')
"""


def self_test():
    fence = "```"
    splice = [sys.executable, "-c", STAND_IN]
    job = f"<!-- runs -->\n{fence}csv\nname\n{{}}\n{fence}\n"
    answer = f"<!-- prints: cut JOB -->\n{fence}\n{{}}\n{fence}\n"
    here = Path(__file__)
    source = codes_in_source("    a = 101,\n    b = 102,\n", 'CodeTitle{Code::a, "one"}, CodeTitle{Code::b, "two"}')
    action = 'ActionDeclaration{Action::tie, "tie",\n "tied"}'
    pin = {"name": "pin", "dimension": "length", "lowest": 0.0005, "highest": 1}
    kinds = [{"name": "bare", "fields": []}, {"name": "eye", "fields": [pin]}]
    tried = {  # what is tried: (findings, how many there must be)
        "good faults": (check_faults(source, "| 101 | one | x |\n| 102 | two | x |\n"), 0),
        "wrong title, foreign code": (check_faults(source, "| 101 | on | x |\n| 102 | two |\n| 103 | x |\n"), 2),
        "missing code, one twice": (check_faults(source, "| 101 | one |\n| 101 | one |\n"), 2),
        "good kinds": (check_kinds(kinds, {"bare": "", "eye": "| `pin` | length | 0.5 mm to 1 m |"}), 0),
        "wrong limit": (check_kinds(kinds, {"bare": "", "eye": "| `pin` | length | 0.5 mm to 2 m |"}), 1),
        "wrong sort": (check_kinds(kinds, {"bare": "", "eye": "| `pin` | ratio | 0.5 mm to 1 m |"}), 1),
        "no page, no kind": (check_kinds(kinds, {"eye": "`pin`", "knot": ""}), 2),
        "no field": (check_kinds(kinds, {"bare": "", "eye": "pin"}), 1),
        "good words": (check_words(words_in_source('#include "a.h"\nauto a{"tail"};'), {}, "| `tail` | x |\n"), 0),
        "no word": (check_words(["tail", "take-up"], {}, "| `tail` | x |\n"), 1),
        "good action": (check_words([], actions_in_source(action), "| `tie` | tied |\n"), 0),
        "another meaning": (check_words([], actions_in_source(action), "| `tie` | bound |\n"), 1),
        "a word twice": (check_words([], {}, "## A\n| reel, stock | x |\n| reel | y |\n\n## B\n| reel | z |\n"), 1),
        "good jobs": (check_blocks(splice, job.format("x") + "<!-- cut: 2.000 m -->\n" + job.format("y"), "p"), 0),
        "wrong cut": (check_blocks(splice, job.format("x") + "<!-- cut: 2.001 m -->\n", "p"), 1),
        "refused job": (check_blocks(splice, job.format("refused"), "p"), 1),
        "job not readable": (check_blocks(splice, "<!-- runs -->\n\n```csv\n```\n", "p"), 1),
        "good answer": (check_prints(splice, job.format("x") + answer.format('{"pieces": [{"cut_m": 2.0}]}'), "p"), 0),
        "another answer": (check_prints(splice, job.format("x") + answer.format("cut 2.1 m"), "p"), 1),
        "an answer with no job": (check_prints(splice, answer.format('{"pieces": [{"cut_m": 2.0}]}'), "p"), 1),
        "answer not readable": (check_prints(splice, job.format("x") + "<!-- prints: cut JOB -->\n\n", "p"), 1),
        "good links": (check_links(here, f"# A\n[a]({here.name}) [b](https://x.org) [c](#a) `[d](no)`", "p"), 0),
        "broken link": (check_links(here, "[a](no-such.md)", "p"), 1),
        "good path": (check_paths(here.parents[2], f"`house/{here.name}` `build/x.csv`\n```\n`a/b.h`\n```\n", "p"), 0),
        "no such path": (check_paths(here.parents[2], "`tests/house/none.py`", "p"), 1),
        "good start": (check_readme("# libsplice\n\nFrom the length a line must finish at to the cut.\n"), 0),
        "slow start": (check_readme("# libsplice\n\n## Contents\n\nFrom the length a line must finish at.\n"), 1),
        "long start": (check_readme("# libsplice\n\nFrom the length a line must finish at to the cut.\n" + "\n" * 98), 1),
    }  # fmt: skip
    wrong = 0
    for name, (findings, expected) in tried.items():
        found = list(findings)
        if len(found) != expected:
            print(f"{name}: {expected} expected, found {found}")
            wrong += 1
    print(f"{len(tried)} tried, {wrong} wrong")
    return 1 if wrong else 0


def main(arguments):
    if arguments == ["--self-test"]:
        return self_test()
    if not arguments:
        print(__doc__, file=sys.stderr)
        return 2
    root = Path(arguments[1]).resolve() if len(arguments) > 1 else Path(__file__).resolve().parents[2]
    os.environ["LIBSPLICE_TABLES"] = str(root / "tables")
    findings = list(check_all([arguments[0]], root))
    for finding in findings:
        print(f"{finding.path}:{finding.line}: {finding.sentence}")
    return 1 if findings else 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
