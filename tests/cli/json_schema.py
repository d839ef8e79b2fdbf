#!/usr/bin/python3
"""Is every answer in JSON what its schema in docs/json says, and is every key of a schema seen?

    json_schema.py SPLICE ROOT PLUG_IN  runs all commands over the examples, every kind of end and
                                        lines that are refused
    json_schema.py --self-test ROOT     spoils answers and expects each to be refused
"""

import copy
import json
import os
import re
import subprocess
import sys
import tempfile
from decimal import Decimal
from pathlib import Path

from jsonschema import Draft202012Validator

# Keys that no answer here fills, and why.
NOT_SEEN = {
    ("cut", "part"): "a line in several ropes; the schema has it ahead of the program",
}

# One line refused for its length, one for its rope, one for its end.
REFUSED = """name,rope,length,end_a,end_a.eye
short,12-strand HMPE 6 mm,0.3 m,locked-eye,40 mm
unknown,braided moss 6 mm,3 m,,
wrong,12-strand HMPE 6 mm,3 m,locked-eye,forty
good,12-strand HMPE 6 mm,3 m,,
"""

# A tail that is shorter than any published one, and a line with every need.
MORE_REFUSED = """
[[line]]
name = "too short a tail"
rope = "12-strand HMPE 6 mm"
length = "4 m"
end_a = { kind = "buried-eye", eye = "40 mm", tail = "50 mm" }
[[line]]
name = "sheet"
rope = "double-braid polyester 8 mm"
length = "9 m"
load = "400 N"
set_tension = "100 N"
most_give = "0.4 m"
standing = "race"
held_by = "cleat"
held_range = "4-12 mm"
sheave = "40 mm"
smallest_hole = "20 mm"
hand = "all-day"
runs = "runs-hot"
price_limit = "9.00"
end_a = { kind = "bowline", loop = "60 mm" }
[[line]]
name = "jib sheet"
rope = "double-braid polyester 8 mm"
length = "7 m"
load = { sheet_of = "6 m2", wind = "20 kn" }
"""

# What the examples do not ask for: a pair, a sleeve, a tolerance that cannot be kept, a purchase.
MORE = """
[[line]]
name = "strop"
rope = "12-strand HMPE 6 mm"
length = "4 m"
fit = "exact"
tolerance = "3 mm"
pair = "strops"
sleeve = "1 m at 1 m"
end_a = { kind = "buried-eye", eye = "40 mm" }
end_b = { kind = "buried-eye", eye = "40 mm" }
[[line]]
name = "strop, other side"
rope = "12-strand HMPE 6 mm"
length = "4 m"
fit = "exact"
tolerance = "3 mm"
pair = "strops"
end_a = { kind = "buried-eye", eye = "40 mm" }
end_b = { kind = "buried-eye", eye = "40 mm" }
"""

STOCK = """id,rope,length,count,kind,price,lot
red 3,demo-b12-hmpe-3,30 m,1,reel,2.10,one
blue,demo-b12-hmpe-4,1 m,1,offcut,,
new,demo-b12-hmpe-4,100 m,5,order,2.60,
"""


class Schemas:
    """The schemas, each whole by itself: what they share is put into each."""

    def __init__(self, root):
        folder = root / "docs/json"
        common = json.loads((folder / "common.schema.json").read_text())["$defs"]
        self.by_name, self.validators = {}, {}
        for file in sorted(folder.glob("*.schema.json")):
            name = file.name.removesuffix(".schema.json")
            schema = json.loads(file.read_text().replace("common.schema.json#", "#"))
            schema["$defs"] = common | schema.get("$defs", {})
            Draft202012Validator.check_schema(schema)
            if name != "common":
                self.by_name[name] = schema
                self.validators[name] = Draft202012Validator(without_references(schema, schema["$defs"]))
        self.shared = common

    def faults(self, name, answer):
        """A sentence for everything in an answer that its schema does not allow."""
        for error in self.validators[name].iter_errors(answer):
            yield f"{name}: {'/'.join(map(str, error.absolute_path))}: {error.message[:300]}"
        yield from (f"{name}: {fault}" for fault in too_long(answer))


