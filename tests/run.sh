#!/bin/sh
# Builds and passes every test as released; with --all, under the address and undefined-behaviour
# sanitizers first. Installs what is missing. It stops at the first build or run that fails, and ends
# in ctest's own closing lines.
set -eu
root=$(CDPATH= cd -- "$(dirname -- "$0")/.." && pwd)
. "$root/.ci/setup.sh"

case "$*" in
"") variants=release ;;
--all) variants="asan release" ;;
*)
    say "Usage: sh tests/run.sh [--all]"
    exit 2
    ;;
esac

install_packages build test
for variant in $variants; do
    build "$variant" all
    say "Tests: $variant"
    ctest --test-dir "$root/build/$variant" -j "$(nproc)" --output-on-failure --no-tests=error
done
