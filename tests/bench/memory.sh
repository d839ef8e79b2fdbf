#!/bin/sh
# Peak memory of `splice cut` on a job of 20,000 lines and on one of 400,000: the two should be
# nearly the same, since pieces stream.
#
#     memory.sh PROGRAM [TABLES]
set -eu
program=${1:?usage: memory.sh PROGRAM [TABLES]}
tables=${2:-$(CDPATH= cd -- "$(dirname -- "$0")/../.." && pwd)/tables}

exec python3 - "$program" "$tables" <<'PYTHON'
import os
import subprocess
import sys
import tempfile

program, tables = sys.argv[1:]


def write_job(path, lines):
    with open(path, "w", encoding="utf-8") as job:
        job.write("name,boat,rope,length,end_a,end_a.eye,end_a.pin,end_b,prestretched\n")
        for i in range(lines):
            job.write(
                f"line {i},No {i % 40},demo-b12-hmpe-4,{2000 + i * 7 % 15000} mm,"
                f"buried-eye,{40 + i % 300} mm,12 mm,figure-eight,yes\n"
            )


def peak_of(job, sheet):
    """Peak resident memory of one run, in KiB."""
    command = [program, "cut", job, "--tables", tables, "--format", "csv", "--output", sheet]
    process = subprocess.Popen(command)
    _, status, usage = os.wait4(process.pid, 0)
    if status != 0:
        sys.exit(f"memory.sh: splice cut ended with status {os.waitstatus_to_exitcode(status)}")
    return usage.ru_maxrss


with tempfile.TemporaryDirectory() as folder:
    for lines in (20_000, 400_000):
        job = os.path.join(folder, "job.csv")
        write_job(job, lines)
        peak = peak_of(job, os.path.join(folder, "sheet.csv"))
        print(f"{lines:>7} lines: peak resident memory {peak / 1024:.1f} MiB")
PYTHON
