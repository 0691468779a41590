// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/logbook/copy.h"

#include <algorithm>
#include <functional>

#include "core/logbook/files.h"
#include "core/logbook/logbook.h"
#include "core/logbook/mirror_keeper.h"

namespace taut::logbook {

namespace {

namespace fs = std::filesystem;

bool isInOrder(const fs::path& file)
{
    const auto verified = verify(file, {});
    return verified && verified->findings.empty();
}

/// The copies of a logbook in a folder that are of no day to come, the newest first; `each` gives true to see more. A
/// name makes none: what another PC keeps there under the same name, or somebody wrote, is not looked at.
void eachCopy(const fs::path& logbook, const fs::path& folder, Instant now,
              const std::function<bool(const fs::path&)>& each)
{
    const auto own = factsIn(logbook);
    if (!own) return;
    std::vector<fs::path> files = datedFiles(folder, logbook.stem().string());
    std::reverse(files.begin(), files.end());
    for (const fs::path& file : files) {
        if (dateIn(file).value_or(0) > now.utcMs) continue;
        const auto facts = factsIn(file);
        if (facts && *facts == *own && !each(file)) return;
    }
}

/// Removes what is beyond the number kept. The newest is the one just made.
void rotate(const fs::path& logbook, const fs::path& folder, Instant now, const CopyPlan& plan, Copied& copied)
{
    std::vector<fs::path> files;
    eachCopy(logbook, folder, now, [&](const fs::path& file) {
        if (file != copied.file) files.push_back(file);
        return true;
    });
    std::reverse(files.begin(), files.end());
    const std::size_t stay = plan.keep > 1 ? plan.keep - 1 : 0;
    if (files.size() <= stay) return;
    const auto firstToStay = files.end() - static_cast<std::ptrdiff_t>(stay);
    if (stay > 0 && std::none_of(std::make_reverse_iterator(files.end()), std::make_reverse_iterator(firstToStay),
                                 [](const fs::path& file) { return isInOrder(file); })) {
        Finding broken = refuse("copy.others_broken", folder.string(),
                                {"None of the other copies in %1 that would stay is in order, so no older one was "
                                 "removed.",
                                 {folder.string()}},
                                "Verify the copies, have the disk checked, and choose another folder.");
        broken.severity = Severity::Warn;
        copied.findings.push_back(std::move(broken));
        return;
    }
    for (auto at = files.begin(); at != firstToStay; ++at) {
        std::error_code error;
        if (fs::remove(*at, error)) copied.removed.push_back(*at);
    }
}

Result<seal::Anchor> makeUnder(const fs::path& logbook, const fs::path& unfinished)
{
    auto db = openLogbook(logbook, Access::Read, FileKind::Any, true);
    if (!db) return db.error();
    const auto made = guarded(unfinished, [&] { return copyPages(**db, unfinished); });
    if (!made) return made.error();
    db->reset();
    const auto verified = verify(unfinished, {}, Depth::Deep);
    if (verified && verified->findings.empty()) return verified->end;
    const Finding first = verified ? verified->findings.front() : verified.error();
    return refuse(
        "copy.not_in_order", logbook.string(),
        {"No copy of %1 was kept, because it is not in order (%2, %3).", {logbook.string(), first.subject, first.code}},
        "Verify the logbook; if it is not in order itself, restore it from an older copy or its mirror. Older "
        "copies were left alone.");
}

/// What went wrong with the unfinished file, said of the folder that somebody chose.
Finding notKept(const Finding& why, const fs::path& logbook, const fs::path& folder, const fs::path& unfinished)
{
    if (why.code == "logbook.disk_full")
        return refuse(why.code, folder.string(),
                      {"There is no room left in %1 for a copy of %2. No copy was kept; the logbook is as it was.",
                       {folder.string(), logbook.string()}},
                      "Free some room there, or choose a folder on another disk.");
    if (why.subject != unfinished.string()) return why;
    if (why.code != "file.unwritable" && why.code != "logbook.folder_read_only" && why.code != "logbook.read_only")
        return refuse(
            why.code, folder.string(),
            {"No copy of %1 could be made in %2: %3", {logbook.string(), folder.string(), std::vector<Text>{why.text}}},
            why.remedy);
    return refuse(why.code, folder.string(),
                  {"No copy of %1 can be kept in %2: the folder takes no files, or not from this user.",
                   {logbook.string(), folder.string()}},
                  "Choose another folder, or have its owner allow writing.");
}

}  // namespace

Result<Copied> copyTo(const fs::path& logbook, const fs::path& folder, Instant now, const CopyPlan& plan)
{
    Copied copied;
    std::error_code error;
    if (!fs::is_directory(folder, error))
        return refuse("keep.folder_missing", folder.string(),
                      {"The folder %1, where copies are kept, is not there.", {folder.string()}},
                      "Put the stick in, connect to the other machine, or make the folder first.");
    if (auto place = asHomeOfCopies(mediumOf(folder), folder, logbook)) {
        if (place->severity == Severity::Stop) return *place;
        copied.findings.push_back(*std::move(place));
    }
    const std::string stem = logbook.stem().string();
    Unfinished unfinished(folder, stem, now);
    const auto end = makeUnder(logbook, unfinished.file());
    if (!end) return notKept(end.error(), logbook, folder, unfinished.file());
    copied.end = *end;
    // Where another PC has taken that second, and its file may not be seen here yet, it is the next.
    for (Instant at = now; copied.file.empty(); at.utcMs += 1000) {
        const fs::path file = freeDated(folder, stem, at);
        const auto named = unfinished.name(file);
        if (!named) return named.error();
        if (*named) copied.file = file;
    }
    rotate(logbook, folder, now, plan, copied);
    // The mirror in the same folder is read as a whole at this chance.
    if (const fs::path mirror = mirrorIn(folder, logbook); !mirror.empty()) {
        auto wrong = wrongWith(mirror);
        // That its own keeper is just at work on it is of the moment, and what is said here is read for a week.
        if (!wrong && wrong.error().code != "logbook.busy") copied.findings.push_back(wrong.error());
        if (wrong && *wrong) copied.findings.push_back(**std::move(wrong));
    }
    return copied;
}

fs::path newestCopy(const fs::path& logbook, const fs::path& folder, Instant now)
{
    fs::path newest;
    eachCopy(logbook, folder, now, [&](const fs::path& file) {
        newest = file;
        return false;
    });
    return newest;
}

bool isCopyDue(const fs::path& logbook, const fs::path& folder, Instant now, const CopyPlan& plan)
{
    const fs::path newest = newestCopy(logbook, folder, now);
    return newest.empty() || now.utcMs - dateIn(newest).value_or(0) >= plan.everyMs;
}

Result<std::optional<Copied>> copyIfDue(const fs::path& logbook, const fs::path& folder, Instant now,
                                        const CopyPlan& plan)
{
    if (!isCopyDue(logbook, folder, now, plan)) return std::optional<Copied>();
    auto copied = copyTo(logbook, folder, now, plan);
    if (!copied) return copied.error();
    return std::optional(*std::move(copied));
}

}  // namespace taut::logbook
