#!/usr/bin/env bash
# SPDX-License-Identifier: GPL-3.0-or-later
# Builds the benchmarks as people run the program and prints their tables; exit 1 when a limit is not kept.
set -euo pipefail
top=$(cd "$(dirname "${BASH_SOURCE[0]}")/../.." && pwd)
build="$top/build/bench"
launcher=()
command -v ccache >/dev/null && launcher=(-DCMAKE_CXX_COMPILER_LAUNCHER=ccache)
cmake -S "$top" -B "$build" -G Ninja -DCMAKE_BUILD_TYPE=Release -DTAUTWEB_APP=OFF "${launcher[@]}" >/dev/null
cmake --build "$build" --target targets_bench practice_bench
kept=0
"$build/tests/bench/targets_bench" || kept=1
echo
"$build/tests/bench/practice_bench" || kept=1
exit "$kept"
