// SPDX-License-Identifier: GPL-3.0-or-later
#include <unistd.h>

#include <algorithm>
#include <cerrno>
#include <cstring>

#include "core/logbook/copy.h"
#include "core/logbook/files.h"
#include "core/logbook/logbook.h"
#include "core/logbook/migrate.h"
#include "core/logbook/pen.h"

namespace taut::logbook {

namespace {

namespace fs = std::filesystem;

Finding warn(Finding finding)
{
    finding.severity = Severity::Warn;
    return finding;
}

Finding unwritable(const fs::path& file, const std::string& said)
{
    return refuse("file.unwritable", file.string(),
                  {"%1 cannot be written; the system says: %2. Nothing was changed.", {file.string(), said}},
                  "Choose a folder that you may write in, with room for the whole logbook.");
}

/// Where the copy ends, or the first thing that is wrong with it.
Result<seal::Anchor> endOf(const fs::path& copy, const RestorePlan& plan)
{
    const auto verified = verify(copy, plan.anchors, Depth::Deep);
    if (!verified) return verified.error();
    if (verified->findings.empty()) return verified->end;
    Finding first = verified->findings.front();
    return refuse("restore.not_in_order", copy.string() + ", " + first.subject, std::move(first.text),
                  "Nothing was restored and nothing was changed. Choose another copy, or the mirror; tautweb verify "
                  "says all that is wrong with this one.");
}

/// What opens people's doors, for those whose key is the same here and there; never what somebody has there and has
/// lost here.
void takeDoors(SQLite::Database& db, const fs::path& from, std::int64_t& taken)
{
    auto there = openLogbook(from, Access::Read, FileKind::Any, false);
    if (!there) return;
    SQLite::Statement query(**there, "SELECT s.person, s.pin, s.under_passphrase, s.under_badge, s.first_use, "
                                     "s.failures, s.wait_until, p.key FROM secret_rows AS s JOIN person_rows AS p ON "
                                     "p.person = s.person");
    SQLite::Statement put(db, "INSERT OR IGNORE INTO secret_rows (person, pin, under_passphrase, under_badge, "
                              "first_use, failures, wait_until) SELECT ?1, ?2, ?3, ?4, ?5, ?6, ?7 FROM person_rows "
                              "WHERE person = ?1 AND key IS ?8");
    while (query.executeStep()) {
        put.reset();
        put.clearBindings();
        for (int i = 0; i < 5; ++i) put.bind(i + 1, query.getColumn(i).getString());
        put.bind(6, query.getColumn(5).getInt64());
        put.bind(7, query.getColumn(6).getInt64());
        if (!query.getColumn(7).isNull()) bindBlob(put, 8, blobText(query.getColumn(7)));
        put.exec();
    }
    taken = numberOf(db, "SELECT count(*) FROM secret_rows");
}

/// What was copied becomes a logbook of its own again.
void makeOwn(SQLite::Database& db, const fs::path& aside, const RestorePlan& plan, Restored& restored)
{
    const bool mirror = !factsOf(db).mirrorOf.empty();
    SQLite::Transaction transaction(db, SQLite::TransactionBehavior::IMMEDIATE);
    db.exec("DELETE FROM file_facts WHERE name = 'mirror_of'");
    if (mirror) {
        std::int64_t taken = 0;
        for (const fs::path& from : {plan.peopleFrom, aside}) {
            if (from.empty() || taken > 0) continue;
            // One that cannot be read to its end gives what it can.
            const auto done = guarded(from, [&]() -> Result<Done> {
                takeDoors(db, from, taken);
                return Done{};
            });
            if (!done) taken = numberOf(db, "SELECT count(*) FROM secret_rows");
        }
    }
    transaction.commit();
    restored.people = numberOf(db, "SELECT count(*) FROM person_rows WHERE active = 1 AND key IS NOT NULL");
    restored.withDoors = numberOf(db, "SELECT count(*) FROM person_rows AS p JOIN secret_rows AS s ON "
                                      "s.person = p.person WHERE p.active = 1 AND p.key IS NOT NULL AND "
                                      "s.under_passphrase <> ''");
}

void sayDoors(Restored& restored)
{
    if (restored.withDoors == restored.people) return;
    if (restored.withDoors == 0) {
        restored.findings.push_back(
            warn(refuse("restore.no_doors", restored.file.string(),
                        "A mirror holds no PINs and no private keys, so nobody can sign in at the restored logbook: it "
                        "can be read, printed and verified.",
                        "Restore once more and name a whole copy from which the people's PINs and keys are taken, or "
                        "keep this one for reading and begin a new logbook.")));
        return;
    }
    Finding some = refuse("restore.some_doors", restored.file.string(),
                          {"%1 of %2 people can sign in at the restored logbook; the others have changed what they "
                           "sign in with since that copy.",
                           {restored.withDoors, restored.people}},
                          "A supervisor gives each of the others a first-use code.");
    some.severity = Severity::Note;
    restored.findings.push_back(std::move(some));
}

/// What lies there, held against what comes in its place; asked before either has its new name.
struct Aside {
    bool hasOther = false;    ///< seals of the same numbers that are others
    bool isAnothers = false;  ///< the logbook of another PC
    std::int64_t events = 0, restoredEvents = 0;
};

std::optional<Digest> linkAt(SQLite::Database& db, std::uint64_t seq)
{
    SQLite::Statement query(db, "SELECT link FROM seal_rows WHERE seq = ?");
    query.bind(1, asInt(seq));
    return query.executeStep() ? std::optional(blobDigest(query.getColumn(0))) : std::nullopt;
}

Aside compare(const fs::path& to, const fs::path& unfinished, Restored& restored)
{
    Aside aside;
    const auto old = verify(to, {});
    if (!old || (old->end.count == 0 && !old->findings.empty())) return aside;
    restored.asideEnd = old->end;
    // What cannot be asked was said to be unreadable, or says nothing here.
    (void)guarded(to, [&]() -> Result<Done> {
        auto own = openLogbook(unfinished, Access::Read, FileKind::Any, false);
        if (!own) return own.error();
        constexpr const char* kEvents = "SELECT count(*) FROM open_events";
        aside.restoredEvents = numberOf(**own, kEvents);
        auto there = openLogbook(to, Access::Read, FileKind::Any, false);
        if (!there) return there.error();
        aside.isAnothers = factsOf(**there).workplace != factsOf(**own).workplace;
        // Whichever is the shorter: as far as both go they must say the same.
        const std::uint64_t both = std::min(old->end.count, restored.end.count);
        aside.hasOther = both > 0 && linkAt(**there, both) != linkAt(**own, both);
        aside.events = numberOf(**there, kEvents);
        return Done{};
    });
    return aside;
}

/// Why a copy is not to take the place of what lies there, whatever stands in either; nullopt = it may.
std::optional<Finding> whyNotInPlaceOf(const fs::path& copy, const fs::path& to)
{
    const auto own = factsIn(copy), there = factsIn(to);
    if (!own || !there || own->kind == there->kind) return std::nullopt;
    const char* english = own->kind == FileKind::Practice
                              ? "%1 is a practice logbook, and %2 is the shop's own."
                              : "%1 is of the shop's own logbook, and %2 is a practice logbook.";
    return refuse("restore.other_kind", to.string(), Text(english, {copy.string(), to.string()}),
                  "Choose another copy, or restore it under another name. Nothing was changed.");
}

void sayNewer(Restored& restored, const Aside& aside)
{
    if (restored.setAside.empty()) return;
    const auto count = [](std::uint64_t n) { return static_cast<std::int64_t>(n); };
    if (aside.isAnothers)
        restored.findings.push_back(
            warn(refuse("restore.other_logbook", restored.setAside.string(),
                        {"What was restored is the logbook of another PC than what lay there before, which was kept as "
                         "%1.",
                         {restored.setAside.string()}},
                        "Look at the newest printed sheets of both before anybody goes on; if it was the wrong copy, "
                        "restore what was set aside.")));
    else if (aside.hasOther)
        restored.findings.push_back(
            warn(refuse("restore.other_aside", restored.setAside.string(),
                        {"What lay there before holds other seals than what was restored: a record was changed, or "
                         "they are two logbooks. It was kept as %1.",
                         {restored.setAside.string()}},
                        "Verify both against the newest printed sheet before anybody goes on.")));
    if (aside.events > aside.restoredEvents)
        restored.findings.push_back(
            warn(refuse("restore.open_aside", restored.setAside.string(),
                        {"A run that was open in what lay there before is not, or not as far, in what was restored. It "
                         "was kept as %1.",
                         {restored.setAside.string()}},
                        "Begin that run again from making the press safe.")));
    if (restored.asideEnd && restored.asideEnd->count > restored.end.count)
        restored.findings.push_back(
            warn(refuse("restore.newer_aside", restored.setAside.string(),
                        {"NEWER RECORDS ARE NOT IN WHAT WAS RESTORED: it holds %1 seals, and what lay there before "
                         "holds %2. It was kept as %3.",
                         {count(restored.end.count), count(restored.asideEnd->count), restored.setAside.string()}},
                        "Look for a newer copy or the mirror before anybody goes on in the restored one, and keep what "
                        "was set aside.")));
    if (!restored.asideEnd)
        restored.findings.push_back(
            warn(refuse("restore.aside_unreadable", restored.setAside.string(),
                        {"What lay there before cannot be read, so nobody can say whether it held newer records. It "
                         "was kept as %1.",
                         {restored.setAside.string()}},
                        "Compare the newest printed sheet with what was restored: its anchor says how many seals "
                        "there were.")));
}

/// Gives what lies at `to` a second name and lets it keep it, so that nothing is lost when the first goes to another
/// file; or takes everything back.
class Beside {
public:
    Beside(const fs::path& to, fs::path aside)
        : m_to(to),
          m_journal(to.string() + "-journal"),
          m_aside(std::move(aside)),
          m_asideJournal(m_aside.string() + "-journal")
    {}

