#!/usr/bin/python3
"""The house rules about files: who may include what, where a library shows, how long a thing may be.

    layers.py [ROOT]      checks the source tree; prints `file:line: sentence`; 1 if anything is wrong
    layers.py --self-test checks a small bad tree and expects every rule to be reported
"""

import re
import sys
import tempfile
from pathlib import Path
from typing import NamedTuple

# --- The table -----------------------------------------------------------------------------------

LEFT = ("base", "units", "mechanics", "job", "catalogue", "allowance", "cut")
STAGES_OF_THE_LIBRARY = LEFT + ("reel", "sheet", "plugin")

ONE_SOURCE = 1  # the library is included in at most one .cpp file of the folder
ANY_SOURCE = 1000  # in .cpp files only, as many as need it


class Folder(NamedTuple):
    """What the files of one folder may include besides each other, the standard library and GSL."""

    includes: tuple = ()  # folders of ours
    libraries: dict = {}  # library: in how many .cpp files


FOLDERS = {
    "base": Folder((), {"toml++": ONE_SOURCE}),
    "units": Folder(("base",)),
    "mechanics": Folder(
        ("base", "units"), {"Boost.Geometry": ANY_SOURCE, "Boost.Math": ANY_SOURCE}
    ),
    "job": Folder(("base", "units"), {"csv": ONE_SOURCE}),
    "catalogue": Folder(("base", "units", "mechanics")),
    "allowance": Folder(("base", "units", "mechanics", "catalogue")),
    "cut": Folder(LEFT[:-1]),
    "reel": Folder(("base", "units", "cut"), {"COIN-OR": ONE_SOURCE}),
    "sheet": Folder(
        ("base", "units", "cut", "reel"),
        {"JSON": ONE_SOURCE, "Boost.Geometry": ONE_SOURCE, "QR code": ONE_SOURCE},
    ),
    "plugin": Folder(("base", "units", "catalogue", "allowance", "abi/include"), {"dl": ONE_SOURCE}),
    "abi/include": Folder(),
    "abi": Folder(STAGES_OF_THE_LIBRARY + ("abi/include",), {"dl": ONE_SOURCE}),
    "abi/sqlite": Folder(("abi/include",), {"SQLite": ANY_SOURCE}),
    "cli": Folder(STAGES_OF_THE_LIBRARY, {"Boost.Program_options": ONE_SOURCE}),
}

# Which library a header belongs to; the first pattern that fits counts.
LIBRARIES = (
    ("GSL", r"gsl/"),
    ("toml++", r"toml\+\+|toml\.h"),
    ("JSON", r"nlohmann/"),
    ("QR code", r"qrencode\.h"),
    ("csv", r"csv\.h"),
    ("Boost.Geometry", r"boost/geometry"),
    ("Boost.Math", r"boost/math"),
    ("Boost.Program_options", r"boost/program_options"),
    ("Boost", r"boost/"),
    ("gtest", r"gtest/|gmock/"),
    ("benchmark", r"benchmark/"),
    ("dl", r"dlfcn\.h$"),
    ("COIN-OR", r"coin/"),
    ("SQLite", r"sqlite3(ext)?\.h$"),
    ("POSIX", r"(unistd|fcntl|signal|poll|pthread)\.h$|sys/\w+\.h$"),
    ("standard", r"[a-z_]+$"),
    ("C standard", r"(stdint|stddef)\.h$"),
)
ALLOWED_IN_HEADERS = {"standard", "GSL"}
ALLOWED_IN_SOURCES = {"standard", "C standard", "POSIX", "GSL"}

C_HEADERS = "abi/include"
ALLOWED_IN_C_HEADERS = {"stdint.h"}

TOP_LEVEL = {
    "CMakeLists.txt", "README.md", "DEVELOPERS.md", "libsplice", "cli", "tables", "tests", "docs",
}  # fmt: skip
BUILT = "build"

LONGEST_FILE = 400
LONGEST_FUNCTION = 70

# --- Reading -------------------------------------------------------------------------------------

HEADERS = {".h"}
SOURCES = {".cpp", ".c"}
INCLUDE = re.compile(r'^\s*#\s*include\s*([<"])([^>"]+)[>"]')


class Finding(NamedTuple):
    path: str
    line: int
    rule: str
    sentence: str


