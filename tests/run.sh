#!/bin/sh
# Builds and passes every test, under the address and undefined-behaviour sanitizers and as released.
# Installs what is missing first. It stops at the first build or run that fails, and ends in ctest's
# own closing lines.
set -eu
root=$(CDPATH= cd -- "$(dirname -- "$0")/.." && pwd)
. "$root/.ci/setup.sh"

install_packages build test
for variant in asan release; do
    build "$variant" all
    say "Tests: $variant"
    ctest --test-dir "$root/build/$variant" -j "$(nproc)" --output-on-failure --no-tests=error
done
