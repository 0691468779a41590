// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/logbook/open_run.h"

#include <span>

#include "core/logbook/attachments.h"
#include "core/logbook/competence.h"
#include "core/logbook/open_runs.h"
#include "core/people/meant.h"
#include "core/records/texts.h"
#include "core/run/held.h"
#include "core/seal/words.h"

namespace taut::logbook {

namespace {

constexpr const char* kEndedUnderIt = "ended_without_sign_off";

std::optional<Finding> notKept(SQLite::Database& db, const char* what, const run::Source& source)
{
    SQLite::Statement query(db, "SELECT 1 FROM definition_rows WHERE what = ? AND id = ? AND edition = ? AND "
                                "sha256 = ?");
    query.bind(1, what);
    query.bind(2, source.id);
    query.bind(3, source.edition);
    query.bind(4, source.sha256);
    if (query.executeStep() && hex(sha256(source.text)) == source.sha256) return std::nullopt;
    return refuse("run.definition_not_kept", std::string(what) + " " + source.id,
                  {"Edition %2 of the %3 %1 is not kept in this logbook, so a run cannot name it.",
                   {source.id, std::int64_t{source.edition}, std::string(what)}},
                  "Have a supervisor keep the file in the logbook first.");
}

/// Why no run can begin on this press now.
std::optional<Finding> pressClosed(SQLite::Database& db, const std::string& press)
{
    if (const auto withdrawal = findWithdrawal(db, press))
        return refuse("run.press_withdrawn", press,
                      {"%1 has withdrawn the press %2 from use: %3", {withdrawal->byName, press, withdrawal->reason}},
                      "A supervisor other than the person who withdrew it gives it back when it is put right.");
    const std::vector<std::string> open = unsealedRuns(db, press);
    if (open.empty()) return std::nullopt;
    return refuse("run.press_busy", press, {"Run %1 is still open on the press %2.", {open.front(), press}},
                  "Go on with it, sign it off, or abandon it with a reason.");
}

/// The sealed run that a new one continues.
Result<std::optional<run::Run>> parentOf(const Writer& writer, const std::string& id)
{
    if (id.empty()) return std::optional<run::Run>{};
    const auto seal = writer.reader().sealOfRun(id);
    if (!seal) return seal.error();
    const auto document = seal::read(seal->document);
    if (!document) return document.error();
    const auto events = seal::eventsOf(*document, records::textsOf(writer.reader()));
    if (!events) return events.error();
    return std::optional<run::Run>(run::Run::fold(*events));
}

/// The newest editions of a definition, newest first.
Result<std::vector<std::string>> newestTexts(SQLite::Database& db, std::string_view what, const std::string& id)
{
    constexpr int kMost = 8;
    SQLite::Statement query(db,
                            "SELECT text FROM definition_rows WHERE what = ? AND id = ? ORDER BY edition DESC LIMIT ?");
    query.bind(1, std::string(what));
    query.bind(2, id);
    query.bind(3, kMost);
    std::vector<std::string> texts;
    while (query.executeStep()) texts.push_back(query.getColumn(0).getString());
    return texts;
}

std::vector<std::string> namesIn(SQLite::Database& db)
{
    SQLite::Statement query(db, "SELECT name FROM person_rows WHERE active <> 0 ORDER BY name");
    std::vector<std::string> names;
    while (query.executeStep()) names.push_back(query.getColumn(0).getString());
    return names;
}

/// Whose name a command gives for somebody who holds a stop; nullptr: it names nobody.
std::string* holderIn(run::Command& command, const run::Run& run)
{
    if (auto* hold = std::get_if<run::HoldStop>(&command)) return &hold->holder;
    auto* answer = std::get_if<run::Answer>(&command);
    const procedure::Step* step = answer == nullptr ? nullptr : run.plan().find(answer->step);
    return step != nullptr && step->kind == procedure::StepKind::Hold ? &answer->entered : nullptr;
}

/// Who holds a stop is called by the name that they are enrolled under, since by that name it is theirs alone. Nobody
/// enrolled: a visitor, called as they were typed.
std::optional<Finding> nameHolder(SQLite::Database& db, const run::Run& run, run::Command& command)
{
    std::string* holder = holderIn(command, run);
    if (holder == nullptr) return std::nullopt;
    const std::vector<std::string> meant = people::namesMeant(namesIn(db), *holder);
    if (meant.size() > 1)
        return refuse(
            "gate.which_holder", run.id(),
            {"\"%1\" could be %2 or %3, and a held stop belongs to one person.", {*holder, meant[0], meant[1]}},
            "Say the whole name of whoever holds it.");
    if (meant.empty()) return std::nullopt;
    if (!people::saysWhom(meant.front(), *holder))
        return refuse("gate.which_holder", run.id(),
                      {"\"%1\" is too little of a name. Is %2 meant?", {*holder, meant.front()}},
                      "Say three letters of the name at least; of a visitor, enough to tell them apart.");
    *holder = meant.front();
    return std::nullopt;
}

bool hasEnded(const run::Run& run)
{
    return run.phase() == run::Phase::Completed || run.phase() == run::Phase::Abandoned;
}

}  // namespace

Result<OpenRun> OpenRun::begin(Writer& writer, const Beginning& beginning, const people::Actor& actor)
{
    // Reading, computing and planning take their time before the store is touched.
    const auto basis = run::basisFor(beginning.sources, beginning.question);
    if (!basis) return basis.error();
    const auto parent = parentOf(writer, beginning.parent);
    if (!parent) return parent.error();
    const run::Sources& sources = beginning.sources;
    Writer::Impl& impl = writer.impl();
    auto begun = impl.write([&](SQLite::Database& db) -> Result<run::Run> {
        if (auto closed = pressClosed(db, sources.press.id)) return *closed;
        const std::pair<const char*, const run::Source*> definitions[] = {{"press", &sources.press},
                                                                          {"job", &sources.job},
                                                                          {"substrate", &sources.substrate},
                                                                          {"procedure", &sources.procedure}};
        for (const auto& [what, source] : definitions)
            if (auto missing = notKept(db, what, *source)) return *missing;
        const Instant now = impl.clock->now();
        run::Beginning first{nextRunId(db, sources.press.id, now), impl.workplace, impl.options.practice,
                             beginning.question, *parent ? &**parent : nullptr};
        const auto event = run::begin(*basis, first, stampFor(1, now, actor), actor);
        if (!event) return event.error();
        run::Run run = run::Run::fold(std::span(&*event, 1));
        appendEvent(db, run);
        return run;
    });
    if (!begun) return begun.error();
    return OpenRun(writer, std::move(*begun));
}

Result<OpenRun> OpenRun::resume(Writer& writer, std::string_view runId, const people::Actor& actor)
{
    auto stored = writer.impl().read([&](SQLite::Database& db) { return foldStored(db, runId); });
    if (!stored) return stored.error();
    OpenRun open(writer, std::move(*stored));
    // A run that stands still already, or has ended and only waits for its seal, was not cut off.
    if (open.run().phase() == run::Phase::Running) {
        const auto interrupted = open.perform(run::Interrupt{kEndedUnderIt}, actor);
        if (!interrupted) return interrupted.error();
    }
    return open;
}

Result<std::vector<std::string>> OpenRun::openRuns(const Writer& writer)
{
    return writer.impl().read(
        [](SQLite::Database& db) -> Result<std::vector<std::string>> { return unsealedRuns(db, ""); });
}

Result<Done> OpenRun::refresh()
{
    auto newer =
        m_writer->impl().read([&](SQLite::Database& db) { return eventsAfter(db, m_run.id(), m_run.events().size()); });
    if (!newer) return newer.error();
    for (const run::Event& event : *newer) m_run = m_run.after(event);
    return Done{};
}

Result<Done> OpenRun::perform(const run::Command& command, const people::Actor& actor)
{
    // Out of use is the press, with every run on it.
    if (const auto* withdraw = std::get_if<run::Withdraw>(&command)) {
        const auto done = m_writer->withdraw(m_run.sources().press.id, withdraw->reason, actor);
        return done ? refresh() : done;
    }
    if (const auto* back = std::get_if<run::Return>(&command)) {
        const auto done = m_writer->giveBack(m_run.sources().press.id, back->done, actor);
        return done ? refresh() : done;
    }
    // A withdrawal may have reached this run from another one.
    auto fresh = refresh();
    if (!fresh) return fresh;
    Writer::Impl& impl = m_writer->impl();
    const ClockLook now = look(*impl.clock);
    auto next = impl.write([&](SQLite::Database& db) -> Result<run::Run> {
        run::Run before = m_run;
        const auto stamp = [&] { return stampFor(before.events().size() + 1, impl.clock->now(), actor); };
        if (const auto by = clockSetBy(m_look, now)) {
            before = before.after(run::clockJumped(before, *by, stamp(), actor));
            appendEvent(db, before);
        }
        if (const auto* given = std::get_if<run::GiveUpStop>(&command)) {
            const auto enrolled = [&db](const std::string& name) { return findPersonNamed(db, name); };
            if (auto why = run::whyNotGivenUp(*given, actor, enrolled)) return *why;
        }
        if (const auto* sign = std::get_if<run::SignOff>(&command); sign != nullptr && !impl.options.practice)
            if (auto why = notAlone(db, before, actor, sign->supervisor.has_value(), now.utcMs)) return *why;
        run::Command named = command;
        if (auto why = nameHolder(db, before, named)) return *why;
        const auto event = run::decide(before, named, stamp(), actor);
        if (!event) return event.error();
        run::Run after = before.after(*event);
        appendEvent(db, after);
        if (const auto* attached = std::get_if<run::Attached>(&event->happening()))
            keepAttachment(db, attached->sha256, *std::get<run::Attach>(named).bytes);
        return after;
    });
    if (!next) return next.error();
    // Only what is on disk is shown.
    m_look = now;
    m_run = std::move(*next);
    return Done{};
}

Result<seal::Seal> OpenRun::seal(const people::Signer& signer)
{
    const people::Actor& actor = signer.actor();
    const auto fresh = refresh();
    if (!fresh) return fresh.error();
    const std::string id = m_run.id();
    if (!people::may(actor.role(), people::Act::SignOff))
        return refuse("gate.role", id,
                      {"%1 is enrolled as %2, which does not allow sealing a run.",
                       {actor.name(), std::string(people::roleWord(actor.role()))}},
                      "Let an operator seal it.");
    if (!hasEnded(m_run))
        return refuse("run.not_ended", id, {"Run %1 has not ended, so it cannot be sealed.", {id}},
                      "Sign it off, or abandon it with a reason.");
    Writer::Impl& impl = m_writer->impl();
    const seal::KnownWords known = [&](std::string_view what, const std::string& whose) {
        const auto texts = impl.read([&](SQLite::Database& db) { return newestTexts(db, what, whose); });
        return texts ? *texts : std::vector<std::string>();
    };
    const seal::Parted parted = seal::partWords(seal::documentOf(m_run), known);
    return impl.write([&](SQLite::Database& db) -> Result<seal::Seal> {
        // To a run that has ended nothing is added any more; it may have been sealed elsewhere meanwhile.
        if (auto why = notOpen(db, id)) return *std::move(why);
        const Instant now = impl.clock->now();
        // Whoever seals signs as well, be it somebody else than who said that it is done.
        if (const auto* completed = std::get_if<run::Completed>(&m_run.events().back().happening());
            completed != nullptr && !impl.options.practice)
            if (auto why = notAlone(db, m_run, actor, !completed->supervisor.empty(), now.utcMs)) {
                // The run is over, and nobody can be put beside them in it any more.
                if (why->code == "gate.not_competent")
                    why->remedy = "Have a supervisor look at it, sign in here and seal it themselves.";
                return *why;
            }
        for (const auto& [what, source] : parted.words) (void)sealedOnce(db, what, source, sealer(actor), now);
        seal::Seal sealed = appendSeal(db, parted.document, sealer(signer), now);
        SQLite::Statement gone(db, "DELETE FROM open_events WHERE run_id = ?");
        gone.bind(1, id);
        gone.exec();
        return sealed;
    });
}

}  // namespace taut::logbook
