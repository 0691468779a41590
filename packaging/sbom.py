#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""Lists what a built program is made of, and under which licences, as SPDX 2.3.

Usage: sbom.py PROGRAM BUILD VERSION EPOCH FOLDER
BUILD is the ninja build it came out of, EPOCH the second that counts as the time of making. FOLDER gets tautweb.spdx.json and
notices: the copyright files of what is built in, for no package that is installed beside the program brings these.

What is linked the dynamic linker says, what is built in the headers that were compiled; whose a file is says dpkg, and its
licence the package's copyright file. A licence that cannot be read out of it, or that does not go with the program's own,
ends it with 1. What is only loaded at run time (plug-ins of Qt) is no part of it.
"""
import datetime
import json
import pathlib
import re
import subprocess
import sys

OURS = "GPL-3.0-or-later"
DOCS = pathlib.Path("/usr/share/doc")

# What may be part of one work under GPL-3.0-or-later (GNU project, "Various Licenses and Comments about Them" and the GPL
# FAQ's matrix of compatibility; names as in the SPDX licence list; both from memory).
COMPATIBLE = {
    "Apache-2.0", "BSD-2-Clause", "BSD-3-Clause", "CC0-1.0", "FTL", "GPL-2.0-or-later", "GPL-3.0-only", "GPL-3.0-or-later",
    "GPL-3.0-or-later WITH GCC-exception-3.1", "HPND-sell-variant", "ISC", "LGPL-2.0-or-later", "LGPL-2.1-or-later",
    "LGPL-3.0-only", "LGPL-3.0-or-later", "Libpng", "LicenseRef-public-domain", "MIT", "MIT-open-group", "TCL", "X11", "Zlib",
}

# Names that Debian's copyright files use where SPDX has another.
NAMES = {
    "afl-2.1": "AFL-2.1", "apache-2.0": "Apache-2.0", "bsd-2-clause": "BSD-2-Clause", "bsd-3-clause": "BSD-3-Clause",
    "bsd-3-clause-cambridge with binary library-like packages exception": "BSD-3-Clause", "cc0": "CC0-1.0", "expat": "MIT",
    "ftl": "FTL", "gpl-2": "GPL-2.0-only", "gpl-2+": "GPL-2.0-or-later", "gpl-3": "GPL-3.0-only", "gpl-3+": "GPL-3.0-or-later",
    "isc": "ISC", "lgpl-2+": "LGPL-2.0-or-later", "lgpl-2.1+": "LGPL-2.1-or-later", "lgpl-3": "LGPL-3.0-only",
    "lgpl-3+": "LGPL-3.0-or-later", "libpng": "Libpng", "mit": "MIT", "mpl-1.1": "MPL-1.1", "pd": "LicenseRef-public-domain",
    "public-domain": "LicenseRef-public-domain", "tcl-bsdish": "TCL", "zlib": "Zlib",
}

# Copyright files that a person has to read: they are prose, or speak of the library itself in another place than of the
# rest. By the folder that holds the file: the licence, and the words that say so, which must still stand there.
FREE_OF_CHARGE = "Permission is hereby granted, free of charge, to any person obtaining a copy of this software"
WITHOUT_FEE = "and sell this software and its documentation for any purpose is hereby granted without fee"
LESSER = "GNU Lesser General Public License as published by the Free Software Foundation; either version 2.1 of the License, or"
TWO_CONDITIONS = "Redistribution and use in source and binary forms, with or without modification, are permitted provided"
READ = {
    "gcc-12-base": ("GPL-3.0-or-later WITH GCC-exception-3.1",
                    "GNU General Public License (v3 or later) with version 3.1 of the GCC Runtime Library Exception"),
    "libc6": ("LGPL-2.1-or-later", LESSER),
    "libfontconfig1": ("HPND-sell-variant", WITHOUT_FEE),
    "libgcrypt20": ("LGPL-2.1-or-later", "License (library): LGPLv2.1+"),
    "libglib2.0-0": ("LGPL-2.1-or-later", "License: LGPL-2+ and LGPL-2.1+ and FSFULLR and CC0-1.0"),
    "libgsl27": ("GPL-3.0-or-later", "Public License (version 3) can be found in `/usr/share/common-licenses/GPL-3'"),
    "libgslcblas0": ("GPL-3.0-or-later", "Public License (version 3) can be found in `/usr/share/common-licenses/GPL-3'"),
    "libgssapi-krb5-2": ("BSD-2-Clause", TWO_CONDITIONS),
    "libk5crypto3": ("BSD-2-Clause", TWO_CONDITIONS),
    "libkrb5-3": ("BSD-2-Clause", TWO_CONDITIONS),
    "libkrb5support0": ("BSD-2-Clause", TWO_CONDITIONS),
    "libproxy1v5": ("LGPL-2.1-or-later", LESSER),
    "libx11-6": ("MIT", FREE_OF_CHARGE),
    "libxau6": ("MIT-open-group", WITHOUT_FEE),
    "libxcb1": ("X11", FREE_OF_CHARGE),
    "libxdmcp6": ("MIT-open-group", WITHOUT_FEE),
    "libxkbcommon0": ("MIT", FREE_OF_CHARGE),
}

# Does not go with ours by the words of its copyright file, and why that is no hindrance. Only for what another library brings:
# what the program itself names is never in here.
BROUGHT = {
    "libcom-err2": "The copyright file gives the whole of its source package, file systems and all, one licence, and says so "
                   "(\"for simplification\"). This program neither includes nor names the library: the system's Kerberos, "
                   "behind Qt Network, does. A system library in the sense of GPL-3.0, section 1.",
}


def run(*words):
    return subprocess.run(words, check=True, capture_output=True, text=True).stdout


def packages_of(files):
    """The packages of installed files; those moved from /lib to /usr/lib are known under either name."""
    found = {}
    names = sorted({name for file in files for name in (file, file.removeprefix("/usr"), "/usr" + file)})
    listed = subprocess.run(["dpkg-query", "-S", *names], capture_output=True, text=True).stdout
    for line in listed.splitlines():
        owners, name = line.rsplit(": ", 1)
        found[name] = owners.split(",")[0].split(":")[0]
    packages = set()
    for file in files:
        package = found.get(file) or found.get(file.removeprefix("/usr")) or found.get("/usr" + file)
        if package is None:
            sys.exit(f"sbom.py: {file} is of no installed package")
        packages.add(package)
    return packages


def linked_with(program):
    """The packages of the libraries that the program itself names, and of all that the dynamic linker loads for it."""
    where = {}
    for line in run("ldd", program).splitlines():
        loaded = re.match(r"\s*(\S+)(?: => (\S+))? \(0x", line)
        if loaded and "/" in (loaded[2] or loaded[1]):
            where[loaded[1]] = str(pathlib.Path(loaded[2] or loaded[1]).resolve())
    named = [str(pathlib.Path(n).name) for n in re.findall(r"\(NEEDED\).*\[(.+)\]", run("readelf", "-d", program))]
    paths = {pathlib.Path(name).name: file for name, file in where.items()}
    return packages_of([paths[name] for name in named]), packages_of(list(where.values()))


def compiled_in(build):
    """The packages of all headers that the program's own sources were compiled with, not those of tests. The kernel's are its
    interface and no part of the program."""
    headers = set()
    for of_object in run("ninja", "-C", build, "-t", "deps").split("\n\n"):
        if re.match(r"(app|core)/", of_object):
            headers |= {str(pathlib.Path(h).resolve()) for h in re.findall(r"^\s+(/usr/\S+)", of_object, re.M)}
    return packages_of([h for h in headers if not re.match(r"/usr/include/(.*-linux-gnu/)?(linux|asm|asm-generic)/", h)])


def source_of(package):
    return run("dpkg-query", "-W", "-f", "${source:Package}\n", package).split()[0]


def spdx_of(debian):
    """Debian's short names (copyright format 1.0, "Short name" and "Syntax") as an SPDX expression; None if one is unknown."""
    parts = []
    for part in re.split(r",? and ", debian):
        names = [NAMES.get(name.strip().lower()) for name in part.split(" or ")]
        if None in names:
            return None
        parts.append(" OR ".join(names))
    # "A or B and C" means two things; only the comma tells which.
    if len(parts) > 1 and " or " in debian and ", and " not in debian:
        return None
    return " AND ".join(f"({part})" if " OR " in part and len(parts) > 1 else part for part in parts)


