// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <filesystem>
#include <string>

#include "core/base/result.h"

namespace taut::logbook {

/// The right to write in a logbook: a lock of the operating system on FILE.pen, gone by itself when its holder ends or
/// is killed. The file holds the holder's name and process for whoever is refused; only the lock counts.
class Pen {
public:
    /// logbook.pen_held names the holder; logbook.folder_read_only; logbook.no_locks where the file system has none.
    [[nodiscard]] static Result<Pen> take(const std::filesystem::path& logbook, const std::string& holder);
    Pen(Pen&& other) noexcept;
    Pen& operator=(Pen&&) = delete;
    ~Pen();

private:
    explicit Pen(int descriptor) : m_descriptor(descriptor) {}
    int m_descriptor;
};

}  // namespace taut::logbook
