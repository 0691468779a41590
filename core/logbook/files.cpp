// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/logbook/files.h"

#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

#include <algorithm>
#include <cerrno>
#include <utility>

#include <SQLiteCpp/Backup.h>
#include <sqlite3.h>

#include "core/base/file.h"
#include "core/logbook/logbook.h"

namespace taut::logbook {

namespace {

namespace fs = std::filesystem;

constexpr std::size_t kDateLength = 15;  // 20261126-075148
constexpr std::string_view kEnding = ".logbook";

bool isDate(std::string_view text)
{
    if (text.size() != kDateLength || text[8] != '-') return false;
    for (std::size_t i = 0; i < text.size(); ++i)
        if (i != 8 && (text[i] < '0' || text[i] > '9')) return false;
    return true;
}

constexpr std::string_view kUnfinished = ".part";

/// What others that were cut off left behind; one that is still being made is younger than a day.
void sweep(const fs::path& folder, const std::string& stem, Instant now)
{
    constexpr std::int64_t kDay = 86'400;
    std::error_code error;
    std::vector<fs::path> old;
    for (fs::directory_iterator at(folder, error), end; !error && at != end; at.increment(error)) {
        const std::string name = at->path().filename().string();
        struct stat file {};
        if (name.rfind("." + stem + "-", 0) == 0 && name.find(kUnfinished) != std::string::npos &&
            ::stat(at->path().c_str(), &file) == 0 && now.utcMs / 1000 - file.st_mtime > kDay)
            old.push_back(at->path());
    }
    for (const fs::path& file : old) fs::remove(file, error);
}

void sync(const fs::path& path, int more)
{
    const int descriptor = ::open(path.c_str(), O_RDONLY | O_CLOEXEC | more);
    if (descriptor < 0) return;
    ::fsync(descriptor);
    ::close(descriptor);
}

}  // namespace

void syncFolder(const fs::path& folder) { sync(folder, O_DIRECTORY); }

void syncFile(const fs::path& file) { sync(file, 0); }

Unfinished::Unfinished(const fs::path& folder, const std::string& stem, Instant now)
    : m_file(folder / ("." + stem + "-" + hex(randomBytes(6)) + std::string(kUnfinished)))
{
    sweep(folder, stem, now);
}

Unfinished::~Unfinished()
{
    std::error_code error;
    fs::remove(m_file, error);
    fs::remove(m_file.string() + "-journal", error);
}

Result<bool> Unfinished::name(const fs::path& file)
{
    // A second name is never put over what is there, as a rename is. That of a file that lies on another machine may
    // have been given though the answer got lost.
    const bool isThere = ::link(m_file.c_str(), file.c_str()) != 0 && errno == EEXIST;
    std::error_code error;
    if (fs::equivalent(m_file, file, error)) {
        fs::remove(m_file, error);
        syncFolder(file.parent_path());
        return true;
    }
    if (isThere) return false;
    // File systems of sticks know no second names: there the name is taken by an empty file and put over that.
    const int taken = ::open(file.c_str(), O_WRONLY | O_CREAT | O_EXCL | O_CLOEXEC, 0600);
    if (taken < 0) {
        if (errno == EEXIST) return false;
        return whyUnwritable(file, errno);
    }
    ::close(taken);
    if (::rename(m_file.c_str(), file.c_str()) != 0) {
        const Finding why = whyUnwritable(file, errno);
        fs::remove(file, error);
        return why;
    }
    syncFolder(file.parent_path());
    return true;
}

Result<bool> makeLogbook(const fs::path& file, FileKind kind, const std::string& workplace, Instant now,
                         const std::string& mirrorOf)
{
    std::string stem = file.stem().string();
    if (dateIn(file)) stem.resize(stem.size() - kDateLength - 1);
    Unfinished beside(file.parent_path(), stem, now);
    // Whatever goes wrong is said of the logbook: nobody asked for the file beside it.
    const Result<Done> made = guarded(file, [&]() -> Result<Done> {
        createLogbook(beside.file(), kind, workplace);
        if (mirrorOf.empty()) return Done{};
        SQLite::Database db(beside.file().string(), SQLite::OPEN_READWRITE);
        SQLite::Statement mark(db, "INSERT INTO file_facts (name, value) VALUES ('mirror_of', ?)");
        mark.bind(1, mirrorOf);
        mark.exec();
        return Done{};
    });
    if (!made) return made.error();
    return beside.name(file);
}

FileFacts factsOf(SQLite::Database& db)
{
    FileFacts facts;
    const bool practice = numberOf(db, "PRAGMA application_id") == std::int64_t{kPracticeApplicationId};
    facts.kind = practice ? FileKind::Practice : FileKind::Shop;
    SQLite::Statement query(db, "SELECT name, value FROM file_facts WHERE name IN ('workplace', 'mirror_of')");
    while (query.executeStep()) {
        std::string& fact = query.getColumn(0).getString() == "workplace" ? facts.workplace : facts.mirrorOf;
        fact = query.getColumn(1).getString();
    }
    return facts;
}

Result<FileFacts> factsIn(const fs::path& file)
{
    auto db = openLogbook(file, Access::Read, FileKind::Any, false);
    if (!db) return db.error();
    return guarded(file, [&]() -> Result<FileFacts> { return factsOf(**db); });
}

std::string dateOf(Instant at)
{
    std::string date;
    for (const char c : utcText(at.utcMs).substr(0, 19)) {
        if (c == 'T')
            date += '-';
        else if (c != '-' && c != ':')
            date += c;
    }
    return date;
}

fs::path freeDated(const fs::path& folder, const std::string& stem, Instant at)
{
    std::error_code error;
    for (;; at.utcMs += 1000) {
        fs::path file = folder / (stem + "-" + dateOf(at) + std::string(kEnding));
        if (!fs::exists(fs::symlink_status(file, error))) return file;
    }
}

std::vector<fs::path> datedFiles(const fs::path& folder, const std::string& stem)
{
    std::vector<fs::path> files;
    std::error_code error;
    for (fs::directory_iterator at(folder, error), end; !error && at != end; at.increment(error)) {
        const std::string name = at->path().filename().string();
        std::error_code unknown;
        if (name.size() == stem.size() + 1 + kDateLength + kEnding.size() && name.rfind(stem + "-", 0) == 0 &&
            dateIn(at->path()) && at->is_regular_file(unknown))
            files.push_back(at->path());
    }
    std::sort(files.begin(), files.end());
    return files;
}

std::optional<std::int64_t> dateIn(const fs::path& file)
{
    const std::string name = file.stem().string();
    if (file.extension() != kEnding || name.size() < kDateLength) return std::nullopt;
    const std::string date = name.substr(name.size() - kDateLength);
    if (!isDate(date)) return std::nullopt;
    const auto part = [&](std::size_t from, std::size_t n) { return date.substr(from, n); };
    const auto ms = readUtc(part(0, 4) + "-" + part(4, 2) + "-" + part(6, 2) + "T" + part(9, 2) + ":" + part(11, 2) +
                            ":" + part(13, 2) + ".000Z");
    return ms ? std::optional(*ms) : std::nullopt;
}

Result<Done> copyPages(SQLite::Database& from, const fs::path& to)
{
    // Made before the engine opens it, so that at no time anybody else may read it; the engine's journal follows it.
    const int made = ::open(to.c_str(), O_RDWR | O_CREAT | O_EXCL | O_CLOEXEC, 0600);
    if (made < 0) return whyUnwritable(to, errno);
    ::close(made);
    constexpr int kPages = 256, kMostBeginnings = 10;
    SQLite::Database copy(to.string(), SQLite::OPEN_READWRITE);
    copy.exec("PRAGMA synchronous = EXTRA");
    SQLite::Backup backup(copy, from);
    // In stretches, so that the writer never waits long; each of its writes makes the copy begin anew, and a writer
    // that never rests waits for the rest of it.
    int beginnings = 0, left = -1;
    for (int code = SQLITE_OK; code != SQLITE_DONE;) {
        code = backup.executeStep(beginnings < kMostBeginnings ? kPages : -1);
        if (left >= 0 && backup.getRemainingPageCount() > left) ++beginnings;
        left = backup.getRemainingPageCount();
        if (code != SQLITE_DONE && code != SQLITE_OK) throw SQLite::Exception("the copy was held up", code);
    }
    return Done{};
}

seal::Anchor headOf(SQLite::Database& db)
{
    SQLite::Statement query(db, "SELECT seq, link FROM seal_rows ORDER BY seq DESC LIMIT 1");
    if (!query.executeStep()) return {};
    return {asUint(query.getColumn(0).getInt64()), blobDigest(query.getColumn(1))};
}

}  // namespace taut::logbook
