// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/parts.h"

#include <algorithm>

#include "core/base/clock.h"
#include "core/inputs/fill.h"
#include "core/inputs/spoken.h"
#include "core/run/words.h"
#include "core/targets/aim.h"

namespace taut::report {

inputs::Inputs inputsOf(const run::Sources& sources)
{
    inputs::Inputs all;
    Findings notes;
    if (auto press = inputs::readPress(sources.press.text, sources.press.id, notes))
        all.press = std::make_shared<const inputs::Press>(std::move(*press));
    if (auto job = inputs::readJob(sources.job.text, sources.job.id, notes))
        all.job = std::make_shared<const inputs::Job>(std::move(*job));
    if (auto substrates = inputs::readSubstrates(sources.substrate.text, sources.substrate.id, notes))
        for (inputs::Substrate& one : *substrates)
            if (one.id == sources.substrate.id)
                all.substrate = std::make_shared<const inputs::Substrate>(std::move(one));
    if (auto roll = inputs::readRoll(sources.roll.text, sources.roll.id, notes))
        all.roll = std::make_shared<const inputs::Roll>(inputs::filledFromTag(std::move(*roll)));
    return all;
}

Text data(std::string words) { return words.empty() ? Text() : Text("%1", {std::move(words)}); }

std::string localTime(std::int64_t utcMs, int offsetMinutes)
{
    std::string text = utcText(utcMs + offsetMinutes * 60000LL).substr(0, 16);
    text[10] = ' ';
    return text;
}

std::vector<Text> holders(const procedure::Plan& plan, const std::vector<run::StopHeld>& held)
{
    std::vector<Text> all;
    all.reserve(held.size());
    for (const run::StopHeld& stop : held) all.push_back(run::holderSaid(plan, stop.holder, stop.where));
    return all;
}

Cell cell(Text text) { return text.empty() ? Cell{} : Cell{std::move(text), Mark::None, false}; }

Cell cell(const Quantity& quantity) { return {quantity, Mark::None, false}; }

Cell valueCell(const targets::Target* target, UnitSystem system)
{
    if (target == nullptr) return {};
    if (const auto* no = std::get_if<targets::Cannot>(&target->state)) return cell(no->never() ? "never" : "cannot");
    const targets::Ready* ready = target->ready();
    if (ready == nullptr) return cell("not known");
    const targets::TargetValue value = targets::aimOf(*ready, system);
    if (const auto* quantity = std::get_if<Quantity>(&value)) return cell(*quantity);
    if (const auto* yes = std::get_if<bool>(&value)) return cell(*yes ? "yes" : "no");
    std::string word = std::get<std::string>(value);
    for (char& c : word)
        if (c == '_') c = ' ';
    return cell(Text(word));
}

Cell windowCell(const targets::Window& window)
{
    if (!window.low && !window.high) return {};
    return {Limits{window.low, window.high}, Mark::None, false};
}

Text firstSentence(const Text& text)
{
    std::size_t end = text.source.size();
    for (const char* stop : {". ", "? "}) end = std::min(end, text.source.find(stop));
    Text first = text;
    if (end < text.source.size())
        first.source = SharedString(text.source.view().substr(0, text.source[end] == '?' ? end + 1 : end));
    return first;
}

Text nameOf(const procedure::Step& step, const targets::Target* target)
{
    const bool reads = step.kind == procedure::StepKind::Reading;
    if (reads && target != nullptr && !target->name.empty()) return target->name;
    return firstSentence(step.say);
}

Cell markCell(const run::StepStanding& standing)
{
    using run::StepState;
    switch (standing.state) {
    case StepState::Deviated: return {Text("accepted"), Mark::Deviation, true};
    case StepState::NotApplicable: return {Text("does not apply"), Mark::NotApplicable, false};
    case StepState::Open: return {Text("open"), Mark::Open, false};
    case StepState::Stale: return {Text("to be done again"), Mark::Open, true};
    case StepState::Reconfirm: return {Text("to be said again"), Mark::Open, true};
    case StepState::Outside:
    case StepState::Answered: break;
    }
    if (!standing.answer) return {Text("done"), Mark::Recorded, false};
    switch (standing.answer->judgement.verdict) {
    case verdict::Verdict::Inside: return {Text("inside"), Mark::Inside, false};
    case verdict::Verdict::Near: return {Text("near"), Mark::Near, true};
    case verdict::Verdict::Outside:
        return {standing.answer->judgement.doubtful ? Text("outside, doubtful") : Text("outside"), Mark::Outside, true};
    case verdict::Verdict::Missing: return {Text("open"), Mark::Open, false};
    case verdict::Verdict::Recorded: break;
    }
    return {standing.answer->value ? Text("recorded") : Text("said"), Mark::Recorded, false};
}

std::vector<std::pair<Text, Cell>> inputFacts(const Ground& ground)
{
    std::vector<std::pair<Text, Cell>> pairs;
    const auto add = [&](const char* name, Cell value) {
        if (!std::holds_alternative<std::monostate>(value.value)) pairs.emplace_back(Text(name), std::move(value));
    };
    const auto& [press, job, substrate, roll] = ground.inputs;
    if (press) add("Press", cell(data(press->name)));
    if (press && !press->site.empty()) add("Site", cell(data(press->site)));
    if (job) {
        Cell order = cell(job->title.empty() ? data(job->id) : Text("%1 %2", {job->id, job->title}));
        order.strong = true;
        add("Job", std::move(order));
        if (!job->customerReference.empty()) add("Reference", cell(data(job->customerReference)));
        if (job->quantity) add("Quantity", cell(Text("%1", {static_cast<std::int64_t>(*job->quantity)})));
        if (job->across && job->around)
            add("Labels", cell(Text("%1 across, %2 around", {static_cast<std::int64_t>(*job->across),
                                                             static_cast<std::int64_t>(*job->around)})));
        if (const targets::Target* repeat = ground.targets->find("job.repeat"); repeat && repeat->quantity())
            add("Repeat", cell(*repeat->quantity()));
        if (job->speed) add("Speed", cell(job->speed->quantity()));
    }
    if (substrate) add("Substrate", cell(data(substrate->name.empty() ? substrate->id : substrate->name)));
    if (roll) {
        Cell name = cell(data(roll->id));
        name.strong = true;
        add("Roll", std::move(name));
        if (roll->width) add("Width", cell(roll->width->quantity()));
        // What the targets below were reckoned with: a roll measured under way is no longer what its file says, and
        // brake and running time go by what is left when its outer wraps are off.
        std::optional<Quantity> across;
        if (const targets::Target* now = ground.targets->find("roll.diameter"); now && now->quantity())
            across = *now->quantity();
        else if (roll->outerDiameter)
            across = roll->outerDiameter->quantity();
        if (across && roll->strippedDiameter && roll->strippedDiameter->si() < across->si())
            add("Diameter",
                cell(Text("%1, stripped %2", {across->magnitude(), roll->strippedDiameter->quantity().magnitude()})));
        else if (across)
            add("Diameter", cell(*across));
        if (roll->core) add("Core", cell(roll->core->quantity()));
        add("Wound", cell(inputs::spokenName(roll->winding)));
        if (const targets::Target* feed = ground.targets->find("roll.feed")) add("Fed", valueCell(feed, ground.units));
        const targets::Target* centre = ground.targets->find("align.centre");
        if (press && press->measureFrom && centre && centre->quantity())
            add("Roll centre",
                cell(Text("%1 from the %2", {centre->quantity()->magnitude(),
                                             std::vector<Text>{inputs::spokenName(*press->measureFrom)}})));
    }
    return pairs;
}

std::optional<Elevation> elevation(const Ground& ground)
{
    if (!ground.inputs.press) return std::nullopt;
    inputs::Feed feed = inputs::Feed::Over;
    std::optional<Length> diameter;
    if (const targets::Target* target = ground.targets->find("roll.feed"))
        if (const targets::Ready* ready = target->ready())
            if (const auto* word = std::get_if<std::string>(&ready->value); word != nullptr && *word == "under")
                feed = inputs::Feed::Under;
    // Whatever was measured stands in the targets.
    if (const targets::Target* now = ground.targets->find("roll.diameter"); now && now->quantity())
        diameter = now->quantity()->as<Kind::Length>();
    if (ground.inputs.roll) diameter = inputs::diameterAsItRuns(*ground.inputs.roll, diameter);
    const std::optional<inputs::Winding> finished =
        ground.inputs.job ? ground.inputs.job->winding : std::optional<inputs::Winding>();
    auto paths = inputs::pathsOf(*ground.inputs.press, diameter, feed, finished);
    if (!paths) return std::nullopt;
    Elevation drawing;
    drawing.paths = std::move(*paths);
    for (const inputs::Roller& roller : ground.inputs.press->rollers)
        drawing.kinds.emplace_back(roller.id, roller.kind);
    return drawing;
}

Paragraph decisionRule()
{
    return {"Decision rule, guarded acceptance (w = U): a reading is judged against the limits as they stand, with "
            "guard bands as wide as the "
            "expanded uncertainty U (k = 2) of the instrument that was read. Inside: U or more away from both limits. "
            "Near: within the limits, less than U from one. Outside: beyond a limit; doubtful while less than U beyond "
            "it. A gap has no guard band at nought. Limits are rounded inward and never widened.",
            false};
}

}  // namespace taut::report
