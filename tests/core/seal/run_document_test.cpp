// SPDX-License-Identifier: GPL-3.0-or-later
#include <catch2/catch.hpp>

#include "core/run/deviation.h"
#include "core/seal/after.h"
#include "core/seal/difference.h"
#include "core/seal/document.h"
#include "core/seal/words.h"
#include "core/targets/target_json.h"
#include "tests/core/seal/walk.h"

using namespace taut;
using namespace taut::run;

namespace {

struct Walk : mini::Walk {
    /// Everything that a record must keep: a deviation, a change of roll, an interruption, a hand-over, a repetition,
    /// a correction, a note, a step that does not apply.
    void everything()
    {
        must(Answer{{"safety.walk.clear"}, "yes", {}});
        must(Interrupt{"power"});
        must(Resume{{std::begin(kMakeSafe), std::end(kMakeSafe)}, false});
        answerAll();
        must(Note{{"set.lift.seen"}, "Größe: \"ok\" <&>"});
        must(ChangeRoll{mini::otherRoll("R0999", "420 mm"), Length::si(0.41)});
        answerAll();
        must(Correct{{"set.lift.setting/unwind"}, "5.9 bar", "read the wrong gauge"});
        must(AcceptDeviation{{"set.lift.setting/unwind"}, "gauge is being calibrated", accepts});
        must(RepeatStage{"set", "web_break"});
        answerAll();
        must(HandOver{matteo});
        answerAll(matteo);
        must(HandOver{inka}, matteo);
        answerAll();
        must(Correct{{"set.lift.setting/unwind"}, "5.9 bar", "as before"});
        must(AcceptDeviation{{"set.lift.setting/unwind"}, "gauge is being calibrated", accepts});
    }
};

/// What can be asked of a run, as one text.
std::string pictureOf(const Run& run)
{
    std::string all = run.id() + " " + run.operatorId() + " " + run.operatorName() + " " +
                      std::to_string(static_cast<int>(run.phase())) + "\n";
    for (const procedure::Step& step : run.plan().steps) {
        const StepStanding s = run.standing(step.id);
        all += step.id.value + " " + stateWord(s.state) + " " + s.by + " " + s.byName + " " + std::to_string(s.at) +
               " " + std::to_string(s.n) + " " + s.skipReason;
        if (s.answer) {
            all += " " + s.answer->entered + " " + std::to_string(s.answer->uncertainty);
            if (s.answer->value) all += " " + shortest(s.answer->value->si());
            all += targets::windowJson(s.answer->window).dump();
        }
        if (s.deviation) all += " " + s.deviation->reason + s.deviation->by;
        all += "\n";
    }
    for (const std::string& condition : run.conditions()) all += condition + "\n";
    for (std::size_t i = 0; i < run.plan().stages.size(); ++i)
        all += std::to_string(static_cast<int>(run.stageState(i)));
    return all;
}

/// An event as a sealed run has it: the texts of definitions are empty, for they stand in documents of their own.
std::string asSealed(const Event& event)
{
    Json json = Json::parse(event.json()).value();
    Json inputs = json["inputs"];
    for (const char* input : {"press", "job", "substrate"})
        if (inputs.has(input)) inputs.set(input, Json(inputs[input]).set("text", ""));
    if (json.has("inputs")) json.set("inputs", inputs).set("procedure", Json(json["procedure"]).set("text", ""));
    if (json.has("targets")) {
        Json set = Json::object();
        for (const char* part : {"targets", "schedules", "findings"}) set.set(part, json["targets"][part]);
        json.set("targets", std::move(set));
    }
    return json.dump();
}

}  // namespace

