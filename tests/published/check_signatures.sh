#!/usr/bin/env bash
# SPDX-License-Identifier: GPL-3.0-or-later
# Checks every signature of a logbook with nothing of ours: sqlite3, xxd, openssl. Each must be given over the link of its
# seal by a key that a document of the chain stated for that person, and its meaning must be the document's. Prints how
# many there are of each meaning, or the first that is wrong.
set -euo pipefail
work=$(mktemp -d); trap 'rm -rf "$work"' EXIT
# Who has to have signed: all but definitions, withdrawals and competence.
unsigned=$(sqlite3 "$1" "select seq from seals where kind in ('run','review','correction','void','person')
    and seq not in (select seq from signatures) order by seq limit 1")
[ -z "$unsigned" ] || { echo "no signature at $unsigned"; exit 1; }
while IFS='|' read -r seq link key signature stated meaning; do
    [ "$stated" = 1 ] || { echo "unknown key at $seq"; exit 1; }
    [ "$meaning" = 1 ] || { echo "other meaning at $seq"; exit 1; }
    printf '302a300506032b6570032100%s' "$key" | xxd -r -p | openssl pkey -pubin -inform DER -out "$work/key"
    { printf 'tautweb-seal-1\0'; printf '%s' "$link" | xxd -r -p; } > "$work/message"
    printf '%s' "$signature" | xxd -r -p > "$work/signature"
    openssl pkeyutl -verify -pubin -inkey "$work/key" -rawin -in "$work/message" -sigfile "$work/signature" > "$work/said" 2>&1 ||
        { echo "wrong signature at $seq"; exit 1; }
done < <(sqlite3 "$1" "select g.seq, s.link, g.key, g.signature,
    exists (select 1 from seals p where p.kind = 'person' and p.id = g.person and p.seq <= g.seq
            and json_extract(cast(p.document as text), '\$.key') = g.key),
    g.meaning = case s.kind when 'run' then iif(json_extract(cast(s.document as text), '\$.state') = 'abandoned', 'abandoned',
        'performed') when 'review' then 'reviewed' when 'correction' then 'corrected' when 'void' then 'voided'
        else 'enrolled' end
    from signatures g join seals s on s.seq = g.seq order by g.seq")
sqlite3 "$1" "select meaning || ' ' || count(*) from signatures group by meaning order by meaning"
