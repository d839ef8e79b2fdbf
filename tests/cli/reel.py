#!/usr/bin/python3
"""The command `splice reel`: its answers, its ends, and a stock that is written whole or not at all.

    reel.py SPLICE TABLES ROOT
"""

import csv
import fcntl
import functools
import io
import itertools
import json
import os
import random
import signal
import subprocess
import sys
import tempfile
import time
import unittest
from pathlib import Path

from terminal import Terminal

SPLICE, TABLES, ROOT = sys.argv[1], sys.argv[2], Path(sys.argv[3])
FLEET = str(ROOT / "docs/examples/sailing-school.csv")
SHELF = str(ROOT / "docs/examples/stock.csv")
TIME = ("--seconds", "600")  # it ends by itself long before
ROPE = "12-strand HMPE 6 mm"
ENVIRONMENT = {**os.environ, "LIBSPLICE_TABLES": TABLES}


def run(*words, text=None):
    return subprocess.run(
        [SPLICE, *map(str, words)], input=text, capture_output=True, text=True, check=False, env=ENVIRONMENT
    )  # fmt: skip


@functools.cache
def planned_fleet():
    """The plan of the whole fleet, which takes long under the sanitizers."""
    return run("reel", FLEET, "--stock", SHELF, "--format", "json", *TIME)


def nanometres(metres):
    return round(metres * 1e9)


class Reel(unittest.TestCase):
    def setUp(self):
        folder = tempfile.TemporaryDirectory()
        self.addCleanup(folder.cleanup)
        self.folder = Path(folder.name)

    def write(self, name, text):
        path = self.folder / name
        path.write_text(text)
        return path

    def job(self, *rows):
        """Lines whose ends are bare and that have no spare: (name, length, quantity, more)."""
        lines = ["name,rope,length,quantity,spare,lot,colour,pair"]
        for name, length, quantity, *more in rows:
            lot, colour, pair = (*more, "", "", "")[:3]
            lines.append(f"{name},{ROPE},{length},{quantity},0 mm,{lot},{colour},{pair}")
        return self.write("job.csv", "\n".join(lines) + "\n")

    def stock(self, *rows, heading="id,rope,length,count,kind,usable,lot,colour,price"):
        lines = [heading] + [row.replace("ROPE", ROPE) for row in rows]
        return self.write("stock.csv", "\n".join(lines) + "\n")

    def refuses(self, status, words, *sentences):
        done = run("reel", *words)
        self.assertEqual(done.returncode, status, done.stderr)
        for sentence in sentences:
            self.assertIn(sentence, done.stderr)
        if status > 1:
            self.assertEqual(done.stdout, "")

    def plan(self, job, stock, *words, status=0):
        return self.plan_of(run("reel", job, "--stock", stock, "--format", "json", *words), status)

    def plan_of(self, done, status=0):
        self.assertEqual(done.returncode, status, done.stderr)
        plan = json.loads(done.stdout)
        self.check_balance(plan)
        return plan

    def check_balance(self, plan):
        for cut in plan["cuts"]:
            pieces = sum(nanometres(piece["cut_m"]) for piece in cut["pieces"])
            rest = nanometres(cut["cut_loss_m"]) + nanometres(cut["left_m"])
            self.assertEqual(pieces + rest, nanometres(cut["length_m"]), cut)
        for rope in plan["ledger"]:
            came = nanometres(rope["stock_m"]) + nanometres(rope["ordered_m"])
            went = sum(nanometres(rope[key]) for key in ("pieces_m", "cut_loss_m", "offcuts_m", "waste_m"))
            self.assertEqual(came, went, rope)


