// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <functional>
#include <memory>
#include <optional>

#include <QObject>
#include <QString>

#include "core/history/waiting.h"
#include "core/logbook/copy_keeper.h"
#include "core/logbook/open_run.h"

namespace taut::practice {
struct Attempt;
}  // namespace taut::practice

namespace taut::app {

/// A copy that somebody thinks of restoring from, beside what lies here now.
struct Weighed {
    std::filesystem::path copy;
    std::uint64_t seals{}, sealsHere{};
};

/// The logbook, who is signed in, and the open run: the only object of the program that changes anything. Hashing,
/// writing and sealing happen on its own thread; the signals arrive on the window's. A screen shows what this holds and
/// asks it.
class Session : public QObject {
    Q_OBJECT

public:
    struct Options {
        std::filesystem::path logbook;
        std::filesystem::path resources;  ///< presses, substrates, procedures, demo
        bool loadDemo = false;            ///< fills an empty logbook with the demo shop
        int syncDelayMs = 0;              ///< tests
        bool begin = false;               ///< a logbook that is not there is begun
        bool practice = false;            ///< a practice logbook: nothing in it ever happened on a press
    };
    explicit Session(Options options, QObject* parent = nullptr);
    ~Session() override;

    /// Opens the logbook (takes the pen); emits opened or refused.
    void open();
    /// Opens this file instead of the one that could not be opened.
    void openAt(const std::filesystem::path& logbook);
    /// Begins a new logbook there, when none is, and opens it.
    void beginLogbook(const std::filesystem::path& logbook);
    /// Opens a logbook that cannot be written in, or that somebody else writes in, for looking: nobody signs in and
    /// nothing is entered, reader() shows what is there, notes() what of it is not. Emits openedToRead or refused;
    /// opening it after all, or another one, ends it.
    void openToRead();
    /// Emits once more what stands (opened, who is signed in, the run): for a window that was made anew.
    void sayAgain();
    /// For writing.
    [[nodiscard]] bool isOpen() const;
    /// Open for looking only.
    [[nodiscard]] bool onlyReads() const;
    /// While something is asked of the disk.
    [[nodiscard]] bool busy() const;
    /// Who is signed in; nullopt = nobody.
    [[nodiscard]] const std::optional<people::Actor>& actor() const;
    [[nodiscard]] const run::Run* run() const;  ///< the open run, or nullptr
    /// For lists; nullptr until open, for reading at least. Calls are short (see records::Reader) and allowed on the
    /// window's thread.
    [[nodiscard]] const records::Reader* reader() const;
    /// Newest editions of "press", "job", "substrate" or "procedure".
    [[nodiscard]] std::vector<logbook::Definition> definitions(const char* what) const;
    /// Ids of the runs that nobody has ended.
    [[nodiscard]] std::vector<std::string> openRuns() const;
    /// Presses out of use.
    [[nodiscard]] std::vector<records::Withdrawal> withdrawals() const;
    /// Everybody whom the logbook knows, and how their doors stand.
    [[nodiscard]] const std::vector<people::PersonRecord>& people() const;
    /// Who has chosen, who was only invited, who is shut out.
    [[nodiscard]] const std::vector<logbook::DoorState>& doors() const;
    /// With which it was made; the logbook is the one open now.
    [[nodiscard]] const Options& options() const { return m_options; }