class File(NamedTuple):
    path: Path  # from the root
    text: str

    @property
    def is_header(self):
        return self.path.suffix in HEADERS

    def includes(self):
        """(line, quoted or not, name) of every include."""
        for number, line in enumerate(self.text.splitlines(), 1):
            if found := INCLUDE.match(line):
                yield number, found[1] == '"', found[2]


def files_under(root, *tops):
    for top in tops:
        for path in sorted((root / top).rglob("*")):
            if path.is_file() and path.suffix in HEADERS | SOURCES:
                yield File(path.relative_to(root), path.read_text(encoding="utf-8"))


def folder_of(path):
    """The row of the table that a path from the root belongs to, or None."""
    parts = path.parts
    if parts[0] == "cli":
        return "cli"
    if parts[0] != "libsplice" or len(parts) < 3:
        return None
    inside = "/".join(parts[1:-1])
    rows = [row for row in FOLDERS if inside == row or inside.startswith(row + "/")]
    return max(rows, key=len, default=None)


def library_of(header):
    return next((name for name, pattern in LIBRARIES if re.match(pattern, header)), None)


# --- Includes ------------------------------------------------------------------------------------


def find_ours(root, file, name):
    """The file of ours that an include in quotes means, as a path from the root, or None."""
    places = [root / name]
    if folder_of(file.path) in (C_HEADERS, "abi", "plugin"):
        places += [root / file.path.parent / name, root / "libsplice" / C_HEADERS / name]
    found = next((place for place in places if place.is_file()), None)
    return found.relative_to(root) if found else None


def check_include_of_ours(root, file, line, name):
    own = folder_of(file.path)
    target = find_ours(root, file, name)
    if target is None:
        yield Finding(
            str(file.path), line, "unknown file", f'no file "{name}": write "libsplice/<stage>/<file>.h"'
        )
        return
    other = folder_of(target)
    if other != own and other not in FOLDERS[own].includes:
        yield Finding(str(file.path), line, "layer", f"{own} may not include {other} ({name})")


def check_include_of_library(file, line, name):
    own = folder_of(file.path)
    library = library_of(name)
    at = (str(file.path), line)
    if library is None:
        yield Finding(*at, "unknown library", f"<{name}> is of no library that layers.py knows")
    elif own == C_HEADERS:
        if name not in ALLOWED_IN_C_HEADERS:
            yield Finding(*at, "C header", f"a C header includes <stdint.h> only, not <{name}>")
    elif file.is_header:
        if library not in ALLOWED_IN_HEADERS:
            yield Finding(*at, "header", f"a header may not include {library} (<{name}>)")
    elif library not in ALLOWED_IN_SOURCES and library not in FOLDERS[own].libraries:
        yield Finding(*at, "library", f"{own} may not use {library} (<{name}>)")


def check_includes(root, files):
    for file in files:
        if folder_of(file.path) is None:
            yield Finding(str(file.path), 1, "no stage", "this file is in no folder of the table")
            continue
        for line, quoted, name in file.includes():
            if quoted:
                yield from check_include_of_ours(root, file, line, name)
            else:
                yield from check_include_of_library(file, line, name)


def check_owners(files):
    """A library that belongs into one .cpp is in one."""
    users = {}
    for file in files:
        for _, quoted, name in file.includes():
            if not quoted and not file.is_header:
                users.setdefault((folder_of(file.path), library_of(name)), set()).add(file.path)
    for (own, library), paths in users.items():
        most = FOLDERS[own].libraries.get(library) if own else None
        if most is not None and len(paths) > most:
            names = ", ".join(sorted(path.name for path in paths))
            yield Finding(
                str(min(paths)), 1, "one source", f"{library} belongs into one .cpp of {own}: {names}"
            )


# --- CMake ---------------------------------------------------------------------------------------


def is_listed(root, path):
    """Whether a CMakeLists.txt in the file's folder or above names it."""
    for folder in list(path.parents):
        cmake = root / folder / "CMakeLists.txt"
        name = re.escape(path.relative_to(folder).as_posix())
        if cmake.is_file() and re.search(rf"(?<![\w./-]){name}(?![\w.-])", cmake.read_text()):
            return True
    return False


def check_cmake(root, files):
    for file in files:
        if not file.is_header and not is_listed(root, file.path):
            yield Finding(str(file.path), 1, "not listed", "no CMakeLists.txt lists this source")
    for top in ("libsplice", "cli", "tests"):
        for cmake in sorted((root / top).rglob("CMakeLists.txt")):
            for number, line in enumerate(cmake.read_text().splitlines(), 1):
                if re.search(r"\bGLOB(_RECURSE)?\b", line):
                    path = str(cmake.relative_to(root))
                    yield Finding(path, number, "glob", "list the sources, do not glob them")


