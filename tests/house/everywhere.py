#!/usr/bin/python3
"""Does everything that is declared stand in help, man pages, completion and docs?

    everywhere.py SPLICE MANUAL [ROOT]  takes commands, options, columns, figures and faults from the
                                        sources of ROOT, kinds and fields from the program SPLICE,
                                        and looks for each; MANUAL holds man1, man3 and man5. Man
                                        pages are also held against mandoc's own rules. 1 if
                                        anything is missing
    everywhere.py --self-test           looks for what is not there and expects every gap to be found
"""

import json
import os
import re
import subprocess
import sys
import tempfile
from pathlib import Path
from typing import NamedTuple


class Declared(NamedTuple):
    commands: list
    options: dict  # name: the commands that take it
    columns: list
    figures: list
    faults: dict  # code: title
    kinds: dict  # name: its fields
    common: list  # fields of every end


class Said(NamedTuple):
    """What each place says, by name."""

    help: dict  # "" for the whole; a command; "list columns" and its like
    pages: dict  # splice-cut.1
    completion: dict  # "", "cut --", "end bowline"
    docs: dict  # README.md, docs/command.md


# --- What is declared ----------------------------------------------------------------------------


def listed_between(text, start, end):
    found = re.search(re.escape(start) + r"(.*?)" + re.escape(end), text, re.DOTALL)
    return re.findall(r'"([^"]+)"', found[1]) if found else []


def options_in(source, commands):
    """{option: commands} of declarations `OptionDeclaration{.name = "x", ..., .commands = " cut ", ...}`."""
    lists = dict(re.findall(r'string_view (\w+) =\s*"([^"]*)"', source))
    options = {}
    for part in source.split("OptionDeclaration{")[1:]:
        name = re.search(r'\.name = "([\w-]+)"', part)[1]
        takers = re.search(r'\.commands =\s*(?:"([^"]*)"|(\w+))', part)
        takers = lists[takers[2]] if takers[2] else takers[1]
        options[name] = commands if takers == "*" else takers.split()
    return options


def declared_in(read, kinds):
    """`read` gives the text of a file of the project, `kinds` is the program's list."""
    commands = re.findall(r'\bCommand\{\s*\.name = "([\w-]+)"', read("cli/declared/commands.cpp"))
    numbers = dict(re.findall(r"^\s+(\w+) = (\d+),", read("libsplice/base/fault.h"), re.MULTILINE))
    titles = re.findall(r'CodeTitle\{\s*Code::(\w+),\s*"([^"]+)"\}', read("libsplice/base/fault.cpp"))
    common = listed_common(read("libsplice/allowance/book.cpp"))
    return Declared(
        commands,
        options_in(read("cli/declared/options.cpp"), commands),
        re.findall(r'\.name = "(\w+)"', read("libsplice/job/columns.h")),
        re.findall(r'\{FigureId::\w+,\s*"(\w+)"', read("libsplice/catalogue/figures.h")),
        {numbers[name]: title for name, title in titles},
        {kind["name"]: [field["name"] for field in kind["fields"] if field["name"] not in common] for kind in kinds},
        common,
    )


def listed_common(source):
    return re.findall(r'FieldDeclaration\{\s*"(\w+)"', source)


# --- What is said --------------------------------------------------------------------------------


class Program:
    def __init__(self, path, root):
        self.path = path
        self.environment = os.environ | {"LIBSPLICE_TABLES": str(root / "tables")}

    def run(self, *words):
        run = subprocess.run(
            [self.path, *words], env=self.environment, capture_output=True, text=True, check=True
        )
        return run.stdout


def help_of(program, declared):
    texts = {command: program.run(command, "--help") for command in declared.commands}
    texts[""] = program.run("--help")
    for what in ("columns", "errors"):
        texts[f"list {what}"] = program.run("list", what)
    texts["list kinds"] = program.run("list", "kinds", *declared.kinds)
    return texts


def completion_of(program, declared):
    asked = ["", "end ", *(f"list {what} " for what in ("columns", "errors", "kinds"))]
    asked += [f"{command} --" for command in declared.commands] + [f"end {kind} " for kind in declared.kinds]
    return {
        words: [line.split("\t")[0] for line in program.run("complete", *words.split(" ")).splitlines()]
        for words in asked
    }


def rendered(page):
    """As a terminal shows it, without the overstriking that makes it bold."""
    run = subprocess.run(
        ["mandoc", "-T", "utf8", "-O", "width=200", str(page)], capture_output=True, text=True, check=True
    )
    return re.sub(r".\x08", "", run.stdout).replace("\u2010", "-").replace("\u2212", "-")


# --- The comparison ------------------------------------------------------------------------------


def item(word):
    """A word that begins a line of its own, perhaps with an argument and its meaning behind it."""
    return re.compile(rf"^ *(?:-\w, )?{re.escape(word)}(?![\w.-])", re.MULTILINE)