TEST_CASE("a run's document written and read folds to the same run")
{
    Walk walk;
    walk.everything();
    walk.must(SignOff{"watch the brake"});
    const seal::Document document = seal::documentOf(*walk.run);
    const std::string bytes = seal::write(document);
    const auto read = seal::read(bytes);
    REQUIRE(read);
    CHECK(seal::write(*read) == bytes);
    const auto events = seal::eventsOf(*read);
    if (!events) FAIL(events.error().code << " " << events.error().text.source);
    const Run again = Run::fold(*events);
    REQUIRE(again.events().size() == walk.run->events().size());
    for (std::size_t i = 0; i < events->size(); ++i) CHECK(again.events()[i].json() == asSealed(walk.run->events()[i]));
    CHECK(pictureOf(again) == pictureOf(*walk.run));
    CHECK(again.targets() == walk.run->targets());
    CHECK(procedure::planJson(again.plan()) == procedure::planJson(walk.run->plan()));
    CHECK(again.facts() == walk.run->facts());
    CHECK(again.sources().roll == walk.run->sources().roll);
    CHECK(again.sources().press.sha256 == walk.run->sources().press.sha256);
    CHECK(again.presentDiameter() == walk.run->presentDiameter());
    // And at every moment on the way, so that what somebody saw then can be shown again.
    for (std::size_t n = 1; n <= events->size(); ++n)
        CHECK(pictureOf(Run::fold(std::span(events->data(), n))) ==
              pictureOf(Run::fold(std::span(walk.run->events().data(), n))));
}

TEST_CASE("the first event leaves out the inputs that are the document's, and documents that state them read the same")
{
    Walk walk;
    const Json began = Json::parse(walk.run->events().front().json()).value();
    seal::Document document = seal::documentOf(*walk.run);
    CHECK_FALSE(document.body["events"].items().front().has("inputs"));
    const auto told = seal::eventsOf(document);
    REQUIRE(told);
    CHECK(told->front().json() == asSealed(walk.run->events().front()));

    // As all were written before: whole.
    Json::Array events = document.body["events"].items();
    Json inputs = began["inputs"];
    for (const char* input : {"press", "job", "substrate"}) {
        Json named = Json::object();
        for (const char* key : {"id", "edition", "sha256"}) named.set(key, inputs[input][key]);
        inputs.set(input, std::move(named));
    }
    events.front().set("inputs", std::move(inputs));
    document.body.set("events", Json(std::move(events)));
    const auto before = seal::eventsOf(document);
    REQUIRE(before);
    CHECK(before->front().json() == told->front().json());

    // Where the roll was changed under way, the first event says which it was.
    walk.everything();
    const Json first = seal::documentOf(*walk.run).body["events"].items().front();
    CHECK(first["inputs"].members().size() == 1);
    CHECK(first["inputs"]["roll"] == began["inputs"]["roll"]);
}

