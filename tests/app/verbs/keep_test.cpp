// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <catch2/catch.hpp>

#include "core/base/crypto.h"
#include "core/base/file.h"
#include "core/units/plain.h"
#include "tests/app/verbs/verbs_support.h"
#include "tests/core/base/tiny_disk.h"

using namespace taut;
using namespace taut::app;
using namespace taut::app::test;

namespace {

namespace fs = std::filesystem;

/// A logbook with a run that was signed with deviations; the pen laid down.
struct Shop {
    Folder folder;
    std::string file, run, anchor;
    Shop()
    {
        Stage stage;
        const auto told = stage.tell(answersOf("north"));
        if (!told) FAIL(sentence(told.error()));
        run = told->runId;
        anchor = seal::anchorText(stage.writer->reader().anchor().value());
        stage.writer.reset();
        file = folder / "shop.logbook";
        fs::copy_file(stage.folder / "demo.logbook", file);
    }
};
Shop& shop()
{
    static Shop one;
    return one;
}

bool says(const std::string& text, const char* what) { return text.find(what) != std::string::npos; }

std::string textOfPdf(const std::string& file) { return runTool("pdftotext", {"-layout", file, "-"}).out; }

}  // namespace

TEST_CASE("backup copies, tells when none is due, and restore brings the copy back beside what lay there")
{
    Folder folder;
    const std::string file = folder / "shop.logbook", elsewhere = folder / "elsewhere";
    fs::copy_file(shop().file, file);
    const Ran missing = runProgram({"backup", "--logbook", file, "--to", elsewhere});
    CHECK(missing.exit == 2);
    CHECK(says(missing.err, "is not there"));
    fs::create_directory(elsewhere);
    const Ran backed = runProgram({"backup", "--logbook", file, "--to", elsewhere, "--json"});
    INFO(backed.err);
    REQUIRE(backed.exit == 0);
    const std::string copy = backed.json()["copy"].text();
    CHECK(fs::exists(copy));
    CHECK(seal::anchorText({static_cast<std::uint64_t>(backed.json()["count"].integer()),
                            seal::readAnchor("1:" + backed.json()["link"].text())->link}) == shop().anchor);
    const Ran due = runInside({"backup", "--logbook", file, "--to", elsewhere, "--if-due"});
    CHECK(due.exit == 0);
    CHECK(says(due.out, "No copy is due"));
    CHECK(std::distance(fs::directory_iterator(elsewhere), {}) == 1);

    REQUIRE(writeFile(file, "destroyed"));
    const Ran restored = runProgram({"restore", "--from", copy, "--to", file, "--anchor", shop().anchor});
    INFO(restored.err);
    CHECK(restored.exit == 1);  // what lay there cannot be read, and that is said
    CHECK(says(restored.err, "cannot be read"));
    CHECK(says(restored.out, "restored and in order"));
    CHECK(says(restored.out, "is kept as"));
    const Ran verified = runInside({"verify", file, "--anchor", shop().anchor, "--deep"});
    CHECK(verified.exit == 0);
    const Ran again = runInside({"restore", "--from", copy, "--to", folder / "new.logbook", "--json"});
    CHECK(again.exit == 0);
    CHECK(again.json()["set_aside"].isNull());
    CHECK(again.json()["people"] == again.json()["can_sign_in"]);
}

TEST_CASE("backup --mirror keeps every seal and no PIN, and a mirror restored alone says that nobody can sign in")
{
    Folder folder;
    const std::string elsewhere = folder / "elsewhere";
    fs::create_directory(elsewhere);
    const Ran mirrored = runInside({"backup", "--mirror", "--logbook", shop().file, "--to", elsewhere, "--json"});
    CHECK(mirrored.exit == 0);
    CHECK(mirrored.json()["behind"].integer() == 0);
    const std::string mirror = mirrored.json()["mirror"].text();
    CHECK_FALSE(says(readFile(mirror).value(), "argon2id"));
    CHECK(runInside({"verify", mirror, "--anchor", shop().anchor, "--deep"}).exit == 0);
    const Ran alone = runInside({"restore", "--from", mirror, "--to", folder / "alone.logbook"});
    CHECK(alone.exit == 1);
    CHECK(says(alone.err, "nobody can sign in"));
    const Ran with =
        runInside({"restore", "--from", mirror, "--to", folder / "with.logbook", "--people-from", shop().file});
    CHECK(with.exit == 0);
    CHECK(says(with.out, "people can sign in"));
}

