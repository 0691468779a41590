#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""Checks the list of what the program is made of. Usage: sbom_test.py SOURCE BUILD"""
import importlib.util
import json
import pathlib
import re
import subprocess
import sys
import tempfile
import unittest

SOURCE, BUILD = pathlib.Path(sys.argv[1]), pathlib.Path(sys.argv[2])
PROGRAM = BUILD / "tautweb"
spec = importlib.util.spec_from_file_location("sbom", SOURCE / "packaging" / "sbom.py")
sbom = importlib.util.module_from_spec(spec)
spec.loader.exec_module(sbom)


def run(*words):
    return subprocess.run([str(w) for w in words], check=True, capture_output=True, text=True).stdout


def made(folder):
    """The list and the notices, made of the program as it was built."""
    run(sys.executable, SOURCE / "packaging" / "sbom.py", PROGRAM, BUILD, "0.1.0", "1795780800", folder)
    return (folder / "tautweb.spdx.json").read_bytes(), (folder / "notices").read_text(encoding="utf-8")


class Listed(unittest.TestCase):
    @classmethod
    def setUpClass(cls):
        with tempfile.TemporaryDirectory() as one, tempfile.TemporaryDirectory() as two:
            cls.bytes, cls.notices = made(pathlib.Path(one))
            cls.again, _ = made(pathlib.Path(two))
        cls.document = json.loads(cls.bytes)
        cls.packages = {p["name"]: p for p in cls.document["packages"]}
        cls.relation = {r["relatedSpdxElement"]: r["relationshipType"] for r in cls.document["relationships"]}

    def how(self, package):
        return self.relation[self.packages[package]["SPDXID"]]

    def test_it_has_the_fields_that_spdx_asks_for(self):
        # SPDX specification 2.3, clauses 6 (document creation), 7 (package), 10 (other licensing), 11 (relationships).
        d = self.document
        self.assertEqual((d["spdxVersion"], d["dataLicense"], d["SPDXID"]), ("SPDX-2.3", "CC0-1.0", "SPDXRef-DOCUMENT"))
        self.assertRegex(d["documentNamespace"], r"^https://[^#]+$")
        self.assertEqual(d["creationInfo"]["created"], "2026-11-27T12:00:00Z")
        for creator in d["creationInfo"]["creators"]:
            self.assertRegex(creator, r"^(Person|Organization|Tool): ")
        ids = [p["SPDXID"] for p in d["packages"]]
        self.assertEqual(len(ids), len(set(ids)))
        for p in d["packages"]:
            self.assertRegex(p["SPDXID"], r"^SPDXRef-[A-Za-z0-9.-]+$")
            self.assertTrue(p["name"] and p["versionInfo"] and p["downloadLocation"])
        for r in d["relationships"]:
            self.assertIn(r["spdxElementId"], ids + ["SPDXRef-DOCUMENT"])
            self.assertIn(r["relatedSpdxElement"], ids)
        self.assertEqual(self.how("tautweb"), "DESCRIBES")
        told = {one["licenseId"] for one in d["hasExtractedLicensingInfos"]}
        asked = set(re.findall(r"LicenseRef-[A-Za-z0-9.-]+", " ".join(p["licenseConcluded"] for p in d["packages"])))
        self.assertEqual(told, asked)

    def test_every_library_that_is_loaded_is_listed_and_no_other(self):
        # From the other side: what the loader opens, looked for among the files of each listed package.
        loaded = {pathlib.Path(f).resolve() for f in re.findall(r"(/\S+) \(0x", run("ldd", PROGRAM))}
        owned = set()
        for name in set(self.packages) - {"tautweb"}:
            files = {pathlib.Path(f).resolve() for f in run("dpkg-query", "-L", name).split("\n") if ".so" in f}
            if self.how(name) != "STATIC_LINK":
                self.assertTrue(files & loaded, f"{name} is listed and nothing of it is loaded")
            owned |= files
        self.assertEqual({str(f) for f in loaded - owned}, set())

    def test_what_the_program_names_itself_is_told_apart(self):
        for name in ("libqt6widgets6", "libsqlite3-0", "libsodium23", "libgsl27", "libc6"):
            self.assertEqual(self.how(name), "DYNAMIC_LINK", name)
        self.assertEqual(self.how("libfontconfig1"), "DEPENDS_ON")

    def test_what_is_built_in_is_found_by_its_headers_and_its_notice_is_kept(self):
        built_in = {name for name in self.packages if self.how(name) == "STATIC_LINK"}
        # Libraries of which a package has no file at run time (DEVELOPERS.md, "Libraries"); not what tests are built with.
        self.assertEqual(built_in, {"libsqlitecpp-dev", "nlohmann-json3-dev"})
        for name in built_in:
            self.assertIn(pathlib.Path(f"/usr/share/doc/{name}/copyright").read_text(encoding="utf-8"), self.notices)

    def test_licences_are_those_of_the_copyright_files(self):
        # Read by hand in the copyright files of Debian 12.
        for name, licence in {"libqt6core6": "LGPL-3.0-only OR GPL-2.0-only", "libsodium23": "ISC", "libgsl27": "GPL-3.0-or-later",
                              "libc6": "LGPL-2.1-or-later", "libqrencode4": "LGPL-2.1-or-later", "libfreetype6": "FTL",
                              "libstdc++6": "GPL-3.0-or-later WITH GCC-exception-3.1", "nlohmann-json3-dev": "MIT",
                              "libdbus-1-3": "(GPL-2.0-or-later OR AFL-2.1) AND MIT AND TCL"}.items():
            self.assertEqual(self.packages[name]["licenseConcluded"], licence, name)

    def test_every_licence_goes_with_ours_or_says_why_it_may_stand_there(self):
        for name, package in self.packages.items():
            if not sbom.fits(package["licenseConcluded"]):
                self.assertEqual(self.how(name), "DEPENDS_ON", name)
                self.assertTrue(package["licenseComments"])

    def test_the_same_program_gives_the_same_bytes(self):
        self.assertEqual(self.bytes, self.again)


