// SPDX-License-Identifier: GPL-3.0-or-later
// Logbooks as they were given away, one layout after the other (tests/stores): what was written then is read now.
#include <algorithm>
#include <set>

#include "core/logbook/open_run.h"
#include "core/records/sheet.h"
#include "core/units/plain.h"
#include "tests/core/logbook/logbook_fixture.h"

using namespace taut;
using namespace taut::logbook;
using namespace taut::logbook::test;

namespace {

std::vector<fs::path> samples()
{
    std::vector<fs::path> all;
    for (const auto& entry : fs::directory_iterator(fs::path(TAUTWEB_SOURCE_DIR) / "tests" / "stores"))
        if (entry.path().extension() == ".gz") all.push_back(entry.path());
    std::sort(all.begin(), all.end());
    return all;
}

/// The sample as a file of its own, as somebody finds it in a drawer.
fs::path unpacked(const fs::path& sample, const Folder& folder)
{
    fs::path file = folder / "then.logbook";
    REQUIRE(shell("gzip -dc '" + sample.string() + "' > '" + file.string() + "'").code == 0);
    return file;
}

void isInOrderToTheDepth(const fs::path& file)
{
    const auto verified = verify(file, {}, Depth::Deep);
    if (!verified) FAIL(sentence(verified.error()));
    for (const Finding& finding : verified->findings) FAIL_CHECK(sentence(finding));
}

std::vector<records::RunRow> runsOf(const records::Reader& reader)
{
    const auto page = reader.runs({}, {});
    if (!page) FAIL(sentence(page.error()));
    return page->rows;
}

template <class T>
bool holds(const report::Report& sheet)
{
    return std::any_of(sheet.sections.begin(), sheet.sections.end(),
                       [](const report::Section& one) { return std::holds_alternative<T>(one); });
}

}  // namespace

TEST_CASE("a logbook of each layout that was given away opens, is in order to the depth, and prints every sheet")
{
    const std::vector<fs::path> all = samples();
    REQUIRE(all.size() >= 3);
    std::set<std::string> ends;
    for (const fs::path& sample : all) {
        INFO(sample.filename().string());
        Folder folder;
        const fs::path file = unpacked(sample, folder);
        const std::string before = shell("sha256sum < '" + file.string() + "'").out;
        // Nobody may write there, and nobody has to.
        fs::permissions(file, fs::perms::owner_read);
        isInOrderToTheDepth(file);
        Findings notes;
        const auto reader = openReader(file, false, &notes);
        if (!reader) FAIL(sentence(reader.error()));
        const auto rows = runsOf(**reader);
        REQUIRE_FALSE(rows.empty());
        for (const records::RunRow& row : rows) {
            ends.insert(row.state);
            CHECK_FALSE(row.operatorName.empty());
            const auto sheet = records::sheetOf(**reader, row.run);
            if (!sheet) FAIL(row.run << ": " << sentence(sheet.error()));
            CHECK(sheet->anchor);
            CHECK(sheet->draft.empty());
            CHECK(sheet->runId == row.run);
            CHECK(holds<report::Elevation>(*sheet));
            CHECK(holds<report::Table>(*sheet));
            CHECK(holds<report::SignatureBlock>(*sheet));
        }
        CHECK((*reader)->people()->size() >= 5);
        CHECK(shell("sha256sum < '" + file.string() + "'").out == before);
    }
    CHECK(ends == std::set<std::string>{"abandoned", "completed"});
}

TEST_CASE("a logbook of each layout that was given away is written on in a copy")
{
    // Who signs in with what: resources/demo/people.toml, as it was when the samples were made.
    for (const fs::path& sample : samples()) {
        INFO(sample.filename().string());
        Folder folder;
        const fs::path file = unpacked(sample, folder);
        SteppedClock clock{{1'900'000'000'000, 60}, 1000};
        RandomIds ids;
        auto writer = Writer::open(file, clock, ids, {false, "the test", 0});
        if (!writer) FAIL(sentence(writer.error()));
        const auto before = (*writer)->reader().anchor().value();
        const auto inka = (*writer)->signIn("p-2", "2806");
        const auto signs = (*writer)->unlock("p-2", "copper kettle by the window");
        REQUIRE(inka);
        REQUIRE(signs);
        // What a run is begun from lies in the logbook; the roll is any that it holds.
        const auto newest = [&](const char* what, const std::string& id) {
            const auto all = (*writer)->definitions(what);
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
        auto open = OpenRun::begin(**writer, beginning, *inka);
        if (!open) FAIL(sentence(open.error()));
        REQUIRE(open->perform(run::Abandon{"The roll is used up"}, *inka));
        const auto sealed = open->seal(*signs);
        if (!sealed) FAIL(sentence(sealed.error()));
        CHECK(sealed->seq > before.count);
        writer->reset();
        isInOrderToTheDepth(file);
        const auto verified = verify(file, {{before.count, hex(before.link)}});
        REQUIRE(verified);
        CHECK(verified->anchors.front().holds);
    }
}