class Demo(Reel):
    def test_the_fleet_is_planned_and_adds_up(self):
        plan = self.plan_of(planned_fleet())
        self.assertTrue(plan["proved"])
        self.assertEqual(plan["unplaced"], [])
        wanted = {}
        with open(FLEET, encoding="utf-8") as file:
            for row in csv.DictReader(file):
                key = (row["boat"], row["name"])
                wanted[key] = wanted.get(key, 0) + int(row["quantity"] or 1)
        came = {}
        for cut in plan["cuts"]:
            for piece in cut["pieces"]:
                key = (piece["boat"], piece["name"])
                came[key] = came.get(key, 0) + cut["times"]
        self.assertEqual(came, wanted)

    def test_what_is_cut_is_what_cut_says(self):
        cuts = json.loads(run("cut", FLEET, "--format", "json").stdout)["pieces"]
        lengths = {(piece["boat"], piece["name"]): piece["cut_m"] for piece in cuts}
        for cut in self.plan_of(planned_fleet())["cuts"]:
            for piece in cut["pieces"]:
                self.assertEqual(piece["cut_m"], lengths[piece["boat"], piece["name"]])

    def test_pairs_come_from_one_lot(self):
        plan = self.plan_of(planned_fleet())
        stocks = {}
        for cut in plan["cuts"]:
            for piece in cut["pieces"]:
                if piece["name"] in ("bridle leg", "trapeze line"):
                    stocks.setdefault((piece["boat"], piece["name"]), set()).add(cut["stock"])
        self.assertEqual({len(names) for names in stocks.values()}, {1})

    def test_a_pair_takes_the_lot_that_is_best_for_all(self):
        # The first reel holds the pair, but then the long piece has to be ordered, and the rest with it.
        job = self.job(("long", "6 m", 1), ("rest", "4 m", 1), ("p1", "3 m", 1, "", "", "P"), ("p2", "3 m", 1, "", "", "P"))
        stock = self.stock("R,ROPE,6.5 m,1,reel,0 m,,,10", "O,ROPE,100 m,,order,0 m,,,0.5")
        plan = self.plan(job, stock)
        self.assertEqual(plan["value"], 50)
        self.assertTrue(plan["proved"])

    def test_no_half_of_a_pair_is_cut(self):
        job = self.job(("a", "4 m", 1), ("p1", "3 m", 1, "", "", "P"), ("p2", "3 m", 1, "", "", "P"))
        stock = self.stock("R,ROPE,8 m,1,offcut,1 m,,,")
        plan = self.plan(job, stock)
        placed, bought = (
            sorted(piece["name"] for cut in plan["cuts"] for piece in cut["pieces"] if cut["stock"] == stock)
            for stock in ("R", None)
        )
        self.assertIn((placed, bought), [(["a"], ["p1", "p2"]), (["p1", "p2"], ["a"])])

    def test_an_output_is_never_an_input(self):
        job, stock = self.job(("a", "4 m", 1)), self.stock("R,ROPE,8 m,1,offcut,1 m,,,")
        before = stock.read_text()
        for output in (job, stock):
            self.refuses(2, [job, "--stock", stock, "--output", output], "--output is a file that is read")
        self.assertEqual(stock.read_text(), before)

    def test_twice_the_same(self):
        self.assertTrue(planned_fleet().stdout == planned_fleet.__wrapped__().stdout)

    def test_every_format_names_every_piece(self):
        rows = list(csv.DictReader(io.StringIO(run("reel", FLEET, "--stock", SHELF, "--format", "csv").stdout)))
        self.assertEqual(sum(int(row["times"]) for row in rows if row["name"]), 248)
        for form in ("text", "html"):
            text = run("reel", FLEET, "--stock", SHELF, "--format", form).stdout
            for word in ("ORDER", "CD5-O1", "rudder downhaul", "LEDGER OF ROPE"):
                self.assertTrue(word.lower() in text.lower(), f"no {word} in {form}")


