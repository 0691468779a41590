// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/file.h"

#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

#include <cerrno>
#include <cstring>
#include <utility>

#include "core/base/crypto.h"

namespace taut {

namespace {

namespace fs = std::filesystem;

/// An open file descriptor, closed when it goes.
class Descriptor {
public:
    explicit Descriptor(int fd) : m_fd(fd) {}
    Descriptor(const Descriptor&) = delete;
    Descriptor& operator=(const Descriptor&) = delete;
    ~Descriptor()
    {
        if (m_fd >= 0) ::close(m_fd);
    }
    [[nodiscard]] int get() const { return m_fd; }
    [[nodiscard]] bool ok() const { return m_fd >= 0; }
    /// Network file systems may tell only here that nothing was written.
    [[nodiscard]] bool closeNow() { return ::close(std::exchange(m_fd, -1)) == 0; }

private:
    int m_fd;
};

/// Where a link leads, also when nothing is there yet; what is no link, or leads round in a ring, is itself.
fs::path targetOf(const fs::path& path)
{
    constexpr int kMostLinks = 40;  // as the system follows
    fs::path at = path;
    std::error_code error;
    for (int i = 0; i < kMostLinks; ++i) {
        const fs::path next = fs::read_symlink(at, error);
        if (error) return at;
        at = at.parent_path() / next;
    }
    return path;
}

fs::path folderOf(const fs::path& file) { return file.has_parent_path() ? file.parent_path() : fs::path("."); }

Finding unreadable(const fs::path& path, int error)
{
    const std::string name = path.string();
    if (error == ENOENT || error == ENOTDIR)
        return refuse("file.missing", name, {"There is no file %1.", {name}},
                      "Check the spelling and the folder, or choose another file.");
    if (error == EACCES || error == EPERM)
        return refuse("file.unreadable", name, {"The file %1 may not be read by this user.", {name}},
                      "Have its owner allow reading, or copy it to a place of your own.");
    if (error == EISDIR)
        return refuse("file.unreadable", name, {"%1 is a folder, not a file.", {name}}, "Choose a file inside it.");
    return refuse("file.unreadable", name,
                  {"The file %1 cannot be read; the system says: %2.", {name, std::string(std::strerror(error))}},
                  "Check the disk or the network drive, then try again.");
}

}  // namespace

Finding whyUnwritable(const fs::path& path, int error)
{
    const std::string name = path.string();
    std::error_code none;
    const fs::path target = targetOf(path);
    const fs::path folder = folderOf(target);
    if (error == ENOSPC || error == EDQUOT)
        return refuse("file.unwritable", name, {"There is no room left to write %1. Nothing was changed.", {name}},
                      "Free some room on this disk, or choose another disk, then try again.");
    if (error == EACCES || error == EPERM || error == EROFS)
        return refuse("file.unwritable", name,
                      {"%1 may not be written: its folder is closed to this user. Nothing was changed.", {name}},
                      "Choose a folder that you may write in, or have its owner allow writing.");
    // The system's own folders, in which nobody makes a file.
    if (error == ENOENT && fs::is_directory(folder, none))
        return refuse("file.unwritable", name,
                      {"%1 cannot be written: its folder takes no files. Nothing was changed.", {name}},
                      "Choose another folder.");
    if ((error == ENOENT || error == ENOTDIR) && target != path)
        return refuse(
            "file.unwritable", name,
            {"%1 cannot be written: it is a link into the folder %2, which does not exist.", {name, folder.string()}},
            "Make that folder first or put its disk in, or choose another name.");
    if (error == ENOENT || error == ENOTDIR)
        return refuse("file.unwritable", name, {"%1 cannot be written: its folder does not exist.", {name}},
                      "Make the folder first, or choose another one.");
    if (error == EISDIR)
        return refuse("file.unwritable", name, {"%1 is a folder, so no file of that name can be written.", {name}},
                      "Choose another name.");
    return refuse(
        "file.unwritable", name,
        {"%1 cannot be written; the system says: %2. Nothing was changed.", {name, std::string(std::strerror(error))}},
        "Check the disk or the network drive, then try again.");
}

namespace {

int openAgain(const char* path, int flags, mode_t mode = 0)
{
    int fd = -1;
    do fd = ::open(path, flags | O_CLOEXEC, mode);
    while (fd < 0 && errno == EINTR);
    return fd;
}

bool writeAll(int fd, std::string_view bytes)
{
    while (!bytes.empty()) {
        const ssize_t n = ::write(fd, bytes.data(), bytes.size());
        if (n < 0 && errno == EINTR) continue;
        if (n < 0) return false;
        bytes.remove_prefix(static_cast<std::size_t>(n));
    }
    return true;
}

/// Writes and syncs the file beside the target; errno tells why not.
bool writeBeside(const fs::path& beside, const fs::path& target, std::string_view bytes)
{
    Descriptor file(openAgain(beside.c_str(), O_WRONLY | O_CREAT | O_EXCL, 0666));
    if (!file.ok()) return false;
    struct stat old {};
    if (::stat(target.c_str(), &old) == 0 && ::fchmod(file.get(), old.st_mode & 07777U) != 0) return false;
    return writeAll(file.get(), bytes) && ::fsync(file.get()) == 0 && file.closeNow();
}

}  // namespace

Result<std::string> readFile(const fs::path& path, std::size_t most)
{
    // Not waiting for a writer: a pipe is refused below, and O_NONBLOCK changes nothing for a file.
    const Descriptor file(openAgain(path.c_str(), O_RDONLY | O_NONBLOCK));
    if (!file.ok()) return unreadable(path, errno);
    struct stat kind {};
    if (::fstat(file.get(), &kind) != 0) return unreadable(path, errno);
    if (S_ISDIR(kind.st_mode)) return unreadable(path, EISDIR);
    if (!S_ISREG(kind.st_mode))
        return refuse("file.unreadable", path.string(), {"%1 is a pipe or a device, not a file.", {path.string()}},
                      "Save what it holds as a file, and choose that.");
    std::string bytes;
    for (;;) {
        constexpr std::size_t kStep = 65536;
        const std::size_t have = bytes.size();
        bytes.resize(have + kStep);
        const ssize_t n = ::read(file.get(), bytes.data() + have, kStep);
        const int error = errno;
        bytes.resize(have + (n > 0 ? static_cast<std::size_t>(n) : 0));
        if (n < 0 && error == EINTR) continue;
        if (n < 0) return unreadable(path, error);
        if (bytes.size() > most)
            return refuse("file.too_large", path.string(),
                          {"The file %1 is larger than %2 bytes, the most that is read here.",
                           {path.string(), static_cast<std::int64_t>(most)}},
                          "Check that it is the right file.");
        if (n == 0) return bytes;
    }
}

Result<Done> writeFile(const fs::path& path, std::string_view bytes)
{
    std::error_code none;
    // A link stays a link: what it points to is replaced.
    const fs::path target = targetOf(path);
    if (fs::is_symlink(target, none)) return whyUnwritable(path, ELOOP);
    const fs::file_status there = fs::status(target, none);
    if (fs::is_directory(there)) return whyUnwritable(path, EISDIR);
    // Renaming over a device or a pipe would put a plain file in its place.
    if (fs::exists(there) && !fs::is_regular_file(there))
        return refuse("file.unwritable", path.string(), {"%1 is a pipe or a device, not a file.", {path.string()}},
                      "Choose the name of a file.");
    const fs::path folder = folderOf(target);
    const fs::path beside = folder / ("." + target.filename().string() + "." + hex(randomBytes(6)));

    if (!writeBeside(beside, target, bytes) || ::rename(beside.c_str(), target.c_str()) != 0) {
        const int error = errno;
        ::unlink(beside.c_str());
        return whyUnwritable(path, error);
    }
    // The new name is durable only once the folder is synced; some file systems cannot sync a folder (EINVAL).
    const Descriptor opened(openAgain(folder.c_str(), O_RDONLY | O_DIRECTORY));
    if (opened.ok() && ::fsync(opened.get()) != 0 && errno != EINVAL)
        return refuse("file.unwritable", path.string(),
                      {"%1 was written, but the disk does not confirm that it will last; the system says: %2.",
                       {path.string(), std::string(std::strerror(errno))}},
                      "Keep a copy elsewhere and have the disk checked.");
    return Done{};
}

}  // namespace taut
