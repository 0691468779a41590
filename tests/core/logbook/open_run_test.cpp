// SPDX-License-Identifier: GPL-3.0-or-later
#include <chrono>

#include "core/units/plain.h"
#include "tests/core/logbook/run_fixture.h"

using namespace taut;
using namespace taut::logbook;
using namespace taut::logbook::test;
using run::Phase;

TEST_CASE("a run is begun, answered, signed off and sealed through the one door")
{
    Press shop;
    const people::Actor inka = shop.actor("p-2");
    OpenRun open = shop.begin();
    const std::string id = open.run().id();
    CHECK(id == "north-2025-11-25-01");
    CHECK(open.run().began().workplace == shop.writer->workplace());
    CHECK(OpenRun::openRuns(*shop.writer).value() == std::vector<std::string>{id});
    CHECK(shop.writer->reader().runs({}, "")->rows.at(0).state == "open");
    CHECK(open.seal(*shop.signer("p-2")).error().code == "run.not_ended");
    answerAll(open, inka);
    const auto seen = shop.writer->reader().openRun(id);
    REQUIRE(seen);
    CHECK(seen->events().size() == open.run().events().size());
    CHECK(seen->openSteps().empty());
    CHECK(shop.writer->reader().openRun("north-2025-11-25-99").error().code == "run.unknown");
    const std::string events = sqlite(shop.file(), "SELECT count(*), max(n) FROM open_events").out;
    CHECK(events == std::to_string(open.run().events().size()) + "|" + std::to_string(open.run().events().size()));
    CHECK(sqlite(shop.file(), "SELECT event FROM open_events WHERE n = 2").out == open.run().events()[1].json());
    must(open, run::SignOff{"watch the brake"}, inka);
    const auto sealed = open.seal(*shop.signer("p-2"));
    REQUIRE(sealed);
    CHECK(sealed->seq == 9);  // after the words of its targets and its plan
    CHECK(sealed->kind == seal::Kind::Run);
    CHECK(sealed->id == id);
    CHECK(sealed->person == "p-2");
    CHECK(open.seal(*shop.signer("p-2")).error().code == "run.sealed");
    CHECK(open.perform(run::Note{{"set.lift.seen"}, "late"}, inka).error().code == "gate.ended");
    CHECK(OpenRun::resume(*shop.writer, id, inka).error().code == "run.sealed");
    CHECK(shop.writer->reader().openRun(id).error().code == "run.sealed");
    CHECK(OpenRun::openRuns(*shop.writer)->empty());
    CHECK(sqlite(shop.file(), "SELECT count(*) FROM open_events").out == "0");

    const seal::Seal again = shop.writer->reader().sealOfRun(id).value();
    CHECK(again.document == sealed->document);
    CHECK(again.link == shop.writer->reader().anchor()->link);
    const auto events2 = seal::eventsOf(seal::read(again.document).value(), records::textsOf(shop.writer->reader()));
    REQUIRE(events2);
    CHECK(run::Run::fold(*events2).phase() == Phase::Completed);
    const auto row = shop.writer->reader().runs({}, "")->rows.at(0);
    CHECK(row.seq == 9);
    CHECK(row.run == id);
    CHECK(row.press == "north");
    CHECK(row.job == "J-2101");
    CHECK(row.substrate == "paper-label-80");
    CHECK(row.roll == "R0041");
    CHECK(row.operatorName == "Inka Thorsby");
    CHECK(row.state == "completed");
    CHECK(row.verdict == "clean");
    CHECK(row.begunMs == open.run().events().front().stamp().utcMs);
    CHECK(row.endedMs == open.run().events().back().stamp().utcMs);
    CHECK(verify(shop.file(), {{9, hex(again.link)}})->findings.empty());
}

