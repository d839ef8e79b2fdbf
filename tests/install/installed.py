#!/usr/bin/python3
"""What is installed, put to use as its users would.

    installed.py WHAT --build DIR --source DIR --cmake CMAKE --cc CC --cxx CXX

WHAT is one of the functions below that stand under TESTS; `tree` comes first, since the others use
what it installs.
"""

import argparse
import os
import re
import shutil
import subprocess
import sys
import tempfile
from pathlib import Path

COMPONENTS = {  # component: what its files look like, from the prefix
    "runtime": r"lib[^ ]*/libsplice\.so\.\d+(\.\d+\.\d+)?",
    "development": r"include/libsplice/splice\w*\.h|lib[^ ]*/libsplice\.so"
    r"|lib[^ ]*/pkgconfig/libsplice\.pc|lib[^ ]*/cmake/libsplice/libsplice\w+(-\w+)?\.cmake",
    "tool": r"bin/splice|share/man/man[135]/splice[\w-]*\.[135]"
    r"|share/(bash-completion/completions|zsh/vendor-completions|fish/vendor_completions\.d)/_?splice(\.fish)?",
    "tables": r"share/libsplice/(tables|published)/[\w/-]+\.toml",
    "docs": r"share/doc/libsplice/[\w/.-]+",
    "sqlite": r"lib[^ ]*/libsplice/splice_sqlite\.so",
}
C_HEADERS = {"splice.h", "splice_base.h", "splice_book.h", "splice_plugin.h"}


class Site:
    """Where things are, and a clean environment in which to run them."""

    def __init__(self, options):
        self.build, self.source = Path(options.build), Path(options.source)
        self.cmake, self.cc, self.cxx = options.cmake, options.cc, options.cxx
        self.top = self.build / "installed"
        self.prefix = self.top / "moved"
        self.hosts = self.source / "docs/examples/hosts"
        self.environment = {
            name: value for name, value in os.environ.items() if not name.startswith("LIBSPLICE")
        }

    @property
    def shared_library(self):
        return next(self.prefix.rglob("libsplice.so.[0-9]"))

    def run(self, *command, status=0, given="", **more):
        """Standard output of a command that has to end with `status`; `given` is its input."""
        environment = self.environment | {key: str(value) for key, value in more.items()}
        command = [str(word) for word in command]
        run = subprocess.run(
            command, env=environment, input=given, capture_output=True, text=True, check=False
        )
        if run.returncode != status:
            sys.exit(f"{' '.join(command)} ended with {run.returncode}:\n{run.stdout}{run.stderr}")
        return run.stdout


def check(holds, sentence):
    if not holds:
        sys.exit(sentence)


def files_in(folder):
    return sorted(path.relative_to(folder) for path in folder.rglob("*") if not path.is_dir())


# --- The tree ------------------------------------------------------------------------------------


def tree(site):
    """Installs everything, moves it elsewhere, and looks through it."""
    shutil.rmtree(site.top, ignore_errors=True)
    site.run(site.cmake, "--install", site.build, "--prefix", site.top / "first")
    (site.top / "first").rename(site.prefix)
    wanted = re.compile("|".join(COMPONENTS.values()))
    for file in files_in(site.prefix):
        check(wanted.fullmatch(str(file)), f"{file} is of no component")
        content = (site.prefix / file).read_bytes()
        for place in (site.source, site.build):
            check(str(place).encode() not in content, f"{file} names {place}")
    headers = {path.name for path in (site.prefix / "include").rglob("*.h")}
    check(headers == C_HEADERS, f"the headers installed are {headers}")


def destdir(site):
    """Each component installs its own files and no others, under DESTDIR."""
    cache = (site.build / "CMakeCache.txt").read_text()
    prefix = re.search(r"^CMAKE_INSTALL_PREFIX:PATH=/(.*)$", cache, re.MULTILINE)[1]
    for component, pattern in COMPONENTS.items():
        with tempfile.TemporaryDirectory() as folder:
            site.run(site.cmake, "--install", site.build, "--component", component, DESTDIR=folder)
            files = files_in(Path(folder) / prefix)
            check(files, f"the component {component} is empty")
            check(len(files) == len(files_in(Path(folder))), f"{component} leaves the prefix")
            for file in files:
                check(re.fullmatch(pattern, str(file)), f"{file} is installed by {component}")


# --- Those who use it ----------------------------------------------------------------------------


def tool(site):
    """The program finds the tables and the published values that were installed beside it."""
    program = site.prefix / "bin/splice"
    listed = site.run(program, "list", "tables", "--format", "json")
    check(str(site.prefix / "share/libsplice/tables") in listed, f"other tables are used: {listed}")
    site.run(program, "cut", site.prefix / "share/doc/libsplice/examples/fleet.csv")
    check(site.run(program, "check").endswith(" 0 failed\n"), "splice check fails")
    for page in ("splice.1", "splice-cut.1", "splice-job.5", "splice-tables.5", "splice-plug-in.3"):
        file = site.prefix / "share/man" / f"man{page[-1]}" / page
        check(file.is_file(), f"the page {file} is not installed")
    for file in ("bash-completion/completions/splice", "zsh/vendor-completions/_splice",
                 "fish/vendor_completions.d/splice.fish"):
        check((site.prefix / "share" / file).is_file(), f"the completion {file} is not installed")


