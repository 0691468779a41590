// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/made/player.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <set>

#include "app/made/gauge.h"
#include "core/run/remedy.h"

namespace taut::app::made {

namespace {

using procedure::Step;
using procedure::StepKind;

constexpr int kMostCommands = 900;
constexpr std::array kDeviationReasons{"Looked at it running for two hundred metres: the print holds its place",
                                       "Within what this job bears, checked on the first copies",
                                       "The gauge is known to read high since its last check",
                                       "Joint is flat and trails, the roll runs to its end with it",
                                       "Customer takes it so for this lot, asked by telephone"};
constexpr std::array kCorrectionReasons{"Misread the scale", "Typed the figure of the roll before",
                                        "Read on the wrong gauge"};
constexpr std::array kHelpedWords{"Cleaned the roller before the table", "Let the web rest for a minute",
                                  "Took the next tape from a fresh roll"};

/// Somebody at a press, and the time that goes by.
class Player {
public:
    Player(const Tale& tale, const Shop& shop, run::Run run)
        : m_tale(tale),
          m_shop(shop),
          m_chance(shop.seed(), tale.stream),
          m_run(std::move(run)),
          m_now(tale.begin),
          m_who(tale.by)
    {
        // Some work faster than others; the same person always does.
        m_pace = 0.9 + 0.05 * static_cast<double>(tale.by % 5);
        m_stepAt = static_cast<std::size_t>(tale.trouble.when * static_cast<double>(m_run.plan().steps.size()));
    }

    Result<run::Run> toItsEnd()
    {
        for (int guard = 0; guard < kMostCommands; ++guard) {
            if (m_run.phase() != run::Phase::Running) return m_run;
            auto done = one();
            if (!done) {
                Finding why = done.error();
                why.subject = m_run.id() + " " + why.subject;
                return why;
            }
        }
        return refuse("history.endless", m_run.id(), {"Run %1 does not come to an end.", {m_run.id()}});
    }

private:
    using Outcome = Result<Done>;

    [[nodiscard]] const people::Actor& actor() const { return m_shop.operatorAt(m_who).actor(); }

    /// The answer that was just taken, where it is the setting of the unwind's brake.
    void keepSetting()
    {
        const auto* read = std::get_if<run::Answered>(&m_run.events().back().happening());
        const Step* step = read == nullptr ? nullptr : m_run.plan().find(read->step);
        if (step != nullptr && step->target == "tension.unwind.setting" && read->value)
            m_brakeSetting = read->value->si();
    }

    Outcome does(const run::Command& command, double seconds)
    {
        m_now.utcMs += static_cast<std::int64_t>(std::llround(seconds * 1000));
        const run::Stamp stamp{m_run.events().size() + 1, m_now.utcMs, m_now.offsetMinutes, {}, {}, {}};
        const auto event = run::decide(m_run, command, stamp, actor());
        if (!event) return event.error();
        m_run = m_run.after(*event);
        keepSetting();
        return Done{};
    }

    /// What is to be done next: something that comes between, a step, or the end.
    Outcome one()
    {
        const auto next = m_run.next();
        if (m_tale.trouble.webBreak && !m_broken && isAfterIdle()) {
            m_broken = true;
            return does(run::RepeatStage{stageToRepeat().id, "web_break"}, taking(240));
        }
        if (!next) return does(run::SignOff{m_tale.trouble.remarks}, taking(25));
        const Step step = *m_run.plan().find(*next);
        if (auto between = comesBetween(step)) return *std::move(between);
        return answer(step);
    }

    /// nullopt: nothing does.
    std::optional<Outcome> comesBetween(const Step& step)
    {
        const bool lifted = m_run.conditions().contains("roll_lifted");
        if (!m_handedOver && m_now.utcMs > m_tale.shiftEndMs && !lifted) {
            m_handedOver = true;
            const Index from = std::exchange(m_who, m_tale.next);
            const people::Actor& to = actor();
            m_who = from;
            auto done = does(run::HandOver{to}, taking(90));
            m_who = m_tale.next;
            return done;
        }
        return atItsTime(step, lifted);
    }

