// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/seal/run_events.h"

#include <algorithm>
#include <array>

#include "core/run/decide.h"
#include "core/seal/difference.h"
#include "core/seal/document.h"
#include "core/seal/words.h"

namespace taut::seal {

namespace {

constexpr std::array<std::string_view, 4> kInputs{"press", "job", "substrate", "roll"};
constexpr std::array<std::string_view, 3> kSetParts{"targets", "schedules", "findings"};
/// What a run rests on besides its targets and its plan: an event states of these what is no longer as before.
constexpr std::array<std::string_view, 4> kBasis{"present_diameter", "inputs", "procedure", "facts"};

bool isBasis(std::string_view key) { return std::find(kBasis.begin(), kBasis.end(), key) != kBasis.end(); }

/// The object without its text: that of a definition stands in a document of its own in the chain. The words of a
/// translation stand in the plan, as they were read.
Json named(const Json& source)
{
    Json json = Json::object();
    for (const Json::Member& member : source.members())
        if (member.first != "text" && member.first != "language_text") json.set(member.first, member.second);
    return json;
}

/// A document's inputs as an event states them.
Json asStated(const Json& inputs)
{
    Json stated = Json::object();
    for (const std::string_view input : kInputs) {
        if (!inputs.has(input)) continue;
        const Json& source = inputs[input];
        if (input == "roll")
            stated.set("roll", Json::object()
                                   .set("id", source["id"])
                                   .set("edition", 0)
                                   .set("sha256", source["sha256"])
                                   .set("text", source["text"]));
        else
            stated.set(std::string(input), named(source));
    }
    return stated;
}

const Json& itemBy(const Json& list, std::string_view key, const Json& value)
{
    static const Json kNothing;
    for (const Json& item : list.items())
        if (item[key] == value) return item;
    return kNothing;
}

/// What the window of a target gives as its source, as an event says it.
Json limitsFrom(const Json& target)
{
    const Json& window = target["window"];
    if (window.has("source_say")) return window["source_say"];
    return Json::object().set("source", window["source"]).set("args", Json::array());
}

const Json& personIn(const Json& people, const Json& id) { return itemBy(people, "id", id); }

/// Writes events one after the other, each without what the document or the event before it says already.
class Teller {
public:
    Teller(const Json& people, const Json& inputs, std::string offset) : m_people(people), m_offset(std::move(offset))
    {
        m_basis.set("inputs", asStated(inputs));
    }

    Json event(const Json& event)
    {
        const Json& person = personIn(m_people, event["by"]);
        const Json limits = limitsBy(event);
        Json json = Json::object();
        for (const auto& [key, value] : event.members()) {
            if (key == "offset" && value == Json(m_offset)) continue;
            if ((key == "name" || key == "role") && person.has(key) && person[key] == value) continue;
            if (event.has("verdict") && isUsual(key, value)) continue;
            if (key == "targets")
                json.set("target_set", targetSet(value, event["n"]));
            else if (key == "plan")
                json.set("plan", plan(value));
            else if (key == "inputs")
                setInputs(json, value);
            else if (isBasis(key))
                setBasis(json, key, key == "procedure" ? named(value) : value);
            else
                json.set(key, key == "limits_from" ? limits : value);
        }
        return json;
    }
    [[nodiscard]] Told told(Json events) &&
    {
        return {inDifferences(std::move(m_sets)), inDifferences(std::move(m_plans)), std::move(events)};
    }

private:
    /// What an answer says unless something is special about it.
    static bool isUsual(std::string_view key, const Json& value)
    {
        return (key == "doubtful" && value == Json(false)) || (key == "stated" && value == Json::array());
    }

    /// Where the limits of a reading come from: by its step's target, if that says the same, else in words.
    [[nodiscard]] Json limitsBy(const Json& event) const
    {
        const Json& said = event["limits_from"];
        if (!event.has("limits_from") || m_sets.empty() || m_plans.empty()) return said;
        const Json& target = itemBy(m_plans[m_plan]["steps"], "id", event["step"])["target"];
        if (limitsFrom(itemBy(m_sets.back()["targets"], "id", target)) != said) return said;
        return Json::object().set("target", target);
    }
    std::int64_t targetSet(const Json& targets, const Json& n)
    {
        Json set = Json::object();
        set.set("from", n);
        for (const std::string_view part : kSetParts) set.set(std::string(part), targets[part]);
        m_sets.push_back(std::move(set));
        return static_cast<std::int64_t>(m_sets.size()) - 1;
    }
    std::int64_t plan(const Json& plan)
    {
        const auto found = std::find(m_plans.begin(), m_plans.end(), plan);
        m_plan = static_cast<std::size_t>(found - m_plans.begin());
        if (found == m_plans.end()) m_plans.push_back(plan);
        return static_cast<std::int64_t>(m_plan);
    }
    void setBasis(Json& json, const std::string& key, const Json& value)
    {
        if (m_basis.has(key) && m_basis[key] == value) return;
        m_basis.set(key, value);
        json.set(key, value);
    }
    void setInputs(Json& json, const Json& inputs)
    {
        Json now = m_basis["inputs"], changed = Json::object();
        for (const auto& [input, source] : inputs.members()) {
            const Json value = input == "roll" ? source : named(source);
            if (now.has(input) && now[input] == value) continue;
            now.set(input, value);
            changed.set(input, value);
        }
        m_basis.set("inputs", std::move(now));
        if (!changed.members().empty()) json.set("inputs", std::move(changed));
    }

