#!/usr/bin/env bash
# SPDX-License-Identifier: GPL-3.0-or-later
# Recomputes the chain of a logbook with nothing of ours: sqlite3, xxd, openssl. Prints COUNT:LINK, the anchor that
# stands on the newest sheet, or where the chain breaks.
set -euo pipefail
prev=$(printf '0%.0s' {1..64}); n=0
while IFS='|' read -r seq doc link; do
    n=$((n + 1)); [ "$seq" = "$n" ] || { echo "gap before $seq"; exit 1; }
    prev=$(printf '%s%s' "$prev" "$doc" | xxd -r -p | openssl dgst -sha256 -r | cut -c1-64)
    [ "$prev" = "$link" ] || { echo "first break at $seq"; exit 1; }
done < <(sqlite3 "$1" 'select seq, hex(document), link from seals order by seq')
echo "$n:$prev"
