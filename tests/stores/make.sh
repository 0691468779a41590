#!/usr/bin/env bash
# SPDX-License-Identifier: GPL-3.0-or-later
# Makes samples of the present layout with the program itself: make.sh PROGRAM. One is there per layout and story, and
# none is ever made anew: what they prove is that files of then are read now. All of it is the demo shop's, its PINs too.
set -euo pipefail
program=$(realpath "$1")
here=$(dirname "$(realpath "$0")")
stories=$here/../../resources/demo/answers
folder=$(mktemp -d)
trap 'rm -rf "$folder"' EXIT
for story in north next_roll abandoned; do
    rm -rf "${folder:?}"/*
    "$program" demo --out "$folder" --answers "$stories/$story.toml" > /dev/null
    layout=$(sqlite3 "$folder/demo.logbook" 'PRAGMA user_version')
    sample=$here/layout-$layout-$story.logbook.gz
    if [ -e "$sample" ]; then echo "$sample is there and stays as it is"; continue; fi
    gzip -9n < "$folder/demo.logbook" > "$sample"
    ls -l "$sample"
done
