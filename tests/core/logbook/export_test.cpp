// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/logbook/export.h"

#include "core/records/csv.h"
#include "core/records/imported.h"
#include "core/records/sheet.h"
#include "core/seal/difference.h"
#include "tests/core/logbook/after_fixture.h"
#include "tests/core/logbook/keep_fixture.h"

using namespace taut;
using namespace taut::logbook;
using namespace taut::logbook::test;

namespace {

/// A run with readings, one of them accepted by the supervisor, between seals that have nothing to do with it.
struct Exported : Keeping {
    std::string run, text;
    seal::Anchor sheet;
    Exported()
    {
        sealRun();
        sealMore(2);
        OpenRun open = begin();
        const auto matteo = signer("p-1");
        bool deviated = false;
        while (const auto next = open.run().next()) {
            const procedure::Step& step = *open.run().plan().find(*next);
            if (!deviated && step.id.value == "set.lift.setting/unwind") {
                must(open, run::Answer{*next, "5.9 bar", {}}, *inka);
                must(open, run::AcceptDeviation{*next, "The gauge was changed", matteo}, *inka);
                deviated = true;
            } else {
                must(open, run::Answer{*next, run::mini::entryFor(open.run(), step), {}}, *inka);
            }
        }
        REQUIRE(deviated);
        must(open, run::SignOff{"Gr\u00f6\u00dfe stimmt"}, *inka);
        REQUIRE(open.seal(*signer("p-2")));
        run = open.run().id();
        sheet = end();
        sealMore(2);
        const auto envelope = envelopeOf(file(), run);
        if (!envelope) FAIL(sentence(envelope.error()));
        text = seal::writeEnvelope(*envelope, clock.now()).value();
    }
};

Findings checked(std::string_view text, const std::vector<seal::PartialAnchor>& anchors = {})
{
    const auto envelope = seal::readEnvelope(text);
    if (!envelope) return {envelope.error()};
    return seal::checkEnvelope(*envelope, anchors).findings;
}

std::string swapped(std::string text, const std::string& from, const std::string& to)
{
    const std::size_t at = text.find(from);
    REQUIRE(at != std::string::npos);
    return text.replace(at, from.size(), to);
}

std::vector<std::string> lines(const std::string& csv)
{
    std::vector<std::string> all;
    for (std::size_t at = 0; at < csv.size();) {
        const std::size_t end = csv.find("\r\n", at);
        REQUIRE(end != std::string::npos);
        all.push_back(csv.substr(at, end - at));
        at = end + 2;
    }
    return all;
}

}  // namespace

TEST_CASE("an exported run is checked alone, byte for byte what was sealed, and another implementation agrees")
{
    Exported shop;
    const auto envelope = seal::readEnvelope(shop.text);
    REQUIRE(envelope);
    const seal::Seal stored = shop.writer->reader().sealOfRun(shop.run).value();
    const seal::Envelope::Sealed* own = seal::runOf(*envelope);
    REQUIRE(own != nullptr);
    CHECK(own->seal.document == stored.document);
    CHECK(own->seal.link == stored.link);
    // Two people, four files, the words of the targets and of the plan, the run: nobody and nothing else.
    std::string kinds;
    for (const seal::Envelope::Sealed& one : envelope->seals) kinds += std::string(seal::kindWord(one.seal.kind)) + ' ';
    CHECK(kinds == "person person definition definition definition definition definition definition run ");
    CHECK(warnings(checked(shop.text)).empty());
    const auto check = seal::checkEnvelope(*envelope, {{shop.sheet.count, hex(shop.sheet.link)}});
    CHECK(check.findings.empty());
    CHECK(check.anchors.front().holds);
    CHECK(seal::writeEnvelope(*envelope, Instant{}).value().size() == shop.text.size());
    const fs::path file = shop.folder / "run.json";
    put(file, shop.text);
    const Said outside = shell("bash '" TAUTWEB_SOURCE_DIR "/tests/published/check_export.sh' '" + file.string() + "'");
    CHECK(outside.out == "9 seals, 3 signatures, 2 words, 0 files");
    CHECK(shop.text.find("$argon2id$") == std::string::npos);
}

