// SPDX-License-Identifier: GPL-3.0-or-later
// A logbook of an older layout is read as it is, and brought up before anybody writes in it.
#include "core/logbook/open_run.h"
#include "core/units/plain.h"
#include "tests/core/base/tiny_disk.h"
#include "tests/core/logbook/keep_fixture.h"

using namespace taut;
using namespace taut::logbook;
using namespace taut::logbook::test;

namespace {

/// A logbook as layout 5 was given away, in a folder of its own.
struct Old {
    Folder folder;
    fs::path file = folder / "shop.logbook";
    SteppedClock clock{{1'900'000'000'000, 60}, 1000};
    RandomIds ids;
    explicit Old(const std::string& name = "layout-5-north")
    {
        const fs::path sample = fs::path(TAUTWEB_SOURCE_DIR) / "tests" / "stores" / (name + ".logbook.gz");
        REQUIRE(shell("gzip -dc '" + sample.string() + "' > '" + file.string() + "'").code == 0);
    }
    [[nodiscard]] Result<std::unique_ptr<Writer>> open() { return Writer::open(file, clock, ids, {false, "test", 0}); }
    [[nodiscard]] std::string layout(const fs::path& of) const { return sqlite(of, "PRAGMA user_version").out; }
    [[nodiscard]] std::string documents(const fs::path& of) const
    {
        return sqlite(of, "SELECT seq, hex(document), hex(link) FROM seal_rows ORDER BY seq; "
                          "SELECT seq, person, hex(signature) FROM signature_rows ORDER BY seq")
            .out;
    }
    [[nodiscard]] std::vector<fs::path> copies() const
    {
        std::vector<fs::path> all;
        for (const std::string& name : namesIn(folder.path))
            if (name.starts_with("shop-before-layout-" + std::to_string(kSchema) + "-")) all.push_back(folder / name);
        return all;
    }
};

/// The id of a run that somebody begins there, of what lies in the logbook and a roll that it holds.
std::string begunIn(Writer& writer)
{
    const auto inka = writer.signIn("p-2", "2806");
    REQUIRE(inka);
    const auto newest = [&](const char* what, const std::string& id) {
        const auto all = writer.definitions(what);
        REQUIRE(all);
        for (const Definition& one : *all)
            if (one.source.id == id) return one.source;
        FAIL("no " << what << " " << id);
        return run::Source{};
    };
    OpenRun::Beginning beginning;
    beginning.sources = {
        newest("press", "north"), newest("job", "J-2101"), newest("substrate", "paper-label-80"),
        run::sourceOf("R0041", 0, *readFile(fs::path(TAUTWEB_SOURCE_DIR) / "resources/demo/rolls/R0041.toml")),
        newest("procedure", "cold_start")};
    auto open = OpenRun::begin(writer, beginning, *inka);
    if (!open) FAIL(sentence(open.error()));
    return open->run().id();
}

std::string sumOf(const fs::path& file) { return shell("sha256sum < '" + file.string() + "'").out; }

}  // namespace

TEST_CASE("a logbook of an older layout is brought up when it is opened to write, and a whole copy is kept")
{
    Old old;
    const std::string before = old.documents(old.file), sum = sumOf(old.file);
    REQUIRE(old.layout(old.file) == "5");
    // Reading needs nothing of it.
    REQUIRE(openReader(old.file));
    CHECK(verify(old.file, {}, Depth::Deep)->findings.empty());
    CHECK(sumOf(old.file) == sum);
    seal::Anchor end;
    {
        const auto writer = old.open();
        if (!writer) FAIL(sentence(writer.error()));
        REQUIRE(has((*writer)->notes(), "logbook.brought_up"));
        end = (*writer)->reader().anchor().value();
    }
    REQUIRE(old.copies().size() == 1);
    CHECK(old.layout(old.copies().front()) == "5");
    CHECK(old.documents(old.copies().front()) == before);
    isInOrder(old.copies().front(), end);
    CHECK(old.layout(old.file) == std::to_string(kSchema));
    CHECK(old.documents(old.file) == before);
    isInOrder(old.file, end);
    // Once is enough.
    const auto again = old.open();
    REQUIRE(again);
    CHECK((*again)->notes().empty());
    CHECK(old.copies().size() == 1);
}

