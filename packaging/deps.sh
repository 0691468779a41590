#!/usr/bin/env bash
# SPDX-License-Identifier: GPL-3.0-or-later
# Installs what Tautweb needs on Debian 12. Usage: deps.sh run|test|package|lint
# run: to build and use the program. test: also what the tests ask (referees, readers of PDF and QR code).
# package: what makes and looks at the Debian package. lint: what reads the sources and counts the lines that tests reach.
set -euo pipefail

what=${1:-run}
run_packages=(build-essential cmake ninja-build pkg-config qt6-base-dev qt6-svg-dev qt6-tools-dev qt6-tools-dev-tools
    qt6-l10n-tools qt6-translations-l10n libgl-dev libopengl-dev libsqlite3-dev libsqlitecpp-dev libsodium-dev libqrencode-dev
    libgsl-dev nlohmann-json3-dev libsimdjson-dev libtomlplusplus-dev fonts-dejavu-core python3-minimal)
test_packages=(catch2 mold ccache units sqlite3 jq openssl xxd poppler-utils zbar-tools clang-format-14
    xauth xvfb procps dbus-daemon node-spdx-license-ids)
package_packages=(git dpkg-dev fakeroot lintian desktop-file-utils appstream)
lint_packages=(git clang-tidy-14 cppcheck gcovr catch2 ccache)
packages=("${run_packages[@]}")
[ "$what" = test ] && packages+=("${test_packages[@]}")
[ "$what" = package ] && packages+=("${package_packages[@]}")
[ "$what" = lint ] && packages+=("${lint_packages[@]}")

missing=()
for package in "${packages[@]}"; do
    dpkg-query -W -f '${Status}' "$package" 2>/dev/null | grep -q 'ok installed' || missing+=("$package")
done
if [ ${#missing[@]} -eq 0 ]; then
    echo "Everything needed is installed."
    exit 0
fi
echo "Installing: ${missing[*]}"
sudo=()
if [ "$(id -u)" -ne 0 ]; then
    command -v sudo >/dev/null || { echo "These packages are missing and there is no sudo. As root: apt-get install ${missing[*]}" >&2; exit 1; }
    sudo=(sudo)
fi
"${sudo[@]}" apt-get update -q || { echo "The package lists could not be fetched: is the network up?" >&2; exit 1; }
"${sudo[@]}" env DEBIAN_FRONTEND=noninteractive apt-get install -y --no-install-recommends "${missing[@]}" ||
    { echo "Installing failed; the lines above say why. Nothing else was changed." >&2; exit 1; }
