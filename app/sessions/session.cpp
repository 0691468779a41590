// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/sessions/session.h"

#include <map>
#include <utility>

#include <QCoreApplication>
#include <QThread>

#include "app/seams/demo_shop.h"
#include "core/base/clock.h"
#include "core/base/id_source.h"

namespace taut::app {

namespace {

constexpr const char* kWhat[] = {"press", "job", "substrate", "procedure"};

}  // namespace

/// What only the session's own thread touches, and what only the window's thread sees. Between them go values.
struct Session::Impl {
    // The session's thread.
    struct Alive {
        SystemClock clock;
        RandomIds ids;
        std::unique_ptr<logbook::Writer> writer;
        std::optional<people::Actor> actor;
        std::optional<logbook::OpenRun> run;
    };
    /// What the window may look at after a call: copied whole, on the window's thread.
    struct Seen {
        bool open = false;
        std::optional<people::Actor> actor;
        std::shared_ptr<const run::Run> run;
        std::vector<std::string> openRuns;
        std::vector<records::Withdrawal> withdrawals;
        std::map<std::string, std::vector<logbook::Definition>> definitions;
    };
    /// How a call ended: at most one refusal, and what to say besides.
    struct Outcome {
        std::optional<Finding> refusal;
        bool opened = false, actorChanged = false, runChanged = false, withdrawalsChanged = false;
        std::optional<std::uint64_t> sealed;
    };
    using Call = std::function<Outcome(Alive&)>;

    Session* session;
    QThread thread;
    QObject* there = nullptr;  ///< lives on the thread; calls are posted to it
    Alive alive;
    Seen seen;
    std::unique_ptr<records::Reader> reader;
    int running = 0;

    explicit Impl(Session* owner) : session(owner)
    {
        there = new QObject;
        there->moveToThread(&thread);
        QObject::connect(&thread, &QThread::finished, there, &QObject::deleteLater);
        thread.start();
    }
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
        if (!alive.writer) return now;
        if (auto runs = logbook::OpenRun::openRuns(*alive.writer)) now.openRuns = *std::move(runs);
        if (auto withdrawn = alive.writer->reader().withdrawals()) now.withdrawals = *std::move(withdrawn);
        for (const char* what : kWhat)
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
        if (outcome.opened && seen.open && !reader)
            if (auto own = logbook::openReader(session->options().logbook)) reader = *std::move(own);
        if (--running == 0) emit session->busyChanged(false);
        if (outcome.opened) emit session->opened();
        if (outcome.actorChanged) emit session->actorChanged();
        if (outcome.withdrawalsChanged) emit session->withdrawalsChanged();
        if (outcome.runChanged) emit session->runChanged();
        if (outcome.sealed) emit session->sealed(*outcome.sealed);
        if (outcome.refusal) emit session->refused(*outcome.refusal);
    }

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
    /// What must hold before most calls; nullopt when it does.
    [[nodiscard]] static std::optional<Finding> notReady(const Alive& a, bool needsRun)
    {
        if (!a.writer)
            return refuse("session.no_logbook", {}, "No logbook is open.", "Open one, or start the program again.");
        if (!a.actor)
            return refuse("session.not_signed_in", {}, "Nobody is signed in.", "Choose your name and type your PIN.");
        if (needsRun && !a.run)
            return refuse("session.no_run", {}, "No run is open here.", "Begin one, or go on with an open one.");
        return std::nullopt;
    }
};

Session::Session(Options options, QObject* parent)
    : QObject(parent),
      m_options(std::move(options)),
      m_impl(std::make_unique<Impl>(this))
{}

Session::~Session() = default;

bool Session::isOpen() const { return m_impl->seen.open; }
bool Session::busy() const { return m_impl->running > 0; }
const std::optional<people::Actor>& Session::actor() const { return m_impl->seen.actor; }
const run::Run* Session::run() const { return m_impl->seen.run.get(); }
const records::Reader* Session::reader() const { return m_impl->reader.get(); }
std::vector<std::string> Session::openRuns() const { return m_impl->seen.openRuns; }
std::vector<records::Withdrawal> Session::withdrawals() const { return m_impl->seen.withdrawals; }

std::vector<logbook::Definition> Session::definitions(const char* what) const
{
    const auto found = m_impl->seen.definitions.find(what);
    return found == m_impl->seen.definitions.end() ? std::vector<logbook::Definition>{} : found->second;
}

void Session::open()
{
    m_impl->post([options = m_options](Impl::Alive& a) -> Impl::Outcome {
        logbook::Writer::Options how;
        how.holder = QCoreApplication::applicationName().toStdString();
        how.syncDelayMs = options.syncDelayMs;
        auto writer = logbook::Writer::open(options.logbook, a.clock, a.ids, std::move(how));
        if (!writer) return Impl::refusedWith(writer.error());
        a.writer = *std::move(writer);
        Impl::Outcome outcome;
        outcome.opened = true;
        if (options.loadDemo)
            if (auto filled = fillWithDemoShop(*a.writer, options.resources); !filled) outcome.refusal = filled.error();
        return outcome;
    });
}

void Session::openAt(const std::filesystem::path& logbook)
{
    if (isOpen()) return;
    m_options.logbook = logbook;
    open();
}

