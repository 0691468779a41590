// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <iterator>

#include "app/made/variation.h"
#include "core/run/deviation.h"

// How a played run becomes a document with gaps.
namespace taut::app::made {

namespace {

std::size_t eventAt(const Json::Array& events, const Json& at)
{
    const auto found = std::find_if(events.begin(), events.end(), [&](const Json& e) { return e["at"] == at; });
    return static_cast<std::size_t>(found - events.begin());
}

}  // namespace

Pattern::Pattern(const run::Run& run, const Tale& tale, const seal::KnownWords& known)
    : m_tale(tale),
      m_units(run.began().units),
      m_roll(run.sources().roll.text)
{
    seal::Parted parted = seal::partWords(seal::documentOf(run), known);
    m_words = std::make_shared<const std::vector<seal::Parted::Words>>(std::move(parted.words));
    const auto texts = [&](std::string_view what, const std::string& sha256) {
        for (const auto& [kind, source] : *m_words)
            if (kind == what && source.sha256 == sha256) return source.text;
        return what == "job" ? run.sources().job.text : std::string();
    };
    m_answers = logbook::laidOut(parted.document, texts).answers;
    Json body = std::move(parted.document.body);
    const Json::Array playedEvents = body["events"].items(), playedSteps = body["steps"].items();
    m_gaps = kTimes + playedEvents.size();
    Json::Array events = playedEvents, steps = playedSteps;
    for (std::size_t i = 0; i < events.size(); ++i) layEvent(events[i], run.events()[i], run);
    for (Json& step : steps) layStep(step, playedEvents);
    body.set("events", Json(std::move(events))).set("steps", Json(std::move(steps)));
    layRest(body);
    layRows(playedSteps, playedEvents);
    m_document = Gapped(body.dump());
}

std::size_t Pattern::gaps(std::size_t n) { return std::exchange(m_gaps, m_gaps + n); }

/// Two operators stand in a pattern: who began, and who took over. Anybody else is a supervisor, who stays.
Pattern::Who Pattern::who(const std::string& id) const
{
    if (id == madeOperators()[m_tale.by].id) return Who::By;
    return id == madeOperators()[m_tale.next].id ? Who::Next : Who::Other;
}

Json Pattern::person(const std::string& id) const
{
    const Who which = who(id);
    return which == Who::By ? Gapped::mark(kBy) : which == Who::Next ? Gapped::mark(kNext) : Json(id);
}

Json Pattern::withRoll(Json inputs)
{
    Json roll = inputs["roll"];
    roll.set("id", Gapped::mark(kRollId)).set("sha256", Gapped::mark(kRollHash)).set("text", Gapped::mark(kRollText));
    return inputs.set("roll", std::move(roll));
}

void Pattern::layEvent(Json& event, const run::Event& played, const run::Run& run)
{
    const std::int64_t before = m_slots.empty() ? m_tale.begin.utcMs : run.events()[m_slots.size() - 1].stamp().utcMs;
    Slot slot;
    slot.afterMs = played.stamp().utcMs - before;
    event.set("at", Gapped::mark(kTimes + m_slots.size())).set("by", person(event["by"].text()));
    const run::Happening& what = played.happening();
    if (const auto* read = std::get_if<run::Answered>(&what)) {
        layRead(event, *read, run, slot);
    } else if (std::holds_alternative<run::Deviated>(what)) {
        layAccepted(event, slot);
    } else if (std::holds_alternative<run::Began>(what)) {
        event.set("run", Gapped::mark(kRun)).set("parent", Gapped::mark(kParentSaid));
        if (event["inputs"].has("roll")) event.set("inputs", withRoll(event["inputs"]));
    } else if (std::holds_alternative<run::HandedOver>(what)) {
        event.set("to", Gapped::mark(kNext)).set("to_name", Gapped::mark(kNextName));
    } else if (std::holds_alternative<run::Noted>(what)) {
        event.set("text", Gapped::mark(kNote));
        ++m_notes;
    } else if (std::holds_alternative<run::Interrupted>(what)) {
        event.set("reason", Gapped::mark(kInterrupted));
    } else if (std::holds_alternative<run::Abandoned>(what)) {
        event.set("reason", Gapped::mark(kAbandoned));
    } else if (std::holds_alternative<run::Completed>(what)) {
        event.set("remarks", Gapped::mark(kRemarks));
    } else if (const auto* helped = std::get_if<run::Helped>(&what)) {
        const std::size_t tries = run.plan().find(helped->step)->tries.size();
        if (tries > 0) {
            slot.helped = m_helped.size();
            m_helped.push_back({tries, helped->words, gaps(1)});
            event.set("remedy", Gapped::mark(m_helped.back().gap));
        }
    }
    m_slots.push_back(slot);
}

void Pattern::layRead(Json& event, const run::Answered& answer, const run::Run& run, Slot& slot)
{
    const procedure::Plan& plan = run.plan();
    const procedure::Step& step = *plan.find(answer.step);
    slot.slow = isSlowAtNight(plan.stages[plan.stageOf(step)].id, true);
    const targets::Target* target = run.targets().find(step.target);
    if (!answer.value || target == nullptr) return;
    const targets::Ready& ready = *target->ready();
    Read read{Gauge::at(*target, m_units),
              target->quantity()->kind(),
              ready.instrument,
              ready.window,
              answer.judgement.verdict == verdict::Verdict::Outside,
              event["doubtful"].boolean(),
              event["value"].number(),
              event["uncertainty"].number(),
              event["entered"].text(),
              event["verdict"].text(),
              gaps(4)};
    event.set("entered", Gapped::mark(read.gaps)).set("value", Gapped::mark(read.gaps + 1));
    event.set("uncertainty", Gapped::mark(read.gaps + 2)).set("verdict", Gapped::mark(read.gaps + 3));
    slot.read = m_reads.size();
    m_reads.push_back(std::move(read));
    m_lastRead[answer.step.value] = *slot.read;
    m_firstRead.emplace(answer.step.value, *slot.read);
}

void Pattern::layAccepted(Json& event, Slot& slot)
{
    const std::string step = event["step"].text();
    if (const auto read = m_lastRead.find(step); read != m_lastRead.end()) {
        const std::size_t at = m_reads[read->second].gaps;
        event.set("entered", Gapped::mark(at)).set("value", Gapped::mark(at + 1));
    }
    Json accepted = Json::object();
    for (const char* key : {"step", "entered", "value", "unit", "low", "high", "reason"}) accepted.set(key, event[key]);
    accepted.set("by", event["supervisor"]).set("at", event["at"]);
    slot.accepted = m_accepted.size();
    m_accepted.push_back(
        {event["supervisor_name"].text(), Gapped(run::deviationText(Gapped::mark(kRun).text(), accepted)), gaps(1)});
    event.set("signature", Gapped::mark(m_accepted.back().gap));
    accepted.set("signature", event["signature"]);
    m_acceptances[step] = std::move(accepted);
}

/// Steps name the events of their answers. What such an event says in whole numbers its step says too: the one was
/// read back as it was stored, the other is as it was reckoned, and a document leaves out only what is the same. A step
/// whose value was accepted says it all itself.
void Pattern::layStep(Json& step, const Json::Array& playedEvents)
{
    if (step.has("event") || !step.has("entered")) return;
    const auto read = m_lastRead.find(step["step"].text());
    const char* const figures[] = {"entered", "value", "uncertainty", "verdict"};
    for (std::size_t i = 0; read != m_lastRead.end() && i < std::size(figures); ++i)
        step.set(figures[i], Gapped::mark(m_reads[read->second].gaps + i));
    if (const std::size_t event = eventAt(playedEvents, step["at"]); event < playedEvents.size())
        step.set("at", Gapped::mark(kTimes + event));
    step.set("by", person(step["by"].text()));
}

void Pattern::layRest(Json& body)
{
    Json::Array people = body["people"].items();
    for (Json& one : people) {
        const Who which = who(one["id"].text());
        if (which != Who::Other) one.set("name", Gapped::mark(which == Who::By ? kByName : kNextName));
        one.set("id", person(one["id"].text()));
    }
    Json deviations = Json::array();
    for (const Json& one : body["deviations"].items())
        if (const auto found = m_acceptances.find(one["step"].text()); found != m_acceptances.end())
            deviations.add(found->second);
    m_operator = who(body["operator"].text());
    m_abandoned = body.has("reason");
    body.set("id", Gapped::mark(kRun)).set("parent", Gapped::mark(kParent));
    body.set("begun", Gapped::mark(kTimes)).set("ended", Gapped::mark(kTimes + m_slots.size() - 1));
    body.set("offset", Gapped::mark(kOffset)).set("inputs", withRoll(body["inputs"]));
    body.set("operator", person(body["operator"].text())).set("people", Json(std::move(people)));
    body.set("deviations", std::move(deviations));
    body.set(m_abandoned ? "reason" : "remarks", Gapped::mark(m_abandoned ? kAbandoned : kRemarks));
}

void Pattern::layRows(const Json::Array& playedSteps, const Json::Array& playedEvents)
{
    for (const logbook::ReadingAnswer& reading : m_answers.readings) {
        Row row;
        row.by = who(reading.person);
        if (const auto last = m_lastRead.find(reading.step); last != m_lastRead.end()) {
            row.read = last->second;
            row.first = m_firstRead.at(reading.step);
        }
        for (const Json& step : playedSteps)
            if (step["step"].text() == reading.step)
                row.event = step.has("event") ? static_cast<std::size_t>(step["event"].integer() - 1)
                                              : eventAt(playedEvents, step["at"]);
        m_rows.push_back(row);
    }
}

}  // namespace taut::app::made
