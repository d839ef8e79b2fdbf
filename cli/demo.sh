#!/bin/sh
# Works out the demo: installs what is missing, builds, and prints the cut sheet of a small fleet on
# standard output. Everything else goes to standard error. Arguments are handed on to `splice cut`:
#   sh cli/demo.sh --ledger
set -eu
root=$(CDPATH= cd -- "$(dirname -- "$0")/.." && pwd)
. "$root/.ci/setup.sh"

install_packages build test
build release splice
exec "$root/build/release/cli/splice" cut "$root/docs/examples/sailing-school.csv" "$@"