    /// Emits actorChanged, or refused with sign_in.refused, sign_in.wait or sign_in.shut.
    void signIn(const QString& personId, const QString& pin);
    /// Locks the screen; a run stays open.
    void signOut();
    /// Emits runChanged, or refused.
    void begin(const logbook::OpenRun::Beginning& beginning);
    /// A run to practise with, in a practice logbook, which is opened, or begun, where it is not open yet: in it this
    /// person is known by their name, as an operator, with secrets that everybody knows (session_practice.cpp). Runs
    /// that an earlier lesson left open end as abandoned. Emits opened where it was not, and runChanged, or refused.
    void beginLesson(const std::string& person, const run::Sources& sources);
    /// An attempt at the practice press goes into the practice logbook. Emits sealed, or refused.
    void keepAttempt(const practice::Attempt& attempt);
    /// Opens the key of whoever is signed in for one signature in another logbook, and hands it over on the window's
    /// thread; or emits refused.
    using UseKey = std::function<void(const std::shared_ptr<const people::Signer>&)>;
    void lendKey(const QString& secret, UseKey use);
    /// What a trainer says of an attempt of this practice logbook, which is opened where it is not open yet. Emits
    /// observed, or refused.
    void observe(quint64 attempt, const seal::Observation& observation,
                 const std::shared_ptr<const people::Signer>& by);
    /// Takes an open run up again. Emits runChanged, or refused.
    void resume(const QString& runId);
    /// Interrupts the run, if it is theirs who leave, keeps it open on disk and shows the start page.
    void leaveRun();
    /// By whoever is signed in. Emits runChanged once it is on disk, or refused.
    void perform(const run::Command& command);
    /// Attaches a file to a step of the run ("" = to the run): it is read on the session's thread. Emits runChanged, or
    /// refused with what reading a file or attaching it refuses.
    void attach(const QString& stepId, const std::filesystem::path& file);
    /// Commands that need a second person: signs them in first (their PIN never leaves this call).
    using WithSecond = std::function<run::Command(const people::Actor&)>;
    void performWith(const QString& personId, const QString& pin, WithSecond make);
    /// Commands that a second person signs: opens their key with their passphrase, which never leaves this call.
    using WithSigner = std::function<run::Command(std::shared_ptr<const people::Signer>)>;
    void performSigned(const QString& personId, const QString& passphrase, WithSigner make);
    /// Performs SignOff or Abandon and seals with the signature of whoever is signed in, whose passphrase it is:
    /// whoever walked up to an unlocked screen cannot sign for somebody else. Emits sealed.
    void finish(const run::Command& command, const QString& passphrase);
    /// Signs the run off with a supervisor beside whoever signs, who shows that they are there with their PIN.
    void finishBeside(const QString& remarks, const QString& personId, const QString& pin, const QString& passphrase);
    /// Takes a press out of use, or gives it back. Emits withdrawalsChanged, or refused.
    void withdraw(const QString& press, const QString& reason);
    void giveBack(const QString& press, const QString& done);

    /// The first person of a logbook, a supervisor, who is signed in then; the procedures that come with the program
    /// are taken in.
    void enrolFirst(const QString& name, const people::Chosen& chosen);
    /// First use, with the code that a supervisor gave: they are signed in then.
    void choose(const QString& personId, const QString& code, const people::Chosen& chosen);
    /// These sign with the secret of whoever is signed in. Emit shopChanged; the first two invited with a code to be
    /// shown once.
    void enrol(const QString& name, people::Role role, const QString& secret);
    void inviteAgain(const QString& personId, const QString& secret);
    void changePerson(const people::PersonRecord& person, const QString& secret);
    /// A badge for whoever is signed in; emits badgeMade with its code, to be printed once.
    void giveBadge(const QString& secret, const QString& pin);
    /// Asks how everybody's competence stands at each press; emits competencesTold.
    void askCompetences();
    /// That somebody may sign set-ups of a press alone, or may not any more, signed by whoever is signed in. Emit
    /// competencesTold and shopChanged, or refused.
    void qualify(const logbook::Qualifying& who, const QString& secret);
    void endCompetence(const std::string& personId, const std::string& press, const QString& reason,
                       const QString& secret);
    /// What follows a sealed run, signed by whoever is signed in. Emit recordChanged.
    void review(const QString& runId, const seal::Review& review, const QString& secret);
    /// Accepts several with one remark; of runs that were not opened as they stand none is accepted
    /// (history/waiting.h). Emits recordChanged of the last one accepted, and refused where one of them stopped it.
    void acceptAll(const std::vector<std::string>& runs, const std::string& note, const history::Opened& opened,
                   const QString& secret);
    void correct(const QString& runId, const seal::Correction& correction, const QString& secret);
    void voidRun(const QString& runId, const QString& reason, const QString& secret);
    /// Another PIN, passphrase or both ("" = as it was) for whoever is signed in, who shows that they know the old
    /// ones. Emits secretsChanged.
    void chooseAgain(const people::Chosen& old, const people::Chosen& anew);

