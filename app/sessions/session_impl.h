// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <map>
#include <utility>

#include <QThread>

#include "app/sessions/session.h"
#include "core/base/clock.h"
#include "core/base/id_source.h"

namespace taut::app {

inline constexpr const char* kDefinitionKinds[] = {"press", "job", "substrate", "procedure"};

/// What only the session's own thread touches, and what only the window's thread sees. Between them go values.
struct Session::Impl {
    // The session's thread.
    struct Alive {
        SystemClock clock;
        RandomIds ids;
        std::unique_ptr<logbook::Writer> writer;
        std::optional<people::Actor> actor;
        std::optional<logbook::OpenRun> run;
        Findings readNotes;  ///< of what was last opened to read only
    };
    /// A logbook that was opened to read only, for the window's thread from then on.
    struct ToRead {
        std::filesystem::path file;
        std::shared_ptr<records::Reader> reader;
    };
    /// What the window may look at after a call: copied whole, on the window's thread.
    struct Seen {
        bool open = false;
        std::optional<people::Actor> actor;
        std::shared_ptr<const run::Run> run;
        std::vector<std::string> openRuns;
        std::vector<records::Withdrawal> withdrawals;
        std::map<std::string, std::vector<logbook::Definition>> definitions;
        std::vector<people::PersonRecord> people;
        std::vector<logbook::DoorState> doors;
        Findings notes;
    };
    /// How a call ended: at most one refusal, and what to say besides.
    struct Outcome {
        std::optional<Finding> refusal;
        bool opened = false, actorChanged = false, runChanged = false, withdrawalsChanged = false, shopChanged = false;
        std::optional<ToRead> toRead;
        std::optional<std::uint64_t> sealed;
        std::optional<std::pair<std::string, std::string>> invited;  ///< name, code
        std::optional<std::string> badge;
        std::optional<std::string> recordOf;  ///< the run that something was said of
        std::optional<bool> secretsChanged;   ///< whether a badge is gone with them
        std::optional<std::uint64_t> observed;
        std::optional<std::vector<logbook::CompetenceStanding>> competences;
        std::function<void()> then;  ///< done last, on the window's thread
        std::optional<logbook::Copied> copied;
        std::optional<Weighed> weighed;
        std::optional<logbook::Restored> restored;
        bool triedRestore = false;  ///< whatever came of it
    };
    using Call = std::function<Outcome(Alive&)>;

    Session* session;
    QThread thread;
    QObject* there = nullptr;  ///< lives on the thread; calls are posted to it
    Alive alive;
    Seen seen;
    std::shared_ptr<records::Reader> reader;
    bool onlyReads = false;  ///< the reader is there without a writer
    std::optional<logbook::MirrorState> mirror;
    std::filesystem::path copyFolder;  ///< "" = no weekly copies
    std::unique_ptr<logbook::CopyKeeper> copyKeeper;
    std::vector<std::unique_ptr<logbook::CopyKeeper>> leftKeepers;  ///< of folders chosen before, until they rest
    std::optional<logbook::CopyState> copies;
    bool restoring = false;  ///< another file is about to take the logbook's name: nothing may read it meanwhile
    int running = 0;

    explicit Impl(Session* owner) : session(owner)
    {
        there = new QObject;
        there->moveToThread(&thread);
        QObject::connect(&thread, &QThread::finished, there, &QObject::deleteLater);
        thread.start();
    }
    Impl(const Impl&) = delete;
    Impl& operator=(const Impl&) = delete;
    ~Impl()
    {
        thread.quit();
        thread.wait();
    }

    [[nodiscard]] Seen look() const
    {
        Seen now;
        now.open = alive.writer != nullptr;
        now.actor = alive.actor;
        if (alive.run) now.run = std::make_shared<const run::Run>(alive.run->run());
        now.notes = alive.writer ? alive.writer->notes() : alive.readNotes;
        if (!alive.writer) return now;
        if (auto runs = logbook::OpenRun::openRuns(*alive.writer)) now.openRuns = *std::move(runs);
        if (auto withdrawn = alive.writer->reader().withdrawals()) now.withdrawals = *std::move(withdrawn);
        if (auto people = alive.writer->reader().people()) now.people = *std::move(people);
        if (auto doors = alive.writer->doors()) now.doors = *std::move(doors);
        for (const char* what : kDefinitionKinds)
            if (auto definitions = alive.writer->definitions(what)) now.definitions[what] = *std::move(definitions);
        return now;
    }

    /// Does the call on the session's thread, one after the other, and tells the window when its result is on disk.
    void post(Call call)
    {
        if (running++ == 0) emit session->busyChanged(true);
        QMetaObject::invokeMethod(there, [this, call = std::move(call)] {
            Outcome outcome = call(alive);
            Seen now = look();
            QMetaObject::invokeMethod(
                session, [this, outcome = std::move(outcome), now = std::move(now)]() mutable { arrive(outcome, now); },
                Qt::QueuedConnection);
        });
    }