class Answers(Reel):
    def test_the_shape_of_the_answer(self):
        plan = self.plan(self.job(("a", "4 m", 2)), self.stock("r,ROPE,10 m,1,reel,1 m,L,,2"))
        self.assertEqual(
            {key: plan[key] for key in ("minimised", "bound", "value", "gap", "proved", "order", "unplaced")},
            {"minimised": "cost", "bound": 20, "value": 20, "gap": 0, "proved": True, "order": [], "unplaced": []},
        )
        [cut] = plan["cuts"]
        length = cut["pieces"][0]["cut_m"]
        self.assertEqual(cut["stock"], "r")
        self.assertEqual((cut["lot"], cut["kind"], cut["times"], cut["left_is"]), ("L", "reel", 1, "offcut"))
        self.assertEqual([piece["at_m"] for piece in cut["pieces"]], [0, length])

    def test_cut_loss_falls_between_pieces(self):
        length = self.cut_length("4 m")
        short = f"r,ROPE,{2 * length + 0.01:.4f} m,1,reel,1 m,,,"
        plan = self.plan(self.job(("a", "4 m", 2)), self.stock(short), "--cut-loss", "10 mm")
        self.assertEqual((plan["cuts"][0]["cut_loss_m"], plan["cuts"][0]["left_is"]), (0.01, "nothing"))
        self.plan(self.job(("a", "4 m", 1), ("long", "9 m", 1)), self.stock(short), status=1)
        plan = self.plan(self.job(("a", "4 m", 2)), self.stock(short), "--cut-loss", "11 mm")
        self.assertEqual([(one["pieces"], one["longest_m"]) for one in plan["order"]], [(1, length)])

    def cut_length(self, length):
        done = run("cut", self.job(("a", length, 1)), "--format", "json")
        return json.loads(done.stdout)["pieces"][0]["cut_m"]

    def test_the_keys_of_the_answer(self):
        plan = self.plan(self.job(("a", "4 m", 8)), self.stock("r,ROPE,10 m,1,reel,1 m,L,,2"))
        self.assertEqual(
            set(plan), {"schema", "minimised", "bound", "value", "gap", "proved", "cuts", "order", "ledger", "unplaced"}
        )
        self.assertEqual(
            set(plan["order"][0]), {"rope", "title", "length_m", "pieces", "longest_m", "count", "cost"}
        )
        self.assertEqual(
            set(plan["ledger"][0]),
            {"rope", "stock_m", "ordered_m", "pieces_m", "cut_loss_m", "offcuts_m", "waste_m"},
        )

    def test_an_order_and_its_price(self):
        stock = self.stock("r,ROPE,5 m,1,reel,1 m,,,2", "o,ROPE,50 m,,order,1 m,,,90/reel")
        plan = self.plan(self.job(("a", "4 m", 8)), stock)
        self.assertEqual([(o["length_m"], o["count"], o["cost"]) for o in plan["order"]], [(50, 1, 90)])

    def test_headings_with_units_and_toml(self):
        job = self.job(("a", "4 m", 2))
        heading = "id,rope,length [mm],count,kind,usable [cm]"
        by_csv = self.plan(job, self.stock("r,ROPE,10000,1,reel,100", heading=heading))
        toml = self.write(
            "stock.toml",
            f'[[stock]]\nid = "r"\nrope = "{ROPE}"\nlength = "10 m"\nkind = "reel"\nusable = "1 m"\n',
        )
        self.assertEqual(by_csv, self.plan(job, toml))

    def test_standard_input_is_a_job_or_a_stock(self):
        job, stock = self.job(("a", "4 m", 2)), self.stock("r,ROPE,10 m,1,reel,1 m,,,2")
        done = run("reel", "-", "--stock", stock, text=job.read_text())
        self.assertEqual(done.returncode, 0, done.stderr)
        done = run("reel", job, "--stock", "-", text=stock.read_text())
        self.assertEqual(done.returncode, 0, done.stderr)


