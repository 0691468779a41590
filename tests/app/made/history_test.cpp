// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <catch2/catch.hpp>
#include <fstream>
#include <set>

#include "app/made/player.h"
#include "core/history/checks.h"
#include "core/history/refit.h"
#include "core/history/times.h"
#include "core/history/times_report.h"
#include "core/inputs/inputs.h"
#include "core/logbook/logbook.h"
#include "core/records/sheet.h"
#include "core/records/texts.h"
#include "core/run/decide.h"
#include "core/seal/words.h"
#include "core/stats/summary.h"
#include "core/units/plain.h"
#include "core/verdict/verdict.h"
#include "tests/app/made/history_support.h"

using namespace taut;
using namespace taut::app;
using namespace taut::app::test;

namespace {

/// Every document, link and signature of a chain.
std::vector<std::string> chainOf(const History& history)
{
    std::vector<std::string> all;
    const auto anchor = history.reader->anchor();
    REQUIRE(anchor);
    for (std::uint64_t seq = 1; seq <= anchor->count; ++seq) {
        const auto seal = history.reader->seal(seq);
        REQUIRE(seal);
        all.push_back(seal->document + hex(seal->link));
    }
    return all;
}

made::Wish full(std::size_t runs)
{
    made::Wish wish;
    wish.runs = runs;
    return wish;
}

void inOrder(const History& history)
{
    const auto verified = logbook::verify(history.file, {}, logbook::Depth::Deep);
    if (!verified) FAIL(sentence(verified.error()));
    for (const Finding& finding : verified->findings) FAIL_CHECK(sentence(finding));
    CHECK(verified->end.count >= history.made.seals);
}

double medianOf(std::vector<double> values) { return stats::quartilesOf(std::move(values))->median; }

}  // namespace

TEST_CASE("a made history is a logbook in order, of short runs as of whole ones")
{
    inOrder(usual());
    inOrder(whole());
    CHECK(usual().made.runs == 900);
    CHECK(whole().made.runs == 16);
}

TEST_CASE("the same wish makes the same documents, links and signatures, and another seed others")
{
    made::Wish wish = brief(60);
    const History first(wish), second(wish);
    CHECK(chainOf(first) == chainOf(second));
    const History one(full(3)), two(full(3));
    CHECK(chainOf(one) == chainOf(two));
    wish.seed = 2;
    CHECK(chainOf(History(wish)) != chainOf(first));
}

TEST_CASE("a short run that was told by a pattern says what its own events say")
{
    const History& history = usual();
    const auto texts = records::textsOf(*history.reader);
    std::set<std::string> happenings;
    for (const Json& body : history.runs()) {
        const seal::Document document{seal::Kind::Run, body};
        const auto events = seal::eventsOf(document, texts);
        if (!events) FAIL(sentence(events.error()));
        const run::Run run = run::Run::fold(*events);
        CAPTURE(run.id());
        for (const run::Event& event : run.events()) {
            happenings.insert(run::whatWord(event.happening()));
            const auto* read = std::get_if<run::Answered>(&event.happening());
            if (read != nullptr && read->value)
                CHECK(read->judgement == verdict::judge(*read->value, read->uncertainty, read->window));
        }
        // Told anew by the same words it is the same document, but for what sealing adds; the pattern has left no
        // trace.
        const auto known = [&](std::string_view what, const std::string&) {
            for (const char* list : {"target_sets", "plans"})
                for (const Json& one : body[list].items())
                    if (one["since"]["what"].text() == what)
                        return std::vector<std::string>{texts(what, one["since"]["sha256"].text())};
            return std::vector<std::string>();
        };
        Json again = seal::partWords(seal::documentOf(run), known).document.body;
        for (const char* key : {"sealed_at", "sealed_offset", "sealed_by"}) again.set(key, body[key]);
        again.set("language", body["language"]);
        Json procedure = again["procedure"];
        again.set("procedure", procedure.set("language", body["procedure"]["language"]));
        REQUIRE(again.dump() == body.dump());
        CHECK(body.dump().find("pattern") == std::string::npos);
        CHECK(body.dump().find("R0999") == std::string::npos);
    }
    for (const char* what : {"corrected", "deviated", "interrupted", "resumed", "handed_over", "repeated", "noted",
                             "helped", "completed", "abandoned"})
        CHECK(happenings.contains(what));
}

