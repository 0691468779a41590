#!/usr/bin/env bash
# SPDX-License-Identifier: GPL-3.0-or-later
# Makes the pictures of README.md anew from the window and the sheet as they are, without a display. Usage:
# screenshots.sh [BUILD], a build folder with the tests (build/dev when none is named).
set -euo pipefail

top=$(cd "$(dirname "${BASH_SOURCE[0]}")/.." && pwd)
build=$(realpath -m "${1:-$top/build/dev}")
[ -f "$build/CMakeCache.txt" ] || { echo "There is no build in $build: cmake --preset dev makes one." >&2; exit 1; }
cmake --build "$build" --target test_app_shell tautweb
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
mkdir "$work/pictures"
TAUTWEB_PICTURES="$work/pictures" "$build/tests/app/test_app_shell" "the pictures of the front page*"
"$build/tautweb" demo --press north --out "$work/demo" >/dev/null || [ $? = 1 ] # 1: done, with a deviation
sheet=$(find "$work/demo" -name '*.pdf' | sort | head -n 1)
pdftoppm -png -r 75 -f 1 -l 1 -singlefile "$sheet" "$work/pictures/sheet"
for picture in start run history sheet; do
    [ -s "$work/pictures/$picture.png" ] || { echo "$picture.png was not made." >&2; exit 1; }
    cp "$work/pictures/$picture.png" "$top/packaging/pictures/"
done
echo "packaging/pictures is as the program is."
