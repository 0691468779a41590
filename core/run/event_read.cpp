// SPDX-License-Identifier: GPL-3.0-or-later
#include <array>
#include <cmath>
#include <limits>

#include "core/base/clock.h"
#include "core/base/json.h"
#include "core/procedure/plan.h"
#include "core/run/decide.h"
#include "core/run/event_maker.h"
#include "core/targets/target_json.h"
#include "core/units/plain.h"
#include "core/units/unit.h"
#include "core/units/unit_json.h"

namespace taut::run {

namespace {

/// Reads members and remembers the first that is missing or of another type, so that a reader is one straight list.
class Members {
public:
    Members(const Json& json, std::string& wrong) : m_json(json), m_wrong(wrong) {}

    [[nodiscard]] std::string text(std::string_view key) const { return take(key, &Json::isString).text(); }
    [[nodiscard]] std::string unit(const std::string& key) const
    {
        static_cast<void>(text(key));
        return unitFrom(m_json, key);
    }
    [[nodiscard]] double number(std::string_view key) const { return take(key, &Json::isNumber).number(); }
    [[nodiscard]] std::int64_t whole(std::string_view key) const { return take(key, &Json::isWhole).integer(); }
    [[nodiscard]] bool flag(std::string_view key) const { return take(key, &Json::isBool).boolean(); }
    [[nodiscard]] const Json& object(std::string_view key) const { return take(key, &Json::isObject); }
    [[nodiscard]] const Json::Array& list(std::string_view key) const { return take(key, &Json::isArray).items(); }
    /// A number or null.
    [[nodiscard]] std::optional<double> maybe(std::string_view key) const
    {
        if (m_json.has(key) && m_json[key].isNull()) return std::nullopt;
        return number(key);
    }
    [[nodiscard]] std::vector<std::string> words(std::string_view key) const
    {
        std::vector<std::string> all;
        for (const Json& item : list(key)) {
            if (!item.isString()) wrong(key);
            all.push_back(item.text());
        }
        return all;
    }
    [[nodiscard]] std::vector<StepId> steps(std::string_view key) const
    {
        std::vector<StepId> all;
        for (std::string& word : words(key)) all.push_back({std::move(word)});
        return all;
    }
    [[nodiscard]] StepId step() const { return {text("step")}; }
    [[nodiscard]] bool has(std::string_view key) const { return m_json.has(key); }
    [[nodiscard]] const Json& raw(std::string_view key) const { return m_json[key]; }
    void wrong(std::string_view key) const
    {
        if (m_wrong.empty()) m_wrong = key;
    }

private:
    const Json& take(std::string_view key, bool (Json::*is)() const noexcept) const
    {
        const Json& member = m_json[key];
        if (!(member.*is)()) wrong(key);
        return member;
    }
    const Json& m_json;
    std::string& m_wrong;
};

Source sourceFrom(const Members& all, std::string_view key, std::string& wrong)
{
    const Members m(all.object(key), wrong);
    return {m.text("id"), static_cast<int>(m.whole("edition")), m.text("sha256"), m.text("text")};
}

/// The words of the procedure in another language than its own; a sealed document names them only.
Source translationFrom(const Members& all, std::string& wrong)
{
    const Members m(all.object("procedure"), wrong);
    if (!m.has("language")) return {};
    return {m.text("language"), 0, m.text("language_sha256"), m.has("language_text") ? m.text("language_text") : ""};
}

/// What `began` and `inputs_changed` both carry.
template <class Basis>
void readBasis(const Members& m, Basis& into, std::string& wrong)
{
    const Members inputs(m.object("inputs"), wrong);
    into.sources = {sourceFrom(inputs, "press", wrong),     sourceFrom(inputs, "job", wrong),
                    sourceFrom(inputs, "substrate", wrong), sourceFrom(inputs, "roll", wrong),
                    sourceFrom(m, "procedure", wrong),      translationFrom(m, wrong)};
    if (const auto diameter = m.maybe("present_diameter")) into.presentDiameter = Length::si(*diameter);
    into.facts = m.words("facts");
    auto targets = targets::targetsFrom(m.object("targets"));
    auto plan = procedure::planFrom(m.object("plan"));
    if (!targets) m.wrong("targets");
    if (!plan) m.wrong("plan");
    if (targets) into.targets = *std::move(targets);
    if (plan) into.plan = *std::move(plan);
}

targets::Rule ruleFrom(const Members& m, const char* key)
{
    using targets::Rule;
    const std::string word = m.text(key);
    for (const Rule rule : {Rule::Job, Rule::Maker, Rule::Press, Rule::Table, Rule::Policy, Rule::None, Rule::Alarm})
        if (word == targets::ruleWord(rule)) return rule;
    m.wrong(key);
    return Rule::None;
}

Quantity valueFrom(const Members& m, const std::string& entered)
{
    Kind kind{};
    if (!kindFromWord(m.text("kind"), kind)) m.wrong("kind");
    if (m.text("unit") != siUnit(kind).symbol) m.wrong("unit");
    return {m.number("value"), kind, m.unit("shown_unit"), entered};
}

targets::Window windowFrom(const Members& m, Kind kind)
{
    targets::Window window;
    const std::string unit = m.has("limits_unit") ? m.unit("limits_unit") : std::string();
    if (const auto low = m.maybe("low")) window.low = Quantity(*low, kind, unit);
    if (const auto high = m.maybe("high")) window.high = Quantity(*high, kind, unit);
    window.rule = ruleFrom(m, "rule");
    if (m.has("low_rule")) window.lowRule = ruleFrom(m, "low_rule");
    if (m.has("limits_from")) window.source = textFrom(m.object("limits_from"));
    return window;
}

Began beganFrom(const Members& m, std::string& wrong)
{
    Began e;
    e.runId = m.text("run");
    e.workplace = m.text("workplace");
    e.practice = m.flag("practice");
    e.kind = m.text("kind");
    e.parent = m.text("parent");
    e.webInPress = m.flag("web_in_press");
    const std::string units = m.text("units");
    if (units != "us" && units != "metric") m.wrong("units");
    e.units = units == "us" ? UnitSystem::Us : UnitSystem::Metric;
    for (const Json& item : m.list("carried")) {
        const Members one(item, wrong);
        Carried carried{one.text("condition"), {}};
        if (!procedure::validForFrom(one.text("valid_for"), carried.validFor)) one.wrong("valid_for");
        e.carried.push_back(std::move(carried));
    }
    readBasis(m, e, wrong);
    return e;
}

InputsChanged changedFrom(const Members& m, std::string& wrong)
{
    InputsChanged e;
    e.what = m.text("input");
    e.stale = m.steps("stale");
    readBasis(m, e, wrong);
    return e;
}

/// What an answer filled, where it filled anything.
std::shared_ptr<const InputsChanged> filledFrom(const Members& m, std::string& wrong)
{
    if (!m.has("input")) return nullptr;
    return std::make_shared<const InputsChanged>(changedFrom(m, wrong));
}

Answered answeredFrom(const Members& m, bool correction, std::string& wrong)
{
    Answered e;
    e.step = m.step();
    e.entered = m.text("entered");
    if (m.has("value")) {
        e.value = valueFrom(m, e.entered);
        e.window = windowFrom(m, e.value->kind());
        e.uncertainty = m.number("uncertainty");
    }
    const auto verdict = verdict::verdictFrom(m.text("verdict"));
    if (!verdict) m.wrong("verdict");
    e.judgement = {verdict.value_or(verdict::Verdict::Missing), m.flag("doubtful")};
    e.stated = m.words("stated");
    e.correction = correction;
    if (correction) e.reason = m.text("reason");
    e.filled = filledFrom(m, wrong);
    return e;
}

Deviated deviatedFrom(const Members& m, std::string& wrong)
{
    Deviated e;
    e.step = m.step();
    e.entered = m.text("entered");
    e.value = valueFrom(m, e.entered);
    e.window = windowFrom(m, e.value.kind());
    e.reason = m.text("reason");
    e.by = m.text("supervisor");
    e.byName = m.text("supervisor_name");
    e.signature = m.text("signature");
    const auto at = readUtc(m.text("at"));
    if (!at) m.wrong("at");
    e.atMs = at ? *at : 0;
    e.filled = filledFrom(m, wrong);
    return e;
}

Abandoned abandonedFrom(const Members& m, std::string& wrong)
{
    Abandoned e{m.text("reason"), {}};
    for (const Json& item : m.list("stops_held")) {
        const Members one(item, wrong);
        e.held.push_back({one.text("holder"), one.text("where")});
    }
    return e;
}

Attached attachedFrom(const Members& m)
{
    Attached e{m.step(), m.text("file"), m.text("type"), m.whole("size"), m.text("sha256")};
    if (!publicKeyFrom(e.sha256)) m.wrong("sha256");
    return e;
}

Happening happeningFrom(const std::string& what, const Members& m, std::string& wrong)
{
    if (what == "began") return beganFrom(m, wrong);
    if (what == "answered" || what == "corrected") return answeredFrom(m, what == "corrected", wrong);
    if (what == "not_applicable")
        return NotApplicable{m.step(), m.text("reason"), m.text("supervisor"), m.text("supervisor_name")};
    if (what == "deviated") return deviatedFrom(m, wrong);
    if (what == "inputs_changed") return changedFrom(m, wrong);
    if (what == "stop_held") return StopHeld{m.text("holder"), m.text("where")};
    if (what == "stop_given_up") {
        if (!m.has("said_by")) return StopGivenUp{m.text("holder"), {}, {}, {}};
        return StopGivenUp{m.text("holder"), m.text("reason"), m.text("said_by"), m.text("said_by_name")};
    }
    if (what == "interrupted") return Interrupted{m.text("reason")};
    if (what == "resumed") return Resumed{m.words("stated"), m.steps("reconfirm"), m.has("from") ? m.text("from") : ""};
    if (what == "handed_over")
        return HandedOver{{m.text("to")}, m.text("to_name"), m.text("to_role"), m.steps("reconfirm")};
    if (what == "repeated") return Repeated{m.text("stage"), m.text("cause"), m.steps("reopened")};
    if (what == "noted") return Noted{m.step(), m.text("text")};
    if (what == "attached") return attachedFrom(m);
    if (what == "helped") return Helped{m.step(), static_cast<int>(m.whole("remedy")), m.text("words")};
    if (what == "clock_jumped") return ClockJumped{m.whole("by_ms")};
    if (what == "withdrawn") return Withdrawn{m.text("reason")};
    if (what == "returned") return Returned{m.text("done")};
    if (what == "completed") {
        if (!m.has("supervisor")) return Completed{m.text("remarks")};
        return Completed{m.text("remarks"), m.text("supervisor"), m.text("supervisor_name")};
    }
    if (what == "abandoned") return abandonedFrom(m, wrong);
    m.wrong("what");
    return Noted{};
}

Stamp stampFrom(const Members& m)
{
    Stamp stamp;
    const std::int64_t n = m.whole("n");
    if (n < 1) m.wrong("n");
    stamp.n = static_cast<std::uint64_t>(n);
    const auto at = readUtc(m.text("at"));
    if (!at) m.wrong("at");
    stamp.utcMs = at ? *at : 0;
    const auto offset = readOffset(m.text("offset"));
    if (!offset) m.wrong("offset");
    stamp.offsetMinutes = offset.value_or(0);
    stamp.by = {m.text("by")};
    stamp.byName = m.text("name");
    stamp.byRole = m.text("role");
    return stamp;
}

Finding broken(std::string subject, Text text)
{
    return refuse("event.broken", std::move(subject), std::move(text),
                  "Keep this file as it is and open a backup of the logbook.");
}

}  // namespace

Result<Event> eventFrom(std::string_view json)
{
    auto parsed = Json::parse(json);
    if (!parsed) return broken("event", "A stored event is no JSON object.");
    return eventFromJson(*std::move(parsed));
}

Result<Event> eventFromJson(Json body)
{
    if (!body.isObject()) return broken("event", "A stored event is no JSON object.");
    std::string wrong;
    const Members members(body, wrong);
    Stamp stamp = stampFrom(members);
    Happening happening = happeningFrom(members.text("what"), members, wrong);
    const std::string subject = "event " + std::to_string(stamp.n);
    if (!wrong.empty())
        return broken(subject, Text("The stored event's member \"%1\" is missing or not what it must be.", {wrong}));
    return EventMaker::stored(std::move(stamp), std::move(happening), std::move(body));
}

}  // namespace taut::run