def without_references(schema, definitions):
    """The same with what it refers to in place: that is read many times faster."""
    if isinstance(schema, list):
        return [without_references(one, definitions) for one in schema]
    if not isinstance(schema, dict):
        return schema
    if "$ref" in schema:
        rest = {key: value for key, value in schema.items() if key != "$ref"}
        return without_references(definitions[schema["$ref"].rsplit("/", 1)[1]], definitions) | rest
    return {key: without_references(value, definitions) for key, value in schema.items() if key != "$defs"}


def too_long(answer, key=""):
    """Lengths are whole nanometres, and no other number has more than 12 digits."""
    if isinstance(answer, dict):
        for name, value in answer.items():
            yield from too_long(value, name)
    elif isinstance(answer, list):
        for value in answer:
            yield from too_long(value, key)
    elif isinstance(answer, Decimal):
        _, digits, exponent = answer.as_tuple()
        if -exponent > 9 if key.endswith("_m") else len(digits) > 12:
            yield f"{key} is {answer}: too many digits"


def read(text):
    return json.loads(text, parse_float=Decimal)


# --- Which keys were seen ------------------------------------------------------------------------


def objects_of(schema):
    """{name of an object: its schema}; the answer itself has the name ""."""
    return {"": schema.get("items", schema)} | schema["$defs"]


def note_keys(schema, declared, value, seen, name=""):
    """Adds (object, key) of everything in `value` that is not null."""
    if "$ref" in declared:
        name = declared["$ref"].rsplit("/", 1)[1]
        note_keys(schema, schema["$defs"][name], value, seen, name)
        return
    for one in declared.get("anyOf", ()):
        if value is not None and "$ref" in one:
            note_keys(schema, one, value, seen)
    if isinstance(value, list):
        for one in value:
            note_keys(schema, declared.get("items", {}), one, seen, name)
    elif isinstance(value, dict):
        for key, one in value.items():
            if one is not None:
                seen.add((name, key))
            if key in declared.get("properties", {}):
                note_keys(schema, declared["properties"][key], one, seen)


# --- Answers -------------------------------------------------------------------------------------


class Program:
    def __init__(self, path, root):
        self.path = path
        self.environment = os.environ | {"LIBSPLICE_TABLES": str(root / "tables")}

    def json(self, *words):
        run = subprocess.run(
            [self.path, *map(str, words), "--format", "json"],
            env=self.environment, capture_output=True, text=True, check=False,
        )  # fmt: skip
        if run.returncode not in (0, 1):
            sys.exit(f"{words} ends with {run.returncode}: {run.stderr}")
        return read(run.stdout)


def jobs_of(root, folder):
    """The examples, every job that stands on a page, and ours."""
    yield from (root / "docs/examples" / name for name in ("boat.csv", "fleet.csv", "pendant.csv", "routes.toml"))
    block = re.compile(r"^<!-- runs -->\n```(csv|toml)\n(.*?)^```\n", re.MULTILINE | re.DOTALL)
    own = [("csv", REFUSED), ("toml", MORE), ("toml", MORE_REFUSED)]
    for page in sorted((root / "docs").rglob("*.md")):
        own += block.findall(page.read_text())
    for number, (sort, text) in enumerate(own):
        job = folder / f"job{number}.{sort}"
        job.write_text(text)
        yield job


def answers_about_jobs(splice, root, folder, plug_in):
    stock = folder / "stock.csv"
    stock.write_text(STOCK)
    for number, job in enumerate(jobs_of(root, folder)):
        yield "cut", splice.json("cut", job, *(["--ledger"] if number % 2 else []))
        if number < 7:
            yield "choose", splice.json("choose", job)
            yield "choose", splice.json("choose", job, "--together", "--seconds", 5)
            yield "reel", splice.json("reel", job, "--seconds", 1)
    yield "cut", splice.json("show", root / "docs/examples/boat.csv", 1, "--plug-in", plug_in)
    for objective in ("cost", "waste", "new-reels"):
        yield "reel", splice.json("reel", root / "docs/examples/boat.csv", "--minimise", objective,
                                  "--cut-loss", "3 mm", "--stock", stock, "--seconds", 1)  # fmt: skip


FILLED = {"eye": "60 mm", "pin": "12 mm", "loop": "100 mm", "groove": "20 mm", "bore": "14 mm", "spar": "40 mm"}


