#!/usr/bin/env bash
# SPDX-License-Identifier: GPL-3.0-or-later
# Fuzzes every target in turn and prints executions, coverage and crashes. Usage: fuzz.sh [SECONDS] [TARGET ...]
# SECONDS for each target, 60 when not said; TARGET: anchor, answer ...; all when none is said. Needs clang-14 and
# libclang-rt-14-dev beside what packaging/deps.sh installs. What is found stays in build/fuzz/found/TARGET: crash-* are
# inputs for which something does not hold, `seen` what was learned on the way. Exit code 1 when there is a crash.
set -euo pipefail

top=$(cd "$(dirname "${BASH_SOURCE[0]}")/../.." && pwd)
seconds=${1:-60}
[ $# -eq 0 ] || shift
command -v clang++-14 >/dev/null || { echo "clang++-14 is missing: apt-get install clang-14 libclang-rt-14-dev" >&2; exit 1; }
launcher=()
command -v ccache >/dev/null && launcher=(-DCMAKE_CXX_COMPILER_LAUNCHER=ccache)
cd "$top"
cmake --preset fuzz "${launcher[@]}" >/dev/null
cmake --build --preset fuzz
targets=("$@")
if [ ${#targets[@]} -eq 0 ]; then
    for source in tests/fuzz/*_fuzz.cpp; do
        name=${source##*/}
        targets+=("${name%_fuzz.cpp}")
    done
fi
# The words that readers know, from their own sources: keys, units, codes of fields.
words=build/fuzz/words.dict
grep -ohE '"[][A-Za-z0-9_%/.:? -]{1,24}"' core/{base,units,inputs,procedure,run,seal,targets}/*.{h,cpp} | sort -u >"$words"
bad=0
rows=()
for target in "${targets[@]}"; do
    found=build/fuzz/found/$target
    mkdir -p "$found/seen"
    echo "== $target: $seconds s"
    # What crashes is kept and the search goes on from there until the time is up.
    end=$((SECONDS + seconds))
    runs=0 covered=0 features=0
    while [ $SECONDS -lt $end ]; do
        rc=0
        build/fuzz/tests/fuzz/fuzz_"$target" -max_total_time=$((end - SECONDS)) -max_len=20000 -dict="$words" -timeout=10 -rss_limit_mb=2048 \
            -reload=0 -print_final_stats=1 -artifact_prefix="$found/" "$found/seen" "tests/fuzz/corpus/$target" 2>"$found/log" || rc=$?
        executed=$(sed -n 's/^stat::number_of_executed_units: *//p' "$found/log" | tail -1)
        runs=$((runs + ${executed:-0}))
        read -r covered features < <(sed -n 's/^#[0-9]*.* cov: \([0-9]*\) ft: \([0-9]*\).*/\1 \2/p' "$found/log" | tail -1) || true
        [ "$rc" -eq 0 ] && break
        grep -aE '^Does not hold|^  [^ ]|Assertion|SUMMARY|runtime error|Test unit written' "$found/log" | head -6 || true
    done
    crashes=$(find "$found" -maxdepth 1 \( -name 'crash-*' -o -name 'leak-*' -o -name 'timeout-*' -o -name 'oom-*' \) | wc -l)
    [ "$crashes" -eq 0 ] || bad=1
    rows+=("$(printf '%-10s %7d s %12d %8s %8s %8d' "$target" "$seconds" "$runs" "$covered" "$features" "$crashes")")
done
printf '%-10s %9s %12s %8s %8s %8s\n' target time executions edges features crashes
printf '%s\n' "${rows[@]}"
exit $bad
