#!/usr/bin/python3
"""The command `splice learn`: from measured pieces to a changed cut length.

    learn.py SPLICE TABLES ROOT
"""

import json
import re
import subprocess
import sys
import tempfile
import unittest
from pathlib import Path

SPLICE, TABLES, ROOT = sys.argv[1], sys.argv[2], Path(sys.argv[3])


def run(*words):
    return subprocess.run([SPLICE, *words], capture_output=True, text=True, check=False)


def cut(job, *tables):
    folders = [word for table in (TABLES, *tables) for word in ("--tables", table)]
    done = run("cut", job, "--format", "json", *folders)
    assert done.returncode == 0, done.stderr
    return json.loads(done.stdout)["pieces"][0]


class Learn(unittest.TestCase):
    def setUp(self):
        folder = tempfile.TemporaryDirectory()
        self.addCleanup(folder.cleanup)
        self.folder = Path(folder.name)

    def learn(self, text, *words):
        file = self.folder / "measured.csv"
        file.write_text(text)
        return run("learn", str(file), "--tables", TABLES, *words)

    def learnt(self, text, *words):
        done = self.learn(text, "--format", "json", *words)
        self.assertEqual(done.returncode, 0, done.stderr)
        return json.loads(done.stdout)["learnt"]

    def pieces(self, used, kind="buried-eye", rope="12-strand HMPE 5 mm"):
        return "kind,rope,used\n" + "".join(f"{kind},{rope},{each}\n" for each in used)

    # Six take-ups; mean, standard deviation and limit worked with t(0.95; 5) = 2.015048373.
    def test_prediction_limit(self):
        used = ("6.8 D", "7.4 D", "7.1 D", "32.5 mm", "0.0385 m", "3.5 cm")
        (one,) = self.learnt(self.pieces(used), "--risk", "5")
        self.assertEqual(one["count"], 6)
        self.assertAlmostEqual(one["mean_diameters"], 7.083333333, 8)
        self.assertAlmostEqual(one["sd_diameters"], 0.4262237284, 8)
        self.assertAlmostEqual(one["limit_diameters"], 8.011009705, 8)
        self.assertAlmostEqual(one["limit_m"], 0.005 * 8.011009705, delta=1e-9)
        self.assertEqual(one["outliers"], [])

    def test_the_tables_spread_reaches_the_limit(self):
        # One stopper: its row and z(95 %) times its sd come to the limit.
        used = ("96 mm", "101 mm", "98.5 mm")
        kind, rope = "overhand", "double-braid polyester 8 mm"
        table = str(self.folder / "own.toml")
        (one,) = self.learnt(self.pieces(used, kind, rope), "--risk", "5", "--output", table)
        end = json.loads(run("end", kind, "--rope", rope, "--tables", TABLES, "--tables", table,
                             "--format", "json").stdout)
        row = next(row for row in end["ledger"] if row["item"] == "knot")
        self.assertAlmostEqual(row["length_m"], 0.0985, 8)
        self.assertAlmostEqual(row["length_m"] + 1.644853627 * row["sd_m"], one["limit_m"], 7)
        # t(0.95; 2) = 2.919986, s = 2.5 mm
        self.assertAlmostEqual(one["limit_m"], 0.0985 + 2.919986 * 0.0025 * (4 / 3) ** 0.5, 7)
        self.assertTrue(row["source"].startswith("shop: 3 pieces measured"), row["source"])

    def test_only_the_row_at_fault_is_left_out(self):
        done = self.learn(self.pieces(("43 mm", "45 mm", "44 mm", "440 mm")), "--format", "json")
        self.assertEqual(done.returncode, 1)
        self.assertRegex(done.stderr, r"measured\.csv:5:\d+: error 214")
        self.assertNotIn("measured.csv:2", done.stderr)
        (one,) = json.loads(done.stdout)["learnt"]
        self.assertEqual(one["count"], 3)
        self.assertAlmostEqual(one["mean_m"], 0.044, 9)

    def test_what_learn_did_not_write_is_spared(self):
        table = self.folder / "notes.toml"
        table.write_text("mine = 1\n")
        done = self.learn(self.pieces(("43 mm",)), "--output", str(table))
        self.assertEqual(done.returncode, 3)
        self.assertIn("no table that learn wrote", done.stderr)
        self.assertEqual(table.read_text(), "mine = 1\n")
        table.unlink()
        for _ in range(2):  # its own it writes anew
            self.assertEqual(self.learn(self.pieces(("43 mm",)), "--output", str(table)).returncode, 0)

    def test_one_far_from_the_tables_is_pointed_at(self):
        self.assertIn("Far off", self.learn(self.pieces(("200 mm",), "bowline", "double-braid polyester 6 mm")).stdout)
        self.assertNotIn("Far off", self.learn(self.pieces(("85 mm",), "bowline", "double-braid polyester 6 mm")).stdout)

    def test_the_page_changes_a_cut_length(self):
        page = (ROOT / "docs/learning.md").read_text()
        text = re.search(r"```csv\n(.*?)```", page, re.S)[1]
        self.assertEqual(text, (ROOT / "docs/examples/measured.csv").read_text())
        shop = str(self.folder / "shop")
        self.learnt(text, "--output", shop)
        job = str(ROOT / "docs/examples/pendant.csv")
        before, after = cut(job), cut(job, shop)
        cells = re.search(r"^\| cut length \| ([\d.]+) m \| ([\d.]+) m \|$", page, re.M)
        self.assertEqual((before["cut_m"], after["cut_m"]), (float(cells[1]), float(cells[2])))
        self.assertNotEqual(before["cut_m"], after["cut_m"])
        for end in "ab":
            length, spread, sources = self.take_up(after, end)
            self.assertAlmostEqual(length, 0.044, 8)  # the mean of 43, 45 and 44 mm
            # t(0.99; 2) = 6.964557, s = 1 mm; z(99 %) = 2.326348
            self.assertAlmostEqual(spread, 0.001 * 6.964557 * (4 / 3) ** 0.5 / 2.326348, 7)
            self.assertTrue(sources["settling"].startswith("shop"), sources)

    def take_up(self, piece, end):
        """Of one end, once it was loaded: length and spread of both rows, and their sources."""
        rows = [row for row in piece["ledger"]
                if row["end"] == end and row["item"] in ("take-up as spliced", "settling")]
        self.assertEqual(len(rows), 2)
        return (sum(row["length_m"] for row in rows), sum(row["sd_m"] for row in rows),
                {row["item"]: row["source"] for row in rows})

    def test_a_take_up_is_compared_with_the_settled_one(self):
        # The tables over 72 D of 12 strands, by hand in tests/worked/take-up.toml: K = 0.135 takes
        # up 4.63102 D, K = 0.095 3.15806 D.
        (one,) = self.learnt(self.pieces(["23.1551 mm", "24.1551 mm", "22.1551 mm"]))
        self.assertAlmostEqual(one["tables_diameters"], 4.63102, 5)
        self.assertAlmostEqual(one["tables_sd_diameters"], 4.63102 - 3.15806, 4)
        self.assertAlmostEqual(one["constant_value"], 0.135, 5)

    def test_before_and_after_are_what_used_is(self):
        rope = "double-braid polyester 8 mm"
        (one,) = self.learnt(f"kind,rope,before,after [mm]\nbowline,{rope},1.2 m,1080\n"
                             f"bowline,{rope},40 in,894\n")
        self.assertAlmostEqual(one["mean_m"], (0.12 + 0.122) / 2, 9)

    def test_one_piece_keeps_the_tables_spread_of_k(self):
        table = str(self.folder / "own.toml")
        (one,) = self.learnt(self.pieces(["38 mm"]), "--output", table)
        self.assertIsNone(one["limit_diameters"])
        self.assertEqual(one["spread_from"], "tables")
        job = str(ROOT / "docs/examples/pendant.csv")
        length, spread, _ = self.take_up(cut(job, table), "a")
        self.assertAlmostEqual(length, 0.038, 8)
        # 7.6 D is K = 0.2083873; less by the tables' 0.05 it takes up 2.06255 D less.
        self.assertAlmostEqual(spread, 0.005 * 2.06255, 7)
        self.assertAlmostEqual(one["spread_diameters"], 2.06255, 5)
        self.assertIn("one piece does not show", self.learn(self.pieces(["38 mm"])).stdout)

    def test_an_outlier_is_named_and_kept(self):
        # Grubbs' table at 5 %, two-sided, n = 6: 1.887.
        used = ("35 mm", "35.5 mm", "34.5 mm", "35 mm", "34.8 mm", "52 mm")
        (one,) = self.learnt(self.pieces(used))
        (outlier,) = one["outliers"]
        self.assertEqual(outlier["line"], 7)
        self.assertAlmostEqual(outlier["grubbs_limit"], 1.887, 3)
        self.assertEqual(one["count"], 6)

    def test_rows_at_fault_keep_their_places(self):
        done = self.learn("kind,rope,used [mm]\n"
                          "buried-eye,12-strand HMPE 5 mm,35\n"
                          "burid-eye,12-strand HMPE 5 mm,35\n"
                          "buried-eye,13-strand HMPE 5 mm,35\n"
                          "buried-eye,12-strand HMPE 5 mm,3 kg\n"
                          "buried-eye,12-strand HMPE 5 mm,-3\n"
                          "buried-eye,12-strand HMPE 5 mm,\n"
                          "whipped,12-strand HMPE 5 mm,35\n")
        self.assertEqual(done.returncode, 1)
        for said in (":3:1: error 209", ":4:12: error 20", ":5:32: error 112", ":6:32: error 117",
                     ":7:32: error 111", ":8:29: error 214"):
            self.assertIn(said, done.stderr)
        self.assertIn("7, 6 left out", done.stdout)

    def test_files_without_structure(self):
        for text in ("", "kind,rope\n", "kind,rope,before\n", "kind,rope,used,used\n",
                     "kind,rope,used [kg]\n", 'kind,rope,used\n"open\n'):
            done = self.learn(text)
            self.assertEqual(done.returncode, 3, (text, done.stderr))
            self.assertIn("measured.csv", done.stderr)
            self.assertEqual(done.stdout, "")


if __name__ == "__main__":
    unittest.main(argv=sys.argv[:1])
