#!/bin/sh
# Does the library export what is pinned, under the versions that are pinned, and nothing else?
#
#     symbols.sh LIBRARY PINNED
set -eu
library=${1:?usage: symbols.sh LIBRARY PINNED}
pinned=${2:?usage: symbols.sh LIBRARY PINNED}
nm --dynamic --defined-only --with-symbol-versions "$library" | awk '$2 != "A" { print $3 }' |
    LC_ALL=C sort | diff "$pinned" -
