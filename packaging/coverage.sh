#!/usr/bin/env bash
# SPDX-License-Identifier: GPL-3.0-or-later
# Counts which lines of core its own tests reach. Usage: coverage.sh [--uncovered FOLDER]
# Builds core and its tests in build/coverage without optimisation (but where core/CMakeLists.txt asks for it, since tests would take
# minutes), runs those of core, those against the outside and those of bad disks, prints a table and fails below 90 % of the lines. With --uncovered a page for each file, in which every line says
# how often it was run, is written to FOLDER (index.html). The tests of the window are left out: a line that only they reach
# is one of which nobody checks what it gives.
set -euo pipefail

least=90
top=$(cd "$(dirname "${BASH_SOURCE[0]}")/.." && pwd)
pages=()
if [ "${1:-}" = --uncovered ]; then
    [ $# -eq 2 ] || { echo "coverage.sh --uncovered FOLDER: which folder?" >&2; exit 2; }
    mkdir -p "$2"
    pages=(--html-details "$(realpath "$2")/index.html")
elif [ $# -gt 0 ]; then
    echo "Usage: coverage.sh [--uncovered FOLDER]" >&2
    exit 2
fi
for tool in gcovr gcov cmake ninja ctest; do
    command -v "$tool" >/dev/null || { echo "$tool is missing: packaging/deps.sh lint installs what this needs." >&2; exit 2; }
done
build="$top/build/coverage"
launcher=()
command -v ccache >/dev/null && launcher=(-DCMAKE_CXX_COMPILER_LAUNCHER=ccache)
cmake -S "$top" -B "$build" -G Ninja -DCMAKE_BUILD_TYPE=Debug -DTAUTWEB_APP=OFF -DCMAKE_UNITY_BUILD=ON -DCMAKE_UNITY_BUILD_BATCH_SIZE=12 \
    -DCMAKE_CXX_FLAGS="--coverage -O0 -fprofile-update=atomic" -DCMAKE_CXX_FLAGS_DEBUG= "${launcher[@]}" >/dev/null
# The tests that are counted, and no more.
mapfile -t programs < <(ninja -C "$build" -t targets all | sed -n 's/^\(test_[a-z]*\): phony$/\1/p')
cmake --build "$build" --target "${programs[@]}" gsl_referee
# What earlier runs counted is no part of this one.
find "$build" -name '*.gcda' -delete
ctest --test-dir "$build" --output-on-failure -j"$(nproc)" -L 'core|published|faults'
gcovr --root "$top" --filter "$top/core/" --exclude-throw-branches --fail-under-line $least "${pages[@]}" \
    --gcov-ignore-parse-errors --print-summary "$build"
