#!/usr/bin/env bash
# SPDX-License-Identifier: GPL-3.0-or-later
# Makes histories as people run the program, tells how fast that goes and how much of the disk a run takes, and times what
# is asked of them beside the same SQL through the engine's C interface, an operator's answer beside a Pareto in another
# process, and the window's list; exit 1 when a limit is not kept. Usage:
#   history.sh [FOLDER]                 10^5 short runs beside 10^3; two minutes, a gigabyte
#   history.sh --large [FOLDER]         10^6 beside 10^4, and 10^4 full runs; half an hour, ten gigabytes
#   history.sh --stores STORE SMALL     those two, made before; a few runs are added to STORE
set -euo pipefail
top=$(cd "$(dirname "${BASH_SOURCE[0]}")/../.." && pwd)
build="$top/build/release"
launcher=()
command -v ccache >/dev/null && launcher=(-DCMAKE_CXX_COMPILER_LAUNCHER=ccache)
cmake -S "$top" -B "$build" -G Ninja -DCMAKE_BUILD_TYPE=Release -DBUILD_TESTING=ON "${launcher[@]}" >/dev/null
cmake --build "$build" --target history_bench store_bench list_bench >/dev/null
bench="$build/tests/bench"
if [[ ${1:-} == --stores ]]; then
    store=$2 small=$3
else
    large=
    [[ ${1:-} == --large ]] && { large=1; shift; }
    folder=$(mktemp -d "${1:-${TMPDIR:-/tmp}}/tautweb-bench-XXXXXX")
    trap 'rm -rf "$folder"' EXIT
    store="$folder/store.logbook" small="$folder/small.logbook"
    if [[ -n $large ]]; then
        "$bench/history_bench" "$folder/full.logbook" 10000 2
        rm -f "$folder"/full.logbook*
        "$bench/history_bench" "$small" 10000 20 brief
        "$bench/history_bench" "$store" 1000000 20 brief
    else
        "$bench/history_bench" "$folder/full.logbook" 200 2
        rm -f "$folder"/full.logbook*
        "$bench/history_bench" "$small" 1000 2 brief
        "$bench/history_bench" "$store" 100000 2 brief
    fi
fi
echo
kept=0
"$bench/store_bench" "$store" "$small" || kept=1
echo
"$bench/list_bench" "$store" 2>/dev/null || kept=1
exit "$kept"