def licence_of(package, docs=DOCS):
    """What the package's copyright file says of the library, as an SPDX expression."""
    file = (docs / package / "copyright").resolve()
    if not file.is_file():
        sys.exit(f"sbom.py: {package} has no copyright file ({file})")
    text = file.read_text(encoding="utf-8", errors="replace")
    if file.parent.name in READ:
        licence, words = READ[file.parent.name]
        if words not in " ".join(text.split()):
            sys.exit(f"sbom.py: {file} no longer says \"{words}\": read it and mend the table")
        return licence
    for paragraph in re.split(r"\n\s*\n", text):
        if re.search(r"^Files:\s*\*\s*$", paragraph, re.M):
            name = re.search(r"^License:[ \t]*(.+)$", paragraph, re.M)
            licence = spdx_of(name[1]) if name else None
            if licence:
                return licence
            sys.exit(f"sbom.py: {file} names a licence that nobody looked up yet: {name[1] if name else 'none'}")
    sys.exit(f"sbom.py: nobody read {file} yet: read it and add what it says to the table")


def fits(licence):
    """Whether a work under it may be part of one under ours: of each part, one of its alternatives."""
    return all(any(one in COMPATIBLE for one in part.strip("()").split(" OR ")) for part in licence.split(" AND "))


def entry(package, named):
    version, source = run("dpkg-query", "-W", "-f", "${Version} ${source:Package}\n", package).splitlines()[0].split()
    licence = licence_of(package)
    made = {"SPDXID": "SPDXRef-" + re.sub(r"[^A-Za-z0-9.-]", "-", package), "name": package, "versionInfo": version,
            "downloadLocation": "NOASSERTION", "filesAnalyzed": False, "licenseConcluded": licence,
            "licenseDeclared": licence, "copyrightText": "NOASSERTION", "sourceInfo": f"Debian source package {source}",
            "externalRefs": [{"referenceCategory": "PACKAGE-MANAGER", "referenceType": "purl",
                              "referenceLocator": f"pkg:deb/debian/{package}@{version}"}]}
    if not fits(licence):
        if named or package not in BROUGHT:
            sys.exit(f"sbom.py: {package} is under {licence}, which does not go with {OURS}")
        made["licenseComments"] = BROUGHT[package]
    return made