class Shopping(Reel):
    """What the stock lacks is a list to buy by, and no failure."""

    def test_without_a_stock_the_whole_job_is_the_list(self):
        job = self.job(("a", "4 m", 2, "", "blue"), ("long", "40 m", 1, "Z", "blue"), ("b", "3 m", 3, "", "red"))
        done = run("reel", job, "--format", "json")
        self.assertEqual(done.returncode, 0, done.stderr)
        plan = json.loads(done.stdout)
        self.check_balance(plan)
        self.assertEqual(plan["unplaced"], [])
        cuts = json.loads(run("cut", job, "--format", "json").stdout)["pieces"]
        blue, red = plan["order"]
        self.assertEqual(nanometres(blue["length_m"]), 2 * nanometres(cuts[0]["cut_m"]) + nanometres(cuts[1]["cut_m"]))
        self.assertEqual((blue["pieces"], blue["longest_m"], blue["count"]), (3, cuts[1]["cut_m"], 1))
        self.assertEqual((red["pieces"], red["longest_m"]), (3, cuts[2]["cut_m"]))
        for one, colour in ((blue, "blue"), (red, "red")):
            for word in ("12-strand", "HMPE", "6 mm", colour):
                self.assertIn(word, one["title"])
        text = run("reel", job).stdout
        self.assertIn("ORDER", text)
        self.assertIn(red["title"], text)

    def test_prices_are_summed_by_rope(self):
        """One rope without a price leaves the others their sums, and metres are never added to money."""
        job = self.write("two.csv", "name,rope,length,spare\n"
                         f"a,{ROPE},4 m,0 mm\nb,3-strand nylon 10 mm,30 m,0 mm\n")  # fmt: skip
        stock = self.stock("r,ROPE,10 m,1,reel,1 m,,,2", "n,3-strand nylon 10 mm,200 m,1,reel,1 m,,,")
        plan = self.plan(job, stock)
        self.assertEqual((plan["value"], plan["bound"]), (20, 20))
        text = run("reel", job, "--stock", stock).stdout
        self.assertIn("No price", text)
        none = self.stock("n,3-strand nylon 10 mm,200 m,1,reel,1 m,,,", "o,ROPE,50 m,,order,1 m,,,90/reel")
        plan = self.plan(job, none)
        self.assertEqual([(one["cost"], one["count"]) for one in plan["order"]], [(90, 1)])
        bare = self.plan(job, self.stock("n,3-strand nylon 10 mm,200 m,1,reel,1 m,,,"))
        self.assertIsNone(bare["value"])

    def test_what_is_on_the_list_is_no_reason_not_to_commit(self):
        job = self.job(("a", "4 m", 3))
        stock = self.stock("r,ROPE,9 m,1,reel,10 mm,,,2")
        done = run("reel", job, "--stock", stock, "--commit", "--format", "json")
        self.assertEqual(done.returncode, 0, done.stderr)
        plan = json.loads(done.stdout)
        self.assertEqual([one["pieces"] for one in plan["order"]], [1])
        [row] = csv.DictReader(io.StringIO(stock.read_text()))
        self.assertEqual((row["id"], row["kind"], row["count"]), ("r", "reel", "1"))
        self.assertEqual(
            nanometres(float(row["length"].split()[0])),
            nanometres(9) - 2 * nanometres(plan["order"][0]["longest_m"]),
        )

    def test_a_piece_longer_than_any_reel_stays_unplaced(self):
        job = self.job(("long", "40 m", 1), ("a", "4 m", 1))
        plan = self.plan(job, self.stock("r,ROPE,10 m,1,reel,1 m,,,2"), status=1)
        self.assertEqual([one["name"] for one in plan["unplaced"]], ["long"])
        self.assertEqual(plan["order"], [])


class Ends(Reel):
    def test_wrong_command_lines(self):
        job, stock = self.job(("a", "4 m", 2)), self.stock("r,ROPE,10 m,1,reel,1 m,,,2")
        self.refuses(2, [job, "--commit"], "--commit", "--stock FILE")
        self.refuses(2, ["--stock", stock], "job file")
        self.refuses(2, [job, "--stock", stock, "--minimise", "wast"], "waste")
        self.refuses(2, [job, "--stock", stock, "--seconds", "0"], "--seconds")
        self.refuses(2, [job, "--stock", stock, "--cut-loss", "3"], "--cut-loss")
        self.refuses(2, [job, "--stock", "-", "--commit"], "--commit")

    def test_files_that_cannot_be_used(self):
        job = self.job(("a", "4 m", 2))
        self.refuses(3, [job, "--stock", self.folder / "none.csv"], "error 101")
        bad = self.stock("r,ROPE,10,1,rel,1 m,,,2", "r,no such rope,5 m,1,reel,,,,-3")
        self.refuses(3, [job, "--stock", bad], "stock.csv:2:23: error 112", 'did you mean "reel"?',
                     "error 505", "error 114")  # fmt: skip
        self.refuses(3, [job, "--stock", self.stock("r,ROPE", heading="id,rop")], "error 107")
        self.refuses(3, [job, "--stock", self.write("empty.csv", "")], "error 103")

    def test_pieces_that_cannot_be_placed_say_why(self):
        job = self.job(("long", "40 m", 1), ("fits", "4 m", 1), ("lot", "3 m", 1, "Z"))
        stock = self.stock("r,ROPE,10 m,2,reel,1 m,A,,2", "s,ROPE,20 m,1,reel,1 m,B,,2")
        plan = self.plan(job, stock, status=1)
        faults = {one["name"]: one["error"] for one in plan["unplaced"]}
        self.assertEqual({name: fault["code"] for name, fault in faults.items()}, {"long": 501, "lot": 504})
        self.assertIn("20 m", faults["long"]["text"])
        self.assertEqual([p["name"] for cut in plan["cuts"] for p in cut["pieces"]], ["fits"])

    def test_a_refused_line_is_not_placed(self):
        job = self.job(("a", "4 m", 2), ("b", "4", 1))
        plan = self.plan(job, self.stock("r,ROPE,10 m,1,reel,1 m,,,2"), status=1)
        self.assertEqual([(one["name"], one["error"]["code"]) for one in plan["unplaced"]], [("b", 112)])