    const Json& m_people;
    std::string m_offset;
    Json m_basis = Json::object();
    Json::Array m_sets, m_plans;
    std::size_t m_plan = 0;  ///< that stands
};

const Json* itemAt(const Json::Array& list, const Json& index)
{
    const auto i = static_cast<std::size_t>(index.integer(-1));
    return index.isWhole() && i < list.size() ? &list[i] : nullptr;
}

/// Reads events one after the other and makes each as it was when it happened, member for member; only the texts of
/// press, job, substrate and procedure are empty.
class Listener {
public:
    Listener(const Json& body, const Json::Array& sets, const Json::Array& plans)
        : m_body(body),
          m_sets(sets),
          m_plans(plans)
    {
        keep("inputs", asStated(body["inputs"]));
    }

    /// Nothing when the event names a target set, a plan or a target that is not there.
    std::optional<Json> event(const Json& told)
    {
        const Json* const before = m_set;
        for (const Json::Member& member : told.members()) keep(member.first, member.second);
        Json json = stampOf(told);
        for (const auto& [key, value] : told.members()) {
            if (isBasis(key) || key == "targets" || json.has(key)) continue;
            if (told.has("verdict") && (key == "doubtful" || key == "stated")) continue;  // these follow it
            if (key == "target_set") {
                const Json* set = itemAt(m_sets, value);
                if (set == nullptr) return std::nullopt;
                m_set = set;
                setBasis(json);
                json.set("targets", partsOf(*set));
            } else if (key == "plan") {
                const Json* plan = itemAt(m_plans, value);
                if (plan == nullptr) return std::nullopt;
                json.set("plan", *plan);
            } else if (key == "limits_from" && value.has("target")) {
                const Json& target = before != nullptr ? itemBy((*before)["targets"], "id", value["target"]) : Json();
                if (!target.isObject()) return std::nullopt;
                json.set(key, limitsFrom(target));
            } else {
                json.set(key, value);
            }
            if (key == "verdict") {
                json.set("doubtful", orElse(told, "doubtful", false));
                json.set("stated", orElse(told, "stated", Json::array()));
            }
        }
        return json;
    }

private:
    static Json orElse(const Json& told, std::string_view key, const Json& other)
    {
        return told.has(key) ? told[key] : other;
    }
    [[nodiscard]] Json stampOf(const Json& told) const
    {
        const Json& person = personIn(m_body["people"], told["by"]);
        Json json = Json::object();
        json.set("n", told["n"]).set("at", told["at"]).set("offset", orElse(told, "offset", m_body["offset"]));
        json.set("by", told["by"]).set("name", orElse(told, "name", person["name"]));
        return json.set("role", orElse(told, "role", person["role"]));
    }
    void keep(const std::string& key, const Json& value)
    {
        if (!isBasis(key)) return;
        if (key == "procedure") {
            m_basis.set(key, named(value).set("text", ""));
        } else if (key == "inputs") {
            Json inputs = m_basis.has(key) ? m_basis[key] : Json::object();
            for (const std::string_view input : kInputs)
                if (value.has(input))
                    inputs.set(std::string(input),
                               input == "roll" ? value[input] : named(value[input]).set("text", ""));
            m_basis.set(key, std::move(inputs));
        } else {
            m_basis.set(key, value);
        }
    }
    void setBasis(Json& json) const
    {
        for (const std::string_view key : kBasis)
            if (m_basis.has(key)) json.set(std::string(key), m_basis[key]);
    }
    static Json partsOf(const Json& set)
    {
        Json targets = Json::object();
        for (const std::string_view part : kSetParts) targets.set(std::string(part), set[part]);
        return targets;
    }

    const Json& m_body;
    const Json::Array& m_sets;
    const Json::Array& m_plans;
    Json m_basis = Json::object();
    const Json* m_set = nullptr;  ///< that stands
};

}  // namespace

Told told(const run::Run& run, const Json& people, const Json& inputs)
{
    Teller teller(people, inputs, offsetText(run.events().front().stamp().offsetMinutes));
    Json events = Json::array();
    for (const run::Event& event : run.events()) events.add(teller.event(event.body()));
    return std::move(teller).told(std::move(events));
}

Result<std::vector<run::Event>> eventsOf(const Document& document, const TextBySha& texts)
{
    if (document.kind != Kind::Run) return broken("This document is about something else than a run.");
    const Json& body = document.body;
    const std::size_t count = body["events"].items().size();
    const auto fits = [&](std::string_view key) { return body[key].items().size() <= count; };
    if (!fits("target_sets") || !fits("plans"))
        return broken("The document has more target sets or plans than events that could name them.");
    const auto setsTold = withWords(body["target_sets"].items(), texts);
    if (!setsTold) return setsTold.error();
    const auto plansTold = withWords(body["plans"].items(), texts);
    if (!plansTold) return plansTold.error();
    const auto sets = wholeAgain(*setsTold);
    const auto plans = wholeAgain(*plansTold);
    if (!sets || !plans) return broken("A target set or a plan of the document does not follow from those before it.");
    Listener listener(body, *sets, *plans);
    std::vector<run::Event> events;
    for (const Json& item : body["events"].items()) {
        auto json = listener.event(item);
        if (!json)
            return broken({"Event %1 of the document names a target set, a plan or a target that is not in it.",
                           {item["n"].integer()}});
        auto event = run::eventFromJson(*std::move(json));
        if (!event) return event.error();
        if (event->stamp().n != events.size() + 1)
            return broken({"Event %1 of the document stands out of its order.", {item["n"].integer()}});
        events.push_back(std::move(*event));
    }
    if (events.empty() || !std::holds_alternative<run::Began>(events.front().happening()))
        return broken("The document's first event is not the beginning of its run.");
    return events;
}

}  // namespace taut::seal
