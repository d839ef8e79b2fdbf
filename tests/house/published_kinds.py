#!/usr/bin/python3
"""Does the page of kinds and their published work say what the tables and the published cases hold?

    published_kinds.py [ROOT]       prints what is wrong with docs/kinds-and-print.md, with the families
                                    of docs/tables.md, with a kind's own page that does not say whose
                                    order it follows, or with a kind that no case holds; 1 if anything is
    published_kinds.py --self-test  checks small bad pages and expects every sort of fault to be reported
"""

import re
import sys
import tomllib
from pathlib import Path

PAGE = "docs/kinds-and-print.md"
COLUMNS = 5  # of the table of kinds
NO_KIND = {"person"}  # what a rule of the tables may apply to and is no kind of end
NO_LENGTH = {"retained_strength", "design_factor", "bend_retained", "fault", "fid"}
KEY = re.compile(r"`([^`]+)`")
WHOSE = re.compile(r"^## (The order of work, and whose it is|Which published work is followed)\n\n[^#\s]", re.MULTILINE)


def rows_of(page, heading, first=".*?"):
    """The cells of each row of the table below a heading whose own head begins with `first`."""
    part = re.search(rf"^## {heading}\n(.*?)(?=^## |\Z)", page, re.MULTILINE | re.DOTALL)
    table = re.search(rf"^\| {first} \|.*\n\| ---.*\n((?:\|.*\n?)*)", part[1] if part else "", re.MULTILINE)
    lines = table[1].splitlines() if table else []
    return [[cell.strip() for cell in line.strip()[1:-1].split("|")] for line in lines]


def check_rows(rows, kinds, sources, cases):
    """`cases` is {kind: files of the published cases that hold a length, a mark or a count of it}."""
    named = [name[1] if (name := re.match(r"\[([\w-]+)\]", row[0])) else row[0] for row in rows]
    for kind in sorted(kinds - set(named)):
        yield f"{kind} has no row"
    for kind in sorted({name for name in named if name not in kinds or named.count(name) > 1}):
        yield f"{kind} is no kind of the tables, or has two rows"
    for kind, row in zip(named, rows):
        if len(row) != COLUMNS:
            yield f"{kind}: {len(row)} columns, {COLUMNS} are expected"
            continue
        if not row[1] and not row[2]:
            yield f"{kind}: neither read nor memory or custom"
        for key in KEY.findall(row[1]):
            if key not in sources:
                yield f"{kind}: {key} is no source of the tables"
        held = set(KEY.findall(row[4]))
        for file in sorted(held ^ cases.get(kind, set())):
            yield f"{kind}: {file} holds its lengths {'only here' if file in held else 'and is not named'}"


def check_families(rows, families):
    """`families` is {family: its kinds}."""
    said = {row[0].strip("`"): set(row[1].split(", ")) for row in rows}
    for name in sorted(families.keys() | said.keys()):
        if families.get(name) != said.get(name):
            yield f"the family {name} is {sorted(families.get(name, []))}"


def check_rules(rows, rules):
    """`rules` is {name: (kinds and families, sources)} of the rules that are no default."""
    named = [name for row in rows for name in KEY.findall(row[0])]
    for name in sorted(rules.keys() - set(named)):
        yield f"rule {name} has no row"
    for name in sorted({name for name in named if name not in rules or named.count(name) > 1}):
        yield f"rule {name} is none of the tables, or has two rows"
    for row in rows:
        those = [rules[name] for name in KEY.findall(row[0]) if name in rules]
        if set(row[1].split(", ")) != set().union(*[kinds for kinds, _ in those]):
            yield f"rule {row[0]}: its kinds are others"
        if set(KEY.findall(row[2])) != set().union(*[sources for _, sources in those]):
            yield f"rule {row[0]}: its sources are others"


def check_every_kind(kinds, pages, held):
    """`pages` is {kind: its page's text}; `held` are the kinds that a published or a worked case asks for."""
    for kind in sorted(kinds):
        if not WHOSE.search(pages.get(kind, "")):
            yield f"the page of {kind} does not say whose order of work is followed"
        if kind not in held:
            yield f"{kind} has no case in tests/published or tests/worked"


# --- What the tables and the cases hold -----------------------------------------------------------


def families_in(folder, kinds):
    """{family: kinds}, from the sources that declare the kinds."""
    families = {}
    for path in sorted(folder.rglob("*.cpp")):
        source = path.read_text(encoding="utf-8")
        declared = {kind for kind in re.findall(r'"([\w-]+)"', source) if kind in kinds}
        for names in re.findall(r"\.families = \{([^}]*)\}", source):
            for name in re.findall(r'"([\w-]+)"', names):
                families.setdefault(name, set()).update(declared)
    return families


def tables_in(folder):
    for path in sorted(folder.glob("*.toml")):
        yield path.stem, tomllib.loads(path.read_text(encoding="utf-8"))


def rules_in(folder):
    """Every rule that names kinds: (name, kinds, whether it is a default, sources of its figures)."""
    for _, table in tables_in(folder):
        for rule in table.get("rule", []):
            kinds = set(rule.get("kinds", [])) - NO_KIND
            figures = [figure for figure in rule.values() if isinstance(figure, dict)]
            sources = {figure.get("source", rule.get("source")) for figure in figures}
            if kinds:
                yield rule["name"], kinds, rule.get("default", False), sources


