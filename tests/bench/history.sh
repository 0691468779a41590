#!/usr/bin/env bash
# SPDX-License-Identifier: GPL-3.0-or-later
# Makes histories as people run the program and prints how fast that goes and how much of the disk a run takes. With --large
# also those of 10^4 full and of 10^6 short runs, which take minutes and eight gigabytes. Usage: history.sh [--large] [FOLDER]
set -euo pipefail
top=$(cd "$(dirname "${BASH_SOURCE[0]}")/../.." && pwd)
large=
[[ ${1:-} == --large ]] && { large=1; shift; }
folder=$(mktemp -d "${1:-${TMPDIR:-/tmp}}/tautweb-bench-XXXXXX")
trap 'rm -rf "$folder"' EXIT
build="$top/build/release"
cmake -S "$top" -B "$build" -G Ninja -DCMAKE_BUILD_TYPE=Release -DBUILD_TESTING=ON >/dev/null
cmake --build "$build" --target history_bench
make() {
    "$build/tests/bench/history_bench" "$folder/made.logbook" "$@"
    rm -f "$folder"/made.logbook*
}
make 1200 2
make 100000 2 brief
if [[ -n $large ]]; then
    make 10000 2
    make 1000000 20 brief
fi