class Commit(Reel):
    def setUp(self):
        super().setUp()
        self.jobs = self.job(("a", "4 m", 2))
        self.stock = self.stock("r,ROPE,30 m,2,reel,1 m,L,,2", "o,ROPE,9 m,1,offcut,,,,", "n,ROPE,50 m,,order,,,,")
        self.before = self.stock.read_text()

    def commit(self, *words):
        return run("reel", self.jobs, "--stock", self.stock, "--commit", *words)

    def rows(self):
        return {row["id"]: row for row in csv.DictReader(io.StringIO(self.stock.read_text()))}

    def test_what_was_used_is_gone_and_what_is_left_came_back(self):
        length = Answers.cut_length(self, "4 m")
        self.jobs = self.job(("a", "4 m", 3))
        done = self.commit()
        self.assertEqual(done.returncode, 0, done.stderr)
        rows = self.rows()
        self.assertEqual(rows["r"]["count"], "1")
        self.assertEqual(rows["o"]["length"], "9 m")
        self.assertEqual(rows["n"]["kind"], "order")
        back = rows["r-1"]
        self.assertEqual((back["kind"], back["count"], back["lot"], back["usable"]), ("reel", "1", "L", "1 m"))
        self.assertEqual(list(rows), ["r", "r-1", "o", "n"])
        self.assertEqual(nanometres(float(back["length"].split()[0])), nanometres(30) - 3 * nanometres(length))
        self.assertEqual((self.folder / "stock.csv.previous").read_text(), self.before)
        self.assertEqual(self.commit().returncode, 0)

    def test_a_reel_that_is_cut_into_keeps_its_id_its_place_and_its_kind(self):
        self.stock = self.write("stock.csv", "id,rope,length,count,kind,usable,lot,colour,price\n"
                                f"s,{ROPE},3 m,1,offcut,,,,\nr,{ROPE},30 m,1,reel,1 m,,,2\nt,{ROPE},200 m,1,reel,1 m,,,2\n")  # fmt: skip
        self.before = self.stock.read_text()
        self.jobs = self.job(("a", "4 m", 2))
        self.assertEqual(self.commit().returncode, 0)
        rows = list(csv.DictReader(io.StringIO(self.stock.read_text())))
        self.assertEqual([(row["id"], row["kind"]) for row in rows], [("s", "offcut"), ("r", "reel"), ("t", "reel")])
        left = nanometres(30) - 2 * nanometres(Answers.cut_length(self, "4 m"))
        self.assertEqual(nanometres(float(rows[1]["length"].split()[0])), left)

    def test_without_it_nothing_is_written(self):
        run("reel", self.jobs, "--stock", self.stock)
        self.assertEqual(self.stock.read_text(), self.before)
        self.assertEqual(sorted(path.name for path in self.folder.iterdir()), ["job.csv", "stock.csv"])

    def test_a_plan_that_is_not_whole_is_not_written(self):
        self.jobs = self.job(("a", "4 m", 2), ("long", "400 m", 1))
        done = self.commit()
        self.assertEqual(done.returncode, 1)
        self.assertIn("left as it was", done.stderr)
        self.assertEqual(self.stock.read_text(), self.before)

    def test_a_stock_that_another_run_holds_is_refused(self):
        with open(self.stock, encoding="utf-8") as held:
            fcntl.flock(held, fcntl.LOCK_EX)
            done = self.commit()
        self.assertEqual(done.returncode, 3)
        self.assertIn("error 507", done.stderr)
        self.assertEqual(self.commit().returncode, 0)

    def test_a_stock_that_has_changed_is_refused(self):
        """The job comes by a pipe, so the stock has been read when the job has not."""
        command = [SPLICE, "reel", "-", "--stock", str(self.stock), "--commit"]
        with subprocess.Popen(command, stdin=subprocess.PIPE, stdout=subprocess.DEVNULL,
                              stderr=subprocess.PIPE, text=True, env=ENVIRONMENT) as process:  # fmt: skip
            while True:  # until it holds the stock, and so has begun with it
                with open(self.stock, encoding="utf-8") as stock:
                    try:
                        fcntl.flock(stock, fcntl.LOCK_EX | fcntl.LOCK_NB)
                        fcntl.flock(stock, fcntl.LOCK_UN)
                    except BlockingIOError:
                        break
                time.sleep(0.01)
            time.sleep(0.3)
            changed = self.before + "x,12-strand HMPE 6 mm,3 m,1,offcut,,,,\n"
            self.stock.write_text(changed)
            _, said = process.communicate(self.jobs.read_text())
        self.assertEqual(process.returncode, 3, said)
        self.assertIn("error 506", said)
        self.assertEqual(self.stock.read_text(), changed)

    def test_a_kill_at_any_instant_leaves_the_old_stock_or_the_new(self):
        begun = time.monotonic()
        self.assertEqual(self.commit().returncode, 0)
        whole = time.monotonic() - begun
        after = self.stock.read_text()
        self.assertNotEqual(after, self.before)
        chance = random.Random(1)
        seen = {"old": 0, "new": 0}
        for attempt in itertools.count():
            if attempt >= 60 and min(seen.values()) > 0 or attempt >= 400:
                break
            self.stock.write_text(self.before)
            process = subprocess.Popen(
                [SPLICE, "reel", str(self.jobs), "--stock", str(self.stock), "--commit"],
                stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL, env=ENVIRONMENT,
            )  # fmt: skip
            time.sleep(whole * chance.uniform(0.5, 1.1))
            process.kill()
            process.wait()
            text = self.stock.read_text()
            self.assertIn(text, (self.before, after))
            seen["old" if text == self.before else "new"] += 1
            previous = self.folder / "stock.csv.previous"
            self.assertEqual(previous.read_text(), self.before)
        self.assertGreater(min(seen.values()), 0, seen)
        self.stock.write_text(self.before)
        self.assertEqual(self.commit().returncode, 0, "a killed run must not hold the stock")
        self.assertEqual(self.stock.read_text(), after)