def c(site):
    with tempfile.TemporaryDirectory() as folder:
        program = Path(folder) / "cut_line"
        found = site.shared_library.parent / "pkgconfig"
        flags = site.run("pkg-config", "--cflags", "--libs", "libsplice", PKG_CONFIG_PATH=found).split()
        site.run(
            site.cc, "-std=c99", "-Wall", "-Wextra", "-pedantic", "-Werror",
            site.hosts / "c/cut_line.c", "-o", program, *flags,
        )  # fmt: skip
        said = site.run(program, LD_LIBRARY_PATH=site.shared_library.parent)
        check(said.endswith("cut outhaul at 2.685 m\n"), f"the host in C says: {said}")
        check("tail                         0.216000 m" in said, f"the host in C says: {said}")


def cpp_host(site, prefix):
    """The host in C++ finds the library below a folder."""
    with tempfile.TemporaryDirectory() as folder:
        where = ["-B", folder, f"-DCMAKE_PREFIX_PATH={prefix}", f"-DCMAKE_CXX_COMPILER={site.cxx}"]
        site.run(site.cmake, "-S", site.hosts / "cpp", *where)
        site.run(site.cmake, "--build", folder)
        said = site.run(Path(folder) / "eye_table")
        check("eye   8 mm: cannot be made, fault 3" in said, f"the host in C++ says: {said}")
        check(said.count("tail 216 mm") == 4, f"the host in C++ says: {said}")


def build_tree(site):
    """The folder in which the project is built serves like one in which it is installed."""
    cpp_host(site, site.build)


WHOLE = """cmake_minimum_required(VERSION 3.25)
project(whole LANGUAGES C CXX)
set(CMAKE_EXPORT_COMPILE_COMMANDS ON)
enable_testing()
add_subdirectory({source} libsplice)
add_executable(host {source}/docs/examples/hosts/c/cut_line.c)
target_link_libraries(host PRIVATE libsplice::splice)
foreach(target splice splice_command libsplice_reel libsplice_paper libsplice_sqlite test_base)
    if(TARGET ${{target}})
        message(FATAL_ERROR "the part has the target ${{target}}")
    endif()
endforeach()
get_directory_property(tests DIRECTORY {source} TESTS)
if(tests)
    message(FATAL_ERROR "the part has tests")
endif()
"""


def subproject(site):
    """As a part of another project: the C library alone, without the optimiser's library and what
    draws QR codes, and nothing of the whole project changed. It is set up and not built."""
    with tempfile.TemporaryDirectory() as folder:
        folder = Path(folder)
        (folder / "none").mkdir()
        (folder / "CMakeLists.txt").write_text(WHOLE.format(source=site.source))
        site.run(
            site.cmake, "-S", folder, "-B", folder / "build", "-G", "Ninja",
            f"-DCMAKE_C_COMPILER={site.cc}", f"-DCMAKE_CXX_COMPILER={site.cxx}",
            PKG_CONFIG_LIBDIR=folder / "none", PKG_CONFIG_PATH="",
        )  # fmt: skip
        cache = (folder / "build/CMakeCache.txt").read_text()
        check("CMAKE_BUILD_TYPE:STRING=\n" in cache, "the part sets the whole's build type")
        check(not (folder / "build/CPackConfig.cmake").exists(), "the part packages the whole")
        commands = (folder / "build/compile_commands.json").read_text()
        check("/libsplice/abi/" in commands, "the part has no C library")
        for word in ("-Wconversion", "-Werror", "/sheet/html/", "/reel/solver/", "/cli/"):
            check(word not in commands, f"{word} is in the whole's compile commands")
        rules = (folder / "build/libsplice/cmake_install.cmake").read_text()
        check("splice.h" not in rules, "the part installs its files with the whole")


def cpp(site):
    cpp_host(site, site.prefix)
    with tempfile.TemporaryDirectory() as folder:
        (Path(folder) / "CMakeLists.txt").write_text(
            "cmake_minimum_required(VERSION 3.16)\nproject(newer LANGUAGES NONE)\n"
            "find_package(libsplice 99.0 REQUIRED)\n"
        )
        site.run(site.cmake, "-S", folder, "-B", folder, f"-DCMAKE_PREFIX_PATH={site.prefix}", status=1)


def python(site):
    host = site.hosts / "python"
    said = site.run(sys.executable, host / "cut_job.py", site.shared_library, host / "job.csv")
    lines = said.splitlines()
    check(lines[0] == "outhaul: cut 2.685 m", f"the host in Python says: {said}")
    check(lines[1].startswith("too small an eye: fault 3"), f"the host in Python says: {said}")