def answers_about_ends(splice):
    """Every kind in every construction that it is made in; with what a job must say, and with more."""
    fibre = {"wire": "stainless-steel", "shock-cord": "rubber", "parallel-core": "HMPE", "core-dependent": "HMPE"}
    ended = set()
    for kind in splice.json("list", "kinds"):
        fields = {field["name"]: field for field in kind["fields"]}
        needed = [name for name, field in fields.items() if field["required"]]
        for number, construction in enumerate(kind["constructions"]):
            rope = f"{construction} {fibre.get(construction, 'polyester')} " + ("3/8 in" if construction == "wire" else "10 mm")
            more = [name for name in FILLED if name in fields and name not in needed]
            for names in (needed, needed + more)[: 2 if number == 0 else 1]:
                said = [f"{name}={value_for(fields[name])}" for name in names]
                end = answer_or_none(splice, "end", kind["name"], "--rope", rope, *said)
                if end is not None:
                    ended.add(kind["name"])
                    yield "end", end
    yield "end", splice.json("end", "bowline", "--rope", "demo-db-poly-8")
    missing = {kind["name"] for kind in splice.json("list", "kinds")} - ended
    if missing:
        sys.exit(f"no answer about these ends: {sorted(missing)}")


def value_for(field):
    if field["name"] in FILLED:
        return FILLED[field["name"]]
    if field["dimension"] == "choice":
        return field["choices"][0] if field["choices"] else "polyester"
    return {"length": "50 mm", "count": "3", "ratio": "0.5"}[field["dimension"]]


def answer_or_none(splice, *words):
    """Nothing if the end cannot be made so."""
    run = subprocess.run(
        [splice.path, *words, "--format", "json"], env=splice.environment, capture_output=True, text=True, check=False
    )
    return read(run.stdout) if run.returncode == 0 else None


def other_answers(splice, root, folder, plug_in):
    for rope, *more in (
        ["demo-db-poly-8", "load=500N"],
        ["demo-b12-hmpe-4", "load=20%", "length=10m", "against=double-braid polyester"],
        ["double-braid polyester 8 mm", "load=10%", "against=12-strand HMPE"],
    ):
        yield "stretch", splice.json("stretch", rope, *more)
    for knot in ("overhand", "clove-hitch"):
        yield "tighten", splice.json("tighten", knot)
    measured = root / "docs/examples/measured.csv"
    odd = folder / "odd.csv"
    used = (47, 48, 47.5, 48.5, 47, 48, 90, 47.7)
    odd.write_text("kind,rope,used\n" + "".join(f"buried-eye,12-strand HMPE 5 mm,{one} mm\n" for one in used))
    single = folder / "single.csv"
    single.write_text("kind,rope,used\nbowline,double-braid polyester 8 mm,210 mm\nbowline,moss 8 mm,210 mm\n")
    for file in (measured, odd, single):
        yield "learn", splice.json("learn", file, "--output", folder / "shop.toml")
    for what in ("ropes", "kinds", "constructions", "columns", "settings", "errors", "sources", "tables", "plug-ins"):
        plugged = ["--plug-in", plug_in] if what in ("kinds", "plug-ins") else []
        yield f"list-{what}", splice.json("list", what, *plugged)
    yield "list-ropes", splice.json("list", "ropes", "3-strand manila 24 mm")
    yield "list-tables", splice.json("list", "tables", "--tables", root / "tables", "--tables", shop(folder))


def shop(folder):
    """Tables that replace a record of ours."""
    own = folder / "shop"
    own.mkdir(exist_ok=True)
    (own / "tables.toml").write_text('version = "7"\ntitle = "The shop"\n')
    return own


# --- The test ------------------------------------------------------------------------------------


def never_seen(schemas, seen):
    """Objects and keys that no answer filled; those that answers share count wherever they were."""
    everywhere = set().union(*seen.values())
    for name, things in [*((name, objects_of(schema)) for name, schema in schemas.by_name.items()),
                         ("common", schemas.shared)]:  # fmt: skip
        for thing, declared in things.items():
            if thing == "values" or (thing in schemas.shared) != (name == "common"):
                continue
            filled = everywhere if name == "common" else seen.get(name, set())
            yield from ((name, thing, key) for key in declared["properties"] if (thing, key) not in filled)


