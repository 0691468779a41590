// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <sys/mount.h>

#include <cstdint>
#include <filesystem>
#include <fstream>
#include <string>

#include "tests/core/base/folder.h"

namespace taut::test {

/// A real disk of a few kilobytes, in memory, that can be filled up and emptied. Only who may mount has one: a test
/// that finds mounted() false says so and leaves the matter to the tests that need no disk of their own.
class TinyDisk {
public:
    explicit TinyDisk(std::uint64_t bytes)
    {
        const std::string size = "size=" + std::to_string(bytes);
        m_mounted = ::mount("tmpfs", m_folder.path.c_str(), "tmpfs", 0, size.c_str()) == 0;
    }
    ~TinyDisk()
    {
        if (m_mounted) ::umount2(m_folder.path.c_str(), MNT_DETACH);
    }
    TinyDisk(const TinyDisk&) = delete;
    TinyDisk& operator=(const TinyDisk&) = delete;
    [[nodiscard]] bool mounted() const { return m_mounted; }
    [[nodiscard]] std::filesystem::path operator/(const std::string& name) const { return m_folder.path / name; }
    /// Another program takes all of the room but so much.
    void fill(std::uint64_t left)
    {
        const std::uint64_t room = std::filesystem::space(m_folder.path).available;
        if (room <= left) return;
        std::ofstream(ballast(), std::ios::binary) << std::string(static_cast<std::size_t>(room - left), 'x');
    }
    /// It gives the room back.
    void empty() { std::filesystem::remove(ballast()); }

private:
    [[nodiscard]] std::filesystem::path ballast() const { return m_folder.path / "ballast"; }
    Folder m_folder;
    bool m_mounted = false;
};

}  // namespace taut::test