TEST_CASE("a run's document has the keys that readers from outside rely on")
{
    Walk walk;
    walk.everything();
    walk.must(SignOff{"watch the brake"});
    const Json body = seal::documentOf(*walk.run).body;
    for (const char* key :
         {"format", "kind",       "id",      "workplace", "practice", "program",   "language", "units",       "begun",
          "ended",  "offset",     "state",   "verdict",   "inputs",   "procedure", "people",   "target_sets", "events",
          "steps",  "deviations", "remarks", "run_kind",  "parent",   "plans",     "operator"}) {
        INFO(key);
        CHECK(body.has(key));
    }
    CHECK(body["kind"].text() == "run");
    CHECK(body["language"].text() == "en");
    CHECK(body["units"].text() == "metric");
    CHECK(body["offset"].text() == "+01:00");
    CHECK(body["state"].text() == "completed");
    CHECK(body["verdict"].text() == "with_deviations");
    CHECK(body["remarks"].text() == "watch the brake");
    CHECK(body["operator"].text() == "p-2");
    CHECK(body["inputs"]["press"].dump() ==
          R"({"id":"north","edition":1,"sha256":")" + walk.run->sources().press.sha256 + "\"}");
    CHECK(body["inputs"]["roll"]["id"].text() == "R0999");
    CHECK(body["inputs"]["roll"]["text"].text() == mini::otherRoll("R0999", "420 mm"));
    REQUIRE(body["people"].items().size() == 2);
    CHECK(body["people"].items()[0].dump() == R"({"id":"p-2","name":"Inka Thorsby","role":"operator"})");
    // Two target sets, exactly the shape that `targets --json` prints; the second, from the change of roll, by what
    // changed in it.
    REQUIRE(body["target_sets"].items().size() == 2);
    CHECK_FALSE(body["target_sets"].items()[0].has("since"));
    CHECK(body["target_sets"].items()[1]["since"].integer(-1) == 0);
    const auto sets = seal::wholeAgain(body["target_sets"].items());
    REQUIRE(sets);
    const Json& second = (*sets)[1];
    const Json& change = body["events"].items()[static_cast<std::size_t>(second["from"].integer()) - 1];
    CHECK(change["what"].text() == "inputs_changed");
    CHECK(change["target_set"].integer() == 1);
    CHECK_FALSE(change.has("targets"));
    const Json printed = targets::targetsJson(walk.run->targets(), UnitSystem::Metric);
    for (const char* part : {"targets", "schedules", "findings"}) CHECK(second[part].dump() == printed[part].dump());
    // What stood on the sheet: a reading with its window, and the deviation.
    REQUIRE(body["deviations"].items().size() == 1);
    const Json& deviation = body["deviations"].items()[0];
    CHECK(deviation["step"].text() == "set.lift.setting/unwind");
    CHECK(deviation["entered"].text() == "5.9 bar");
    CHECK(deviation["value"].number() == Approx(590'000));
    CHECK(deviation["unit"].text() == "Pa");
    CHECK(deviation["high"].number() < 590'000);
    CHECK(deviation["by"].text() == "p-1");
    CHECK(deviation["signature"].text().size() == 128);
    CHECK(body["steps"].items().size() == walk.run->plan().steps.size());
    // Definitions stand in documents of their own, not in each run.
    const std::string bytes = body.dump();
    CHECK(bytes.find("torque_per_setting = ") == std::string::npos);
    CHECK(bytes.find("Short enough to be walked") == std::string::npos);
    // One target set of some 150 kB with its reasons in words; the other roll's takes a tenth of that.
    CHECK(bytes.size() < 190'000);
    CHECK(body["target_sets"].items()[1].dump().size() * 10 < body["target_sets"].items()[0].dump().size());
}

TEST_CASE("an event states what the document and the events before it do not say already")
{
    Walk walk;
    walk.everything();
    walk.must(SignOff{"watch the brake"});
    const Json body = seal::documentOf(*walk.run).body;
    bool another = false, deviated = false, changed = false;
    for (const Json& event : body["events"].items()) {
        CHECK_FALSE(event.has("offset"));  // that of the document
        CHECK_FALSE(event.has("name"));    // that of "people"
        another = another || event["by"].text() == "p-1";
        deviated = deviated || event["what"].text() == "deviated";
        if (event["what"].text() != "inputs_changed") continue;
        changed = true;
        REQUIRE(event["inputs"].members().size() == 1);
        CHECK(event["inputs"]["roll"]["id"].text() == "R0999");
        CHECK_FALSE(event.has("procedure"));
        CHECK(event["present_diameter"].number() == Approx(0.41));
    }
    CHECK(another);
    CHECK(deviated);
    CHECK(changed);
    // Where the clock is set to another offset, or a person is another than when first seen, the event says so.
    std::vector<Event> events = seal::eventsOf({seal::Kind::Run, body}).value();
    Json moved = Json::parse(events[1].json()).value();
    moved.set("offset", "+02:00").set("name", "Inka Thorsby-Quill").set("role", "supervisor").set("doubtful", true);
    events[1] = eventFrom(moved.dump()).value();
    const seal::Document document = seal::documentOf(Run::fold(events));
    const Json& told = document.body["events"].items()[1];
    CHECK(told["offset"].text() == "+02:00");
    CHECK(told["name"].text() == "Inka Thorsby-Quill");
    CHECK(told["role"].text() == "supervisor");
    CHECK(told["doubtful"].boolean());
    CHECK(seal::eventsOf(document).value()[1].json() == moved.dump());
}

TEST_CASE("a document that tells every target set, plan and event whole is read the same")
{
    Walk walk;
    walk.everything();
    walk.must(SignOff{""});
    seal::Document document = seal::documentOf(*walk.run);
    const auto events = seal::eventsOf(document);
    REQUIRE(events);
    for (const char* list : {"target_sets", "plans"})
        document.body.set(list, Json(seal::wholeAgain(document.body[list].items()).value()));
    Json whole = Json::array();
    for (std::size_t i = 0; i < events->size(); ++i) {
        Json event = Json::parse((*events)[i].json()).value();
        const Json& told = document.body["events"].items()[i];
        Json out = Json::object();
        for (const Json::Member& member : event.members()) {
            if (member.first == "targets")
                out.set("target_set", told["target_set"]);
            else
                out.set(member.first, member.first == "plan" ? told["plan"] : member.second);
        }
        whole.add(std::move(out));
    }
    document.body.set("events", std::move(whole));
    const auto again = seal::eventsOf(document);
    REQUIRE(again);
    REQUIRE(again->size() == events->size());
    for (std::size_t i = 0; i < events->size(); ++i) CHECK((*again)[i].json() == (*events)[i].json());
}

TEST_CASE("a live run gives a document of state open and an abandoned one says why")
{
    Walk walk;
    walk.must(Answer{{"safety.walk.clear"}, "yes", {}});
    Json body = seal::documentOf(*walk.run).body;
    CHECK(body["state"].text() == "open");
    CHECK(body["verdict"].text() == "incomplete");
    CHECK_FALSE(body.has("ended"));
    CHECK(body["steps"].items()[0]["state"].text() == "answered");
    CHECK(body["steps"].items()[1]["state"].text() == "open");
    walk.must(Abandon{"order was cancelled"});
    body = seal::documentOf(*walk.run).body;
    CHECK(body["state"].text() == "abandoned");
    CHECK(body["verdict"].text() == "incomplete");
    CHECK(body["reason"].text() == "order was cancelled");
    CHECK(body.has("ended"));
}

TEST_CASE("a run's document that was put together wrongly gives no events")
{
    Walk walk;
    walk.everything();
    const seal::Document whole = seal::documentOf(*walk.run);
    const auto spoil = [&](const char* key, Json value) {
        seal::Document document = whole;
        document.body.set(key, std::move(value));
        return document;
    };
    const auto codeOf = [](const seal::Document& document) {
        const auto events = seal::eventsOf(document);
        return events ? std::string{} : events.error().code;
    };
    CHECK(codeOf(whole).empty());
    CHECK(codeOf(spoil("events", Json::array())) == "document.broken");
    CHECK(codeOf(spoil("target_sets", Json::array())) == "document.broken");
    CHECK(codeOf(spoil("plans", Json::array())) == "document.broken");
    Json::Array sets = whole.body["target_sets"].items();
    sets[1].set("since", 1);
    CHECK(codeOf(spoil("target_sets", Json(sets))) == "document.broken");
    sets[1].set("since", 0).set("targets", Json::array().add("0..9999"));
    CHECK(codeOf(spoil("target_sets", Json(sets))) == "document.broken");
    sets.erase(sets.begin());
    CHECK(codeOf(spoil("target_sets", Json(sets))) == "document.broken");
    CHECK(codeOf(spoil("plans", Json(Json::Array(999, Json::object())))) == "document.broken");
    CHECK(codeOf(spoil("people", Json::array())) == "event.broken");
    CHECK(codeOf(spoil("offset", Json())) == "event.broken");
    Json::Array events = whole.body["events"].items();
    std::swap(events[3], events[4]);
    CHECK(codeOf(spoil("events", Json(events))) == "document.broken");
    events = whole.body["events"].items();
    events.erase(events.begin());
    CHECK(codeOf(spoil("events", Json(events))) == "document.broken");
    events = whole.body["events"].items();
    events[2].set("what", "dreamt");
    CHECK(codeOf(spoil("events", Json(events))) == "event.broken");
    CHECK(codeOf({seal::Kind::Person, whole.body}) == "document.broken");
}

TEST_CASE("what an answer filled stands in the document as a target set of its own, and is read back from it")
{
    std::string text = mini::kProcedure;
    const std::string from = "target = \"lift.pressure\"\n    control = \"lift_pressure\"";
    const std::string say = "Set {control} to {target}\"\n    [[stage.place.step]]\n    id = \"setting\"";
    REQUIRE(text.find(from) != std::string::npos);
    REQUIRE(text.find(say) != std::string::npos);
    text.replace(text.find(say), 25, "Measure it");
    text.replace(text.find(from), from.size(), "target = \"roll.diameter\"\n    fills = [\"roll.outer_diameter\"]");
    Sources sources = mini::sources();
    sources.procedure = sourceOf("mini", 1, text);
    Walk walk;
    const auto basis = basisFor(sources, {});
    if (!basis) FAIL(basis.error().code << " " << basis.error().text.source);
    const auto began = begin(*basis, {"north-2025-11-25-02", "pc-1", false, {}, nullptr}, {}, walk.inka);
    REQUIRE(began);
    walk.run = Run::fold(std::span(&*began, 1));
    while (!(*walk.run->next() == StepId{"set.lift.pressure"})) walk.must(Answer{*walk.run->next(), "yes", {}});
    walk.must(Answer{{"set.lift.pressure"}, "506 mm", {}});
    walk.must(Abandon{"enough seen"});
    const seal::Document document = seal::documentOf(*walk.run);
    REQUIRE(document.body["target_sets"].items().size() == 2);
    const Json& from2 = document.body["target_sets"].items()[1]["from"];
    CHECK(document.body["events"].items()[static_cast<std::size_t>(from2.integer()) - 1]["what"].text() == "answered");
    const auto read = seal::read(seal::write(document));
    REQUIRE(read);
    const auto events = seal::eventsOf(*read);
    REQUIRE(events);
    const Run again = Run::fold(*events);
    CHECK(again.targets() == walk.run->targets());
    CHECK(again.targets().find("roll.diameter")->quantity()->si() == Approx(0.506));
    CHECK(again.sources().roll == walk.run->sources().roll);
}

TEST_CASE("the gist of a run's document says what a chain is checked by, and little else")
{
    Walk walk;
    walk.everything();
    const seal::Parted parted = seal::partWords(seal::documentOf(*walk.run));
    const seal::Document whole =
        seal::sealedBy(parted.document, walk.inka.id().value, walk.inka.name(), {1'764'052'860'000, 60});
    const std::string bytes = seal::write(whole);
    const auto gist = seal::gistOf(bytes, seal::Kind::Run);
    REQUIRE(gist);
    CHECK(gist->kind == seal::Kind::Run);
    CHECK(seal::headOf(*gist) == seal::headOf(whole));
    const seal::SealedRun own = seal::sealedRun({}, *gist), full = seal::sealedRun({}, whole);
    CHECK(own.id == full.id);
    CHECK(own.press == full.press);
    CHECK(own.hands == full.hands);
    CHECK(own.hands.size() > 1);
    for (const char* list : {"target_sets", "plans"}) {
        CAPTURE(list);
        const Json::Array &told = gist->body[list].items(), &sets = whole.body[list].items();
        REQUIRE(told.size() == sets.size());
        CHECK(told.front()["since"].isObject());
        for (std::size_t i = 0; i < told.size(); ++i) CHECK(told[i]["since"] == sets[i]["since"]);
    }
    const auto signedTexts = [&whole](const Json& body) {
        std::vector<std::string> all;
        for (const Json& event : body["events"].items()) {
            if (event["what"].text() != "deviated") continue;
            Json fields = event;
            fields.set("by", event["supervisor"]);
            all.push_back(run::deviationText(whole.body["id"].text(), fields) + event["signature"].text());
        }
        return all;
    };
    CHECK(signedTexts(gist->body) == signedTexts(whole.body));
    CHECK(signedTexts(gist->body).size() == 2);
    CHECK(gist->body.dump().size() < bytes.size() / 2);
    // Of any other kind it is all of the document.
    const seal::Document other = seal::withdrawalOf("north", true, "worn", walk.inka, {0, 0});
    for (const seal::Kind kind : {seal::Kind::Run, seal::Kind::Withdrawal})
        CHECK(seal::gistOf(seal::write(other), kind)->body == other.body);
}

TEST_CASE("a document that cannot be read has no gist, and both say why in the same words")
{
    Walk walk;
    const std::string bytes = seal::write(seal::documentOf(*walk.run));
    REQUIRE(seal::gistOf(bytes, seal::Kind::Run));
    for (const std::string& broken :
         {bytes.substr(0, bytes.size() / 2), bytes + "x", std::string("[]"), std::string("{\"kind\":\"run\"}"),
          std::string("{\"format\":1,\"kind\":\"rune\"}"), "{\"format\":1," + bytes.substr(1)}) {
        const auto gist = seal::gistOf(broken, seal::Kind::Run);
        const auto whole = seal::read(broken);
        REQUIRE_FALSE(gist);
        REQUIRE_FALSE(whole);
        CHECK(gist.error() == whole.error());
    }
}
