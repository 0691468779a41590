// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/pages/run/run_shown.h"

#include <algorithm>
#include <map>

#include <QCoreApplication>
#include <QStringList>

#include "app/text/language.h"
#include "app/text/names.h"
#include "app/text/words.h"
#include "core/base/clock.h"
#include "core/inputs/spoken.h"
#include "core/inputs/tag_rows.h"
#include "core/report/readings.h"
#include "core/run/answer.h"
#include "core/run/change.h"
#include "core/run/decide.h"
#include "core/run/words.h"

namespace taut::app {

namespace {

QString onRunPage(const char* english) { return QCoreApplication::translate("RunPage", english); }

std::size_t placeIndexOf(const procedure::Plan& plan, const procedure::Step& step)
{
    return std::min(step.place, plan.places.size() - 1);
}

/// What changed the inputs in this event, by itself or through an answer; nullptr when nothing did.
const run::InputsChanged* changeIn(const run::Event& event)
{
    if (const auto* changed = std::get_if<run::InputsChanged>(&event.happening())) return changed;
    if (const auto* answered = std::get_if<run::Answered>(&event.happening())) return answered->filled.get();
    if (const auto* deviated = std::get_if<run::Deviated>(&event.happening())) return deviated->filled.get();
    return nullptr;
}

/// An input as people call it: the roll as a whole, or what an answer filled of it.
QString inputName(const std::string& what)
{
    if (what == "diameter") return onRunPage(QT_TRANSLATE_NOOP("RunPage", "The roll's measured diameter"));
    if (what == "tag") return onRunPage(QT_TRANSLATE_NOOP("RunPage", "What the roll's tag says"));
    if (what == "roll") return onRunPage(QT_TRANSLATE_NOOP("RunPage", "The roll"));
    return onRunPage(QT_TRANSLATE_NOOP("RunPage", "What was found of the roll"));
}

/// The input that made a step stale.
QString staleBecauseOf(const run::Run& run, const run::StepId& step)
{
    for (auto event = run.events().rbegin(); event != run.events().rend(); ++event) {
        const run::InputsChanged* changed = changeIn(*event);
        if (!changed || std::find(changed->stale.begin(), changed->stale.end(), step) == changed->stale.end()) continue;
        return inputName(changed->what);
    }
    return {};
}

inputs::Feed feedOf(const run::Run& run)
{
    const targets::Target* target = run.targets().find("roll.feed");
    const targets::Ready* ready = target ? target->ready() : nullptr;
    const auto* word = ready ? std::get_if<std::string>(&ready->value) : nullptr;
    return word && *word == "under" ? inputs::Feed::Under : inputs::Feed::Over;
}

/// How many answers a change asks again, and the first of them.
QString askedAgain(const run::InputsChanged& change, UnitSystem system)
{
    if (change.stale.empty()) return onRunPage(QT_TRANSLATE_NOOP("RunPage", "No answer given so far is asked again."));
    const procedure::Step* first = change.plan.find(change.stale.front());
    const QString say = first == nullptr ? QString() : words(first->say, system).section(QLatin1Char('.'), 0, 0);
    if (change.stale.size() == 1)
        return onRunPage(QT_TRANSLATE_NOOP("RunPage", "One answer given so far is asked again: %1.")).arg(say);
    return onRunPage(QT_TRANSLATE_NOOP("RunPage", "%1 answers given so far are asked again, the first: %2."))
        .arg(change.stale.size())
        .arg(say);
}

}  // namespace

RunFiles filesOf(const run::Run& run)
{
    RunFiles files;
    files.sources = run.sources();
    Findings notes;
    if (auto press = inputs::readPress(files.sources.press.text, files.sources.press.id, notes)) files.press = *press;
    if (auto job = inputs::readJob(files.sources.job.text, files.sources.job.id, notes)) files.job = *job;
    if (auto roll = inputs::readRoll(files.sources.roll.text, files.sources.roll.id, notes)) files.roll = *roll;
    if (auto all = inputs::readSubstrates(files.sources.substrate.text, files.sources.substrate.id, notes))
        for (const inputs::Substrate& s : *all)
            if (s.id == files.sources.substrate.id) files.substrateName = s.name;
    files.language = files.sources.translation.id;
    if (files.language.empty())
        if (auto read = procedure::readProcedure(files.sources.procedure.text, files.sources.procedure.id, notes))
            files.language = read->language;
    return files;
}

bool isInOtherHands(const run::Run& run, const PersonChoice& actor)
{
    return !actor.id.isEmpty() && run::inOtherHands(run, people::PersonId{actor.id.toStdString()}).has_value();
}

std::vector<run::HeldStop> heldShown(const run::Run& run)
{
    std::vector<run::HeldStop> held = run.heldStops();
    for (run::HeldStop& one : held) one.where = words(run::stopSaid(run.plan(), one.where), unitsOf(run)).toStdString();
    return held;
}

QString stopsHeldText(const run::Run& run)
{
    if (run.heldStops().empty()) return {};
    std::map<QString, QStringList> places;
    for (const run::HeldStop& one : heldShown(run)) places[dataText(one.holder)] << QString::fromStdString(one.where);
    QStringList all;
    for (const auto& [who, where] : places) all << QStringLiteral("%1 (%2)").arg(who, where.join(QStringLiteral(", ")));
    return onRunPage(QT_TRANSLATE_NOOP("RunPage", "Stops held: %1")).arg(all.join(QStringLiteral("; ")));
}

inputs::Inputs inputsOf(const run::Run& run)
{
    const auto basis = run::basisFor(run.sources(), {run.began().kind, run.began().webInPress, run.presentDiameter()});
    return basis ? basis->inputs : inputs::Inputs();
}

QString effectOfRoll(const run::Run& run, const std::string& rollToml)
{
    Findings notes;
    const auto roll = inputs::readRoll(rollToml, "roll", notes);
    if (!roll) return words(roll.error(), unitsOf(run));
    run::Sources sources = run.sources();
    sources.roll = run::sourceOf(roll->id, 0, rollToml);
    const auto change = run::changedInputs(run, sources, std::nullopt, "roll");
    if (!change) return words(change.error(), unitsOf(run));
    // Of several reasons the wrong material is the one that no other roll of it mends.
    for (const Finding& finding : change->targets.findings)
        if (finding.code == "input.wrong_substrate") return words(finding, unitsOf(run));
    if (const auto why = run::cannotWork(change->targets)) return words(*why, unitsOf(run));
    QStringList effect{askedAgain(*change, unitsOf(run))};
    // What is to be thought of with this roll and was not with the one before it.
    const Findings& before = run.targets().findings;
    for (const Finding& finding : change->targets.findings)
        if (finding.severity == Severity::Warn && std::find(before.begin(), before.end(), finding) == before.end())
            effect << words(finding, unitsOf(run));
    return effect.join(QLatin1Char('\n'));
}

UnitSystem unitsOf(const run::Run& run) { return run.began().units; }

std::vector<TautSpan> tautSpansOf(const run::Run& run, std::size_t shownStage)
{
    std::vector<TautSpan> spans;
    const procedure::Plan& plan = run.plan();
    for (std::size_t i = 0; i < plan.stages.size(); ++i) {
        const run::StageState state = run.stageState(i);
        spans.push_back({words(plan.stages[i].title, unitsOf(run)), stageStateText(state), state, i == shownStage});
    }
    return spans;
}

QStringList headingOf(const run::Run& run, const RunFiles& files)
{
    const run::Sources& s = run.sources();
    QStringList heading;
    heading << dataText(files.press ? files.press->name : s.press.id);
    heading << (files.job && !files.job->title.empty() ? dataText(s.job.id + " " + files.job->title)
                                                       : dataText(s.job.id));
    heading << onRunPage(QT_TRANSLATE_NOOP("RunPage", "Roll %1")).arg(QString::fromStdString(s.roll.id));
    heading << dataText(files.substrateName.empty() ? s.substrate.id : files.substrateName);
    heading << dataText(run.operatorName());
    heading << runKindText(run.plan().kind);
    heading << dataText(run.id());
    return heading;
}

QString spokenText(const RunFiles& files)
{
    const QString spoken = QString::fromStdString(files.language);
    if (spoken.isEmpty() || spoken == language()) return {};
    QString name = spoken;
    if (spoken == QLatin1String("en")) name = onRunPage(QT_TRANSLATE_NOOP("RunPage", "English"));
    if (spoken == QLatin1String("es")) name = onRunPage(QT_TRANSLATE_NOOP("RunPage", "Spanish"));
    if (spoken == QLatin1String("de")) name = onRunPage(QT_TRANSLATE_NOOP("RunPage", "German"));
    return onRunPage(QT_TRANSLATE_NOOP("RunPage", "This run is read in %1")).arg(name);
}

QStringList earlierOf(const run::Run& run, const procedure::Step& step)
{
    QStringList earlier;
    const run::Event* stood = nullptr;
    for (const run::Event& event : run.events()) {
        const auto* answered = std::get_if<run::Answered>(&event.happening());
        if (answered == nullptr || answered->step != step.id) continue;
        if (answered->correction && stood != nullptr) {
            const auto& before = std::get<run::Answered>(stood->happening());
            const run::Stamp& stamp = stood->stamp();
            earlier << onRunPage(QT_TRANSLATE_NOOP("RunPage",
                                                   "Before that \u201c%1\u201d stood, by %2, %3. It was corrected: %4"))
                           .arg(dataText(words(run::enteredSaid(&step, before.entered), unitsOf(run))),
                                QString::fromStdString(stamp.byName), clockText(stamp.utcMs, stamp.offsetMinutes),
                                words(run::correctionSaid(answered->reason), unitsOf(run)));
        }
        stood = &event;
    }
    return earlier;
}

QString marksOf(const run::Run& run, const run::StepId& step)
{
    int notes = 0, files = 0;
    for (const run::Event& event : run.events()) {
        const auto* noted = std::get_if<run::Noted>(&event.happening());
        const auto* attached = std::get_if<run::Attached>(&event.happening());
        notes += noted != nullptr && noted->step == step ? 1 : 0;
        files += attached != nullptr && attached->step == step ? 1 : 0;
    }
    QStringList marks;
    if (notes > 0) marks << onRunPage(QT_TRANSLATE_NOOP("RunPage", "Notes: %1")).arg(notes);
    if (files > 0) marks << onRunPage(QT_TRANSLATE_NOOP("RunPage", "Files: %1")).arg(files);
    return marks.join(QStringLiteral(" \u00B7 "));
}

const targets::Target* targetOfStep(const run::Run& run, const procedure::Step& step)
{
    return run::judgedBy(run, step);
}

StepContent stepContentOf(const run::Run& run, const procedure::Step& step, const std::vector<PersonChoice>& people)
{
    const procedure::Plan& plan = run.plan();
    const procedure::PlanPlace& place = plan.places[placeIndexOf(plan, step)];
    StepContent content;
    content.step = step;
    content.roll = QString::fromStdString(run.sources().roll.id);
    content.standing = run.standing(step.id);
    if (const targets::Target* target = targetOfStep(run, step)) content.target = *target;
    content.closed = run::closedBecause(run, step.id);
    content.units = unitsOf(run);
    content.stage = words(plan.stages[place.stage].title, content.units);
    content.place = words(place.title, content.units);
    for (std::size_t i = 0; i < place.count; ++i)
        if (plan.steps[place.first + i].id == step.id) content.number = i + 1;
    content.of = place.count;
    content.holdStop = place.holdStop;
    content.held = heldShown(run);
    content.people = people;
    content.earlier = earlierOf(run, step);
    content.marks = marksOf(run, step.id);
    const std::optional<run::StepId> next = run.next();
    content.elsewhere = next && *next != step.id;
    content.cutShort = words(report::cutShortSaid(run, step.id), content.units);
    if (content.standing.state == run::StepState::Stale) content.staleBecause = staleBecauseOf(run, step.id);
    if (step.kind == procedure::StepKind::Scan) {
        content.around = std::make_shared<const inputs::Inputs>(inputsOf(run));
        content.today = inputs::dayOf(SystemClock().now());
    }
    return content;
}

namespace {

/// The control of the step under the words that this shop has for it, else the trade's; empty when it has none.
QString touchedIn(const run::Run& run, const inputs::Press& press, const procedure::Step& step)
{
    if (step.control.empty()) return {};
    const std::string& held = run.plan().places[step.place].holdStop;
    if (step.control == "hold_stop" && !held.empty()) return dataText(held);
    const std::string* label = press.label(step.control);
    return label && !label->empty() ? dataText(*label) : words(procedure::defaultLabel(step.control), unitsOf(run));
}

/// The zone that the step sets or reads; nullptr for any other step.
const inputs::Zone* zoneOfStep(const inputs::Press& press, const procedure::Step& step)
{
    const auto found = std::find_if(press.zones.begin(), press.zones.end(), [&](const inputs::Zone& zone) {
        return step.control == zone.id + "_setting" || step.target.starts_with("tension." + zone.id + ".");
    });
    return found == press.zones.end() ? nullptr : &*found;
}

}  // namespace

ElevationView elevationOfRun(const run::Run& run, const RunFiles& files, const procedure::Step& step)
{
    if (!files.press) return {};
    const std::optional<Length> diameter =
        files.roll ? inputs::diameterAsItRuns(*files.roll, run.presentDiameter()) : run.presentDiameter();
    ElevationView view = elevationOf(*files.press, diameter, feedOf(run),
                                     files.job ? files.job->winding : std::optional<inputs::Winding>());
    view.lit = step.at;
    view.touch = touchedIn(run, *files.press, step);
    if (const inputs::Zone* zone = zoneOfStep(*files.press, step)) {
        view.zone = {zone->from, zone->to};
        view.zoneName = dataText(inputs::spokenName(*zone));
    }
    const auto has = [&](const char* condition) { return run.conditions().contains(condition); };
    if (has("web_at_rewind") || has("web_joined"))
        view.threaded = {{"", ""}};
    else if (run.began().webInPress && !view.spliceAfter.empty())
        view.threaded = {{view.spliceAfter, ""}};  // the web that was left in the press, up to the splice table
    view.sidePathsThreaded = has("web_at_rewind") || run.began().webInPress;
    return view;
}

QString standingLine(const run::StepStanding& standing, UnitSystem system)
{
    if (standing.state == run::StepState::Open || !standing.answer || !standing.answer->value)
        return standingText(standing);
    const Quantity& value = *standing.answer->value;
    const QString shown = value.entered().empty() ? quantityText(value, system) : dataText(value.entered());
    return onRunPage(QT_TRANSLATE_NOOP("RunPage", "%1, %2")).arg(shown, standingText(standing));
}

const procedure::Step* firstOfStage(const run::Run& run, std::size_t stage)
{
    const procedure::Plan& plan = run.plan();
    const procedure::Step* first = nullptr;
    for (const procedure::Step& step : plan.steps) {
        if (plan.stageOf(step) != stage) continue;
        if (!first) first = &step;
        if (run::isOpen(run.standing(step.id).state)) return &step;
    }
    return first;
}

}  // namespace taut::app
