// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/procedure/plan.h"

#include <algorithm>
#include <set>

#include "core/inputs/spoken.h"
#include "core/procedure/lint.h"
#include "core/procedure/placeholders.h"
#include "core/targets/aim.h"
#include "core/units/parse.h"

namespace taut::procedure {
namespace {

bool holds(const StepSpec& spec, const std::set<std::string>& facts)
{
    return std::all_of(spec.when.begin(), spec.when.end(), [&](const auto& f) { return facts.count(f) != 0; }) &&
           std::none_of(spec.unless.begin(), spec.unless.end(), [&](const auto& f) { return facts.count(f) != 0; });
}

/// What stands for {target} in a sentence.
TextArg spoken(const targets::Target* target, UnitSystem system)
{
    const targets::Ready* ready = target == nullptr ? nullptr : target->ready();
    const auto own = [](Text words) { return std::vector<Text>{std::move(words)}; };
    if (ready == nullptr) return own("the value on the sheet");
    const targets::TargetValue value = targets::aimOf(*ready, system);
    if (const auto* quantity = std::get_if<Quantity>(&value)) return quantity->magnitude();
    if (const auto* yes = std::get_if<bool>(&value)) return own(*yes ? "yes" : "no");
    return own(std::get<std::string>(value));
}

double seconds(const std::string& wait)
{
    if (wait.empty()) return 0;
    const Result<Quantity> time = parseQuantity(wait, Kind::Time);
    return time ? time->si() : 0;
}

class Planner {
public:
    Planner(const Procedure& procedure, const inputs::Inputs& inputs, const targets::Targets& targets,
            std::span<const std::string> facts, std::string_view kind)
        : m_procedure(procedure),
          m_targets(targets),
          m_facts(facts.begin(), facts.end())
    {
        if (inputs.press) m_press = inputs.press.get();
        m_plan.kind = std::string(kind);
    }

    Plan plan()
    {
        for (const StageSpec& stage : m_procedure.stages) {
            PlanStage out{stage.id, stage.title, m_plan.places.size(), 0};
            for (const PlaceSpec& place : stage.places) addPlace(stage, place);
            out.count = m_plan.places.size() - out.first;
            if (out.count > 0) m_plan.stages.push_back(std::move(out));
        }
        dropUngivenNeeds();
        return std::move(m_plan);
    }

private:
    void addPlace(const StageSpec& stage, const PlaceSpec& place)
    {
        std::vector<Step> steps;
        for (const StepSpec& spec : place.steps) {
            if (!contains(spec.kinds, m_plan.kind)) continue;
            const std::size_t first = steps.size();
            if (spec.forEach.empty())
                addStep(steps, stage, place, spec, nullptr);
            else if (m_press != nullptr)
                for (const inputs::Item& item : inputs::itemsOf(*m_press, spec.forEach))
                    addStep(steps, stage, place, spec, &item);
            for (std::size_t i = first; i < steps.size(); ++i) steps[i].lastOfItems = i + 1 == steps.size();
        }
        if (joinsLastPlace(steps)) return;
        // parts as even as can be: ten steps are five and five, not nine and one
        const std::size_t parts = (steps.size() + kMostSteps - 1) / kMostSteps;
        for (std::size_t part = 0, from = 0; part < parts; ++part) {
            const std::size_t count = (steps.size() - from + parts - part - 1) / (parts - part);
            addPart(place, {part + 1, parts}, std::span(steps).subspan(from, count));
            from += count;
        }
    }

    /// Nobody walks to another place only to call a stage done: the call then stands where its stage's last step does.
    bool joinsLastPlace(std::vector<Step>& steps)
    {
        if (steps.size() != 1 || steps.front().kind != StepKind::Call || m_plan.places.empty()) return false;
        PlanPlace& last = m_plan.places.back();
        if (last.stage != m_plan.stages.size() || last.count >= kMostSteps) return false;
        steps.front().place = m_plan.places.size() - 1;
        steps.front().at = last.at;
        m_plan.steps.push_back(std::move(steps.front()));
        ++last.count;
        return true;
    }