def rules_to_ask_for(folder):
    rules = {}
    for name, kinds, default, sources in rules_in(folder):
        if not default:
            before = rules.get(name, (set(), set()))
            rules[name] = (before[0] | kinds, before[1] | sources)
    return rules


def cases_in(folder):
    cases = {}
    for name, table in tables_in(folder):
        for case in table.get("case", []):
            if "end" in case and set(case.get("expect", {})) - NO_LENGTH:
                cases.setdefault(case["end"], set()).add(name)
    return cases


def kinds_asked_for(folders):
    """Every kind that a case of these folders works out, as an end or at either end of a line."""
    cases = [case for folder in folders for _, table in tables_in(folder) for case in table.get("case", [])]
    ends = [case["end"] for case in cases if "end" in case]
    ends += [case["line"][key] for case in cases if "line" in case for key in ("end_a", "end_b") if key in case["line"]]
    return {end if isinstance(end, str) else end["kind"] for end in ends}


def check_all(root):
    page = (root / PAGE).read_text(encoding="utf-8")
    terminations = root / "tables/terminations"
    kinds = {path.stem for path in (root / "docs/splices").glob("*.md")}
    families = families_in(root / "libsplice/allowance/kinds", kinds)
    tables_page = (root / "docs/tables.md").read_text(encoding="utf-8")
    yield from check_families(rows_of(tables_page, "A rule", "family"), families)
    kinds |= set().union(*[kinds for _, kinds, _, _ in rules_in(terminations)]) - families.keys()
    listed = tomllib.loads((root / "tables/sources.toml").read_text(encoding="utf-8"))
    sources = {source["key"] for source in listed["source"]}
    pages = {path.stem: path.read_text(encoding="utf-8") for path in (root / "docs/splices").glob("*.md")}
    yield from check_every_kind(kinds, pages, kinds_asked_for([root / "tests/published", root / "tests/worked"]))
    rows = rows_of(page, "The order of work")
    yield from check_rows(rows, kinds, sources, cases_in(root / "tests/published"))
    yield from check_rules(rows_of(page, "Other published figures[^\n]*"), rules_to_ask_for(terminations))


# --- Can it fail? ---------------------------------------------------------------------------------


def self_test():
    kinds, sources, cases = {"eye", "knot"}, {"book"}, {"eye": {"book"}}
    eye, knot = ["[eye](eye.md)", "`book` p. 1", "", "", "`book`"], ["[knot](knot.md)", "", "custom", "", ""]
    rules = {"short": ({"eye", "knot"}, {"book"})}
    page = "## The order of work\n\n| a | b |\n| --- | --- |\n| x | y |\n\n## Next\n| z | z |\n"
    tried = {  # what is tried: (findings, how many there must be)
        "rows of a page": ([] if rows_of(page, "The order of work") == [["x", "y"]] else ["other rows"], 0),
        "good rows": (check_rows([eye, knot], kinds, sources, cases), 0),
        "a kind left out": (check_rows([eye], kinds, sources, cases), 1),
        "a kind that is none, one twice": (check_rows([eye, knot, knot, ["x", "", "a", "", ""]], kinds, sources, cases), 2),
        "a cell missing": (check_rows([eye, knot[:4]], kinds, sources, cases), 1),
        "no word of where from": (check_rows([eye, [knot[0], "", "", "", ""]], kinds, sources, cases), 1),
        "a key that is none": (check_rows([eye, [knot[0], "`bok`", "", "", ""]], kinds, sources, cases), 1),
        "a case not named": (check_rows([[*eye[:4], ""], knot], kinds, sources, cases), 1),
        "a case that is none": (check_rows([eye, [*knot[:4], "`book`"]], kinds, sources, cases), 1),
        "a page that says whose, a case": (check_every_kind({"eye"}, {"eye": "## Which published work is followed\n\nA.\n"}, {"eye"}), 0),
        "a page that does not say whose": (check_every_kind({"eye"}, {"eye": "## Which published work is followed\n\n## B\n"}, {"eye"}), 1),
        "no page, no case": (check_every_kind({"eye"}, {}, set()), 2),
        "good family": (check_families([["`knots`", "overhand, bowline"]], {"knots": {"bowline", "overhand"}}), 0),
        "another family": (check_families([["`knots`", "overhand"]], {"eyes": {"eye"}}), 2),
        "good rules": (check_rules([["`short`", "eye, knot", "`book`", ""]], rules), 0),
        "a rule left out": (check_rules([], rules), 1),
        "another kind, another source": (check_rules([["`short`", "eye", "`bok`", ""]], rules), 2),
        "a rule that is none": (check_rules([["`short`", "eye, knot", "`book`", ""], ["`x`", "eye", "", ""]], rules), 2),
    }  # fmt: skip
    wrong = 0
    for name, (findings, expected) in tried.items():
        found = list(findings)
        if len(found) != expected:
            print(f"{name}: {expected} expected, found {found}")
            wrong += 1
    print(f"{len(tried)} tried, {wrong} wrong")
    return 1 if wrong else 0


def main(arguments):
    if arguments == ["--self-test"]:
        return self_test()
    root = Path(arguments[0]).resolve() if arguments else Path(__file__).resolve().parents[2]
    findings = list(check_all(root))
    for finding in findings:
        print(f"{PAGE}: {finding}")
    return 1 if findings else 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
