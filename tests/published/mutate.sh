#!/usr/bin/env bash
# SPDX-License-Identifier: GPL-3.0-or-later
# Puts each formula of the catalogue off by 1 % in turn and prints which checks of this folder notice. Works on a copy of
# the sources: there, and only there, each formula's result is multiplied by what the environment says, so that one build
# serves for all. Fails when a formula is noticed by no check, or when the copy fails without a mutant.
# Usage: mutate.sh [FOLDER FOR THE COPY]   a folder that is given is kept and makes the next run faster
set -euo pipefail
root="$(cd "$(dirname "$0")/../.." && pwd)"
work=${1:-$(mktemp -d)}
[ -n "${1:-}" ] || trap 'rm -rf "$work"' EXIT
mkdir -p "$work/tree"
work="$(cd "$work" && pwd)"
for part in CMakeLists.txt core tests resources; do
    rm -rf "${work:?}/tree/$part.new"
    cp -rp "$root/$part" "$work/tree/$part.new"
    rm -rf "${work:?}/tree/$part"
    mv "$work/tree/$part.new" "$work/tree/$part"
done

python3 - "$work/tree/core/physics" > "$work/formulas" <<'PYTHON'
import pathlib, re, sys

folder = pathlib.Path(sys.argv[1])
(folder / "mutant.h").write_text("""#pragma once
#include <cstdlib>
#include <cstring>
inline double mutant(const char* id) noexcept
{
    static const char* const chosen = std::getenv("TAUTWEB_MUTANT");
    return chosen != nullptr && std::strcmp(chosen, id) == 0 ? 1.01 : 1.0;
}
""")
entries = []
for catalogue in sorted(folder.glob("catalogue_*.cpp")):
    entries += re.findall(r'entry<&(\w+)(?:<\w+>)?>\(\s*"([^"]+)"', catalogue.read_text())
texts = {p: p.read_text() for p in sorted(folder.glob("*.cpp")) if not p.name.startswith("catalogue")}
for function, formula in entries:
    # A definition starts in the first column and has a body; the templates' instances have none.
    start = re.compile(r"^(?:template <[^\n]*>\n)?\w[\w<>:]* " + function + r"\([^;{}]*\) noexcept\s*\{", re.M)
    found = [(p, m) for p, text in texts.items() for m in start.finditer(text)]
    if len(found) != 1:
        sys.exit(f"{formula}: {function} is defined {len(found)} times in {folder}")
    path, match = found[0]
    text, depth, end = texts[path], 1, match.end()
    while depth:
        depth += {"{": 1, "}": -1}.get(text[end], 0)
        end += 1
    changed, count = re.subn(r"\breturn (?!undefined<)([^;]+);", rf'return (\1) * mutant("{formula}");', text[match.end():end])
    if not count:
        sys.exit(f"{formula}: {function} returns nothing")
    texts[path] = text[:match.end()] + changed + text[end:]
for path, text in texts.items():
    if "mutant(" in text:
        text = text.replace("#include", '#include "core/physics/mutant.h"\n#include', 1)
        path.write_text(text)
print("\n".join(sorted(formula for _, formula in entries)))
PYTHON

export CCACHE_BASEDIR="$work/tree" CCACHE_NOHASHDIR=1
launcher=$(command -v ccache || true)
cmake -S "$work/tree" -B "$work/tree/build/dev" -G Ninja -DCMAKE_BUILD_TYPE=Debug -DTAUTWEB_WERROR=ON -DTAUTWEB_APP=OFF \
    ${launcher:+-DCMAKE_CXX_COMPILER_LAUNCHER="$launcher"} > "$work/log"
ninja -C "$work/tree/build/dev" -j"${JOBS:-1}" test_published >> "$work/log" || { tail -30 "$work/log"; exit 1; }

# Rows that do not hold, for one mutant; one line for a failure that is in no row.
notices() {
    local rc=0
    rm -f "$work/rows"
    TAUTWEB_MUTANT=$1 TAUTWEB_EVIDENCE=$work/rows "$work/tree/build/dev/tests/test_published" '~[table]~[seal]~[sources]' \
        > "$work/run" 2>&1 || rc=$?
    grep '(outside) |$' "$work/rows" || { [ $rc -eq 0 ] || echo "| | | | | | | a check without a row | | | |"; }
}
if [ -n "$(notices none)" ]; then
    tail -40 "$work/run"
    echo "The copy fails without a mutant." >&2
    exit 1
fi
blind=0
echo "| formula off by 1 % | checks that notice | of kind | the first of them |"
echo "|---|---|---|---|"
while read -r formula; do
    notices "$formula" > "$work/noticed"
    if [ ! -s "$work/noticed" ]; then
        blind=$((blind + 1))
        echo "| $formula | 0 | – | NONE |"
        continue
    fi
    awk -F ' *[|] *' -v formula="$formula" '
        { n++; if (!($7 in seen)) { seen[$7] = 1; kinds = kinds (kinds == "" ? "" : ", ") $7 }
          line = $4 ": " $3 ", " $8; if (first == "" || ($3 == formula && !own)) { first = line; own = ($3 == formula) } }
        END { print "| " formula " | " n " | " kinds " | " first " |" }' "$work/noticed"
done < "$work/formulas"
echo
echo "$(wc -l < "$work/formulas") formulas, $blind noticed by no check."
[ "$blind" -eq 0 ]
