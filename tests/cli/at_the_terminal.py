#!/usr/bin/python3
"""How the command behaves at a terminal: progress, colour, and what Ctrl-C leaves behind.

    at_the_terminal.py SPLICE
"""

import os
import re
import signal
import subprocess
import sys
import tempfile
import time
from pathlib import Path

from terminal import Terminal

HEADING = "name,rope,length,end_a,end_b\n"
ROW = "sheet,double-braid polyester 6 mm,5.8 m,whipped,whipped\n"
WRONG = "sheet,double-braid polyester 6 mm,5.8,whipped,whipped\n"
PROGRESS = r"cutting: [\d,]+ lines, [\d,]+ a second"

wrong = []


def check(holds, sentence):
    if not holds:
        wrong.append(sentence)
        print(sentence)


def wait_until(holds, seconds=20.0):
    until = time.monotonic() + seconds
    while not holds() and time.monotonic() < until:
        time.sleep(0.002)
    return holds()


def slowly(terminal):
    """A job of which the last rows come after more than a second."""
    job = terminal.process.stdin
    job.write((HEADING + ROW * 3).encode())
    job.flush()
    time.sleep(1.2)
    for _ in range(200):  # what is read at once is cut at once: one row follows the other
        try:
            job.write(ROW.encode())
            job.flush()
        except BrokenPipeError:
            break
        time.sleep(0.001)
    job.close()


def progress_on_a_terminal(splice, folder):
    command = [splice, "cut", "-", "--format", "csv", "--output", str(folder / "slow.csv")]
    terminal = Terminal(command, stdin=subprocess.PIPE)
    slowly(terminal)
    shown, status = terminal.end()
    check(status == 0, f"a slow job ends with {status}: {shown}")
    check(re.search(PROGRESS, shown), f"a slow job shows no progress: {shown!r}")
    check(shown.endswith("\r\x1b[K"), f"the progress is left standing: {shown!r}")


def no_progress(splice, folder):
    output = ["--output", str(folder / "slow.csv")]
    for what, more, streams in (
        ("into a file", output, {"stderr": subprocess.STDOUT, "stdout": subprocess.PIPE}),
        ("where the sheet is shown", [], {}),
        ("on a terminal that cannot take a line back", output, {"dumb": True}),
    ):
        environment = {"TERM": "dumb"} if streams.pop("dumb", False) else {}
        command = [splice, "cut", "-", "--format", "csv", *more]
        terminal = Terminal(command, environment, stdin=subprocess.PIPE, **streams)
        slowly(terminal)
        piped = terminal.process.stdout.read().decode() if "stdout" in streams else ""
        shown, status = terminal.end()
        check(status == 0, f"{what}, a slow job ends with {status}")
        check("cutting" not in shown + piped, f"progress {what}: {shown + piped!r}")


def time_to_go(splice, folder):
    """A file has a size. The program is held up as it begins, or it would be done too soon."""
    job = folder / "long.csv"
    job.write_text(HEADING + ROW * 200_000)
    command = [splice, "cut", str(job), "--format", "csv", "--output", str(folder / "long-sheet.csv")]
    terminal = Terminal(command)
    check(wait_until(lambda: list(folder.glob(".splice-*"))), "nothing is written beside the output")
    terminal.process.send_signal(signal.SIGSTOP)
    time.sleep(1.2)
    terminal.process.send_signal(signal.SIGCONT)
    shown, status = terminal.end()
    check(status == 0, f"a long job ends with {status}")
    check(re.search(PROGRESS + r", \d+ %, (\d+ h \d+ min|(\d+ min )?\d+ s) to go", shown), f"no time to go: {shown!r}")


def colour(splice, folder):
    job = folder / "wrong.csv"
    job.write_text(HEADING + WRONG)
    place = rf"{re.escape(str(job))}:2:35: "
    for what, environment, expected in (
        ("on a terminal", {}, place + "\x1b\\[1;31merror 112:?\x1b\\[0m:? "),
        ("with NO_COLOR", {"NO_COLOR": "1"}, place + "error 112: "),
        ("with an empty NO_COLOR", {"NO_COLOR": ""}, place + "\x1b\\[1;31merror 112"),
        ("on a dumb terminal", {"TERM": "dumb"}, place + "error 112: "),
    ):
        shown, _ = Terminal([splice, "cut", str(job)], environment, stdout=subprocess.DEVNULL).end()
        check(re.search(expected, shown), f"{what}: {shown!r}")
    piped = subprocess.run([splice, "cut", str(job)], capture_output=True, check=False).stderr.decode()
    check(re.search(place + "error 112: ", piped), f"into a file: {piped!r}")


def interrupted(splice, folder):
    """Stopped while it writes, it leaves the old file as it was and nothing else."""
    output = folder / "sheet.csv"
    for number in (signal.SIGINT, signal.SIGTERM, signal.SIGHUP):
        output.write_text("the old sheet\n")
        before = sorted(folder.iterdir())
        command = [splice, "cut", "-", "--format", "csv", "--output", str(output)]
        process = subprocess.Popen(command, stdin=subprocess.PIPE)
        process.stdin.write((HEADING + ROW * 5000).encode())
        process.stdin.flush()
        begun = wait_until(lambda: list(folder.glob(".splice-*")))
        check(begun, "nothing is written beside the output")
        process.send_signal(number)
        status = process.wait()
        process.stdin.close()
        check(status == -number, f"signal {number} ends the program with {status}")
        check(output.read_text() == "the old sheet\n", f"signal {number} spoils the old file")
        check(sorted(folder.iterdir()) == before, f"signal {number} leaves {list(folder.iterdir())}")


def interrupted_by_key(splice, folder):
    """Ctrl-C, from the terminal."""
    output = folder / "by-key.csv"
    command = ["setsid", "--ctty", "--wait", splice, "cut", "-", "--output", str(output)]
    terminal = Terminal(command)
    check(wait_until(lambda: list(folder.glob(".splice-*"))), "nothing is written beside the output")
    terminal.type("\x03")
    _, status = terminal.end()
    check(status != 0, "Ctrl-C does not end the program")
    check(not list(folder.glob(".splice-*")) and not output.exists(), "Ctrl-C leaves something behind")


def ignored(splice, folder):
    """A signal that whoever started it has put off (nohup) does nothing."""
    output = folder / "kept-on.csv"
    command = ["sh", "-c", 'trap "" HUP; exec "$@"', "sh", splice, "cut", "-", "--output", str(output)]
    process = subprocess.Popen(command, stdin=subprocess.PIPE)
    check(wait_until(lambda: list(folder.glob(".splice-*"))), "nothing is written beside the output")
    process.send_signal(signal.SIGHUP)
    process.stdin.write((HEADING + ROW).encode())
    process.stdin.close()
    check(process.wait() == 0 and output.exists(), "an ignored signal ends the program")


def main(splice):
    os.environ.pop("NO_COLOR", None)
    tests = (progress_on_a_terminal, no_progress, time_to_go, colour, interrupted, interrupted_by_key, ignored)
    for test in tests:
        with tempfile.TemporaryDirectory() as folder:
            test(str(Path(splice).resolve()), Path(folder))
    print(f"{len(tests)} tried, {len(wrong)} sentences wrong")
    return 1 if wrong else 0


if __name__ == "__main__":
    sys.exit(main(*sys.argv[1:]))