TEST_CASE("a sealed run is had whole, each figure with its words, by sqlite3 and jq alone")
{
    Exported shop;
    const seal::Document document = seal::read(shop.writer->reader().sealOfRun(shop.run)->document).value();
    const auto events = seal::eventsOf(document, records::textsOf(shop.writer->reader()));
    REQUIRE(events);
    const seal::Document own = seal::documentOf(run::Run::fold(*events));
    const Said outside =
        shell("bash '" TAUTWEB_SOURCE_DIR "/tests/published/whole_run.sh' '" + shop.file().string() + "' " + shop.run);
    const auto said = Json::parse(outside.out);
    REQUIRE(said);
    // jq writes numbers in its own way; to the reader they are the same.
    const auto read = [](const Json& value) { return Json::parse(value.dump()).value(); };
    CHECK(read((*said)["target_sets"]) == read(Json(seal::wholeAgain(own.body["target_sets"].items()).value())));
    CHECK(read((*said)["plans"]) == read(Json(seal::wholeAgain(own.body["plans"].items()).value())));
    const Json::Array steps = seal::stepsOf(own.body);
    REQUIRE((*said)["steps"].items().size() == steps.size());
    for (std::size_t i = 0; i < steps.size(); ++i)
        for (const char* key : {"step", "state", "target", "entered", "value", "unit", "low", "high", "uncertainty",
                                "verdict", "by", "at"}) {
            INFO(steps[i]["step"].text() << " " << key);
            CHECK(read((*said)["steps"].items()[i][key]) == read(steps[i][key]));
        }
}

TEST_CASE("words that an exported run names and that are not there, or are others, are found and never made up")
{
    Exported shop;
    const seal::Envelope whole = seal::readEnvelope(shop.text).value();
    const auto words = [](const seal::Envelope::Sealed& one) {
        return one.seal.document.find("\"what\":\"target_words\"") != std::string::npos && one.seal.id == "north" &&
               one.seal.kind == seal::Kind::Definition;
    };
    REQUIRE(std::count_if(whole.seals.begin(), whole.seals.end(), words) == 1);
    REQUIRE(records::sheetOf(whole));

    seal::Envelope without = whole;
    without.seals.erase(std::find_if(without.seals.begin(), without.seals.end(), words));
    const Findings missing = seal::checkEnvelope(without, {}).findings;
    REQUIRE(missing.size() == 1);
    CHECK(missing.front().code == "document.words");
    CHECK(missing.front().subject == "seal " + std::to_string(shop.sheet.count));
    CHECK(records::sheetOf(without).error().code == "document.words");
    const fs::path file = shop.folder / "without.json";
    put(file, seal::writeEnvelope(without, Instant{}).value());
    const Said outside = shell("bash '" TAUTWEB_SOURCE_DIR "/tests/published/check_export.sh' '" + file.string() + "'");
    CHECK(outside.out.find("are missing or others") != std::string::npos);

    // Nobody signs a definition, so a forger can write another one that holds in itself; the run names the first.
    seal::Envelope others = whole;
    seal::Seal& forged = std::find_if(others.seals.begin(), others.seals.end(), words)->seal;
    Json body = Json::parse(forged.document).value();
    std::string text = body["text"].text();
    const std::size_t sentence = text.find("Mass of the web");
    REQUIRE(sentence != std::string::npos);
    text.replace(sentence, 4, "Size");
    forged.document = body.set("sha256", hex(sha256(text))).set("text", text).dump();
    forged.link = seal::linkAfter(forged.previous, forged.document);
    const Findings found = seal::checkEnvelope(others, {}).findings;
    CHECK(std::any_of(found.begin(), found.end(), [](const Finding& one) { return one.code == "document.words"; }));
    CHECK(records::sheetOf(others).error().code == "document.words");
}

