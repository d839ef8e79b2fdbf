#!/bin/sh
# Builds and passes every test: all of them under the address and undefined-behaviour sanitizers,
# then, as released, all that run the program, the library and what is installed. The stages' own
# test programs are not built a second time. Installs what is missing first. It stops at the first
# build or run that fails, and ends in ctest's own closing lines.
set -eu
root=$(CDPATH= cd -- "$(dirname -- "$0")/.." && pwd)
. "$root/.ci/setup.sh"

install_packages build test
build asan all
build release all -DLIBSPLICE_UNIT_TESTS=OFF
for variant in asan release; do
    say "Tests: $variant"
    ctest --test-dir "$root/build/$variant" -j "$(nproc)" --output-on-failure --no-tests=error
done