class Stopped(Reel):
    def hard_job(self):
        """Pieces a third of a reel long, or so, of which nobody proves in a hurry how few reels do."""
        lengths = [1500 + (i * i * 7919 + i * 104729) % 3000 for i in range(60)]
        job = self.job(*((f"p{i}", f"{length} mm", 1) for i, length in enumerate(lengths)))
        return job, self.stock("long,ROPE,10 m,,order,0 m,,,10", "short,ROPE,7 m,,order,0 m,,,7.5")

    def test_ctrl_c_prints_the_best_plan_so_far(self):
        job, stock = self.hard_job()
        begun = time.monotonic()
        process = subprocess.Popen(
            [SPLICE, "reel", str(job), "--stock", str(stock), "--format", "json", "--seconds", "600", "--step", "1 mm"],
            stdout=subprocess.PIPE, stderr=subprocess.PIPE, text=True, env=ENVIRONMENT,
        )  # fmt: skip
        time.sleep(2)
        process.send_signal(signal.SIGINT)
        out, said = process.communicate()
        self.assertEqual(process.returncode, 130, said)
        self.assertLess(time.monotonic() - begun, 300, "it goes on after Ctrl-C")
        plan = json.loads(out)
        self.check_balance(plan)
        self.assertLessEqual(plan["bound"], plan["value"])

    def test_progress_is_shown_on_a_terminal_and_nowhere_else(self):
        job, stock = self.hard_job()
        words = [SPLICE, "reel", str(job), "--stock", str(stock), "--seconds", "3", "--step", "1 mm"]
        terminal = Terminal([*words, "--output", str(self.folder / "plan")], {"LIBSPLICE_TABLES": TABLES})
        self.assertTrue(terminal.wait_for(r"planning reels: bound [\d.]+, best [\d.]+, gap [\d.]+ %"))
        terminal.end()
        self.assertNotIn("planning", run(*words[1:]).stderr)


if __name__ == "__main__":
    unittest.main(argv=[sys.argv[0], *sys.argv[4:]])
