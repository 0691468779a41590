#!/usr/bin/env bash
# SPDX-License-Identifier: GPL-3.0-or-later
# Installs what is needed, builds everything with warnings as errors and runs every test. Usage: test.sh [--no-install]
# [--long] [--sanitize] [ARGUMENTS OF CTEST]
#   --no-install  skips apt
#   --long        goes through everything that the tests otherwise take a part of (an hour on two cores)
#   --sanitize    builds core and its tests under the address and undefined-behaviour sanitizers as well, and runs them
#                 and the texts from outside there
# Further arguments go to ctest (-R name, -L label).
set -euo pipefail

top=$(cd "$(dirname "${BASH_SOURCE[0]}")/.." && pwd)
install=yes sanitize=no
while :; do
    case ${1:-} in
    --no-install) install=no ;;
    --long) export TAUTWEB_LONG=1 ;;
    --sanitize) sanitize=yes ;;
    *) break ;;
    esac
    shift
done
# said TEXT...: what is done now, and how long the whole has taken so far.
said() { printf '== %d:%02d %s\n' $((SECONDS / 60)) $((SECONDS % 60)) "$*"; }
launcher=()
# Many files compiled as one: a build from nothing takes a third of the time.
unity=(-DCMAKE_UNITY_BUILD=ON -DCMAKE_UNITY_BUILD_BATCH_SIZE=12)
# built FOLDER "TARGET ..." -D...: configured and built, warnings as errors.
built() {
    local folder=$1 targets=$2
    shift 2
    cmake -S "$top" -B "$folder" -G Ninja -DCMAKE_BUILD_TYPE=Debug -DTAUTWEB_WERROR=ON "${unity[@]}" "${launcher[@]}" "$@" >/dev/null
    # shellcheck disable=SC2086
    cmake --build "$folder" --target $targets
}

if [ $install = yes ]; then
    said "What is needed"
    "$top/packaging/deps.sh" test
fi
command -v ccache >/dev/null && launcher=(-DCMAKE_CXX_COMPILER_LAUNCHER=ccache)
if [ $sanitize = yes ]; then
    said "Building core and its tests under the sanitizers"
    built "$top/build/sanitized" "core_tests fuzz_programs" -DTAUTWEB_SANITIZE=address -DTAUTWEB_APP=OFF
    said "Testing core and the texts from outside under the sanitizers"
    # Those that take a minute there go through the same code as others do, only more often.
    often='a row that is put in stands|a value that is set and set back|what is taken out is gone, and nothing|a key that is added to a table|a filled logbook is in order|whatever is done at the practice press|what lies on a lamp|a sensor that nobody calibrated|a nick in outer wraps|aim and window follow a falling'
    [ -n "${TAUTWEB_LONG:-}" ] && often='^$'
    echo "left out there, without --long: $often"
    ctest --test-dir "$top/build/sanitized" --output-on-failure -j"$(nproc)" -L 'core|fuzz' -E "$often" --quiet \
        --output-log "$top/build/sanitized/tests.log" || { cat "$top/build/sanitized/tests.log"; exit 1; }
    tail -n 12 "$top/build/sanitized/tests.log"
fi
said "Building"
built "$top/build/ci" all
cd "$top/build/ci"
if [ $# -eq 0 ]; then
    said "Counting"
    python3 "$top/tests/rules/counted.py" .
fi
said "Testing"
ctest --output-on-failure -j"$(nproc)" "$@"
