// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <sqlite3.h>

#include <catch2/catch.hpp>
#include <cstdint>
#include <cstdio>
#include <filesystem>
#include <fstream>
#include <map>
#include <new>
#include <optional>
#include <random>
#include <sstream>
#include <string>
#include <utility>
#include <vector>

// A disk that fails when it is told to, put under the engine as its default file system. The logbook does not know it.
namespace taut::faults {

class BadDisk {
public:
    /// What happens at the n-th call that writes, syncs, cuts, opens or removes one of the engine's files.
    enum class Way {
        Once,   ///< that call fails, the next ones work: a cable that came loose for a moment
        Gone,   ///< from that call on all fail: a disk that died
        Power,  ///< from that call on all fail, and what was not synced may be lost, in any part and any order
    };

    static BadDisk& mounted()
    {
        static BadDisk disk;
        return disk;
    }
    void arm(std::int64_t n, Way way, std::uint64_t seed = 1)
    {
        m_at = n;
        m_way = way;
        m_calls = 0;
        m_struck = false;
        m_kept.clear();
        m_random.seed(seed);
    }
    /// The disk works again; after a power cut the files are what had reached it.
    void mend()
    {
        if (m_struck && m_way == Way::Power)
            for (auto& [path, kept] : m_kept) bringBack(path, kept);
        m_at = 0;
        m_kept.clear();
    }
    [[nodiscard]] bool struck() const { return m_struck; }
    [[nodiscard]] std::int64_t calls() const { return m_calls; }

private:
    /// What of a file has reached the disk, and what is still on its way.
    struct Kept {
        std::optional<std::string> content;
        std::vector<std::pair<std::int64_t, std::string>> pending;
    };
    struct File {
        sqlite3_file base;  // first: the engine sees only this
        sqlite3_file* real;
        std::string* path;  // nullptr: not one whose calls are counted
    };

    BadDisk()
    {
        m_real = sqlite3_vfs_find(nullptr);
        m_vfs = *m_real;
        m_vfs.szOsFile = static_cast<int>(sizeof(File)) + m_real->szOsFile;
        m_vfs.zName = "bad-disk";
        m_vfs.xOpen = open;
        m_vfs.xDelete = remove;
        sqlite3_vfs_register(&m_vfs, 1);
    }

    /// True when this call fails.
    bool strikes()
    {
        if (m_at == 0) return false;
        ++m_calls;
        if (m_struck && m_way != Way::Once) return true;
        if (m_calls != m_at) return false;
        m_struck = true;
        return true;
    }

    static std::optional<std::string> readWhole(const std::string& path)
    {
        std::ifstream file(path, std::ios::binary);
        if (!file) return std::nullopt;
        std::ostringstream all;
        all << file.rdbuf();
        return all.str();
    }
    /// Watches a file from its first use on: what is there then, is on the disk.
    void watch(const std::string& path)
    {
        if (m_at != 0 && m_way == Way::Power && m_kept.find(path) == m_kept.end())
            m_kept[path] = Kept{readWhole(path), {}};
    }
    void bringBack(const std::string& path, Kept& kept)
    {
        if (!kept.content) {
            std::error_code none;
            std::filesystem::remove(path, none);
            return;
        }
        std::string content = *kept.content;
        std::shuffle(kept.pending.begin(), kept.pending.end(), m_random);
        for (const auto& [offset, bytes] : kept.pending) {
            if (m_random() % 2 == 0) continue;
            const auto at = static_cast<std::size_t>(offset);
            if (content.size() < at + bytes.size()) content.resize(at + bytes.size(), '\0');
            content.replace(at, bytes.size(), bytes);
        }
        std::ofstream file(path, std::ios::binary | std::ios::trunc);
        file << content;
    }

    static File& of(sqlite3_file* file) { return *reinterpret_cast<File*>(file); }

