#!/usr/bin/python3
"""Is every number of the tables held by a test? Changes one number at a time and runs the tests.

    mutate.py --tables DIR [--jobs 2] [--sample N] [--at-least PERCENT] [--list-unprotected FILE]
              -- COMMAND ARGUMENT... [--- COMMAND ARGUMENT...]...

A number is protected if one of the commands fails once it is changed by a tenth (a whole number by
at least 1). The commands find the changed folder in LIBSPLICE_TABLES. First all of them must pass
with the tables as they are. A sample is every k-th number, always the same.
`mutate.py --self-test` checks the search for numbers and the counting.
Exit: 0, 1 if the protected share is below --at-least, 2 if the question cannot be asked.
"""

import argparse
import concurrent.futures
import os
import queue
import re
import shutil
import subprocess
import sys
import tempfile
from decimal import Decimal
from pathlib import Path
from typing import NamedTuple

# Keys whose values are words about a number, not a number of the trade.
WORDS = set(
    "source sources locator note notes title text name id kind key item group status page pages "
    "url edition year date publisher author authors reason working".split()
)

TOKEN = re.compile(
    r"""
      (?P<comment>\#[^\n]*)
    | (?P<long>\"{3}.*?\"{3}|'{3}.*?'{3})
    | (?P<string>"(?:\\.|[^"\\\n])*"|'[^'\n]*')
    | (?P<sign>[=,{}\[\]\n])
    | (?P<word>[^\s=,{}\[\]\#"']+)
    """,
    re.VERBOSE | re.DOTALL,
)
NUMBER = re.compile(r"[+-]?\d[\d_]*(\.\d[\d_]*)?([eE][+-]?\d+)?$")
QUANTITY = re.compile(r"\s*(?P<number>[+-]?\d+(\.\d+)?)(?![\d-])")  # a text that starts with a number
TIMEOUT_SECONDS = 120


class Number(NamedTuple):
    path: Path  # from the tables' folder
    line: int
    start: int  # its characters in the file
    end: int
    printed: str

    @property
    def changed(self):
        plain = self.printed.replace("_", "")
        if re.fullmatch(r"[+-]?\d+", plain):
            whole = int(plain)
            step = max(1, round(abs(whole) / 10))
            return str(whole - step if whole < 0 else whole + step)
        value = Decimal(plain)
        return str(value * Decimal("1.1") if value else Decimal("0.1"))


def numbers_of(text, path):
    """Every number that stands as a value, or starts a quantity in quotes."""
    key, open_brackets, in_header = "", 0, False
    tokens = list(TOKEN.finditer(text))
    for token, following in zip(tokens, tokens[1:] + [None]):
        sort, shown = token.lastgroup, token[0]
        if shown == "\n":
            in_header = False
        elif sort == "sign":
            starts_line = not text[text.rfind("\n", 0, token.start()) + 1 : token.start()].strip()
            in_header = in_header or (shown == "[" and starts_line and not open_brackets)
            if not in_header:
                open_brackets += (shown in "[{") - (shown in "]}")
        elif sort in ("word", "string") and not in_header:
            if following and following[0] == "=":
                key = shown.strip("\"'").split(".")[-1]
                continue
            inside = token.start() + (1 if sort == "string" else 0)
            pattern = NUMBER if sort == "word" else QUANTITY
            found = pattern.match(shown if sort == "word" else shown[1:-1])
            if found and key not in WORDS:
                start, end = found.span() if sort == "word" else found.span("number")
                line = text.count("\n", 0, token.start()) + 1
                printed = text[inside + start : inside + end]
                yield Number(path, line, inside + start, inside + end, printed)


def numbers_under(tables):
    for path in sorted(tables.rglob("*.toml")):
        yield from numbers_of(path.read_text(encoding="utf-8"), path.relative_to(tables))