TEST_CASE("a reading outside after an interruption is put right once what it needs holds again")
{
    // Said again after a break its tape was outside; to be read anew it needed the webs clamped, and they were not.
    const made::Wish wish = full(200);
    const auto story = made::Story::of(wish);
    REQUIRE(story);
    made::RunNumbers numbers;
    std::optional<made::Tale> tale;
    for (std::size_t slot = 0; slot < story->shiftsWorked(); ++slot)
        for (const made::Family& family : story->familiesIn(slot, numbers))
            for (const made::Tale& one : family)
                if (one.run == "south-2026-04-14-01") tale = one;
    REQUIRE(tale);
    REQUIRE(tale->parent.empty());
    const History place(brief(1));
    const SteppedClock clock(tale->begin);
    CountedIds ids;
    const auto writer = logbook::Writer::open(place.folder / "shop.logbook", clock, ids, {false, "test", 0});
    REQUIRE(writer);
    const auto shop = made::Shop::fill(**writer, resources(), wish);
    REQUIRE(shop);
    const auto run = made::play(*tale, *shop, nullptr);
    if (!run) FAIL(sentence(run.error()));
    CHECK(run->phase() == run::Phase::Completed);
}

TEST_CASE("any made run opens as its sheet")
{
    for (const History* history : {&whole(), &usual()}) {
        const auto page = history->reader->runs({}, {});
        REQUIRE(page);
        for (std::size_t i = 0; i < 8; ++i) {
            const auto sheet = records::sheetOf(*history->reader, page->rows[i].run);
            if (!sheet) FAIL(page->rows[i].run << ": " << sentence(sheet.error()));
        }
    }
}

TEST_CASE("the unwind's brake drifts by as much as was wished for")
{
    const auto slope = [](const History& history) {
        std::vector<double> months, settings;
        const double from = static_cast<double>(history.made.beganMs);
        for (const Fact& fact : factsOf(history)) {
            const double month = (static_cast<double>(fact.begunMs) - from) / made::kDayMs / made::kDaysAMonth;
            if (!fact.north || !fact.paper || !fact.setting || month < 12 * made::kDriftFrom) continue;
            months.push_back(month);
            settings.push_back(*fact.setting);
        }
        REQUIRE(months.size() > 50);
        return slopeOf(months, settings);
    };
    const Slope drifts = slope(usual()), stands = slope(nothingToFind());
    CHECK(drifts.slope > 5 * drifts.error);
    CHECK(drifts.slope == Approx(made::kDriftAMonth).epsilon(0.35));
    CHECK(std::abs(stands.slope) < 3 * stands.error);
}

TEST_CASE("a history holds a worn brake to be learned anew, the web that set-ups used, and a check that nobody did")
{
    const auto refitIn = [](const History& history) {
        const auto presses = history.reader->definitions("press");
        REQUIRE(presses);
        const auto north =
            std::find_if(presses->begin(), presses->end(), [](const auto& one) { return one.id == "north"; });
        REQUIRE(north != presses->end());
        Findings notes;
        const auto press = inputs::readPress(north->text, "north", notes);
        REQUIRE(press);
        CHECK(notes.empty());
        // So few runs are made that more of them would mix what drifts meanwhile.
        auto refit = history::refitOf(*history.reader, *press, "unwind", 16);
        if (!refit) FAIL(sentence(refit.error()));
        CHECK(refit->pulls.size() >= history::kFewestPulls);
        return *std::move(refit);
    };
    made::Wish wish = full(80);
    wish.drift = 2;  // a third by the end: few runs show it
    const History worn(wish);
    wish.drift = 0;
    const History sound(wish);
    // 12 N m/bar by the profile.
    const auto perBar = [](const history::Refit& refit) { return refit.now.torquePerSetting.si() * 1e5; };
    const history::Refit found = refitIn(worn), none = refitIn(sound);
    CAPTURE(perBar(found), perBar(none));
    CHECK(found.drifted);
    CHECK(perBar(found) == Approx(12 / 1.3).epsilon(0.15));
    CHECK_FALSE(none.drifted);
    CHECK(perBar(none) == Approx(12).epsilon(0.06));

    const records::Reader& reader = *worn.reader;
    const auto times = history::timesOf(reader, {});
    REQUIRE(times);
    std::size_t said = 0;
    for (const history::RunTime& run : times->runs) {
        CHECK(times->webM.contains(run.seq) == (run.kind == "full" && run.finished));
        said += times->webM.count(run.seq);
    }
    CHECK(said > 20);
    for (const history::WebQuartiles& one : history::webBy(*times, history::Group::Press)) {
        CHECK(one.metres.lower > 40);
        CHECK(one.metres.upper < 200);
        CHECK(one.metres.lower < one.metres.upper);
    }
    const auto checks = history::checksOf(reader);
    REQUIRE(checks);
    std::vector<history::CheckStanding> north;
    std::int64_t last = 0;
    for (const history::CheckStanding& one : *checks)
        if (one.press == "north") {
            CHECK(one.asked);
            north.push_back(one);
            last = std::max(last, one.doneMs);
        }
    CHECK(north.size() == 3);
    // No roll of a history sits on a core that wants an adapter.
    const auto overdue = history::overdueOf(north, last);
    REQUIRE(overdue.size() == 1);
    CHECK(overdue.front().check.id == "adapters");
}

