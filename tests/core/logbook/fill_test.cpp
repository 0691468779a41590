// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/logbook/fill.h"

#include "core/seal/words.h"
#include "tests/core/logbook/run_fixture.h"

using namespace taut;
using namespace taut::logbook;
using namespace taut::logbook::test;

namespace {

/// A mini run of another press's logbook that has ended, as documents are made elsewhere.
run::Run ended(Press& press)
{
    OpenRun open = press.begin();
    const people::Actor inka = press.actor("p-2");
    answerAll(open, inka);
    must(open, run::SignOff{"all well"}, inka);
    return open.run();
}

seal::Parted partedWith(const run::Run& run, const std::string& id)
{
    seal::Parted parted = seal::partWords(seal::documentOf(run));
    Json& body = parted.document.body;
    Json::Array events = body["events"].items();
    events.front().set("run", id);
    body.set("id", id).set("events", Json(std::move(events)));
    return parted;
}

void put(Fill& fill, const seal::Parted& parted, const people::Signer& by, Instant at)
{
    for (const auto& [what, source] : parted.words) REQUIRE(fill.define(what, source, by, at));
    REQUIRE(fill.add(parted.document, by, at));
}

}  // namespace

TEST_CASE("a filled logbook is in order and holds what was put, in one go")
{
    Press elsewhere, here;
    const run::Run run = ended(elsewhere);
    const auto inka = here.signer("p-2");
    const auto before = here.writer->reader().anchor();
    REQUIRE(before);
    constexpr std::size_t kRuns = 700;  // more than are handed over together
    {
        auto fill = Fill::begin(*here.writer);
        REQUIRE(fill);
        for (std::size_t i = 0; i < kRuns; ++i)
            put(**fill, partedWith(run, "north-" + std::to_string(i)), *inka, here.clock.now());
        // Nobody sees any of it before it is finished.
        CHECK(*here.writer->reader().anchor() == *before);
        REQUIRE((*fill)->finish());
        CHECK((*fill)->added() == kRuns + 2);  // the words once
    }
    const auto verified = verify(here.file(), {}, Depth::Deep);
    REQUIRE(verified);
    CHECK(verified->findings.empty());
    CHECK(verified->end.count == before->count + kRuns + 2);
    CHECK(here.writer->reader().sealOfRun("north-699"));
    // The writer goes on where the filling ended.
    REQUIRE(here.writer->review("north-3", {true, ""}, *here.signer("p-1")));
    CHECK(verify(here.file(), {}, Depth::Deep)->findings.empty());
}

TEST_CASE("a run that is laid out comes into the same chain and the same tables as its document")
{
    Press elsewhere;
    const run::Run run = ended(elsewhere);
    const auto filled = [&](bool laid) {
        Press here;
        const auto inka = here.signer("p-2");
        {
            auto fill = Fill::begin(*here.writer);
            REQUIRE(fill);
            for (int i = 0; i < 5; ++i) {
                const seal::Parted parted = partedWith(run, "north-" + std::to_string(i));
                for (const auto& [what, source] : parted.words)
                    REQUIRE((*fill)->define(what, source, *inka, {1'764'060'000'000, 60}));
                const auto texts = [&](std::string_view what, const std::string& sha256) {
                    for (const auto& [kind, source] : parted.words)
                        if (kind == what && source.sha256 == sha256) return source.text;
                    return what == "job" ? here.sources.job.text : std::string();
                };
                const Instant at{1'764'060'000'000 + i, 60};
                if (laid)
                    REQUIRE((*fill)->add(laidOut(parted.document, texts), *inka, at));
                else
                    REQUIRE((*fill)->add(parted.document, *inka, at));
            }
            REQUIRE((*fill)->finish());
        }
        const auto verified = verify(here.file(), {}, Depth::Deep);
        REQUIRE(verified);
        for (const Finding& finding : verified->findings) FAIL_CHECK(finding.code << ' ' << finding.subject);
        // What the tables say, but for links, which go by keys.
        const auto page = here.writer->reader().runs({}, {});
        REQUIRE(page);
        std::vector<std::string> said;
        for (const records::RunRow& row : page->rows) {
            said.push_back(row.run + row.roll + row.operatorName + row.title + row.verdict +
                           std::to_string(row.begunMs));
            said.push_back(here.writer->reader().sealOfRun(row.run)->document);
        }
        return said;
    };
    const auto asDocument = filled(false);
    CHECK(asDocument.size() == 10);
    CHECK(filled(true) == asDocument);
}

TEST_CASE("answers that a document does not give are found by verifying to the depth")
{
    Press elsewhere, here;
    const run::Run run = ended(elsewhere);
    {
        const auto inka = here.signer("p-2");
        auto fill = Fill::begin(*here.writer);
        REQUIRE(fill);
        const seal::Parted parted = partedWith(run, "north-1");
        for (const auto& [what, source] : parted.words) REQUIRE((*fill)->define(what, source, *inka, here.clock.now()));
        LaidOut laid = laidOut(parted.document, [&](std::string_view, const std::string&) { return std::string(); });
        laid.answers.roll = "R0000";
        REQUIRE((*fill)->add(std::move(laid), *inka, here.clock.now()));
        REQUIRE((*fill)->finish());
    }
    const auto verified = verify(here.file(), {}, Depth::Deep);
    REQUIRE(verified);
    REQUIRE_FALSE(verified->findings.empty());
    CHECK(verified->findings.front().code == "index.differs");
}

TEST_CASE("a filling that is not finished leaves nothing, and the writer goes on")
{
    Press elsewhere, here;
    const run::Run run = ended(elsewhere);
    const auto before = here.writer->reader().anchor();
    REQUIRE(before);
    {
        const auto inka = here.signer("p-2");
        auto fill = Fill::begin(*here.writer);
        REQUIRE(fill);
        for (int i = 0; i < 300; ++i)
            put(**fill, partedWith(run, "north-" + std::to_string(i)), *inka, here.clock.now());
    }
    CHECK(*here.writer->reader().anchor() == *before);
    CHECK(verify(here.file(), {}, Depth::Deep)->findings.empty());
    CHECK(ended(here).phase() == run::Phase::Completed);
}

TEST_CASE("only a logbook without a run is filled")
{
    Press press;
    const OpenRun open = press.begin();
    const auto fill = Fill::begin(*press.writer);
    REQUIRE(!fill);
    CHECK(fill.error().code == "fill.not_empty");
    // It let go of the pen again.
    CHECK(press.writer->keepDefinition("job", "J-9", "format = 1\n", press.actor("p-1")));
}

TEST_CASE("what cannot be put comes back as an error and leaves the logbook as it was")
{
    Press here;
    const auto before = here.writer->reader().anchor();
    {
        // It waits for the pen, so whoever signs is asked first.
        const auto inka = here.signer("p-2");
        auto fill = Fill::begin(*here.writer);
        REQUIRE(fill);
        // Two definitions of one edition: the tables refuse the second.
        const seal::Document twice = seal::definitionOf("press", here.sources.press);
        REQUIRE((*fill)->add(twice, *inka, here.clock.now()));
        REQUIRE(!(*fill)->finish());
    }
    CHECK(*here.writer->reader().anchor() == *before);
    CHECK(verify(here.file(), {}, Depth::Deep)->findings.empty());
}