    /// A web that parted is joined again, and where this run joined none its tension is set anew.
    const procedure::PlanStage& stageToRepeat()
    {
        const std::vector<procedure::PlanStage>& stages = m_run.plan().stages;
        for (const char* id : {"splice", "tension"})
            for (const procedure::PlanStage& stage : stages)
                if (stage.id == id) return stage;
        return stages.front();
    }

    /// Whether the web has run and may have parted: everything up to the tension's end is closed.
    bool isAfterIdle()
    {
        const procedure::Plan& plan = m_run.plan();
        return std::none_of(plan.steps.begin(), plan.steps.end(), [&](const Step& step) {
            return plan.stages[plan.stageOf(step)].id == "tension" && run::isOpen(m_run.stateOf(step.id));
        });
    }

    std::optional<Outcome> atItsTime(const Step& step, bool lifted)
    {
        const Trouble& trouble = m_tale.trouble;
        const bool now = m_answered >= m_stepAt;
        if (now && !trouble.note.empty() && !std::exchange(m_noted, true))
            return does(run::Note{step.id, trouble.note}, taking(20));
        if (now && !trouble.interrupted.empty() && !lifted && !std::exchange(m_interrupted, true)) return interrupt();
        if (now && !trouble.abandoned.empty() && !lifted) return does(run::Abandon{trouble.abandoned}, taking(300));
        if (!m_lastReading.empty() && trouble.corrected && now && !std::exchange(m_corrected, true)) return correct();
        const bool mayBeSkipped = step.id.value == "tension.settings.register/2" && step.waivable && !step.vital;
        if (mayBeSkipped && !trouble.skipped.empty() && m_run.stateOf(step.id) == run::StepState::Open)
            return does(run::SkipStep{step.id, trouble.skipped, {}}, taking(10));
        return std::nullopt;
    }

    Outcome interrupt()
    {
        auto stopped = does(run::Interrupt{m_tale.trouble.interrupted}, taking(15));
        if (!stopped) return stopped;
        const double away = m_chance.between(4, 45) * 60;
        std::vector<std::string> stated(std::begin(run::kMakeSafe), std::end(run::kMakeSafe));
        return does(run::Resume{std::move(stated)}, away);
    }

    Outcome correct()
    {
        const Step* step = m_run.plan().find({m_lastReading});
        const auto read = step == nullptr ? std::nullopt : read_(*step, false);
        if (!read || m_run.stateOf(step->id) != run::StepState::Answered) return Done{};
        auto done = does(run::Correct{step->id, read->entered, m_chance.oneOf(kCorrectionReasons)}, taking(30));
        // What was read may be of another target by now: then it stays as it is.
        return done ? done : Outcome(Done{});
    }

    std::optional<Reading> read_(const Step& step, bool outside)
    {
        const targets::Target* target = m_run.targets().find(step.target);
        if (target == nullptr) return std::nullopt;
        // What a display shows follows from the setting that the brake was given, not from what it should have been.
        const bool shown = step.target == "tension.unwind.total" && m_brakeSetting;
        const auto there = shown ? tensionMade(m_run.targets(), *m_brakeSetting, m_tale) : std::nullopt;
        const auto gauge = Gauge::at(*target, m_run.began().units);
        return gauge ? gauge->read(m_tale, outside, m_chance, there) : std::nullopt;
    }

    Outcome answer(const Step& step)
    {
        if (const auto closed = run::closedBecause(m_run, step.id); closed && closed->code == "gate.stop_held")
            if (auto done = giveUpStops(); !done) return done;
        ++m_answered;
        if (step.kind == StepKind::Reading) return reading(step);
        return does(run::Answer{step.id, wordFor(step), statesFor(step)}, secondsOf(step));
    }

    Outcome giveUpStops()
    {
        while (!m_run.heldStops().empty()) {
            const std::string holder = m_run.heldStops().front().holder;
            run::GiveUpStop given{holder, {}, {}};
            if (const people::Signer* own = m_shop.named(holder)) given.saidBy = own->actor();
            if (auto done = does(given, taking(8)); !done) return done;
        }
        return Done{};
    }

