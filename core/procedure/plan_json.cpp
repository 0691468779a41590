// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/procedure/plan.h"
#include "core/units/plain.h"

namespace taut::procedure {
namespace {

Json count(std::size_t n) { return Json(static_cast<std::int64_t>(n)); }

/// Members that say nothing are left out: a plan travels in every event that changes it.
void setText(Json& json, const char* key, const std::string& text)
{
    if (!text.empty()) json.set(key, text);
}
void setFlag(Json& json, const char* key, bool flag)
{
    if (flag) json.set(key, true);
}
void setWords(Json& json, const char* key, const std::vector<std::string>& words)
{
    if (words.empty()) return;
    Json list = Json::array();
    for (const std::string& w : words) list.add(w);
    json.set(key, std::move(list));
}
/// Most texts of a procedure have no arguments: the text itself then.
Json saidJson(const Text& text) { return text.args.empty() ? Json(text.source) : textJson(text); }
void setSaid(Json& json, const char* key, const Text& text)
{
    if (!text.empty()) json.set(key, saidJson(text));
}

Json stepJson(const Step& step)
{
    Json json = Json::object();
    json.set("id", step.id.value).set("kind", stepKindWord(step.kind));
    setFlag(json, "vital", step.vital);
    setFlag(json, "hands", step.hands);
    if (!step.waivable) json.set("waivable", false);
    setFlag(json, "external", step.external);
    setText(json, "target", step.target);
    setText(json, "control", step.control);
    setText(json, "item", step.item);
    setText(json, "at", step.at);
    setWords(json, "needs", step.needs);
    setWords(json, "gives", step.gives);
    setWords(json, "ends", step.ends);
    setWords(json, "uses", step.uses);
    setWords(json, "fills", step.fills);
    if (step.validFor != ValidFor::Run) json.set("valid_for", validForWord(step.validFor));
    if (!step.choices.empty()) {
        Json list = Json::array();
        for (const Choice& c : step.choices) {
            Json choice = Json::object();
            choice.set("word", c.word).set("say", c.say);
            setFlag(choice, "stops", c.stops);
            setText(choice, "remedy", c.remedy);
            list.add(std::move(choice));
        }
        json.set("choices", std::move(list));
    }
    if (step.signal != SignalWord::None) json.set("signal", signalWordWord(step.signal));
    setSaid(json, "say", step.say);
    setSaid(json, "why", step.why);
    setSaid(json, "caution", step.caution);
    if (!step.tries.empty()) {
        Json list = Json::array();
        for (const Text& t : step.tries) list.add(saidJson(t));
        json.set("tries", std::move(list));
    }
    setSaid(json, "see", step.see);
    setSaid(json, "done", step.done);
    if (step.waitSeconds != 0) json.set("wait", step.waitSeconds);
    if (!step.lastOfItems) json.set("last_of_items", false);
    return json;
}

std::vector<std::string> wordsFrom(const Json& json)
{
    std::vector<std::string> words;
    for (const Json& w : json.items()) words.push_back(w.text());
    return words;
}

/// False when the kind or another word is none of ours.
bool stepFrom(const Json& json, Step& step)
{
    step.id.value = json["id"].text();
    if (step.id.value.empty() || !stepKindFrom(json["kind"].text(), step.kind)) return false;
    if (json.has("valid_for") && !validForFrom(json["valid_for"].text(), step.validFor)) return false;
    if (json.has("signal") && !signalWordFrom(json["signal"].text(), step.signal)) return false;
    step.vital = json["vital"].boolean();
    step.hands = json["hands"].boolean();
    step.waivable = json["waivable"].boolean(true);
    step.external = json["external"].boolean();
    step.target = json["target"].text();
    step.control = json["control"].text();
    step.item = json["item"].text();
    step.at = json["at"].text();
    step.needs = wordsFrom(json["needs"]);
    step.gives = wordsFrom(json["gives"]);
    step.ends = wordsFrom(json["ends"]);
    step.uses = wordsFrom(json["uses"]);
    step.fills = wordsFrom(json["fills"]);
    for (const Json& c : json["choices"].items())
        step.choices.push_back({c["word"].text(), c["say"].text(), c["stops"].boolean(), c["remedy"].text()});
    if (json.has("say")) step.say = textFrom(json["say"]);
    if (json.has("why")) step.why = textFrom(json["why"]);
    if (json.has("caution")) step.caution = textFrom(json["caution"]);
    for (const Json& t : json["tries"].items()) step.tries.push_back(textFrom(t));
    if (json.has("see")) step.see = textFrom(json["see"]);
    if (json.has("done")) step.done = textFrom(json["done"]);
    step.waitSeconds = json["wait"].number();
    step.lastOfItems = json["last_of_items"].boolean(true);
    return true;
}

Finding broken()
{
    return refuse("plan.broken", "plan", "This is not a plan of a procedure.",
                  "Check that the record was written by this program and is whole.");
}

bool inside(std::size_t first, std::size_t count, std::size_t size) { return first <= size && count <= size - first; }

/// A fold trusts the indexes of a plan: every place belongs to a stage, every step to a place, none out of range.
bool hangsTogether(const Plan& plan)
{
    for (std::size_t s = 0; s < plan.stages.size(); ++s) {
        const PlanStage& stage = plan.stages[s];
        if (!inside(stage.first, stage.count, plan.places.size())) return false;
        for (std::size_t p = stage.first; p < stage.first + stage.count; ++p)
            if (plan.places[p].stage != s) return false;
    }
    for (std::size_t p = 0; p < plan.places.size(); ++p) {
        const PlanPlace& place = plan.places[p];
        if (place.stage >= plan.stages.size() || !inside(place.first, place.count, plan.steps.size())) return false;
    }
    for (std::size_t i = 0; i < plan.steps.size(); ++i) {
        if (plan.steps[i].place >= plan.places.size()) return false;
        const PlanPlace& place = plan.places[plan.steps[i].place];
        if (i < place.first || i >= place.first + place.count) return false;
    }
    return true;
}

std::size_t indexFrom(const Json& json)
{
    const std::int64_t n = json.integer(-1);
    return n < 0 ? static_cast<std::size_t>(-1) : static_cast<std::size_t>(n);
}

}  // namespace

Json planJson(const Plan& plan)
{
    Json stages = Json::array(), places = Json::array(), steps = Json::array();
    for (const PlanStage& s : plan.stages) {
        Json json = Json::object();
        json.set("id", s.id).set("title", saidJson(s.title)).set("first", count(s.first)).set("count", count(s.count));
        stages.add(std::move(json));
    }
    for (const PlanPlace& p : plan.places) {
        Json json = Json::object();
        json.set("stage", count(p.stage)).set("id", p.id).set("title", saidJson(p.title));
        setText(json, "at", p.at);
        setText(json, "hold_stop", p.holdStop);
        setFlag(json, "do_confirm", p.doConfirm);
        json.set("first", count(p.first)).set("count", count(p.count));
        places.add(std::move(json));
    }
    for (const Step& s : plan.steps) steps.add(stepJson(s));
    Json json = Json::object();
    json.set("kind", plan.kind)
        .set("stages", std::move(stages))
        .set("places", std::move(places))
        .set("steps", std::move(steps));
    return json;
}

Result<Plan> planFrom(const Json& json)
{
    if (!json["stages"].isArray() || !json["places"].isArray() || !json["steps"].isArray()) return broken();
    Plan plan;
    plan.kind = json["kind"].text();
    for (const Json& s : json["stages"].items())
        plan.stages.push_back({s["id"].text(), textFrom(s["title"]), indexFrom(s["first"]), indexFrom(s["count"])});
    for (const Json& p : json["places"].items()) {
        PlanPlace place;
        place.stage = indexFrom(p["stage"]);
        place.id = p["id"].text();
        place.title = textFrom(p["title"]);
        place.at = p["at"].text();
        place.holdStop = p["hold_stop"].text();
        place.doConfirm = p["do_confirm"].boolean();
        place.first = indexFrom(p["first"]);
        place.count = indexFrom(p["count"]);
        plan.places.push_back(std::move(place));
    }
    for (std::size_t p = 0; p < plan.places.size(); ++p) {
        const PlanPlace& place = plan.places[p];
        if (!inside(place.first, place.count, json["steps"].items().size())) return broken();
    }
    for (const Json& s : json["steps"].items()) {
        Step step;
        if (!stepFrom(s, step)) return broken();
        step.place = plan.places.size();
        plan.steps.push_back(std::move(step));
    }
    for (std::size_t p = 0; p < plan.places.size(); ++p)
        for (std::size_t i = 0; i < plan.places[p].count; ++i) plan.steps[plan.places[p].first + i].place = p;
    if (!hangsTogether(plan)) return broken();
    return plan;
}

}  // namespace taut::procedure