    void addPart(const PlaceSpec& place, std::pair<std::size_t, std::size_t> part, std::span<Step> steps)
    {
        PlanPlace out;
        out.stage = m_plan.stages.size();
        out.id = place.id;
        out.title = place.title;
        if (part.second > 1) {
            out.id += '/' + std::to_string(part.first);
            out.title = {"%1 (%2 of %3)",
                         {std::vector<Text>{place.title}, static_cast<std::int64_t>(part.first),
                          static_cast<std::int64_t>(part.second)}};
        }
        out.at = resolved(place.at);
        out.holdStop = holdStopAt(place.at);
        out.doConfirm = place.doConfirm;
        out.first = m_plan.steps.size();
        out.count = steps.size();
        for (Step& step : steps) {
            step.place = m_plan.places.size();
            m_plan.steps.push_back(std::move(step));
        }
        m_plan.places.push_back(std::move(out));
    }

    void addStep(std::vector<Step>& steps, const StageSpec& stage, const PlaceSpec& place, const StepSpec& spec,
                 const inputs::Item* item)
    {
        std::set<std::string> facts = m_facts;
        if (item != nullptr) facts.insert(item->facts.begin(), item->facts.end());
        if (!holds(spec, facts)) return;

        Step step;
        const std::string itemId = item == nullptr ? std::string() : item->id;
        step.target = withItem(spec.target, spec.forEach, itemId);
        const targets::Target* target = step.target.empty() ? nullptr : m_targets.find(step.target);
        if (spec.kind == StepKind::Reading && target == nullptr) return;

        step.id.value = stage.id + '.' + place.id + '.' + spec.id + (item == nullptr ? "" : '/' + itemId);
        step.kind = spec.kind;
        step.vital = spec.vital;
        step.hands = spec.hands;
        step.waivable = spec.waivable;
        step.external = spec.external;
        step.control = withItem(spec.control, spec.forEach, itemId);
        step.item = itemId;
        const std::string at = placeWord(spec, place, item);
        step.at = resolved(at, item == nullptr ? std::string() : rollerOf(spec.forEach, itemId));
        step.needs = spec.needs;
        step.gives = spec.gives;
        step.ends = spec.ends;
        step.uses = spec.uses;
        step.fills = spec.fills;
        step.validFor = spec.validFor;
        step.choices = spec.choices;
        step.see = Text(spec.see);
        step.done = Text(spec.done);
        step.waitSeconds = seconds(spec.wait);

        Filling filling;
        const UnitSystem system = m_press == nullptr ? UnitSystem::Metric : m_press->units;
        if (!step.target.empty()) filling.emplace_back("target", spoken(target, system));
        if (!step.control.empty()) filling.emplace_back("control", labelOf(step.control, at));
        filling.emplace_back("register_mark", registerMark());
        filling.emplace_back("frame", std::vector<Text>{frame()});
        if (item != nullptr) filling.emplace_back(spec.forEach, inputs::spokenName(*m_press, spec.forEach, *item));
        step.say = filled(spec.say, filling, system);
        step.why = filled(spec.why, filling, system);
        if (spec.caution) {
            step.signal = spec.caution->word;
            step.caution = filled(spec.caution->text, filling, system);
        }
        for (const std::string& t : spec.tries) step.tries.push_back(filled(t, filling, system));
        steps.push_back(std::move(step));
    }

    static std::string placeWord(const StepSpec& spec, const PlaceSpec& place, const inputs::Item* item)
    {
        const bool ofItem = spec.at.empty() || spec.at.front() == '{';
        if (item != nullptr && ofItem && !item->place.empty()) return item->place;
        return spec.at.empty() || spec.at.front() == '{' ? place.at : spec.at;
    }

    /// The profile's place of that name, "rewinds" for "rewind" too; else the place with a maintained stop from which
    /// what stands there is seen.
    [[nodiscard]] const inputs::Place* placeNamed(const std::string& word) const
    {
        if (m_press == nullptr) return nullptr;
        for (const std::string& id : {word, word + 's'})
            if (const inputs::Place* place = m_press->place(id); place != nullptr) return place;
        const std::string roller = rollerAt(word);
        for (const inputs::Place& place : m_press->places)
            if (!roller.empty() && !place.holdStop.empty() && contains(place.sees, roller)) return &place;
        return nullptr;
    }
    [[nodiscard]] std::string holdStopAt(const std::string& word) const
    {
        const inputs::Place* place = placeNamed(word);
        return place == nullptr ? std::string() : place->holdStop;
    }

