// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <deque>
#include <optional>
#include <string>
#include <vector>

#include <QElapsedTimer>
#include <QObject>
#include <QTimer>

#include "app/sessions/lesson.h"
#include "core/practice/attempt.h"
#include "core/practice/lesson.h"

namespace taut::app {

/// How fast time goes on at the practice press.
enum class Pace : std::uint8_t { Stopped, Quarter, Real, FourTimes, Fastest };

/// What a strip chart keeps of one moment of a world, SI.
struct StripSample {
    double at = 0;                 ///< s
    std::vector<double> tensions;  ///< of each zone of the line: the largest of its spans
    std::vector<double> places;    ///< where the web lies at each roller and at the rewind, to the drive side
};
/// An answer given to a step while somebody practised.
struct GivenAnswer {
    double at = 0;  ///< s of the world
    procedure::StepId step;
    std::size_t event = 0;  ///< of the practice run
};

/// A lesson: a press whose time goes on in whole ticks by the clock of this PC, what was done there and when, and the
/// run of the practice logbook that is answered beside it, held against each other (practice::Lesson). Screens show
/// what this holds and ask it.
class PracticeSession : public QObject {
    Q_OBJECT

public:
    /// `runs` in a practice logbook: usually usualPracticeLogbook().
    PracticeSession(std::filesystem::path logbook, std::filesystem::path resources, QObject* parent = nullptr);
    ~PracticeSession() override;

    /// The practice logbook's own session; nothing of the shop's is known to it but the resources.
    [[nodiscard]] Session* runs() { return m_runs; }
    /// The lesson that is going on, for as long as one is.
    [[nodiscard]] const Lesson* lesson() const { return m_lesson ? &*m_lesson : nullptr; }
    [[nodiscard]] const practice::World* world() const { return m_played ? &m_played->world() : nullptr; }
    /// What was done and said in it, and what the press said to that.
    [[nodiscard]] const practice::Lesson* played() const { return m_played ? &*m_played : nullptr; }
    /// Who practises: their id and name in the shop.
    [[nodiscard]] const practice::Who& person() const { return m_person; }
    /// Everything that was done or tried in vain at the press, each with the time that went on before it: played from
    /// the beginning it leads to the same world.
    [[nodiscard]] std::vector<practice::Action> actions() const;
    /// The answers given to steps, in the order in which they reached the disk.
    [[nodiscard]] const std::vector<GivenAnswer>& answeredAt() const { return m_answers; }
    /// The last minute of the world's time, ten times a second.
    [[nodiscard]] const std::deque<StripSample>& samples() const { return m_samples; }
    /// Its run was signed, given up or left: the press goes on without one.
    [[nodiscard]] bool isRunOver() const { return m_runOver; }
    /// What happened and was not yet looked at; nullptr = nothing.
    [[nodiscard]] const practice::Consequence* happened() const;

    /// Begins: builds the world, and a run in the practice logbook. Emits begun, or refused.
    void begin(const Lesson& lesson, const practice::Who& person);
    /// The lesson is over. An attempt in which something was done or said is kept in the practice logbook, sealed, and
    /// is last() from then on.
    void end();
    /// The attempt that ended last here; nullptr before there is one.
    [[nodiscard]] const practice::Attempt* last() const { return m_last ? &*m_last : nullptr; }
    /// The files that it went by.
    [[nodiscard]] const Lesson* lastLesson() const { return m_lastLesson ? &*m_lastLesson : nullptr; }
    /// Does it at this moment. A refusal is the press's, and is kept among the actions as well.
    [[nodiscard]] Result<Done> perform(const practice::Deed& deed);
    /// Something is said to be wrong at the press.
    void name(const practice::Suspect& suspect);
    /// Help with this step is asked for: all of it is shown from now on, and it counts half.
    void askHelp(const std::string& step);
    /// What of this step is shown.
    [[nodiscard]] practice::Help helpFor(const std::string& step) const;

    void setPace(Pace pace);
    [[nodiscard]] Pace pace() const { return m_pace; }
    /// The PC does not keep up with the pace that was chosen.
    [[nodiscard]] bool behind() const { return m_behind; }
    /// How far time went on in the last picture, s.
    [[nodiscard]] double lastStep() const { return m_lastStep; }
    /// What happened was looked at: time may go on as it did before.
    void goOn();

signals:
    void begun();
    /// attempted: something was done or said in it, and last() tells of it.
    void ended(bool attempted);
    void runOver();
    /// Time went on, or something was done.
    void changed();
    /// Something came of it: time stands still until goOn().
    void happenedNow();
    void paceChanged();
    /// More help is given than before.
    void helped();
    /// The press said otherwise than an answer did, and the trainee is to know at once.
    void contradicted(const taut::practice::Contradiction& by);
    /// The attempt is sealed in the practice logbook.
    void kept();
    void refused(const taut::Finding& finding);

private:
    void turn();
    void tick();
    void keep();
    void lookAtRun();
    [[nodiscard]] bool stopForWhatHappened();
    void answered(const run::Answered& said);
    Session* m_runs;
    std::optional<Lesson> m_lesson;
    std::optional<practice::Lesson> m_played;
    practice::Who m_person;
    Instant m_begun;
    std::optional<practice::Attempt> m_last;
    std::optional<Lesson> m_lastLesson;
    std::string m_earlier;  // the run of the lesson before
    std::vector<GivenAnswer> m_answers;
    std::deque<StripSample> m_samples;
    std::size_t m_lookedAt = 0;  // of what happened
    std::size_t m_events = 0;    // of the run, that were looked at
    std::int64_t m_ticks = 0;
    Pace m_pace = Pace::Stopped, m_before = Pace::Stopped;
    double m_owed = 0, m_lastStep = 0;
    bool m_behind = false, m_hadRun = false, m_runOver = false;
    QTimer m_timer;
    QElapsedTimer m_clock;
};

/// $XDG_DATA_HOME/tautweb/practice.logbook
[[nodiscard]] std::filesystem::path usualPracticeLogbook();

}  // namespace taut::app