TEST_CASE("whatever is changed in an exported run is found, at its seal or by its key")
{
    Exported shop;
    const std::string link = hex(shop.sheet.link);
    const std::string other(64, 'a');
    struct Case {
        const char* name;
        std::string from, to;
        const char *code, *subject;
    };
    const std::string at = "seal " + std::to_string(shop.sheet.count);
    const Case cases[] = {
        {"a name in the run", "Inka Thorsby\\\",\\\"role\\\":\\\"operator",
         "Inga Thorsby\\\",\\\"role\\\":\\\"operator", "chain.broken", ""},
        {"a reading", "5.9 bar", "1.9 bar", "chain.broken", at.c_str()},
        {"a link", "\"link\":\"" + link, "\"link\":\"" + other, "chain.broken", at.c_str()},
        {"a link cut", "\"link\":\"" + link, "\"link\":\"" + link.substr(1), "export.key", "seals[8].link"},
        {"a link in capitals", "\"link\":\"" + link, "\"link\":\"A" + link.substr(1), "export.key", "seals[8].link"},
        {"a kind", "\"kind\":\"definition\"", "\"kind\":\"run\"", "export.key", "seals[2].kind"},
        {"a signature's meaning", "\"meaning\":\"performed\"", "\"meaning\":\"abandoned\"", "signature.altered",
         at.c_str()},
        {"a key left out", "\"signatures\"", "\"signature\"", "export.key", ""},
        {"a key more", "\"program\"", "\"extra\":1,\"program\"", "export.key", "extra"},
        {"a count below one", "\"seq\":1,", "\"seq\":-1,", "export.key", "seals[0].seq"},
        {"a count doubled", "\"seq\":2,", "\"seq\":1,", "export.order", "seal 1"},
        {"another run's name", "\"run\":\"" + shop.run, "\"run\":\"north-2020-01-01-01", "export.no_run",
         "north-2020-01-01-01"},
        {"another kind of file", "\"kind\":\"export\"", "\"kind\":\"run\"", "export.not_one", "file"},
        {"a format that never was", "\"format\":1,\"kind\":\"export\"", "\"format\":0,\"kind\":\"export\"",
         "export.not_one", "file"},
    };
    for (const Case& one : cases) {
        INFO(one.name);
        const Findings findings = checked(swapped(shop.text, one.from, one.to));
        REQUIRE_FALSE(findings.empty());
        CHECK(findings.front().code == one.code);
        if (*one.subject != '\0') CHECK(findings.front().subject == one.subject);
        CHECK(sentence(findings.front()).size() > 40);
    }
    CHECK(checked(shop.text.substr(0, shop.text.size() / 2)).front().code == "export.broken");
    CHECK(checked("").front().code == "export.broken");
    CHECK(checked("[]").front().code == "export.not_one");
    // A newer format says more than is known here; what is known is read.
    const std::string newer =
        swapped(swapped(shop.text, "\"format\":1,\"kind\":\"export\"", "\"format\":99,\"kind\":\"export\""),
                "\"program\"", "\"extra\":1,\"program\"");
    CHECK(checked(newer).empty());
}

TEST_CASE("a run cannot be put under another signature, nor its people left out")
{
    Exported shop;
    auto envelope = seal::readEnvelope(shop.text).value();
    const auto first = [&](const seal::Envelope& changed) {
        const auto check = seal::checkEnvelope(changed, {});
        return check.findings.empty() ? std::string() : check.findings.front().code;
    };
    seal::Envelope moved = envelope;
    moved.seals.back().signatures.front().signature = moved.seals.front().signatures.front().signature;
    CHECK(first(moved) == "signature.broken");
    seal::Envelope unsignedRun = envelope;
    unsignedRun.seals.back().signatures.clear();
    CHECK(first(unsignedRun) == "signature.missing");
    seal::Envelope nobody = envelope;
    nobody.seals.erase(nobody.seals.begin() + 1);
    CHECK(first(nobody) == "signature.key");
    const auto check =
        seal::checkEnvelope(envelope, {{shop.sheet.count, std::string(40, 'b')}, {99, hex(shop.sheet.link)}});
    CHECK(warnings(check.findings) == std::vector<std::string>{"anchor.differs", "anchor.not_here"});
}

TEST_CASE("the sheet of an imported run says the same as at home, marked on every page as no record")
{
    Exported shop;
    const auto envelope = seal::readEnvelope(shop.text).value();
    const auto imported = records::sheetOf(envelope);
    REQUIRE(imported);
    CHECK(imported->draft.source.find("IMPORTED, for reading only") == 0);
    const auto home = records::sheetOf(shop.writer->reader(), shop.run);
    REQUIRE(home);
    CHECK(imported->sections.size() == home->sections.size());
    CHECK(imported->title == home->title);
    CHECK(imported->runId == shop.run);
    CHECK(*imported->anchor == shop.sheet);
    seal::Envelope none = envelope;
    none.seals.pop_back();
    CHECK(records::sheetOf(none).error().code == "export.no_run");
}

TEST_CASE("only a sealed run is exported")
{
    Keeping shop;
    const OpenRun open = shop.begin();
    CHECK(envelopeOf(shop.file(), open.run().id()).error().code == "run.not_sealed");
    CHECK(envelopeOf(shop.file(), "none").error().code == "run.unknown");
    CHECK(envelopeOf(shop.folder / "none", "none").error().code == "logbook.missing");
}