def gaps(declared, said):
    """A sentence for everything that is missing."""

    def look(found, what, where):
        if not found:
            yield f"{what} is missing in {where}"

    for command in declared.commands:
        yield from look(item(command).search(said.help[""]), f"the command {command}", "splice --help")
        yield from look(f"splice {command} " in said.help[command], f"its usage {command}", f"splice {command} --help")
        yield from look(item(command).search(said.pages["splice.1"]), f"the command {command}", "splice(1)")
        yield from look(f"splice-{command}.1" in said.pages, f"the page splice-{command}(1)", "the manual")
        yield from look(command in said.completion[""], f"the command {command}", "completion")
        row = f"| `{command}` |" in said.docs["docs/command.md"]
        yield from look(row, f"the command {command}", "docs/command.md")
    for option, takers in declared.options.items():
        word = f"--{option}"
        yield from look(item(word).search(said.help[""]), word, "splice --help")
        yield from look(item(word).search(said.pages["splice.1"]), word, "splice(1)")
        row = re.search(rf"^\| `{word}[ `]", said.docs["docs/command.md"], re.MULTILINE)
        yield from look(row, word, "docs/command.md")
        for command in takers:
            if command not in declared.commands:
                yield f"{word} is said to go with {command}, which is no command"
                continue
            yield from look(item(word).search(said.help[command]), word, f"splice {command} --help")
            page = said.pages.get(f"splice-{command}.1", "")
            yield from look(item(word).search(page), word, f"splice-{command}(1)")
            yield from look(word in said.completion[f"{command} --"], word, f"completion of {command}")
    for column in declared.columns:
        yield from look(item(column).search(said.help["list columns"]), f"the column {column}", "splice list columns")
        yield from look(item(column).search(said.pages["splice-job.5"]), f"the column {column}", "splice-job(5)")
        yield from look(column in said.completion["list columns "], f"the column {column}", "completion")
        yield from look(f"`{column}`" in said.docs["docs/job-files.md"], f"the column {column}", "docs/job-files.md")
    for kind, fields in declared.kinds.items():
        yield from kind_gaps(kind, fields, said, look)
    for field in declared.common:
        listed = said.help["list kinds"].split("every end")[-1]
        yield from look(item(field).search(listed), f"the field {field}", "splice list kinds")
        yield from look(item(field).search(said.pages["splice-job.5"]), f"the field {field}", "splice-job(5)")
        yield from look(f"`{field}`" in said.docs["docs/job-files.md"], f"the field {field}", "docs/job-files.md")
    for code, title in declared.faults.items():
        yield from look(f"{code}  {title}" in said.help["list errors"], f"the error {code}", "splice list errors")
        page = re.search(rf"^ +{code} +{re.escape(title)}", said.pages["splice.1"], re.MULTILINE)
        yield from look(page, f"the error {code}", "splice(1)")
        yield from look(code in said.completion["list errors "], f"the error {code}", "completion")
        row = f"| {code} | {title} |" in said.docs["docs/errors.md"]
        yield from look(row, f"the error {code}", "docs/errors.md")
    for figure in declared.figures:
        yield from look(item(figure).search(said.pages["splice-tables.5"]), f"the figure {figure}", "splice-tables(5)")


def part_of(text, heading, next_heading):
    """What stands under a heading that has a line of its own, up to the next line like it."""
    found = re.search(rf"^{re.escape(heading)}$\n(.*?)(?={next_heading}|\Z)", text, re.MULTILINE | re.DOTALL)
    return found[1] if found else None


def kind_gaps(kind, fields, said, look):
    listed = part_of(said.help["list kinds"], kind, r"^\S")
    page = part_of(said.pages["splice-job.5"], "   " + kind, r"^ {0,3}\S")
    name = f"docs/splices/{kind}.md"
    yield from look(listed is not None, f"the kind {kind}", "splice list kinds")
    yield from look(page is not None, f"the kind {kind}", "splice-job(5)")
    yield from look(kind in said.completion["end "], f"the kind {kind}", "completion")
    yield from look(name in said.docs, f"the page of {kind}", "docs/splices")
    for field in fields:
        what = f"the field {field} of {kind}"
        yield from look(item(field).search(listed or ""), what, "splice list kinds")
        yield from look(item(field).search(page or ""), what, "splice-job(5)")
        yield from look(f"{field}=" in said.completion[f"end {kind} "], what, "completion")
        yield from look(f"`{field}`" in said.docs.get(name, ""), what, name)


def bad_pages(manual):
    """What mandoc finds wrong in the pages."""
    pages = sorted(str(page) for page in manual.rglob("*.[1-9]"))
    run = subprocess.run(["mandoc", "-T", "lint", "-W", "warning", *pages], capture_output=True, text=True, check=False)
    yield from run.stdout.splitlines()
    if not pages or (run.returncode != 0 and not run.stdout):
        yield f"mandoc ends with {run.returncode} {run.stderr}"


