#!/usr/bin/env python3
"""Writes the tables of keys of docs/json.md and docs/glossary.md, from the JSON Schemas in docs/json.

    json_page.py ROOT            writes what stands between the pages' markers anew
    json_page.py --check ROOT    are the pages what the schemas say? 1 and a sentence each if not

`<!-- keys: cut -->` is followed by every object of cut.schema.json, `<!-- values: end -->` by the
figures of one end; `<!-- end of keys -->` ends both.
"""

import json
import pathlib
import re
import sys

PAGES = ("docs/json.md", "docs/glossary.md")
BLOCK = re.compile(r"<!-- (keys|values): ([\w-]+) -->\n(.*?)<!-- end of keys -->\n", re.DOTALL)
SORTS = {"string": "text", "integer": "whole number", "number": "number", "boolean": "true or false",
         "object": "object"}


def words_of(name):
    return name.replace("_", " ")


def link_to(reference):
    words = words_of(reference.rsplit("/", 1)[1])
    return f"[{words}](#{words.replace(' ', '-')})"


def one_sort(declared):
    """What a value is, without null."""
    if "$ref" in declared:
        return link_to(declared["$ref"])
    if "const" in declared:
        return str(declared["const"])
    if "enum" in declared:
        return ", ".join(f"`{word}`" for word in declared["enum"] if word is not None)
    if "anyOf" in declared:
        return " or ".join(one_sort(one) for one in declared["anyOf"] if one.get("type") != "null")
    sorts = declared["type"] if isinstance(declared["type"], list) else [declared["type"]]
    (sort,) = [one for one in sorts if one != "null"]
    if sort == "array":
        return "list of " + one_sort(declared["items"])
    return declared.get("unit", SORTS[sort])


def may_be_null(declared):
    return (None in declared.get("enum", ()) or "null" in declared.get("type", ())
            or {"type": "null"} in declared.get("anyOf", ()))


def table(thing):
    """The keys of one object, a row each."""
    rows = ["| key | meaning | value |", "| --- | --- | --- |"]
    for key, declared in thing["properties"].items():
        sort = one_sort(declared) + (" or null" if may_be_null(declared) else "")
        if key not in thing.get("required", ()):
            sort += "; may be absent"
        rows.append(f"| `{key}` | {declared['description']} | {sort} |")
    return "\n".join(rows) + "\n"


def keys(schema):
    """The root's keys, then those of every object that it is made of."""
    whole = schema.get("items", schema)
    text = f"\n{schema['description']}\n\n" if whole is not schema or "properties" in schema else ""
    text += table(whole) if "properties" in whole else ""
    for name, thing in schema.get("$defs", {}).items():
        text += f"\n### {words_of(name)}\n\n{thing['description']}\n"
        if name != "values":  # these are the glossary's
            text += "\n" + table(thing)
    return text + "\n"


def values(schema):
    rows = [f"| `{key}` | {declared['description']} |\n"
            for key, declared in schema["$defs"]["values"]["properties"].items()]
    return "\n| value | meaning |\n| --- | --- |\n" + "".join(rows) + "\n"


def written(root, page):
    def block(found):
        schema = json.loads((root / f"docs/json/{found[2]}.schema.json").read_text(encoding="utf-8"))
        return f"<!-- {found[1]}: {found[2]} -->\n{globals()[found[1]](schema)}<!-- end of keys -->\n"

    return BLOCK.sub(block, page)


def names_missing(root):
    """Schemas that no marker of docs/json.md asks for."""
    asked = {found[2] for found in BLOCK.finditer((root / PAGES[0]).read_text(encoding="utf-8"))}
    files = (root / "docs/json").glob("*.schema.json")
    return sorted({file.name.removesuffix(".schema.json") for file in files} ^ asked)


def main():
    checks = sys.argv[1] == "--check"
    root = pathlib.Path(sys.argv[-1])
    wrong = [f"docs/json.md and docs/json do not both have {name}" for name in names_missing(root)]
    for name in PAGES:
        page = (root / name).read_text(encoding="utf-8")
        if (new := written(root, page)) == page:
            continue
        if checks:
            wrong.append(f"{name} is not what the schemas say: cli/json_page.py {root}")
        else:
            (root / name).write_text(new, encoding="utf-8")
    print("\n".join(wrong))
    return 1 if wrong else 0


if __name__ == "__main__":
    sys.exit(main())
