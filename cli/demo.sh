#!/bin/sh
# Works out the demo: installs what is missing, builds, prints the table of one boat on standard
# output, and writes the cards of that boat and of a fleet. Everything else goes to standard error.
# Arguments are handed on to `splice cut`, which then prints that boat and nothing more:
#   sh cli/demo.sh --ledger
set -eu
root=$(CDPATH= cd -- "$(dirname -- "$0")/.." && pwd)
. "$root/.ci/setup.sh"

install_packages build test
build release splice
splice=$root/build/release/cli/splice
jobs=$root/docs/examples
[ $# -eq 0 ] || exec "$splice" cut "$jobs/boat.csv" "$@"

cards=$root/build/demo
mkdir -p "$cards"
"$splice" cut "$jobs/boat.csv"
for job in boat fleet; do
    "$splice" cut "$jobs/$job.csv" --format html --output "$cards/$job.html"
done
cat <<END

The cards to print are in
  $cards/boat.html    of this boat
  $cards/fleet.html   of ten boats

Try next
  $splice show $jobs/boat.csv "trapeze line"
  $splice reel $jobs/boat.csv
  $splice new job.csv && $splice cut job.csv
END