TEST_CASE("the bad lot stands out from the other rolls of its material, or does not")
{
    const auto shares = [](const History& history) {
        std::size_t bad = 0, ofBad = 0, others = 0, ofOthers = 0;
        for (const Fact& fact : factsOf(history)) {
            if (!fact.paper) continue;
            ++(fact.badLot ? ofBad : ofOthers);
            if (fact.outside > 0) ++(fact.badLot ? bad : others);
        }
        return std::pair(*stats::proportionOf(bad, ofBad), *stats::proportionOf(others, ofOthers));
    };
    const auto [lot, rest] = shares(usual());
    CAPTURE(lot.hits, lot.of, rest.hits, rest.of);
    CHECK(lot.of >= 10);
    CHECK(lot.interval.low > rest.interval.high);
    const auto [calm, others] = shares(nothingToFind());
    CHECK(calm.of >= 10);
    CHECK(calm.interval.low < others.interval.high);
}

TEST_CASE("nights take longer, or do not")
{
    const auto ratio = [](const History& history) {
        std::vector<double> night, day;
        for (const Fact& fact : factsOf(history))
            if (fact.tensionSeconds > 0) (fact.night ? night : day).push_back(fact.tensionSeconds);
        REQUIRE(night.size() > 50);
        return medianOf(night) / medianOf(day);
    };
    CHECK(ratio(usual()) > 1.2);
    CHECK(ratio(nothingToFind()) == Approx(1).margin(0.1));
}

TEST_CASE("a history keeps the shop's week, and nobody reviewed the last two weeks")
{
    std::set<std::string> kinds, presents;
    std::string after;
    do {
        records::RunQuery query;
        query.limit = 200;
        const auto page = usual().reader->runs(query, after);
        REQUIRE(page);
        for (const records::RunRow& row : page->rows) {
            presents.insert(row.present);
            const auto day = static_cast<made::Day>((row.begunMs + 2 * 60 * made::kMinuteMs) / made::kDayMs);
            CHECK((made::isWorked(day) || made::isWorked(day - 1)));
            if (row.begunMs >= made::at(made::Wish().until - 14, 0).utcMs) CHECK(row.present == "sealed");
        }
        after = page->next;
    } while (!after.empty());
    for (const Json& body : usual().runs()) kinds.insert(body["run_kind"].text());
    CHECK(kinds == std::set<std::string>{"full", "next_roll", "re_web", "restart"});
    CHECK(presents == std::set<std::string>{"sealed", "reviewed", "sent_back", "corrected", "void"});
    const auto editions = usual().reader->editions("press");
    REQUIRE(editions);
    CHECK(editions->size() == 4);
}

TEST_CASE("what cannot be made is refused, and what was stopped leaves nothing")
{
    const History small(brief(3));
    const auto there = made::makeHistory(brief(3), resources(), small.file);
    REQUIRE(!there);
    CHECK(there.error().code == "history.there");
    const auto other = small.folder / "other.logbook";
    const auto many = made::makeHistory(full(1'000'000), resources(), other);
    REQUIRE(!many);
    CHECK(many.error().code == "history.too_many");
    made::Wish wild = brief(3);
    wild.drift = -1;
    const auto strange = made::makeHistory(wild, resources(), other);
    REQUIRE(!strange);
    CHECK(strange.error().code == "history.strength");
    std::atomic<bool> stop = false;
    std::size_t told = 0;
    const auto stopped = made::makeHistory(
        brief(200), resources(), other,
        [&](const made::Progress& progress) {
            ++told;
            stop = progress.runs > 20;
        },
        &stop);
    REQUIRE(!stopped);
    CHECK(stopped.error().code == "history.stopped");
    CHECK(told > 2);
    CHECK(!std::filesystem::exists(other));
}

TEST_CASE("steps that read the same are told apart where their losses stand beside each other")
{
    const records::Reader& reader = *whole().reader;
    auto times = history::timesOf(reader, {});
    REQUIRE(times);
    // The gap between the butted edges is read twice, before the tape and on the finished joint.
    times->incidents.clear();
    for (const char* step : {"splice.table.join", "splice.table.tape", "tension.unwind.setting"})
        times->incidents.push_back(
            {times->runs.front().seq, times->runs.front().run, "north", {}, {}, 1, "outside", step, {}, {}, 0});
    history::Names names(reader);
    const auto bars = history::lossBars(*times, history::Loss::Outside, "north", names, 10);
    REQUIRE(bars);
    REQUIRE(bars->rows.size() == 3);
    std::set<std::string> said;
    for (const report::Bars::Row& row : bars->rows) {
        INFO(plain(row.name));
        CHECK(said.insert(plain(row.name)).second);
    }
}
