#!/usr/bin/env bash
# SPDX-License-Identifier: GPL-3.0-or-later
# Installs what is needed, builds everything with warnings as errors and runs every test. --no-install skips apt;
# --sanitize before that also replays the texts from outside under the address and undefined-behaviour sanitizers; further
# arguments go to ctest (-R name, -L label).
set -euo pipefail

top=$(cd "$(dirname "${BASH_SOURCE[0]}")/.." && pwd)
install=yes sanitize=no
while :; do
    case ${1:-} in
    --no-install) install=no ;;
    --sanitize) sanitize=yes ;;
    *) break ;;
    esac
    shift
done
if [ $install = yes ]; then
    echo "== 1/3 What is needed"
    "$top/packaging/deps.sh" test
fi
build="$top/build/ci"
echo "== 2/3 Building"
launcher=()
command -v ccache >/dev/null && launcher=(-DCMAKE_CXX_COMPILER_LAUNCHER=ccache)
# Many files compiled as one: a build from nothing takes a third of the time.
unity=(-DCMAKE_UNITY_BUILD=ON -DCMAKE_UNITY_BUILD_BATCH_SIZE=12)
cmake -S "$top" -B "$build" -G Ninja -DCMAKE_BUILD_TYPE=Debug -DTAUTWEB_WERROR=ON "${unity[@]}" "${launcher[@]}" >/dev/null
cmake --build "$build"
if [ $sanitize = yes ]; then
    echo "== Texts from outside, under the sanitizers"
    replay="$top/build/replay"
    cmake -S "$top" -B "$replay" -G Ninja -DCMAKE_BUILD_TYPE=Debug -DTAUTWEB_SANITIZE=ON -DTAUTWEB_APP=OFF "${unity[@]}" "${launcher[@]}" >/dev/null
    cmake --build "$replay" --target fuzz_programs
    ctest --test-dir "$replay" --output-on-failure -j"$(nproc)" -L fuzz
fi
echo "== 3/3 Testing"
cd "$build"
ctest --output-on-failure -j"$(nproc)" "$@"