    static int open(sqlite3_vfs*, const char* name, sqlite3_file* file, int flags, int* outFlags)
    {
        BadDisk& disk = mounted();
        File& f = of(file);
        f.base.pMethods = nullptr;
        f.real = reinterpret_cast<sqlite3_file*>(&f + 1);
        f.path = nullptr;
        const bool ours = name != nullptr && (flags & (SQLITE_OPEN_MAIN_DB | SQLITE_OPEN_MAIN_JOURNAL)) != 0;
        if (ours) {
            disk.watch(name);
            if (disk.strikes()) return SQLITE_CANTOPEN;
        }
        const int code = disk.m_real->xOpen(disk.m_real, name, f.real, flags, outFlags);
        if (code != SQLITE_OK) return code;
        if (ours) f.path = new std::string(name);
        f.base.pMethods = methods();
        return SQLITE_OK;
    }
    static int remove(sqlite3_vfs*, const char* name, int syncFolder)
    {
        BadDisk& disk = mounted();
        disk.watch(name);
        if (disk.strikes()) return SQLITE_IOERR_DELETE;
        const int code = disk.m_real->xDelete(disk.m_real, name, syncFolder);
        // Without a sync of the folder the file may be there again after the power came back.
        if (code == SQLITE_OK && syncFolder != 0)
            if (const auto at = disk.m_kept.find(name); at != disk.m_kept.end()) at->second = Kept{};
        return code;
    }
    static int close(sqlite3_file* file)
    {
        File& f = of(file);
        delete f.path;
        return f.real->pMethods->xClose(f.real);
    }
    static int write(sqlite3_file* file, const void* data, int size, sqlite3_int64 offset)
    {
        BadDisk& disk = mounted();
        File& f = of(file);
        if (f.path != nullptr) {
            if (disk.strikes()) return SQLITE_IOERR_WRITE;
            if (const auto at = disk.m_kept.find(*f.path); at != disk.m_kept.end())
                at->second.pending.emplace_back(
                    offset, std::string(static_cast<const char*>(data), static_cast<std::size_t>(size)));
        }
        return f.real->pMethods->xWrite(f.real, data, size, offset);
    }
    static int truncate(sqlite3_file* file, sqlite3_int64 size)
    {
        File& f = of(file);
        if (f.path != nullptr && mounted().strikes()) return SQLITE_IOERR_TRUNCATE;
        return f.real->pMethods->xTruncate(f.real, size);
    }
    static int sync(sqlite3_file* file, int flags)
    {
        BadDisk& disk = mounted();
        File& f = of(file);
        if (f.path != nullptr && disk.strikes()) return SQLITE_IOERR_FSYNC;
        const int code = f.real->pMethods->xSync(f.real, flags);
        if (code == SQLITE_OK && f.path != nullptr)
            if (const auto at = disk.m_kept.find(*f.path); at != disk.m_kept.end()) {
                at->second.content = readWhole(*f.path);
                at->second.pending.clear();
            }
        return code;
    }

    static const sqlite3_io_methods* methods()
    {
        static const sqlite3_io_methods kMethods = [] {
            sqlite3_io_methods m{};
            m.iVersion = 1;  // no shared memory and no mapping: every byte goes through here
            m.xClose = close;
            m.xWrite = write;
            m.xTruncate = truncate;
            m.xSync = sync;
            m.xRead = [](sqlite3_file* f, void* to, int n, sqlite3_int64 at) {
                return of(f).real->pMethods->xRead(of(f).real, to, n, at);
            };
            m.xFileSize = [](sqlite3_file* f, sqlite3_int64* size) {
                return of(f).real->pMethods->xFileSize(of(f).real, size);
            };
            m.xLock = [](sqlite3_file* f, int level) { return of(f).real->pMethods->xLock(of(f).real, level); };
            m.xUnlock = [](sqlite3_file* f, int level) { return of(f).real->pMethods->xUnlock(of(f).real, level); };
            m.xCheckReservedLock = [](sqlite3_file* f, int* held) {
                return of(f).real->pMethods->xCheckReservedLock(of(f).real, held);
            };
            m.xFileControl = [](sqlite3_file* f, int op, void* arg) {
                return of(f).real->pMethods->xFileControl(of(f).real, op, arg);
            };
            m.xSectorSize = [](sqlite3_file* f) { return of(f).real->pMethods->xSectorSize(of(f).real); };
            m.xDeviceCharacteristics = [](sqlite3_file*) { return 0; };  // the disk promises nothing
            return m;
        }();
        return &kMethods;
    }

    sqlite3_vfs* m_real = nullptr;
    sqlite3_vfs m_vfs{};
    std::int64_t m_at = 0, m_calls = 0;
    Way m_way = Way::Once;
    bool m_struck = false;
    std::map<std::string, Kept> m_kept;
    std::mt19937_64 m_random{1};
};

}  // namespace taut::faults
