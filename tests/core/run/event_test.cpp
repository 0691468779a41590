// SPDX-License-Identifier: GPL-3.0-or-later
#include <catch2/catch.hpp>
#include <set>

#include "core/base/json.h"
#include "core/run/event_maker.h"
#include "tests/core/run/demo_walk.h"
#include "tests/core/run/small_press.h"

using namespace taut;
using namespace taut::run;

namespace {

const std::vector<std::string> kSafe(std::begin(kMakeSafe), std::end(kMakeSafe));
constexpr const char* kUnwind = "tension.settings.setting/unwind";

/// A run in which everything happens that can happen.
std::vector<Event> everything()
{
    small::Walk walk;
    walk.must(Note{{}, "début \"of\" the shift\n\x1d \xe2\x82\xac"});
    walk.must(SkipStep{{"safety.walk.order"}, "sample", std::nullopt});
    walk.upTo("threading.roll.mounted");
    walk.must(SkipStep{{"threading.roll.mounted"}, "on already", small::person("sue")});
    walk.answer("threading.roll.mounted");
    walk.upTo("threading.splice.clamp");
    walk.must(Interrupt{"break"});
    walk.must(Resume{kSafe, true});
    walk.upTo(kUnwind);
    walk.must(HandOver{small::person("ben")});
    walk.upTo(kUnwind, "ben");
    walk.must(HoldStop{"Ben", "latch at the rewind"}, "ben");
    walk.must(Answer{{kUnwind}, "2,50 bar", {}}, "ben");
    walk.must(Correct{{kUnwind}, "1.75 bar", "wrong ring"}, "ben");
    walk.must(AcceptDeviation{{kUnwind}, "brake", small::signer("sue")}, "ben");
    walk.must(Attach{{kUnwind}, "gauge \u00e9.jpg", std::make_shared<const std::string>("\xFF\xD8\xFF")}, "ben");
    walk.must(RepeatStage{"tension", "other"}, "ben");
    walk.upTo(kUnwind, "ben");
    walk.must(Answer{{kUnwind}, "2,50 bar", {}}, "ben");
    walk.must(Answer{{kUnwind}, "1.40 bar", {}}, "ben");
    walk.must(SayHelped{{kUnwind}, 0, "a kink in the hose"}, "ben");
    walk.must(Withdraw{"smoke"}, "pip");
    walk.must(Return{"fan mended"}, "sue");
    walk.must(Resume{kSafe, false}, "ben");
    walk.must(Interrupt{"break"}, "ben");
    walk.must(Resume{kSafe, false, true}, "ana");
    walk.must(HandOver{small::person("ben")}, "ana");
    walk.upTo("", "ben");
    std::vector<Event> all = walk.run().events();
    small::Walk left;
    left.must(HoldStop{"Ana", "latch at the panel"});
    left.must(Abandon{"no order"});
    all.push_back(left.run().events().back());
    while (!walk.run().heldStops().empty()) walk.must(GiveUpStop{walk.run().heldStops().front().holder}, "ben");
    walk.must(SignOff{"the roll has a flag at 300 m"}, "ben");
    all.push_back(walk.run().events().back());

    Run real = Run::fold(std::vector<Event>{
        demo::begun(demo::sources("north", "quince-jelly", "R0041"), {"full", true, Length::si(0.48)})});
    all.push_back(real.events().back());
    real = demo::done(real, MeasuredDiameter{Length::si(0.47)});
    all.push_back(real.events().back());
    real = demo::done(real, ChangeRoll{demo::rollText("R0047"), std::nullopt});
    all.push_back(real.events().back());
    const Run nearly = demo::until(std::move(real), {"threading.lift.diameter"});
    const Run filled = demo::done(nearly, Answer{{"threading.lift.diameter"}, "465 mm", {}});
    all.push_back(filled.events().back());
    const Run outside = demo::done(nearly, Answer{{"threading.lift.diameter"}, "440 mm", {}});
    all.push_back(demo::done(outside, AcceptDeviation{{"threading.lift.diameter"}, "cut down", small::signer("sue")})
                      .events()
                      .back());
    return all;
}

}  // namespace

TEST_CASE("every happening reads back from its JSON to the same bytes and the same meaning")
{
    std::set<std::string> seen;
    for (const Event& event : everything()) {
        const std::string what = whatWord(event.happening());
        INFO(what << ' ' << event.stamp().n);
        seen.insert(what);
        const auto back = eventFrom(event.json());
        REQUIRE(back);
        CHECK(back->json() == event.json());
        CHECK(event.json().find('\n') == std::string::npos);
        CHECK(back->stamp().n == event.stamp().n);
        CHECK(back->stamp().utcMs == event.stamp().utcMs);
        CHECK(back->stamp().offsetMinutes == event.stamp().offsetMinutes);
        CHECK(back->stamp().by == event.stamp().by);
        CHECK(back->happening().index() == event.happening().index());
        // Written anew from what was read it is the same text: nothing of the happening was lost on the way.
        CHECK(eventJson(back->stamp(), back->happening(), UnitSystem::Metric) == event.body());
    }
    CHECK(seen == std::set<std::string>{"began", "answered", "corrected", "not_applicable", "deviated",
                                        "inputs_changed", "interrupted", "resumed", "handed_over", "repeated", "noted",
                                        "withdrawn", "returned", "completed", "abandoned", "stop_held", "stop_given_up",
                                        "attached", "helped"});
}