TEST_CASE("a restore that is asked wrongly, or from what is not in order, changes nothing and says why")
{
    Folder folder;
    const std::string bad = folder / "bad.logbook", file = folder / "shop.logbook";
    fs::copy_file(shop().file, file);
    fs::copy_file(shop().file, bad);
    fs::resize_file(bad, fs::file_size(bad) / 2);
    const std::string before = readFile(file).value();
    const Ran cut = runInside({"restore", "--from", bad, "--to", file});
    CHECK(cut.exit == 2);
    CHECK(says(cut.err, "Nothing was restored and nothing was changed"));
    CHECK(runInside({"restore", "--from", file, "--to", file}).exit == 2);
    CHECK(runInside({"restore", "--to", file}).exit == 2);
    CHECK(runInside({"restore", "--from", folder / "none", "--to", file}).exit == 2);
    CHECK(runInside({"backup", "--logbook", file}).exit == 2);
    CHECK(runInside({"backup", "--logbook", file, "--to", folder / "", "--keep", "0"}).exit == 2);
    const Ran broken = runInside({"backup", "--logbook", bad, "--to", folder / ""});
    CHECK(broken.exit != 0);
    CHECK(readFile(file).value() == before);
}

TEST_CASE("an exported run is verified and shown from its file alone, and a changed one is not")
{
    Folder folder;
    const std::string file = folder / "run.json", pdf = folder / "run.pdf";
    const Ran exported = runProgram({"export", shop().run, "--as", "json", "--out", file, "--logbook", shop().file});
    INFO(exported.err);
    REQUIRE(exported.exit == 0);
    const Ran verified = runProgram({"verify", file});
    CHECK(verified.exit == 0);
    CHECK(says(verified.out, "in order as far as it goes"));
    const std::string anchor = verified.out.substr(verified.out.find("anchor ") + 7);
    CHECK(runInside({"verify", file, "--anchor", anchor}).exit == 0);
    CHECK(runInside({"verify", file, "--json"}).json()["in_order"].boolean());
    // The logbook agrees that this seal is its own.
    CHECK(runInside({"verify", shop().file, "--anchor", anchor}).exit == 0);
    const Ran outside = runTool("bash", {std::string(TAUTWEB_SOURCE_DIR) + "/tests/published/check_export.sh", file});
    INFO(outside.err);
    CHECK(outside.exit == 0);
    CHECK(says(outside.out, "signatures"));

    const Ran shown = runProgram({"sheet", "--import", file, "--out", pdf});
    INFO(shown.err);
    REQUIRE(shown.exit == 0);
    const std::string text = textOfPdf(pdf);
    CHECK(says(text, "IMPORTED, for reading only"));
    CHECK(says(text, "Inka Thorsby"));
    CHECK(says(text, shop().run.c_str()));

    std::string changed = readFile(file).value();
    const std::size_t at = changed.find("Inka Thorsby", changed.find("\\\"kind\\\":\\\"run\\\""));
    REQUIRE(at != std::string::npos);
    changed.replace(at, 4, "Inga");
    REQUIRE(writeFile(folder / "changed.json", changed));
    const Ran refused = runInside({"verify", folder / "changed.json"});
    CHECK(refused.exit == 1);
    CHECK(says(refused.out, "NOT in order"));
    const Ran notShown = runInside({"sheet", "--import", folder / "changed.json", "--out", folder / "no.pdf"});
    CHECK(notShown.exit == 1);
    CHECK_FALSE(fs::exists(folder / "no.pdf"));
    REQUIRE(writeFile(folder / "other.json", "{\"format\":1}"));
    CHECK(runInside({"verify", folder / "other.json"}).exit == 2);
    CHECK(runInside({"sheet", "--import", folder / "none.json"}).exit == 2);
}