TEST_CASE("the mirror of a logbook that was brought up is left as it is, and another is begun")
{
    Old old;
    Folder elsewhere;
    {
        const auto writer = old.open();
        REQUIRE(writer);
        (*writer)->keepMirror(elsewhere.path);
        REQUIRE((*writer)->mirror(std::chrono::seconds(20))->holdsAll());
    }
    // A mirror of layout 5 lies on the stick.
    const fs::path mirror = elsewhere / "shop-mirror.logbook";
    fs::copy_file(old.copies().front(), mirror, fs::copy_options::overwrite_existing);
    REQUIRE(sqlite(mirror, "INSERT INTO file_facts SELECT 'mirror_of', value FROM file_facts WHERE name = 'workplace'")
                .code == 0);
    const std::string sum = sumOf(elsewhere / "shop-mirror.logbook");
    const auto writer = old.open();
    REQUIRE(writer);
    (*writer)->keepMirror(elsewhere.path);
    const MirrorState state = (*writer)->mirror(std::chrono::seconds(20)).value();
    CHECK(state.holdsAll());
    CHECK(state.file != elsewhere / "shop-mirror.logbook");
    CHECK(has(state.findings, "logbook.older_layout"));
    CHECK(sumOf(elsewhere / "shop-mirror.logbook") == sum);
}

TEST_CASE("a logbook of an older layout that is not in order is left as it is, and said to be so")
{
    Old old;
    tamper(old.file, "UPDATE seal_rows SET document = CAST(document || ' ' AS BLOB) WHERE seq = 4");
    const std::string sum = sumOf(old.file);
    const auto writer = old.open();
    REQUIRE_FALSE(writer);
    CHECK(writer.error().code == "logbook.not_in_order");
    CHECK(sentence(writer.error()).find("chain.broken") != std::string::npos);
    CHECK(sumOf(old.file) == sum);
    CHECK(old.copies().empty());
    CHECK(namesIn(old.folder.path).size() == 2);  // the logbook, and the pen beside it
}

TEST_CASE("a copy of an older layout is restored as a logbook of this one")
{
    Old old;
    const auto restored = restoreFrom(old.file, old.folder / "anew.logbook", old.clock.now(), {});
    if (!restored) FAIL(sentence(restored.error()));
    CHECK(old.layout(old.folder / "anew.logbook") == std::to_string(kSchema));
    CHECK(old.layout(old.file) == "5");
    CHECK(old.documents(old.folder / "anew.logbook") == old.documents(old.file));
    CHECK(verify(old.folder / "anew.logbook", {}, Depth::Deep)->findings.empty());
}

