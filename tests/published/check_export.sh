#!/usr/bin/env bash
# SPDX-License-Identifier: GPL-3.0-or-later
# Checks an exported run with nothing of ours: sqlite3 (its JSON functions), xxd, openssl. Every link is recomputed and
# every signature verified by a key that stands in a person's document of the same file. The words that the run names
# must be there and be of their hash, and so must its pictures and files.
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
words=0
while IFS='|' read -r sha256 text; do
    got=$(printf '%s' "$text" | xxd -r -p | openssl dgst -sha256 -r | cut -c1-64)
    [ "$got" = "$sha256" ] || { echo "the words $sha256 are missing or others"; exit 1; }
    words=$((words + 1))
done < <(ask ", named as (select l.value as since from s, json_each('[\"target_sets\",\"plans\"]') as k,
    json_each(s.document, '\$.' || k.value) as l where json_extract(s.document, '\$.kind') = 'run')
    select json_extract(n.since, '\$.since.sha256'), hex(coalesce(json_extract(d.document, '\$.text'), ''))
    from named as n left join s as d on json_extract(d.document, '\$.kind') = 'definition' and
    json_extract(d.document, '\$.what') = json_extract(n.since, '\$.since.what') and
    json_extract(d.document, '\$.sha256') = json_extract(n.since, '\$.since.sha256')
    where json_type(n.since, '\$.since') = 'object'")
files=0
while IFS='|' read -r sha256 content; do
    got=$(printf '%s' "$content" | openssl base64 -d -A | openssl dgst -sha256 -r | cut -c1-64)
    [ "$got" = "$sha256" ] || { echo "the picture or file $sha256 is missing or another"; exit 1; }
    files=$((files + 1))
done < <(ask ", named as (select distinct json_extract(e.value, '\$.sha256') as sha256 from s,
    json_each(s.document, '\$.events') as e where json_extract(s.document, '\$.kind') = 'run' and
    json_extract(e.value, '\$.what') = 'attached') select n.sha256, coalesce(json_extract(a.value, '\$.content'), '')
    from named as n left join json_each(json_extract(cast(readfile('$file') as text), '\$.attachments')) as a
    on json_extract(a.value, '\$.sha256') = n.sha256")
echo "$seals seals, $signatures signatures, $words words, $files files"
