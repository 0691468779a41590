#!/usr/bin/env bash
# SPDX-License-Identifier: GPL-3.0-or-later
# Installs what is needed, builds a release and starts Tautweb with the demo shop loaded. Without a display it runs the demo
# job headless and says where the sheet and the logbook are. --no-install skips apt.
set -euo pipefail

top=$(cd "$(dirname "${BASH_SOURCE[0]}")/.." && pwd)
install=yes
for argument in "$@"; do
    case $argument in
    --no-install) install=no ;;
    -h | --help) sed -n '3,4s/^# //p' "${BASH_SOURCE[0]}"; exit 0 ;;
    *) echo "run.sh: unknown option $argument (there is only --no-install)" >&2; exit 2 ;;
    esac
done

if [ "$install" = yes ]; then
    echo "== 1/3 What is needed"
    "$top/packaging/deps.sh" run
fi
for tool in cmake ninja g++; do
    command -v "$tool" >/dev/null || { echo "$tool is missing: run packaging/run.sh without --no-install." >&2; exit 1; }
done
echo "== 2/3 Building a release (a few minutes the first time)"
cmake -S "$top" -B "$top/build/release" -G Ninja -DCMAKE_BUILD_TYPE=Release -DBUILD_TESTING=OFF >/dev/null ||
    { echo "Configuring failed; the lines above say why. What is missing, packaging/deps.sh installs; a build folder that" \
           "belongs to another user is to be removed: $top/build" >&2; exit 1; }
cmake --build "$top/build/release" --target tautweb ||
    { echo "The build failed. Please report the first error above." >&2; exit 1; }
program="$top/build/release/tautweb"
if [ -n "${DISPLAY:-}${WAYLAND_DISPLAY:-}" ]; then
    echo "== 3/3 Starting Tautweb with the demo shop"
    exec "$program" --demo
fi
echo "== 3/3 No display here: running the demo job without a window"
exec "$program" demo --out "${TMPDIR:-/tmp}/tautweb-demo-$(date +%Y%m%d-%H%M%S)"