    /// The frame face from which this press's distances across it are measured.
    [[nodiscard]] Text frame() const
    {
        if (m_press == nullptr || !m_press->measureFrom) return "frame from which this press is measured";
        return inputs::spokenName(*m_press->measureFrom);
    }
    /// How this press shows the middle of its register adjusters.
    [[nodiscard]] TextArg registerMark() const
    {
        if (m_press != nullptr && !m_press->registerMark.empty()) return m_press->registerMark;
        return std::vector<Text>{"the middle of its travel"};
    }
    [[nodiscard]] TextArg labelOf(const std::string& role, const std::string& at) const
    {
        if (role == "hold_stop") {
            const std::string held = holdStopAt(at);
            if (!held.empty()) return held;
        }
        const std::string* label = m_press == nullptr ? nullptr : m_press->label(role);
        if (label == nullptr || label->empty()) return std::vector<Text>{defaultLabel(role)};
        return *label;
    }

    /// The roller that a word for a place means on this press, "" when there is none.
    [[nodiscard]] std::string rollerAt(const std::string& at) const
    {
        if (m_press->roller(at) != nullptr) return at;
        if (at == "unwind") return m_press->unwind ? m_press->unwind->roller : std::string();
        if (at == "rewind")
            for (const inputs::Rewind& r : m_press->rewinds)
                if (!r.waste) return r.roller;
        if (at == "guide" && !m_press->guides.empty()) return rollerOf("guide", m_press->guides.front().id);
        if (at == "stations" && !m_press->stations.empty()) return m_press->stations.front().roller;
        return {};
    }
    /// The roller at which a repeated item stands, "" when it has none of its own.
    [[nodiscard]] std::string rollerOf(const std::string& repetition, const std::string& id) const
    {
        for (const auto* devices : {&m_press->guards, &m_press->emergencyStops})
            for (const inputs::Device& d : *devices)
                if ((repetition == "guard" || repetition == "emergency_stop") && d.id == id) return d.by;
        for (const inputs::Rewind& r : m_press->rewinds)
            if (repetition == "rewind" && r.id == id) return r.roller;
        for (const inputs::Guide& g : m_press->guides)
            if (repetition == "guide" && g.id == id && !g.rollers.empty()) return g.rollers.front();
        for (const inputs::Station& s : m_press->stations)
            if (repetition == "station" && std::to_string(s.number) == id) return s.roller;
        return {};
    }
    /// A roller of this press, or one of press lift splice_table panel disconnect.
    [[nodiscard]] std::string resolved(const std::string& at, std::string itemRoller = {}) const
    {
        static const std::vector<std::string> kWords{"press", "lift", "splice_table", "panel", "disconnect"};
        if (m_press == nullptr || contains(kWords, at)) return at;
        if (itemRoller.empty()) itemRoller = rollerAt(at);
        const inputs::Place* place = placeNamed(at);
        if (itemRoller.empty() && place != nullptr && !place->sees.empty()) itemRoller = place->sees.front();
        return itemRoller.empty() ? "press" : itemRoller;
    }

    void dropUngivenNeeds()
    {
        std::set<std::string> given;
        for (const Step& step : m_plan.steps) given.insert(step.gives.begin(), step.gives.end());
        for (Step& step : m_plan.steps) {
            const auto always = [&](const std::string& need) {
                return step.kind == StepKind::Motion && std::any_of(std::begin(kMotionNeeds), std::end(kMotionNeeds),
                                                                    [&](const char* n) { return need == n; });
            };
            step.needs.erase(std::remove_if(step.needs.begin(), step.needs.end(),
                                            [&](const auto& n) { return given.count(n) == 0 && !always(n); }),
                             step.needs.end());
        }
    }

    const Procedure& m_procedure;
    const targets::Targets& m_targets;
    std::set<std::string> m_facts;
    const inputs::Press* m_press = nullptr;
    Plan m_plan;
};

}  // namespace

const Step* Plan::find(const StepId& id) const
{
    const auto found = std::find_if(steps.begin(), steps.end(), [&](const Step& s) { return s.id == id; });
    return found == steps.end() ? nullptr : &*found;
}

Plan planFor(const Procedure& procedure, const inputs::Inputs& inputs, const targets::Targets& targets,
             std::span<const std::string> facts, std::string_view kind)
{
    return Planner(procedure, inputs, targets, facts, kind).plan();
}

}  // namespace taut::procedure