# --- Lengths -------------------------------------------------------------------------------------

NOT_CODE = re.compile(
    r"""
      R"(?P<mark>[^(\s]*)\(.*?\)(?P=mark)"      # raw string
    | //[^\n]* | /\*.*?\*/                      # comments
    | "(?:\\.|[^"\\\n])*"                       # string
    | (?<![0-9a-zA-Z_])'(?:\\.|[^'\\\n])+'      # character, not the mark between digits
    | ^[ \t]*\#(?:\\\n|[^\n])*                  # preprocessor
    """,
    re.VERBOSE | re.DOTALL | re.MULTILINE,
)
CONTAINER = re.compile(
    r"\s*(template\b[^;]*>\s*)?(inline\s+)?(namespace|class|struct|union|enum|extern\b)(?!.*\)\s*$)",
    re.DOTALL,
)


def bare_code(text):
    """The code with comments, strings and preprocessor lines blanked, line for line."""
    return NOT_CODE.sub(lambda found: re.sub(r"[^\n]", " ", found[0]), text)


def functions(text):
    """(first line, last line, head) of every function of clang-formatted code."""
    code = bare_code(text)
    open_blocks = []  # for each open brace whether it holds declarations
    head, first = "", 0
    line = 1
    for at, char in enumerate(code):
        line += char == "\n"
        declares = all(open_blocks)
        if char == "{":
            open_blocks.append(declares and bool(CONTAINER.match(head)))
            if open_blocks[-1]:
                head = ""
        elif char == "}" and open_blocks:
            was_container = open_blocks.pop()
            goes_on = code[at + 1 :].lstrip()[:1] in (",", "{", ")")  # a braced initialiser
            if all(open_blocks) and not goes_on:
                if not was_container and ")" in head:
                    yield first, line, " ".join(head.split())
                head = ""
        elif declares and char == ";":
            head = ""
        elif declares:
            if not head.strip():
                head, first = "", line
            head += char


def check_lengths(files):
    for file in files:
        lines = file.text.count("\n")
        if lines > LONGEST_FILE:
            sentence = f"{lines} lines, over {LONGEST_FILE}: two things live here together"
            yield Finding(str(file.path), 1, "long file", sentence)
        for first, last, head in functions(file.text):
            length = last - first + 1
            if length > LONGEST_FUNCTION:
                sentence = f"{length} lines, over {LONGEST_FUNCTION}: {head[:60]}"
                yield Finding(str(file.path), first, "long function", sentence)


# --- The whole -----------------------------------------------------------------------------------


def check_top_level(root):
    for path in sorted(root.iterdir()):
        if not path.name.startswith(".") and path.name not in TOP_LEVEL | {BUILT}:
            yield Finding(path.name, 1, "top level", "the top level holds nothing but its eight names")


def check_tree(root):
    ours = list(files_under(root, "libsplice", "cli"))
    tests = list(files_under(root, "tests"))
    yield from check_top_level(root)
    yield from check_includes(root, ours)
    yield from check_owners(ours)
    yield from check_cmake(root, ours + tests)
    yield from check_lengths(ours)


# --- Can it fail? --------------------------------------------------------------------------------

LONG_BODY = "".join(f"    x += {n};\n" for n in range(LONGEST_FUNCTION))

GOOD_TREE = {
    "libsplice/base/CMakeLists.txt": "target_sources(core PRIVATE document.cpp)\n",
    "libsplice/base/fault.h": "#include <gsl/assert>\n#include <string>\n",
    "libsplice/base/document.cpp": '#include "libsplice/base/fault.h"\n#include <toml++/toml.h>\n',
    "libsplice/units/read.h": '#include "libsplice/base/fault.h"\n',
    "libsplice/abi/include/splice.h": '#include "splice_types.h"\n',
    "libsplice/abi/include/splice_types.h": "#include <stdint.h>\n",
    "libsplice/abi/sqlite/CMakeLists.txt": "table.cpp\n",
    "libsplice/abi/sqlite/table.cpp": (
        '#include "libsplice/abi/include/splice.h"\n#include <sqlite3ext.h>\n'
    ),
    "libsplice/cut/table.h": "constexpr Row rows[] = {\n" + "    {1, 2},\n" * 80 + "};\n",
    "tests/base/CMakeLists.txt": "libsplice_test(base fault_test.cpp)\n",
    "tests/base/fault_test.cpp": "#include <gtest/gtest.h>\n",
}

