// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/sessions/practice_session.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <utility>

#include "app/seams/resources.h"
#include "core/base/clock.h"

namespace taut::app {

namespace {

constexpr double kTick = practice::World::kTick.si();
/// A picture every so many ms, of which work may take so much: the window answers meanwhile.
constexpr int kPictureMs = 33;
constexpr qint64 kWorkNs = 8'000'000;
/// Longer than this nobody was owed: the PC slept, or the window was moved.
constexpr double kMostPassed = 0.25;
/// So far the world may lag before it is said, and no further does it ever: it then goes slower than was asked.
constexpr double kMostOwed = 0.15;
constexpr int kTicksASample = 10;
constexpr std::size_t kSamples = 601;

double factorOf(Pace pace)
{
    switch (pace) {
    case Pace::Stopped: return 0;
    case Pace::Quarter: return 0.25;
    case Pace::Real: return 1;
    case Pace::FourTimes: return 4;
    case Pace::Fastest: return std::numeric_limits<double>::infinity();
    }
    return 0;
}

}  // namespace

std::filesystem::path usualPracticeLogbook() { return dataFolder() / "practice.logbook"; }

PracticeSession::PracticeSession(std::filesystem::path logbook, std::filesystem::path resources, QObject* parent)
    : QObject(parent)
{
    Session::Options options;
    options.logbook = std::move(logbook);
    options.resources = std::move(resources);
    options.begin = options.practice = true;
    m_runs = new Session(std::move(options), this);
    connect(m_runs, &Session::runChanged, this, &PracticeSession::lookAtRun);
    connect(m_runs, &Session::refused, this, [this](const Finding& finding) {
        // Once a run is open its page says what is refused there.
        if (m_lesson && !m_hadRun && !m_runOver) {
            end();
            emit refused(finding);
        }
    });
    m_timer.setTimerType(Qt::PreciseTimer);
    m_timer.setInterval(kPictureMs);
    connect(&m_timer, &QTimer::timeout, this, &PracticeSession::turn);
}

PracticeSession::~PracticeSession() = default;

const practice::Consequence* PracticeSession::happened() const
{
    if (!m_played || m_lookedAt >= world()->consequences().size()) return nullptr;
    return &world()->consequences()[m_lookedAt];
}

std::vector<practice::Action> PracticeSession::actions() const
{
    std::vector<practice::Action> all;
    if (!m_played) return all;
    double before = 0;
    for (const practice::Logged& one : m_played->log()) {
        if (!std::holds_alternative<practice::Deed>(one.act)) continue;
        all.push_back({Time::si(one.at - before), one.act});
        before = one.at;
    }
    return all;
}

void PracticeSession::begin(const Lesson& lesson, const practice::Who& person)
{
    auto basis = run::basisFor(lesson.sources, {});
    if (!basis) return emit refused(basis.error());
    auto played = practice::Lesson::begin(*std::move(basis), lesson.scenario);
    if (!played) return emit refused(played.error());
    end();
    m_lesson = lesson;
    m_played = *std::move(played);
    m_person = person;
    m_begun = SystemClock().now();
    m_earlier = m_runs->run() != nullptr ? m_runs->run()->id() : std::string();
    keep();
    m_runs->beginLesson(person.name, lesson.sources);
    emit begun();
    setPace(Pace::Real);
}

void PracticeSession::end()
{
    if (!m_lesson) return;
    setPace(Pace::Stopped);
    const bool attempted = !m_played->log().empty();
    if (attempted) {
        m_last = practice::attemptOf(*m_played, m_lesson->file, m_person, {}, m_begun, SystemClock().now());
        m_lastLesson = m_lesson;
        m_runs->keepAttempt(*m_last);
    }
    m_lesson.reset();
    m_played.reset();
    m_person = {};
    m_answers.clear();
    m_samples.clear();
    m_lookedAt = m_events = 0;
    m_ticks = 0;
    m_before = Pace::Stopped;
    m_owed = m_lastStep = 0;
    m_hadRun = m_runOver = false;
    emit ended(attempted);
}

Result<Done> PracticeSession::perform(const practice::Deed& deed)
{
    if (!m_played)
        return refuse("practice.no_lesson", deed.what, "No lesson is going on.", "Choose a scenario and begin.");
    if (happened() != nullptr)
        return refuse("practice.stands", deed.what, "Time stands still: something happened.",
                      "Look at what happened, then go on.");
    // What was tried and refused stands in the log as well: whoever plays it sees the same.
    auto done = m_played->perform(deed);
    emit changed();
    if (stopForWhatHappened()) emit happenedNow();
    return done;
}

void PracticeSession::name(const practice::Suspect& suspect)
{
    if (m_played) (void)m_played->perform(suspect);
}

void PracticeSession::askHelp(const std::string& step)
{
    if (!m_played || !m_played->perform(practice::Hint{step})) return;
    emit helped();
}

practice::Help PracticeSession::helpFor(const std::string& step) const
{
    return m_played ? m_played->helpFor(step) : practice::Help{};
}

void PracticeSession::setPace(Pace pace)
{
    // After what happened time goes on by goOn() alone.
    if (!m_played || happened() != nullptr) pace = Pace::Stopped;
    if (pace == m_pace) return;
    m_pace = pace;
    m_owed = 0;
    m_behind = false;
    m_clock.restart();
    pace == Pace::Stopped ? m_timer.stop() : m_timer.start();
    emit paceChanged();
}

void PracticeSession::goOn()
{
    if (happened() == nullptr) return;
    ++m_lookedAt;
    if (happened() != nullptr) return emit happenedNow();
    setPace(std::exchange(m_before, Pace::Stopped));
    emit changed();
}

/// One picture: as many ticks as the clock says, as long as there is room for them.
void PracticeSession::turn()
{
    const double passed = std::min(static_cast<double>(m_clock.nsecsElapsed()) / 1e9, kMostPassed);
    m_clock.restart();
    if (!m_played || m_pace == Pace::Stopped) return;
    m_owed = m_pace == Pace::Fastest ? factorOf(m_pace) : m_owed + passed * factorOf(m_pace);
    QElapsedTimer work;
    work.start();
    const std::int64_t before = m_ticks;
    // Half a tick: sums of shares of a second are never quite whole.
    while (m_owed > kTick * 0.5 && work.nsecsElapsed() < kWorkNs) {
        tick();
        m_owed -= kTick;
        if (stopForWhatHappened()) break;
    }
    m_lastStep = static_cast<double>(m_ticks - before) * kTick;
    const bool goes = m_pace != Pace::Stopped && m_pace != Pace::Fastest;
    const bool behind = goes && m_owed > kMostOwed;
    m_owed = goes ? std::min(m_owed, kMostOwed) : 0;
    if (behind != m_behind) {
        m_behind = behind;
        emit paceChanged();
    }
    if (m_ticks != before) emit changed();
    if (happened() != nullptr) emit happenedNow();
}

void PracticeSession::tick()
{
    m_played->advance(practice::World::kTick);
    if (++m_ticks % kTicksASample == 0) keep();
}

void PracticeSession::keep()
{
    const practice::World& now = *world();
    const practice::Line& line = now.line();
    StripSample sample{now.time(), {}, now.lateral().at};
    for (const practice::LineZone& zone : line.zones) {
        double most = 0;
        for (std::size_t s = zone.first; s <= zone.last; ++s)
            most = std::max(most, practice::tensionIn(line.web, now.web(), s).si());
        sample.tensions.push_back(most);
    }
    m_samples.push_back(std::move(sample));
    if (m_samples.size() > kSamples) m_samples.pop_front();
}

bool PracticeSession::stopForWhatHappened()
{
    if (happened() == nullptr) return false;
    if (m_pace != Pace::Stopped) {
        m_before = m_pace;
        m_pace = Pace::Stopped;
        m_timer.stop();
        emit paceChanged();
    }
    return true;
}

/// Answers are given while the world's time stands where it stands when they are on disk.
void PracticeSession::lookAtRun()
{
    const run::Run* run = m_runs->run();
    if (run == nullptr && m_hadRun) {
        m_hadRun = false;
        m_runOver = true;
        emit runOver();
    }
    // Something of the lesson before may still be on its way.
    if (run == nullptr || !m_played || run->id() == m_earlier) return;
    m_hadRun = true;
    for (; m_events < run->events().size(); ++m_events)
        if (const auto* said = std::get_if<run::Answered>(&run->events()[m_events].happening())) {
            m_answers.push_back({world()->time(), said->step, m_events});
            answered(*said);
        }
}

/// The press is asked whether it is so.
void PracticeSession::answered(const run::Answered& said)
{
    const std::size_t before = m_played->contradictions().size();
    (void)m_played->perform(practice::Answer{said.step.value, said.entered});
    if (m_played->contradictions().size() > before && practice::showsAtOnce(m_played->scenario()))
        emit contradicted(m_played->contradictions().back());
}

}  // namespace taut::app
