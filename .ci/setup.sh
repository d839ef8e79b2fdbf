# What cli/demo.sh, tests/run.sh and .ci/run share: packages and builds. It is sourced, with `root`
# set to the top of the source tree. All it prints goes to standard error.

say() {
    printf '%s\n' "$*" >&2
}

# The packages that .ci/packages lists for the needs given: packages_for build test
packages_for() {
    for need in "$@"; do
        sed -n "s/ *# $need:.*//p" "$root/.ci/packages"
    done
}

# Those of the packages given that the machine does not have.
missing_of() {
    for package in "$@"; do
        state=$(dpkg-query -W -f='${db:Status-Status}' "$package" 2>/dev/null) || state=absent
        [ "$state" = installed ] || printf '%s ' "$package"
    done
}

# Installs what is missing for the needs given. With nothing missing it uses no network.
install_packages() {
    if ! command -v dpkg-query >/dev/null; then
        say "This script sets up Debian 12. Elsewhere, install what .ci/packages lists and build with CMake."
        return 1
    fi
    missing=$(missing_of $(packages_for "$@"))
    [ -n "$missing" ] || return 0
    if [ "$(id -u)" -eq 0 ]; then
        as_root=
    elif command -v sudo >/dev/null; then
        as_root=sudo
    else
        say "These packages are missing: $missing"
        say "Installing them takes root or sudo. Run this as root: apt-get install $missing"
        return 1
    fi
    say "Installing: $missing"
    $as_root apt-get update -q >&2 &&
        $as_root env DEBIAN_FRONTEND=noninteractive \
            apt-get install -q -y --no-install-recommends $missing >&2
}

# Sets up build/NAME from tests/presets/NAME.cmake, with further options: configure release -DX=ON
configure() {
    preset=$1
    shift
    cmake -C "$root/tests/presets/$preset.cmake" -S "$root" -B "$root/build/$preset" -G Ninja \
        -DCMAKE_CXX_COMPILER_LAUNCHER="$(command -v ccache)" "$@" >&2
}

# Builds one target of build/NAME, with further options of its set-up: build release all -DX=ON
build() {
    variant=$1
    target=$2
    shift 2
    configure "$variant" "$@" &&
        cmake --build "$root/build/$variant" --target "$target" -j "$(nproc)" >&2
}
