// SPDX-License-Identifier: GPL-3.0-or-later
#include <ostream>

#include "app/drawing/chart_picture.h"
#include "app/text/names.h"
#include "app/text/words.h"
#include "app/verbs/inputs_from.h"
#include "app/verbs/verbs.h"
#include "core/base/file.h"
#include "core/report/report.h"
#include "core/targets/aim.h"
#include "core/targets/target_json.h"
#include "core/units/format.h"
#include "core/units/plain.h"

namespace taut::app::verbs {

namespace {

using targets::Target;
using targets::Targets;

std::string windowText(const targets::Window& window, UnitSystem system)
{
    if (window.low && window.high) {
        const auto [low, high] = showRange(*window.low, *window.high, system);
        return low.text() + " .. " + high.text();
    }
    if (window.low) return "at least " + format(*window.low, system, Rounding::Up);
    if (window.high) return "at most " + format(*window.high, system, Rounding::Down);
    return {};
}

std::string valueText(const targets::TargetValue& value, UnitSystem system)
{
    if (const auto* quantity = std::get_if<Quantity>(&value)) return format(*quantity, system);
    if (const auto* yes = std::get_if<bool>(&value)) return *yes ? "yes" : "no";
    // A word as the screens say it; the JSON carries the word itself.
    return app::valueText(value, system).toStdString();
}

/// The last column: by which relation and rule, or what is missing, or why not.
std::string whyText(const Target& target, UnitSystem system)
{
    if (const auto* needs = std::get_if<targets::Needs>(&target.state)) {
        std::string keys;
        for (const std::string& key : needs->keys) keys += (keys.empty() ? "" : ", ") + key;
        return "needs " + keys;
    }
    if (const auto* cannot = std::get_if<targets::Cannot>(&target.state))
        return (cannot->never() ? "never: " : "cannot: ") + plain(cannot->why.text, system);
    const targets::Ready& ready = *target.ready();
    std::string why = ready.because.formula.str();
    if (ready.window.rule != targets::Rule::None) why += ", window by " + std::string(ruleWord(ready.window.rule));
    if (ready.window.lowRule) why += ", its lower end by " + std::string(ruleWord(*ready.window.lowRule));
    return why;
}

std::string familyOf(const std::string& id) { return id.substr(0, id.find('.')); }

void printPlain(const Targets& targets, const inputs::Inputs& inputs, const Console& console)
{
    const UnitSystem system = inputs.press->units;
    console.out << inputs.press->name << ", job " << inputs.job->id << ", " << inputs.substrate->name << ", roll "
                << inputs.roll->id << "\n\n";
    for (const Finding& finding : targets.findings) {
        const char* word = finding.severity == Severity::Stop   ? "STOP  "
                           : finding.severity == Severity::Warn ? "think "
                                                                : "note  ";
        console.out << word << sentence(finding, system) << '\n';
    }
    if (!targets.findings.empty()) console.out << '\n';
    std::vector<std::vector<std::string>> rows{{"target", "value", "window", "why", "what it is"}};
    std::string family;
    for (const Target& target : targets.all) {
        if (familyOf(target.id) != family) {
            if (!family.empty()) rows.emplace_back();
            family = familyOf(target.id);
        }
        const targets::Ready* ready = target.ready();
        rows.push_back({target.id, ready == nullptr ? "-" : valueText(targets::aimOf(*ready, system), system),
                        ready == nullptr ? "" : windowText(ready->window, system), whyText(target, system),
                        plain(target.name, system)});
    }
    console.out << table(rows);
    for (const targets::Schedule& schedule : targets.schedules) {
        console.out << '\n' << schedule.id << '\n';
        std::vector<std::vector<std::string>> lines{schedule.columns};
        for (const auto& row : schedule.rows) {
            lines.emplace_back();
            for (const Quantity& quantity : row) lines.back().push_back(format(quantity, system));
        }
        console.out << table(lines);
    }
}

/// The charts of settings and tension as a picture. Codes chart.none, file.unwritable.
Result<Done> writeCharts(const std::string& file, const inputs::Inputs& inputs, const Targets& targets)
{
    ChartPicture picture;
    picture.charts = report::chartsOf(inputs, targets);
    if (picture.charts.empty())
        return refuse("chart.none", file, "Nothing on this press is set by the diameter of a roll: there is no chart.",
                      "See the targets that it needs; each says what is missing.");
    picture.title =
        words(Text("%1, job %2, roll %3", {inputs.press->name, inputs.job->id, inputs.roll->id}), inputs.press->units);
    picture.units = inputs.press->units;
    const QByteArray bytes = pngOf(picture);
    return writeFile(file, {bytes.constData(), static_cast<std::size_t>(bytes.size())});
}

Exit run(const Options& options, const Console& console)
{
    const bool json = options.json();
    const auto files = inputFiles(options);
    if (!files) return refused(console, json, files.error());
    const auto when = circumstances(options);
    if (!when) return refused(console, json, when.error());
    Findings notes;
    const auto inputs = readInputs(*files, notes);
    if (!inputs) return refused(console, json, inputs.error());
    if (stops(notes)) return refused(console, json, notes);

    Targets targets = targets::computeTargets(*inputs, when->presentDiameter, when->webInPress);
    targets.findings.insert(targets.findings.begin(), notes.begin(), notes.end());
    if (options.has("--chart"))
        if (const auto done = writeCharts(options.value("--chart"), *inputs, targets); !done)
            return refused(console, json, done.error());
    if (!json) {
        printPlain(targets, *inputs, console);
        return Exit::Done;
    }
    Json named = Json::object()
                     .set("press", inputs->press->id)
                     .set("job", inputs->job->id)
                     .set("substrate", inputs->substrate->id)
                     .set("roll", inputs->roll->id);
    if (when->presentDiameter)
        named.set("present_diameter", when->presentDiameter->si());
    else if (inputs->roll->outerDiameter)
        named.set("present_diameter", inputs->roll->outerDiameter->si());
    else
        named.set("present_diameter", nullptr);
    Json facts = Json::array();
    for (const std::string& fact : inputs::factsOf(*inputs, when->webInPress)) facts.add(fact);
    Json all = answer().set("inputs", std::move(named)).set("facts", std::move(facts));
    const Json set = targets::targetsJson(targets, inputs->press->units);
    for (const auto& [key, value] : set.members()) all.set(key, value);
    print(console, all);
    return Exit::Done;
}

}  // namespace

Verb targetsVerb()
{
    VerbSpec spec{"targets",      "", "what each setting should be for this press, job and roll, and why",
                  inputOptions(), 0,  0};
    spec.options.push_back({"--chart", "FILE.png", "settings and tension against diameter, as a picture"});
    spec.arguments = "--press P --job J --roll R";
    return {std::move(spec), run, false, "--chart"};
}

}  // namespace taut::app::verbs
