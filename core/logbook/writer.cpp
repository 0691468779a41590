// SPDX-License-Identifier: GPL-3.0-or-later
#include <unistd.h>

#include "core/logbook/files.h"
#include "core/logbook/migrate.h"
#include "core/logbook/writer_impl.h"

namespace taut::logbook {

namespace {

namespace fs = std::filesystem;

Finding folderClosed(const fs::path& folder)
{
    return refuse("logbook.folder_read_only", folder.string(),
                  {"The folder %1 may not be written in, and a logbook needs that.", {folder.string()}},
                  "Choose a folder that you may write in, or have its owner allow writing. It can still be read from "
                  "there.");
}

std::optional<Finding> prepareFolder(const fs::path& folder)
{
    std::error_code error;
    fs::create_directories(folder, error);
    if (error && !fs::is_directory(folder)) return folderClosed(folder);
    if (::access(folder.c_str(), W_OK | X_OK) != 0) return folderClosed(folder);
    return std::nullopt;
}

bool isThere(const fs::path& file)
{
    std::error_code error;
    return fs::exists(file, error);
}

/// A mirror is written by the logbook that it is of, and by nobody else.
std::optional<Finding> isMirror(SQLite::Database& db, const fs::path& file)
{
    if (factsOf(db).mirrorOf.empty()) return std::nullopt;
    return refuse(
        "logbook.mirror", file.string(),
        {"%1 is the mirror of a logbook: it is there to be read, and only that logbook writes in it.", {file.string()}},
        "To go on from it, restore it under the name of the logbook that was lost.");
}

Finding broughtUp(const fs::path& file, const fs::path& copy)
{
    Finding note = refuse(
        "logbook.brought_up", file.string(),
        {"%1 was brought to the layout of this program. As it was, it is kept as %2.", {file.string(), copy.string()}},
        "Keep that copy until the next weekly copy is made.");
    note.severity = Severity::Note;
    return note;
}

}  // namespace

Writer::Writer() = default;
Writer::~Writer() = default;

Result<std::unique_ptr<Writer>> Writer::open(const fs::path& given, const Clock& clock, IdSource& ids, Options options)
{
    std::error_code error;
    // Made whole first: of a bare name that is not there yet, nothing would be.
    const fs::path whole = fs::absolute(given);
    fs::path file = fs::weakly_canonical(whole, error);
    if (error || file.empty()) file = whole;
    const FileKind kind = options.practice ? FileKind::Practice : FileKind::Shop;
    Findings notes;
    if (auto lies = asHomeOfLogbook(options.lies ? *options.lies : mediumOf(file), file)) {
        if (lies->severity == Severity::Stop) return *lies;
        notes.push_back(*std::move(lies));
    }
    if (isThere(file) || !options.create) {
        // Looked at before the pen is taken, so that nothing is laid beside a file that is not ours.
        const auto look = openLogbook(file, Access::Read, kind, true);
        if (!look) return look.error();
        if (auto mirror = isMirror(**look, file)) return *mirror;
    }
    if (auto closed = prepareFolder(file.parent_path())) return *closed;
    if (isThere(file) && ::access(file.c_str(), W_OK) != 0)
        return refuse("logbook.read_only", file.string(), {"%1 may be read but not written.", {file.string()}},
                      "Have its owner allow writing, or open it for reading.");
    auto pen = Pen::take(file, options.holder);
    if (!pen) return pen.error();
    if (!isThere(file)) {
        const auto made = makeLogbook(file, kind, ids.next(), clock.now());
        if (!made) return made.error();
    }
    const auto before = bringUp(file, clock.now());
    if (!before) return before.error();
    if (*before) notes.push_back(broughtUp(file, **before));
    auto db = openLogbook(file, Access::Write, kind, true);
    if (!db) return db.error();
    auto readingDb = openLogbook(file, Access::Read, kind, false);
    if (!readingDb) return readingDb.error();

    std::unique_ptr<Writer> writer(new Writer());
    // NOLINTNEXTLINE(modernize-make-unique): an Impl has no constructor that it could call
    writer->m_impl.reset(new Impl{file,
                                  &clock,
                                  std::move(options),
                                  std::move(*pen),
                                  std::move(*db),
                                  readerOn(std::move(*readingDb), file),
                                  {},
                                  {},
                                  std::move(notes),
                                  {}});
    auto workplace = writer->m_impl->read([](SQLite::Database& open) -> Result<std::string> {
        SQLite::Statement query(open, "SELECT value FROM file_facts WHERE name = 'workplace'");
        return query.executeStep() ? query.getColumn(0).getString() : std::string{};
    });
    if (!workplace) return workplace.error();
    writer->m_impl->workplace = *workplace;
    return writer;
}

const Findings& Writer::notes() const { return m_impl->notes; }

void Writer::keepMirror(const fs::path& folder)
{
    std::shared_ptr<MirrorKeeper> keeper;
    if (!folder.empty()) keeper = std::make_shared<MirrorKeeper>(m_impl->file, folder);
    // The one before ends after the lock: it may wait for a folder that does not answer.
    const std::lock_guard lock(m_impl->mutex);
    m_impl->keeper.swap(keeper);
    if (m_impl->keeper) m_impl->keeper->tryNow(m_impl->clock->now());
}

std::optional<MirrorState> Writer::mirror(std::chrono::milliseconds most) const
{
    std::shared_ptr<MirrorKeeper> keeper;
    {
        const std::lock_guard lock(m_impl->mutex);
        keeper = m_impl->keeper;
    }
    if (!keeper) return std::nullopt;
    return keeper->state(most);
}

const records::Reader& Writer::reader() const { return *m_impl->reader; }
const fs::path& Writer::file() const { return m_impl->file; }
const Clock& Writer::clock() const { return *m_impl->clock; }
const std::string& Writer::workplace() const { return m_impl->workplace; }
Writer::Impl& Writer::impl() { return *m_impl; }
const Writer::Impl& Writer::impl() const { return *m_impl; }

}  // namespace taut::logbook