TEST_CASE("export gives the sealed bytes bare, readings as a table, and the sheet")
{
    Folder folder;
    const auto exported = [&](std::vector<std::string> args) {
        args.insert(args.begin(), "export");
        args.insert(args.end(), {"--logbook", shop().file});
        return runProgram(args, folder.path());
    };
    REQUIRE(exported({shop().run, "--as", "json", "--bare"}).exit == 0);
    CHECK(readFile(folder / (shop().run + ".json")).value() ==
          runInside({"runs", shop().run, "--logbook", shop().file, "--json"}).out);
    REQUIRE(exported({shop().run, "--as", "csv"}).exit == 0);
    const std::string csv = readFile(folder / (shop().run + ".csv")).value();
    CHECK(csv.rfind("seq,run,press,", 0) == 0);
    CHECK(std::count(csv.begin(), csv.end(), '\n') > 10);
    REQUIRE(exported({"--as", "csv", "--press", "north"}).exit == 0);
    CHECK(readFile(folder / "readings.csv").value() == csv);
    REQUIRE(exported({"--as", "csv", "--press", "south"}).exit == 0);
    CHECK(says(exported({"--as", "csv", "--press", "south"}).out, "0 readings"));
    const Ran pdf = exported({shop().run, "--as", "pdf", "--json"});
    REQUIRE(pdf.exit == 0);
    CHECK(pdf.json()["pages"].integer() > 0);
    CHECK(says(textOfPdf(folder / (shop().run + ".pdf")), "Inka Thorsby"));
    CHECK(exported({shop().run}).exit == 2);
    CHECK(exported({"--as", "json"}).exit == 2);
    CHECK(exported({shop().run, "--as", "csv", "--bare"}).exit == 2);
    CHECK(exported({"no-such-run", "--as", "json"}).exit == 2);
    CHECK(exported({shop().run, "--as", "json", "--out", folder / "none/x.json"}).exit == 4);
}

TEST_CASE("a logbook of a newer layout is read by runs, sheet and export, with a note")
{
    Folder folder;
    const std::string file = folder / "newer.logbook";
    fs::copy_file(shop().file, file);
    REQUIRE(runTool("sqlite3", {file, "PRAGMA user_version = 99"}).exit == 0);
    const Ran listed = runInside({"runs", "--logbook", file});
    CHECK(listed.exit == 0);
    CHECK(says(listed.out, shop().run.c_str()));
    CHECK(says(listed.err, "newer version"));
    CHECK(runProgram({"sheet", shop().run, "--logbook", file, "--out", folder / "x.pdf"}).exit == 0);
    CHECK(runInside({"export", shop().run, "--as", "csv", "--logbook", file, "--out", folder / "x.csv"}).exit == 0);
}

TEST_CASE("a full disk is told as a full disk: the sentence names what was asked for, and a remedy that helps")
{
    taut::test::TinyDisk disk(2U << 20U);
    if (!disk.mounted()) {
        WARN("a disk of its own needs the right to mount: not tried here");
        return;
    }
    disk.fill(0);
    const std::string folder = (disk / "").string();
    const auto clear = [&](const Ran& ran, const char* remedy) {
        INFO(ran.err);
        CHECK(ran.exit == 4);
        CHECK(says(ran.err, "There is no room"));
        CHECK(says(ran.err, remedy));
        CHECK_FALSE(says(ran.err, "two programs"));
        CHECK_FALSE(says(ran.err, ".part"));
        CHECK_FALSE(says(ran.err, "may write"));
    };
    clear(runInside({"demo", "--out", folder}), "Free some room");
    clear(runInside({"backup", "--logbook", shop().file, "--to", folder}), "a folder on another disk");
    const Ran copy = runInside({"backup", "--logbook", shop().file, "--to", folder});
    CHECK(says(copy.err, "No copy was kept"));
    CHECK_FALSE(says(copy.err, "Nothing was recorded"));
    disk.empty();
    disk.fill(64U << 10U);
    clear(runInside({"demo", "--out", folder}), "Free some room");
    const Ran mirror = runInside({"backup", "--mirror", "--logbook", shop().file, "--to", folder});
    INFO(mirror.err);
    CHECK(mirror.exit != 0);
    CHECK(says(mirror.err, "The logbook has every record"));
    CHECK_FALSE(says(mirror.err, "Nothing was recorded"));
}

TEST_CASE("a sheet for a folder in which nobody can make a file is refused as that, not as a folder that is missing")
{
    for (const char* out : {"/proc/sheet.pdf", "/proc/self/sheet.pdf"}) {
        const Ran ran = runInside({"sheet", shop().run, "--logbook", shop().file, "--out", out});
        INFO(ran.err);
        CHECK(ran.exit == 4);
        CHECK(says(ran.err, "its folder takes no files"));
        CHECK(says(ran.err, "Choose another folder"));
        CHECK_FALSE(says(ran.err, "does not exist"));
    }
    const Ran copy = runInside({"backup", "--logbook", shop().file, "--to", "/proc"});
    INFO(copy.err);
    CHECK(copy.exit == 4);
    CHECK(says(copy.err, "/proc: No copy of"));
}