    /// The folder in which a mirror is kept from now on, and the next time the program starts: "" = none. A supervisor.
    void keepMirror(const QString& folder);
    /// How the mirror stands as far as is known; nullopt when none is kept. Looked after behind the back of everything
    /// else: mirrorChanged tells.
    [[nodiscard]] const std::optional<logbook::MirrorState>& mirror() const;
    /// The folder into which a copy is made every week from now on, and the next time the program starts: "" = none. A
    /// supervisor.
    void keepCopies(const QString& folder);
    /// How the weekly copies stand as far as is known; nullopt when none are made. As of the mirror: copiesChanged.
    [[nodiscard]] const std::optional<logbook::CopyState>& copies() const;
    /// What was found when the logbook was opened, to read only or as usual, and does not stand in the way.
    [[nodiscard]] const Findings& notes() const;
    /// A whole copy, verified; emits copied. A supervisor.
    void copyTo(const QString& folder);
    /// Looks what a copy or a mirror holds, before anybody restores from it; emits weighed. A supervisor, and not while
    /// a run is open.
    void weigh(const QString& copy);
    /// Makes the logbook anew of it, signed for by the passphrase of the supervisor who is signed in; what lay there is
    /// kept beside it. Everybody signs in again. Emits restored.
    void restore(const QString& copy, const QString& secret);
    /// Takes a press, job, substrates or a procedure in from TOML files; all of a file or none of it.
    void takeIn(const std::vector<std::filesystem::path>& files);
    /// Takes in what stands in this text, written here and not in a file. Emits shopChanged, or refused.
    void keepText(const std::string& toml);

signals:
    /// For writing, or not: isOpen() tells.
    void opened();
    /// The history alone may be looked at.
    void openedToRead();
    /// Something is asked of the disk, or all of it is done.
    void busyChanged(bool busy);
    /// Somebody signed in or out.
    void actorChanged();
    void runChanged();  ///< began, resumed, event on disk, left
    /// The open run ended; its number in the chain.
    void sealed(quint64 seq);
    /// A press was taken out of use or given back.
    void withdrawalsChanged();
    void shopChanged();                        ///< people, their doors, or definitions
    void recordChanged(const QString& runId);  ///< a sealed run was reviewed, corrected or made void
    /// The newest that was said of each person at each press.
    void competencesTold(const std::vector<taut::logbook::CompetenceStanding>& all);
    /// Somebody looked at an attempt, by the number of its seal, and signed for it.
    void observed(quint64 attempt);
    /// The code is shown once, to be handed on.
    void invited(const QString& name, const QString& code);
    /// The code is shown once, to be printed.
    void badgeMade(const QString& code);
    /// badgeGone: an earlier badge no longer signs in.
    void secretsChanged(bool badgeGone);
    /// How the mirror, or the weekly copies, stand.
    void mirrorChanged();
    void copiesChanged();
    /// The copy was written and verified.
    void copied(const taut::logbook::Copied& copy);
    /// What a copy holds, before it is restored.
    void weighed(const taut::app::Weighed& weighed);
    /// The logbook was made anew of a copy.
    void restored(const taut::logbook::Restored& restored);
    void refused(const taut::Finding& finding);  ///< a sentence to show beside what was asked; nothing entered is lost

private:
    void askMirror();
    void tendCopies(bool look);
    struct Impl;
    Options m_options;
    std::unique_ptr<Impl> m_impl;
};

}  // namespace taut::app