    void arrive(const Outcome& outcome, Seen& now)
    {
        seen = std::move(now);
        // Not when another logbook was chosen in the meantime, or this one is open after all.
        const bool looked = outcome.toRead && !seen.open && outcome.toRead->file == session->options().logbook;
        if (looked) {
            reader = outcome.toRead->reader;
            onlyReads = true;
        }
        // Another file lies under the name by now.
        if (outcome.restored || (!seen.open && !onlyReads)) reader.reset();
        // What was only looked at is open now as everything else is.
        if (seen.open && std::exchange(onlyReads, false)) reader.reset();
        if ((outcome.opened || outcome.triedRestore) && seen.open && !reader)
            if (auto own = logbook::openReader(session->options().logbook, session->options().practice))
                reader = *std::move(own);
        if (--running == 0) emit session->busyChanged(false);
        if (outcome.opened) emit session->opened();
        if (looked) emit session->openedToRead();
        if (outcome.competences) emit session->competencesTold(*outcome.competences);
        if (outcome.shopChanged) emit session->shopChanged();
        if (outcome.actorChanged) emit session->actorChanged();
        if (outcome.withdrawalsChanged) emit session->withdrawalsChanged();
        if (outcome.runChanged) emit session->runChanged();
        if (outcome.sealed) emit session->sealed(*outcome.sealed);
        if (outcome.invited)
            emit session->invited(QString::fromStdString(outcome.invited->first),
                                  QString::fromStdString(outcome.invited->second));
        if (outcome.recordOf) emit session->recordChanged(QString::fromStdString(*outcome.recordOf));
        if (outcome.observed) emit session->observed(*outcome.observed);
        if (outcome.badge) emit session->badgeMade(QString::fromStdString(*outcome.badge));
        if (outcome.secretsChanged) emit session->secretsChanged(*outcome.secretsChanged);
        if (outcome.copied) emit session->copied(*outcome.copied);
        if (outcome.weighed) emit session->weighed(*outcome.weighed);
        if (outcome.restored) emit session->restored(*outcome.restored);
        if (outcome.refusal) emit session->refused(*outcome.refusal);
        if (outcome.then) outcome.then();
        session->askMirror();
        if (outcome.triedRestore) restoring = false;
        if (outcome.opened || outcome.copied || !copyKeeper) session->tendCopies(true);
    }

    /// Ends the keeper of copies; false, and nothing is ended, while a copy is being made, be it in a folder chosen
    /// before.
    [[nodiscard]] bool endCopies()
    {
        std::erase_if(leftKeepers, [](const auto& keeper) { return keeper->idle(); });
        return leftKeepers.empty() && (!copyKeeper || copyKeeper->endIdle());
    }

    /// Takes the pen and, where one is kept, the mirror up.
    [[nodiscard]] static Result<Done> takePen(Alive& a, const Options& options, const std::filesystem::path& mirror);

    [[nodiscard]] static Outcome refusedWith(Finding why)
    {
        Outcome outcome;
        outcome.refusal = std::move(why);
        return outcome;
    }
    /// One command to the open run: what every screen asks for, with or without a second person.
    [[nodiscard]] static Outcome carriedOut(Alive& a, const run::Command& command)
    {
        if (auto done = a.run->perform(command, *a.actor); !done) return refusedWith(done.error());
        Outcome outcome;
        // Whoever a run was handed to is the one who sits here now.
        if (const auto* over = std::get_if<run::HandOver>(&command)) {
            a.actor = over->to;
            outcome.actorChanged = true;
        }
        outcome.runChanged = true;
        outcome.withdrawalsChanged =
            std::holds_alternative<run::Withdraw>(command) || std::holds_alternative<run::Return>(command);
        return outcome;
    }
    /// Withdrawing and giving back write into every open run of the press: the one open here looks again.
    [[nodiscard]] static Outcome afterPressChanged(Alive& a)
    {
        Outcome outcome;
        outcome.withdrawalsChanged = true;
        if (a.run) {
            if (auto fresh = a.run->refresh(); !fresh) return refusedWith(fresh.error());
            outcome.runChanged = true;
        }
        return outcome;
    }
    /// What needs the signature of whoever is signed in: their key is open for this call only.
    template <class Do>
    [[nodiscard]] static Outcome signedBy(Alive& a, const std::string& secret, const Do& act)
    {
        if (auto why = notReady(a, false)) return refusedWith(*why);
        const auto self = a.writer->unlock(a.actor->id().value, secret);
        if (!self) return refusedWith(self.error());
        return act(*self);
    }
    /// Performs what ends the run, and seals with the key of whoever is signed in.
    [[nodiscard]] static Outcome finished(Alive& a, const run::Command& command, const std::string& secret);
    /// A competence was said, or refused: how everybody stands now (session_competence.cpp).
    [[nodiscard]] static Outcome afterSaid(Alive& a, const Result<seal::Seal>& sealed);
    [[nodiscard]] static Finding notSignedIn()
    {
        return refuse("session.not_signed_in", {}, "Nobody is signed in.", "Choose your name and type your PIN.");
    }
    /// What must hold before most calls; nullopt when it does.
    [[nodiscard]] static std::optional<Finding> notReady(const Alive& a, bool needsRun)
    {
        if (!a.writer)
            return refuse("session.no_logbook", {}, "No logbook is open.", "Open one, or start the program again.");
        if (!a.actor) return notSignedIn();
        if (needsRun && !a.run)
            return refuse("session.no_run", {}, "No run is open here.", "Begin one, or go on with an open one.");
        return std::nullopt;
    }
};

}  // namespace taut::app
