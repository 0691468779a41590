// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/logbook/pen.h"

#include <fcntl.h>
#include <unistd.h>

#include <array>
#include <cerrno>
#include <cstring>
#include <utility>

namespace taut::logbook {

namespace {

namespace fs = std::filesystem;

Finding heldBy(const fs::path& logbook, int descriptor)
{
    std::array<char, 512> buffer{};
    const ssize_t n = ::pread(descriptor, buffer.data(), buffer.size(), 0);
    const std::string text(buffer.data(), n > 0 ? static_cast<std::size_t>(n) : 0);
    const std::size_t line = text.find('\n');
    const std::string holder = line == std::string::npos ? std::string("?") : text.substr(0, line);
    const std::string process =
        line == std::string::npos ? std::string("?") : text.substr(line + 1, text.find('\n', line + 1) - line - 1);
    return refuse(
        "logbook.pen_held", logbook.string(),
        {"%1 (process %2) is writing in the logbook %3, and only one can.", {holder, process, logbook.string()}},
        "Go on there, or close the program there; this one can then take over at once.");
}

Finding cannotLock(const fs::path& pen, int error)
{
    const std::string name = pen.string();
    if (error == EACCES || error == EPERM || error == EROFS)
        return refuse("logbook.folder_read_only", name,
                      {"%1 cannot be made: its folder may not be written in.", {name}},
                      "Choose a folder that you may write in, or have its owner allow writing.");
    if (error == ENOSPC || error == EDQUOT)
        return refuse("logbook.disk_full", name,
                      {"There is no room left in the folder of %1. Nothing was recorded.", {name}},
                      "Free some room on this disk, or choose a folder on another one.");
    return refuse(
        "logbook.no_locks", name,
        {"No logbook can be kept where %1 would lie: two programs could write in it at once. The system says: %2.",
         {name, std::string(std::strerror(error))}},
        "Keep the logbook on a disk of this PC.");
}

}  // namespace

Result<Pen> Pen::take(const fs::path& logbook, const std::string& holder)
{
    fs::path file = logbook;
    file += ".pen";
    const int descriptor = ::open(file.c_str(), O_RDWR | O_CREAT | O_CLOEXEC, 0666);
    if (descriptor < 0) return cannotLock(file, errno);
    Pen pen(descriptor);
    // A lock of the open file, not of the process: a second writer in this process is refused as well, and closing
    // another descriptor does not drop it.
    struct flock lock {};
    lock.l_type = F_WRLCK;
    lock.l_whence = SEEK_SET;
    if (::fcntl(descriptor, F_OFD_SETLK, &lock) != 0) {
        if (errno == EAGAIN || errno == EACCES) return heldBy(logbook, descriptor);
        return cannotLock(file, errno);
    }
    std::string name = holder.empty() ? std::string("?") : holder;
    for (char& c : name)
        if (c == '\n') c = ' ';
    const std::string text = name.substr(0, 200) + "\n" + std::to_string(::getpid()) + "\n";
    if (::ftruncate(descriptor, 0) != 0 || ::pwrite(descriptor, text.data(), text.size(), 0) < 0)
        return cannotLock(file, errno);
    return pen;
}

Pen::Pen(Pen&& other) noexcept : m_descriptor(std::exchange(other.m_descriptor, -1)) {}

Pen::~Pen()
{
    if (m_descriptor >= 0) ::close(m_descriptor);
}

}  // namespace taut::logbook