TEST_CASE("readings as CSV give what was entered beside SI values, one a line, and nothing that runs as a formula")
{
    Exported shop;
    const std::string csv = records::readingsCsvOf(shop.writer->reader().sealOfRun(shop.run).value(), "sealed").value();
    const std::vector<std::string> rows = lines(csv);
    CHECK(rows.front() == "seq,run,press,job,substrate,roll,step,target,entered,value,low,high,uncertainty,unit,"
                          "verdict,doubtful,state,at,person,name,present");
    REQUIRE(rows.size() == 4);
    const std::string start = std::to_string(shop.sheet.count) + "," + shop.run +
                              ",north,J-2101,paper-label-80,R0041,set.lift.setting/unwind,tension.unwind.setting,";
    const auto deviated =
        std::find_if(rows.begin(), rows.end(), [&](const std::string& row) { return row.rfind(start, 0) == 0; });
    REQUIRE(deviated != rows.end());
    CHECK(deviated->rfind(start + "5.9 bar,590000,", 0) == 0);
    CHECK(deviated->find(",Pa,outside,") != std::string::npos);
    CHECK(deviated->find(",deviated,2025-11-25T") != std::string::npos);
    CHECK(deviated->find(",p-2,Inka Thorsby,sealed") != std::string::npos);
    // An engine that is not ours reads as many rows and the same sum.
    put(shop.folder / "r.csv", csv);
    const Said outside = shell("sqlite3 :memory: -cmd '.mode csv' -cmd '.import " + (shop.folder / "r.csv").string() +
                               " r' 'select count(*), sum(value) = total(cast(value as real)) from r'");
    CHECK(outside.out.rfind("3,1", 0) == 0);
    const std::string all = records::readingsCsv(shop.writer->reader(), {}).value();
    CHECK(all == csv);  // the other run has no reading
}

TEST_CASE("a typed text that a spreadsheet would take for a formula is told apart, and quotes and commas survive")
{
    // Documents of hostile people: what stands in a logbook is what somebody typed.
    const auto cell = [&](const Json& entered, const Json& value) {
        seal::Seal own;
        const Json step = Json::object().set("entered", entered).set("value", value);
        Json steps = Json::array();
        steps.add(step);
        own.document = Json::object().set("format", 1).set("kind", "run").set("steps", std::move(steps)).dump();
        const std::string row = lines(records::readingsCsvOf(own, "sealed").value()).at(1);
        return row.substr(9);
    };
    CHECK(cell("=1+2", 3) == "'=1+2,3,,,,,,,,,,,sealed");
    CHECK(cell("+1 bar", 3) == "'+1 bar,3,,,,,,,,,,,sealed");
    CHECK(cell("-0.5 %", -0.005) == "'-0.5 %,-0.005,,,,,,,,,,,sealed");
    CHECK(cell("@SUM(A1)", 3) == "'@SUM(A1),3,,,,,,,,,,,sealed");
    CHECK(cell("\t=1", 3) == "'\t=1,3,,,,,,,,,,,sealed");
    CHECK(cell("1,4 bar", 140000.0) == "\"1,4 bar\",140000,,,,,,,,,,,sealed");
    CHECK(cell("13 1/4\"", 0.33655) == "\"13 1/4\"\"\",0.33655,,,,,,,,,,,sealed");
    CHECK(cell("=a,\"b\"", 1e-9) == "\"'=a,\"\"b\"\"\",1e-09,,,,,,,,,,,sealed");
}

TEST_CASE("what followed a run goes with it into the export and the mirror")
{
    SealedShop shop;
    Folder elsewhere;
    REQUIRE(shop.writer->correct(shop.run, SealedShop::correction(), *shop.signer("p-2")));
    REQUIRE(shop.writer->review(shop.run, {true, "seen"}, *shop.signer("p-3")));
    const auto envelope = envelopeOf(shop.file(), shop.run);
    REQUIRE(envelope);
    std::string kinds;
    for (const seal::Envelope::Sealed& one : envelope->seals) kinds += std::string(seal::kindWord(one.seal.kind)) + ' ';
    CHECK(kinds == "person person definition definition definition definition person definition definition run "
                   "correction review ");
    const auto check = seal::checkEnvelope(*envelope, {});
    for (const Finding& finding : check.findings) FAIL_CHECK(sentence(finding));
    const auto home = records::sheetOf(shop.writer->reader(), shop.run);
    const auto imported = records::sheetOf(*envelope);
    REQUIRE(home);
    REQUIRE(imported);
    CHECK(imported->sections.size() == home->sections.size());
    CHECK(imported->banner == home->banner);
    CHECK(*imported->anchor == *home->anchor);
    // A review that was left out is not missed by anybody, and that is said of every file; one that was changed is.
    seal::Envelope changed = *envelope;
    changed.seals.back().seal.document.replace(changed.seals.back().seal.document.find("seen"), 4, "fine");
    CHECK(seal::checkEnvelope(changed, {}).findings.front().code == "chain.broken");

    const MirrorState state = mirrorTo(shop.file(), elsewhere.path, shop.clock.now());
    CHECK(state.holdsAll());
    const std::string present = "SELECT present FROM sealed_runs WHERE run_id = '" + shop.run + "'";
    CHECK(sqlite(state.file, present).out == shop.present(shop.run));
    isInOrder(state.file, shop.writer->reader().anchor().value());
}