    [[nodiscard]] std::string wordFor(const Step& step)
    {
        if (step.kind == StepKind::Motion) return "done";
        if (step.kind == StepKind::Hold) return actor().name();
        if (step.kind == StepKind::Scan) return tag();
        if (step.kind != StepKind::Choice) return "yes";
        const targets::Target* target = m_run.targets().find(step.target);
        if (target != nullptr && target->ready() != nullptr)
            if (const auto* word = std::get_if<std::string>(&target->ready()->value)) return *word;
        std::vector<std::string> words;
        for (const procedure::Choice& choice : step.choices)
            if (!choice.stops) words.push_back(choice.word);
        // The first is the usual one. How a roll looks changes from roll to roll; that it was opened does not.
        const bool varies = step.id.value.ends_with(".roll_condition") || step.id.value.ends_with(".old_roll");
        if (words.empty()) return {};
        return varies && m_chance.is(0.25) ? words[m_chance.below(words.size())] : words.front();
    }

    std::string tag()
    {
        Findings notes;
        const auto roll = inputs::readRoll(m_run.sources().roll.text, m_run.sources().roll.id, notes);
        return roll && !roll->tag.empty() ? roll->tag : m_run.sources().roll.id;
    }

    static std::vector<std::string> statesFor(const Step& step)
    {
        std::vector<std::string> stated;
        if (step.kind == StepKind::Motion)
            for (const std::string& need : step.needs)
                if (procedure::isMachineState(need)) stated.push_back(need);
        return stated;
    }

    /// nullptr: this reading is right at once, or chance has it.
    [[nodiscard]] const Bad* badAt(const Step& step) const
    {
        if (!m_tale.trouble.bad) return nullptr;
        for (const Bad& one : *m_tale.trouble.bad)
            if (one.target == step.target) return &one;
        return nullptr;
    }

    Outcome reading(const Step& step)
    {
        const Bad* bad = badAt(step);
        // What makes something known of the roll is read right at once: all that follows would be anew.
        const bool outside = m_tale.trouble.bad ? bad != nullptr && m_bad.insert(step.target).second
                                                : step.fills.empty() && m_chance.is(outsideShare(step.target, m_tale));
        std::optional<Reading> read;
        if (outside) read = read_(step, true);
        bool done = false;
        if (read) done = static_cast<bool>(does(run::Answer{step.id, read->entered, {}}, secondsOf(step)));
        if (done && m_run.stateOf(step.id) == run::StepState::Outside) return putRight(step);
        if (done) return Done{};
        const auto usual = read_(step, false);
        // Of a draw without an aim the display shows a share of the speed.
        const std::string unaimed = step.target.ends_with(".setting") ? "0.2 %" : "1 mm";
        const std::string entered = usual ? usual->entered : unaimed;
        if (auto answered = does(run::Answer{step.id, entered, {}}, secondsOf(step)); !answered) return answered;
        if (m_run.stateOf(step.id) == run::StepState::Outside) return putRight(step);
        if (step.fills.empty()) m_lastReading = step.id.value;
        return Done{};
    }

    /// Where a display shows what a setting makes, nobody accepts a wrong one.
    [[nodiscard]] bool isShown(const Step& step) const
    {
        const auto& steps = m_run.plan().steps;
        return step.target == "tension.unwind.setting" &&
               std::any_of(steps.begin(), steps.end(),
                           [](const Step& other) { return other.target == "tension.unwind.total"; });
    }

