#!/usr/bin/env bash
# SPDX-License-Identifier: GPL-3.0-or-later
# Checks with nothing of ours (sqlite3, xxd, openssl) that every picture and file that a sealed run of a logbook names is
# there, and is of its hash: check_attachments.sh LOGBOOK.
set -euo pipefail
files=0
while IFS='|' read -r seq sha256 content; do
    got=$(printf '%s' "$content" | xxd -r -p | openssl dgst -sha256 -r | cut -c1-64)
    [ "$got" = "$sha256" ] || { echo "seal $seq names $sha256, which is missing or another"; exit 1; }
    files=$((files + 1))
done < <(sqlite3 "$1" "select r.seq, json_extract(e.value, '\$.sha256'), hex(coalesce(a.content, ''))
    from sealed_runs as r, json_each(cast(r.document as text), '\$.events') as e
    left join attachments as a on a.sha256 = json_extract(e.value, '\$.sha256')
    where json_extract(e.value, '\$.what') = 'attached' order by r.seq")
echo "$files files"
