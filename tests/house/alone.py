#!/usr/bin/python3
"""Compiles each source alone, for its syntax only: a file must include all that it uses.

    alone.py BUILD [PART...]    BUILD holds compile_commands.json; with PARTs, only paths that hold one of them
    alone.py --self-test        expects a file that leans on its neighbour to fail

Every other build compiles sources some together, so that a missing include is not seen there.
"""

import json
import os
import shlex
import subprocess
import sys
import tempfile
from concurrent.futures import ThreadPoolExecutor
from pathlib import Path


def command_of(entry):
    """The entry's command without its output, for the syntax only."""
    words = shlex.split(entry["command"])
    if Path(words[0]).name == "ccache":
        words = words[1:]
    if "-o" in words:
        at = words.index("-o")
        words = words[:at] + words[at + 2 :]
    return [word for word in words if word != "-c"] + ["-fsyntax-only"]


def compile_alone(entry):
    run = subprocess.run(command_of(entry), cwd=entry["directory"], capture_output=True, text=True)
    return entry["file"], run.returncode, run.stderr


def check(entries):
    """Prints what the compiler says of each that fails; how many failed."""
    failed = 0
    with ThreadPoolExecutor(os.cpu_count()) as team:
        for file, status, said in team.map(compile_alone, entries):
            if status != 0:
                failed += 1
                print(f"{file} does not compile alone:\n{said}", flush=True)
    print(f"{len(entries)} sources compiled alone, {failed} failed")
    return failed


def self_test():
    with tempfile.TemporaryDirectory() as name:
        folder = Path(name)
        (folder / "good.cpp").write_text("#include <string>\nstd::string text();\n")
        (folder / "leans.cpp").write_text("std::string other();\n")
        entries = [
            {"directory": name, "file": file, "command": f"c++ -std=c++20 -c {file} -o {file}.o"}
            for file in ("good.cpp", "leans.cpp")
        ]
        return 0 if check(entries[:1]) == 0 and check(entries) == 1 else 1


def main(arguments):
    if arguments == ["--self-test"]:
        return self_test()
    if not arguments:
        sys.exit(__doc__)
    entries = json.loads((Path(arguments[0]) / "compile_commands.json").read_text())
    parts = arguments[1:]
    chosen = [e for e in entries if not parts or any(part in e["file"] for part in parts)]
    if not chosen:
        sys.exit("no source to compile")
    return 1 if check(chosen) else 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
