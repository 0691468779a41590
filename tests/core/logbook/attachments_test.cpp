// SPDX-License-Identifier: GPL-3.0-or-later
// Pictures and files of a run: their bytes stand beside the chain, and what was sealed names each by its hash.
#include "core/logbook/export.h"
#include "core/records/sheet.h"
#include "core/run/attachment.h"
#include "core/seal/files.h"
#include "core/units/plain.h"
#include "tests/core/logbook/keep_fixture.h"

using namespace taut;
using namespace taut::logbook;
using namespace taut::logbook::test;

namespace {

const std::string kPicture = "\x89PNG\r\n\x1A\n\0 a picture of the splice"
                             "\xFF\xFE";

run::Attach attach(const std::string& name, const std::string& bytes, const char* step = "set.lift.seen")
{
    return {{step}, name, std::make_shared<const std::string>(bytes)};
}

/// A sealed run with one picture, and what it is called.
struct Pictured : Keeping {
    std::string run;
    std::string sha = hex(sha256(kPicture));
    Pictured()
    {
        OpenRun open = begin();
        must(open, attach("splice.png", kPicture), *inka);
        must(open, attach("again.png", kPicture, ""), *inka);
        must(open, run::Abandon{"The roll is used up"}, *inka);
        REQUIRE(open.seal(*signer("p-2")));
        run = open.run().id();
    }
};

Said outside(const char* script, const fs::path& file)
{
    return shell("bash '" TAUTWEB_SOURCE_DIR "/tests/published/" + std::string(script) + "' '" + file.string() + "'");
}

std::vector<std::string> codes(const fs::path& file)
{
    const auto verified = verify(file, {});
    if (!verified) return {verified.error().code};
    return warnings(verified->findings);
}

}  // namespace

TEST_CASE("what is attached is on disk with its event, once however often it is named, and sealed by its hash")
{
    Press shop;
    OpenRun open = shop.begin();
    const people::Actor inka = shop.actor("p-2");
    must(open, attach("splice.png", kPicture), inka);
    must(open, attach("again.png", kPicture, ""), inka);
    const std::string sha = hex(sha256(kPicture));
    CHECK(sqlite(shop.file(), "SELECT sha256, size FROM attachments").out ==
          sha + "|" + std::to_string(kPicture.size()));
    // As it is on disk while the run is open.
    CHECK(shop.writer->reader().attachment(sha).value() == kPicture);
    CHECK(shop.writer->reader().attachment(std::string(64, '0')).value() == std::nullopt);
    CHECK(verify(shop.file(), {}, Depth::Deep)->findings.empty());
    // A refusal leaves nothing behind.
    CHECK(open.perform(attach("", "other"), inka).error().code == "attachment.no_name");
    CHECK(sqlite(shop.file(), "SELECT count(*) FROM attachments").out == "1");
    must(open, run::Abandon{"The roll is used up"}, inka);
    const auto sealed = open.seal(*shop.signer("p-2"));
    REQUIRE(sealed);
    const auto files = seal::filesOf(seal::read(sealed->document).value());
    REQUIRE(files.size() == 2);
    CHECK(files[0].name == "splice.png");
    CHECK(files[0].step == "set.lift.seen");
    CHECK(files[0].type == "image/png");
    CHECK(files[0].sha256 == sha);
    CHECK(files[1].step.empty());
    CHECK(verify(shop.file(), {}, Depth::Deep)->findings.empty());
}

TEST_CASE("the store refuses to change, replace or remove what was attached")
{
    Pictured shop;
    for (const char* sql : {"UPDATE attachment_rows SET content = x'00'", "DELETE FROM attachment_rows",
                            "INSERT OR REPLACE INTO attachment_rows SELECT sha256, x'00' FROM attachment_rows"}) {
        INFO(sql);
        CHECK(sqlite(shop.file(), sql).code != 0);
    }
    CHECK(codes(shop.file()).empty());
    CHECK(outside("check_attachments.sh", shop.file()).out == "2 files");
}

TEST_CASE("verify names a picture that was changed, taken away or slipped in")
{
    Pictured shop;
    shop.writer.reset();
    const struct {
        const char* name;
        std::string sql;
        std::vector<std::string> codes;
    } cases[] = {
        {"a byte of it",
         "UPDATE attachment_rows SET content = CAST(content || x'00' AS BLOB)",
         {"attachment.changed", "attachment.changed"}},
        {"its bytes and its name",
         "UPDATE attachment_rows SET sha256 = '" + hex(sha256("x")) + "', content = x'78'",
         {"attachment.missing", "attachment.missing", "attachment.unnamed"}},
        {"taken away", "DELETE FROM attachment_rows", {"attachment.missing", "attachment.missing"}},
        {"slipped in",
         "INSERT INTO attachment_rows VALUES ('" + hex(sha256("x")) + "', x'78')",
         {"attachment.unnamed"}},
    };
    for (const auto& one : cases) {
        INFO(one.name);
        const fs::path copy = shop.folder / "copy.logbook";
        fs::copy_file(shop.file(), copy, fs::copy_options::overwrite_existing);
        tamper(copy, one.sql);
        CHECK(codes(copy) == one.codes);
        // Another implementation sees what the chain names; what nothing names it has no eye for.
        CHECK((outside("check_attachments.sh", copy).code == 0) == (one.codes.front() == "attachment.unnamed"));
        // What was changed is not handed out as if it were the picture.
        const auto reader = openReader(copy);
        REQUIRE(reader);
        const auto bytes = (*reader)->attachment(shop.sha);
        if (one.codes.front() == "attachment.changed") CHECK(bytes.error().code == "attachment.changed");
    }
}