    /// A reading that came out outside: accepted by a supervisor at times, else read again until it is right, and what
    /// helped is said.
    Outcome putRight(const Step& step)
    {
        const Bad* bad = badAt(step);
        if (step.waivable && !isShown(step) &&
            (m_tale.trouble.bad ? bad != nullptr && bad->accepted : m_chance.is(0.3))) {
            run::AcceptDeviation accepted{step.id, m_chance.oneOf(kDeviationReasons),
                                          m_shop.supervisor(m_chance.below(2))};
            if (does(accepted, taking(200))) return Done{};
        }
        constexpr int kTries = 5;
        for (int i = 0; i < kTries && m_run.stateOf(step.id) == run::StepState::Outside; ++i) {
            // After an interruption what was read may be said again as it is; read anew, all must hold that it needs.
            if (const auto lapsed = run::lapsedBefore(m_run, step.id))
                if (auto done = answer(*m_run.plan().find(*lapsed)); !done) return done;
            const auto read = read_(step, false);
            if (!read) break;
            if (auto again = does(run::Answer{step.id, read->entered, {}}, taking(75)); !again) return again;
        }
        const bool silent = m_tale.trouble.bad ? bad == nullptr || !bad->helped : m_chance.is(0.15);
        if (!run::cameRight(m_run, step.id) || silent) return Done{};
        // The first remedy of a list helps more often than the last.
        const double which = m_chance.unit();
        const auto remedy = static_cast<int>(which * which * static_cast<double>(step.tries.size())) + 1;
        if (step.tries.empty() || (!m_tale.trouble.bad && m_chance.is(0.1)))
            return does(run::SayHelped{step.id, 0, m_chance.oneOf(kHelpedWords)}, taking(12));
        return does(run::SayHelped{step.id, remedy, {}}, taking(6));
    }

    /// So many seconds, more or less.
    double taking(double seconds) { return seconds * m_pace * std::exp(0.25 * m_chance.normal()); }

    double secondsOf(const Step& step)
    {
        const procedure::Plan& plan = m_run.plan();
        const std::string& stage = plan.stages[plan.stageOf(step)].id;
        const double slow = isSlowAtNight(stage, m_shop.isBrief()) ? m_tale.slow : 1;
        double base = 12;
        if (step.kind == StepKind::Reading) base = 24;
        if (step.kind == StepKind::Motion) base = 25;
        if (step.hands) base += 20;
        const targets::Target* target = m_run.targets().find(step.target);
        const Quantity* moves = target != nullptr && step.kind == StepKind::Motion ? target->quantity() : nullptr;
        double least = step.waitSeconds;
        if (moves != nullptr && moves->kind() == Kind::Time) least = moves->si();
        return least + taking(base) * slow;
    }

    const Tale& m_tale;
    const Shop& m_shop;
    Chance m_chance;
    run::Run m_run;
    Instant m_now;
    Index m_who;
    double m_pace = 1;
    std::size_t m_stepAt = 0, m_answered = 0;
    bool m_handedOver = false, m_broken = false, m_noted = false, m_interrupted = false, m_corrected = false;
    std::string m_lastReading;
    std::optional<double> m_brakeSetting;  ///< as it was read last
    std::set<std::string> m_bad;           ///< targets that were read outside as wished for
};

/// Only the targets that a step of the plan names, and nothing that is said of the others.
void keepUsed(run::Basis& basis)
{
    std::erase_if(basis.targets.all, [&](const targets::Target& target) {
        return std::none_of(basis.plan.steps.begin(), basis.plan.steps.end(),
                            [&](const Step& step) { return step.target == target.id; });
    });
    basis.targets.schedules.clear();
    basis.targets.findings.clear();
}

}  // namespace

Result<run::Run> play(const Tale& tale, const Shop& shop, const run::Run* parent)
{
    const run::BasisQuestion question{tale.kind, true, {}};
    auto basis = run::basisFor(shop.sources(tale), question);
    if (!basis) return basis.error();
    if (shop.isBrief()) keepUsed(*basis);
    const people::Actor& by = shop.operatorAt(tale.by).actor();
    const auto event = run::begin(*basis, {tale.run, shop.workplace(), false, question, parent},
                                  {1, tale.begin.utcMs, tale.begin.offsetMinutes, {}, {}, {}}, by);
    if (!event) return event.error();
    return Player(tale, shop, run::Run::fold(std::span(&*event, 1))).toItsEnd();
}

}  // namespace taut::app::made