class Licences(unittest.TestCase):
    def test_ours_is_the_text_that_debian_has(self):
        def words(file):
            return pathlib.Path(file).read_text(encoding="utf-8").split()
        self.assertEqual(words(SOURCE / "LICENSE"), words("/usr/share/common-licenses/GPL-3"))

    def test_what_does_not_go_with_gpl_3_is_refused(self):
        # GNU project, "Various Licenses and Comments about Them", section "GPL-Incompatible Free Software Licenses", and for
        # GPL-2.0-only the FAQ's matrix of compatibility; from memory.
        for licence in ("GPL-2.0-only", "BSD-4-Clause", "OpenSSL", "CDDL-1.0", "MPL-1.1", "AFL-2.1", "EPL-1.0",
                        "MIT AND GPL-2.0-only", "(MPL-1.1 OR GPL-2.0-only) AND MIT"):
            self.assertFalse(sbom.fits(licence), licence)
        for licence in ("MIT", "Apache-2.0", "GPL-2.0-only OR LGPL-3.0-only", "(AFL-2.1 OR GPL-2.0-or-later) AND MIT"):
            self.assertTrue(sbom.fits(licence), licence)

    def test_debians_short_names_are_read_as_its_copyright_format_says(self):
        # Machine-readable debian/copyright 1.0, "Syntax" of the licence field: "A or B, and C" is "(A or B) and C".
        self.assertEqual(sbom.spdx_of("LGPL-3 or GPL-2"), "LGPL-3.0-only OR GPL-2.0-only")
        self.assertEqual(sbom.spdx_of("GPL-2+ or AFL-2.1, and Expat"), "(GPL-2.0-or-later OR AFL-2.1) AND MIT")
        self.assertEqual(sbom.spdx_of("Expat and ISC"), "MIT AND ISC")
        self.assertIsNone(sbom.spdx_of("GPL-2 or Expat and ISC"))
        self.assertIsNone(sbom.spdx_of("Some-new-licence"))

    def test_every_name_stands_in_the_list_of_spdx(self):
        # SPDX licence list, as the Debian package node-spdx-license-ids has it; exceptions have a list of their own.
        known = set(json.loads(pathlib.Path("/usr/share/nodejs/spdx-license-ids/index.json").read_text(encoding="utf-8")))
        for name in sbom.COMPATIBLE | set(sbom.NAMES.values()) | {licence for licence, _ in sbom.READ.values()}:
            if not name.startswith("LicenseRef-"):
                self.assertIn(name.split(" WITH ")[0], known)

    def refusal(self, package, text):
        with tempfile.TemporaryDirectory() as docs:
            folder = pathlib.Path(docs) / package
            folder.mkdir()
            (folder / "copyright").write_text(text, encoding="utf-8")
            with self.assertRaises(SystemExit) as ended:
                sbom.licence_of(package, pathlib.Path(docs))
        return str(ended.exception)

    def test_a_copyright_file_that_nobody_read_stops_it(self):
        self.assertIn("nobody read", self.refusal("libnew1", "This is prose. You may use it.\n"))
        self.assertIn("looked up", self.refusal("libnew1", "Format: x\n\nFiles: *\nCopyright: y\nLicense: New-1\n"))
        self.assertIn("no longer says", self.refusal("libc6", "It has another licence now.\n"))


unittest.main(argv=sys.argv[:1], verbosity=1)