TEST_CASE("a mirror, a copy and what is restored from either have the pictures too")
{
    Pictured shop;
    shop.writer->keepMirror(shop.elsewhere.path);
    const fs::path mirror = shop.mirrored().file;
    CHECK(codes(mirror).empty());
    CHECK((*openReader(mirror))->attachment(shop.sha).value() == kPicture);
    const Copied copied = shop.copied();
    CHECK(codes(copied.file).empty());
    shop.writer.reset();
    for (const fs::path& from : {mirror, copied.file}) {
        const fs::path to = shop.folder / "anew.logbook";
        fs::remove(to);
        const auto restored = restoreFrom(from, to, shop.clock.now(), {});
        if (!restored) FAIL(sentence(restored.error()));
        CHECK(codes(to).empty());
        CHECK((*openReader(to))->attachment(shop.sha).value() == kPicture);
    }
}

TEST_CASE("an exported run takes its pictures along and is checked with them")
{
    Pictured shop;
    const auto envelope = envelopeOf(shop.file(), shop.run);
    REQUIRE(envelope);
    CHECK(envelope->files == std::map<std::string, std::string>{{shop.sha, kPicture}});
    const std::string text = seal::writeEnvelope(*envelope, shop.clock.now()).value();
    const auto back = seal::readEnvelope(text);
    if (!back) FAIL(sentence(back.error()));
    CHECK(back->files == envelope->files);
    CHECK(seal::checkEnvelope(*back, {}).findings.empty());
    REQUIRE(writeFile(shop.folder / "run.json", text));
    CHECK(outside("check_export.sh", shop.folder / "run.json").out.ends_with("2 words, 1 files"));

    seal::Envelope changed = *envelope;
    changed.files[shop.sha] += "x";
    CHECK(has(seal::checkEnvelope(changed, {}).findings, "attachment.changed"));
    REQUIRE(writeFile(shop.folder / "changed.json", seal::writeEnvelope(changed, shop.clock.now()).value()));
    CHECK(outside("check_export.sh", shop.folder / "changed.json").code != 0);
    seal::Envelope gone = *envelope;
    gone.files.clear();
    CHECK(has(seal::checkEnvelope(gone, {}).findings, "attachment.missing"));
    std::string broken = text;
    const std::size_t at = broken.find("\"content\":\"");
    REQUIRE(at != std::string::npos);
    broken.replace(at + 11, 1, "*");
    CHECK(seal::readEnvelope(broken).error().code == "export.key");
    // One without any is of the first format, which every program reads.
    CHECK(seal::writeEnvelope(gone, shop.clock.now()).value().find("\"format\":1") != std::string::npos);
}

TEST_CASE("the sheet lists what is attached, with as much of its hash as tells it")
{
    Pictured shop;
    const auto sheet = records::sheetOf(shop.writer->reader(), shop.run);
    if (!sheet) FAIL(sentence(sheet.error()));
    bool listed = false;
    for (const report::Section& section : sheet->sections)
        if (const auto* table = std::get_if<report::Table>(&section))
            if (plain(table->caption) == "Pictures and files") {
                listed = true;
                REQUIRE(table->rows.size() == 2);
                const auto text = [&](std::size_t row, std::size_t cell) {
                    return plain(std::get<Text>(table->rows[row][cell].value));
                };
                CHECK(text(0, 2) == "splice.png");
                CHECK(text(0, 3) == "picture, 1 kB");
                CHECK(text(0, 4) == shop.sha.substr(0, 16));
                CHECK(text(0, 5) == "Inka Thorsby");
            }
    CHECK(listed);
}

TEST_CASE("what another program laid out anew keeps its pictures when it is read")
{
    Pictured shop;
    shop.writer.reset();
    REQUIRE(sqlite(shop.file(), "PRAGMA user_version = 99").code == 0);
    Findings notes;
    const auto reader = openReader(shop.file(), false, &notes);
    if (!reader) FAIL(sentence(reader.error()));
    CHECK((*reader)->attachment(shop.sha).value() == kPicture);
}