def sample_of(numbers, size):
    """Every k-th of them, about `size` in all; all of them for 0."""
    if not size or size >= len(numbers):
        return numbers
    return [numbers[at * len(numbers) // size] for at in range(size)]


# --- Running -------------------------------------------------------------------------------------


def first_failure(commands, tables):
    """The first command that does not pass with these tables, or None."""
    environment = dict(os.environ, LIBSPLICE_TABLES=str(tables))
    for command in commands:
        try:
            run = subprocess.run(
                command,
                env=environment,
                stdin=subprocess.DEVNULL,
                stdout=subprocess.DEVNULL,
                stderr=subprocess.DEVNULL,
                timeout=TIMEOUT_SECONDS,
                check=False,
            )
        except subprocess.TimeoutExpired:
            return command
        if run.returncode != 0:
            return command
    return None


def is_protected(number, commands, tables):
    """Changes one number of this copy of the tables, asks, and puts it back."""
    path = tables / number.path
    text = path.read_text(encoding="utf-8")
    path.write_text(text[: number.start] + number.changed + text[number.end :], encoding="utf-8")
    try:
        return first_failure(commands, tables) is not None
    finally:
        path.write_text(text, encoding="utf-8")


def unprotected_of(numbers, commands, tables, jobs):
    """Asks for each number, on one copy of the tables for each worker."""
    with tempfile.TemporaryDirectory() as name:
        copies = queue.Queue()
        for worker in range(jobs):
            copy = Path(name) / str(worker)
            shutil.copytree(tables, copy)
            copies.put(copy)

        def ask(number):
            copy = copies.get()
            try:
                return is_protected(number, commands, copy)
            finally:
                copies.put(copy)

        with concurrent.futures.ThreadPoolExecutor(jobs) as pool:
            answers = list(pool.map(ask, numbers))
    return [number for number, protected in zip(numbers, answers) if not protected]


# --- Can it fail? --------------------------------------------------------------------------------

SAMPLE_TABLE = '''# 1 in a comment
[rope.6]
"diameter" = "6 mm" # 2
tail = 22.5
tucks = 3
fid = "3 3/4"
source = "iso-2307, table 3"
construction = "12-strand"
rows = [ { d = 10, f = 1_000 },
         { d = -12, f = 0.0, note = "7 of them", when = 2024-05-01 } ]
text = """
8 = 9
"""
'''
EXPECTED = [
    (3, "6", "7"), (4, "22.5", "24.75"), (5, "3", "4"), (6, "3", "4"), (9, "10", "11"),
    (9, "1_000", "1100"), (10, "-12", "-13"), (10, "0.0", "0.1"),
]  # fmt: skip


def self_test():
    numbers = list(numbers_of(SAMPLE_TABLE, Path("t.toml")))
    found = [(number.line, number.printed, number.changed) for number in numbers]
    with tempfile.TemporaryDirectory() as name:
        Path(name, "t.toml").write_text(SAMPLE_TABLE, encoding="utf-8")
        guard = ["sh", "-c", 'grep -q "tail = 22.5" "$LIBSPLICE_TABLES/t.toml"']
        left = unprotected_of(numbers, [["true"], guard], Path(name), 2)
    guarded = [number.line for number in numbers if number not in left]
    print(f"numbers: {found}\nprotected lines: {guarded}")
    return 0 if found == EXPECTED and guarded == [4] else 1


# --- The command ---------------------------------------------------------------------------------


def split_commands(arguments):
    """(options, commands): the commands follow `--` and are parted by `---`."""
    if "--" not in arguments:
        return arguments, []
    at = arguments.index("--")
    commands = [[]]
    for argument in arguments[at + 1 :]:
        if argument == "---":
            commands.append([])
        else:
            commands[-1].append(argument)
    return arguments[:at], [command for command in commands if command]


def options_of(arguments):
    parser = argparse.ArgumentParser(description="Is every number of the tables held by a test?")
    parser.add_argument("--tables", type=Path, required=True)
    parser.add_argument("--jobs", type=int, default=2)
    parser.add_argument("--sample", type=int, default=0, metavar="N")
    parser.add_argument("--at-least", type=float, default=0, metavar="PERCENT")
    parser.add_argument("--list-unprotected", type=Path, metavar="FILE")
    return parser.parse_args(arguments)


def report(numbers, unprotected, tables, listing):
    lines = [f"{tables / number.path}:{number.line}: {number.printed}" for number in unprotected]
    print("\n".join(lines))
    if listing:
        listing.write_text("".join(line + "\n" for line in lines), encoding="utf-8")
    protected = len(numbers) - len(unprotected)
    share = 100 * protected / len(numbers)
    print(f"{protected} of {len(numbers)} numbers protected: {share:.1f} %")
    return share


def main(arguments):
    if arguments == ["--self-test"]:
        return self_test()
    options, commands = split_commands(arguments)
    options = options_of(options)
    numbers = sample_of(list(numbers_under(options.tables)), options.sample)
    if not commands or not numbers:
        print("mutate.py: no command to run, or no number to change", file=sys.stderr)
        return 2
    broken = first_failure(commands, options.tables.resolve())
    if broken:
        print(f"mutate.py: fails with the tables as they are: {' '.join(broken)}", file=sys.stderr)
        return 2
    unprotected = unprotected_of(numbers, commands, options.tables, options.jobs)
    share = report(numbers, unprotected, options.tables, options.list_unprotected)
    return 0 if share >= options.at_least else 1


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
