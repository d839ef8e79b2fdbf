#!/usr/bin/python3
"""The command `splice tighten`: what the tables say of it, curves of our own, and what it refuses.

    tighten.py SPLICE TABLES
"""

import json
import math
import re
import subprocess
import sys
import tempfile
import tomllib
import unittest
from pathlib import Path

SPLICE, TABLES = sys.argv[1], Path(sys.argv[2])


def run(*words):
    return subprocess.run([SPLICE, "tighten", *words], capture_output=True, text=True, check=False)


def consumed(*words):
    done = run(*words, "--mesh", "0.2", "--format", "json")
    assert done.returncode == 0, done.stderr
    return json.loads(done.stdout)


def commands_in_tables():
    """{knot: length} of every figure whose locator names the command that gives it."""
    found = {}
    for file in sorted((TABLES / "terminations").glob("*.toml")):
        for rule in tomllib.loads(file.read_text())["rule"]:
            for figure in (rule.get("knot", {}), rule.get("beyond_loop", {})):
                command = re.match(r"splice tighten ([\w-]+)", figure.get("locator", ""))
                if command:
                    assert figure["status"] == "computed"
                    found[command[1]] = figure["value"]
    return found


class Tighten(unittest.TestCase):
    def file(self, text):
        folder = tempfile.TemporaryDirectory()
        self.addCleanup(folder.cleanup)
        path = Path(folder.name) / "knot.csv"
        path.write_text(text)
        return str(path)

    def test_commands_of_the_tables_give_their_lengths(self):
        commands = commands_in_tables()
        self.assertEqual(
            sorted(commands),
            ["double-overhand", "figure-eight", "figure-eight-loop", "overhand", "stevedore"],
        )
        for knot in ("overhand", "figure-eight", "figure-eight-loop"):
            answer = consumed(knot)
            self.assertLess(abs(answer["consumed_diameters"] / commands[knot] - 1), 0.006)
            self.assertGreater(answer["consumed_diameters"], commands[knot])

    def test_keys_and_the_last_digit(self):
        answers = [consumed("overhand") for _ in range(2)]
        self.assertEqual(*answers, "no run time: the same question has the same answer")
        self.assertEqual(
            set(answers[0]),
            {"schema", "knot", "consumed_diameters", "mesh", "clearance", "determinant_before",
             "determinant_after"},
        )

    def test_a_hitch_on_its_spar(self):
        answer = consumed("clove-hitch", "--pin", "3")
        self.assertEqual(answer["pin_diameters"], 3)
        # Two turns of a centreline that lies two diameters from the spar's axis.
        self.assertAlmostEqual(
            answer["consumed_diameters"] - answer["beyond_turns_diameters"], 8 * math.pi
        )
        self.assertGreater(answer["beyond_turns_diameters"], 0)
        self.assertEqual(answer["determinant_before"], answer["determinant_after"])
        table = run("clove-hitch", "--mesh", "0.4", "--format", "csv").stdout.splitlines()
        self.assertEqual(len(table[0].split(",")), len(table[1].split(",")))
        self.assertIn("beyond 2 turns", run("clove-hitch", "--mesh", "0.4").stdout)

    def test_a_figure_eight_seen_from_elsewhere(self):
        rows = []
        for i in range(101):
            t = 2 * math.pi * (0.01 + 0.98 * i / 100)
            x, y, z = (2 + math.cos(2 * t)) * math.cos(3 * t), (2 + math.cos(2 * t)) * math.sin(3 * t), math.sin(4 * t)
            rows.append((0.6 * x - 0.8 * z, 0.28 * y + 0.96 * z, 0.8 * x + 0.6 * z))
        rows = [tuple(2 * v for v in rows[0]), *rows, tuple(2 * v for v in rows[-1])]
        text = "x,y,z\n" + "".join(f"{x:.6f},{y:.6f},{z:.6f}\n" for x, y, z in rows)
        answer = consumed(self.file(text))
        self.assertEqual((answer["determinant_before"], answer["determinant_after"]), (5, 5))
        self.assertLess(abs(answer["consumed_diameters"] / 13.7 - 1), 0.01)

    def test_what_is_refused(self):
        for words, status, said in (
            (["overhnd"], 2, 'did you mean "overhand"?'),
            (["overhand", "--mesh", "2"], 2, "from 0.02 to 0.4"),
            (["overhand", "--pin", "2"], 2, "for knots round a pin"),
            (["clove-hitch", "--pin", "40"], 2, "from 0.5 to 20"),
            (["clove-hich"], 2, 'did you mean "clove-hitch"?'),
            ([], 2, "needs a knot"),
            (["/no/such.csv"], 3, "error 101"),
            ([self.file("x,y\n1,2\n")], 3, "no column"),
            ([self.file("x,y,z\n1,2,3\n1,b,3\n")], 3, ":3:3: error 114"),
            ([self.file("x [mm],y,z\n1,2,3\n2,2,3\n")], 3, "leave the unit out"),
            ([self.file("x,y,z\n1,2,3\n")], 1, "error 119"),
            ([self.file("x,y,z\n0,0,0\n5,0,0\n5,5,0\n2,5,0\n2,-5,0\n")], 1, "touch or cross"),
        ):
            done = run(*words)
            self.assertEqual(done.returncode, status, (words, done.stderr))
            self.assertIn(said, done.stderr)
            self.assertEqual(done.stdout, "")


if __name__ == "__main__":
    unittest.main(argv=sys.argv[:1])