void Session::signIn(const QString& personId, const QString& pin)
{
    m_impl->post([id = personId.toStdString(), secret = pin.toStdString()](Impl::Alive& a) -> Impl::Outcome {
        if (!a.writer) return Impl::refusedWith(*Impl::notReady(a, false));
        auto actor = a.writer->signIn(id, secret);
        if (!actor) return Impl::refusedWith(actor.error());
        a.actor = *std::move(actor);
        Impl::Outcome outcome;
        outcome.actorChanged = true;
        return outcome;
    });
}

void Session::signOut()
{
    m_impl->post([](Impl::Alive& a) -> Impl::Outcome {
        a.actor.reset();
        Impl::Outcome outcome;
        outcome.actorChanged = true;
        return outcome;
    });
}

void Session::begin(const logbook::OpenRun::Beginning& beginning)
{
    m_impl->post([beginning](Impl::Alive& a) -> Impl::Outcome {
        if (auto why = Impl::notReady(a, false)) return Impl::refusedWith(*why);
        auto begun = logbook::OpenRun::begin(*a.writer, beginning, *a.actor);
        if (!begun) return Impl::refusedWith(begun.error());
        a.run = *std::move(begun);
        Impl::Outcome outcome;
        outcome.runChanged = true;
        return outcome;
    });
}

void Session::resume(const QString& runId)
{
    m_impl->post([id = runId.toStdString()](Impl::Alive& a) -> Impl::Outcome {
        if (auto why = Impl::notReady(a, false)) return Impl::refusedWith(*why);
        auto resumed = logbook::OpenRun::resume(*a.writer, id, *a.actor);
        if (!resumed) return Impl::refusedWith(resumed.error());
        a.run = *std::move(resumed);
        Impl::Outcome outcome;
        outcome.runChanged = true;
        return outcome;
    });
}

void Session::leaveRun()
{
    m_impl->post([](Impl::Alive& a) -> Impl::Outcome {
        a.run.reset();
        Impl::Outcome outcome;
        outcome.runChanged = true;
        return outcome;
    });
}

void Session::perform(const run::Command& command)
{
    m_impl->post([command](Impl::Alive& a) -> Impl::Outcome {
        if (auto why = Impl::notReady(a, true)) return Impl::refusedWith(*why);
        return Impl::carriedOut(a, command);
    });
}

void Session::performWith(const QString& personId, const QString& pin, WithSecond make)
{
    m_impl->post([id = personId.toStdString(), secret = pin.toStdString(),
                  make = std::move(make)](Impl::Alive& a) -> Impl::Outcome {
        if (auto why = Impl::notReady(a, true)) return Impl::refusedWith(*why);
        auto second = a.writer->signIn(id, secret);
        if (!second) return Impl::refusedWith(second.error());
        return Impl::carriedOut(a, make(*second));
    });
}

void Session::performSigned(const QString& personId, const QString& passphrase, WithSigner make)
{
    m_impl->post([id = personId.toStdString(), secret = passphrase.toStdString(),
                  make = std::move(make)](Impl::Alive& a) -> Impl::Outcome {
        if (auto why = Impl::notReady(a, true)) return Impl::refusedWith(*why);
        auto signer = a.writer->unlock(id, secret);
        if (!signer) return Impl::refusedWith(signer.error());
        return Impl::carriedOut(a, make(std::make_shared<const people::Signer>(*std::move(signer))));
    });
}

void Session::finish(const run::Command& command, const QString& passphrase)
{
    m_impl->post([command, secret = passphrase.toStdString()](Impl::Alive& a) -> Impl::Outcome {
        if (auto why = Impl::notReady(a, true)) return Impl::refusedWith(*why);
        const auto signer = a.writer->unlock(a.actor->id().value, secret);
        if (!signer) return Impl::refusedWith(signer.error());
        const bool ended =
            a.run->run().phase() == run::Phase::Completed || a.run->run().phase() == run::Phase::Abandoned;
        if (!ended)
            if (auto done = a.run->perform(command, *a.actor); !done) return Impl::refusedWith(done.error());
        Impl::Outcome outcome;
        outcome.runChanged = true;
        auto sealed = a.run->seal(*signer);
        if (!sealed) {
            outcome.refusal = sealed.error();
            return outcome;
        }
        outcome.sealed = sealed->seq;
        a.run.reset();
        return outcome;
    });
}

void Session::withdraw(const QString& press, const QString& reason)
{
    m_impl->post([id = press.toStdString(), why = reason.toStdString()](Impl::Alive& a) -> Impl::Outcome {
        if (auto not_ = Impl::notReady(a, false)) return Impl::refusedWith(*not_);
        auto done = a.writer->withdraw(id, why, *a.actor);
        if (!done) return Impl::refusedWith(done.error());
        return Impl::afterPressChanged(a);
    });
}

void Session::giveBack(const QString& press, const QString& done)
{
    m_impl->post([id = press.toStdString(), what = done.toStdString()](Impl::Alive& a) -> Impl::Outcome {
        if (auto not_ = Impl::notReady(a, false)) return Impl::refusedWith(*not_);
        auto given = a.writer->giveBack(id, what, *a.actor);
        if (!given) return Impl::refusedWith(given.error());
        return Impl::afterPressChanged(a);
    });
}

}  // namespace taut::app
