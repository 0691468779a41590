// SPDX-License-Identifier: GPL-3.0-or-later
// The logbook kept twice: its mirror, its copies, and the way back from one.
#include <QCoreApplication>

#include "app/seams/kept_settings.h"
#include "app/sessions/session_impl.h"
#include "app/text/secret.h"
#include "core/logbook/keep.h"

namespace taut::app {

namespace {

bool same(const std::optional<logbook::MirrorState>& a, const std::optional<logbook::MirrorState>& b)
{
    if (!a || !b) return a.has_value() == b.has_value();
    const auto alike = [](const Finding& one, const Finding& other) {
        return one.code == other.code && one.subject == other.subject && one.severity == other.severity;
    };
    return a->file == b->file && a->count == b->count && a->behind == b->behind &&
           std::equal(a->findings.begin(), a->findings.end(), b->findings.begin(), b->findings.end(), alike);
}

}  // namespace

Result<Done> Session::Impl::takePen(Alive& a, const Options& options, const std::filesystem::path& mirror)
{
    logbook::Writer::Options how;
    how.holder = QCoreApplication::applicationName().toStdString();
    how.syncDelayMs = options.syncDelayMs;
    // A slip of the keys in a path must not begin another record: that is asked for.
    how.create = options.loadDemo || options.begin;
    how.practice = options.practice;
    auto writer = logbook::Writer::open(options.logbook, a.clock, a.ids, std::move(how));
    if (!writer) return writer.error();
    a.writer = *std::move(writer);
    if (!mirror.empty()) a.writer->keepMirror(mirror);
    return Done{};
}

const std::optional<logbook::MirrorState>& Session::mirror() const { return m_impl->mirror; }
const Findings& Session::notes() const { return m_impl->seen.notes; }

/// Neither a write nor a wait: nobody is kept from anything by it.
void Session::askMirror()
{
    QMetaObject::invokeMethod(m_impl->there, [impl = m_impl.get()] {
        std::optional<logbook::MirrorState> now;
        if (impl->alive.writer) now = impl->alive.writer->mirror();
        QMetaObject::invokeMethod(
            impl->session,
            [impl, now = std::move(now)]() mutable {
                if (same(impl->mirror, now)) return;
                impl->mirror = std::move(now);
                emit impl->session->mirrorChanged();
            },
            Qt::QueuedConnection);
    });
}

void Session::keepMirror(const QString& folder)
{
    m_impl->post([folder, logbook = m_options.logbook](Impl::Alive& a) -> Impl::Outcome {
        constexpr std::chrono::seconds kLook{3};
        if (auto why = Impl::notReady(a, false)) return Impl::refusedWith(*why);
        if (auto why = logbook::whyNotKeeper(a.actor)) return Impl::refusedWith(*why);
        // Not before it is known that whoever sits here now may: what is kept holds for every start to come.
        keepFolder(Kept::Mirror, logbook, folder);
        a.writer->keepMirror(folder.toStdString());
        // So that whoever chose sees what came of it; a folder that does not answer is not waited for.
        static_cast<void>(a.writer->mirror(kLook));
        return {};
    });
}

void Session::keepCopies(const QString& folder)
{
    if (!actor()) return emit refused(Impl::notSignedIn());
    if (const auto why = logbook::whyNotKeeper(actor())) return emit refused(*why);
    keepFolder(Kept::Copies, m_options.logbook, folder);
    m_impl->copyFolder = folder.toStdString();
    // One that is under way there ends by itself; nobody waits for it but a restore.
    if (m_impl->copyKeeper) {
        m_impl->copyKeeper->leave();
        m_impl->leftKeepers.push_back(std::move(m_impl->copyKeeper));
    }
    tendCopies(true);
}

const std::optional<logbook::CopyState>& Session::copies() const { return m_impl->copies; }

/// Takes the keeper up where one is wanted, has it look, and tells how the copies stand: never a wait.
void Session::tendCopies(bool look)
{
    Impl& impl = *m_impl;
    if (isOpen() && !impl.restoring && !impl.copyKeeper && !impl.copyFolder.empty()) {
        impl.copyKeeper = std::make_unique<logbook::CopyKeeper>(m_options.logbook, impl.copyFolder);
        look = true;
    }
    if (impl.copyKeeper && look) impl.copyKeeper->lookNow(SystemClock().now());
    std::optional<logbook::CopyState> now;
    if (impl.copyKeeper) now = impl.copyKeeper->state();
    if (now == impl.copies) return;
    impl.copies = std::move(now);
    emit copiesChanged();
}

void Session::copyTo(const QString& folder)
{
    m_impl->post([folder = std::filesystem::path(folder.toStdString())](Impl::Alive& a) -> Impl::Outcome {
        if (auto why = Impl::notReady(a, false)) return Impl::refusedWith(*why);
        if (auto why = logbook::whyNotKeeper(a.actor)) return Impl::refusedWith(*why);
        auto copied = logbook::copyTo(a.writer->file(), folder, a.clock.now());
        if (!copied) return Impl::refusedWith(copied.error());
        Impl::Outcome outcome;
        outcome.copied = *std::move(copied);
        return outcome;
    });
}

void Session::weigh(const QString& copy)
{
    m_impl->post([copy = std::filesystem::path(copy.toStdString())](Impl::Alive& a) -> Impl::Outcome {
        if (auto why = Impl::notReady(a, false)) return Impl::refusedWith(*why);
        if (auto why = logbook::whyNotKeeper(a.actor)) return Impl::refusedWith(*why);
        if (auto why = logbook::whyNotReplaced(*a.writer)) return Impl::refusedWith(*why);
        const auto reader = logbook::openReader(copy);
        if (!reader) return Impl::refusedWith(reader.error());
        const auto there = (*reader)->anchor(), here = a.writer->reader().anchor();
        if (!there) return Impl::refusedWith(there.error());
        if (!here) return Impl::refusedWith(here.error());
        Impl::Outcome outcome;
        outcome.weighed = Weighed{copy, there->count, here->count};
        return outcome;
    });
}

void Session::restore(const QString& copy, const QString& secret)
{
    if (!m_impl->endCopies())
        return emit refused(refuse("restore.copying", m_options.logbook.string(),
                                   "A copy of this logbook is being made just now.",
                                   "Wait until it was made, then restore."));
    m_impl->copyKeeper.reset();
    m_impl->restoring = true;
    m_impl->reader.reset();
    Options options = m_options;
    options.begin = options.loadDemo = false;
    m_impl->post([options, mirror = keptFolder(Kept::Mirror, options.logbook), secret = secretText(secret),
                  copy = std::filesystem::path(copy.toStdString())](Impl::Alive& a) {
        Impl::Outcome all = Impl::signedBy(a, secret, [&](const people::Signer& self) -> Impl::Outcome {
            if (auto why = logbook::whyNotKeeper(self.actor())) return Impl::refusedWith(*why);
            if (auto why = logbook::whyNotReplaced(*a.writer)) return Impl::refusedWith(*why);
            // Nobody holds the pen while another file takes the name.
            a.writer.reset();
            auto restored = logbook::restoreFrom(copy, options.logbook, a.clock.now());
            Impl::Outcome outcome;
            if (!restored) outcome.refusal = restored.error();
            if (auto open = Impl::takePen(a, options, mirror); !open) outcome.refusal = open.error();
            if (restored) {
                a.actor.reset();
                outcome.opened = outcome.actorChanged = outcome.shopChanged = outcome.withdrawalsChanged = true;
                outcome.restored = *std::move(restored);
            }
            return outcome;
        });
        all.triedRestore = true;
        return all;
    });
}

}  // namespace taut::app