TEST_CASE("where there is no room for the copy nothing is brought up")
{
    Old old;
    // Room for the file and a part of its copy.
    taut::test::TinyDisk disk(fs::file_size(old.file) + 700'000);
    if (!disk.mounted()) {
        WARN("no disk of its own for this test: only who may mount has one");
        return;
    }
    const fs::path file = disk / "shop.logbook";
    fs::copy_file(old.file, file);
    const std::string sum = sumOf(file);
    const auto writer = Writer::open(file, old.clock, old.ids, {false, "test", 0});
    REQUIRE_FALSE(writer);
    CHECK(writer.error().code == "logbook.disk_full");
    CHECK(sumOf(file) == sum);
}

TEST_CASE(
    "what is asked of a logbook of an older layout is answered as a logbook of this one would, read or brought up")
{
    const auto sample = GENERATE("layout-5-north", "layout-5-next_roll", "layout-5-abandoned", "layout-6-north",
                                 "layout-6-next_roll", "layout-6-abandoned");
    INFO(sample);
    Old old{sample};
    const auto answers = [](const records::Reader& reader) {
        std::string all;
        const auto say = [&all](const auto&... parts) { ((all += Json(parts).dump() + " "), ...); };
        const auto runs = reader.runs({}, "");
        for (const auto& row : runs->rows)
            say(row.run, row.kind, row.title, row.customer, row.outside, row.wasteM.value_or(-1), row.present,
                static_cast<std::int64_t>(row.seq));
        records::RunQuery words;
        words.text = "north";
        say(reader.count(words, 10).value());
        const auto stages = reader.stageTimes({}, "");
        for (const auto& one : stages->rows)
            say(one.run, one.stage, one.workedMs, one.watchedMs, one.awayMs, one.externalMs, one.hour);
        const auto incidents = reader.incidents({}, "");
        for (const auto& one : incidents->rows)
            say(one.run, one.n, one.what, one.step, one.target, one.detail, one.atMs);
        const auto names = reader.seriesNames();
        for (const auto& name : *names) {
            say(name.press, name.target, name.unit, name.readings);
            const auto readings = reader.readings({name.press, name.target}, "");
            for (const auto& one : readings->rows)
                say(one.step, one.value, one.aimed.value_or(-1), one.first, one.pressSha, one.roll);
        }
        return all;
    };
    const std::string read = answers(**openReader(old.file));
    CHECK(read.size() > 500);
    // The same chain, put seal by seal into a new logbook, as a mirror is made.
    Folder elsewhere;
    REQUIRE(old.open());
    {
        const auto writer = old.open();
        REQUIRE(writer);
        (*writer)->keepMirror(elsewhere.path);
        REQUIRE((*writer)->mirror(std::chrono::seconds(60))->holdsAll());
        CHECK(answers((*writer)->reader()) == read);
    }
    CHECK(answers(**openReader(elsewhere / "shop-mirror.logbook")) == read);
    CHECK(verify(old.file, {}, Depth::Deep)->findings.empty());
}

TEST_CASE("a run that was open when its logbook was brought up is gone on with, and found")
{
    Old later("layout-6-north"), old("layout-6-north");
    std::string run;
    {
        const auto writer = later.open();
        REQUIRE(writer);
        run = begunIn(**writer);
    }
    // The same run as the layout before had it: without what came with this one.
    const std::string columns = "run_id, seq, press, day, job, substrate, roll, operator, operator_name, begun, ended, "
                                "state, verdict, present, reviewed_by, deviations";
    const Said put = sqlite(old.file, "ATTACH '" + later.file.string() + "' AS later; INSERT INTO run_rows (" +
                                          columns + ") SELECT " + columns +
                                          " FROM later.run_rows WHERE seq IS NULL; INSERT INTO "
                                          "open_events SELECT run_id, n, event FROM later.open_events");
    INFO(put.out);
    REQUIRE(put.code == 0);
    const std::string events = sqlite(old.file, "SELECT count(*), sum(length(event)) FROM open_events").out;
    {
        records::RunQuery words;
        words.text = "quince " + run;
        const auto reader = openReader(old.file);
        if (!reader) FAIL(sentence(reader.error()));
        REQUIRE((*reader)->runs(words, "")->rows.size() == 1);
        CHECK((*reader)->runs(words, "")->rows.front().run == run);
        CHECK((*reader)->openRun(run));
    }
    CHECK(old.layout(old.file) == "6");
    const auto writer = old.open();
    if (!writer) FAIL(sentence(writer.error()));
    CHECK(sqlite(old.file, "SELECT count(*), sum(length(event)) FROM open_events").out == events);
    const std::vector<records::RunRow> rows = (*writer)->reader().runs({}, "")->rows;
    REQUIRE(rows.at(0).run == run);
    CHECK(rows[0].present == "open");
    CHECK(rows[0].kind == "full");
    CHECK(rows[0].title == "Quince jelly, front");
    const auto inka = (*writer)->signIn("p-2", "2806");
    REQUIRE(inka);
    CHECK(OpenRun::resume(**writer, run, *inka));
}