def check_all(splice, root, plug_in):
    schemas = Schemas(root)
    wrong, seen, count = set(), {}, 0
    with tempfile.TemporaryDirectory() as folder:
        folder = Path(folder)
        for answers in (
            answers_about_jobs(splice, root, folder, plug_in),
            answers_about_ends(splice),
            other_answers(splice, root, folder, plug_in),
        ):
            for name, answer in answers:
                count += 1
                wrong.update(schemas.faults(name, answer))
                schema = schemas.by_name[name]
                note_keys(schema, schema, answer, seen.setdefault(name, set()))
    values = schemas.by_name["end"]["$defs"]["values"]["properties"]
    for thing, key in seen["end"]:
        if thing == "values" and key not in values:
            wrong.add(f"end: the value {key} is not in the schema")
    for name, thing, key in never_seen(schemas, seen):
        if (name, thing) not in NOT_SEEN and (name, key) not in NOT_SEEN:
            wrong.add(f"{name}: no answer here fills {thing or 'the answer'}/{key}")
    actions = set(re.findall(r'ActionDeclaration\{Action::\w+,\s*"(\w+)"', (root / "libsplice/allowance/action.cpp").read_text()))
    if actions ^ set(schemas.shared["step"]["properties"]["action"]["enum"]):
        wrong.add("common: step/action does not list the actions of action.cpp")
    print("\n".join(sorted(wrong)))
    print(f"{count} answers of {len(seen)} sorts")
    return 1 if wrong else 0


GOOD = {
    "tighten": {"schema": 1, "knot": "overhand", "consumed_diameters": 12.4, "mesh": 0.1, "clearance": 1,
                "determinant_before": 3, "determinant_after": 3},
    "list-errors": [{"code": "101", "meaning": "m", "cause": "c", "remedy": "r"}],
    "reel": {"schema": 1, "minimised": "cost", "bound": None, "value": None, "gap": 0, "proved": True, "cuts": [],
             "order": [], "ledger": [], "unplaced": [{"name": "a", "error": {
                 "code": 503, "text": "t", "at": "", "field": ""}}]},
}  # fmt: skip


def spoilt(good):
    """Each way of being wrong: a key more, a key less, another sort of value, a number too long."""
    more = copy.deepcopy(good)
    (more[0] if isinstance(more, list) else more)["surplus"] = 1
    yield more
    for key in good[0] if isinstance(good, list) else good:
        less, other = copy.deepcopy(good), copy.deepcopy(good)
        del (less[0] if isinstance(less, list) else less)[key]
        (other[0] if isinstance(other, list) else other)[key] = {"no": "such"}
        yield from (less, other)


def self_test(root):
    schemas = Schemas(root)
    for name, good in GOOD.items():
        assert not list(schemas.faults(name, good)), (name, list(schemas.faults(name, good)))
        for bad in spoilt(good):
            assert list(schemas.faults(name, bad)), (name, bad)
    deep = copy.deepcopy(GOOD["reel"])
    deep["unplaced"][0]["error"]["code"] = 7
    assert list(schemas.faults("reel", deep)), "a code below 100, three levels down"
    assert list(too_long(read('{"sd_m": 0.0014664696837}'))) and not list(too_long(read('{"sd_m": 0.001466469}')))
    assert list(too_long(read('{"strain": 0.027999999999999997}'))) and not list(too_long(read('{"strain": 0.028}')))
    seen = {"reel": set()}
    note_keys(schemas.by_name["reel"], schemas.by_name["reel"], GOOD["reel"], seen["reel"])
    missing = list(never_seen(schemas, seen))
    assert ("reel", "placed", "at_m") in missing and ("reel", "", "value") in missing
    assert ("common", "error", "code") not in missing and ("common", "error", "rule") in missing
    return 0


if __name__ == "__main__":
    if sys.argv[1] == "--self-test":
        sys.exit(self_test(Path(sys.argv[2])))
    sys.exit(check_all(Program(sys.argv[1], Path(sys.argv[2])), Path(sys.argv[2]), sys.argv[3]))