def main():
    program, build, version, epoch, folder = sys.argv[1], sys.argv[2], sys.argv[3], int(sys.argv[4]), pathlib.Path(sys.argv[5])
    when = datetime.datetime.fromtimestamp(epoch, datetime.timezone.utc).strftime("%Y-%m-%dT%H:%M:%SZ")
    named, loaded = linked_with(program)
    sources = {source_of(package) for package in loaded}
    built_in = {package for package in compiled_in(build) if source_of(package) not in sources}
    root = {"SPDXID": "SPDXRef-tautweb", "name": "tautweb", "versionInfo": version, "downloadLocation": "NOASSERTION",
            "filesAnalyzed": False, "licenseConcluded": OURS, "licenseDeclared": OURS,
            "copyrightText": "2026 The Tautweb developers"}
    packages, relations = [root], [("SPDXRef-DOCUMENT", "DESCRIBES", "SPDXRef-tautweb")]
    for package in sorted(loaded | built_in):
        packages.append(entry(package, package in named or package in built_in))
        how = "STATIC_LINK" if package in built_in else "DYNAMIC_LINK" if package in named else "DEPENDS_ON"
        relations.append(("SPDXRef-tautweb", how, packages[-1]["SPDXID"]))
    document = {
        "spdxVersion": "SPDX-2.3", "dataLicense": "CC0-1.0", "SPDXID": "SPDXRef-DOCUMENT", "name": f"tautweb-{version}",
        "documentNamespace": f"https://tautweb.invalid/spdx/tautweb-{version}-{epoch}",
        "creationInfo": {"created": when, "creators": ["Organization: The Tautweb developers", "Tool: sbom.py"]},
        "hasExtractedLicensingInfos": [{"licenseId": "LicenseRef-public-domain", "name": "Public domain",
                                        "extractedText": "Its authors have put it into the public domain."}],
        "packages": packages,
        "relationships": [{"spdxElementId": a, "relationshipType": how, "relatedSpdxElement": b} for a, how, b in relations],
    }
    (folder / "tautweb.spdx.json").write_text(json.dumps(document, indent=1) + "\n", encoding="utf-8")
    said = ["Tautweb has in it, beside its own code, that of the Debian packages below.\nTheir copyright files, as they stand:\n"]
    for package in sorted(built_in):
        said.append("\n" + "=" * 20 + f" {package}\n\n" + (DOCS / package / "copyright").read_text(encoding="utf-8"))
    (folder / "notices").write_text("".join(said), encoding="utf-8")


if __name__ == "__main__":
    main()
