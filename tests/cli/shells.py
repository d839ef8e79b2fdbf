#!/usr/bin/python3
"""Completion in the shells themselves: what does a person get who presses the tabulator key?

    shells.py bash|zsh|fish SPLICE COMPLETIONS [PLUG-IN]

COMPLETIONS is the folder of the shells' scripts. bash and zsh run on a terminal; fish says by itself
what it would offer.
"""

import os
import re
import shutil
import subprocess
import sys
import tempfile
from pathlib import Path

from terminal import Terminal

# What is typed, and what has to be shown then, in the order of a list or put in whole.
TYPED = [
    ("splice lis", r"list "),
    ("splice list pl", r"plug-ins "),
    ("splice list errors 30", r"301.*302.*305"),
    ("splice list columns first_", r"first_end "),
    ("splice end ser", None),  # nothing begins so
    ("splice end carrick", None),
    ("splice end halyard", r"halyard-hitch "),
    ("splice end buried-eye --rope demo-db-poly-1", r"demo-db-poly-10"),
    ("splice end buried-eye ta", r"tail=.*taper="),
    ("splice end buried-eye pi", r"pin="),
    ("splice cut --led", r"--ledger "),
    ("splice cut --format js", r"json "),
    ("splice cut --format=js", r"json "),
    ("splice cut --units imp", r"imperial "),
    ("splice cut one", r"one-job.csv"),
    ("splice cut --tables=fol", r"folder/"),
    ("splice stretch demo-b12-hmpe-3 ag", r"against="),
    ("splice show one-job.csv main", r"main.{1,2}halyard"),
    ('splice end bowline --rope "12-strand HMPE 3', r"12-strand HMPE 3 mm"),
]
PLUGGED = ("splice end --plug-in {} tucked-wire", r"tucked-wire-eye ")


def start(shell, splice, completions, folder):
    path = f"{splice.parent}:{os.environ['PATH']}"
    more = {"PATH": path, "HOME": folder, "PS1": "> ", "COLUMNS": "200"}
    if shell == "bash":
        terminal = Terminal(["bash", "--norc", "--noprofile", "-i"], more, plain=True, cwd=folder)
        lines = [
            "bind 'set show-all-if-ambiguous on'; bind 'set bell-style none'",
            "bind 'set page-completions off'; bind 'set completion-query-items 0'; stty cols 200",
            ". /usr/share/bash-completion/bash_completion",
            f". {completions}/splice.bash",
        ]
    else:
        terminal = Terminal(["zsh", "-f", "-i"], more, plain=True, cwd=folder)
        lines = [
            "PS1='> '; stty cols 200; unsetopt beep; setopt no_always_last_prompt; LISTMAX=1000",
            f"fpath=({completions} $fpath); autoload -U compinit; compinit -u -D",
        ]
    for line in lines:
        terminal.type(line + "\r")
    terminal.type("echo rea''dy\r")
    if not terminal.wait_for(r"[\r\n]ready\r?\n"):
        sys.exit(f"{shell} does not come up: {terminal.shown}")
    return terminal


def on_a_terminal(shell, splice, completions, folder, typed):
    terminal = start(shell, splice, completions, folder)
    wrong = 0
    for number, (words, shown) in enumerate(typed):
        terminal.type(words + "\t")
        if shown is not None:
            if not terminal.wait_for(shown, 8):
                print(f"{words!r}: {shown!r} does not come, but {terminal.shown!r}")
                wrong += 1
        # The line is thrown away, and a word of its own tells that nothing of it is to come.
        terminal.type(f"\x15echo do''ne{number}\r")
        if not terminal.wait_for(rf"[\r\n]done{number}\r?\n"):
            sys.exit(f"{shell} hangs after {words!r}: {terminal.shown!r}")
    terminal.type("exit\r")
    terminal.end()
    return wrong


def in_fish(splice, completions, folder, typed):
    wrong = 0
    for words, shown in typed:
        script = f"source {completions}/splice.fish; complete -C '{words}'"
        run = subprocess.run(
            ["fish", "--no-config", "-c", script],
            env=os.environ | {"PATH": f"{splice.parent}:{os.environ['PATH']}", "HOME": folder},
            cwd=folder, capture_output=True, text=True, check=False,
        )  # fmt: skip
        offered = run.stdout
        good = re.search(shown.rstrip(" "), offered, re.DOTALL) if shown else not offered
        if not good:
            print(f"{words!r}: {shown!r} is not offered, but {offered!r} {run.stderr!r}")
            wrong += 1
    return wrong


def main(shell, splice, completions, *plug_in):
    splice, completions = Path(splice).resolve(), Path(completions).resolve()
    if shutil.which(shell) is None:
        sys.exit(f"{shell} is not installed")
    typed = TYPED + [(PLUGGED[0].format(file), PLUGGED[1]) for file in plug_in]
    with tempfile.TemporaryDirectory() as folder:
        (Path(folder) / "one-job.csv").write_text("name,rope,length\nmain halyard,12-strand HMPE 3 mm,2 m\njib sheet,12-strand HMPE 3 mm,2 m\n")
        (Path(folder) / "folder").mkdir()
        if shell == "fish":
            wrong = in_fish(splice, completions, folder, typed)
        else:
            wrong = on_a_terminal(shell, splice, completions, folder, typed)
    print(f"{shell}: {len(typed)} typed, {wrong} wrong")
    return 1 if wrong else 0


if __name__ == "__main__":
    sys.exit(main(*sys.argv[1:]))
