#!/usr/bin/env bash
# SPDX-License-Identifier: GPL-3.0-or-later
# Installs what is needed, builds everything with warnings as errors and runs every test. --no-install skips apt; further
# arguments go to ctest (-R name, -L label).
set -euo pipefail

top=$(cd "$(dirname "${BASH_SOURCE[0]}")/.." && pwd)
if [ "${1:-}" = --no-install ]; then
    shift
else
    echo "== 1/3 What is needed"
    "$top/packaging/deps.sh" test
fi
build="$top/build/ci"
echo "== 2/3 Building"
launcher=()
command -v ccache >/dev/null && launcher=(-DCMAKE_CXX_COMPILER_LAUNCHER=ccache)
cmake -S "$top" -B "$build" -G Ninja -DCMAKE_BUILD_TYPE=Debug -DTAUTWEB_WERROR=ON "${launcher[@]}" >/dev/null
cmake --build "$build"
echo "== 3/3 Testing"
cd "$build"
exec ctest --output-on-failure -j"$(nproc)" "$@"