def check_all(splice, manual, root):
    program = Program(splice, root)

    def read(name):
        return (root / name).read_text(encoding="utf-8")

    declared = declared_in(read, json.loads(program.run("list", "kinds", "--format", "json")))
    for name, part in zip(Declared._fields, declared):
        if not part:
            yield f"no {name} are found in the sources"
    docs = (root / "docs").rglob("*.md")
    said = Said(
        help_of(program, declared),
        {page.name: rendered(page) for page in manual.rglob("*.[1-9]")},
        completion_of(program, declared),
        {str(page.relative_to(root)): page.read_text(encoding="utf-8") for page in docs},
    )
    yield from gaps(declared, said)
    yield from bad_pages(manual)


# --- Can it fail? --------------------------------------------------------------------------------

GOOD = {
    "help": {
        "": "  cut     work out\n  --ledger\n",
        "cut": "usage: splice cut JOB\n  --ledger   rows\n",
        "list columns": "name\n    its name\n",
        "list kinds": "eye\n    an eye\n    pin  its pin\n  every end\n    rule\n",
        "list errors": "101  a file\n",
    },
    "pages": {
        "splice.1": "  cut JOB\n  --ledger\n  101    a file\n",
        "splice-cut.1": "  --ledger\n",
        "splice-job.5": "   name   a name\n   rule\n   eye\n       pin   its pin\n",
        "splice-tables.5": "   tail   an end\n",
    },
    "completion": {
        "": ["cut"],
        "cut --": ["--ledger"],
        "list columns ": ["name"],
        "list errors ": ["101"],
        "end ": ["eye"],
        "end eye ": ["pin="],
    },
    "docs": {
        "docs/command.md": "| `cut` | x |\n| `--ledger` | x |",
        "docs/job-files.md": "`name` `rule`",
        "docs/errors.md": "| 101 | a file | x |",
        "docs/splices/eye.md": "`pin`",
    },
}
SOURCES = {
    "cli/declared/commands.cpp": 'Command{.name = "cut", .summary = "s"',
    "cli/declared/options.cpp": 'OptionDeclaration{.name = "ledger", .commands = " cut "};',
    "libsplice/job/columns.h": '{.id = Column::name, .name = "name"}',
    "libsplice/catalogue/figures.h": '{FigureId::tail, "tail", "x"}',
    "libsplice/base/fault.h": "    a = 101,\n",
    "libsplice/base/fault.cpp": 'CodeTitle{Code::a, "a file"},',
    "libsplice/allowance/book.cpp": 'FieldDeclaration{"rule", "x"}',
}
KINDS = [{"name": "eye", "fields": [{"name": "pin"}, {"name": "rule"}]}]


def self_test():
    """Every text is left out in turn, a word at a time: each time something must be missing."""
    declared = declared_in(SOURCES.get, KINDS)
    wrong = tried = 0
    if found := list(gaps(declared, Said(**GOOD))):
        print(f"nothing is missing, but found: {found}")
        wrong += 1
    said_words = re.compile(r"`[\w-]+`|--ledger|\bcut\b|\bname\b|\bpin\b|\brule\b|\b101\b|^ *eye$|\btail\b", re.MULTILINE)
    for place, texts in GOOD.items():
        for name, text in texts.items():
            whole = text if isinstance(text, str) else "\n".join(text)
            for word in said_words.finditer(whole):
                if "its " in whole[max(0, word.start() - 4) : word.start()] or "a " == whole[word.start() - 2 : word.start()]:
                    continue  # a meaning, not what is looked for
                less = whole[: word.start()] + whole[word.end() :]
                copy = {key: dict(value) for key, value in GOOD.items()}
                copy[place][name] = less if isinstance(text, str) else less.split("\n")
                tried += 1
                if not list(gaps(declared, Said(**copy))):
                    print(f"{place} {name!r} without {word[0]!r} passes")
                    wrong += 1
    with tempfile.TemporaryDirectory() as folder:
        (Path(folder) / "bad.1").write_text(".TH BAD 1 2026-11-01\n.SH NAME\nbad \\- x\n.XX\n", encoding="utf-8")
        tried += 1
        if not list(bad_pages(Path(folder))):
            print("a bad page passes")
            wrong += 1
    print(f"{tried} tried, {wrong} wrong")
    return 1 if wrong else 0


def main(arguments):
    if arguments == ["--self-test"]:
        return self_test()
    if len(arguments) < 2:
        print(__doc__, file=sys.stderr)
        return 2
    root = Path(arguments[2]).resolve() if len(arguments) > 2 else Path(__file__).resolve().parents[2]
    found = list(check_all(arguments[0], Path(arguments[1]), root))
    for sentence in found:
        print(sentence)
    return 1 if found else 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
