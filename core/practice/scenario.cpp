// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/practice/scenario.h"

#include <algorithm>

#include "core/inputs/input_file.h"
#include "core/inputs/sane.h"
#include "core/practice/handles.h"

namespace taut::practice {

namespace {

constexpr inputs::Sane kWait{0, 4 * 3600, true};
constexpr inputs::Sane kAmount{0.01, 10};
constexpr int kMostSeed = 1'000'000'000;

std::vector<std::string_view> views(const std::vector<std::string>& all) { return {all.begin(), all.end()}; }

}  // namespace

Result<Scenario> readScenario(std::string_view toml, std::string_view file, Findings& notes)
{
    inputs::FileNotes found(file);
    const auto root = inputs::openInput(toml, "scenario", found);
    if (!root) return root.error();
    inputs::KeyReader top(found, *root, "");
    (void)top.whole("format", 1, 1'000'000);
    inputs::KeyReader keys = *top.table("scenario");
    Scenario scenario;
    scenario.id = keys.id("id", true);
    scenario.title = keys.text("title");
    scenario.press = keys.id("press", false);
    scenario.job = keys.id("job", false);
    scenario.roll = keys.id("roll", false);
    scenario.seed = static_cast<std::uint64_t>(keys.whole("seed", 0, kMostSeed).value_or(1));
    keys.done();
    for (inputs::KeyReader& table : top.tables("fault")) {
        Fault fault;
        fault.what = table.word("what", views(faultNames()));
        fault.item = table.text("item");
        fault.amount = table.share("amount", kAmount).value_or(usualAmount(fault.what));
        table.done();
        if (!fault.what.empty()) scenario.faults.push_back(fault);
    }
    top.done();
    found.moveTo(notes);
    return scenario;
}

Result<std::vector<Action>> readActions(std::string_view toml, std::string_view file, const inputs::Press& press,
                                        Findings& notes)
{
    inputs::FileNotes found(file);
    const auto root = inputs::openInput(toml, "actions", found);
    if (!root) return root.error();
    inputs::KeyReader top(found, *root, "");
    (void)top.whole("format", 1, 1'000'000);
    std::vector<std::string> known = deedNames();
    known.emplace_back("wait");
    for (const inputs::Zone& zone : press.zones) known.push_back(zone.id + "_setting");
    for (const inputs::Roller& roller : press.rollers)
        if (roller.kind == "nip") known.push_back(roller.id + "_nip");
    std::vector<Action> actions;
    for (inputs::KeyReader& table : top.tables("action")) {
        Action action;
        action.deed.what = table.word("do", views(known));
        action.deed.item = table.text("item");
        action.deed.on = table.flag("on").value_or(true);
        if (const auto after = table.get<Kind::Time>("after", kWait)) action.after = after->measure();
        const std::vector<Kind> kinds = kindsOf(action.deed.what, press);
        if (!kinds.empty()) action.deed.to = table.quantity("to", kinds, std::nullopt);
        table.done();
        if (!action.deed.what.empty()) actions.push_back(std::move(action));
    }
    top.done();
    found.moveTo(notes);
    return actions;
}

std::string preventedBy(const Cause& cause, const procedure::Plan& plan)
{
    for (const procedure::Step& step : plan.steps) {
        if (!cause.target.empty() && step.target == cause.target) return step.id.value;
        if (!cause.condition.empty() &&
            std::find(step.gives.begin(), step.gives.end(), cause.condition) != step.gives.end())
            return step.id.value;
    }
    return {};
}

}  // namespace taut::practice
