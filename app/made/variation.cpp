// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/made/variation.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <map>

#include "app/made/gauge.h"
#include "core/run/deviation.h"
#include "core/run/parts.h"
#include "core/units/parse.h"

namespace taut::app::made {

namespace {

constexpr std::uint64_t kVaryStream = 3'000'000'000'000;

/// Where `from` stands in a text, `to` is put; as often as it stands there.
std::string replaced(std::string text, const std::string& from, const std::string& to)
{
    for (std::size_t i = text.find(from); i != std::string::npos; i = text.find(from, i + to.size()))
        text.replace(i, from.size(), to);
    return text;
}

/// A step that names the event of its reading. What an event says in whole numbers its step says too: the one was read
/// back as it was stored, the other is as it was reckoned, and a document leaves out only what is the same.
Json named(const Json& step, const Json& read)
{
    constexpr std::array kFigures{"value", "low", "high", "uncertainty"};
    Json again = Json::object();
    for (const auto& [key, value] : step.members())
        if (key != "event" && std::find(kFigures.begin(), kFigures.end(), key) == kFigures.end()) again.set(key, value);
    for (const char* key : kFigures) {
        const double figure = read[key].number();
        if (read[key].isNumber() && shortest(figure).find_first_of(".e") == std::string::npos) again.set(key, figure);
    }
    again.set("event", step["event"]);
    return again;
}

void setRoll(Json& inputs, const std::string& id, const std::string& text, const std::string& hash)
{
    Json roll = inputs["roll"];
    roll.set("id", id).set("sha256", hash).set("text", text);
    inputs.set("roll", std::move(roll));
}

}  // namespace

/// What is being told of one run.
struct Pattern::Told {
    const Tale& tale;
    const Shop& shop;
    Chance chance;
    Instant now{};
    const people::Actor &by, &next;
    std::map<std::string, Json> deviations{};  ///< by step: as the document lists it
    std::map<std::string, Json> readings{};    ///< by step: the event that reads it last
    std::vector<std::string> times{};          ///< of the events
};

Pattern::Pattern(const run::Run& run, Tale tale, const seal::KnownWords& known)
    : m_tale(std::move(tale)),
      m_units(run.began().units),
      m_roll(run.sources().roll.text),
      m_targets(run.targets().all)
{
    seal::Parted parted = seal::partWords(seal::documentOf(run), known);
    m_words = std::make_shared<const std::vector<seal::Parted::Words>>(std::move(parted.words));
    m_body = std::move(parted.document.body);
    m_events = m_body["events"].items();
    m_steps = m_body["steps"].items();
    m_body.set("events", Json::array()).set("steps", Json::array());
    const procedure::Plan& plan = run.plan();
    std::int64_t before = m_tale.begin.utcMs;
    for (const run::Event& event : run.events()) {
        Slot slot;
        slot.afterMs = event.stamp().utcMs - std::exchange(before, event.stamp().utcMs);
        if (const auto* read = std::get_if<run::Answered>(&event.happening())) {
            const procedure::Step& step = *plan.find(read->step);
            slot.slow = isSlowAtNight(plan.stages[plan.stageOf(step)].id, true);
            for (std::size_t i = 0; read->value && i < m_targets.size(); ++i)
                if (m_targets[i].id == step.target) slot.target = i;
            slot.outside = read->judgement.verdict == verdict::Verdict::Outside;
        }
        if (const auto* helped = std::get_if<run::Helped>(&event.happening()))
            slot.tries = plan.find(helped->step)->tries.size();
        m_slots.push_back(slot);
    }
}

void Pattern::setReading(Json& event, const Slot& slot, Told& told) const
{
    const targets::Target& target = m_targets[*slot.target];
    const targets::Ready& ready = *target.ready();
    constexpr int kTries = 6;
    for (int i = 0; i < kTries; ++i) {
        const auto read = readingOf(target, told.tale, m_units, slot.outside, told.chance);
        if (!read) return;
        const auto value = parseQuantity(read->entered, target.quantity()->kind());
        if (!value) continue;
        const double doubt = verdict::uncertaintyOf(*value, ready.instrument);
        const verdict::Judgement judged = verdict::judge(*value, doubt, ready.window);
        if ((judged.verdict == verdict::Verdict::Outside) != slot.outside) continue;
        // Whether a reading is doubtful stands beside its verdict, or not at all: that is part of the shape.
        if (judged.doubtful != event["doubtful"].boolean()) continue;
        event.set("entered", read->entered).set("value", value->si()).set("uncertainty", doubt);
        event.set("verdict", verdict::verdictWord(judged.verdict));
        return;
    }
}

void Pattern::setEvent(Json& event, const Slot& slot, Told& told) const
{
    const Trouble& trouble = told.tale.trouble;
    const std::string what = event["what"].text(), step = event["step"].text();
    double after = static_cast<double>(slot.afterMs) * std::exp(0.25 * told.chance.normal());
    if (slot.slow) after *= told.tale.slow;
    told.now.utcMs += static_cast<std::int64_t>(after);
    told.times.push_back(utcText(told.now.utcMs));
    event.set("at", told.times.back()).set("by", person(event["by"].text(), told));
    if (slot.target) {
        setReading(event, slot, told);
        told.readings[step] = event;
    } else if (what == "deviated") {
        const Json& read = told.readings[step];
        event.set("entered", read["entered"]).set("value", read["value"]);
        Json accepted = Json::object();
        for (const char* key : {"step", "entered", "value", "unit", "low", "high", "reason"})
            accepted.set(key, event[key]);
        accepted.set("by", event["supervisor"]).set("at", event["at"]);
        const people::Signer* supervisor = told.shop.named(event["supervisor_name"].text());
        const std::string text = run::deviationText(told.tale.run, accepted);
        event.set("signature", hex(supervisor->sign(run::kDeviationPurpose, bytesOf(text))));
        accepted.set("signature", event["signature"]);
        told.deviations[step] = std::move(accepted);
    } else if (what == "began") {
        event.set("run", told.tale.run).set("parent", told.tale.parent);
    } else if (what == "handed_over") {
        event.set("to", told.next.id().value).set("to_name", told.next.name());
    } else if (what == "noted") {
        event.set("text", trouble.note);
    } else if (what == "interrupted") {
        event.set("reason", trouble.interrupted);
    } else if (what == "abandoned") {
        event.set("reason", trouble.abandoned);
    } else if (what == "completed") {
        event.set("remarks", trouble.remarks);
    } else if (what == "helped" && slot.tries > 0) {
        const double which = told.chance.unit();
        event.set("remedy", static_cast<std::int64_t>(which * which * static_cast<double>(slot.tries)) + 1);
    }
}

/// Steps name the events of their answers; one whose value was accepted says it all itself.
void Pattern::setSteps(Json& body, const Told& told) const
{
    Json::Array steps = m_steps;
    for (Json& step : steps) {
        const auto read = told.readings.find(step["step"].text());
        if (step.has("event") && read != told.readings.end()) step = named(step, read->second);
        if (step.has("event") || !step.has("entered")) continue;
        for (const char* key : {"entered", "value", "uncertainty", "verdict"})
            if (read != told.readings.end()) step.set(key, read->second[key]);
        for (std::size_t i = 0; i < m_events.size(); ++i)
            if (m_events[i]["at"] == step["at"]) step.set("at", told.times[i]);
        step.set("by", person(step["by"].text(), told));
    }
    body.set("steps", Json(std::move(steps)));
    Json deviations = Json::array();
    for (const Json& one : m_body["deviations"].items()) {
        const auto accepted = told.deviations.find(one["step"].text());
        if (accepted != told.deviations.end()) deviations.add(accepted->second);
    }
    body.set("deviations", std::move(deviations));
}

/// Two operators stand in a pattern: who began, and who took over. Anybody else is a supervisor, who stays.
std::string_view Pattern::person(const std::string& id, const Told& told) const
{
    if (id == madeOperators()[m_tale.by].id) return told.by.id().value;
    if (id == madeOperators()[m_tale.next].id) return told.next.id().value;
    return told.shop.supervisor(0)->actor().id().value == id ? told.shop.supervisor(0)->actor().id().value
                                                             : told.shop.supervisor(1)->actor().id().value;
}

Sealable Pattern::told(const Tale& tale, const Shop& shop) const
{
    Told told{tale,
              shop,
              Chance(shop.seed(), kVaryStream + tale.stream),
              tale.begin,
              shop.operatorAt(tale.by).actor(),
              shop.operatorAt(tale.next).actor()};
    const std::string rollText =
        replaced(replaced(m_roll, m_tale.roll.id, tale.roll.id), m_tale.roll.lot, tale.roll.lot);
    const std::string rollHash = hex(sha256(rollText));
    Json body = m_body;
    Json::Array events = m_events;
    for (std::size_t i = 0; i < events.size(); ++i) setEvent(events[i], m_slots[i], told);
    Json began = events.front()["inputs"];
    setRoll(began, tale.roll.id, rollText, rollHash);
    events.front().set("inputs", std::move(began));
    Json inputs = body["inputs"];
    setRoll(inputs, tale.roll.id, rollText, rollHash);

    Json::Array people = body["people"].items();
    for (Json& one : people) {
        const std::string id(person(one["id"].text(), told));
        if (id == told.by.id().value) one.set("name", told.by.name());
        if (id == told.next.id().value) one.set("name", told.next.name());
        one.set("id", id);
    }
    body.set("id", tale.run).set("parent", tale.parent.empty() ? Json() : Json(tale.parent));
    body.set("begun", told.times.front())
        .set("ended", told.times.back())
        .set("offset", offsetText(tale.begin.offsetMinutes));
    body.set("inputs", std::move(inputs)).set("operator", person(body["operator"].text(), told));
    body.set("people", Json(std::move(people))).set("events", Json(std::move(events)));
    setSteps(body, told);
    if (body.has("reason"))
        body.set("reason", tale.trouble.abandoned);
    else
        body.set("remarks", tale.trouble.remarks);
    constexpr double kLeast = 15'000, kMost = 90'000;
    const Instant at{told.now.utcMs + static_cast<std::int64_t>(told.chance.between(kLeast, kMost)),
                     told.now.offsetMinutes};
    const bool handedOver = body["operator"].text() == told.next.id().value;
    return {{seal::Kind::Run, std::move(body)}, m_words, at, &shop.operatorAt(handedOver ? tale.next : tale.by)};
}

}  // namespace taut::app::made
