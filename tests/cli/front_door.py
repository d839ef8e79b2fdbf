#!/usr/bin/python3
"""The command as a newcomer meets it: help, versions, settings, errors explained, and full disks.

    front_door.py SPLICE TABLES ROOT
"""

import json
import os
import subprocess
import sys
import tempfile
import unittest
from pathlib import Path

SPLICE, TABLES, ROOT = sys.argv[1], sys.argv[2], Path(sys.argv[3])
JOB = "name,rope,length\nsheet,double-braid polyester 6 mm,5.8 m\n"


class FrontDoor(unittest.TestCase):
    def setUp(self):
        folder = tempfile.TemporaryDirectory()
        self.addCleanup(folder.cleanup)
        self.folder = Path(folder.name)
        self.environment = os.environ | {"LIBSPLICE_TABLES": TABLES, "HOME": str(self.folder / "home")}
        for name in ("XDG_CONFIG_HOME", "XDG_DATA_HOME", "NO_COLOR"):
            self.environment.pop(name, None)

    def run_splice(self, *words, status=0, **more):
        run = subprocess.run(
            [SPLICE, *map(str, words)], env=self.environment | more, cwd=self.folder,
            capture_output=True, text=True, check=False,
        )  # fmt: skip
        self.assertEqual(run.returncode, status, (words, run.stderr))
        return run

    def job(self, folder="."):
        path = self.folder / folder / "job.csv"
        path.parent.mkdir(exist_ok=True)
        path.write_text(JOB)
        return path

    def settings(self, text, path="splice.toml"):
        file = self.folder / path
        file.parent.mkdir(parents=True, exist_ok=True)
        file.write_text(text)

    # --- Help and versions

    def test_a_bare_call_says_where_to_begin(self):
        said = self.run_splice()
        self.assertIn("splice new job.csv", said.stdout)
        self.assertLess(len(said.stdout.splitlines()), 12)
        self.assertEqual(said.stderr, "")

    def test_help_in_all_its_forms(self):
        self.assertEqual(self.run_splice("help", "cut").stdout, self.run_splice("cut", "--help").stdout)
        self.assertEqual(self.run_splice("cut", "-h").stdout, self.run_splice("help", "cut").stdout)
        self.assertEqual(self.run_splice("help").stdout, self.run_splice("--help").stdout)
        self.assertIn('did you mean "cut"', self.run_splice("help", "cutt", status=2).stderr)

    def test_examples_of_help_run_in_any_folder(self):
        environment = self.environment | {"PATH": f"{Path(SPLICE).parent}:{os.environ['PATH']}"}
        ran = 0
        for command in self.run_splice("complete", "help", "").stdout.split("\n"):
            name = command.split("\t")[0]
            if name in ("", "learn"):  # this one needs measurements
                continue
            example = self.run_splice("help", name).stdout.split("example:\n")[1].split("\n")[0]
            run = subprocess.run(
                ["sh", "-c", example], env=environment, cwd=self.folder, capture_output=True, text=True, check=False
            )
            self.assertEqual(run.returncode, 0, (example, run.stderr))
            ran += 1
        self.assertGreater(ran, 8)

    def test_versions(self):
        for word in ("--version", "-V"):
            lines = self.run_splice(word).stdout.splitlines()
            self.assertRegex(lines[0], r"^splice \d+\.\d+\.\d+$")
            self.assertRegex(lines[1], r"^tables 20\d\d\.\d\d$")
            self.assertEqual(lines[2:], ["licence not settled yet"])

    def test_a_full_disk_is_noticed(self):
        for words in ([], ["--help"], ["cut", "--help"], ["--version"], ["list", "kinds"], ["complete", ""]):
            with open("/dev/full", "w") as full:
                run = subprocess.run(
                    [SPLICE, *words], stdout=full, stderr=subprocess.PIPE, env=self.environment, check=False
                )
            self.assertEqual(run.returncode, 3, words)

    def test_a_table_is_as_wide_as_its_letters(self):
        name = "主帆升降索"  # two columns of a terminal each
        (self.folder / "wide.csv").write_text(JOB.replace("sheet", name, 1))
        lines = self.run_splice("cut", "wide.csv").stdout.splitlines()
        self.assertTrue(lines[0].startswith("line        boat"), lines[0])
        self.assertTrue(lines[1].startswith(name + "  "), lines[1])

    # --- Lists

    def test_an_error_is_explained_in_the_words_of_its_page(self):
        page = (ROOT / "docs/errors.md").read_text()
        row = next(line for line in page.splitlines() if line.startswith("| 103 |")).split(" | ")
        said = " ".join(self.run_splice("list", "errors", "103").stdout.split())
        self.assertIn(row[2].replace("`", ""), said)
        self.assertIn(row[3].replace("`", "").removesuffix(" |"), said)
        for one in json.loads(self.run_splice("list", "errors", "-f", "json").stdout):
            self.assertTrue(one["cause"] and one["remedy"], one)

    def test_lists_refuse_what_they_do_not_offer(self):
        said = self.run_splice("list", "kinds", "--format", "csv", status=2).stderr
        self.assertIn("text and json", said)
        self.assertNotIn("csv", self.run_splice("list", "--help").stdout.split("--format")[1].split("--")[0])

    def test_kinds_are_a_line_each(self):
        kinds = json.loads(self.run_splice("list", "kinds", "-f", "json").stdout)
        lines = self.run_splice("list", "kinds").stdout.splitlines()
        self.assertLess(len(lines), 2 * len(kinds) + 3)
        self.assertIn("loop", self.run_splice("list", "kinds", "bowline").stdout)

    def test_a_described_rope_is_listed(self):
        (rope,) = json.loads(self.run_splice("list", "ropes", "3-strand manila 24 mm", "-f", "json").stdout)
        self.assertEqual(rope["diameter_m"], 0.024)
        self.assertIsNone(rope["mass_kg_m"], "no table has it")
        (rope,) = json.loads(self.run_splice("list", "ropes", "double-braid polyester 7 mm", "-f", "json").stdout)
        for key in ("price", "core_diameter_m"):
            self.assertIsNone(rope[key], key)
        for key, source in (("breaking_n", "source"), ("mass_kg_m", "mass_source")):
            self.assertEqual(rope[key] is None, rope[source] is None, "a figure has a source")

    # --- Settings

    def setting(self, name, *words, **more):
        listed = json.loads(self.run_splice("list", "settings", name, "-f", "json", *words, **more).stdout)
        return listed[0]["value"], listed[0]["from"]

    def test_the_command_line_wins_over_the_job_s_settings_and_those_over_the_user_s(self):
        job = self.job("boat")
        heading = lambda *words: self.run_splice("cut", job, "-f", "csv", *words).stdout.splitlines()[0]
        self.assertIn("cut_m", heading())
        self.settings('units = "imperial"', "home/.config/libsplice/config.toml")
        self.assertNotIn("cut_m", heading())
        self.settings('units = "metric"', "boat/splice.toml")
        self.assertIn("cut_m", heading())
        self.assertNotIn("cut_m", heading("--units", "imperial"))

    def test_list_settings_shows_where_a_value_comes_from(self):
        self.assertEqual(self.setting("units"), ("metric", "default"))
        self.settings('risk = "2 %"\n\nunits = "imperial"\n')
        self.assertEqual(self.setting("units"), ("imperial", "splice.toml:3:1"))
        other = self.folder / "other"
        self.settings("risk = 5", "other/libsplice/config.toml")
        self.assertEqual(self.setting("risk", XDG_CONFIG_HOME=str(other)), ("2 %", "splice.toml:1:1"))

    def test_a_setting_at_fault_is_the_file_s(self):
        job = self.job()
        for text, said in (
            ('unit = "metric"', 'splice.toml:1:1: error 107: there is no option --unit; did you mean "units"?'),
            ('output = "x"', "no setting"),
            ('plug-in = "x.so"', "no setting"),
            ("commit = true", "no setting"),
            ("ledger = 3", "true or false"),
            ('units = "nautical"', "splice.toml:1:1: error 115"),
            ('risk = "60 %"', "splice.toml:1:1: error 115"),
            ("units = ", "error 106"),
        ):
            self.settings(text)
            self.assertIn(said, self.run_splice("cut", job, status=3).stderr, text)

    def test_a_path_counts_from_the_file_that_names_it(self):
        job = self.job("boat")
        self.settings('tables = "shop"', "boat/splice.toml")
        self.settings('version = "7"\ntitle = "The shop"\n', "boat/shop/tables.toml")
        self.assertIn("+ 7", json.loads(self.run_splice("cut", job, "-f", "json").stdout)["tables"])

    def test_tables_of_the_user(self):
        self.settings('version = "7"\ntitle = "The shop"\n', "data/libsplice/tables/tables.toml")
        data = str(self.folder / "data")
        named = self.run_splice("list", "tables", XDG_DATA_HOME=data).stdout
        self.assertNotIn("The shop", named, "LIBSPLICE_TABLES names others")
        listed = self.run_splice("list", "tables", XDG_DATA_HOME=data, LIBSPLICE_TABLES="").stdout
        self.assertIn("The shop, version 7", listed)
        alone = self.run_splice("list", "tables", "--tables", TABLES, XDG_DATA_HOME=data, LIBSPLICE_TABLES="").stdout
        self.assertNotIn("The shop", alone, "a whole folder of tables needs no other below it")

    # --- Messages

    def test_colour_and_quiet(self):
        (self.folder / "wrong.csv").write_text(JOB.replace("5.8 m", "5.8"))
        said = lambda *words, **more: self.run_splice("cut", "wrong.csv", *words, status=1, **more).stderr
        self.assertNotIn("\x1b", said())
        self.assertIn("\x1b[1;31merror 112", said("--color", "always"))
        self.assertIn("\x1b[1;31merror 112", said("--color=always", NO_COLOR="1"))
        self.assertIn("error 112", said("--quiet"))
        self.run_splice("cut", "wrong.csv", "--color", "red", status=2)
        (self.folder / "twice.csv").write_text(JOB + JOB.splitlines()[1] + "\n")
        self.assertIn("line 2 has the same name", self.run_splice("show", "twice.csv", "sheet").stderr)
        self.assertEqual(self.run_splice("show", "twice.csv", "sheet", "-q").stderr, "")

    def test_foreign_texts_drive_no_terminal(self):
        shop = self.folder / "shop"
        shop.mkdir()
        (shop / "tables.toml").write_text('version = "7"\ntitle = "a\\u001b]0;b\\u202e\\u009b"\n')
        shown = self.run_splice("list", "tables", "--tables", shop).stdout
        for sign in ("\x1b", "\u202e", "\u009b"):
            self.assertNotIn(sign, shown)
        self.assertIn("\\x1b]0;b\\u202e\\u009b", shown)

    def test_an_output_that_is_a_table_is_refused(self):
        self.job()
        shop = self.folder / "shop"
        shop.mkdir()
        table = shop / "tables.toml"
        table.write_text('version = "7"\ntitle = "The shop"\n')
        before = table.read_text()
        self.run_splice("cut", "job.csv", "--tables", shop, "-o", table, status=2)
        self.run_splice("cut", "job.csv", "-o", "job.csv", status=2)
        self.assertEqual(table.read_text(), before)


if __name__ == "__main__":
    unittest.main(argv=sys.argv[:1])
