// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/pages/run/run_acts.h"

#include <algorithm>

#include <QCoreApplication>

#include "app/pages/run/run_shown.h"
#include "app/text/language.h"
#include "app/text/names.h"
#include "app/text/words.h"
#include "core/report/parts.h"
#include "core/run/remedy.h"
#include "core/run/words.h"
#include "core/units/parse.h"

namespace taut::app {

namespace {

/// lupdate and the pseudo language know the acts by this name.
struct Acts {
    static QString tr(const char* english) { return QCoreApplication::translate("RunActs", english); }
};

using Field = AskPanel::Field;

bool vitalSkip(const procedure::Step* step) { return step && step->vital; }

Field correctedField(const procedure::Step* step, UnitSystem system)
{
    Field field{Acts::tr("The right answer"), {}, true, Acts::tr("With its unit, if it has one")};
    if (!step) return field;
    for (const procedure::Choice& c : step->choices)
        field.options.emplace_back(QString::fromStdString(c.word), words(Text(c.say.empty() ? c.word : c.say), system));
    if (step->kind == procedure::StepKind::Confirm || step->kind == procedure::StepKind::Call)
        field.options = {{QStringLiteral("yes"), Acts::tr("Yes, it is so")}};
    return field;
}

/// Of the reading that came right last: what stands at it as a remedy, or something else.
void askWhatHelped(const run::Run& run, AskPanel::Question& q)
{
    const std::vector<run::StepId> right = run::cameRight(run);
    const procedure::Step* step = right.empty() ? nullptr : run.plan().find(right.back());
    if (step == nullptr) return;
    const UnitSystem system = unitsOf(run);
    q.text = Acts::tr("\u201c%1\u201d is right again. Whoever comes next is glad to know why.")
                 .arg(words(report::nameOf(*step, run.targets().find(step->target)), system));
    Field which{Acts::tr("What helped"), {}, true, {}};
    for (std::size_t i = 0; i < step->tries.size(); ++i)
        which.options.emplace_back(QString::number(i + 1), words(step->tries[i], system));
    which.options.emplace_back(QStringLiteral("0"), Acts::tr("Something else"));
    which.options.emplace_back(QString::number(run::kNotKnown), Acts::tr("Not known"));
    q.fields = {which, {Acts::tr("If it was something else"), {}, false, Acts::tr("In a few words")}};
    q.accept = Acts::tr("Write what helped");
}

std::vector<PersonChoice> whoMay(const std::vector<PersonChoice>& people, people::Act act)
{
    std::vector<PersonChoice> some;
    std::copy_if(people.begin(), people.end(), std::back_inserter(some),
                 [act](const PersonChoice& p) { return people::may(p.role, act); });
    return some;
}

}  // namespace

QString actName(RunAct act)
{
    switch (act) {
    case RunAct::Note: return Acts::tr("N&ote");
    case RunAct::NotApplicable: return Acts::tr("Does not a&pply");
    case RunAct::Correct: return Acts::tr("&Correct");
    case RunAct::Diameter: return Acts::tr("Dia&meter");
    case RunAct::ChangeRoll: return Acts::tr("Change ro&ll");
    case RunAct::Withdraw: return Acts::tr("&Withdraw the press");
    case RunAct::Repeat: return Acts::tr("Do a stage again");
    case RunAct::HandOver: return Acts::tr("Hand over to somebody else");
    case RunAct::Interrupt: return Acts::tr("Interrupt the run");
    case RunAct::HoldStop: return Acts::tr("Another stop held");
    case RunAct::Review: return Acts::tr("Look through and sign");
    case RunAct::Sheet: return Acts::tr("Sheet of the run as it stands");
    case RunAct::Abandon: return Acts::tr("Abandon the run");
    case RunAct::Attach: return Acts::tr("Pictures and files");
    case RunAct::Helped: return Acts::tr("What helped");
    case RunAct::GiveUp: return Acts::tr("Give up a held stop");
    case RunAct::Leave: return Acts::tr("Leave this page, keep the run open");
    }
    return {};
}

bool actOffered(RunAct act, const run::Run& run, const procedure::Step* step, const PersonChoice& actor)
{
    // What is written needs a name: locked, the run may be looked at and left.
    if (actor.id.isEmpty()) return act == RunAct::Sheet || act == RunAct::Leave;
    const bool running = run.phase() == run::Phase::Running;
    const bool carriesOn = act == RunAct::NotApplicable || act == RunAct::Correct || act == RunAct::Diameter ||
                           act == RunAct::ChangeRoll || act == RunAct::Repeat;
    if (carriesOn && isInOtherHands(run, actor)) return false;
    const bool ended = run.phase() == run::Phase::Completed || run.phase() == run::Phase::Abandoned;
    switch (act) {
    case RunAct::Note: return !ended;
    case RunAct::Attach: return true;
    case RunAct::Helped: return running && !run::cameRight(run).empty();
    case RunAct::NotApplicable:
        return running && step && step->waivable && step->kind != procedure::StepKind::Call &&
               run::isOpen(run.standing(step->id).state) && run.standing(step->id).state != run::StepState::Outside;
    case RunAct::GiveUp: return running && !run.heldStops().empty() && !isInOtherHands(run, actor);
    case RunAct::Correct: {
        if (!running || !step || step->kind == procedure::StepKind::Motion || step->kind == procedure::StepKind::Hold)
            return false;
        const run::StepState state = run.standing(step->id).state;
        return state == run::StepState::Answered || state == run::StepState::Deviated ||
               state == run::StepState::Outside;
    }
    case RunAct::Diameter:
    case RunAct::ChangeRoll:
    case RunAct::Repeat:
    case RunAct::HandOver:
    case RunAct::Interrupt:
    case RunAct::HoldStop:
    case RunAct::Review: return running;
    case RunAct::Withdraw: return running || run.phase() == run::Phase::Interrupted;
    case RunAct::Abandon: return !ended;
    case RunAct::Sheet:
    case RunAct::Leave: return true;
    }
    return false;
}

AskPanel::Question questionFor(RunAct act, const run::Run& run, const procedure::Step* step,
                               const std::vector<PersonChoice>& people)
{
    AskPanel::Question q;
    QString plainName = actName(act);
    q.title = plainName.remove(QLatin1Char('&'));
    switch (act) {
    case RunAct::Note:
        q.text = Acts::tr("It stands in the record beside this step, with your name and the time.");
        q.fields = {AskPanel::prose(Acts::tr("What is to be noted"))};
        q.accept = Acts::tr("Write the note");
        break;
    case RunAct::NotApplicable:
        q.text = vitalSkip(step) ? Acts::tr("This step is vital: a supervisor looks at it here and gives their PIN.")
                                 : Acts::tr("The step is passed by, with your reason beside it.");
        q.fields = {AskPanel::prose(Acts::tr("Why it does not apply"))};
        q.person = vitalSkip(step);
        if (q.person) q.secret = AskPanel::Question::Secret::Pin;
        q.people = whoMay(people, people::Act::WaiveVital);
        q.accept = Acts::tr("Pass the step by");
        break;
    case RunAct::Correct:
        q.text = Acts::tr("The first answer stays in the record; this one stands beside it.");
        if (step) {
            const run::StepStanding stands = run.standing(step->id);
            if (stands.answer)
                q.text += QLatin1Char('\n') +
                          Acts::tr("Now it says \u201c%1\u201d, by %2, %3.")
                              .arg(dataText(words(run::enteredSaid(step, stands.answer->entered), unitsOf(run))),
                                   QString::fromStdString(stands.byName), clockText(stands.at, stands.offset));
        }
        q.fields = {correctedField(step, unitsOf(run)), AskPanel::prose(Acts::tr("What was wrong"))};
        q.accept = Acts::tr("Write the correction");
        break;
    case RunAct::Diameter:
        q.text =
            Acts::tr("Every target that depends on the diameter is computed anew; answers that it touches are asked "
                     "again.");
        q.fields = {{Acts::tr("Diameter of the roll, measured now"),
                     {},
                     true,
                     unitsFor(unitsOf(run)) == UnitSystem::Us ? Acts::tr("With its unit: 18 3/4 in")
                                                              : Acts::tr("With its unit: 480 mm")}};
        q.accept = Acts::tr("Use this diameter");
        break;
    case RunAct::Withdraw:
        q.text =
            Acts::tr("The press is out of use from now on, and every open run on it holds. Only a supervisor other "
                     "than you gives it back.");
        q.fields = {AskPanel::prose(Acts::tr("What is wrong with the press"))};
        q.accept = Acts::tr("Withdraw the press from use");
        break;
    case RunAct::Repeat: {
        q.text = Acts::tr("Its steps open again, and those of later stages that rest on what it undoes; what was "
                          "answered before stays in the record.");
        Field stages{Acts::tr("Which stage"), {}, true, {}};
        for (const procedure::PlanStage& s : run.plan().stages)
            stages.options.emplace_back(QString::fromStdString(s.id), words(s.title, unitsOf(run)));
        Field causes{Acts::tr("Why"), {}, true, {}};
        for (const char* cause : {"web_break", "wrong_roll", "other"})
            causes.options.emplace_back(QString::fromLatin1(cause), causeText(cause));
        q.fields = {stages, causes};
        q.accept = Acts::tr("Do this stage again");
        break;
    }
    case RunAct::HoldStop: {
        q.text = Acts::tr("Everybody with hands in the press holds a stop of their own, and gives it up themselves.");
        Field where{Acts::tr("Which stop"), {}, true, {}};
        for (const std::string& stop : run::stopsOf(run.plan()))
            where.options.emplace_back(QString::fromStdString(stop),
                                       words(run::stopSaid(run.plan(), stop), unitsOf(run)));
        q.fields = {{Acts::tr("Who holds it"), {}, true, {}}, where};
        q.accept = Acts::tr("This person holds the stop");
        break;
    }
    case RunAct::HandOver:
        q.text = Acts::tr("Whoever takes over says the vital steps of this stage again.");
        // Whoever leaves the press must not leave a stop behind that only they may give up.
        if (!run.heldStops().empty())
            q.text += QLatin1Char('\n') + stopsHeldText(run) + QLatin1Char('\n') +
                      Acts::tr("Whoever goes home gives up theirs first.");
        q.person = true;
        q.secret = AskPanel::Question::Secret::Pin;
        q.people = whoMay(people, people::Act::AnswerStep);
        std::erase_if(q.people, [&](const PersonChoice& p) { return p.id.toStdString() == run.operatorId(); });
        q.accept = Acts::tr("Take over the run");
        break;
    case RunAct::Interrupt:
        q.text = Acts::tr("Before the run goes on, the press is made safe first.");
        q.fields = {{Acts::tr("What interrupts it"),
                     {{QStringLiteral("break"), Acts::tr("A break, or something else to do")},
                      {QStringLiteral("stop_by_other"), Acts::tr("Somebody else stopped the press")},
                      {QStringLiteral("power"), Acts::tr("Power or air is gone")}},
                     true,
                     {}}};
        q.accept = Acts::tr("Interrupt the run");
        break;
    case RunAct::Abandon:
        q.text = Acts::tr("The run ends here and is sealed as abandoned. It cannot be taken up again.");
        q.fields = {AskPanel::prose(Acts::tr("Why it is abandoned"))};
        q.secret = AskPanel::Question::Secret::Passphrase;
        q.accept = Acts::tr("Abandon and seal the run");
        break;
    case RunAct::Helped: askWhatHelped(run, q); break;
    case RunAct::ChangeRoll:
    case RunAct::GiveUp:
    case RunAct::Review:
    case RunAct::Sheet:
    case RunAct::Attach:
    case RunAct::Leave: break;
    }
    return q;
}

AskPanel::Question giveUpQuestion(const run::Run& run, const std::string& holder,
                                  const std::vector<PersonChoice>& people)
{
    AskPanel::Question q;
    const QString name = dataText(holder);
    q.title = Acts::tr("The stop of %1").arg(name);
    q.text =
        Acts::tr("A held stop is its holder's alone: %1 says with their PIN that they are out. If they are away, a "
                 "supervisor who has seen that nobody is in says so, and why.")
            .arg(name);
    // Only the holder's own word needs no reason, which core asks for.
    q.fields = {{Acts::tr("If it is a supervisor: why not the holder"), {}, false, {}}};
    q.person = true;
    q.secret = AskPanel::Question::Secret::Pin;
    q.people = whoMay(people, people::Act::WaiveVital);
    const auto isHolder = [&](const PersonChoice& p) { return p.name.toStdString() == holder; };
    std::erase_if(q.people,
                  [&](const PersonChoice& p) { return isHolder(p) || p.id.toStdString() == run.operatorId(); });
    const auto self = std::find_if(people.begin(), people.end(), isHolder);
    if (self != people.end()) q.people.insert(q.people.begin(), *self);
    q.accept = Acts::tr("Give up this stop");
    return q;
}

ActRequest giveUpRequest(const std::string& holder, const QStringList& values)
{
    ActRequest request;
    request.second = [holder, reason = values.value(0).toStdString()](const people::Actor& by) -> run::Command {
        return run::GiveUpStop{holder, reason, by};
    };
    return request;
}

Result<ActRequest> requestFor(RunAct act, const run::Run& run, const procedure::Step* step, const QStringList& values)
{
    const auto value = [&](int i) { return values.value(i).toStdString(); };
    const run::StepId id = step ? step->id : run::StepId{};
    ActRequest request;
    switch (act) {
    case RunAct::Note: request.command = run::Note{id, value(0)}; break;
    case RunAct::Helped: {
        const std::vector<run::StepId> right = run::cameRight(run);
        request.command =
            run::SayHelped{right.empty() ? run::StepId{} : right.back(), values.value(0).toInt(), value(1)};
        break;
    }
    case RunAct::NotApplicable:
        if (vitalSkip(step))
            request.second = [id, reason = value(0)](const people::Actor& supervisor) -> run::Command {
                return run::SkipStep{id, reason, supervisor};
            };
        else
            request.command = run::SkipStep{id, value(0), std::nullopt};
        break;
    case RunAct::Correct: request.command = run::Correct{id, value(0), value(1)}; break;
    case RunAct::Diameter: {
        const auto diameter = parseQuantity(value(0), Kind::Length);
        if (!diameter) return diameter.error();
        request.command = run::MeasuredDiameter{diameter->as<Kind::Length>()};
        break;
    }
    case RunAct::Withdraw: request.withdrawFor = value(0); break;
    case RunAct::Repeat: request.command = run::RepeatStage{value(0), value(1)}; break;
    case RunAct::HandOver:
        request.second = [](const people::Actor& to) -> run::Command { return run::HandOver{to}; };
        break;
    case RunAct::HoldStop: request.command = run::HoldStop{value(0), value(1)}; break;
    case RunAct::Interrupt: request.command = run::Interrupt{value(0)}; break;
    case RunAct::Abandon: request.finish = run::Abandon{value(0)}; break;
    case RunAct::ChangeRoll:
    case RunAct::GiveUp:
    case RunAct::Review:
    case RunAct::Sheet:
    case RunAct::Attach:
    case RunAct::Leave:
        return refuse("act.not_asked", run.id(), "This is not answered with words.", "Use its own page.");
    }
    return request;
}

}  // namespace taut::app
