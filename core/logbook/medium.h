// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <filesystem>
#include <optional>
#include <string>

#include "core/base/finding.h"

namespace taut::logbook {

/// What a file lies on, as far as it matters to a record that is kept there.
enum class Medium : std::uint8_t {
    Disk,       ///< of this PC, or nothing that the system tells otherwise
    Network,    ///< another machine's: its locks and its syncs are promises of that machine and the line between
    Removable,  ///< a stick or a card: can be pulled out, and often says "written" before it is
    ReadOnly,   ///< nothing can be written there by anybody
};

/// What the system tells of where a file lies.
struct Mounted {
    std::uint64_t magic{};       ///< of the file system, as statfs(2) gives it
    std::string type;            ///< as /proc/self/mountinfo names it: "ext4", "nfs4", "fuse.sshfs"
    bool readOnly = false;       ///< mounted so
    std::string device;          ///< where /sys says that its disk hangs: ".../usb1/1-2/..."; "" = no disk of its own
    bool canBeTakenOut = false;  ///< /sys says "removable" of its disk
};
/// What all of that comes to.
[[nodiscard]] Medium mediumFrom(const Mounted& mounted);
/// Of the file, or of the nearest folder above it that exists.
[[nodiscard]] Medium mediumOf(const std::filesystem::path& path);

/// What to say of a logbook that is to be written there: logbook.on_network and logbook.on_read_only refuse;
/// logbook.on_removable (Warn) goes on. nullopt: nothing.
[[nodiscard]] std::optional<Finding> asHomeOfLogbook(Medium medium, const std::filesystem::path& file);
/// What to say of a folder for mirrors and copies: keep.read_only refuses; keep.on_network, keep.on_removable and
/// keep.same_disk are Notes. nullopt: nothing.
[[nodiscard]] std::optional<Finding> asHomeOfCopies(Medium medium, const std::filesystem::path& folder,
                                                    const std::filesystem::path& logbook);

}  // namespace taut::logbook
