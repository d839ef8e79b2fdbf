#!/usr/bin/python3
"""The command `splice choose`: its answers, its ends, the job that it fills in, and lists of ropes.

    choose.py SPLICE TABLES
"""

import csv
import io
import json
import os
import subprocess
import sys
import tempfile
import tomllib
import unittest
from pathlib import Path

SPLICE, TABLES = sys.argv[1], sys.argv[2]
ENVIRONMENT = {**os.environ, "LIBSPLICE_TABLES": TABLES}
JOB = """name,rope,length,place,load,end_a,end_a.loop,note
main sheet,,9 m,main sheet,400 N,bowline,60 mm,"blue, if there is any"
outhaul,double-braid polyester 6 mm,3 m,outhaul,300 N,bowline,60 mm,
"""
LIST = """id,construction,fibre,diameter,breaking,price
cheap,double-braid,polyester,10 mm,15 kN,1.50
dear,double-braid,polyester,10 mm,16 kN,2.50
thin,double-braid,polyester,6 mm,8 kN,0.50
"""


def run(*words):
    return subprocess.run(
        [SPLICE, *map(str, words)], capture_output=True, text=True, check=False, env=ENVIRONMENT
    )


class Choose(unittest.TestCase):
    def setUp(self):
        folder = tempfile.TemporaryDirectory()
        self.addCleanup(folder.cleanup)
        self.folder = Path(folder.name)

    def write(self, name, text):
        path = self.folder / name
        path.write_text(text)
        return path

    def choice(self, *words, status=0):
        done = run("choose", *words, "--format", "json")
        self.assertEqual(done.returncode, status, done.stderr)
        return json.loads(done.stdout)

    def test_each_line_has_its_ropes(self):
        job, ropes = self.write("job.csv", JOB), self.write("list.csv", LIST)
        answer = self.choice(job, "--ropes", ropes)
        self.assertEqual((answer["schema"], answer["together"]), (1, None))
        sheet, outhaul = answer["lines"]
        self.assertEqual(sheet["chosen"], "cheap", "the thinner one is no rope for the hand all day")
        self.assertEqual(sheet["needs"]["hand"], "all-day")
        self.assertIn("small-boat-rope-advice", sheet["needs"]["source"]["hand"])
        self.assertEqual(sheet["needs"]["source"]["load"], "job")
        best = next(rope for rope in sheet["candidates"] if rope["rope"] == "cheap")
        self.assertAlmostEqual(best["price"], 1.5 * best["buy_m"], 9)
        self.assertIsNone(best["fails"])
        self.assertTrue(best["fits"]["hand"] and best["fits"]["ends"])
        self.assertEqual(outhaul["candidates"][0]["rope"], "double-braid polyester 6 mm")

    def test_rope_to_buy_is_what_cut_says(self):
        job = self.write("job.csv", JOB)
        named = self.choice(job)["lines"][1]["candidates"][0]
        cut = json.loads(run("cut", job, "--format", "json").stdout)["pieces"][1]
        self.assertEqual(named["buy_m"], cut["cut_m"])
        self.assertAlmostEqual(named["factor"], cut["design_factor"], 9)

    def test_the_job_is_filled_in(self):
        job, ropes, out = self.write("job.csv", JOB), self.write("list.csv", LIST), self.folder / "new.csv"
        self.assertEqual(run("choose", job, "--ropes", ropes, "--output", out).returncode, 0)
        before, after = (list(csv.DictReader(io.StringIO(path.read_text()))) for path in (job, out))
        self.assertEqual(after[0].pop("rope"), "cheap")
        self.assertEqual(before[0].pop("rope"), "")
        self.assertEqual(before, after)
        self.assertEqual(run("cut", out, "--ropes", ropes).returncode, 0)

    def test_a_toml_job_keeps_its_remarks(self):
        text = '# the fleet\n[[line]] # first\nname = "a"\nlength = "3 m"\nload = "100 N"\n'
        job, out = self.write("job.toml", text), self.folder / "new.toml"
        self.assertEqual(run("choose", job, "-o", out).returncode, 0)
        filled = out.read_text()
        kept = [line for line in filled.splitlines() if not line.startswith("rope =")]
        self.assertEqual(kept, text.splitlines())
        self.assertIn("rope", tomllib.loads(filled)["line"][0])

    def test_a_person_is_never_given_a_generic_strength(self):
        job = self.write("job.csv", "name,rope,length,place,load,end_a,end_b\n"
                                    "trapeze,12-strand HMPE 4 mm,2 m,trapeze line,800 N,locked-eye,buried-eye\n")
        (line,) = self.choice(job, status=1)["lines"]
        self.assertIsNone(line["chosen"])
        self.assertEqual(line["candidates"][0]["fails"]["need"], "carries_person")
        # Nor is the printed strength of rope in general that of the reel in hand.
        job = self.write("any.csv", "name,length,place,load\ntrapeze,2 m,trapeze line,800 N\n")
        (line,) = self.choice(job, status=1)["lines"]
        self.assertIsNone(line["chosen"])
        self.assertIn("No rule that was read", line["caution"])

    def test_a_load_may_be_worked_out(self):
        text = '[[line]]\nname = "sheet"\nlength = "9 m"\nload = { sheet_of = "25 m2", wind = "20 kn" }\n'
        job = self.write("job.toml", text)
        (line,) = self.choice(job)["lines"]
        self.assertAlmostEqual(line["needs"]["load_n"] / 9.80665, 210.4, 6)
        self.assertIn("0.02104", line["needs"]["load_working"])
        self.assertIn("harken-loading-formulas", line["needs"]["source"]["load"])
        wrong = self.write("wrong.toml", text.replace('"20 kn"', "20"))
        done = run("choose", wrong)
        self.assertEqual(done.returncode, 1)
        self.assertIn("wrong.toml:4:", done.stderr)

    def test_an_end_that_cannot_be_made_is_out(self):
        job = self.write("job.csv", "name,length,load,end_a,end_a.eye\nstrop,3 m,500 N,locked-eye,60 mm\n")
        (line,) = self.choice(job)["lines"]
        self.assertGreater(line["out"]["ends"], 10)
        for rope in line["candidates"]:
            self.assertTrue(rope["rope"].startswith("12-strand"), rope["rope"])

    def test_without_prices_the_dear_fibre_is_not_first(self):
        job = self.write("job.csv", "name,length,load\nline,3 m,500 N\n")
        (line,) = self.choice(job)["lines"]
        self.assertIn("polyester", line["chosen"])
        self.assertIn("No price is known", line["not_known"])
        for form in ("text", "html"):
            self.assertIn("No price is known", run("choose", job, "--format", form).stdout)

    def test_together_shares_reels(self):
        # By the metre each line is cheapest in its own rope: 8 x 1.5 = 12 and 6 x 1.4 = 8.4. A reel of 20 m
        # of the first holds both for 16.
        ropes = self.write("ropes.csv", "id,construction,fibre,diameter,breaking,price\n"
                                        "one,double-braid,polyester,8 mm,14 kN,1.50\n"
                                        "two,double-braid,polyester,6 mm,8 kN,1.40\n")
        reels = self.write("reels.csv", "id,rope,length,kind,price\nR20,one,20 m,order,16/reel\n")
        job = self.write("job.csv", "name,length,load,held_range,fit,spare\n"
                                    "a,8 m,500 N,8-8 mm,at-least,0 mm\nb,6 m,500 N,6-8 mm,at-least,0 mm\n")
        answer = self.choice(job, "--ropes", ropes, "--stock", reels, "--together")
        together = answer["together"]
        self.assertEqual([line["chosen"] for line in answer["lines"]], ["one", "one"])
        self.assertAlmostEqual(together["cost"], 16.0, 6)
        self.assertTrue(together["proved"])
        self.assertEqual((together["sorts"], together["gap"]), (1, 0))
        alone = self.choice(job, "--ropes", ropes, "--stock", reels)
        self.assertIsNone(alone["together"])

    def rows(self, name):
        with open(Path(TABLES).parent / "docs/examples" / name, encoding="utf-8") as file:
            return list(csv.DictReader(file))

    def write_rows(self, name, rows):
        path = self.folder / name
        with open(path, "w", encoding="utf-8", newline="") as file:
            writer = csv.DictWriter(file, rows[0])
            writer.writeheader()
            writer.writerows(rows)
        return path

    def test_the_demo_boat_is_roped_from_nothing(self):
        needs = {
            "main halyard": ("", "900 N"),
            "jib halyard": ("", "600 N"),
            "mainsheet": ("main sheet", "600 N"),
            "jib sheet": ("jib sheet", "400 N"),
            "tack line": ("tack line", "500 N"),
        }
        rows = self.rows("boat.csv")
        for row in rows:
            row["rope"] = ""
            row["place"], load = needs.get(row["name"], ("", ""))
            row["load"] = row["load"] or load
        bare = self.write_rows("bare.csv", rows)
        # What can be ordered, of whatever colour, so that each sort more is a reel more.
        orders = [dict(row, colour="") for row in self.rows("stock.csv") if row["kind"] == "order"]
        stock, out = self.write_rows("orders.csv", orders), self.folder / "roped.csv"
        answer = self.choice(bare, "--stock", stock, "--together", "--output", out)
        self.assertTrue(all(line["chosen"] for line in answer["lines"]))
        together = answer["together"]
        self.assertTrue(together["proved"])
        self.assertLess(together["cost"], together["line_by_line"])
        self.assertLess(together["sorts"], together["sorts_line_by_line"])
        self.assertEqual(run("cut", out).returncode, 0)
        # The planner of reels comes to the same cost, for this job and for the one chosen line by line.
        plan = json.loads(run("reel", out, "--stock", stock, "--format", "json").stdout)
        self.assertAlmostEqual(plan["value"], together["cost"], 2)
        alone = self.folder / "alone.csv"
        self.choice(bare, "--stock", stock, "--output", alone)
        plan = json.loads(run("reel", alone, "--stock", stock, "--format", "json").stdout)
        self.assertAlmostEqual(plan["value"], together["line_by_line"], 2)

    def test_what_is_wrong_is_said(self):
        job = self.write("job.csv", JOB)
        self.assertEqual(run("choose").returncode, 2)
        self.assertEqual(run("choose", job, "--prefer", "colour").returncode, 2)
        self.assertEqual(run("choose", job, "--format", "csv").returncode, 2)
        self.assertEqual(run("choose", "-", "-o", self.folder / "new.csv").returncode, 2)
        self.assertEqual(run("choose", job, "--ropes", self.folder / "none.csv").returncode, 3)
        self.assertEqual(run("choose", self.folder / "none.csv").returncode, 3)
        wrong = self.write("wrong.csv", "name,length,hand\na,3 m,often\n")
        done = run("choose", wrong)
        self.assertEqual(done.returncode, 1)
        self.assertIn("wrong.csv:2:", done.stderr)

    def test_text_and_pages_say_it_too(self):
        job = self.write("job.csv", JOB)
        for form in ("text", "html"):
            done = run("choose", job, "--format", form)
            self.assertEqual(done.returncode, 0, done.stderr)
            self.assertIn("main sheet", done.stdout)
            self.assertIn("double-braid polyester 8 mm", done.stdout)


if __name__ == "__main__":
    unittest.main(argv=sys.argv[:1])
