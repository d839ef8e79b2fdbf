#!/usr/bin/python3
"""The house rules about files: who may include and name what, where a library shows, how long a thing may be.

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
STAGES_OF_THE_LIBRARY = LEFT + ("reel", "choose", "sheet", "plugin")

ONE_SOURCE = 1  # the library is included in at most one .cpp file of the folder
ANY_SOURCE = 1000  # in .cpp files only, as many as need it


class Folder(NamedTuple):
    """What the files of one folder may include and name besides each other, the standard library and GSL."""

    includes: tuple = ()  # folders of ours
    libraries: dict = {}  # library: in how many .cpp files
    headers: tuple = ()  # single headers of other folders


# What a finished piece is made of, besides what `cut` itself declares: the typed parts of its ends and the
# words for them, the rope it is of, and where a figure comes from.
MADE_OF = (
    "libsplice/allowance/action.h",
    "libsplice/allowance/end.h",
    "libsplice/allowance/facts.h",
    "libsplice/allowance/kind.h",
    "libsplice/allowance/name_table.h",
    "libsplice/allowance/names.h",
    "libsplice/allowance/values.h",
    "libsplice/allowance/working.h",
    "libsplice/catalogue/citation.h",
    "libsplice/catalogue/rope.h",
    "libsplice/catalogue/rope_stretch.h",
    "libsplice/catalogue/source.h",
    "libsplice/catalogue/vocabulary.h",
    "libsplice/job/line.h",
    "libsplice/mechanics/rope/stretch.h",
)


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
    "choose": Folder(LEFT + ("reel",), {"COIN-OR": ONE_SOURCE}),
    "sheet": Folder(
        ("base", "units", "cut", "reel", "choose"),
        {"JSON": ONE_SOURCE, "Boost.Geometry": ONE_SOURCE, "QR code": ONE_SOURCE},
        MADE_OF,
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
FULLEST_FOLDER = 24

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


def may_use(own, other, header):
    """Whether the table lets a file of the folder `own` use that header of the folder `other`."""
    row = FOLDERS[own]
    return other == own or other in row.includes or header.as_posix() in row.headers


def check_include_of_ours(root, file, line, name):
    own = folder_of(file.path)
    target = find_ours(root, file, name)
    if target is None:
        yield Finding(
            str(file.path), line, "unknown file", f'no file "{name}": write "libsplice/<stage>/<file>.h"'
        )
        return
    other = folder_of(target)
    if not may_use(own, other, target):
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


# --- Names ---------------------------------------------------------------------------------------

# In clang-formatted code what is declared for others begins its line.
DECLARED_TYPE = re.compile(r"^(?:enum class|enum|class|struct|using)\s+(\w+)(?=[^;]*[{;=:])", re.MULTILINE)
DECLARED_FUNCTION = re.compile(
    r"^(?:\[\[nodiscard\]\]\s+)?(?:[\w:<>,*&]+\s+)+[*&]?([a-z]\w+)\(", re.MULTILINE
)
NOT_TYPES = {"return", "else", "namespace", "template", "case", "new", "delete", "using", "static_assert"}
NAME = re.compile(r"(?<![\w.])(?<!->)(?<!::)([A-Za-z_]\w+)\b(\s*\()?")
FORWARD = re.compile(r"^(?:class|struct)\s+\w+;", re.MULTILINE)


def declared_names(file):
    """The types and the free functions that a header declares at the top level of its namespace."""
    code = FORWARD.sub("", bare_code(file.text))
    types = set(DECLARED_TYPE.findall(code))
    functions_of = {
        found[1] for found in DECLARED_FUNCTION.finditer(code) if found[0].split()[0] not in NOT_TYPES
    }
    return types, functions_of - NOT_TYPES


def own_types(code):
    return set(re.findall(r"\b(?:enum class|enum|class|struct|using|typename)\s+(\w+)\b(?!;)", code))


def own_names(code):
    """What a source declares itself, at any depth: names that need not come from a header."""
    values = re.findall(r"[\w>&*\]]\s+[*&]?([a-z]\w*)\s*(?:[({;=,)]|\[|:[^:])", code)
    return own_types(code) | set(values)


class NameTable:
    """Which headers declare a name. A name that several folders declare is settled by none of them."""

    def __init__(self, files):
        self.places = {}
        for file in files:
            folder = folder_of(file.path)
            if file.is_header and folder and folder != C_HEADERS:
                types, functions_of = declared_names(file)
                for name in types | functions_of:
                    self.places.setdefault(name, set()).add((folder, file.path))
                self.functions = getattr(self, "functions", set()) | (functions_of - types)

    def forbidden(self, own, name):
        """The header that declares a name which the folder may not use, or None."""
        places = self.places.get(name, ())
        if not places or any(may_use(own, folder, path) for folder, path in places):
            return None
        return min(path for _, path in places)


def check_names(files):
    table = NameTable(files)
    nested = {}  # what the headers of a folder declare at any depth
    for file in files:
        if file.is_header:
            nested.setdefault(folder_of(file.path), set()).update(own_names(bare_code(file.text)))
    for file in files:
        own = folder_of(file.path)
        if own is None or own == C_HEADERS or own.startswith("abi"):
            continue
        code = bare_code(file.text)
        known = None
        seen = set()
        for found in NAME.finditer(code):
            name, call = found[1], found[2]
            if name in seen or name not in table.places or (name in table.functions and not call):
                continue
            seen.add(name)
            header = table.forbidden(own, name)
            if header is None:
                continue
            known = own_names(code) | nested.get(own, set()) if known is None else known
            if name in known:
                continue
            line = code.count("\n", 0, found.start()) + 1
            yield Finding(str(file.path), line, "name", f"{own} may not name {name} ({header})")


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


# --- Rooms ---------------------------------------------------------------------------------------

OPENING = re.compile(r"// \S.*|/\* \S.*")


def check_folders(files):
    folders = {}
    for file in files:
        folders.setdefault(file.path.parent, []).append(file)
    for folder, inside in folders.items():
        if len(inside) > FULLEST_FOLDER:
            sentence = f"{len(inside)} source files, over {FULLEST_FOLDER}: part the folder by idea"
            yield Finding(str(folder), 1, "flat", sentence)


def check_openings(files):
    """A source opens with a `//` line that says its one idea in a plain sentence."""
    for file in files:
        if not file.is_header and not OPENING.match(file.text):
            sentence = "open the file with a // line that says its one idea in a plain sentence"
            yield Finding(str(file.path), 1, "opening", sentence)


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
    yield from check_names(ours)
    yield from check_folders(ours + tests)
    yield from check_openings(ours + tests)


# --- Can it fail? --------------------------------------------------------------------------------

LONG_BODY = "".join(f"    x += {n};\n" for n in range(LONGEST_FUNCTION))

GOOD_TREE = {
    "libsplice/base/CMakeLists.txt": "target_sources(core PRIVATE document.cpp)\n",
    "libsplice/base/fault.h": "#include <gsl/assert>\n#include <string>\n",
    "libsplice/base/document.cpp": '// A document.\n#include "libsplice/base/fault.h"\n#include <toml++/toml.h>\n',
    "libsplice/units/read.h": '#include "libsplice/base/fault.h"\n',
    "libsplice/abi/include/splice.h": '#include "splice_types.h"\n',
    "libsplice/abi/include/splice_types.h": "#include <stdint.h>\n",
    "libsplice/abi/sqlite/CMakeLists.txt": "table.cpp\n",
    "libsplice/abi/sqlite/table.cpp": (
        '// A table.\n#include "libsplice/abi/include/splice.h"\n#include <sqlite3ext.h>\n'
    ),
    "libsplice/cut/table.h": "constexpr Row rows[] = {\n" + "    {1, 2},\n" * 80 + "};\n",
    "libsplice/allowance/end.h": "struct Row {};\n",
    "libsplice/allowance/book.h": "class Book {};\n[[nodiscard]] const Book& open_book(int x);\n",
    "libsplice/sheet/own.h": (
        '#include "libsplice/allowance/end.h"\n'
        "class Book;\nstruct Sheet {\n    struct Book {};\n    Row row;\n    int open_book;\n};\n"
    ),
    "libsplice/sheet/known.h": "Name text();\n",
    "libsplice/allowance/names.h": "class Name {};\n",
    "tests/base/CMakeLists.txt": "libsplice_test(base fault_test.cpp)\n",
    "tests/base/fault_test.cpp": "// A test.\n#include <gtest/gtest.h>\n",
}

# path: (text, what must be reported there)
BAD_TREE = {
    "notes.txt": ("", ["top level"]),
    "libsplice/stray.h": ("", ["no stage"]),
    "libsplice/misc/stray.h": ("", ["no stage"]),
    "libsplice/base/CMakeLists.txt": (
        "file(GLOB sources *.cpp)\none.cpp two.cpp unlisted.cpp.in\n", ["glob"]),
    "libsplice/base/one.cpp": ("// One.\n#include <toml++/toml.h>\n", ["one source"]),
    "libsplice/base/two.cpp": ("#include <toml++/toml.h>\n", ["opening"]),
    "libsplice/base/unlisted.cpp": ("//\n", ["not listed", "opening"]),
    "libsplice/base/right.h": ('#include "libsplice/units/read.h"\n', ["layer"]),
    "libsplice/units/read.h": ("#include <boost/math/tools/roots.hpp>\n", ["header"]),
    "libsplice/units/near.h": ('#include "read.h"\n', ["unknown file"]),
    "libsplice/units/odd.h": ("#include <zlib.h>\n", ["unknown library"]),
    "libsplice/job/line.h": ("", []),
    "libsplice/catalogue/rope.h": ('#include "libsplice/job/line.h"\n', ["layer"]),
    "libsplice/sheet/CMakeLists.txt": ("write.cpp\n", []),
    "libsplice/sheet/write.cpp": (
        "// A sheet.\n#include <csv.h>\nvoid write(const Book& book) { open_book(1); }\n",
        ["library", "name", "name"]),
    "libsplice/allowance/book.h": ("class Book {};\n[[nodiscard]] const Book& open_book(int x);\n", []),
    "libsplice/sheet/read_book.h": ('#include "libsplice/allowance/book.h"\n', ["layer"]),
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
        '// The command.\n#include "libsplice/abi/include/splice.h"\n'
        'const char* text() { return "{"; } // {\n'
        f"int main() {{\n{LONG_BODY}}}\n",
        ["layer", "long function"]),
    "tests/base/CMakeLists.txt": ("", []),
    "tests/base/fault_test.cpp": ("// A test.\n", ["not listed"]),
    "libsplice/units/full": ("", ["flat"]),
}  # fmt: skip
FULL_FOLDERS = {"libsplice/units/full"}
FULL = {f"libsplice/units/full/part_{n}.h": "" for n in range(FULLEST_FOLDER + 1)}


def findings_in(tree):
    with tempfile.TemporaryDirectory() as name:
        root = Path(name)
        for path, text in tree.items():
            (root / path).parent.mkdir(parents=True, exist_ok=True)
            (root / path).write_text(text)
        return list(check_tree(root))


def self_test():
    good = findings_in(GOOD_TREE)
    bad = findings_in({path: text for path, (text, _) in BAD_TREE.items() if path not in FULL_FOLDERS} | FULL)
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