    std::optional<Finding> keep()
    {
        if (auto why = name(m_to, m_aside, m_named)) return why;
        std::error_code error;
        const bool halfWritten = fs::exists(m_journal, error);
        if (auto why = halfWritten ? name(m_journal, m_asideJournal, m_journalNamed) : std::nullopt) return why;
        syncFolder(m_to.parent_path());
        if (!halfWritten) return std::nullopt;
        // A journal that stayed would be played back into the restored file; it goes first, since nobody could tell
        // that from a program that ended in between.
        if (::unlink(m_journal.c_str()) != 0) return unwritable(m_journal, std::strerror(errno));
        m_journalGone = true;
        return std::nullopt;
    }
    /// After the first name could not go to another file. False: what lay there is whole under its second name only,
    /// which stays.
    [[nodiscard]] bool takeBack()
    {
        bool named = false;
        if (m_journalGone && name(m_asideJournal, m_journal, named)) return false;
        std::error_code error;
        if (m_journalNamed) fs::remove(m_asideJournal, error);
        if (m_named) fs::remove(m_aside, error);
        syncFolder(m_to.parent_path());
        return true;
    }

private:
    static std::optional<Finding> name(const fs::path& file, const fs::path& second, bool& done)
    {
        done = ::link(file.c_str(), second.c_str()) == 0;
        if (done) return std::nullopt;
        // File systems of sticks know no second names: there it is a plain copy.
        std::error_code error;
        done = fs::copy_file(file, second, error);
        if (done) {
            syncFile(second);
            return std::nullopt;
        }
        // Cut off by a full disk, it is nobody's copy; one that was there before is not touched.
        std::error_code unknown;
        if (error != std::errc::file_exists) fs::remove(second, unknown);
        return unwritable(second, error.message());
    }
    fs::path m_to, m_journal, m_aside, m_asideJournal;
    bool m_named = false, m_journalNamed = false, m_journalGone = false;
};

}  // namespace

Result<Restored> restoreFrom(const fs::path& copy, const fs::path& given, Instant now, const RestorePlan& plan)
{
    std::error_code error;
    const fs::path whole = fs::absolute(given);
    fs::path to = fs::weakly_canonical(whole, error);
    if (error || to.empty()) to = whole;
    if (fs::equivalent(copy, to, error))
        return refuse("restore.same_file", to.string(), {"%1 cannot be restored from itself.", {to.string()}},
                      "Choose a copy or the mirror to restore from.");
    if (auto lies = asHomeOfLogbook(mediumOf(to), to); lies && lies->severity == Severity::Stop) return *lies;
    Restored restored{to, {}, {}, {}, 0, 0, {}};
    const auto end = endOf(copy, plan);
    if (!end) return end.error();
    restored.end = *end;
    fs::create_directories(to.parent_path(), error);
    const bool isThere = fs::exists(to, error);
    if (isThere && !fs::is_regular_file(to, error))
        return refuse("logbook.not_a_logbook", to.string(), {"%1 is a folder or a device, not a file.", {to.string()}},
                      "Choose the name of a file.");
    auto pen = Pen::take(to, "restoring");
    if (!pen) return pen.error();
    if (auto why = isThere ? whyNotInPlaceOf(copy, to) : std::nullopt) return *std::move(why);

    const fs::path unfinished = to.parent_path() / ("." + to.stem().string() + "-" + hex(randomBytes(6)) + ".part");
    const auto made = guarded(unfinished, [&]() -> Result<Done> {
        auto from = openLogbook(copy, Access::Read, FileKind::Any, true);
        if (!from) return from.error();
        if (auto pages = copyPages(**from, unfinished); !pages) return pages;
        if (auto up = bringUpCopy(unfinished); !up) return up;
        auto own = openLogbook(unfinished, Access::Write, FileKind::Any, true);
        if (!own) return own.error();
        makeOwn(**own, isThere ? to : fs::path(), plan, restored);
        return Done{};
    });
    const auto drop = [&](Finding why) {
        fs::remove(unfinished, error);
        fs::remove(unfinished.string() + "-journal", error);
        return why;
    };
    if (!made) return drop(made.error());
    // Not the copy but what was written here is what must be in order.
    const auto again = endOf(unfinished, plan);
    if (!again) return drop(again.error());
    if (*again != restored.end)
        return drop(refuse("restore.not_in_order", copy.string(),
                           {"%1 was written to while it was restored.", {copy.string()}},
                           "Have nobody write in it, then restore once more. Nothing was changed."));
    Aside aside;
    std::optional<Beside> beside;
    const auto takeBack = [&](Finding why) {
        if (beside && !beside->takeBack()) {
            why.text = {"%1 cannot be written, nor made again what it was. What lay there is whole as %2.",
                        {to.string(), restored.setAside.string()}};
            why.remedy = "Have the disk checked, then restore from that file or from the copy.";
        }
        return drop(std::move(why));
    };
    if (isThere) {
        aside = compare(to, unfinished, restored);
        restored.setAside = freeDated(to.parent_path(), to.stem().string() + "-aside", now);
        const fs::perms mode = fs::status(to, error).permissions();
        if (!error) fs::permissions(unfinished, mode, error);
        beside.emplace(to, restored.setAside);
        if (auto why = beside->keep()) return takeBack(*std::move(why));
    }
    fs::rename(unfinished, to, error);
    if (error) return takeBack(unwritable(to, error.message()));
    syncFolder(to.parent_path());
    sayNewer(restored, aside);
    sayDoors(restored);
    return restored;
}

}  // namespace taut::logbook