def sqlite(site):
    extension = next(site.prefix.rglob("splice_sqlite.so"))

    def ask(sql, status=0):
        load = f".load {extension}"
        return site.run("sqlite3", "-bail", "-cmd", load, ":memory:", given=sql, status=status)

    script = (site.hosts / "sqlite/shop.sql").read_text()
    lines = ask(script).splitlines()
    check(lines[0] == "outhaul|2.685|", f"the first line is: {lines[0]}")
    check(lines[1].startswith("too small an eye||") and len(lines[1]) > 40, f"the second: {lines[1]}")
    check(lines[2].startswith("lacing|3.1") and lines[2].endswith("|"), f"the third: {lines[2]}")
    ledger = [line.split("|") for line in lines[3:]]
    check(["tail", "a", "0.216"] in [row[:3] for row in ledger], f"the ledger is: {ledger}")
    check(abs(sum(float(row[2]) for row in ledger) - 2.685) < 1e-9, f"it does not add up: {ledger}")
    for wrong in (
        "SELECT splice_cut_m('rope');",
        "SELECT splice_cut_m('ropee', 'demo-b12-hmpe-3');",
        "SELECT * FROM splice_ledger('rope');",
        "SELECT * FROM splice_ledger('ropee', 'demo-b12-hmpe-3');",
        "SELECT * FROM splice_ledger;",
    ):
        ask(wrong, status=1)
    refused = "'rope', 'demo-b12-hmpe-3', 'length', 'long'"
    check(ask(f"SELECT count(*) FROM splice_ledger({refused});") == "0\n", "a refused line has rows")


def pages(site):
    """The pages about hosts show the examples as they are."""
    for example in sorted(site.hosts.rglob("*.*")):
        if example.is_dir() or example.suffix == ".csv":
            continue
        page = site.source / "docs/hosts" / f"{example.parent.name}.md"
        shown = f"```\n{example.read_text()}```\n"
        text = re.sub(r"^```\w+$", "```", page.read_text(), flags=re.MULTILINE)
        check(shown in text, f"{page} does not show {example.name} as it is")


# --- Debian packages -----------------------------------------------------------------------------


def unpack(site, packages, root):
    """Without the right to install: the files alone. Returns how to take them off again."""
    for package in packages:
        site.run("dpkg-deb", "-x", package, root)
    return lambda: shutil.rmtree(root / "usr")


def install(site, packages, root):
    """As dpkg does it. The packages' scripts find a stand-in for ldconfig, which would go by the
    machine's own folders."""
    for folder in ("var/lib/dpkg/updates", "var/lib/dpkg/info", "var/stand-ins"):
        (root / folder).mkdir(parents=True)
    (root / "var/lib/dpkg/status").touch()
    called = root / "var/ldconfig-was-called"
    stand_in = root / "var/stand-ins/ldconfig"
    stand_in.write_text(f"#!/bin/sh\ntouch {called}\n")
    stand_in.chmod(0o755)
    path = f"{stand_in.parent}:{os.environ['PATH']}"
    dpkg = ["dpkg", f"--root={root}", "--log=/dev/null", "--force-depends", "--force-script-chrootless"]
    site.run(*dpkg, "--install", *packages, PATH=path)
    check(called.exists(), "the loader is not told of the new library")
    names = [package.name.split("_")[0] for package in packages]
    return lambda: site.run(*dpkg, "--purge", *names, PATH=path)


def packages(site):
    """The packages are put on, cut the demo, and come off without leaving a file."""
    with tempfile.TemporaryDirectory() as folder:
        made, root = Path(folder) / "made", Path(folder) / "root"
        root.mkdir()
        site.run(
            Path(site.cmake).with_name("cpack"), "--config", site.build / "CPackConfig.cmake",
            "-G", "DEB", "-B", made,
        )  # fmt: skip
        found = sorted(made.glob("*.deb"))
        check(len(found) == len(COMPONENTS), f"the packages are {[path.name for path in found]}")
        needs = site.run("dpkg-deb", "--field", next(made.glob("libsplice1_*")), "Depends")
        check("libc6" in needs and "libsplice-tables" in needs, f"the library depends on {needs}")
        take_off = (install if os.geteuid() == 0 else unpack)(site, found, root)
        demo = root / "usr/share/doc/libsplice/examples/fleet.csv"
        sheet = site.run(root / "usr/bin/splice", "cut", demo)
        check("lines not cut: 0" in sheet, "the packaged program does not cut the demo")
        take_off()
        left = [str(file) for file in files_in(root) if file.parts[0] != "var"]
        check(not left, f"left behind: {left}")


TESTS = (tree, destdir, build_tree, subproject, tool, c, cpp, python, sqlite, pages, packages)


def main():
    parser = argparse.ArgumentParser()
    parser.add_argument("what", choices=[test.__name__ for test in TESTS])
    for option in ("build", "source", "cmake", "cc", "cxx"):
        parser.add_argument(f"--{option}", required=True)
    options = parser.parse_args()
    next(test for test in TESTS if test.__name__ == options.what)(Site(options))


if __name__ == "__main__":
    main()
