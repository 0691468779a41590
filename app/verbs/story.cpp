// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/verbs/story.h"

#include <algorithm>
#include <charconv>
#include <filesystem>

#include "app/seams/resources.h"
#include "core/base/file.h"
#include "core/report/parts.h"
#include "core/run/attachment.h"
#include "core/run/words.h"
#include "core/units/format.h"
#include "core/units/parse.h"
#include "core/units/plain.h"

namespace taut::app::verbs {

namespace {

using run::Run;
using run::StepId;

std::string whereOf(const Answers& answers, const AnswerEntry& entry)
{
    return answers.file + ':' + std::to_string(entry.line);
}

/// The first step before this one that still waits for an answer: the one that was left out.
std::optional<StepId> leftOut(const Run& run, const StepId& step)
{
    for (const procedure::Step& one : run.plan().steps) {
        if (one.id == step) return std::nullopt;
        if (run::isOpen(run.standing(one.id).state)) return one.id;
    }
    return std::nullopt;
}

/// The statement that no longer holds and that this step needs said again, when that is all that is missing.
std::optional<StepId> leftUnsaid(const Run& run, const StepId& step)
{
    const auto closed = run::closedBecause(run, step);
    const procedure::Step* asked = run.plan().find(step);
    if (!closed || closed->code != "gate.needs" || asked == nullptr) return std::nullopt;
    const procedure::Step* longestAgo = nullptr;
    for (const std::string& need : asked->needs) {
        if (run.conditions().contains(need)) continue;
        for (const procedure::Step& one : run.plan().steps) {
            if (std::find(one.gives.begin(), one.gives.end(), need) == one.gives.end() || !run.hasLapsed(one)) continue;
            if (longestAgo == nullptr || run.standing(one.id).n < run.standing(longestAgo->id).n) longestAgo = &one;
        }
        if (longestAgo != nullptr) return longestAgo->id;
    }
    return std::nullopt;
}

std::string nextName(const Run& run, const std::string& otherwise)
{
    const auto open = run.openSteps();
    return open.empty() ? otherwise : open.front().value;
}

std::optional<std::string> textOfFile(const std::vector<InputFile>& files, const std::string& id)
{
    for (const InputFile& file : files)
        if (file.id == id) return file.text;
    return std::nullopt;
}

Finding unknownInput(const char* what, const std::string& id)
{
    return refuse("input.unknown", id, {"No %1 of this id is among the resources.", {std::string(what)}},
                  "Correct the id in [run] of the answers file.");
}

Result<std::optional<Length>> diameterOf(const std::string& text)
{
    if (text.empty()) return std::optional<Length>();
    const auto read = parseQuantity(text, Kind::Length);
    if (!read) return read.error();
    return std::optional<Length>(read->as<Kind::Length>());
}

}  // namespace

Storyteller::Storyteller(logbook::Writer& writer, SteppedClock& clock, const std::filesystem::path& resources,
                         std::vector<DemoPerson> people)
    : m_writer(writer),
      m_clock(clock),
      m_resources(resources),
      m_people(std::move(people))
{}

std::int64_t Storyteller::milliseconds(const Answers& answers)
{
    std::int64_t total = 0;
    for (const AnswerEntry& entry : answers.entries) total += entry.seconds * 1000LL;
    return total;
}

Result<const people::Actor*> Storyteller::actor(const std::string& id)
{
    if (const auto known = m_actors.find(id); known != m_actors.end()) return &known->second;
    const auto person = chosenBy(id);
    if (!person) return person.error();
    auto signedIn = m_writer.signIn(id, person->pin);
    if (!signedIn) return signedIn.error();
    return &m_actors.emplace(id, std::move(*signedIn)).first->second;
}

Result<std::shared_ptr<const people::Signer>> Storyteller::signer(const std::string& id)
{
    if (const auto known = m_signers.find(id); known != m_signers.end()) return known->second;
    const auto person = chosenBy(id);
    if (!person) return person.error();
    auto unlocked = m_writer.unlock(id, person->passphrase);
    if (!unlocked) return unlocked.error();
    return m_signers.emplace(id, std::make_shared<const people::Signer>(*std::move(unlocked))).first->second;
}

Result<people::Chosen> Storyteller::chosenBy(const std::string& id) const
{
    const auto person =
        std::find_if(m_people.begin(), m_people.end(), [&](const DemoPerson& one) { return one.id.value == id; });
    if (person == m_people.end())
        return refuse("demo.person", id, "Nobody of this id is among the people of the demo shop.",
                      "Correct `by` in the answers file, or add the person to people.toml.");
    return person->chosen;
}

Result<logbook::OpenRun> Storyteller::begin(const Answers& answers, const std::string& parent)
{
    const auto by = actor(answers.by);
    if (!by) return by.error();
    logbook::OpenRun::Beginning beginning;
    const auto kept = [&](const char* what, const std::string& id, run::Source& out) -> Outcome {
        const auto all = m_writer.definitions(what);
        if (!all) return all.error();
        for (const logbook::Definition& one : *all)
            if (one.source.id == id) {
                out = one.source;
                return Done{};
            }
        return unknownInput(what, id);
    };
    run::Sources& sources = beginning.sources;
    if (auto done = kept("press", answers.press, sources.press); !done) return done.error();
    if (auto done = kept("job", answers.job, sources.job); !done) return done.error();
    std::string substrate = answers.substrate;
    if (substrate.empty()) {
        Findings notes;
        const auto job = inputs::readJob(sources.job.text, answers.job, notes);
        if (!job) return job.error();
        substrate = job->substrate;
    }
    if (auto done = kept("substrate", substrate, sources.substrate); !done) return done.error();
    if (auto done = kept("procedure", answers.procedure, sources.procedure); !done) return done.error();
    const auto roll = textOfFile(shopFiles(m_resources, "roll"), answers.roll);
    if (!roll) return unknownInput("roll", answers.roll);
    sources.roll = run::sourceOf(answers.roll, 0, *roll);
    beginning.question.kind = answers.kind;
    beginning.question.webInPress = answers.webInPress;
    const auto diameter = diameterOf(answers.diameter);
    if (!diameter) return diameter.error();
    beginning.question.presentDiameter = *diameter;
    beginning.parent = parent;
    return logbook::OpenRun::begin(m_writer, beginning, **by);
}

Storyteller::Outcome Storyteller::perform(logbook::OpenRun& open, const run::Command& command, const std::string& by,
                                          const std::string& stoppedAt)
{
    const auto who = actor(by);
    if (!who) return who.error();
    auto done = open.perform(command, **who);
    if (done) return done;
    Finding finding = done.error();
    finding.subject = stoppedAt;
    return finding;
}

Result<std::optional<run::Command>> Storyteller::commandFor(const AnswerEntry& entry)
{
    using Wanted = std::optional<run::Command>;
    const StepId step{entry.step};
    std::optional<people::Actor> supervisor;
    if (!entry.supervisor.empty()) {
        const auto second = actor(entry.supervisor);
        if (!second) return second.error();
        supervisor = **second;
    }
    if (entry.act == "answer") return Wanted(run::Answer{step, entry.entered, entry.stated});
    if (entry.act == "correct") return Wanted(run::Correct{step, entry.entered, entry.reason});
    if (entry.act == "skip") return Wanted(run::SkipStep{step, entry.reason, supervisor});
    if (entry.act == "deviation") {
        const auto accepts = signer(entry.supervisor);
        if (!accepts) return accepts.error();
        return Wanted(run::AcceptDeviation{step, entry.reason, *accepts});
    }
    if (entry.act == "note") return Wanted(run::Note{step, entry.text});
    if (entry.act == "attach") {
        const std::filesystem::path file = m_resources / "demo" / "pictures" / entry.file;
        auto bytes = readFile(file, run::kMostAttachmentBytes);
        if (!bytes) return bytes.error();
        return Wanted(
            run::Attach{step, file.filename().string(), std::make_shared<const std::string>(*std::move(bytes))});
    }
    if (entry.act == "helped") {
        int remedy = 0;
        (void)std::from_chars(entry.remedy.data(), entry.remedy.data() + entry.remedy.size(), remedy);
        return Wanted(run::SayHelped{step, remedy, entry.text});
    }
    if (entry.act == "hold_stop") return Wanted(run::HoldStop{entry.holder, entry.where});
    if (entry.act == "give_up_stop") {
        run::GiveUpStop given{entry.holder, entry.reason, supervisor};
        // Whoever is of the demo shop gives up their own.
        for (const DemoPerson& one : m_people) {
            if (supervisor || one.name != entry.holder) continue;
            const auto holder = actor(one.id.value);
            if (!holder) return holder.error();
            given.saidBy = **holder;
        }
        return Wanted(given);
    }
    if (entry.act == "change_roll") {
        const auto roll = textOfFile(shopFiles(m_resources, "roll"), entry.roll);
        if (!roll) return unknownInput("roll", entry.roll);
        const auto diameter = diameterOf(entry.diameter);
        if (!diameter) return diameter.error();
        return Wanted(run::ChangeRoll{*roll, *diameter});
    }
    if (entry.act == "diameter") {
        const auto diameter = diameterOf(entry.diameter);
        if (!diameter) return diameter.error();
        return Wanted(run::MeasuredDiameter{**diameter});
    }
    if (entry.act == "repeat_stage") return Wanted(run::RepeatStage{entry.stage, entry.cause});
    if (entry.act == "interrupt") return Wanted(run::Interrupt{entry.reason});
    // A line that names who goes on says that they take the run over.
    if (entry.act == "resume") return Wanted(run::Resume{entry.stated, false, !entry.by.empty()});
    if (entry.act == "hand_over") {
        const auto to = actor(entry.to);
        if (!to) return to.error();
        return Wanted(run::HandOver{**to});
    }
    return Wanted();  // kill: the program ends and starts again, which is no command
}

void Storyteller::remember(const AnswerEntry& entry, const Run& run)
{
    const UnitSystem system = run.began().units;
    const auto say = [&](const Text& text) { m_happened.push_back(closedSentence(plain(text, system))); };
    const procedure::Step* step = run.plan().find(StepId{entry.step});
    const std::vector<Text> name{step == nullptr ? Text("%1", {entry.step})
                                                 : report::nameOf(*step, run.targets().find(step->target))};
    if (entry.act == "answer" || entry.act == "correct") {
        const run::StepStanding standing = run.standing(StepId{entry.step});
        if (!standing.answer) return;
        const verdict::Verdict verdict = standing.answer->judgement.verdict;
        const std::vector<Text> entered{run::enteredSaid(step, entry.entered)};
        if (verdict == verdict::Verdict::Near)
            say({"\u201c%1\u201d answered %2: within the limits, but nearer to one than the gauge can tell.",
                 {name, entered}});
        if (verdict == verdict::Verdict::Outside)
            say({"\u201c%1\u201d answered %2: outside the window.", {name, entered}});
    } else if (entry.act == "skip") {
        say({"\u201c%1\u201d does not apply: %2", {name, entry.reason}});
    } else if (entry.act == "deviation") {
        say({"\u201c%1\u201d: %2 accepted the deviation: %3",
             {name, actor(entry.supervisor).value()->name(), entry.reason}});
    } else if (entry.act == "change_roll") {
        // Of what had been done; what was still open is not done again.
        const auto* changed = std::get_if<run::InputsChanged>(&run.events().back().happening());
        say({"The roll was changed to %1; steps to be done again: %2.",
             {entry.roll, static_cast<std::int64_t>(changed == nullptr ? 0 : changed->stale.size())}});
    } else if (entry.act == "repeat_stage") {
        for (const procedure::PlanStage& stage : run.plan().stages)
            if (stage.id == entry.stage)
                say({"The stage \u201c%1\u201d is done again: %2.",
                     {std::vector<Text>{stage.title}, std::vector<Text>{run::causeSaid(entry.cause)}}});
    } else if (entry.act == "hand_over") {
        say({"Handed over to %1.", {run.operatorName()}});
    } else if (entry.act == "interrupt") {
        say({"Interrupted: %1.", {std::vector<Text>{run::interruptionSaid(entry.reason)}}});
    } else if (entry.act == "kill") {
        say("The program was ended in the middle and started again.");
    }
}

Storyteller::Outcome Storyteller::play(const AnswerEntry& entry, const Answers& answers, logbook::OpenRun& open)
{
    m_clock.advance(entry.seconds * 1000LL);
    const std::string by = entry.by.empty() ? m_by : entry.by;
    if (!entry.at.empty())
        if (const std::string next = nextName(open.run(), {}); next != entry.at)
            return refuse("demo.missing_answer", next,
                          {"This step is next, while %1 was to be done at %2.", {whereOf(answers, entry), entry.at}},
                          "Put its answer before that line.");
    if (!entry.step.empty()) {
        const StepId step{entry.step};
        if (open.run().plan().find(step) == nullptr)
            return refuse("demo.unknown_step", entry.step,
                          {"This run has no such step; it is answered in %1.", {whereOf(answers, entry)}},
                          "Correct the step's name in the answers file.");
        auto missing = leftOut(open.run(), step);
        if (!missing && entry.act == "answer") missing = leftUnsaid(open.run(), step);
        if (missing)
            return refuse("demo.missing_answer", missing->value,
                          {"This step has no answer that lets the run go on; the next line, %1, answers %2.",
                           {whereOf(answers, entry), entry.step}},
                          "Put its answer before that line.");
    }
    if (entry.again && open.run().standing(StepId{entry.step}).state != run::StepState::Outside)
        return refuse("demo.missing_answer", entry.step,
                      {"%1 takes this reading again, and there is none before it that came out outside.",
                       {whereOf(answers, entry)}},
                      "Put the first reading before that line, or take `again` out of it.");
    const std::string stoppedAt = entry.step.empty() ? nextName(open.run(), entry.act) : entry.step;
    if (entry.act == "kill") {
        const auto who = actor(by);
        if (!who) return who.error();
        auto again = logbook::OpenRun::resume(m_writer, open.run().id(), **who);
        if (!again) return again.error();
        open = std::move(*again);
    } else {
        const auto command = commandFor(entry);
        if (!command) return command.error();
        if (auto done = perform(open, **command, by, stoppedAt); !done) return done;
    }
    if (entry.act == "hand_over") m_by = entry.to;
    remember(entry, open.run());
    return Done{};
}

Result<Told> Storyteller::tell(const Answers& answers, const std::string& parent)
{
    m_by = answers.by;
    m_happened.clear();
    auto open = begin(answers, parent);
    if (!open) return open.error();
    for (const AnswerEntry& entry : answers.entries)
        if (auto done = play(entry, answers, *open); !done) return done.error();
    if (answers.ends == "abandoned") {
        if (auto done = perform(*open, run::Abandon{answers.reason}, m_by, nextName(open->run(), answers.file)); !done)
            return done.error();
        m_happened.push_back(closedSentence("Abandoned: " + answers.reason));
    } else if (auto done = perform(*open, run::SignOff{answers.remarks}, m_by, nextName(open->run(), answers.file));
               !done) {
        return done.error();
    }
    const auto who = signer(m_by);
    if (!who) return who.error();
    auto seal = open->seal(**who);
    if (!seal) return seal.error();
    return Told{open->run().id(), std::move(*seal), open->run(), std::move(m_happened)};
}

}  // namespace taut::app::verbs
