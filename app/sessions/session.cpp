// SPDX-License-Identifier: GPL-3.0-or-later
#include <QTimer>

#include "app/seams/demo_shop.h"
#include "app/seams/kept_settings.h"
#include "app/sessions/session_impl.h"
#include "app/text/secret.h"
#include "core/base/file.h"
#include "core/run/attachment.h"

namespace taut::app {

Session::Session(Options options, QObject* parent)
    : QObject(parent),
      m_options(std::move(options)),
      m_impl(std::make_unique<Impl>(this))
{
    constexpr int kAskMirrorMs = 1000;
    auto* timer = new QTimer(this);
    timer->setInterval(kAskMirrorMs);
    connect(timer, &QTimer::timeout, this, [this] {
        if (m_impl->mirror) askMirror();
        tendCopies(false);
    });
    timer->start();
    // Whether one is due is a look at a folder's names, on a thread of its own.
    constexpr int kLookForCopiesMs = 60'000;
    auto* looks = new QTimer(this);
    connect(looks, &QTimer::timeout, this, [this] { tendCopies(true); });
    looks->start(kLookForCopiesMs);
}

Session::~Session() = default;

bool Session::isOpen() const { return m_impl->seen.open; }
bool Session::onlyReads() const { return m_impl->onlyReads; }
bool Session::busy() const { return m_impl->running > 0; }
const std::optional<people::Actor>& Session::actor() const { return m_impl->seen.actor; }
const run::Run* Session::run() const { return m_impl->seen.run.get(); }
const records::Reader* Session::reader() const { return m_impl->reader.get(); }
std::vector<std::string> Session::openRuns() const { return m_impl->seen.openRuns; }
std::vector<records::Withdrawal> Session::withdrawals() const { return m_impl->seen.withdrawals; }
const std::vector<people::PersonRecord>& Session::people() const { return m_impl->seen.people; }
const std::vector<logbook::DoorState>& Session::doors() const { return m_impl->seen.doors; }

std::vector<logbook::Definition> Session::definitions(const char* what) const
{
    const auto found = m_impl->seen.definitions.find(what);
    return found == m_impl->seen.definitions.end() ? std::vector<logbook::Definition>{} : found->second;
}

void Session::open()
{
    m_impl->copyFolder = keptFolder(Kept::Copies, m_options.logbook);
    m_impl->post(
        [options = m_options, mirror = keptFolder(Kept::Mirror, m_options.logbook)](Impl::Alive& a) -> Impl::Outcome {
            if (auto open = Impl::takePen(a, options, mirror); !open) return Impl::refusedWith(open.error());
            Impl::Outcome outcome;
            outcome.opened = true;
            if (options.loadDemo)
                if (auto filled = fillWithDemoShop(*a.writer, options.resources); !filled)
                    outcome.refusal = filled.error();
            return outcome;
        });
}

void Session::openToRead()
{
    if (isOpen()) return;
    // One of a newer layout is taken over as a whole, which takes its time.
    m_impl->post([file = m_options.logbook](Impl::Alive& a) -> Impl::Outcome {
        if (a.writer) return {};
        Findings notes;
        auto own = logbook::openReader(file, false, &notes);
        if (!own) return Impl::refusedWith(own.error());
        a.readNotes = std::move(notes);
        Impl::Outcome outcome;
        outcome.toRead = Impl::ToRead{file, *std::move(own)};
        return outcome;
    });
}

void Session::openAt(const std::filesystem::path& logbook)
{
    if (isOpen()) return;
    m_impl->onlyReads = false;
    m_options.logbook = logbook;
    open();
}

void Session::beginLogbook(const std::filesystem::path& logbook)
{
    if (isOpen()) return;
    m_options.begin = true;
    openAt(logbook);
}

void Session::signIn(const QString& personId, const QString& pin)
{
    m_impl->post([id = personId.toStdString(), secret = secretText(pin)](Impl::Alive& a) -> Impl::Outcome {
        if (!a.writer) return Impl::refusedWith(*Impl::notReady(a, false));
        auto actor = a.writer->signIn(id, secret);
        if (!actor) return Impl::refusedWith(actor.error());
        a.actor = *std::move(actor);
        Impl::Outcome outcome;
        outcome.actorChanged = true;
        return outcome;
    });
}

void Session::sayAgain()
{
    if (isOpen()) {
        emit opened();
        emit actorChanged();
        emit runChanged();
    } else if (onlyReads()) {
        emit openedToRead();
    } else {
        open();
    }
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
        Impl::Outcome outcome;
        // Left on purpose is not a program that ended under the run: the record tells them apart. Where that cannot be
        // written, nobody is kept on a page for it.
        if (a.run && a.actor && a.run->run().phase() == run::Phase::Running &&
            !run::inOtherHands(a.run->run(), a.actor->id()))
            if (auto done = a.run->perform(run::Interrupt{"left_page"}, *a.actor); !done)
                outcome.refusal = done.error();
        a.run.reset();
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

void Session::attach(const QString& stepId, const std::filesystem::path& file)
{
    m_impl->post([step = stepId.toStdString(), file](Impl::Alive& a) -> Impl::Outcome {
        if (auto why = Impl::notReady(a, true)) return Impl::refusedWith(*why);
        auto bytes = readFile(file, run::kMostAttachmentBytes);
        if (!bytes) return Impl::refusedWith(bytes.error());
        return Impl::carriedOut(
            a, run::Attach{{step}, file.filename().string(), std::make_shared<const std::string>(*std::move(bytes))});
    });
}

void Session::performWith(const QString& personId, const QString& pin, WithSecond make)
{
    m_impl->post([id = personId.toStdString(), secret = secretText(pin),
                  make = std::move(make)](Impl::Alive& a) -> Impl::Outcome {
        if (auto why = Impl::notReady(a, true)) return Impl::refusedWith(*why);
        auto second = a.writer->signIn(id, secret);
        if (!second) return Impl::refusedWith(second.error());
        return Impl::carriedOut(a, make(*second));
    });
}

void Session::performSigned(const QString& personId, const QString& passphrase, WithSigner make)
{
    m_impl->post([id = personId.toStdString(), secret = secretText(passphrase),
                  make = std::move(make)](Impl::Alive& a) -> Impl::Outcome {
        if (auto why = Impl::notReady(a, true)) return Impl::refusedWith(*why);
        auto signer = a.writer->unlock(id, secret);
        if (!signer) return Impl::refusedWith(signer.error());
        return Impl::carriedOut(a, make(std::make_shared<const people::Signer>(*std::move(signer))));
    });
}

void Session::finish(const run::Command& command, const QString& passphrase)
{
    m_impl->post([command, secret = secretText(passphrase)](Impl::Alive& a) -> Impl::Outcome {
        if (auto why = Impl::notReady(a, true)) return Impl::refusedWith(*why);
        return Impl::finished(a, command, secret);
    });
}

Session::Impl::Outcome Session::Impl::finished(Alive& a, const run::Command& command, const std::string& secret)
{
    const auto signer = a.writer->unlock(a.actor->id().value, secret);
    if (!signer) return refusedWith(signer.error());
    const bool ended = a.run->run().phase() == run::Phase::Completed || a.run->run().phase() == run::Phase::Abandoned;
    if (!ended)
        if (auto done = a.run->perform(command, *a.actor); !done) return refusedWith(done.error());
    Outcome outcome;
    outcome.runChanged = true;
    auto sealed = a.run->seal(*signer);
    if (!sealed) {
        outcome.refusal = sealed.error();
        return outcome;
    }
    outcome.sealed = sealed->seq;
    a.run.reset();
    return outcome;
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