TEST_CASE("a run folded from stored events is the run that was walked")
{
    small::Walk walk;
    walk.must(HandOver{small::person("ben")});
    walk.upTo("tension.settings.strain", "ben");
    std::vector<Event> stored;
    for (const Event& event : walk.run().events()) {
        auto back = eventFrom(event.json());
        REQUIRE(back);
        stored.push_back(*back);
    }
    CHECK(small::pictureOf(Run::fold(stored)) == small::pictureOf(walk.run()));
    const Began& a = walk.run().began();
    const Began& b = std::get<Began>(stored.front().happening());
    CHECK(a.targets == b.targets);
    CHECK(a.plan == b.plan);
    CHECK(a.sources == b.sources);
    CHECK(a.facts == b.facts);
}

TEST_CASE("an event's JSON has the members that readers from outside rely on")
{
    small::Walk walk;
    walk.upTo(kUnwind);
    walk.must(Answer{{kUnwind}, "1,4 bar", {}});
    const auto json = Json::parse(walk.run().events().back().json());
    REQUIRE(json);
    const Json& e = *json;
    CHECK(e["what"].text() == "answered");
    CHECK(e["by"].text() == "ana");
    CHECK(e["name"].text() == "Ana Wetherby");
    CHECK(e["role"].text() == "operator");
    CHECK(e["offset"].text() == "+01:00");
    CHECK(e["at"].text().size() == 24);
    CHECK(e["step"].text() == kUnwind);
    CHECK(e["entered"].text() == "1,4 bar");
    CHECK(e["value"].number() == Approx(1.4e5));
    CHECK(e["unit"].text() == "Pa");
    CHECK(e["kind"].text() == "pressure");
    CHECK(e["shown_unit"].text() == "bar");
    CHECK(e["low"].number() == Approx(1.1e5));
    CHECK(e["high"].number() == Approx(1.7e5));
    CHECK(e["rule"].text() == "job");
    CHECK(e["uncertainty"].number() == Approx(0.1e5));
    CHECK(e["verdict"].text() == "inside");
    CHECK_FALSE(e["doubtful"].boolean(true));
    const auto began = Json::parse(walk.run().events().front().json());
    REQUIRE(began);
    for (const char* key : {"run", "workplace", "practice", "kind", "parent", "web_in_press", "units", "inputs",
                            "procedure", "facts", "carried", "targets", "plan"}) {
        INFO(key);
        CHECK(began->has(key));
    }
    for (const char* key : {"id", "edition", "sha256", "text"}) CHECK((*began)["inputs"]["roll"].has(key));
    for (const char* key : {"targets", "schedules", "findings"}) CHECK((*began)["targets"].has(key));
}

TEST_CASE("a stored event that lacks a member, or has one of another shape, is broken by name")
{
    std::set<std::string> tried;
    for (const Event& event : everything()) {
        const auto whole = Json::parse(event.json());
        REQUIRE(whole);
        // One of each sort, answers with and without a value.
        if (!tried.insert(whatWord(event.happening()) + std::string(whole->has("value") ? " value" : "")).second)
            continue;
        for (const Json::Member& member : whole->members()) {
            // Members that are left out where there is nothing to say.
            if (member.first == "limits_from" || member.first == "limits_unit") continue;
            INFO(whatWord(event.happening()) << " without " << member.first);
            Json cut = Json::object();
            for (const Json::Member& other : whole->members())
                if (other.first != member.first) cut.set(other.first, other.second);
            const auto refused = eventFrom(cut.dump());
            // Without its value an answer is one without a reading.
            if (member.first == "value" && refused) continue;
            REQUIRE_FALSE(refused);
            CHECK(refused.error().code == "event.broken");
            Json bent = *whole;
            bent.set(member.first, Json::array().add(Json(nullptr)));
            CHECK_FALSE(eventFrom(bent.dump()));
        }
    }
    for (const char* text : {"", "{", "[]", "7", "null", "{}", "{\"n\":1}"}) {
        INFO(text);
        const auto refused = eventFrom(text);
        REQUIRE_FALSE(refused);
        CHECK(refused.error().code == "event.broken");
    }
}

TEST_CASE("a stored offset is one that a clock can have, and is written as it was read")
{
    const auto whole = Json::parse(everything().front().json());
    REQUIRE(whole);
    const auto with = [&](const char* offset) {
        Json event = *whole;
        return eventFrom(event.set("offset", offset).dump());
    };
    for (const char* bad : {"+99:99", "+25:00", "-01:60", "+1:00", "01:00", "+01-00", "+0a:00"}) {
        INFO(bad);
        CHECK_FALSE(with(bad));
    }
    for (const char* good : {"+00:00", "+05:45", "-12:00", "+14:00"}) {
        INFO(good);
        const auto event = with(good);
        REQUIRE(event);
        CHECK(eventJson(event->stamp(), event->happening(), UnitSystem::Metric)["offset"].text() == good);
    }
}

TEST_CASE("an event is stamped with who signed in and with the next number, whatever the caller says")
{
    small::Walk walk;
    Stamp lie;
    lie.n = 99;
    lie.by = {"sue"};
    lie.byName = "Sue Marlpit";
    lie.byRole = "supervisor";
    const auto event = decide(walk.run(), Note{{}, "x"}, lie, small::person("ana"));
    REQUIRE(event);
    CHECK(event->stamp().n == 2);
    CHECK(event->stamp().by.value == "ana");
    CHECK(event->stamp().byRole == "operator");
}
