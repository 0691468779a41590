#!/usr/bin/env bash
# SPDX-License-Identifier: GPL-3.0-or-later
# Tries a package as a shop would have it: installs it on a bare Debian 12, starts it from the menu, works with it, upgrades
# it, takes it away, and looks whether the records stayed and nothing else. As root, with debootstrap and a way to Debian's
# archive; about five minutes.
# Usage: try_deb.sh TAUTWEB.deb [PICTURES]   the bare Debian is made in a folder of its own and removed again
#        try_deb.sh --here TAUTWEB.deb [PICTURES]   on this machine, which it changes: for one that is thrown away
# PICTURES gets what was seen on the screen.
set -euo pipefail

where=$(cd "$(dirname "${BASH_SOURCE[0]}")" && pwd)
[ "$(id -u)" = 0 ] || { echo "try_deb.sh installs packages: run it as root." >&2; exit 2; }
inside=no
[ "${1:-}" = --here ] && { inside=yes; shift; }
[ -s "${1:-}" ] || { echo "There is no package \"${1:-}\"; packaging/deb.sh makes one." >&2; exit 2; }
deb=$(realpath "$1")
pictures=$(realpath -m "${2:-/dev/null}")
[ "$pictures" = /dev/null ] || mkdir -p "$pictures"

if [ $inside = no ]; then
    command -v debootstrap >/dev/null || { echo "debootstrap is missing: apt-get install debootstrap" >&2; exit 2; }
    machine=$(mktemp -d /var/tmp/tautweb-try.XXXXXX)
    chmod 755 "$machine" # it is the root folder of everybody in there
    # Its mounts are in a name space of their own and gone with it.
    trap 'rm -rf --one-file-system "$machine"' EXIT
    echo "-- a bare Debian 12 is made in $machine"
    debootstrap --variant=minbase --include=ca-certificates bookworm "$machine" >"$machine.log" 2>&1 ||
        { tail -5 "$machine.log" >&2; exit 2; }
    rm -f "$machine.log"
    # The archive is reached as it is from here.
    if [ -f /etc/apt/sources.list.d/debian.sources ]; then
        rm -f "$machine/etc/apt/sources.list"
        cp /etc/apt/sources.list.d/debian.sources "$machine/etc/apt/sources.list.d/"
    fi
    grep -ls Acquire /etc/apt/apt.conf.d/* | xargs -r cp -t "$machine/etc/apt/apt.conf.d/"
    cp /etc/resolv.conf /etc/hosts "$machine/etc/"
    cp -r /usr/local/share/ca-certificates "$machine/usr/local/share/"
    mkdir -p "$machine/srv/try/package" "$machine/srv/try/stores" "$machine/srv/try/pictures"
    cp "${BASH_SOURCE[0]}" "$deb" "$machine/srv/try/package/"
    cp "$where"/../stores/*.gz "$machine/srv/try/stores/"
    status=0
    env -i HOME=/root PATH=/usr/sbin:/usr/bin:/sbin:/bin TERM=dumb LC_ALL=C.UTF-8 \
        unshare --mount --pid --fork --propagation private bash -c '
            mount -t proc proc "$0/proc"; mount --rbind /dev "$0/dev"; mount -t tmpfs tmpfs "$0/tmp"
            chroot "$0" update-ca-certificates >/dev/null 2>&1 || true
            chroot "$0" /srv/try/package/try_deb.sh --here "/srv/try/package/$1" /srv/try/pictures' \
        "$machine" "$(basename "$deb")" || status=$?
    [ "$pictures" = /dev/null ] || cp "$machine"/srv/try/pictures/* "$pictures/" || true
    exit $status
fi

user=crew home=/home/crew
work=$(mktemp -d)
chmod 755 "$work"
trap 'rm -rf "$work"' EXIT
export DEBIAN_FRONTEND=noninteractive
failed=0
says() { echo "-- $*"; }
wrong() { echo "WRONG: $*" >&2; failed=1; }
as_crew() { (cd "$home" && runuser -u "$user" -- env HOME="$home" "$@"); }
fetched() { apt-get install -y "$@" >"$work/apt.log" 2>&1 || { tail -20 "$work/apt.log" >&2; exit 1; }; }
# What verify says of every logbook.
verified() {
    local logbook
    for logbook in "$home"/*.logbook "$home"/first/*.logbook "$home/.local/share/tautweb/shop.logbook"; do
        as_crew tautweb verify "$logbook" --json || wrong "$logbook is not in order"
    done
}
# Every record of the crew, with its bytes.
records() { find "$home/first" "$home/.local/share/tautweb" "$home"/*.logbook -type f -exec sha256sum {} + | sort -k2; }
# shown NAME COMMAND...: a window of the program comes up, under the name by which a desktop finds its entry, and is painted.
shown() {
    local name=$1
    shift
    as_crew xvfb-run -a -s "-screen 0 1366x768x24" bash -c '
        "${@:2}" & tried=0 painted=no
        until [ $painted = yes ]; do
            sleep 0.5; tried=$((tried + 1)); [ $tried -lt 120 ] || break
            xwininfo -root -tree | grep -q "(\"tautweb\" \"tautweb\") *[0-9]\{3,\}x" || continue
            # A screen of one colour packs to 14 kB.
            scrot -o "$1" && [ "$(stat -c %s "$1")" -gt 60000 ] && painted=yes
        done
        sleep 2; scrot -o "$1"
        for process in /proc/[0-9]*; do
            [ "$(readlink "$process/exe")" != /usr/bin/tautweb ] || kill "${process#/proc/}"
        done; wait; sleep 1; [ $painted = yes ]' shown "$work/pictures/$name.png" "$@" 2>"$work/$name.err" ||
        { wrong "no window: $*"; cat "$work/$name.err" >&2; }
    [ "$pictures" = /dev/null ] || cp "$work/pictures/$name.png" "$pictures/" || true
}

id "$user" >/dev/null 2>&1 || useradd -m -s /bin/bash "$user"
install -d -o "$user" "$work/pictures"
apt-get update -q >/dev/null
version=$(dpkg-deb -f "$deb" Version)
cp "$deb" "$work/tautweb.deb"

says "apt installs $version"
fetched "$work/tautweb.deb"
[ "$(dpkg-query -W -f '${Status} ${Version}' tautweb)" = "install ok installed $version" ] || wrong "it is not installed"
[ "$(tautweb --version)" = "tautweb $version" ] || wrong "it does not say $version"
ldd /usr/bin/tautweb | grep "not found" && wrong "libraries are missing"
dpkg --verify tautweb | grep . && wrong "files are not as they were packed"
dpkg -L tautweb | xargs -d '\n' sh -c 'find "$@" -maxdepth 0 \( ! -user root -o -perm /o+w -o -perm /7000 \)' sh | grep . &&
    wrong "these have odd rights"

says "it is where a desktop looks for it"
for file in bin/tautweb share/applications/tautweb.desktop share/metainfo/invalid.tautweb.tautweb.metainfo.xml \
    share/icons/hicolor/scalable/apps/tautweb.svg share/man/man1/tautweb.1.gz share/bash-completion/completions/tautweb \
    share/doc/tautweb/copyright share/doc/tautweb/changelog.gz share/doc/tautweb/tautweb.spdx.json share/doc/tautweb/notices \
    share/tautweb/presses/north.toml share/tautweb/help/de/start.md share/tautweb/demo/people.toml; do
    [ -s "/usr/$file" ] || wrong "/usr/$file is missing"
done
[ "$(bash -c '. /usr/share/bash-completion/completions/tautweb; COMP_WORDS=(tautweb verif); COMP_CWORD=1; _tautweb
    echo "${COMPREPLY[@]}"')" = verify ] || wrong "bash completes no verb"

says "somebody works with it"
as_crew tautweb targets --press north --job J-2101 --roll R0041 | grep -q "Lift pressure" || wrong "no targets"
as_crew tautweb targets --press north --job J-2101 --roll R0041 --json >"$work/targets" || wrong "no targets"
status=0
as_crew tautweb demo --out "$home/first" >/dev/null || status=$?
[ $status -le 1 ] || wrong "the demo job ends with $status" # 1: done, with a deviation
[ -n "$(find "$home/first" -name '*.pdf' -size +10k)" ] || wrong "there is no sheet"
as_crew mkdir -p .local/share/tautweb
as_crew tautweb demo --history 1y --runs 100 --logbook "$home/.local/share/tautweb/shop.logbook" >/dev/null 2>&1 ||
    wrong "no history"
# Written by the program as it was when layout 5 was new.
gunzip -c "$where/../stores/layout-5-north.logbook.gz" >"$home/older.logbook"
chown "$user:" "$home/older.logbook"

says "it starts from the menu"
fetched --no-install-recommends xvfb xauth x11-utils scrot libglib2.0-bin
shown menu gio launch /usr/share/applications/tautweb.desktop
shown demo sh -c "$(sed -n '/^\[Desktop Action demo\]/,$s/^Exec=//p' /usr/share/applications/tautweb.desktop)"
verified >"$work/before"

says "it is upgraded: the same, of a higher version, with a file more and a file less"
dpkg-deb -R "$deb" "$work/newer"
sed -i "s/^Version: .*/Version: $version+1/" "$work/newer/DEBIAN/control"
rm "$work/newer/usr/share/doc/tautweb/notices"
echo "Only the newer one has it." >"$work/newer/usr/share/doc/tautweb/newer"
(cd "$work/newer" && find usr -type f -exec md5sum {} + >DEBIAN/md5sums)
dpkg-deb --root-owner-group -b "$work/newer" "$work/newer.deb" >/dev/null
records >"$work/records"
fetched "$work/newer.deb"
[ "$(dpkg-query -W -f '${Version}' tautweb)" = "$version+1" ] || wrong "it is not upgraded"
[ -e /usr/share/doc/tautweb/newer ] || wrong "the new file is not there"
[ ! -e /usr/share/doc/tautweb/notices ] || wrong "the old file is still there"
dpkg --verify tautweb | grep . && wrong "files are not as they were packed"
records | cmp -s - "$work/records" || wrong "the upgrade touched the records"
verified >"$work/after"
cmp "$work/before" "$work/after" || wrong "the logbooks say something else"
as_crew tautweb targets --press north --job J-2101 --roll R0041 --json | cmp - "$work/targets" || wrong "other targets"
shown upgraded gio launch /usr/share/applications/tautweb.desktop

says "it is taken away"
records >"$work/records"
dpkg -L tautweb | sort >"$work/files"
apt-get purge -y tautweb >/dev/null 2>&1 || wrong "purge failed"
while read -r file; do
    [ ! -f "$file" ] || wrong "$file is left behind"
done <"$work/files"
find / -xdev -iname '*tautweb*' -not -path "$home/*" -not -path "$work*" -not -path "$where/*" | grep . &&
    wrong "this is left behind"
records | cmp -s - "$work/records" || wrong "the records are not as they were"

says "it comes again, and reads them"
fetched "$work/tautweb.deb"
verified | cmp - "$work/after" || wrong "the logbooks say something else"

[ $failed = 0 ] || exit 1
echo "In order: installed, started, worked with, upgraded, taken away; $(wc -l <"$work/records") files of records stayed as they were."
