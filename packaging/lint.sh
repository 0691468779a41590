#!/usr/bin/env bash
# SPDX-License-Identifier: GPL-3.0-or-later
# Looks at the sources of core and app with clang-tidy-14 (.clang-tidy says for what, and why not for more) and with cppcheck.
# Usage: lint.sh [--since REV] [FILE ...]; prints what they find, exit code 1 when there is anything, 2 when it cannot look.
# Without files everything is looked at, a dozen sources read as one as CI compiles them: reading headers takes longer than
# looking, so this takes a tenth of the time, and leaves out only what is asked of one file alone (misc-unused-using-decls).
# --since REV takes what differs from REV, FILEs are those that are named, each by itself; a header is looked at through the
# source of its name, or else through the first one that includes it.
# Tests are left to the compiler: what their macros unfold into is not ours, and what a test does wrong shows as it runs.
set -euo pipefail

top=$(cd "$(dirname "${BASH_SOURCE[0]}")/.." && pwd)
cd "$top"
usage() { sed -n '3,9s/^# //p' "$0" >&2; exit 2; }
for tool in clang-tidy-14 cppcheck cmake ninja git; do
    command -v "$tool" >/dev/null || { echo "$tool is missing: packaging/deps.sh lint installs what this needs." >&2; exit 2; }
done

asked=no
files=()
while [ $# -gt 0 ]; do
    case $1 in
    --since)
        [ $# -ge 2 ] || usage
        git rev-parse -q --verify "$2^{commit}" >/dev/null || { echo "There is no revision $2 here." >&2; exit 2; }
        mapfile -t changed < <(git diff --name-only --diff-filter=d "$2" -- core app; git ls-files -o --exclude-standard core app)
        files+=("${changed[@]}")
        shift
        ;;
    -*) usage ;;
    *)
        [ -f "$1" ] || { echo "There is no file $1 (paths are told from the top of the tree)." >&2; exit 2; }
        files+=("$1")
        ;;
    esac
    asked=yes
    shift
done

# What is compiled where a header is to be looked at.
through() {
    local source=${1%.h}.cpp
    [ -f "$source" ] || source=$(grep -rlF --include='*.cpp' "#include \"$1\"" core app | sort | sed -n 1p) || source=
    [ -n "$source" ] && echo "$source" || echo "$1 is included by no source: it is not looked at." >&2
}
sources=()
if [ $asked = yes ]; then
    mapfile -t sources < <(for file in "${files[@]}"; do
        case $file in
        core/*.cpp | app/*.cpp) echo "$file" ;;
        core/*.h | app/*.h) through "$file" ;;
        esac
    done | sort -u)
    [ ${#sources[@]} -gt 0 ] || { echo "None of them is a source of core or app: nothing to look at."; exit 0; }
fi

build=$top/build/lint
[ $asked = yes ] && unity=OFF || unity=ON
cmake -S . -B "$build" -G Ninja -DCMAKE_BUILD_TYPE=Debug -DBUILD_TESTING=OFF -DCMAKE_EXPORT_COMPILE_COMMANDS=ON \
    -DCMAKE_UNITY_BUILD="$unity" -DCMAKE_UNITY_BUILD_BATCH_SIZE=12 >/dev/null
# What moc and the translations give is compiled with sources of app, so it has to be there; the targets of moc would build
# all that they rest on, which nobody needs here.
if [ $asked = no ] || [[ " ${sources[*]}" == *" app/"* ]]; then
    for info in "$build"/app/CMakeFiles/*_autogen.dir/AutogenInfo.json; do
        cmake -E cmake_autogen "$info" Debug >/dev/null ||
            { echo "moc failed: cmake -E cmake_autogen $info Debug says why." >&2; exit 2; }
    done
    ninja -C "$build" app/translations_resource.cpp >/dev/null ||
        { echo "The translations could not be made: ninja -C $build app/translations_resource.cpp says why." >&2; exit 2; }
fi
if [ $asked = no ]; then
    # What is made at build time is looked at only as far as it holds sources of ours.
    mapfile -t sources < <(sed -n 's/^ *"file": "\(.*\)",\{0,1\}$/\1/p' "$build/compile_commands.json" | sort |
        awk -v made="$build/" 'index($0, made) != 1 || /\/Unity\//')
fi

echo "== clang-tidy: ${#sources[@]} $([ $asked = yes ] && echo sources || echo units)"
found=$build/found
rm -rf "$found"
mkdir -p "$found"
bad=no
more=()
# That a unit includes sources is what makes it one.
[ $asked = yes ] || more=(--checks=-bugprone-suspicious-include)
look() {
    local out=$found/${1//\//+}
    clang-tidy-14 --quiet -p "$build" --header-filter="^$top/(core|app)/" "${@:2}" "$1" >"$out" 2>"$out.err" && return
    cp "$out" "$out.bad"
    # Where it found nothing and failed, what it said instead.
    grep -q ': error: ' "$out" || sed 's/^/clang-tidy: error: /' "$out.err" >>"$out.bad"
}
export -f look
export found build top
printf '%s\n' "${sources[@]}" | xargs -P "$(nproc)" -I '{}' bash -c 'look "$@"' _ '{}' "${more[@]}"
mapfile -t told < <(find "$found" -name '*.bad' | sort)
if [ ${#told[@]} -gt 0 ]; then
    bad=yes
    if [ $asked = yes ]; then
        cat "${told[@]}"
    else
        # A header tells its own in every unit; lint.sh FILE shows the code and the way that leads there.
        grep -hE ' (error|warning): ' "${told[@]}" | sort -u
    fi | sed "s|^$top/||; s/,-warnings-as-errors\]$/]/"
fi

echo "== cppcheck"
# Left out, with the reason:
#   accessMoved: it takes the very word in std::move(word) for a later use; bugprone-use-after-move follows the flow.
#   CastIntegerToAddressAtReturn: it takes an item of a table of words for the number that it is found by.
#   passedByValue: performance-unnecessary-value-param says it, and knows how large the type is.
#   returnStdMoveLocal: it takes what is moved out of a container for something local; performance-no-automatic-move knows.
looked=("${sources[@]}")
[ $asked = yes ] || looked=(core app)
mkdir -p "$build/cppcheck"
cppcheck --enable=warning,performance,portability --inline-suppr --std=c++20 --language=c++ --library=qt -I . -j "$(nproc)" --quiet \
    --suppress=accessMoved --suppress=CastIntegerToAddressAtReturn --suppress=passedByValue --suppress=returnStdMoveLocal \
    --cppcheck-build-dir="$build/cppcheck" --error-exitcode=1 "${looked[@]}" || bad=yes
[ $bad = no ] || exit 1
echo "Nothing found."
