// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/logbook/medium.h"

#include <sys/stat.h>
#include <sys/statfs.h>
#include <sys/statvfs.h>
#include <sys/sysmacros.h>

#include <algorithm>
#include <array>
#include <fstream>
#include <sstream>

namespace taut::logbook {

namespace {

namespace fs = std::filesystem;

/// statfs(2) and linux/magic.h.
constexpr std::array<std::uint64_t, 11> kNetwork{
    0x6969,      // NFS
    0x517B,      // SMB
    0xFF534D42,  // CIFS
    0xFE534D42,  // SMB 2 and 3
    0x564C,      // NCP
    0x73757245,  // Coda
    0x5346414F,  // AFS
    0x00C36400,  // Ceph
    0x0BD00BD0,  // Lustre
    0x01161970,  // GFS2: several machines on one disk
    0x7461636F,  // OCFS2: the same
};
constexpr std::array<std::uint64_t, 2> kOfSticks{
    0x4D44,      // FAT
    0x2011BAB0,  // exFAT
};
constexpr std::array<std::uint64_t, 4> kNeverWritten{
    0x9660,      // ISO 9660
    0x73717368,  // squashfs
    0x28CD3D45,  // cramfs
    0xE0F5E1E2,  // EROFS
};
/// Programs that show another machine's files through FUSE; what else comes by FUSE is mostly a disk.
constexpr std::array<std::string_view, 7> kNetworkByFuse{
    "fuse.sshfs", "fuse.rclone", "fuse.glusterfs", "fuse.s3fs", "fuse.gvfsd-fuse", "fuse.davfs", "fuse.curlftpfs"};

template <class List, class Value>
bool isIn(const List& list, const Value& value)
{
    return std::find(list.begin(), list.end(), value) != list.end();
}

fs::path nearestThere(fs::path path)
{
    std::error_code error;
    path = fs::absolute(path, error);
    while (!path.empty() && !fs::exists(path, error) && path != path.root_path()) path = path.parent_path();
    return path;
}

/// The type that the system's list of mounts gives for a device, "8:1".
std::string typeOf(const std::string& device)
{
    std::ifstream mounts("/proc/self/mountinfo");
    std::string type;
    for (std::string line; std::getline(mounts, line);) {
        std::istringstream words(line);
        std::string word, id;
        words >> word >> word >> id;
        if (id != device) continue;
        while (words >> word && word != "-") {
        }
        words >> type;
    }
    return type;
}

Mounted look(const fs::path& path)
{
    Mounted found;
    const fs::path there = nearestThere(path);
    struct statfs system {};
    struct statvfs flags {};
    struct stat file {};
    if (::statfs(there.c_str(), &system) == 0) found.magic = static_cast<std::uint32_t>(system.f_type);
    if (::statvfs(there.c_str(), &flags) == 0) found.readOnly = (flags.f_flag & ST_RDONLY) != 0;
    if (::stat(there.c_str(), &file) != 0) return found;
    const std::string device = std::to_string(major(file.st_dev)) + ':' + std::to_string(minor(file.st_dev));
    found.type = typeOf(device);
    std::error_code error;
    const fs::path disk = fs::canonical("/sys/dev/block/" + device, error);
    if (error) return found;
    found.device = disk.string();
    // A partition has no such line of its own; its disk has.
    for (const fs::path& at : {disk, disk.parent_path()}) {
        std::ifstream line(at / "removable");
        int said = 0;
        if (line >> said) {
            found.canBeTakenOut = said != 0;
            break;
        }
    }
    return found;
}

bool sameDisk(const fs::path& a, const fs::path& b)
{
    struct stat one {
    }, two{};
    return ::stat(nearestThere(a).c_str(), &one) == 0 && ::stat(nearestThere(b).c_str(), &two) == 0 &&
           one.st_dev == two.st_dev;
}

Finding said(Severity severity, const char* code, const fs::path& path, const char* english, Text remedy)
{
    Finding finding = refuse(code, path.string(), Text(english, {path.string()}), std::move(remedy));
    finding.severity = severity;
    return finding;
}

}  // namespace

Medium mediumFrom(const Mounted& mounted)
{
    if (isIn(kNetwork, mounted.magic) || isIn(kNetworkByFuse, mounted.type)) return Medium::Network;
    if (mounted.readOnly || isIn(kNeverWritten, mounted.magic)) return Medium::ReadOnly;
    if (mounted.canBeTakenOut || mounted.device.find("/usb") != std::string::npos || isIn(kOfSticks, mounted.magic))
        return Medium::Removable;
    return Medium::Disk;
}

Medium mediumOf(const fs::path& path) { return mediumFrom(look(path)); }

std::optional<Finding> asHomeOfLogbook(Medium medium, const fs::path& file)
{
    switch (medium) {
    case Medium::Network:
        return said(Severity::Stop, "logbook.on_network", file,
                    "%1 lies in a folder of another machine. Two PCs could write in it at once, and what is on disk "
                    "there nobody here can know.",
                    "Keep the logbook on a disk of this PC, and its mirror or copies in that folder.");
    case Medium::ReadOnly:
        return said(Severity::Stop, "logbook.on_read_only", file,
                    "%1 lies on a medium that can only be read, and a logbook that is written in needs another.",
                    "It can be read there. To go on with it, restore it to a disk of this PC.");
    case Medium::Removable:
        return said(Severity::Warn, "logbook.on_removable", file,
                    "%1 lies on a stick or card: pulled out at the wrong moment, or worn, it loses what was recorded.",
                    "Keep the logbook on the disk of this PC, and its mirror or copies on the stick.");
    case Medium::Disk: break;
    }
    return std::nullopt;
}

std::optional<Finding> asHomeOfCopies(Medium medium, const fs::path& folder, const fs::path& logbook)
{
    switch (medium) {
    case Medium::Network:
        return said(Severity::Note, "keep.on_network", folder,
                    "%1 is a folder of another machine: a good place for what is kept twice.",
                    "Whoever may read that folder can read the record.");
    case Medium::ReadOnly:
        return said(Severity::Stop, "keep.read_only", folder, "%1 lies on a medium that can only be read.",
                    "Choose a folder that can be written in.");
    case Medium::Removable:
        return said(Severity::Note, "keep.on_removable", folder,
                    "%1 lies on a stick or card: a good place for what is kept twice, as long as it is in.",
                    "Keep it where only those get at it who may read the record.");
    case Medium::Disk: break;
    }
    if (sameDisk(folder, logbook))
        return said(Severity::Note, "keep.same_disk", folder,
                    "%1 lies on the same disk as the logbook: that helps against mistakes, not against a dead disk.",
                    "Choose a folder on another disk, a stick or another machine as well.");
    return std::nullopt;
}

}  // namespace taut::logbook
