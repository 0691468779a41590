#!/usr/bin/env bash
# SPDX-License-Identifier: GPL-3.0-or-later
# Rewrites the table of checks in README.md with what the tests print. Usage: approve.sh PATH/TO/test_published
# A failing test leaves the README as it is.
set -euo pipefail
readme="$(cd "$(dirname "$0")" && pwd)/README.md"
printed=$(mktemp); written=$(mktemp)
trap 'rm -f "$printed" "$written"' EXIT
TAUTWEB_EVIDENCE=$printed "$1" '~[table]' > "$written" || { tail -40 "$written"; echo "Not written: a test fails." >&2; exit 1; }
awk -v table="$printed" '
    /^<!-- checks:/ { print; print ""; while ((getline line < table) > 0) print line; skip = 1; next }
    /^<!-- end of checks/ { skip = 0; print "" }
    !skip' "$readme" > "$written"
cat "$written" > "$readme"
echo "$readme: $(grep -c '^|' "$printed") lines of table"
