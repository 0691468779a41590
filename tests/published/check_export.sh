#!/usr/bin/env bash
# SPDX-License-Identifier: GPL-3.0-or-later
# Checks an exported run with nothing of ours: sqlite3 (its JSON functions), xxd, openssl. Every link is recomputed and
# every signature verified by a key that stands in a person's document of the same file.
set -euo pipefail
file="$1"
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
ask() {
    sqlite3 :memory: "with s as (select json_extract(value, '\$.seq') as seq, json_extract(value, '\$.document')
        as document, json_extract(value, '\$.previous_link') as previous, json_extract(value, '\$.link') as link,
        json_extract(value, '\$.signatures') as signatures
        from json_each(json_extract(cast(readfile('$file') as text), '\$.seals'))) $1"
}
seals=0
while IFS='|' read -r seq document previous link; do
    got=$(printf '%s%s' "$previous" "$document" | xxd -r -p | openssl dgst -sha256 -r | cut -c1-64)
    [ "$got" = "$link" ] || { echo "seal $seq is broken"; exit 1; }
    seals=$((seals + 1))
done < <(ask "select seq, hex(document), previous, link from s")
signatures=0
while IFS='|' read -r seq link key signature known; do
    [ "$known" -gt 0 ] || { echo "seal $seq is signed by a key that nobody here has"; exit 1; }
    printf '302a300506032b6570032100%s' "$key" | xxd -r -p | openssl pkey -pubin -inform DER -out "$work/key.pem"
    { printf 'tautweb-seal-1\0'; printf '%s' "$link" | xxd -r -p; } > "$work/message"
    printf '%s' "$signature" | xxd -r -p > "$work/signature"
    openssl pkeyutl -verify -pubin -inkey "$work/key.pem" -rawin -in "$work/message" -sigfile "$work/signature" \
        > "$work/said" || { echo "the signature of seal $seq does not hold"; exit 1; }
    signatures=$((signatures + 1))
done < <(ask "select seq, link, json_extract(g.value, '\$.key'), json_extract(g.value, '\$.signature'), (select count(*)
    from s as p where json_extract(p.document, '\$.kind') = 'person' and json_extract(p.document, '\$.key') =
    json_extract(g.value, '\$.key')) from s, json_each(s.signatures) as g")
echo "$seals seals, $signatures signatures"
