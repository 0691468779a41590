#!/usr/bin/env bash
# SPDX-License-Identifier: GPL-3.0-or-later
# Plants one breach of each rule in an empty tree: the checker must find every one, and none in a clean tree.
set -euo pipefail
checker=$1
tree=$(mktemp -d)
trap 'rm -rf "$tree"' EXIT
plant() { # path, line of code, word of the message
    rm -rf "${tree:?}"/*
    mkdir -p "$tree/$(dirname "$1")"
    printf '// SPDX-License-Identifier: GPL-3.0-or-later\n#pragma once\n%s\n' "$2" > "$tree/$1"
    if [ -z "$3" ]; then
        python3 "$checker" "$tree" >/dev/null || { echo "clean tree refused: $1"; exit 1; }
    elif out=$(python3 "$checker" "$tree") || ! grep -q "$3" <<<"$out"; then
        echo "not found: $1 with '$2' should say '$3', said: $out"; exit 1
    fi
}
plant core/units/a.h '#include "core/base/text.h"' ''
plant core/units/a.h '#include <QString>' '(R1)'
plant core/units/a.h '#include "app/text/words.h"' '(R1)'
plant core/units/a.h '#include "core/targets/target.h"' '(R2)'
plant core/history/a.h '#include "core/logbook/logbook.h"' '(R2)'
plant app/text/a.h '#include "app/widgets/card.h"' '(R3)'
plant app/pages/run/a.h '#include "app/pages/start/start_page.h"' '(R3)'
plant app/widgets/a.h '#include <QtWidgets>' 'umbrella'
plant core/run/a.h '#include <SQLiteCpp/Database.h>' '(R4)'
plant core/run/a.h 'auto t = std::chrono::system_clock::now();' '(R4)'
plant core/run/a.h 'std::random_device d;' '(R4)'
plant core/run/a.h 'auto s = tr("yes");' '(R4)'
plant app/widgets/a.h 'QLocale l;' '(R4)'
plant app/sessions/a.cpp 'signIn(id, pin.toStdString());' '(R8)'
plant core/run/a.cpp "$(printf '//\n%.0s' {1..401})" '(R5)'
plant tests/core/a_test.cpp 'TEST_CASE("one thing, said; another")' 'semicolon'
plant tests/core/a_test.cpp "$(printf 'TEST_CASE("one thing, "\n          "said; another")')" 'semicolon'
plant tests/core/a_test.cpp 'TEST_CASE("one thing") { run(); run("a; b"); }' ''
plant scripts/a.sh 'x' 'top level'
plant tests/published/requirements.md '| A-1 | met | `a case that nobody wrote` |' 'no test is called'
echo "every planted breach was found"
