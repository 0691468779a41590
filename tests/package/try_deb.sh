#!/usr/bin/env bash
# SPDX-License-Identifier: GPL-3.0-or-later
# Installs a package as a shop would, works with it, upgrades it, takes it away, and looks whether the records stayed.
# It changes the machine: for a fresh one, as root. Usage: try_deb.sh TAUTWEB.deb
set -euo pipefail

deb=$(realpath "$1")
user=crew
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
failed=0
says() { echo "-- $*"; }
wrong() { echo "WRONG: $*" >&2; failed=1; }
as_crew() { runuser -u "$user" -- env HOME="/home/$user" "$@"; }

id "$user" >/dev/null 2>&1 || useradd -m "$user"
export DEBIAN_FRONTEND=noninteractive
apt-get update -q >/dev/null

says "an older one is installed"
mkdir "$work/older"
dpkg-deb -R "$deb" "$work/older"
sed -i 's/^Version: .*/Version: 0.0.1/' "$work/older/DEBIAN/control"
dpkg-deb --root-owner-group -b "$work/older" "$work/tautweb_0.0.1_amd64.deb" >/dev/null
chmod -R a+rX "$work"
apt-get install -y --no-install-recommends "$work/tautweb_0.0.1_amd64.deb" >/dev/null
dpkg-query -W -f '${Version}\n' tautweb | grep -qx 0.0.1 || wrong "the older one is not installed"

says "somebody works with it"
as_crew tautweb demo --out "/home/$user/first" >/dev/null || wrong "the demo job does not run"
logbook=$(find "/home/$user/first" -name '*.logbook' | head -1)
before=$(as_crew tautweb verify "$logbook" --json | sha256sum)

says "it is upgraded"
apt-get install -y --no-install-recommends "$deb" >/dev/null
version=$(dpkg-deb -f "$deb" Version)
[ "$(tautweb --version)" = "tautweb $version" ] || wrong "it does not say $version"
as_crew tautweb verify "$logbook" >/dev/null || wrong "the logbook is not in order after the upgrade"
[ "$(as_crew tautweb verify "$logbook" --json | sha256sum)" = "$before" ] || wrong "the logbook says something else"
as_crew tautweb targets --press north --job J-2101 --roll R0041 | grep -q "Lift pressure" || wrong "no targets"

says "it is where a desktop looks for it"
for file in /usr/share/applications/tautweb.desktop /usr/share/metainfo/tautweb.metainfo.xml \
    /usr/share/icons/hicolor/scalable/apps/tautweb.svg /usr/share/man/man1/tautweb.1.gz \
    /usr/share/bash-completion/completions/tautweb /usr/share/doc/tautweb/copyright \
    /usr/share/doc/tautweb/changelog.gz /usr/share/doc/tautweb/tautweb.spdx.json /usr/share/tautweb/presses/north.toml; do
    [ -s "$file" ] || wrong "$file is missing"
done
if command -v xvfb-run >/dev/null; then
    # A window that stays open was opened: it is ended by the clock.
    status=0
    as_crew timeout 15 xvfb-run -a tautweb --demo >/dev/null 2>&1 || status=$?
    [ "$status" = 124 ] || wrong "the window does not stay open (status $status)"
fi

says "it is taken away"
dpkg -L tautweb | sort > "$work/files"
apt-get purge -y tautweb >/dev/null
while read -r file; do
    [ -f "$file" ] && wrong "$file is left behind"
done < "$work/files"
[ -e /usr/share/tautweb ] && wrong "/usr/share/tautweb is left behind"
[ -s "$logbook" ] || wrong "the logbook is gone"

[ $failed = 0 ] && echo "In order: installed, worked with, upgraded, taken away; the records stayed."
exit $failed