TEST_CASE("readers from outside see the sealed run and its readings")
{
    Press shop;
    const people::Actor inka = shop.actor("p-2");
    OpenRun open = shop.begin();
    answerAll(open, inka);
    must(open, run::Correct{{"set.lift.setting/unwind"}, "5.9 bar", "wrong gauge"}, inka);
    must(open, run::AcceptDeviation{{"set.lift.setting/unwind"}, "gauge out for calibration", shop.signer("p-1")},
         inka);
    must(open, run::SignOff{""}, inka);
    const seal::Seal sealed = open.seal(*shop.signer("p-2")).value();
    CHECK(sqlite(shop.file(), "SELECT seq, run_id, press, job, substrate, roll, operator, state, verdict, present, "
                              "previous_link, link FROM sealed_runs")
              .out == "9|north-2025-11-25-01|north|J-2101|paper-label-80|R0041|Inka Thorsby|completed|with_deviations|"
                      "sealed|" +
                          hex(sealed.previous) + "|" + hex(sealed.link));
    CHECK(sqlite(shop.file(), "SELECT count(*) FROM sealed_runs AS r JOIN seals AS s USING (seq) WHERE r.document = "
                              "s.document AND r.sealed_at = s.sealed_at")
              .out == "1");
    CHECK(sqlite(shop.file(), "SELECT step FROM readings ORDER BY step").out ==
          "set.lift.pressure\nset.lift.setting/rewind\nset.lift.setting/unwind");
    CHECK(sqlite(shop.file(), "SELECT seq, run_id, target, si_value, unit, uncertainty, entered_text, person, at "
                              "LIKE '2025-11-25T06:%Z', low < high, verdict FROM readings WHERE step LIKE '%/unwind'")
              .out == "9|north-2025-11-25-01|tension.unwind.setting|590000.0|Pa|10000.0|5.9 bar|p-2|1|1|outside");
    const auto series = shop.writer->reader().readings({"north", "tension.unwind.setting", 200}, "");
    REQUIRE(series);
    REQUIRE(series->rows.size() == 1);
    CHECK(series->rows[0].value == Approx(590'000));
    CHECK(series->rows[0].low.value() < series->rows[0].high.value());
    CHECK(series->rows[0].run == "north-2025-11-25-01");
    CHECK(series->next.empty());
    CHECK(shop.writer->reader().readings({"south", "tension.unwind.setting", 200}, "")->rows.empty());
    CHECK(shop.writer->reader().runs({}, "")->rows.at(0).deviations == 1);
}

TEST_CASE("a refused command writes nothing")
{
    Press shop;
    OpenRun open = shop.begin();
    const std::string before = readFile(shop.file()).value();
    CHECK(open.perform(run::SignOff{""}, shop.actor("p-2")).error().code == "gate.open_steps");
    CHECK(open.perform(run::Answer{{"set.lift.pressure"}, "20 mm", {}}, shop.actor("p-2")).error().code != "");
    CHECK(readFile(shop.file()).value() == before);
    CHECK(open.run().events().size() == 1);
}

TEST_CASE("an answer shows only when its sync has returned")
{
    Press shop;
    OpenRun first = shop.begin();
    const std::string id = first.run().id();
    shop.reopen(false, 400);
    const people::Actor inka = shop.actor("p-2");
    auto open = OpenRun::resume(*shop.writer, id, inka);
    REQUIRE(open);
    const auto start = std::chrono::steady_clock::now();
    must(*open, resumed(), inka);
    CHECK(std::chrono::steady_clock::now() - start >= std::chrono::milliseconds(400));
    CHECK(open->run().phase() == Phase::Running);
}

TEST_CASE("a run is begun only on a press that is free, in use, and from what the logbook keeps")
{
    Press shop;
    const people::Actor inka = shop.actor("p-2");
    const auto code = [&](const OpenRun::Beginning& beginning) {
        const auto open = OpenRun::begin(*shop.writer, beginning, inka);
        return open ? std::string{} : open.error().code;
    };
    OpenRun::Beginning changed{shop.sources, {}, {}};
    changed.sources.job = run::sourceOf("J-2101", 2, shop.sources.job.text + "# changed\n");
    CHECK(code(changed) == "run.definition_not_kept");
    changed.sources = shop.sources;
    changed.sources.press.text += "# changed after it was kept\n";
    CHECK(code(changed) == "run.definition_not_kept");
    CHECK(code({shop.sources, {}, "north-1999-01-01-01"}) == "records.no_seal");
    OpenRun open = shop.begin();
    CHECK(code({shop.sources, {}, {}}) == "run.press_busy");
    must(open, run::Abandon{"order cancelled"}, inka);
    CHECK(code({shop.sources, {}, {}}) == "run.press_busy");
    REQUIRE(open.seal(*shop.signer("p-2")));
    OpenRun second = shop.begin();
    CHECK(second.run().id() == "north-2025-11-25-02");
    must(second, run::Abandon{"order cancelled"}, inka);
    REQUIRE(second.seal(*shop.signer("p-2")));
    shop.clock.advance(17 * 3'600'000 + 10 * 60'000);  // past midnight on the wall, not in UTC
    OpenRun third = shop.begin({shop.sources, {"next_roll", true, {}}, second.run().id()});
    CHECK(third.run().id() == "north-2025-11-26-01");
    CHECK(third.run().began().parent == "north-2025-11-25-02");
    CHECK(third.run().began().kind == "next_roll");
}

TEST_CASE("a run whose program ended under it is taken up where it was, once interrupted")
{
    Press shop;
    OpenRun open = shop.begin();
    const std::string id = open.run().id();
    for (int i = 0; i < 3; ++i) answerNext(open, shop.actor("p-2"));
    const std::size_t events = open.run().events().size();
    shop.reopen();
    const people::Actor inka = shop.actor("p-2");
    CHECK(OpenRun::openRuns(*shop.writer).value() == std::vector<std::string>{id});
    {
        auto again = OpenRun::resume(*shop.writer, id, inka);
        REQUIRE(again);
        CHECK(again->run().phase() == Phase::Interrupted);
        REQUIRE(again->run().events().size() == events + 1);
        CHECK(std::get<run::Interrupted>(again->run().events().back().happening()).reason == "ended_without_sign_off");
    }
    // Opened twice without having been resumed: still one interruption.
    shop.reopen();
    auto again = OpenRun::resume(*shop.writer, id, inka);
    REQUIRE(again);
    CHECK(again->run().events().size() == events + 1);
    must(*again, resumed(), inka);
    answerAll(*again, inka);
    must(*again, run::SignOff{""}, inka);
    // Killed between sign-off and seal: it only waits for its seal.
    shop.reopen();
    CHECK(OpenRun::openRuns(*shop.writer).value() == std::vector<std::string>{id});
    auto ended = OpenRun::resume(*shop.writer, id, inka);
    REQUIRE(ended);
    CHECK(ended->run().phase() == Phase::Completed);
    CHECK(ended->seal(*shop.signer("p-2")));
    CHECK(OpenRun::resume(*shop.writer, "north-1999-01-01-01", inka).error().code == "run.unknown");
    CHECK(verify(shop.file(), {})->findings.empty());
}

TEST_CASE("a press is withdrawn with its open runs and given back by another supervisor")
{
    Press shop;
    const people::Actor inka = shop.actor("p-2");
    const people::Actor matteo = shop.actor("p-1");
    const auto second = people::test::member("p-3", "Rosa Lindqvist", people::Role::Supervisor);
    REQUIRE(shop.writer->addPerson(second.enrolled, *shop.signer("p-1")));
    const people::Actor rosa = shop.actor("p-3");
    OpenRun open = shop.begin();
    Writer& writer = *shop.writer;

    CHECK(writer.withdraw("east", "no such thing", inka).error().code == "press.unknown");
    CHECK(writer.withdraw("north", "  ", inka).error().code == "gate.no_reason");
    CHECK(writer.giveBack("north", "x", matteo).error().code == "press.not_withdrawn");
    REQUIRE(writer.withdraw("north", "guard switch does not stop it", matteo));
    CHECK(writer.withdraw("north", "again", inka).error().code == "press.already_withdrawn");
    CHECK(writer.reader().withdrawals()->at(0).reason == "guard switch does not stop it");
    CHECK(writer.reader().withdrawals()->at(0).byName == "Matteo Quill");
    // The run in hand learns of it before it does anything more.
    CHECK(open.perform(run::Answer{*open.run().next(), "yes", {}}, inka).error().code == "gate.withdrawn");
    CHECK(open.run().phase() == Phase::Withdrawn);
    CHECK(writer.giveBack("north", "switch replaced", inka).error().code == "gate.role");
    CHECK(writer.giveBack("north", "switch replaced", matteo).error().code == "gate.own_return");
    CHECK(writer.giveBack("north", "", rosa).error().code == "gate.no_reason");
    REQUIRE(writer.giveBack("north", "switch replaced", rosa));
    REQUIRE(open.refresh());
    CHECK(open.run().phase() == Phase::Interrupted);
    must(open, resumed(), inka);
    // From inside a run as well; then no new one begins until it is given back.
    must(open, run::Withdraw{"oil on the floor"}, inka);
    CHECK(open.run().phase() == Phase::Withdrawn);
    must(open, run::Abandon{"press out of use"}, inka);
    REQUIRE(open.seal(*shop.signer("p-2")));
    CHECK(OpenRun::begin(writer, {shop.sources, {}, {}}, inka).error().code == "run.press_withdrawn");
    REQUIRE(writer.giveBack("north", "cleaned", matteo));
    CHECK(writer.reader().withdrawals()->empty());
    CHECK(OpenRun::begin(writer, {shop.sources, {}, {}}, inka));
    CHECK(sqlite(shop.file(), "SELECT group_concat(kind, ' ') FROM seals WHERE seq > 7").out ==
          "withdrawal withdrawal withdrawal definition definition run withdrawal");
    CHECK(verify(shop.file(), {})->findings.empty());
}

TEST_CASE("events of open runs cannot be changed, taken out or put in between from outside")
{
    Press shop;
    OpenRun open = shop.begin();
    answerNext(open, shop.actor("p-2"));
    for (const char* sql : {"UPDATE open_events SET event = '{}'", "DELETE FROM open_events",
                            "INSERT OR REPLACE INTO open_events SELECT run_id, 1, event FROM open_events WHERE n = 2",
                            "INSERT INTO open_events SELECT run_id, 9, event FROM open_events WHERE n = 2"}) {
        INFO(sql);
        CHECK(sqlite(shop.file(), sql).code != 0);
    }
    CHECK(sqlite(shop.file(), "SELECT count(*) FROM open_events").out == "2");
}

TEST_CASE("a stored event that is no event is refused by name")
{
    Press shop;
    OpenRun open = shop.begin();
    answerNext(open, shop.actor("p-2"));
    const std::string id = open.run().id();
    shop.writer.reset();
    tamper(shop.file(), "UPDATE open_events SET event = '{\"n\":2}' WHERE n = 2");
    shop.reopen();
    CHECK(OpenRun::resume(*shop.writer, id, shop.actor("p-2")).error().code == "event.broken");
    shop.writer.reset();
    tamper(shop.file(), "DELETE FROM open_events WHERE n = 1");
    shop.reopen();
    CHECK(OpenRun::resume(*shop.writer, id, shop.actor("p-2")).error().code == "event.broken");
}

TEST_CASE("lists come in pages, open runs first and the newest first")
{
    Press shop;
    const people::Actor inka = shop.actor("p-2");
    std::vector<std::string> expected;
    for (int i = 1; i <= 7; ++i) {
        OpenRun open = shop.begin();
        expected.insert(expected.begin(), open.run().id());
        if (i == 7) break;
        answerAll(open, inka);
        must(open, run::SignOff{""}, inka);
        REQUIRE(open.seal(*shop.signer("p-2")));
    }
    const records::Reader& reader = shop.writer->reader();
    for (const std::size_t limit : {1U, 2U, 3U, 6U, 7U, 50U}) {
        INFO("pages of " << limit);
        std::vector<std::string> ids;
        std::string after;
        int pages = 0;
        do {
            const auto page = reader.runs({{}, {}, {}, {}, {}, {}, limit}, after);
            REQUIRE(page);
            CHECK(page->rows.size() <= limit);
            for (const auto& row : page->rows) ids.push_back(row.run);
            after = page->next;
        } while (!after.empty() && ++pages < 20);
        CHECK(ids == expected);
    }
    const auto count = [&](const records::RunQuery& query) { return reader.runs(query, "")->rows.size(); };
    CHECK(count({"north", "", "", "", {}, {}, 50}) == 7);
    CHECK(count({"south", "", "", "", {}, {}, 50}) == 0);
    CHECK(count({"", "J-2101", "", "", {}, {}, 50}) == 7);
    CHECK(count({"", "", "open", "", {}, {}, 50}) == 1);
    CHECK(count({"", "", "completed", "", {}, {}, 50}) == 6);
    CHECK(count({"", "", "", "j-21", {}, {}, 50}) == 7);
    CHECK(count({"", "", "", "R0041", {}, {}, 50}) == 7);
    CHECK(count({"", "", "", "north-2025-11-25-03", {}, {}, 50}) == 1);
    CHECK(count({"", "", "", "%", {}, {}, 50}) == 0);
    CHECK(count({"", "", "", "_orth", {}, {}, 50}) == 0);
    const std::int64_t third = reader.runs({"", "", "", expected[4], {}, {}, 50}, "")->rows.at(0).begunMs;
    CHECK(count({"", "", "", "", third, {}, 50}) == 5);
    CHECK(count({"", "", "", "", {}, third, 50}) == 2);
    CHECK(reader.runs({}, "nonsense").error().code == "records.bad_page");

    std::vector<std::uint64_t> seqs;
    std::string after;
    do {
        const auto page = reader.readings({"north", "lift.pressure", 4}, after);
        REQUIRE(page);
        for (const auto& reading : page->rows) seqs.push_back(reading.seq);
        after = page->next;
    } while (!after.empty());
    CHECK(seqs == std::vector<std::uint64_t>{14, 13, 12, 11, 10, 9});
    CHECK(reader.readings({"north", "lift.pressure", 4}, "x/y").error().code == "records.bad_page");
}

TEST_CASE("a clock that is set in the middle of a run stands in the record between what came before and after")
{
    Press shop;
    const people::Actor inka = shop.actor("p-2");
    OpenRun open = shop.begin();
    REQUIRE(answerNext(open, inka));
    shop.clock.advance(2 * 3'600'000);  // a long pause is no jump
    REQUIRE(answerNext(open, inka));
    const std::size_t before = open.run().events().size();
    shop.clock.set(-3'600'000);
    REQUIRE(answerNext(open, inka));
    REQUIRE(open.run().events().size() == before + 2);
    const auto* jump = std::get_if<run::ClockJumped>(&open.run().events()[before].happening());
    REQUIRE(jump);
    CHECK(jump->byMs == -3'600'000);
    REQUIRE(answerNext(open, inka));  // said once
    CHECK(open.run().events().size() == before + 3);
    answerAll(open, inka);
    must(open, run::SignOff{""}, inka);
    const auto sealed = open.seal(*shop.signer("p-2"));
    REQUIRE(sealed);
    CHECK(sealed->document.find("\"clock_jumped\"") != std::string::npos);
    const auto texts = records::textsOf(shop.writer->reader());
    CHECK(run::Run::fold(*seal::eventsOf(seal::read(sealed->document).value(), texts)).phase() == Phase::Completed);
    CHECK(verify(shop.file(), {}, Depth::Deep)->findings.empty());
}

TEST_CASE("a held stop of somebody enrolled takes their own word or a supervisor's who looked, a visitor's nobody's")
{
    Press shop;
    for (const auto& [id, name, role] : {std::tuple("p-3", "Jorun Vane", people::Role::Operator),
                                         std::tuple("p-4", "Odalys Brook", people::Role::Supervisor)})
        REQUIRE(shop.writer->addPerson(people::test::member(id, name, role).enrolled, *shop.signer("p-1")));
    const people::Actor inka = shop.actor("p-2");
    OpenRun open = shop.begin();
    for (const char* holder : {"Inka Thorsby", "Jorun Vane", "Ben from the folder maker"})
        must(open, run::HoldStop{holder, "latch"}, inka);
    const auto codeOf = [&](const run::GiveUpStop& command) {
        const std::size_t before = open.run().events().size();
        const auto done = open.perform(command, inka);
        REQUIRE_FALSE(done);
        CHECK(open.run().events().size() == before);
        return done.error().code;
    };
    CHECK(codeOf({"Jorun Vane"}) == "gate.holders_own");
    CHECK(codeOf({" Jorun Vane "}) == "gate.holders_own");
    CHECK(codeOf({"Jorun Vane", "he is at lunch", inka}) == "gate.supervisor");
    CHECK(codeOf({"Jorun Vane", " . ", shop.actor("p-4")}) == "gate.no_reason");
    must(open, run::GiveUpStop{"Inka Thorsby"}, inka);
    must(open, run::GiveUpStop{"Ben from the folder maker"}, inka);
    const bool himself = GENERATE(true, false);
    if (himself)
        must(open, run::GiveUpStop{"Jorun Vane", {}, shop.actor("p-3")}, inka);
    else
        must(open, run::GiveUpStop{"Jorun Vane", "went home, I looked under the guards", shop.actor("p-4")}, inka);
    CHECK(open.run().heldStops().empty());
    const run::Event& last = open.run().events().back();
    CHECK(last.stamp().by.value == "p-2");
    const auto kept = run::eventFrom(last.json());
    REQUIRE(kept);
    const auto& given = std::get<run::StopGivenUp>(kept->happening());
    CHECK(given.saidBy == (himself ? "p-3" : "p-4"));
    CHECK(given.reason == (himself ? "" : "went home, I looked under the guards"));
}

TEST_CASE("whoever holds a stop is the enrolled person that was meant, however the name was typed")
{
    Press shop;
    REQUIRE(shop.writer->addPerson(people::test::member("p-3", "Inga Vane", people::Role::Operator).enrolled,
                                   *shop.signer("p-1")));
    const people::Actor inka = shop.actor("p-2");
    OpenRun open = shop.begin();
    const auto heldAs = [&](const char* typed) {
        must(open, run::HoldStop{typed, "latch"}, inka);
        std::string name = open.run().heldStops().back().holder;
        must(open, run::GiveUpStop{name}, inka);
        return name;
    };
    for (const char* typed : {"Inka Thorsby", "inka  thorsby", " Inka T", "thor", "INK", "t inka", "Thorsby, Inka"}) {
        INFO(typed);
        CHECK(heldAs(typed) == "Inka Thorsby");
    }
    CHECK(heldAs("Inka the visitor") == "Inka the visitor");
    const auto two = open.perform(run::HoldStop{"In", "latch"}, inka);
    REQUIRE_FALSE(two);
    CHECK(two.error().code == "gate.which_holder");
    CHECK(plain(two.error().text).find("Inga Vane") != std::string::npos);
    // One letter is too little to put a stop down to somebody, and whom it would be is said.
    for (const char* little : {"t", "V", "Th"}) {
        INFO(little);
        const auto little_ = open.perform(run::HoldStop{little, "latch"}, inka);
        REQUIRE_FALSE(little_);
        CHECK(little_.error().code == "gate.which_holder");
        CHECK(plain(little_.error().text).find(*little == 'V' ? "Inga Vane" : "Inka Thorsby") != std::string::npos);
    }
}

TEST_CASE(
    "a supervisor who has the run speaks for nobody else's stop, and one who is out of service is still asked for")
{
    Press shop;
    REQUIRE(shop.writer->addPerson(people::test::member("p-3", "Odalys Brook", people::Role::Supervisor).enrolled,
                                   *shop.signer("p-1")));
    const people::Actor matteo = shop.actor("p-1");
    auto open = OpenRun::begin(*shop.writer, {shop.sources, {}, {}}, matteo);
    REQUIRE(open);
    must(*open, run::HoldStop{"Inka Thorsby", "latch"}, matteo);
    CHECK(open->perform(run::GiveUpStop{"Inka Thorsby", "she went home", matteo}, matteo).error().code ==
          "gate.supervisor");
    people::PersonRecord gone = shop.writer->reader().people()->at(1);
    gone.active = false;
    REQUIRE(shop.writer->changePerson(gone, *shop.signer("p-1")));
    CHECK(open->perform(run::GiveUpStop{"Inka Thorsby"}, matteo).error().code == "gate.holders_own");
    must(*open, run::GiveUpStop{"Inka Thorsby", "left the shop, I looked", shop.actor("p-3")}, matteo);
    CHECK(open->run().heldStops().empty());
}
