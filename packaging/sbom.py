#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""Lists what a built program is linked with, and under which licences, as SPDX 2.3.

Usage: sbom.py PROGRAM VERSION EPOCH > tautweb.spdx.json
EPOCH is the second that counts as the time of making. A library whose licence nobody looked up yet ends it with 1.
"""
import datetime
import json
import re
import subprocess
import sys

# What /usr/share/doc/PACKAGE/copyright says of the library itself, looked up for Debian 12, and why it goes with a program
# under GPL-3.0-or-later: all of these may be linked into one. A name stands for all packages that begin so.
LICENCES = {
    "libc6": "LGPL-2.1-or-later",
    "libgcc-s1": "GPL-3.0-or-later WITH GCC-exception-3.1",
    "libstdc++6": "GPL-3.0-or-later WITH GCC-exception-3.1",
    "libqt6": "LGPL-3.0-only OR GPL-2.0-only OR GPL-3.0-only",
    "libsqlite3-0": "blessing",
    "libsodium23": "ISC",
    "libqrencode4": "LGPL-2.1-or-later",
    "libgsl27": "GPL-3.0-or-later",
    "libgslcblas0": "GPL-3.0-or-later",
    "libtomlplusplus3": "MIT",
    # Linked into the program, or headers only.
    "libsqlitecpp-dev": "MIT",
    "nlohmann-json3-dev": "MIT",
}
BUILT_IN = ["libsqlitecpp-dev", "nlohmann-json3-dev"]


def run(*words):
    return subprocess.run(words, check=True, capture_output=True, text=True).stdout


def package_of(file):
    """The package of an installed file; libraries moved from /lib to /usr/lib are known under either name."""
    for name in (file, file.removeprefix("/usr"), "/usr" + file):
        found = subprocess.run(["dpkg-query", "-S", name], capture_output=True, text=True)
        if found.returncode == 0:
            return found.stdout.split(":")[0].split(",")[0]
    sys.exit(f"sbom.py: {file} is of no installed package")


def libraries_of(program):
    """The packages of the libraries that the program itself names; what these need is theirs to tell."""
    needed = re.findall(r"\(NEEDED\).*\[(.+)\]", run("readelf", "-d", program))
    where = dict(re.findall(r"(\S+) => (\S+)", run("ldd", program)))
    return {package_of(run("readlink", "-f", where[name]).strip()) for name in needed if name in where}


def licence_of(package):
    for name, licence in LICENCES.items():
        if package == name or name == "libqt6" and package.startswith(name):
            return licence
    sys.exit(f"sbom.py: nobody looked up the licence of {package}: read /usr/share/doc/{package}/copyright and add it")


def main():
    program, version, epoch = sys.argv[1], sys.argv[2], int(sys.argv[3])
    when = datetime.datetime.fromtimestamp(epoch, datetime.timezone.utc).strftime("%Y-%m-%dT%H:%M:%SZ")
    root = {"SPDXID": "SPDXRef-tautweb", "name": "tautweb", "versionInfo": version, "downloadLocation": "NOASSERTION",
            "filesAnalyzed": False, "licenseConcluded": "GPL-3.0-or-later", "licenseDeclared": "GPL-3.0-or-later",
            "copyrightText": "2026 The Tautweb developers"}
    packages, relations = [root], [("SPDXRef-DOCUMENT", "DESCRIBES", "SPDXRef-tautweb")]
    for name in sorted(libraries_of(program) | set(BUILT_IN)):
        found = run("dpkg-query", "-W", "-f", "${Version} ${source:Package}", name).split()
        spdx = "SPDXRef-" + re.sub(r"[^A-Za-z0-9.-]", "-", name)
        licence = licence_of(name)
        packages.append({"SPDXID": spdx, "name": name, "versionInfo": found[0],
                         "downloadLocation": "NOASSERTION", "filesAnalyzed": False, "licenseConcluded": licence,
                         "licenseDeclared": licence, "copyrightText": "NOASSERTION",
                         "sourceInfo": f"Debian source package {found[1]}",
                         "externalRefs": [{"referenceCategory": "PACKAGE-MANAGER", "referenceType": "purl",
                                           "referenceLocator": f"pkg:deb/debian/{name}@{found[0]}"}]})
        how = "STATIC_LINK" if name in BUILT_IN else "DYNAMIC_LINK"
        relations.append(("SPDXRef-tautweb", how, spdx))
    print(json.dumps({
        "spdxVersion": "SPDX-2.3", "dataLicense": "CC0-1.0", "SPDXID": "SPDXRef-DOCUMENT", "name": f"tautweb-{version}",
        "documentNamespace": f"https://tautweb.invalid/spdx/tautweb-{version}-{epoch}",
        "creationInfo": {"created": when, "creators": ["Organization: The Tautweb developers", "Tool: sbom.py"]},
        "packages": packages,
        "relationships": [{"spdxElementId": a, "relationshipType": how, "relatedSpdxElement": b}
                          for a, how, b in relations],
    }, indent=1))


main()
