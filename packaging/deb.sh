#!/usr/bin/env bash
# SPDX-License-Identifier: GPL-3.0-or-later
# Makes the Debian package of what is committed here. Usage: deb.sh [--no-install] [FOLDER]
# FOLDER gets package and list of what it is made of (build/deb/out where none is given); --no-install skips apt.
# The same commit on the same Debian gives the same bytes, whatever the folder, the time, the user and the cache.
set -euo pipefail

top=$(cd "$(dirname "${BASH_SOURCE[0]}")/.." && pwd)
install=yes
[ "${1:-}" = --no-install ] && { install=no; shift; }
out=$(realpath -m "${1:-$top/build/deb/out}")
if [ $install = yes ]; then
    echo "== 1/4 What is needed"
    "$top/packaging/deps.sh" package
fi
for tool in git cmake ninja g++ dpkg-shlibdeps fakeroot lintian desktop-file-validate appstreamcli; do
    command -v "$tool" >/dev/null || { echo "$tool is missing: run deb.sh without --no-install." >&2; exit 1; }
done
if [ -n "$(git -C "$top" status --porcelain 2>/dev/null)" ]; then
    echo "Not all is committed: what comes out is not the package of that commit." >&2
fi
# The time of the commit is the time of all that is made.
SOURCE_DATE_EPOCH=${SOURCE_DATE_EPOCH:-$(git -C "$top" log -1 --format=%ct)}
export SOURCE_DATE_EPOCH LC_ALL=C.UTF-8 TZ=UTC
umask 022
version=$(sed -n 's/^project(tautweb VERSION \([0-9.]*\).*/\1/p' "$top/CMakeLists.txt")
grep -q "^## $version (" "$top/packaging/CHANGELOG.md" ||
    { echo "packaging/CHANGELOG.md says nothing of $version." >&2; exit 1; }

echo "== 2/4 Building $version"
build="$top/build/deb"
flags=$(dpkg-buildflags --get CXXFLAGS) links=$(dpkg-buildflags --get LDFLAGS)
# dpkg's own flags name the folder where one stands; ours are told by the tree's.
flags=$(sed 's/-ffile-prefix-map=[^ ]*//; s/^-g //; s/ -g / /' <<<"$flags")
launcher=()
command -v ccache >/dev/null && launcher=(-DCMAKE_CXX_COMPILER_LAUNCHER=ccache)
# With a base folder the cache would tell the compiler other paths than it is told without a cache.
unset CCACHE_BASEDIR
# Debian's own linker: whether another is installed must not show.
cmake -S "$top" -B "$build" -G Ninja -DCMAKE_BUILD_TYPE=Release -DBUILD_TESTING=OFF "${launcher[@]}" \
    -DCMAKE_CXX_FLAGS="$flags $(dpkg-buildflags --get CPPFLAGS) -ffile-prefix-map=$top=." \
    -DCMAKE_EXE_LINKER_FLAGS="$links -Wl,-z,now -pie" -DCMAKE_POSITION_INDEPENDENT_CODE=ON \
    -DTAUTWEB_MOLD=OFF -DTAUTWEB_RESOURCES_DIR=/usr/share/tautweb -DTAUTWEB_SBOM_DIR="$build" \
    -DCMAKE_INSTALL_PREFIX=/usr >/dev/null
cmake --build "$build"

echo "== 3/4 Packing"
python3 "$top/packaging/sbom.py" "$build/tautweb" "$build" "$version" "$SOURCE_DATE_EPOCH" "$build"
rm -f "$build"/tautweb_*.deb
(cd "$build" && cpack -G DEB >/dev/null)
mkdir -p "$out"
cp "$build"/tautweb_*.deb "$out/"
cp "$build/tautweb.spdx.json" "$out/tautweb_$version.spdx.json"

echo "== 4/4 Looking at it"
lintian --fail-on error "$out"/tautweb_"$version"_*.deb
desktop-file-validate "$top/packaging/tautweb.desktop"
appstreamcli validate --no-net "$top/packaging/invalid.tautweb.tautweb.metainfo.xml"
(cd "$out" && sha256sum tautweb_"$version"_*.deb)
