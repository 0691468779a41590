#!/usr/bin/env bash
# SPDX-License-Identifier: GPL-3.0-or-later
# Builds the program and the benchmarks as people run them, makes the logbooks that they want, measures, and prints one
# table: each figure beside a floor that was measured in the same run, and its limit; then how it grows with the store.
# Exit 1 when a limit is not kept, 4 when something could not be measured. Usage:
#   bench.sh [--quick] [--folder FOLDER] [--only NAME ...]
#     --quick   10^5 short runs beside 10^3, and 200 full ones; some minutes, a gigabyte. Without it 10^6 beside 10^4, and
#               10^4 full ones; an hour, twelve gigabytes, three times the largest more where the disk has room
#     --folder  where the logbooks are made and kept, and taken from the next time; else they are made anew and removed
#     --only    of these alone: targets practice seal store window frame list
set -euo pipefail
top=$(cd "$(dirname "${BASH_SOURCE[0]}")/../.." && pwd)
build="$top/build/release"
full=10000 small=10000 large=1000000 years=20 folder='' only=()
while [[ $# -gt 0 ]]; do
    case $1 in
    --quick) full=200 small=1000 large=100000 years=2 ;;
    --folder) folder=$2; shift ;;
    --only) shift; only=("$@"); break ;;
    *) sed -n '3,11p' "${BASH_SOURCE[0]}" >&2; exit 2 ;;
    esac
    shift
done
launcher=()
command -v ccache >/dev/null && launcher=(-DCMAKE_CXX_COMPILER_LAUNCHER=ccache)
cmake -S "$top" -B "$build" -G Ninja -DCMAKE_BUILD_TYPE=Release -DBUILD_TESTING=ON "${launcher[@]}" >/dev/null
cmake --build "$build" --target tautweb targets_bench practice_bench history_bench store_bench seal_bench window_bench \
    frame_bench list_bench empty_window bench_painted >/dev/null
bench="$build/tests/bench"
if [[ -z $folder ]]; then
    folder=$(mktemp -d "${TMPDIR:-/tmp}/tautweb-bench-XXXXXX")
    trap 'rm -rf "$folder"' EXIT
fi
mkdir -p "$folder"
export TAUTWEB_TOLD="$folder/told.txt"
: >"$TAUTWEB_TOLD"
broken=0

# made NAME RUNS YEARS [brief]: a logbook of that name, made under another so that no half of one is ever taken for it.
made() {
    [[ -e $folder/$1.logbook ]] && return
    "$bench/history_bench" "$folder/$1.part" "${@:2}"
    mv "$folder/$1.part" "$folder/$1.logbook"
    rm -f "$folder/$1".part*
}
# measured NAME COMMAND...: a limit that is not kept is told in the table; what cannot be measured is told at the end.
measured() {
    local name=$1 status=0
    shift
    [[ ${#only[@]} -eq 0 || " ${only[*]} " == *" $name "* ]] || return 0
    echo "--- $name"
    "$@" 2>"$folder/$name.err" || status=$?
    [[ $status -le 1 ]] && return 0
    cat "$folder/$name.err" >&2
    broken=4
}
# Whether three copies of a file find room beside it.
roomFor() { [[ $(($(stat -c %s "$1") * 35 / 10240)) -lt $(df --output=avail -k "$folder" | tail -1) ]]; }

made "full-$full" "$full" 2
made "short-$small" "$small" "$years" brief
made "short-$large" "$large" "$years" brief
whole="$folder/full-$full.logbook" few="$folder/short-$small.logbook" many="$folder/short-$large.logbook"
printf 'note\t%s processors; logbooks on %s, %s\n' "$(nproc)" "$(df --output=fstype "$folder" | tail -1)" \
    "$(findmnt -no OPTIONS -T "$folder" | cut -d, -f1-2)" >>"$TAUTWEB_TOLD"
printf 'note\t%s full runs, %s and %s short ones; load %s\n' "$full" "$small" "$large" "$(cut -d' ' -f1 /proc/loadavg)" \
    >>"$TAUTWEB_TOLD"
platform=()
command -v xvfb-run >/dev/null && platform=(env QT_QPA_PLATFORM=xcb xvfb-run -a -s '-screen 0 1366x768x24')

measured targets "$bench/targets_bench"
measured practice "$bench/practice_bench"
measured window "${platform[@]}" "$bench/window_bench" "$many" "$whole"
measured frame "$bench/frame_bench" "$whole"
measured list "$bench/list_bench" "$many"
measured store "$bench/store_bench" "$many" "$few"
measured seal "$bench/seal_bench" "$whole"
measured seal "$bench/seal_bench" "$few" 2
if roomFor "$many"; then measured seal "$bench/seal_bench" "$many" 2; fi
echo
kept=0
python3 "$top/tests/bench/table.py" "$TAUTWEB_TOLD" || kept=1
[[ $broken -eq 0 ]] || { echo "something could not be measured: see above" >&2; exit 4; }
exit "$kept"