# path: (text, what must be reported there)
BAD_TREE = {
    "notes.txt": ("", ["top level"]),
    "libsplice/stray.h": ("", ["no stage"]),
    "libsplice/misc/stray.h": ("", ["no stage"]),
    "libsplice/base/CMakeLists.txt": (
        "file(GLOB sources *.cpp)\none.cpp two.cpp unlisted.cpp.in\n", ["glob"]),
    "libsplice/base/one.cpp": ("#include <toml++/toml.h>\n", ["one source"]),
    "libsplice/base/two.cpp": ("#include <toml++/toml.h>\n", []),
    "libsplice/base/unlisted.cpp": ("", ["not listed"]),
    "libsplice/base/right.h": ('#include "libsplice/units/read.h"\n', ["layer"]),
    "libsplice/units/read.h": ("#include <boost/math/tools/roots.hpp>\n", ["header"]),
    "libsplice/units/near.h": ('#include "read.h"\n', ["unknown file"]),
    "libsplice/units/odd.h": ("#include <zlib.h>\n", ["unknown library"]),
    "libsplice/job/line.h": ("", []),
    "libsplice/catalogue/rope.h": ('#include "libsplice/job/line.h"\n', ["layer"]),
    "libsplice/sheet/CMakeLists.txt": ("write.cpp\n", []),
    "libsplice/sheet/write.cpp": ("#include <csv.h>\n", ["library"]),
    "libsplice/sheet/read.h": ("#include <nlohmann/json.hpp>\n", ["header"]),
    "libsplice/sheet/test.h": ("#include <gtest/gtest.h>\n", ["header"]),
    "libsplice/abi/include/splice.h": (
        '#include <string.h>\n#include "libsplice/base/right.h"\n', ["unknown library", "layer"]),
    "libsplice/abi/include/splice_types.h": ("#include <stddef.h>\n", ["C header"]),
    "libsplice/abi/sqlite/table.h": (
        '#include "libsplice/cut/sum.h"\n#include <sqlite3.h>\n', ["layer", "header"]),
    "libsplice/cut/long.h": ("\n" * (LONGEST_FILE + 1), ["long file"]),
    "libsplice/cut/sum.h": (
        f"namespace a {{\nclass Sum {{\n  public:\n    explicit Sum(int x) : x_{{x}} {{\n{LONG_BODY}    }}\n}};\n}}\n",
        ["long function"]),
    "cli/CMakeLists.txt": ("main.cpp\n", []),
    "cli/main.cpp": (
        '#include "libsplice/abi/include/splice.h"\n'
        'const char* text() { return "{"; } // {\n'
        f"int main() {{\n{LONG_BODY}}}\n",
        ["layer", "long function"]),
    "tests/base/CMakeLists.txt": ("", []),
    "tests/base/fault_test.cpp": ("", ["not listed"]),
}  # fmt: skip


def findings_in(tree):
    with tempfile.TemporaryDirectory() as name:
        root = Path(name)
        for path, text in tree.items():
            (root / path).parent.mkdir(parents=True, exist_ok=True)
            (root / path).write_text(text)
        return list(check_tree(root))


def self_test():
    good = findings_in(GOOD_TREE)
    bad = findings_in({path: text for path, (text, _) in BAD_TREE.items()})
    expected = sorted((path, rule) for path, (_, rules) in BAD_TREE.items() for rule in rules)
    reported = sorted((finding.path, finding.rule) for finding in bad)
    for finding in good:
        print(f"a good tree is blamed: {finding}")
    for path, rule in expected:
        if (path, rule) not in reported:
            print(f"not reported: {path}: {rule}")
    for path, rule in reported:
        if (path, rule) not in expected:
            print(f"reported for nothing: {path}: {rule}")
    print(f"{len(expected)} faults planted, {len(reported)} reported")
    return 0 if not good and reported == expected else 1


def main(arguments):
    if arguments == ["--self-test"]:
        return self_test()
    root = Path(arguments[0]) if arguments else Path(__file__).resolve().parents[2]
    findings = list(check_tree(root))
    for finding in findings:
        print(f"{finding.path}:{finding.line}: {finding.rule}: {finding.sentence}")
    return 1 if findings else 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
