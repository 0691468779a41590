#!/usr/bin/env bash
# SPDX-License-Identifier: GPL-3.0-or-later
# Runs the tests as they would run elsewhere: in another order, another language, another time zone, at another time and
# without a network. What they say must not depend on any of it. Usage: anywhere.sh BUILD_FOLDER [core|app|all]
# Needs faketime and locales (Debian's packages of these names); its own locales are made beside the tests.
set -euo pipefail
build=$(cd "$1" && pwd)
which=${2:-all}
for needed in faketime localedef unshare; do
    command -v $needed >/dev/null || { echo "anywhere.sh needs $needed: apt install faketime locales util-linux" >&2; exit 4; }
done
work=$(mktemp -d "${TMPDIR:-/tmp}/tautweb-anywhere-XXXXXX")
trap 'rm -rf "$work"' EXIT
for locale in de_DE tr_TR; do localedef -i $locale -f UTF-8 "$work/$locale.UTF-8" || [ -d "$work/$locale.UTF-8" ]; done
export LOCPATH="$work" QT_QPA_PLATFORM=offscreen
# The clock of the wall is another; what is waited for is not.
export FAKETIME_DONT_FAKE_MONOTONIC=1 NO_FAKE_STAT=1
unset LANG LC_ALL LANGUAGE
seed=${TAUTWEB_SEED:-$RANDOM}
# Whoever is not root may leave the network only as a root of their own.
[ "$(id -u)" -eq 0 ] && alone=(unshare -n) || alone=(unshare -rn)
bad=0

# under WHERE WHEN COMMAND...: in a language and a time zone, at a time, without a network.
under() {
    local locale=${1%@*} zone=${1#*@} when=$2
    shift 2
    env LC_ALL="$locale" TZ="$zone" "${alone[@]}" faketime -f "$when" "$@"
}
# elsewhere WHERE WHEN: every program of core in one process, in an order by chance; those of the app test by test.
elsewhere() {
    echo "== $1, $2, order by $seed"
    if [ "$which" != app ]; then
        for program in "$build"/tests/test_*; do
            [ -x "$program" ] && [ -f "$program" ] || continue
            under "$1" "$2" "$program" --order rand --rng-seed "$seed" >"$work/said" 2>&1 ||
                { echo "-- $program"; tail -n 60 "$work/said"; bad=1; }
        done
    fi
    if [ "$which" != core ]; then
        under "$1" "$2" ctest --test-dir "$build" -L app --schedule-random -j"$(nproc)" --output-on-failure >"$work/said" 2>&1 ||
            { tail -n 200 "$work/said"; bad=1; }
    fi
}
elsewhere C.UTF-8@UTC "@2026-11-28 12:00:00"
# A comma for the decimal point; the hour that the summer time takes away.
elsewhere de_DE.UTF-8@Europe/Berlin "@2027-03-28 01:58:30"
# An i without its dot, a zone of odd minutes, a day that few years have.
elsewhere tr_TR.UTF-8@Asia/Kathmandu "@2028-02-29 23:58:30"
[ $bad -eq 0 ] && echo "The same everywhere."
exit $bad
